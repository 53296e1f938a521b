package org.climbwright.cabin;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.climbwright.cabin.CabinCheck.Answer;
import org.climbwright.cabin.CabinCheck.Tolerances;
import org.climbwright.cabin.CabinCheck.Verdict;
import org.climbwright.quantity.pressure.DifferentialPressure;

/** One reading of a cabin under check: collects what does not agree, and how bad that is. */
final class ReadingCheck {
    private static final double PSI = DifferentialPressure.ofPoundsPerSquareInch(1.0).inPascals();

    /** Metres, metres per second or pascals, so that a tolerance itself is within tolerance. */
    private static final double ROUNDING = 1e-6;

    private final ExpectedCabin cabin;
    private final DifferentialLimits limits;
    private final CabinRateLimits rates;
    private final CabinReading reading;
    private final CabinState expected;
    private final double altitudeTolerance;
    private final double rateTolerance;
    private final double differentialTolerance;
    private final List<String> reasons = new ArrayList<>();
    private Verdict verdict = Verdict.AS_EXPECTED;

    ReadingCheck(ExpectedCabin cabin, Tolerances tolerances, CabinReading reading) {
        this.cabin = cabin;
        this.limits = cabin.plan().limits();
        this.rates = cabin.plan().rates();
        this.reading = reading;
        this.expected = expectedAt(reading);
        this.altitudeTolerance = tolerances.cabinAltitude().inMetres() + ROUNDING;
        this.rateTolerance = tolerances.rate().inMetresPerSecond() + ROUNDING;
        this.differentialTolerance = tolerances.differential().inPascals() + ROUNDING;
    }

    /** By the level; by the time at the top, where the cabin goes on after the climb. */
    private CabinState expectedAt(CabinReading at) {
        CabinState climbing = cabin.at(at.aeroplane());
        boolean isAtTop = at.aeroplane().equals(cabin.top());
        return at.time()
                .filter(time -> isAtTop && time.compareTo(climbing.time()) > 0)
                .map(cabin::at)
                .orElse(climbing);
    }

    Answer answer() {
        if (verdict != Verdict.AS_EXPECTED) {
            reasons.add("what to do is in the operator's checklist and the flight manual");
        }
        return new Answer(verdict, reasons, expected);
    }

    private void found(Verdict found, String reason) {
        verdict = found.compareTo(verdict) > 0 ? found : verdict;
        reasons.add(reason);
    }

    void alone() {
        cabinAltitude();
        height();
        differential();
        rate();
    }

    private void cabinAltitude() {
        double read = reading.cabin().inMetres();
        double off = read - expected.cabin().inMetres();
        String figures =
                InFeet.of(read)
                        + " read where "
                        + InFeet.of(expected.cabin().inMetres())
                        + " is expected at "
                        + InFeet.of(reading.aeroplane().inMetres());
        if (Math.abs(off) <= altitudeTolerance) {
            found(Verdict.AS_EXPECTED, "cabin altitude within tolerance: " + figures);
        } else {
            String side = off > 0.0 ? " above" : " below";
            found(
                    Verdict.DRIFTING,
                    "cabin altitude "
                            + InFeet.of(Math.abs(off))
                            + side
                            + " the expected: "
                            + figures);
        }
    }

    /** What one reading shows without any other: no pressurisation, or none left to speak of. */
    private void height() {
        double read = reading.cabin().inMetres();
        double aeroplane = reading.aeroplane().inMetres();
        boolean isExpected = expected.cabin().inMetres() > aeroplane - 2.0 * altitudeTolerance;
        if (read > aeroplane - altitudeTolerance && !isExpected) {
            found(
                    Verdict.BEYOND_LIMIT,
                    "the cabin is where the aeroplane is, it is not pressurised: "
                            + InFeet.of(read)
                            + " at "
                            + InFeet.of(aeroplane));
        }
        double highest = cabin.highestM();
        if (read > highest + 2.0 * altitudeTolerance) {
            found(
                    Verdict.BEYOND_LIMIT,
                    "cabin altitude "
                            + InFeet.of(read)
                            + " where the whole plan has at most "
                            + InFeet.of(highest));
        }
    }

