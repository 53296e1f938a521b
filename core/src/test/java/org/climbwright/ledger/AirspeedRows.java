package org.climbwright.ledger;

import static org.climbwright.atmosphere.IcaoConstants.SEA_LEVEL_PRESSURE_PA;
import static org.climbwright.atmosphere.IcaoConstants.SEA_LEVEL_SPEED_OF_SOUND_MPS;
import static org.climbwright.ledger.ExactSpeeds.crossover;
import static org.climbwright.ledger.ExactSpeeds.eas;
import static org.climbwright.ledger.ExactSpeeds.over;
import static org.climbwright.ledger.ExactSpeeds.sound;
import static org.climbwright.testing.FiftyDigits.DIGITS;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.climbwright.airspeed.AirspeedConversion;
import org.climbwright.airspeed.Crossover;
import org.climbwright.atmosphere.DryAir;
import org.climbwright.testing.FiftyDigits;

/** The rows of the airspeeds that need no pitot tube, and of the crossovers. */
final class AirspeedRows {
    static final double FASTEST_MPS = 5.0 * SEA_LEVEL_SPEED_OF_SOUND_MPS;

    /** Where grids even in the logarithm begin: a share of the highest. */
    static final double SLOWEST = 1e-9;

    /** Of every function that takes one. */
    static final Axis PRESSURE =
            Axis.of("pressurePa", 0.1, 1e6).logarithmicFrom(1e-7).marking(SEA_LEVEL_PRESSURE_PA);

    private static final Axis MACH = Axis.of("mach", 0.0, 5.0).logarithmicFrom(SLOWEST);
    private static final Axis TEMPERATURE = Axis.of("temperatureK", 100.0, 400.0);

    private AirspeedRows() {}

    static List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        withoutTube(rows);
        rows.add(crossoverPressure("to Mach 1", Axis.of("mach", 0.01, 1.0).logarithmicFrom(0.01)));
        rows.add(crossoverPressure("Mach 1 to 5", Axis.of("mach", 1.0, 5.0)));
        rows.add(crossoverAltitude(-5000.0, 20000.0).part("-5 to 20 km"));
        rows.add(crossoverAltitude(20000.0, 80000.0).part("20 to 80 km"));
        return rows;
    }

    /** What has to do with Mach number, pressure and temperature alone. */
    private static void withoutTube(List<Row> rows) {
        Measure[] threeUlp = {Measure.ulps(3.0), Measure.relative(1e-15)};
        rows.add(
                Row.of(
                                AirspeedConversion.class,
                                "machFromEas",
                                in -> over(new BigDecimal(in[0]), eas(1.0, in[1])),
                                Axis.following(
                                                "easMps 0 to that of Mach 5",
                                                in -> 0.0,
                                                in ->
                                                        5.0
                                                                * AirspeedConversion.easFromMach(
                                                                        1.0, in[1]))
                                        .logarithmicFrom(SLOWEST),
                                PRESSURE)
                        .where(in -> AirspeedConversion.coversEas(in[0], in[1]))
                        .withResults(0.0, 5.0)
                        .toldIn(threeUlp));
        rows.add(
                Row.of(
                                AirspeedConversion.class,
                                "machFromTas",
                                in -> over(new BigDecimal(in[0]), sound(in[1])),
                                Axis.following(
                                                "tasMps 0 to that of Mach 5",
                                                in -> 0.0,
                                                in -> 5.0 * DryAir.speedOfSound(in[1]))
                                        .logarithmicFrom(SLOWEST),
                                TEMPERATURE)
                        .where(in -> AirspeedConversion.coversTas(in[0], in[1]))
                        .withResults(0.0, 5.0)
                        .toldIn(threeUlp));
        rows.add(
                Row.of(
                                AirspeedConversion.class,
                                "easFromMach",
                                in -> eas(in[0], in[1]),
                                MACH,
                                PRESSURE)
                        .toldIn(threeUlp));
        rows.add(
                Row.of(
                                AirspeedConversion.class,
                                "tasFromMach",
                                in -> new BigDecimal(in[0]).multiply(sound(in[1])),
                                MACH,
                                TEMPERATURE)
                        .toldIn(threeUlp));
        rows.add(
                Row.of(
                                AirspeedConversion.class,
                                "dynamicPressureFromMach",
                                in ->
                                        new BigDecimal(in[0])
                                                .pow(2, DIGITS)
                                                .multiply(new BigDecimal("0.7"))
                                                .multiply(new BigDecimal(in[1])),
                                MACH,
                                PRESSURE)
                        .toldIn(threeUlp));
    }

    private static Row crossoverPressure(String part, Axis mach) {
        return Row.of(
                        AirspeedConversion.class,
                        "crossoverPressure",
                        in -> crossover(in[0], in[1]),
                        Axis.of("casMps", 1.0, FASTEST_MPS)
                                .logarithmicFrom(1.0 / FASTEST_MPS)
                                .marking(SEA_LEVEL_SPEED_OF_SOUND_MPS),
                        mach)
                .part(part)
                .toldIn(Measure.ulps(Double.NaN), Measure.relative(1.5e-15));
    }

    private static Row crossoverAltitude(double lowestM, double highestM) {
        double lowestPa = FiftyDigits.pressure(highestM).doubleValue();
        double highestPa = FiftyDigits.pressure(lowestM).doubleValue();
        return Row.of(
                        Crossover.class,
                        "altitude",
                        in -> FiftyDigits.altitudeOfPressure(crossover(in[0], in[1])),
                        Axis.of("casMps", 1.0, FASTEST_MPS)
                                .logarithmicFrom(1.0 / FASTEST_MPS)
                                .marking(SEA_LEVEL_SPEED_OF_SOUND_MPS),
                        Axis.following(
                                        "mach of the lowest to that of the highest altitude",
                                        in -> machOf(in[0], highestPa),
                                        in -> machOf(in[0], lowestPa))
                                .marking(1.0)
                                .marking(in -> machOf(in[0], SEA_LEVEL_PRESSURE_PA))
                                .marking(in -> machOf(in[0], 22632.0)))
                .where(in -> Crossover.hasAltitude(in[0], in[1]))
                .withResults(lowestM, highestM)
                .toldIn(
                        Measure.metres(Double.NaN),
                        Measure.share(
                                "1e-11 m or 2 ulp and 1.5e-15 of the pressure",
                                (in, exact) ->
                                        Measure.altitudeBar(exact)
                                                + 1.5e-15 * scaleHeightM(exact)));
    }

    /** By how many metres the pressure falls to an e-th. */
    private static double scaleHeightM(BigDecimal altitudeM) {
        return FiftyDigits.temperature(altitudeM).doubleValue() * (287.05287 / 9.80665);
    }

    private static double machOf(double casMps, double pressurePa) {
        double mach =
                AirspeedConversion.coversCas(casMps, pressurePa)
                        ? AirspeedConversion.machFromCas(casMps, pressurePa)
                        : 5.0;
        return Math.max(0.01, mach);
    }
}
