package org.climbwright.ledger;

import static org.climbwright.atmosphere.IcaoConstants.SEA_LEVEL_PRESSURE_PA;
import static org.climbwright.atmosphere.IcaoConstants.SEA_LEVEL_SPEED_OF_SOUND_MPS;
import static org.climbwright.ledger.AirspeedRows.FASTEST_MPS;
import static org.climbwright.ledger.AirspeedRows.PRESSURE;
import static org.climbwright.ledger.AirspeedRows.SLOWEST;
import static org.climbwright.ledger.ExactSpeeds.eas;
import static org.climbwright.ledger.ExactSpeeds.factor;
import static org.climbwright.ledger.ExactSpeeds.impact;
import static org.climbwright.ledger.ExactSpeeds.impactOfCas;
import static org.climbwright.ledger.ExactSpeeds.ratio;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.climbwright.airspeed.AirspeedConversion;
import org.climbwright.testing.FiftyDigits;

/** The rows of what a pitot tube has to do with, split at Mach 1. */
final class TubeRows {
    /** Impact pressure over static pressure at Mach 1 and at Mach 5. */
    private static final double SONIC = ratio(1.0).doubleValue();

    private static final double HIGHEST = ratio(5.0).doubleValue();

    private TubeRows() {}

    static List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (boolean supersonic : new boolean[] {false, true}) {
            intoMach(rows, supersonic);
            outOfMach(rows, supersonic);
            betweenSpeedAndPressure(rows, supersonic);
        }
        return rows;
    }

    private static void intoMach(List<Row> rows, boolean supersonic) {
        Axis cas =
                supersonic
                        ? Axis.following(
                                "casMps of Mach 1 to that of Mach 5",
                                in -> cas(1.0, in[1]),
                                in -> cas(5.0, in[1]))
                        : Axis.following(
                                        "casMps 0 to that of Mach 1",
                                        in -> 0.0,
                                        in -> cas(1.0, in[1]))
                                .logarithmicFrom(SLOWEST);
        rows.add(
                Row.of(
                                AirspeedConversion.class,
                                "machFromCas",
                                in -> FiftyDigits.machOfCas(in[0], in[1]),
                                cas.marking(SEA_LEVEL_SPEED_OF_SOUND_MPS),
                                PRESSURE)
                        .part(part(supersonic))
                        .where(in -> AirspeedConversion.coversCas(in[0], in[1]))
                        .withResults(lowest(supersonic), highest(supersonic)));
        Axis impact =
                supersonic
                        ? Axis.following(
                                "impactPressurePa of Mach 1 to that of Mach 5",
                                in -> SONIC * in[1],
                                in -> HIGHEST * in[1])
                        : Axis.following(
                                        "impactPressurePa 0 to that of Mach 1",
                                        in -> 0.0,
                                        in -> SONIC * in[1])
                                .logarithmicFrom(SLOWEST * SLOWEST);
        rows.add(
                Row.of(
                                AirspeedConversion.class,
                                "machFromImpactPressure",
                                in ->
                                        FiftyDigits.mach(
                                                new BigDecimal(in[0]), new BigDecimal(in[1])),
                                impact,
                                PRESSURE)
                        .part(part(supersonic))
                        .where(in -> AirspeedConversion.coversImpactPressure(in[0], in[1]))
                        .withResults(lowest(supersonic), highest(supersonic)));
    }

    private static void outOfMach(List<Row> rows, boolean supersonic) {
        Axis mach = mach(supersonic);
        Axis withCas = // the calibrated airspeed passes the speed of sound at another Mach number
                Axis.following(mach.range(), in -> lowest(supersonic), in -> highest(supersonic))
                        .logarithmicFrom(supersonic ? 0.2 : SLOWEST)
                        .marking(in -> machOfSonicCas(in[1]));
        rows.add(
                Row.of(
                                AirspeedConversion.class,
                                "casFromMach",
                                in -> FiftyDigits.casOfMach(in[0], in[1]),
                                withCas,
                                PRESSURE)
                        .part(part(supersonic))
                        .where(in -> AirspeedConversion.hasCas(in[0], in[1])));
        rows.add(
                Row.of(
                                AirspeedConversion.class,
                                "impactPressureFromMach",
                                in -> impact(in[0], in[1]),
                                mach,
                                PRESSURE)
                        .part(part(supersonic)));
        rows.add(
                Row.of(
                                AirspeedConversion.class,
                                "totalPressureFromMach",
                                in -> impact(in[0], in[1]).add(new BigDecimal(in[1])),
                                mach,
                                PRESSURE)
                        .part(part(supersonic)));
        rows.add(
                Row.of(
                                AirspeedConversion.class,
                                "compressibilityCorrectionFromMach",
                                in ->
                                        eas(in[0], in[1])
                                                .subtract(FiftyDigits.casOfMach(in[0], in[1])),
                                withCas,
                                PRESSURE)
                        .part(part(supersonic))
                        .where(in -> AirspeedConversion.hasCas(in[0], in[1]))
                        .toldIn(
                                new Measure(
                                        "relative to CAS",
                                        1.5e-15,
                                        (in, exact, distance) ->
                                                distance / Math.max(1e-100, cas(in[0], in[1])))));
        rows.add(
                Row.of(
                                AirspeedConversion.class,
                                "compressibilityFactorFromMach",
                                in -> factor(in[0], in[1]),
                                withCas,
                                PRESSURE)
                        .part(part(supersonic))
                        .where(in -> AirspeedConversion.hasCas(in[0], in[1]))
                        .toldIn(Measure.ulps(Double.NaN), Measure.relative(1.5e-15)));
    }

    private static void betweenSpeedAndPressure(List<Row> rows, boolean supersonic) {
        double sonic = SEA_LEVEL_PRESSURE_PA * SONIC;
        rows.add(
                Row.of(
                                AirspeedConversion.class,
                                "impactPressureFromCas",
                                in -> impactOfCas(in[0]),
                                supersonic
                                        ? Axis.of(
                                                "casMps", SEA_LEVEL_SPEED_OF_SOUND_MPS, FASTEST_MPS)
                                        : Axis.of("casMps", 0.0, SEA_LEVEL_SPEED_OF_SOUND_MPS)
                                                .logarithmicFrom(SLOWEST))
                        .part(part(supersonic)));
        rows.add(
                Row.of(
                                AirspeedConversion.class,
                                "casFromImpactPressure",
                                in ->
                                        FiftyDigits.mach(
                                                        new BigDecimal(in[0]),
                                                        FiftyDigits.seaLevelPressure())
                                                .multiply(FiftyDigits.seaLevelSpeedOfSound()),
                                supersonic
                                        ? Axis.of(
                                                "impactPressurePa",
                                                sonic,
                                                SEA_LEVEL_PRESSURE_PA * HIGHEST)
                                        : Axis.of("impactPressurePa", 0.0, sonic)
                                                .logarithmicFrom(SLOWEST * SLOWEST))
                        .part(part(supersonic))
                        .where(
                                in ->
                                        AirspeedConversion.coversImpactPressure(
                                                in[0], SEA_LEVEL_PRESSURE_PA))
                        .withResults(0.0, FASTEST_MPS));
    }

    private static String part(boolean supersonic) {
        return supersonic ? "Mach 1 to 5" : "to Mach 1";
    }

    private static double lowest(boolean supersonic) {
        return supersonic ? 1.0 : 0.0;
    }

    private static double highest(boolean supersonic) {
        return supersonic ? 5.0 : 1.0;
    }

    private static Axis mach(boolean supersonic) {
        return supersonic
                ? Axis.of("mach", 1.0, 5.0)
                : Axis.of("mach", 0.0, 1.0).logarithmicFrom(SLOWEST);
    }

    /** As the library has it: only to know how far an axis goes. */
    private static double cas(double mach, double pressurePa) {
        return AirspeedConversion.hasCas(mach, pressurePa)
                ? AirspeedConversion.casFromMach(mach, pressurePa)
                : FASTEST_MPS;
    }

    private static double machOfSonicCas(double pressurePa) {
        return AirspeedConversion.coversCas(SEA_LEVEL_SPEED_OF_SOUND_MPS, pressurePa)
                ? AirspeedConversion.machFromCas(SEA_LEVEL_SPEED_OF_SOUND_MPS, pressurePa)
                : Double.NaN;
    }
}
