package org.climbwright.cabin;

import java.time.Duration;
import java.util.Optional;
import org.climbwright.cabin.CabinCheck.Verdict;

/**
 * A reading against the one before.
 *
 * <p>While climbing, both readings may be wrong by a tolerance, one up and one down: what two
 * readings within tolerance can show is no finding. In level flight the same instrument is read
 * twice at the same place, and one tolerance is allowed for both.
 */
final class TrendCheck {
    private static final String LOOK =
            ": look at cabin altitude and rate, at inflow and outflow, and at what tells of doors"
                    + " and valves";

    private final ReadingCheck check;
    private final CabinReading reading;
    private final CabinReading previous;
    private final ExpectedAt expected;
    private final ExpectedAt before;
    private final double climbed;
    private final double cabinClimbed;
    private final String from;

    TrendCheck(ReadingCheck check, CabinReading previous) {
        this.check = check;
        this.reading = check.reading();
        this.previous = previous;
        this.expected = check.expected();
        this.before = check.expectedAt(previous);
        this.climbed = reading.aeroplane().inMetres() - previous.aeroplane().inMetres();
        this.cabinClimbed = reading.cabin().inMetres() - previous.cabin().inMetres();
        this.from = " since " + InFeet.of(previous.aeroplane().inMetres());
    }

    void run() {
        refuseWhatWasLater();
        averageRate();
        if (climbed > 2.0 * check.altitudeTolerance()) {
            climbsWithTheAeroplane();
            builds();
        } else if (climbed <= check.altitudeTolerance()) {
            keeps();
        }
    }

    private void refuseWhatWasLater() {
        Optional<Duration> now = reading.time();
        Optional<Duration> then = previous.time();
        boolean areTimed = now.isPresent() && then.isPresent();
        boolean isLater = !areTimed || now.orElseThrow().compareTo(then.orElseThrow()) > 0;
        if (!(climbed >= -check.altitudeTolerance() && isLater)) {
            throw new IllegalArgumentException(
                    "the previous reading must be before this one and not above it, but "
                            + previous
                            + " at "
                            + then.map(Duration::toString).orElse("no time read")
                            + " was compared with "
                            + reading
                            + " at "
                            + now.map(Duration::toString).orElse("no time read"));
        }
    }

    private void averageRate() {
        boolean isNowTimed = reading.time().isPresent();
        boolean isThenTimed = previous.time().isPresent();
        if (isNowTimed != isThenTimed) {
            check.found(
                    Verdict.AS_EXPECTED, "average rate not known" + from + ", one time not read");
            return;
        }
        Duration now = reading.time().orElse(expected.state().time());
        Duration then = previous.time().orElse(before.state().time());
        double seconds = now.minus(then).toNanos() / 1e9;
        if (seconds > 0.0) {
            averageRate(
                    seconds,
                    isNowTimed ? from : from + " by the times of the climb, times not read");
        } else {
            check.found(Verdict.AS_EXPECTED, "average rate not known" + from + ", times not read");
        }
    }

    private void averageRate(double seconds, String timed) {
        double average = cabinClimbed / seconds;
        double most = (expected.highM() - before.lowM()) / seconds;
        double least = (expected.lowM() - before.highM()) / seconds;
        double tolerance =
                Math.max(check.rateTolerance(), 2.0 * check.altitudeTolerance() / seconds);
        if (check.isBeyondLimit(average, most, least, tolerance)) {
            check.found(
                    Verdict.BEYOND_LIMIT,
                    ReadingCheck.moving(average)
                            + " on average"
                            + timed
                            + ", the limit is "
                            + check.limitOf(average));
        }
    }

    /** What the plan lets the cabin climb at most between the two. */
    private double mostClimbed() {
        return expected.highM() - before.lowM();
    }

    private void climbsWithTheAeroplane() {
        boolean isWithIt = cabinClimbed >= climbed - check.altitudeTolerance();
        if (isWithIt && cabinClimbed > mostClimbed() + 2.0 * check.altitudeTolerance()) {
            check.found(
                    Verdict.BEYOND_LIMIT,
                    "the cabin climbed "
                            + InFeet.of(cabinClimbed)
                            + " of the aeroplane's "
                            + InFeet.of(climbed)
                            + from);
        }
    }

    /** The differential of two readings: by the instrument if read twice, else by the altitudes. */
    private record Built(
            double then, double now, double oneTolerance, double both, String figures) {
        double by() {
            return now - then;
        }
    }

    private Built built() {
        double tolerance = check.differentialTolerance();
        if (reading.hasDifferential() && previous.hasDifferential()) {
            double then = previous.bestDifferentialPa();
            double now = reading.bestDifferentialPa();
            return new Built(then, now, tolerance, 2.0 * tolerance, figures(then, now));
        }
        double then = previous.ofAltitudesPa();
        double now = reading.ofAltitudesPa();
        double inThen = Math.max(tolerance, toleranceOfAltitudePa(previous));
        double inNow = Math.max(tolerance, toleranceOfAltitudePa(reading));
        String figures = figures(then, now) + " as the altitudes make it,";
        return new Built(then, now, Math.max(inThen, inNow), inThen + inNow, figures);
    }

    private static String figures(double then, double now) {
        return ReadingCheck.psi(then) + " to " + ReadingCheck.psi(now);
    }

    /** What a cabin altitude that was read high by its tolerance takes from the differential. */
    private double toleranceOfAltitudePa(CabinReading at) {
        double level = at.aeroplane().inMetres();
        double cabin = at.cabin().inMetres();
        return CabinPressure.differential(cabin - check.altitudeTolerance(), level)
                - CabinPressure.differential(cabin, level);
    }

    /** What the plan builds at least between the two. */
    private double leastBuilt() {
        return expected.leastPa() - before.mostPa();
    }

    private void builds() {
        Built built = built();
        double wanted = leastBuilt();
        if (built.by() >= wanted - built.both()) {
            return;
        }
        if (built.by() < -built.oneTolerance()) {
            check.found(
                    Verdict.DRIFTING,
                    "the differential falls while climbing, " + built.figures() + from + LOOK);
        } else if (built.by() < 0.5 * wanted) {
            check.found(
                    Verdict.DRIFTING,
                    "the differential does not build, "
                            + built.figures()
                            + from
                            + " where it should grow by "
                            + ReadingCheck.psi(wanted)
                            + LOOK);
        }
    }

    /** In level flight: whether the cabin stays where nothing makes it climb. */
    private void keeps() {
        if (cabinClimbed > mostClimbed() + check.altitudeTolerance()) {
            check.found(
                    Verdict.DRIFTING,
                    "the cabin rises in level flight, by "
                            + InFeet.of(cabinClimbed)
                            + from
                            + " where "
                            + InFeet.of(Math.max(0.0, mostClimbed()))
                            + " is expected"
                            + LOOK);
        }
        Built built = built();
        if (built.by() < Math.min(0.0, leastBuilt()) - built.oneTolerance()) {
            check.found(
                    Verdict.DRIFTING,
                    "the differential falls in level flight, " + built.figures() + from + LOOK);
        }
    }
}
