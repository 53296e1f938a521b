package org.climbwright.sounding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.sounding.Level.hpa;
import static org.climbwright.sounding.Level.sounding;

import java.util.List;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.temperature.TemperatureDifference;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;

@DisplayName("An inversion")
class InversionTest {
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "cools all the way, '', 10 8 6 4",
        "isothermal, '', 5 5 5",
        "at the ground, '1000-900 by 4', 2 6 3",
        "aloft, '900-700 by 6', 10 1 3 7 2",
        "up to the top, '900-800 by 3', 5 2 5",
        "two of them, '1000-900 by 2; 800-700 by 4', 3 5 1 5 0",
        "one within the other's cooling, '900-800 by 1; 700-600 by 1', 9 7 8 5 6 1",
        "across an isothermal layer, '1000-700 by 6', 2 6 6 8 1",
        "across a deep isothermal layer, '1000-600 by 6', 2 6 6 6 8 1",
        "begun by an isothermal layer, '900-800 by 3', 2 2 5 1",
        "ended by an isothermal layer, '1000-900 by 3', 2 5 5 5 1",
        "isothermal above it up to the top, '1000-900 by 3', 2 5 5",
        "ended by the least cooling, '1000-900 by 4; 800-700 by 2', 2 6 5.9 8 1"
    })
    @DisplayName("goes from its coldest level at the bottom to its warmest at the top:")
    void baseTopRise(String what, String expected, String celsius) {
        assertThat(
                        levelsFrom1000(celsius)
                                .inversions(TemperatureDifference.ofKelvins(0.5))
                                .stream()
                                .map(InversionTest::text))
                .containsExactly(expected.isEmpty() ? new String[0] : expected.split("; ", -1));
    }

    @ParameterizedTest(name = "{0} K: {1}")
    @CsvSource({"1.9, 2", "2, 2", "2.1, 1", "4, 1", "4.1, 0", "0, 2"})
    @DisplayName("counts from the smallest rise on, that rise included")
    void smallestRise(double kelvins, int inversions) {
        // by 2 K and by 4 K
        assertThat(levelsFrom1000("3 5 1 5 0").inversions(TemperatureDifference.ofKelvins(kelvins)))
                .hasSize(inversions);
    }

    static final List<String> RECORDED = Soundings.PROFILES;

    @ParameterizedTest(name = "{0}")
    @FieldSource("RECORDED")
    @DisplayName("is found in a recorded sounding wherever it gets warmer, and nowhere else")
    void coversEveryWarming(String name) {
        Sounding sounding = Soundings.profile(name);
        List<SoundingLevel> levels = Soundings.levelsOfAir(sounding);
        List<Inversion> inversions = sounding.inversions(TemperatureDifference.ofKelvins(0.0));
        assertThat(inversions).isNotEmpty();
        for (int i = 1; i < levels.size(); i++) {
            double base = pressureAltitude(levels.get(i - 1));
            double top = pressureAltitude(levels.get(i));
            boolean covered =
                    inversions.stream()
                            .anyMatch(
                                    inversion ->
                                            pressureAltitude(inversion.base()) <= base
                                                    && pressureAltitude(inversion.top()) >= top);
            // A stretch of equal temperature may be part of one, and need not.
            if (levels.get(i).temperatureK() != levels.get(i - 1).temperatureK()) {
                assertThat(covered)
                        .isEqualTo(levels.get(i).temperatureK() > levels.get(i - 1).temperatureK());
            }
        }
    }

    @Test
    @DisplayName("rises by the difference of its two temperatures")
    void rise() {
        Inversion inversion =
                levelsFrom1000("-3.5 -1.25 -2")
                        .inversions(TemperatureDifference.ofKelvins(1.0))
                        .get(0);
        assertThat(
                        inversion
                                .rise()
                                .isCloseTo(
                                        TemperatureDifference.ofKelvins(2.25),
                                        TemperatureDifference.ofKelvins(1e-12)))
                .isTrue();
    }

    @Test
    @DisplayName("is as deep as its altitudes are apart, where those are known")
    void depth() {
        Sounding sounding =
                sounding(
                        hpa(1000).metres(100).celsius(2),
                        hpa(950).metres(540).celsius(2),
                        hpa(900).metres(1000).celsius(5));
        TemperatureDifference any = TemperatureDifference.ofKelvins(0.0);
        assertThat(sounding.inversions(any).get(0).depth())
                .contains(AltitudeChange.ofMetres(460.0));
        assertThat(levelsFrom1000("1 2").inversions(any).get(0).depth()).isEmpty();
    }

    private static double pressureAltitude(AirState air) {
        return air.pressureAltitude().inMetres();
    }

    private static double pressureAltitude(SoundingLevel level) {
        return StandardAir.altitudeFromPressure(level.pressurePa());
    }

    private static Sounding levelsFrom1000(String celsius) {
        String[] values = celsius.split(" ", -1);
        Level[] levels = new Level[values.length];
        for (int i = 0; i < values.length; i++) {
            levels[i] = hpa(1000 - 100.0 * i).celsius(Double.parseDouble(values[i]));
        }
        return sounding(levels);
    }

    private static String text(Inversion inversion) {
        return Math.round(inversion.base().pressurePa() / 100.0)
                + "-"
                + Math.round(inversion.top().pressurePa() / 100.0)
                + " by "
                + Math.round(inversion.rise().inKelvins());
    }
}
