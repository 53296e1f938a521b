package org.climbwright.airspeed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Arrays;
import java.util.Random;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.climbwright.atmosphere.DryAir;
import org.climbwright.atmosphere.DryAirArrays;
import org.climbwright.atmosphere.Geopotential;
import org.climbwright.atmosphere.GeopotentialArrays;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.atmosphere.StandardAirArrays;
import org.climbwright.quantity.OutsideModelException;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Ten million numbers in all go through the functions over arrays and, one by one, through those of
 * one number. They are of three kinds: in the climb, all over the range, and anything at all.
 */
@DisplayName("A function over arrays")
class ArraysTest {
    private static final int SIZE = 10_007;
    private static final int ROUNDS = 60;
    private static final double UNTOUCHED = 42.0;

    @FunctionalInterface
    interface Over {
        int fill(double[] a, double[] b, double[] out, int from, int to);
    }

    /**
     * A function over arrays beside that of one number.
     *
     * @param ranges of the two arguments: the climb's, then the whole
     */
    record Pair(String name, Over arrays, DoubleBinaryOperator one, double[][] ranges) {
        @Override
        public String toString() {
            return name;
        }
    }

    private interface OverOne {
        int fill(double[] a, double[] out, int from, int to);
    }

    private static Pair ofOne(
            String name, OverOne arrays, DoubleUnaryOperator one, double... ranges) {
        return new Pair(
                name,
                (a, b, out, from, to) -> arrays.fill(a, out, from, to),
                (a, b) -> one.applyAsDouble(a),
                new double[][] {ranges, {0, 1, 0, 1}});
    }

    private static Pair ofTwo(
            String name, Over arrays, DoubleBinaryOperator one, double[] first, double[] second) {
        return new Pair(name, arrays, one, new double[][] {first, second});
    }

    private static double[] range(double... bounds) {
        return bounds;
    }

