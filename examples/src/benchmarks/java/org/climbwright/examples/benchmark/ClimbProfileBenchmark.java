package org.climbwright.examples.benchmark;

import java.util.List;
import org.climbwright.examples.figure.InventedClimb;
import org.climbwright.performance.ClimbAir;
import org.climbwright.profile.AeroplaneClimb;
import org.climbwright.profile.ClimbProfile;
import org.climbwright.profile.ProfileEvent;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/**
 * A whole climb integrated: the invented jet from its aerodrome to FL350 through the bundled
 * sounding, with the winds along its track.
 */
public final class ClimbProfileBenchmark {
    private ClimbProfileBenchmark() {}

    /** The climbs, with air that is made once. */
    @State(Scope.Thread)
    public static class Climbs {
        private final ClimbAir air = InventedClimb.air();
        private final PressureAltitude bottom = InventedClimb.bottom(air.air());
        private final AeroplaneClimb free = InventedClimb.climb(InventedClimb.programme(), air);
        private final AeroplaneClimb restricted =
                InventedClimb.climb(InventedClimb.restricted(InventedClimb.qnh(air.air())), air);
        private final ClimbProfile flown = restricted.between(bottom, InventedClimb.LEVEL);

        /** Nothing in its way. */
        AeroplaneClimb free() {
            return free;
        }

        /** A level held, and another for a restriction. */
        AeroplaneClimb restricted() {
            return restricted;
        }

        /** The same with its air made anew. */
        AeroplaneClimb inNewAir() {
            ClimbAir anew = ClimbAir.of(air.air(), air.winds(), air.track());
            return InventedClimb.climb(free.programme(), anew);
        }

        /** By the library's own integration. */
        ClimbProfile own(AeroplaneClimb climb) {
            return climb.between(bottom, InventedClimb.LEVEL);
        }

        /** By an adaptive method of eighth order. */
        ClimbProfile adaptive(AeroplaneClimb climb) {
            return climb.betweenByDormandPrince(bottom, InventedClimb.LEVEL);
        }

        ClimbProfile flown() {
            return flown;
        }
    }

    /** Nothing in its way. */
    @Line(value = "free climb", bar = 50, aim = 10)
    public static class Free {
        /** Our integration. */
        @Benchmark
        public ClimbProfile own(Climbs climbs) {
            return climbs.own(climbs.free());
        }

        /** Commons Math. */
        @Benchmark
        public ClimbProfile adaptive(Climbs climbs) {
            return climbs.adaptive(climbs.free());
        }
    }

    /** A level held for a minute, and another until a restriction is passed. */
    @Line(value = "with a level held and a restriction", bar = 50, aim = 10)
    public static class Restricted {
        /** Our integration. */
        @Benchmark
        public ClimbProfile own(Climbs climbs) {
            return climbs.own(climbs.restricted());
        }

        /** Commons Math. */
        @Benchmark
        public ClimbProfile adaptive(Climbs climbs) {
            return climbs.adaptive(climbs.restricted());
        }
    }

    /** Nothing in its way; what is prepared of air and wind is made too. */
    @Line("free climb, its air prepared anew")
    public static class InNewAir {
        /** Our integration. */
        @Benchmark
        public ClimbProfile own(Climbs climbs) {
            return climbs.own(climbs.inNewAir());
        }

        /** Commons Math. */
        @Benchmark
        public ClimbProfile adaptive(Climbs climbs) {
            return climbs.adaptive(climbs.inNewAir());
        }
    }

    /** What happens on a climb that is flown already. */
    @Line("its events, the aeroplane before and after each")
    public static class Events {
        /** As they are asked for. */
        @Benchmark
        public List<ProfileEvent> own(Climbs climbs) {
            return climbs.flown().events();
        }
    }
}
