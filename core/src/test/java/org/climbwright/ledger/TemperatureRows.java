package org.climbwright.ledger;

import static org.climbwright.testing.FiftyDigits.DIGITS;

import java.math.BigDecimal;
import java.util.List;
import org.climbwright.airspeed.TotalTemperature;
import org.climbwright.atmosphere.DryAir;
import org.climbwright.testing.FiftyDigits;

/** The rows of total and recovery temperature, of static air from 100 to 400 K. */
final class TemperatureRows {
    private static final double COLDEST_K = 100.0;
    private static final double HOTTEST_K = 400.0;

    private static final Axis MACH = Axis.of("mach", 0.0, 5.0).logarithmicFrom(1e-9).marking(1.0);
    private static final Axis RECOVERY = Axis.of("recoveryFactor", 0.0, 1.0);
    private static final Axis TEMPERATURE = Axis.of("temperatureK", COLDEST_K, HOTTEST_K);

    private TemperatureRows() {}

    static List<Row> rows() {
        Measure[] threeUlp = {Measure.ulps(3.0), Measure.relative(1e-15)};
        Measure[] fiveUlp = {Measure.ulps(5.0), Measure.relative(1.2e-15)};
        return List.of(
                Row.of(
                                TotalTemperature.class,
                                "fromMach",
                                in -> new BigDecimal(in[1]).multiply(rise(in[0], in[2])),
                                MACH,
                                TEMPERATURE,
                                RECOVERY)
                        .toldIn(threeUlp),
                ofStaticAir("staticFromMach", threeUlp),
                ofStaticAir("totalFromRecovery", fiveUlp),
                recoveryFromTotal(fiveUlp),
                staticFromTas(),
                machFromStatic(threeUlp));
    }

    private static Row ofStaticAir(String function, Measure... measures) {
        return Row.of(
                        TotalTemperature.class,
                        function,
                        in -> {
                            BigDecimal still = over(new BigDecimal(in[0]), rise(in[1], in[2]));
                            return function.equals("staticFromMach")
                                    ? still
                                    : still.multiply(rise(in[1], 1.0), DIGITS);
                        },
                        Axis.following(
                                "recoveryTemperatureK of 100 to 400 K at rest",
                                in -> COLDEST_K * rise(in[1], in[2]).doubleValue(),
                                in -> HOTTEST_K * rise(in[1], in[2]).doubleValue()),
                        MACH,
                        RECOVERY)
                .where(in -> isInside(over(new BigDecimal(in[0]), rise(in[1], in[2]))))
                .toldIn(measures);
    }

    private static Row recoveryFromTotal(Measure... measures) {
        return Row.of(
                        TotalTemperature.class,
                        "recoveryFromTotal",
                        in ->
                                over(new BigDecimal(in[0]), rise(in[1], 1.0))
                                        .multiply(rise(in[1], in[2]), DIGITS),
                        Axis.following(
                                "totalTemperatureK of 100 to 400 K at rest",
                                in -> COLDEST_K * rise(in[1], 1.0).doubleValue(),
                                in -> HOTTEST_K * rise(in[1], 1.0).doubleValue()),
                        MACH,
                        RECOVERY)
                .where(in -> isInside(over(new BigDecimal(in[0]), rise(in[1], 1.0))))
                .toldIn(measures);
    }

    private static Row staticFromTas() {
        return Row.of(
                        TotalTemperature.class,
                        "staticFromTas",
                        in -> new BigDecimal(in[0]).subtract(riseOfTas(in[1], in[2])),
                        Axis.following(
                                "recoveryTemperatureK of 100 to 400 K at rest",
                                in -> COLDEST_K + riseOfTas(in[1], in[2]).doubleValue(),
                                in -> HOTTEST_K + riseOfTas(in[1], in[2]).doubleValue()),
                        Axis.of("tasMps", 0.0, 5.0 * DryAir.speedOfSound(HOTTEST_K))
                                .logarithmicFrom(1e-9),
                        RECOVERY)
                .where(in -> TotalTemperature.coversTas(in[0], in[1], in[2]))
                .withResults(COLDEST_K, HOTTEST_K)
                .toldIn(
                        new Measure(
                                "relative to the one felt",
                                1e-15,
                                (in, exact, distance) -> distance / in[0]));
    }

    private static Row machFromStatic(Measure... measures) {
        return Row.of(
                        TotalTemperature.class,
                        "machFromStatic",
                        in -> {
                            BigDecimal t = new BigDecimal(in[1]);
                            BigDecimal share = t.multiply(new BigDecimal(in[2]));
                            BigDecimal fifth = over(new BigDecimal(in[0]).subtract(t), share);
                            return FiftyDigits.sqrt(fifth.multiply(BigDecimal.valueOf(5)));
                        },
                        Axis.following(
                                "recoveryTemperatureK of Mach 0 to that of Mach 5",
                                in -> in[1],
                                in -> in[1] * rise(5.0, in[2]).doubleValue()),
                        TEMPERATURE,
                        Axis.of("recoveryFactor", 1e-6, 1.0).logarithmicFrom(1e-6))
                .where(in -> TotalTemperature.hasMach(in[0], in[1], in[2]))
                .withResults(0.0, 5.0)
                .toldIn(measures);
    }

    private static boolean isInside(BigDecimal temperatureK) {
        return temperatureK.compareTo(new BigDecimal(COLDEST_K)) >= 0
                && temperatureK.compareTo(new BigDecimal(HOTTEST_K)) <= 0;
    }

    private static BigDecimal rise(double mach, double recoveryFactor) {
        BigDecimal square = new BigDecimal(mach).pow(2, DIGITS);
        BigDecimal fifth = square.multiply(new BigDecimal(recoveryFactor), DIGITS);
        return fifth.divide(BigDecimal.valueOf(5), DIGITS).add(BigDecimal.ONE, DIGITS);
    }

    private static BigDecimal riseOfTas(double tasMps, double recoveryFactor) {
        BigDecimal square = new BigDecimal(tasMps).pow(2, DIGITS);
        return square.multiply(new BigDecimal(recoveryFactor), DIGITS)
                .divide(new BigDecimal("2009.37009"), DIGITS); // 2 cp = 7 R
    }

    private static BigDecimal over(BigDecimal a, BigDecimal b) {
        return a.divide(b, DIGITS);
    }
}