    private void differential() {
        double ofAltitudes = reading.ofAltitudesPa();
        reading.differential()
                .ifPresentOrElse(
                        read -> belongsTogether(read.inPascals(), ofAltitudes),
                        () ->
                                found(
                                        Verdict.AS_EXPECTED,
                                        "differential not read; the two altitudes make "
                                                + psi(ofAltitudes)));
        // a limit is passed if either the instrument or the two altitudes say so
        double most = Math.max(reading.bestDifferentialPa(), ofAltitudes);
        double least = Math.min(reading.bestDifferentialPa(), ofAltitudes);
        double scheduled =
                Math.max(limits.scheduled().inPascals(), expected.differential().inPascals());
        if (most >= limits.relief().inPascals()) {
            found(
                    Verdict.BEYOND_LIMIT,
                    "differential at the relief setting or above: "
                            + psi(most)
                            + " where the relief valve opens at "
                            + psi(limits.relief().inPascals()));
        } else if (most > scheduled + differentialTolerance) {
            found(
                    Verdict.BEYOND_LIMIT,
                    "differential "
                            + psi(most)
                            + " where at most "
                            + psi(scheduled)
                            + " is scheduled");
        }
        if (least < 0.0 && least <= limits.negativeRelief().inPascals()) {
            found(
                    Verdict.BEYOND_LIMIT,
                    "differential at the negative relief setting or beyond: " + psi(least));
        } else if (least < -differentialTolerance) {
            found(Verdict.DRIFTING, "the cabin is above the aeroplane: differential " + psi(least));
        }
    }

    private void belongsTogether(double read, double ofAltitudes) {
        double wanted = expected.differential().inPascals();
        String figures = psi(read) + " read where " + psi(wanted) + " is expected";
        if (Math.abs(read - wanted) <= differentialTolerance) {
            found(Verdict.AS_EXPECTED, "differential within tolerance: " + figures);
        } else {
            String side = read > wanted ? "above" : "below";
            found(
                    Verdict.DRIFTING,
                    "differential "
                            + psi(Math.abs(read - wanted))
                            + " "
                            + side
                            + " the expected: "
                            + figures);
        }
        if (!(Math.abs(read - ofAltitudes) <= differentialTolerance)) {
            found(
                    Verdict.DRIFTING,
                    "the readings do not belong together: "
                            + InFeet.of(reading.cabin().inMetres())
                            + " in the cabin at "
                            + InFeet.of(reading.aeroplane().inMetres())
                            + " makes "
                            + psi(ofAltitudes)
                            + ", but "
                            + psi(read)
                            + " was read");
        }
    }

    private void rate() {
        reading.rate()
                .ifPresentOrElse(
                        read -> rate(read.inMetresPerSecond()),
                        () -> found(Verdict.AS_EXPECTED, "cabin rate not read"));
    }

    private void rate(double read) {
        double wanted = expected.rate().inMetresPerSecond();
        double off = read - wanted;
        if (isBeyondLimit(read, Math.max(0.0, wanted), Math.min(0.0, wanted))) {
            found(Verdict.BEYOND_LIMIT, moving(read) + " where the limit is " + limitOf(read));
        } else if (Math.abs(off) > rateTolerance) {
            found(
                    Verdict.DRIFTING,
                    moving(read) + " where " + InFeet.perMinute(wanted) + " is expected");
        } else {
            found(
                    Verdict.AS_EXPECTED,
                    "cabin rate within tolerance: "
                            + InFeet.perMinute(read)
                            + " read where "
                            + InFeet.perMinute(wanted)
                            + " is expected");
        }
    }

    /** A rate that the plan itself expects above its limit, where that gave way, is none. */
    private boolean isBeyondLimit(double rate, double expectedUp, double expectedDown) {
        return rate > Math.max(rates.up().inMetresPerSecond(), expectedUp) + rateTolerance
                || rate < Math.min(-rates.down().inMetresPerSecond(), expectedDown) - rateTolerance;
    }

