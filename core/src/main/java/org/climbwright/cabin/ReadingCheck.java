package org.climbwright.cabin;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.climbwright.cabin.CabinCheck.Answer;
import org.climbwright.cabin.CabinCheck.Tolerances;
import org.climbwright.cabin.CabinCheck.Verdict;
import org.climbwright.quantity.altitude.CabinAltitude;
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
    private final ExpectedAt expected;
    private final double warningM;
    private final double altitudeTolerance;
    private final double rateTolerance;
    private final double differentialTolerance;
    private final List<String> reasons = new ArrayList<>();
    private Verdict verdict = Verdict.AS_EXPECTED;

    ReadingCheck(
            ExpectedCabin cabin,
            Tolerances tolerances,
            CabinAltitude warning,
            CabinReading reading) {
        this.cabin = cabin;
        this.limits = cabin.plan().limits();
        this.rates = cabin.plan().rates();
        this.reading = reading;
        this.warningM = warning.inMetres();
        this.altitudeTolerance = tolerances.cabinAltitude().inMetres() + ROUNDING;
        this.rateTolerance = tolerances.rate().inMetresPerSecond() + ROUNDING;
        this.differentialTolerance = tolerances.differential().inPascals() + ROUNDING;
        this.expected = expectedAt(reading);
    }

    ExpectedAt expectedAt(CabinReading at) {
        return ExpectedAt.of(cabin, at, altitudeTolerance);
    }

    ExpectedAt expected() {
        return expected;
    }

    CabinReading reading() {
        return reading;
    }

    double altitudeTolerance() {
        return altitudeTolerance;
    }

    double rateTolerance() {
        return rateTolerance;
    }

    double differentialTolerance() {
        return differentialTolerance;
    }

    Answer answer() {
        if (verdict != Verdict.AS_EXPECTED) {
            reasons.add("what to do is in the operator's checklist and the flight manual");
        }
        return new Answer(verdict, reasons, expected.state());
    }

    void found(Verdict found, String reason) {
        verdict = found.compareTo(verdict) > 0 ? found : verdict;
        reasons.add(reason);
    }

    void alone() {
        cabinAltitude();
        height();
        warning();
        differential();
        rate();
    }

    private void cabinAltitude() {
        double read = reading.cabin().inMetres();
        double off = ExpectedAt.off(read, expected.lowM(), expected.highM());
        String figures =
                InFeet.of(read)
                        + " read where "
                        + expected.cabinInWords()
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

    /** What one reading shows without any other. */
    private void height() {
        double read = reading.cabin().inMetres();
        double aeroplane = reading.aeroplane().inMetres();
        boolean isExpected = expected.highM() > aeroplane - 2.0 * altitudeTolerance;
        if (read > aeroplane - altitudeTolerance && !isExpected) {
            found(
                    Verdict.BEYOND_LIMIT,
                    "the cabin is where the aeroplane is: "
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

    /** Always named, and never within a tolerance; a limit where the plan stays below it. */
    private void warning() {
        double read = reading.cabin().inMetres();
        if (read < warningM - ROUNDING) {
            return;
        }
        String figures =
                "cabin altitude "
                        + InFeet.of(read)
                        + ", at or above the "
                        + InFeet.of(warningM)
                        + " of the cabin altitude warning";
        if (expected.highM() < warningM - ROUNDING) {
            found(
                    Verdict.BEYOND_LIMIT,
                    figures + ", where the plan has " + expected.cabinInWords());
        } else {
            found(Verdict.AS_EXPECTED, figures + ", as the plan itself has it there");
        }
    }

    private void differential() {
        double ofAltitudes = reading.ofAltitudesPa();
        reading.differential()
                .ifPresentOrElse(
                        read -> {
                            belongsTogether(read.inPascals(), ofAltitudes);
                            limits(read.inPascals(), 0.0, "");
                        },
                        () ->
                                found(
                                        Verdict.AS_EXPECTED,
                                        "differential not read; the two altitudes make "
                                                + psi(ofAltitudes)));
        // what is computed of two altitudes is only as good as they are
        limits(ofAltitudes, differentialTolerance, ", as the altitudes make it");
        if (isReliefExpected()) {
            found(
                    Verdict.AS_EXPECTED,
                    "the plan expects the relief valve to be open here, at "
                            + psi(limits.relief().inPascals()));
        }
    }

    private boolean isReliefExpected() {
        return expected.state().boundBy() == CabinState.BoundBy.RELIEF_SETTING;
    }

    /** A valve opens at its setting; by how much a differential may be beyond it, or not at all. */
    private void limits(double pascals, double beyond, String how) {
        double relief = limits.relief().inPascals();
        double scheduled = Math.max(limits.scheduled().inPascals(), expected.mostPa());
        double opens = relief + (isReliefExpected() ? differentialTolerance : beyond);
        if (pascals >= opens - ROUNDING) {
            found(
                    Verdict.BEYOND_LIMIT,
                    "differential at the relief setting or above: "
                            + psi(pascals)
                            + " where the relief valve opens at "
                            + psi(relief)
                            + how);
        } else if (pascals > scheduled + differentialTolerance) {
            found(
                    Verdict.BEYOND_LIMIT,
                    "differential "
                            + psi(pascals)
                            + " where at most "
                            + psi(scheduled)
                            + " is scheduled"
                            + how);
        }
        if (pascals < -ROUNDING && pascals <= limits.negativeRelief().inPascals() - beyond) {
            found(
                    Verdict.BEYOND_LIMIT,
                    "differential at the negative relief setting or beyond: " + psi(pascals) + how);
        } else if (pascals < -differentialTolerance) {
            found(
                    Verdict.DRIFTING,
                    "the cabin is above the aeroplane: differential " + psi(pascals) + how);
        }
    }

    private void belongsTogether(double read, double ofAltitudes) {
        double off = ExpectedAt.off(read, expected.leastPa(), expected.mostPa());
        String wanted = ExpectedAt.span(psi(expected.leastPa()), psi(expected.mostPa()));
        String figures = psi(read) + " read where " + wanted + " is expected";
        if (Math.abs(off) <= differentialTolerance) {
            found(Verdict.AS_EXPECTED, "differential within tolerance: " + figures);
        } else {
            String side = off > 0.0 ? "above" : "below";
            found(
                    Verdict.DRIFTING,
                    "differential "
                            + psi(Math.abs(off))
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
        double least = expected.leastMps();
        double most = expected.mostMps();
        String wanted = expected.rateInWords() + " is expected";
        if (isBeyondLimit(read, most, least, rateTolerance)) {
            found(Verdict.BEYOND_LIMIT, moving(read) + " where the limit is " + limitOf(read));
        } else if (Math.abs(ExpectedAt.off(read, least, most)) > rateTolerance) {
            found(Verdict.DRIFTING, moving(read) + " where " + wanted);
        } else {
            found(
                    Verdict.AS_EXPECTED,
                    "cabin rate within tolerance: "
                            + InFeet.perMinute(read)
                            + " read where "
                            + wanted);
        }
    }

    /** A rate that the plan itself expects above its limit, where that gave way, is none. */
    boolean isBeyondLimit(double rate, double expectedUp, double expectedDown, double tolerance) {
        return rate > Math.max(rates.up().inMetresPerSecond(), expectedUp) + tolerance
                || rate < Math.min(-rates.down().inMetresPerSecond(), expectedDown) - tolerance;
    }

    String limitOf(double rate) {
        return InFeet.perMinute((rate > 0.0 ? rates.up() : rates.down()).inMetresPerSecond());
    }

    static String moving(double rate) {
        String figure = InFeet.perMinute(Math.abs(rate));
        if (figure.equals(InFeet.perMinute(0.0))) {
            return "cabin steady, " + figure;
        }
        return (rate > 0.0 ? "cabin climbing at " : "cabin descending at ") + figure;
    }

    static String psi(double pascals) {
        return String.format(Locale.ROOT, "%.2f psi", pascals / PSI);
    }
}
