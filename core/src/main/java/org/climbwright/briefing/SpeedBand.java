package org.climbwright.briefing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.climbwright.airspeed.Airspeeds;
import org.climbwright.airspeed.SpeedLimits;
import org.climbwright.atmosphere.AirState;
import org.climbwright.briefing.plan.ClimbMeans;
import org.climbwright.briefing.plan.PlannedTurbulence;
import org.climbwright.path.ClimbState;
import org.climbwright.path.SpeedSchedule;
import org.climbwright.performance.AeroplaneLimits;
import org.climbwright.performance.ceiling.BuffetMargin;
import org.climbwright.performance.ceiling.BuffetMargin.FreeOfBuffet;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;

/**
 * The speeds around the one that is flown at a level: how slow and how fast an aeroplane may be
 * there.
 *
 * <p>Limits of use: speeds and limits are those that were given; the flight manual decides. Buffet
 * is that of the laws given, at the load factor told.
 *
 * @param state the climb there, with the speed that is flown
 * @param minimum no slower, by the schedule; empty where none is given
 * @param roughAir the speed in rough air; empty where none is given
 * @param limit the maximum operating speed; empty where neither a speed nor a Mach number is given
 * @param slowBuffet where buffet begins on the slow side at {@link #LOAD_FACTOR}; empty where that
 *     is not known, or it buffets at the speed flown
 * @param fastBuffet where it begins on the fast side
 */
public record SpeedBand(
        ClimbState state,
        Optional<CalibratedAirspeed> minimum,
        Optional<CalibratedAirspeed> roughAir,
        Optional<CalibratedAirspeed> limit,
        Optional<CalibratedAirspeed> slowBuffet,
        Optional<CalibratedAirspeed> fastBuffet) {
    /** Lift over weight at which buffet is asked for. */
    public static final double LOAD_FACTOR = BuffetMargin.USUAL_LOAD_FACTOR;

    /** The band at each line of a briefing, at both sides where the speed jumps. */
    static List<SpeedBand> along(ClimbBriefing briefing) {
        AeroplaneLimits limits =
                briefing.plan().means() instanceof ClimbMeans.Thrust thrust
                        ? thrust.aeroplane().limits()
                        : AeroplaneLimits.none();
        Optional<SpeedSchedule> roughAir =
                briefing.plan().turbulence().flatMap(PlannedTurbulence::roughAir);
        Optional<CalibratedAirspeed> minimum =
                briefing.profile().flatMap(flown -> flown.climb().programme().speeds().minimum());
        List<SpeedBand> bands = new ArrayList<>();
        for (BriefingLevel level : briefing.levels()) {
            ClimbState state = level.state();
            AirState air = state.air();
            Optional<FreeOfBuffet> free = buffet(limits, state);
            bands.add(
                    new SpeedBand(
                            state,
                            minimum,
                            roughAir.map(
                                    speeds ->
                                            slower(
                                                    speeds.calibratedAirspeed(),
                                                    speeds.mach(),
                                                    air)),
                            operating(limits, air),
                            edge(free, FreeOfBuffet::low, air),
                            edge(free, FreeOfBuffet::high, air)));
        }
        return List.copyOf(bands);
    }

    private static Optional<CalibratedAirspeed> operating(AeroplaneLimits limits, AirState air) {
        Optional<CalibratedAirspeed> speed = limits.maximumOperatingSpeed();
        Optional<Mach> mach = limits.maximumOperatingMach();
        return speed.isPresent() && mach.isPresent()
                ? Optional.of(slower(speed.get(), mach.get(), air))
                : speed.or(() -> mach.map(known -> of(known, air)));
    }

    private static CalibratedAirspeed slower(CalibratedAirspeed speed, Mach mach, AirState air) {
        return SpeedLimits.upTo(speed, mach).highest(air);
    }

    private static CalibratedAirspeed of(Mach mach, AirState air) {
        return Airspeeds.from(mach, air).calibratedAirspeed();
    }

    private static Optional<FreeOfBuffet> buffet(AeroplaneLimits limits, ClimbState state) {
        return BuffetMargin.of(limits, state.mass(), state.pressureAltitude(), state.mach())
                .flatMap(margin -> margin.freeOfBuffet(LOAD_FACTOR));
    }

    private static Optional<CalibratedAirspeed> edge(
            Optional<FreeOfBuffet> free,
            Function<FreeOfBuffet, OptionalDouble> side,
            AirState air) {
        OptionalDouble mach = free.map(side).orElseGet(OptionalDouble::empty);
        return mach.isPresent()
                ? Optional.of(of(Mach.of(mach.getAsDouble()), air))
                : Optional.empty();
    }
}
