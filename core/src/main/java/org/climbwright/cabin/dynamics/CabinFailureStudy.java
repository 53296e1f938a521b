package org.climbwright.cabin.dynamics;

import java.time.Duration;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.cabin.CabinHistory;
import org.climbwright.cabin.CabinPlan;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;

/**
 * A flight on which something fails: what the cabin does, from the ground to the end of the flight.
 *
 * <pre>{@code
 * CabinHistory history =
 *         new CabinFailureStudy(hull, plan, flight, air)
 *                 .withFailure(new CabinFailure.InflowLost(), Duration.ofMinutes(20))
 *                 .withDescent(descent)
 *                 .run(Duration.ofSeconds(1));
 * history.firstAtOrAbove(CabinAltitude.ofFeet(10000))
 * history.timeAbove(CabinAltitude.ofFeet(25000))
 * }</pre>
 *
 * <p>Limits of use: for study and simulation, see {@link CabinModel}. What a crew does about a
 * failure is in the operator's checklists and memory items.
 */
public final class CabinFailureStudy {
    private static final ModelRange STEP =
            new ModelRange("step of a study", 1e-3, 1.0, "s", "a second is a good one");

    /** Shorter steps are none: failures so close together come at once. */
    private static final double SHORTEST_S = 1e-6;

    /** A flight that begins so near to the departure field begins on its ground. */
    private static final double AT_THE_FIELD_M = 30.0;

    private final CabinHull hull;
    private final CabinPlan plan;
    private final AltitudeHistory flight;
    private final Atmosphere air;
    private final List<Timed> failures;
    private final Optional<EmergencyDescent> descent;

    /** A failure and when it comes. */
    private record Timed(CabinFailure failure, double atS) {}

    /**
     * A flight without a failure.
     *
     * @param hull the hull
     * @param plan its schedule and limits
     * @param flight where the aeroplane is; one that begins within 100 ft of the plan's departure
     *     begins on the ground, any other with the cabin at the plan's target for its level
     * @param air the air outside, for its temperature where air comes in
     */
    public CabinFailureStudy(
            CabinHull hull, CabinPlan plan, AltitudeHistory flight, Atmosphere air) {
        this(hull, plan, flight, air, List.of(), Optional.empty());
    }

    private CabinFailureStudy(
            CabinHull hull,
            CabinPlan plan,
            AltitudeHistory flight,
            Atmosphere air,
            List<Timed> failures,
            Optional<EmergencyDescent> descent) {
        this.hull = Objects.requireNonNull(hull, "hull");
        this.plan = Objects.requireNonNull(plan, "plan");
        this.flight = Objects.requireNonNull(flight, "flight");
        this.air = Objects.requireNonNull(air, "air");
        this.failures = failures;
        this.descent = descent;
    }

    /**
     * Returns this study with one failure more.
     *
     * @param failure what fails
     * @param at when, since the beginning of the flight
     * @return a copy with it
     * @throws org.climbwright.quantity.OutsideModelException if the flight is over by then
     */
    public CabinFailureStudy withFailure(CabinFailure failure, Duration at) {
        Objects.requireNonNull(failure, "failure");
        double atS = AltitudeHistory.seconds(at);
        new ModelRange("time of a failure", 0.0, flight.lengthS(), "s", "the flight ends there")
                .check(atS);
        Timed[] more = failures.toArray(new Timed[failures.size() + 1]);
        more[failures.size()] = new Timed(failure, atS);
        Arrays.sort(more, Comparator.comparingDouble(Timed::atS));
        return new CabinFailureStudy(hull, plan, flight, air, List.of(more), descent);
    }

    /**
     * Returns this study with a descent once the cabin has passed a warning.
     *
     * @param other when and how
     * @return a copy with it
     */
    public CabinFailureStudy withDescent(EmergencyDescent other) {
        return new CabinFailureStudy(hull, plan, flight, air, failures, Optional.of(other));
    }

