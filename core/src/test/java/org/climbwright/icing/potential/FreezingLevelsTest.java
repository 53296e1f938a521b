package org.climbwright.icing.potential;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.temperature.IsaDeviation;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Levels of 0 °C")
class FreezingLevelsTest {
    private static final double HALF_LAST_PRINTED_DIGIT_FT = 0.05;

    @ParameterizedTest(name = "with {0} at {1}")
    @CsvFileSource(
            resources = "/icing/freezing-levels-in-standard-air.csv",
            useHeadersInDisplayName = true)
    @DisplayName("in standard air are one")
    void inStandardAir(double deviationK, double feet, String source) {
        IsaDeviation deviation = IsaDeviation.ofKelvins(deviationK);
        double expected = FreezingLevels.inStandardAir(deviation).inFeet();
        // The table ends at 1013.25 hPa; the function goes on below it.
        assertThat(Math.max(0.0, expected)).isCloseTo(feet, within(HALF_LAST_PRINTED_DIGIT_FT));
        List<FreezingLevel> found =
                FreezingLevels.in(Atmosphere.withDeviationAtEachPressure(deviation)).all();
        assertThat(found).hasSize(1);
        assertThat(found.get(0).trend()).isEqualTo(FreezingLevel.Trend.FALLING);
        assertThat(found.get(0).pressureAltitude().inFeet()).isCloseTo(expected, within(1e-6));
    }

    @ParameterizedTest(name = "{1} at {2}")
    @CsvFileSource(
            resources = "/icing/freezing-levels-in-profiles.csv",
            useHeadersInDisplayName = true)
    @DisplayName("in a profile are all found:")
    void inProfiles(
            String coordinate,
            String levels,
            String crossings,
            double halfLastDigit,
            String source) {
        boolean isPressure = coordinate.equals("hectopascals");
        ProfileAir air = new ProfileAir();
        for (String level : levels.split("; ")) {
            double[] values = numbers(level);
            air.with(isPressure ? ProfileAir.altitude(values[0] * 100.0) : values[0], values[1]);
        }
        double[] expected = numbers(crossings);
        FreezingLevels found = FreezingLevels.in(air);
        assertThat(found.all()).hasSize(expected.length);
        for (int i = 0; i < expected.length; i++) {
            double pressurePa = found.all().get(i).air().pressurePa();
            assertThat(isPressure ? pressurePa / 100.0 : ProfileAir.altitude(pressurePa))
                    .isCloseTo(expected[i], within(halfLastDigit));
        }
        assertThat(found.lowest()).hasValue(found.all().get(0));
        assertThat(found.highest()).hasValue(found.all().get(expected.length - 1));
    }

    @Test
    @DisplayName("are compared with 7 rows of standard air and 3 profiles")
    void rows() {
        assertThat(Table.rows("/icing/freezing-levels-in-standard-air.csv")).hasSize(7);
        assertThat(Table.rows("/icing/freezing-levels-in-profiles.csv")).hasSize(3);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "touched from below, 0, -1 0 -1",
        "touched from above, 0, 1 0 1",
        "passed at a level, 1000, 1 0 -1",
        "kept for a layer and passed, 1000, 1 0 0 -1",
        "0 °C all the way, '', 0 0 0",
        "0 °C at the ground and colder above, '', 0 -1 -2",
        "colder all the way, '', -1 -2 -3",
    })
    @DisplayName("are passages, not touches:")
    void passages(String what, String expected, String celsius) {
        ProfileAir air = new ProfileAir();
        double altitudeM = 0.0;
        for (double value : numbers(celsius)) {
            air.with(altitudeM, value);
            altitudeM += 1000.0;
        }
        double[] found =
                FreezingLevels.in(air).all().stream()
                        .mapToDouble(level -> ProfileAir.altitude(level.air().pressurePa()))
                        .toArray();
        if (expected.equals("1000")) {
            assertThat(found).hasSize(1);
            assertThat(found[0]).isCloseTo(1000.0, within(1e-5));
        } else {
            assertThat(found).isEmpty();
        }
    }

    @Test
    @DisplayName("are told in words, as is that there are none and how far anybody looked")
    void inWords() {
        assertThat(FreezingLevels.in(new ProfileAir().with(0, -2).with(1000, 3)).inWords())
                .isEqualTo("0 °C at pressure altitudes of 1,377 ft (warmer upwards)");
        FreezingLevels none = FreezingLevels.in(new ProfileAir().with(0, -2).with(1000, -7));
        assertThat(none.inWords())
                .isEqualTo(
                        "no level of 0 °C between pressure altitudes of 0 ft and 3,418 ft, where it"
                                + " is -2.0 °C and -7.0 °C; outside nobody looked");
        assertThat(none.lowest()).isEmpty();
        assertThat(none.highest()).isEmpty();
    }

    @Test
    @DisplayName("are not looked for above 50 hPa, where no weather is")
    void above50Hectopascals() {
        // 50 hPa is at 24,071 m in this air
        ProfileAir air = new ProfileAir().with(23000, -50).with(24000, -1).with(26000, 1);
        FreezingLevels found = FreezingLevels.in(air);
        assertThat(found.all()).isEmpty();
        assertThat(found.top().pressurePa()).isEqualTo(5000.0);
        ProfileAir allAbove = new ProfileAir().with(25000, -5).with(26000, 5);
        assertThat(FreezingLevels.in(allAbove).all()).isEmpty();
        assertThat(FreezingLevels.in(allAbove).top())
                .isEqualTo(FreezingLevels.in(allAbove).bottom());
    }

    @ParameterizedTest
    @ValueSource(doubles = {-47.6, 56.6, Double.NaN})
    @DisplayName("are refused where standard air has none in its lowest layer")
    void refuses(double deviationK) {
        assertThat(FreezingLevels.coversDeviation(deviationK)).isFalse();
        assertThatThrownBy(() -> FreezingLevels.pressureAltitudeInStandardAir(deviationK))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageStartingWith("ISA deviation must be from -47.5 to 56.5 K, but was");
    }

    private static double[] numbers(String text) {
        return Arrays.stream(text.strip().split(" ")).mapToDouble(Double::parseDouble).toArray();
    }
}
