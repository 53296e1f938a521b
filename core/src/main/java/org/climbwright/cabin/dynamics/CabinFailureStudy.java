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
     * @param flight where the aeroplane is, beginning at the plan's departure
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
     * @accuracy that of {@link CabinModel#step} for the step; the warning counts from where a
     *     straight line through the step passes it
     */
    public CabinHistory run(Duration step) {
        double stepS = STEP.check(AltitudeHistory.seconds(step));
        Recorder recorder = new Recorder((int) (flight.lengthS() / stepS) + failures.size() + 2);
        CabinModel cabin = CabinModel.onGround(hull, plan);
        Descent down = new Descent(descent);
        recorder.add(cabin);
        int next = 0;
        double end = flight.lengthS();
        long count = 1;
        while (cabin.timeS() < end) {
            while (next < failures.size() && failures.get(next).atS() <= cabin.timeS()) {
                cabin.fail(failures.get(next++).failure());
            }
            double to = Math.min(end, count * stepS);
            if (next < failures.size() && failures.get(next).atS() < to) {
                to = failures.get(next).atS();
            } else {
                count++;
            }
            double length = to - cabin.timeS();
            if (length <= 1e-6) {
                // rounding of the sum of steps; the next one has it
                if (to >= end) {
                    break;
                }
                continue;
            }
            double level = down.level(cabin, length, flight.pressureAltitudeM(to));
            double outsidePa = StandardAir.pressureFromAltitude(level);
            cabin.step(length, level, air.temperature(air.range().check(outsidePa)));
            recorder.add(cabin);
        }
        return recorder.history();
    }

    /** What has become of the descent. */
    private static final class Descent {
        private final Optional<EmergencyDescent> plan;
        private double beginsS = Double.POSITIVE_INFINITY;

        Descent(Optional<EmergencyDescent> plan) {
            this.plan = plan;
        }

        /**
         * Where the aeroplane is at the end of a step, if it would be elsewhere without descent.
         */
        double level(CabinModel cabin, double lengthS, double otherwiseM) {
            if (plan.isEmpty()) {
                return otherwiseM;
            }
            EmergencyDescent descent = plan.get();
            double now = cabin.timeS();
            double above = cabin.cabinAltitudeM() - descent.warning().inMetres();
            if (above > 0.0 && Double.isInfinite(beginsS)) {
                // passed on the way of the last step, which went straight for all we know
                double since = cabin.cabinRateMps() > 0.0 ? above / cabin.cabinRateMps() : 0.0;
                beginsS = now - since + AltitudeHistory.seconds(descent.recognition());
                beginsS = Math.max(beginsS, now);
            }
            if (now + lengthS <= beginsS) {
                return otherwiseM;
            }
            double from = cabin.pressureAltitudeM();
            double way =
                    descent.rate().inMetresPerSecond() * Math.min(lengthS, now + lengthS - beginsS);
            return from <= descent.to().inMetres()
                    ? from
                    : Math.max(descent.to().inMetres(), from - way);
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

        void add(CabinModel cabin) {
            if (size == timeS.length) {
                timeS = Arrays.copyOf(timeS, 2 * size);
                aeroplaneM = Arrays.copyOf(aeroplaneM, 2 * size);
                cabinM = Arrays.copyOf(cabinM, 2 * size);
            }
            timeS[size] = cabin.timeS();
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