    /**
     * Flies the flight.
     *
     * @param step how long a step is, 0.001 to 1 s; one ends at each failure
     * @return the cabin at each step
     * @throws org.climbwright.quantity.OutsideModelException if the step is out of range, or the
     *     aeroplane is where air or schedule are not
     * @accuracy that of {@link CabinModel#step}; the warning counts from where a straight line
     *     through a step passes it, and a descent begins then and the recognition later, to a step
     */
    public CabinHistory run(Duration step) {
        double stepS = STEP.check(AltitudeHistory.seconds(step));
        Recorder recorder = new Recorder((int) (flight.lengthS() / stepS) + failures.size() + 2);
        CabinModel cabin = atTheBeginning();
        Descent down = new Descent(flight, descent);
        recorder.add(0.0, cabin);
        int next = 0;
        long count = 1;
        double now = 0.0;
        double end = flight.lengthS();
        while (end - now > SHORTEST_S) {
            while (next < failures.size() && failures.get(next).atS() <= now + SHORTEST_S) {
                cabin.fail(failures.get(next).failure());
                next++;
            }
            while (count * stepS <= now + SHORTEST_S) {
                count++;
            }
            double to = Math.min(end, count * stepS);
            if (next < failures.size()) {
                to = Math.min(to, failures.get(next).atS());
            }
            double level = down.level(cabin, to);
            double outsidePa = StandardAir.pressureFromAltitude(level);
            cabin.step(to - now, level, air.temperature(air.range().check(outsidePa)));
            down.watch(cabin, to - now, to);
            recorder.add(to, cabin);
            now = to;
        }
        return recorder.history();
    }

    /** On the ground where the flight begins there, else settled at its level. */
    private CabinModel atTheBeginning() {
        double begins = flight.pressureAltitudeM(0.0);
        if (Math.abs(begins - plan.departure().inMetres()) <= AT_THE_FIELD_M) {
            return CabinModel.onGround(hull, plan);
        }
        return CabinModel.inFlight(
                hull,
                plan,
                PressureAltitude.ofMetres(begins),
                CabinAltitude.ofMetres(plan.targetM(begins)));
    }

    /** What has become of the descent. */
    private static final class Descent {
        private final AltitudeHistory flight;
        private final Optional<EmergencyDescent> plan;
        private boolean wasBelow;
        private double beginsS = Double.POSITIVE_INFINITY;

        Descent(AltitudeHistory flight, Optional<EmergencyDescent> plan) {
            this.flight = flight;
            this.plan = plan;
        }

        /** Where the aeroplane is at the end of a step. */
        double level(CabinModel cabin, double toS) {
            wasBelow |=
                    plan.isPresent() && cabin.cabinAltitudeM() <= plan.get().warning().inMetres();
            if (toS <= beginsS || plan.isEmpty()) {
                return flight.pressureAltitudeM(toS);
            }
            // from where the flight was when it began, also if that was within the step before
            double from = flight.pressureAltitudeM(beginsS);
            double way = plan.get().rate().inMetresPerSecond() * (toS - beginsS);
            return Math.min(from, Math.max(plan.get().to().inMetres(), from - way));
        }

        /** Looks whether the cabin passed the warning on its way up in the step before. */
        void watch(CabinModel cabin, double lengthS, double nowS) {
            if (plan.isEmpty() || !wasBelow || beginsS <= nowS) {
                return;
            }
            double above = cabin.cabinAltitudeM() - plan.get().warning().inMetres();
            if (above > 0.0 && Double.isInfinite(beginsS)) {
                double since =
                        cabin.cabinRateMps() > 0.0
                                ? Math.min(lengthS, above / cabin.cabinRateMps())
                                : 0.0;
                beginsS = nowS - since + AltitudeHistory.seconds(plan.get().recognition());
            }
        }
    }

    /** Samples as they come. */
    private static final class Recorder {
        private double[] timeS;
        private double[] aeroplaneM;
        private double[] cabinM;
        private int size;

        Recorder(int expected) {
            timeS = new double[expected];
            aeroplaneM = new double[expected];
            cabinM = new double[expected];
        }

        void add(double atS, CabinModel cabin) {
            if (size == timeS.length) {
                timeS = Arrays.copyOf(timeS, 2 * size);
                aeroplaneM = Arrays.copyOf(aeroplaneM, 2 * size);
                cabinM = Arrays.copyOf(cabinM, 2 * size);
            }
            timeS[size] = atS;
            aeroplaneM[size] = cabin.pressureAltitudeM();
            cabinM[size] = cabin.cabinAltitudeM();
            size++;
        }

        CabinHistory history() {
            return CabinHistory.ofSi(
                    Arrays.copyOf(timeS, size),
                    Arrays.copyOf(aeroplaneM, size),
                    Arrays.copyOf(cabinM, size));
        }
    }
}