    private String limitOf(double rate) {
        return InFeet.perMinute((rate > 0.0 ? rates.up() : rates.down()).inMetresPerSecond());
    }

    private static String moving(double rate) {
        String how = rate > 0.0 ? "cabin climbing at " : "cabin descending at ";
        return how + InFeet.perMinute(Math.abs(rate));
    }

    void since(CabinReading previous) {
        CabinState before = expectedAt(previous);
        double climbed = reading.aeroplane().inMetres() - previous.aeroplane().inMetres();
        double seconds = timeS(reading, expected) - timeS(previous, before);
        if (!(climbed >= 0.0 && seconds > 0.0)) {
            throw new IllegalArgumentException(
                    "the previous reading must be before this one and not above it, but "
                            + previous
                            + " was compared with "
                            + reading
                            + ", "
                            + seconds
                            + " s after it");
        }
        double cabinClimbed = reading.cabin().inMetres() - previous.cabin().inMetres();
        String from = " since " + InFeet.of(previous.aeroplane().inMetres());
        boolean isTimed = reading.time().isPresent() && previous.time().isPresent();
        String timed = isTimed ? from : from + " by the times of the climb, times not read";
        averageRate(before, cabinClimbed / seconds, seconds, timed);
        if (climbed > 2.0 * altitudeTolerance) {
            climbsWithTheAeroplane(before, climbed, cabinClimbed, from);
            builds(before, previous, from);
        }
    }

    private static double timeS(CabinReading at, CabinState climb) {
        return at.time().orElse(climb.time()).toNanos() / 1e9;
    }

    private void averageRate(CabinState before, double average, double seconds, String from) {
        double wanted = (expected.cabin().inMetres() - before.cabin().inMetres()) / seconds;
        if (isBeyondLimit(average, Math.max(0.0, wanted), Math.min(0.0, wanted))) {
            found(
                    Verdict.BEYOND_LIMIT,
                    moving(average) + " on average" + from + ", the limit is " + limitOf(average));
        }
    }

    private void climbsWithTheAeroplane(
            CabinState before, double climbed, double cabinClimbed, String from) {
        double wanted = expected.cabin().inMetres() - before.cabin().inMetres();
        boolean isWithIt = cabinClimbed >= climbed - altitudeTolerance;
        if (isWithIt && wanted < climbed - altitudeTolerance) {
            found(
                    Verdict.BEYOND_LIMIT,
                    "the cabin climbs with the aeroplane, it is not being pressurised: "
                            + InFeet.of(cabinClimbed)
                            + " of "
                            + InFeet.of(climbed)
                            + from);
        }
    }

    private void builds(CabinState before, CabinReading previous, String from) {
        // like with like: an instrument and two altitudes may differ by the instrument
        boolean areRead = reading.hasDifferential() && previous.hasDifferential();
        double then = areRead ? previous.bestDifferentialPa() : previous.ofAltitudesPa();
        double now = areRead ? reading.bestDifferentialPa() : reading.ofAltitudesPa();
        double built = now - then;
        double wanted = expected.differential().inPascals() - before.differential().inPascals();
        String figures =
                psi(then) + " to " + psi(now) + (areRead ? "" : " as the altitudes make it,");
        String look =
                ": look at cabin altitude and rate, at inflow and outflow, and at what tells of"
                        + " doors and valves";
        if (built < -differentialTolerance && wanted > -differentialTolerance) {
            found(
                    Verdict.DRIFTING,
                    "the differential falls while climbing, " + figures + from + look);
        } else if (built < wanted - differentialTolerance && built < 0.5 * wanted) {
            found(
                    Verdict.DRIFTING,
                    "the differential does not build, "
                            + figures
                            + from
                            + " where it should grow by "
                            + psi(wanted)
                            + look);
        }
    }

    private static String psi(double pascals) {
        return String.format(Locale.ROOT, "%.2f psi", pascals / PSI);
    }
}