    static Stream<Pair> pairs() {
        double[] pressures = range(16000, 105000, 0.1, 1e6);
        double[] temperatures = range(215, 310, 100, 400);
        double[] machs = range(0.1, 0.9, 0, 5);
        return Stream.of(
                ofOne(
                        "temperatureFromAltitude",
                        StandardAirArrays::temperatureFromAltitude,
                        StandardAir::temperatureFromAltitude,
                        -1000,
                        13000,
                        -5000,
                        80000),
                ofOne(
                        "pressureFromAltitude",
                        StandardAirArrays::pressureFromAltitude,
                        StandardAir::pressureFromAltitude,
                        -1000,
                        13000,
                        -5000,
                        80000),
                ofOne(
                        "densityFromAltitude",
                        StandardAirArrays::densityFromAltitude,
                        StandardAir::densityFromAltitude,
                        -1000,
                        13000,
                        -5000,
                        80000),
                ofOne(
                        "altitudeFromPressure",
                        StandardAirArrays::altitudeFromPressure,
                        StandardAir::altitudeFromPressure,
                        16000,
                        105000,
                        0.9,
                        177687),
                ofOne(
                        "altitudeFromDensity",
                        StandardAirArrays::altitudeFromDensity,
                        StandardAir::altitudeFromDensity,
                        0.25,
                        1.3,
                        1.6e-5,
                        1.93),
                ofOne(
                        "geopotentialFromGeometric",
                        GeopotentialArrays::geopotentialFromGeometric,
                        Geopotential::geopotentialFromGeometric,
                        -1000,
                        13000,
                        -10000,
                        200000),
                ofOne(
                        "geometricFromGeopotential",
                        GeopotentialArrays::geometricFromGeopotential,
                        Geopotential::geometricFromGeopotential,
                        -1000,
                        13000,
                        -10015.8,
                        193899),
                ofOne(
                        "speedOfSound",
                        DryAirArrays::speedOfSound,
                        DryAir::speedOfSound,
                        215,
                        310,
                        100,
                        400),
                ofTwo("density", DryAirArrays::density, DryAir::density, pressures, temperatures),
                ofTwo(
                        "machFromCas",
                        AirspeedArrays::machFromCas,
                        AirspeedConversion::machFromCas,
                        range(60, 200, 0, 1701),
                        pressures),
                ofTwo(
                        "machFromEas",
                        AirspeedArrays::machFromEas,
                        AirspeedConversion::machFromEas,
                        range(60, 150, 0, 1500),
                        pressures),
                ofTwo(
                        "machFromTas",
                        AirspeedArrays::machFromTas,
                        AirspeedConversion::machFromTas,
                        range(60, 260, 0, 1800),
                        temperatures),
                ofTwo(
                        "machFromImpactPressure",
                        AirspeedArrays::machFromImpactPressure,
                        AirspeedConversion::machFromImpactPressure,
                        range(1000, 30000, 0, 3e6),
                        pressures),
                ofTwo(
                        "casFromMach",
                        AirspeedArrays::casFromMach,
                        AirspeedConversion::casFromMach,
                        machs,
                        pressures),
                ofTwo(
                        "easFromMach",
                        AirspeedArrays::easFromMach,
                        AirspeedConversion::easFromMach,
                        machs,
                        pressures),
                ofTwo(
                        "tasFromMach",
                        AirspeedArrays::tasFromMach,
                        AirspeedConversion::tasFromMach,
                        machs,
                        temperatures),
                ofTwo(
                        "recoveryTemperatureFromMach",
                        (a, b, out, from, to) ->
                                AirspeedArrays.recoveryTemperatureFromMach(
                                        a, b, 0.97, out, from, to),
                        (a, b) -> TotalTemperature.fromMach(a, b, 0.97),
                        machs,
                        temperatures),
                ofTwo(
                        "impactPressureFromMach",
                        AirspeedArrays::impactPressureFromMach,
                        AirspeedConversion::impactPressureFromMach,
                        machs,
                        pressures));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("pairs")
    @DisplayName("gives the bits of the function of one number, or NaN where that refuses")
    void sameBits(Pair pair) {
        Random random = new Random(20_261_125);
        double[] a = new double[SIZE];
        double[] b = new double[SIZE];
        double[] out = new double[SIZE];
        for (int round = 0; round < ROUNDS; round++) {
            for (int i = 0; i < SIZE; i++) {
                a[i] = number(random, pair.ranges[0], round % 4);
                b[i] = number(random, pair.ranges[1], round % 4);
            }
            if (round % 3 == 0) {
                Arrays.sort(a); // whole blocks of one kind
            }
            int from = random.nextInt(40);
            int to = SIZE - random.nextInt(40);
            Arrays.fill(out, UNTOUCHED);

            int refused = pair.arrays.fill(a, b, out, from, to);

            int expected = 0;
            for (int i = 0; i < SIZE; i++) {
                double one = i < from || i >= to ? UNTOUCHED : orNaN(pair.one, a[i], b[i]);
                expected += Double.isNaN(one) ? 1 : 0;
                if (Double.doubleToLongBits(out[i]) != Double.doubleToLongBits(one)) {
                    assertThat(out[i]).as("of %s and %s", a[i], b[i]).isEqualTo(one);
                }
            }
            assertThat(refused).isEqualTo(expected);
        }
    }

    /**
     * Kind 0 and 1: of a climb. 2: of the whole range and some beyond. 3: with odd ones between.
     */
    private static double number(Random random, double[] range, int kind) {
        if (kind < 2) {
            return range[0] + (range[1] - range[0]) * random.nextDouble();
        }
        double width = range[3] - range[2];
        double whole = range[2] - 0.01 * width + 1.02 * width * random.nextDouble();
        if (kind == 2) {
            return whole;
        }
        return switch (random.nextInt(40)) {
            case 0 -> Double.NaN;
            case 1 -> Double.POSITIVE_INFINITY;
            case 2 -> Double.NEGATIVE_INFINITY;
            case 3 -> range[2];
            case 4 -> range[3];
            case 5 -> Math.nextDown(range[2]);
            case 6 -> Math.nextUp(range[3]);
            case 7 -> -Double.MIN_VALUE;
            case 8 -> -0.0;
            case 9 -> Double.longBitsToDouble(random.nextLong());
            case 10 -> -whole;
            default -> range[0] + (range[1] - range[0]) * random.nextDouble();
        };
    }

    private static double orNaN(DoubleBinaryOperator one, double a, double b) {
        try {
            return one.applyAsDouble(a, b);
        } catch (OutsideModelException refused) {
            return Double.NaN;
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("pairs")
    @DisplayName("refuses to write over its arguments, and takes an empty span")
    void spans(Pair pair) {
        double[] a = {1.0, 2.0};
        assertThatIllegalArgumentException()
                .isThrownBy(() -> pair.arrays.fill(a, new double[2], a, 0, 2));
        assertThat(pair.arrays.fill(a, new double[2], new double[2], 1, 1)).isZero();
    }

    @Test
    @DisplayName("refuses a recovery factor that no probe has")
    void recoveryFactor() {
        double[] one = {0.5};
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(
                        () ->
                                AirspeedArrays.recoveryTemperatureFromMach(
                                        one, new double[] {250.0}, 1.1, new double[1], 0, 1));
    }

    @Test
    @DisplayName("answers as the examples in their documentation say")
    void examples() {
        double[] altitudeM = {0.0, 5000.0, 11000.0, Double.NaN};
        double[] pressurePa = new double[4];
        assertThat(StandardAirArrays.pressureFromAltitude(altitudeM, pressurePa, 0, 4))
                .isEqualTo(1);
        assertThat(pressurePa[2]).hasToString("22632.0400950078");
        assertThat(pressurePa[3]).isNaN();
        double[] mach = new double[2];
        int refused =
                AirspeedArrays.machFromCas(
                        new double[] {150.0, 150.0}, new double[] {101325.0, 30000.0}, mach, 0, 2);
        assertThat(refused).isZero();
        assertThat(mach[1]).hasToString("0.7713134999474114");
    }
}
