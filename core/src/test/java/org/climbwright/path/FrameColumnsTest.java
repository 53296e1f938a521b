package org.climbwright.path;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleSupplier;
import org.climbwright.airspeed.AirspeedConversion;
import org.climbwright.airspeed.TotalTemperature;
import org.climbwright.atmosphere.DryAir;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.atmosphere.altimetry.VerticalRates;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The columns of many frames")
class FrameColumnsTest {
    private static final int SIZE = 20_011;
    private static final int ROUNDS = 12;

    @Test
    @DisplayName("hold the bits of the functions of one number, and NaN where those refuse")
    void sameBits() {
        Random random = new Random(20_261_126);
        double[] altitudeM = new double[SIZE];
        double[] temperatureK = new double[SIZE];
        double[] casMps = new double[SIZE];
        double[] rateMps = new double[SIZE];
        FrameColumns columns = FrameColumns.ofSize(SIZE);
        for (int round = 0; round < ROUNDS; round++) {
            for (int i = 0; i < SIZE; i++) {
                boolean odd = round % 3 == 2 && random.nextInt(8) == 0;
                altitudeM[i] = number(random, odd, -1000.0, 13000.0, -5000.0, 80000.0);
                temperatureK[i] = number(random, odd, 215.0, 310.0, 100.0, 400.0);
                casMps[i] = number(random, odd, 60.0, 150.0, 0.0, 1701.0);
                rateMps[i] = number(random, odd, -20.0, 20.0, -300.0, 300.0);
            }
            if (round % 2 == 0) {
                Arrays.sort(altitudeM);
            }
            int from = random.nextInt(30);
            int to = SIZE - random.nextInt(30);

            int refused = columns.fill(altitudeM, temperatureK, casMps, rateMps, from, to);

            int expected = 0;
            for (int i = from; i < to; i++) {
                double[] one = one(altitudeM[i], temperatureK[i], casMps[i], rateMps[i]);
                double[] ours = frame(columns, i);
                if (!Arrays.equals(ours, one)) {
                    assertThat(ours)
                            .as(
                                    "of %s m, %s K, %s m/s, %s m/s",
                                    altitudeM[i], temperatureK[i], casMps[i], rateMps[i])
                            .isEqualTo(one);
                }
                expected += Arrays.stream(one).anyMatch(Double::isNaN) ? 1 : 0;
            }
            assertThat(refused).isEqualTo(expected);
        }
    }

    private static double number(
            Random random, boolean odd, double low, double high, double lowest, double highest) {
        if (!odd) {
            return low + (high - low) * random.nextDouble();
        }
        return switch (random.nextInt(9)) {
            case 0 -> Double.NaN;
            case 1 -> Double.POSITIVE_INFINITY;
            case 2 -> lowest;
            case 3 -> highest;
            case 4 -> Math.nextDown(lowest);
            case 5 -> Math.nextUp(highest);
            case 6 -> -0.0;
            default -> lowest + (highest - lowest) * random.nextDouble();
        };
    }

    private static double[] one(double altitudeM, double temperatureK, double cas, double rate) {
        double pressure = orNaN(() -> StandardAir.pressureFromAltitude(altitudeM));
        double density = orNaN(() -> DryAir.density(pressure, temperatureK));
        double mach = orNaN(() -> AirspeedConversion.machFromCas(cas, pressure));
        double tas = orNaN(() -> AirspeedConversion.tasFromMach(mach, temperatureK));
        double geometric =
                orNaN(
                        () ->
                                rate
                                        * VerticalRates.geometricPerPressureAltitude(
                                                altitudeM, temperatureK));
        return new double[] {
            pressure,
            density,
            orNaN(() -> DryAir.speedOfSound(temperatureK)),
            mach,
            orNaN(() -> AirspeedConversion.easFromMach(mach, pressure)),
            tas,
            orNaN(() -> TotalTemperature.fromMach(mach, temperatureK, 1.0)),
            orNaN(() -> StandardAir.altitudeFromDensity(density)),
            Double.isFinite(geometric) ? geometric : Double.NaN,
            orNaN(() -> GroundTrack.airGradient(tas, geometric))
        };
    }

    private static double orNaN(DoubleSupplier figure) {
        try {
            return figure.getAsDouble();
        } catch (IllegalArgumentException refused) {
            return Double.NaN;
        }
    }

    private static double[] frame(FrameColumns columns, int i) {
        return all(columns).stream().mapToDouble(column -> column[i]).toArray();
    }

    private static List<double[]> all(FrameColumns columns) {
        return List.of(
                columns.pressurePa(),
                columns.densityKgPerM3(),
                columns.speedOfSoundMps(),
                columns.mach(),
                columns.easMps(),
                columns.tasMps(),
                columns.totalTemperatureK(),
                columns.densityAltitudeM(),
                columns.geometricRateMps(),
                columns.airGradient());
    }

    @Test
    @DisplayName("leave what lies outside the span as it was")
    void span() {
        FrameColumns columns = FrameColumns.ofSize(3);
        double[] altitudeM = {1000.0, 2000.0, 3000.0};
        double[] temperatureK = {280.0, 275.0, 270.0};
        double[] casMps = {120.0, 120.0, 120.0};
        double[] rateMps = {10.0, 10.0, 10.0};

        assertThat(columns.fill(altitudeM, temperatureK, casMps, rateMps, 1, 2)).isZero();

        for (double[] column : all(columns)) {
            assertThat(column[0]).isZero();
            assertThat(column[1]).isNotZero();
            assertThat(column[2]).isZero();
        }
        assertThat(columns.fill(altitudeM, temperatureK, casMps, rateMps, 2, 2)).isZero();
        assertThatExceptionOfType(IndexOutOfBoundsException.class)
                .isThrownBy(() -> columns.fill(altitudeM, temperatureK, casMps, rateMps, 0, 4));
    }

    @Test
    @DisplayName("refuse each of themselves as an argument")
    void ownColumns() {
        FrameColumns columns = FrameColumns.ofSize(1);
        double[] other = {1.0};
        for (double[] column : all(columns)) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> columns.fill(column, other, other, other, 0, 1));
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> columns.fill(other, column, other, other, 0, 1));
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> columns.fill(other, other, column, other, 0, 1));
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> columns.fill(other, other, other, column, 0, 1));
        }
    }
}
