package org.climbwright.performance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.Geopotential;
import org.climbwright.atmosphere.MoistAir;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.atmosphere.wind.Wind;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.path.TrueDirection;
import org.climbwright.quantity.temperature.IsaDeviation;
import org.climbwright.quantity.temperature.IsaDeviationAtAltitude;
import org.climbwright.sounding.Sounding;
import org.climbwright.sounding.SoundingReader;
import org.climbwright.sounding.UnobservedWind;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The air of a climb")
class ClimbAirTest {
    private static final TrueDirection TRACK = TrueDirection.ofDegrees(70);
    private static final int POINTS = 2000;

    private final Differences worst = new Differences();

    /** The largest difference of each quantity between the polynomials and the plugs. */
    private static final class Differences {
        double temperature;
        double virtual;
        double height;
        double wind;

        /** Where reports of wind stand so near that some are passed over. */
        double passedOver;

        @Override
        public String toString() {
            return "temperature %.1e K, virtual %.1e, height %.1e, wind %.1e and %.1e m/s"
                    .formatted(temperature, virtual, height, wind, passedOver);
        }
    }

    private static Sounding sounding(String file) {
        try (InputStream in =
                Objects.requireNonNull(
                        ClimbAirTest.class.getResourceAsStream("/sounding/" + file))) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return SoundingReader.read(text.lines().toList()).soundings().get(0);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<String> soundings() {
        return List.of(
                "i70026_barrow_20100601.csv",
                "v01028_bjornoya_three_zero.csv",
                "v11035_vienna_winter.csv",
                "v24266_verkhoyansk_arctic.csv",
                "v40582_kuwait_desert.csv",
                "v72376_flagstaff_highelev.csv",
                "v72659_aberdeen_warmnose.csv",
                "v82332_manaus_tropical.csv",
                "v91408_koror_tropical.csv",
                "w72357_oun_20110522_capped.csv",
                "w72357_oun_jan20_inversion.csv",
                "w72681_boise_20101209.csv");
    }

    private void compare(Atmosphere air, Winds winds, double lowest, double highest) {
        ClimbAir climb = ClimbAir.of(air, winds, TRACK);
        Random random = new Random(7L);
        double bottom = Math.max(lowest, climb.range().lowest());
        double top = Math.min(highest, climb.range().highest());
        for (int i = 0; i < POINTS; i++) {
            double at = bottom + (top - bottom) * random.nextDouble();
            int stretch = climb.stretch(at, random.nextBoolean());
            double pressure = StandardAir.pressureFromAltitude(at);
            double temperature = air.temperature(pressure);
            double vapour = air.vapourPressure(pressure);
            double virtual =
                    Double.isNaN(vapour)
                            ? temperature
                            : MoistAir.virtualTemperature(temperature, vapour, pressure);
            worst.temperature =
                    Math.max(
                            worst.temperature,
                            Math.abs(climb.temperature(stretch, at) - temperature));
            double ratio = virtual / StandardAir.temperatureFromAltitude(at);
            worst.virtual =
                    Math.max(
                            worst.virtual,
                            Math.abs(
                                    climb.geopotentialPerPressureAltitude(stretch, at) / ratio
                                            - 1.0));
            double height = air.geopotentialAltitude(pressure);
            if (!Double.isNaN(height)) {
                worst.height =
                        Math.max(
                                worst.height,
                                Math.abs(
                                        climb.geometricPerGeopotential(stretch, at)
                                                - Geopotential
                                                        .geometricPerGeopotentialAtGeopotential(
                                                                height)));
            }
            double east = winds.eastward(pressure);
            double north = winds.northward(pressure);
            double along = Wind.alongTrack(east, north, TRACK.inRadians());
            double across = Wind.acrossTrack(east, north, TRACK.inRadians());
            assertThat(Double.isNaN(climb.alongTrack(stretch, at))).isEqualTo(Double.isNaN(along));
            assertThat(Double.isNaN(climb.acrossTrack(stretch, at)))
                    .isEqualTo(Double.isNaN(across));
            if (!Double.isNaN(along)) {
                double apart =
                        Math.max(
                                Math.abs(climb.alongTrack(stretch, at) - along),
                                Math.abs(climb.acrossTrack(stretch, at) - across));
                if (isFarFromOtherReports(winds, at)) {
                    worst.wind = Math.max(worst.wind, apart);
                } else {
                    worst.passedOver = Math.max(worst.passedOver, apart);
                }
            }
        }
    }

    /** Whether the reports on both sides of a level, and the one below those, are 60 m apart. */
    private static boolean isFarFromOtherReports(Winds winds, double levelM) {
        double[] reports =
                DoubleStream.of(winds.bendsPa())
                        .filter(StandardAir::coversPressure)
                        .map(StandardAir::altitudeFromPressure)
                        .sorted()
                        .toArray();
        int above = 0;
        while (above < reports.length && reports[above] <= levelM) {
            above++;
        }
        boolean isDeep =
                above == 0 || above == reports.length || reports[above] - reports[above - 1] >= 60;
        return isDeep && (above < 2 || reports[above - 1] - reports[above - 2] >= 60);
    }

    @Test
    @DisplayName("is standard air, to 1e-10 K, up to 80 km")
    void standard() {
        compare(Atmosphere.standard(), Winds.calm(), -5000.0, 80000.0);
        assertThat(worst.temperature).as(worst.toString()).isLessThan(1e-10);
        assertThat(worst.virtual).isLessThan(1e-12);
        assertThat(worst.height).isLessThan(1e-12);
        assertThat(worst.wind).isZero();
    }

    @ParameterizedTest
    @ValueSource(doubles = {-40.0, -15.0, 20.0, 35.0})
    @DisplayName("is air off standard at each pressure or altitude, up to 20 km, to 1e-10 K:")
    void offStandard(double deviation) {
        compare(
                Atmosphere.withDeviationAtEachPressure(IsaDeviation.ofKelvins(deviation)),
                Winds.calm(),
                -1000.0,
                20000.0);
        compare(
                Atmosphere.withDeviationAtEachAltitude(IsaDeviationAtAltitude.ofKelvins(deviation)),
                Winds.calm(),
                -1000.0,
                20000.0);
        assertThat(worst.temperature).as(worst.toString()).isLessThan(1e-10);
        assertThat(worst.virtual).isLessThan(1e-12);
    }

    @ParameterizedTest
    @MethodSource("soundings")
    @DisplayName("is a sounding with its winds, up to 20 km:")
    void aSounding(String file) {
        Sounding sounding = sounding(file);
        Atmosphere air = sounding.atmosphere();
        for (UnobservedWind elsewhere : UnobservedWind.values()) {
            compare(air, sounding.winds(elsewhere), -1000.0, 20000.0);
        }
        assertThat(worst.temperature).as(worst.toString()).isLessThan(1e-10);
        assertThat(worst.wind).as(worst.toString()).isLessThan(1e-10);
        assertThat(worst.passedOver).as(worst.toString()).isLessThan(3.5);
        assertThat(worst.virtual).as(worst.toString()).isLessThan(1e-7);
        assertThat(worst.height).as(worst.toString()).isLessThan(1e-10);
    }

    @ParameterizedTest
    @MethodSource("soundings")
    @DisplayName("changes upwards as central differences of the sounding do:")
    void slopes(String file) {
        Sounding sounding = sounding(file);
        Atmosphere air = sounding.atmosphere();
        Winds winds = sounding.winds(UnobservedWind.values()[0]);
        ClimbAir climb = ClimbAir.of(air, winds, TRACK);
        double half = 0.5;
        double worstSlope = 0.0;
        for (int stretch = 0; stretch < climb.stretches(); stretch++) {
            double low = climb.edgeM(stretch);
            double high = climb.edgeM(stretch + 1);
            if (high - low < 10.0 || high > 20000.0) {
                continue;
            }
            for (double way : new double[] {0.1, 0.5, 0.9}) {
                double at = low + way * (high - low);
                double above = StandardAir.pressureFromAltitude(at + half);
                double below = StandardAir.pressureFromAltitude(at - half);
                double slope = (air.temperature(above) - air.temperature(below)) / (2.0 * half);
                worstSlope =
                        Math.max(
                                worstSlope,
                                Math.abs(climb.temperaturePerMetre(stretch, at) - slope));
                double shear = (along(winds, above) - along(winds, below)) / (2.0 * half);
                if (!Double.isNaN(shear) && isFarFromOtherReports(winds, at)) {
                    worstSlope =
                            Math.max(
                                    worstSlope,
                                    Math.abs(climb.alongTrackPerMetre(stretch, at) - shear));
                }
            }
        }
        // a difference over 1 m has some 1e-13 of rounding of T and p in it
        assertThat(worstSlope).isLessThan(1e-11);
    }

    private static double along(Winds winds, double pressure) {
        return Wind.alongTrack(
                winds.eastward(pressure), winds.northward(pressure), TRACK.inRadians());
    }

    @Test
    @DisplayName("ends where pressure altitude does, though cold air of a true height goes further")
    void coldAirGoesFurther() {
        Atmosphere cold =
                Atmosphere.withDeviationAtEachAltitude(IsaDeviationAtAltitude.ofKelvins(-40));
        assertThat(StandardAir.coversPressure(cold.range().highest())).isFalse();
        ClimbAir climb = ClimbAir.of(cold, Winds.calm(), TRACK);
        assertThat(climb.range().lowest()).isCloseTo(-5000.0, within(1e-9));
        assertThat(climb.range().highest()).isCloseTo(80000.0, within(1e-6));
    }

    @Test
    @DisplayName("bends at the tropopause: each side has its own lapse, and the same temperature")
    void tropopause() {
        ClimbAir climb = InventedAeroplanes.CALM;
        double at = 11000.0;
        double bend = closest(climb.bendsM(), at);
        assertThat(bend).isCloseTo(at, within(1e-9));
        int below = climb.stretch(bend, false);
        int above = climb.stretch(bend, true);
        assertThat(above).isEqualTo(below + 1);
        assertThat(climb.edgeM(above)).isEqualTo(bend);
        assertThat(climb.temperaturePerMetre(below, bend)).isCloseTo(-0.0065, within(1e-13));
        assertThat(climb.temperaturePerMetre(above, bend)).isCloseTo(0.0, within(1e-13));
        assertThat(climb.temperature(below, bend))
                .isCloseTo(climb.temperature(above, bend), within(1e-10));
    }

    private static double closest(double[] values, double to) {
        double best = values[0];
        for (double value : values) {
            best = Math.abs(value - to) < Math.abs(best - to) ? value : best;
        }
        return best;
    }

    @Test
    @DisplayName("covers its whole range and nothing outside, the ends included")
    void ends() {
        ClimbAir climb = InventedAeroplanes.CALM;
        double low = climb.range().lowest();
        double high = climb.range().highest();
        assertThat(climb.edgeM(0)).isEqualTo(low);
        assertThat(climb.edgeM(climb.stretches())).isEqualTo(high);
        List<Integer> ends = new ArrayList<>();
        for (boolean fromAbove : new boolean[] {false, true}) {
            ends.add(climb.stretch(low, fromAbove));
            ends.add(climb.stretch(high, fromAbove));
        }
        assertThat(ends).containsExactly(0, climb.stretches() - 1, 0, climb.stretches() - 1);
        assertThat(climb.temperature(0, low)).isCloseTo(320.65, within(1e-10));
        for (double outside : new double[] {low - 1e-6, high + 1e-6, Double.NaN}) {
            assertThatThrownBy(() -> climb.stretch(outside, true))
                    .isInstanceOf(OutsideModelException.class)
                    .hasMessageContaining("the air is not known outside");
        }
    }

    @Test
    @DisplayName("keeps a wind that nobody knows unknown")
    void unknownWind() {
        ClimbAir climb = InventedAeroplanes.CALM.withWinds(InventedAeroplanes.unknown());
        int stretch = climb.stretch(5000.0, true);
        assertThat(climb.alongTrack(stretch, 5000.0)).isNaN();
        assertThat(climb.acrossTrack(stretch, 5000.0)).isNaN();
        assertThat(climb.alongTrackPerMetre(stretch, 5000.0)).isNaN();
        assertThat(climb.temperature(stretch, 5000.0)).isCloseTo(255.65, within(1e-10));
        assertThat(climb.track()).isEqualTo(TrueDirection.ofDegrees(90));
        assertThat(climb.toString()).startsWith("air and winds along 90");
    }
}
