package org.climbwright.icing.potential;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.icing.potential.IndicationSpan.Kind;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.temperature.DewPoint;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The -8D line")
class MinusEightDTest {
    /** Two temperatures in kelvins are rounded to 6e-14 K, and one is taken eight times. */
    private static final double ROUNDING_K = 1e-12;

    @ParameterizedTest(name = "{0}, {1}: {3}")
    @CsvFileSource(resources = "/icing/minus-eight-d.csv", useHeadersInDisplayName = true)
    @DisplayName("parts icing from none:")
    void agreesWithTheTable(
            double celsius, double depressionK, double excessK, String answer, String source) {
        double temperatureK = 273.15 + celsius;
        double dewPointK = temperatureK - depressionK;
        assertThat(MinusEightD.excess(temperatureK, dewPointK))
                .isCloseTo(excessK, within(ROUNDING_K));
        boolean isPossible = answer.equals("icing possible");
        assertThat(MinusEightD.isIcingPossible(temperatureK, dewPointK)).isEqualTo(isPossible);
        assertThat(
                        MinusEightD.isIcingPossible(
                                StaticAirTemperature.ofCelsius(celsius),
                                DewPoint.ofKelvins(dewPointK)))
                .isEqualTo(isPossible);
    }

    @Test
    @DisplayName("is tested at 8 points, 2 of them on it")
    void rows() {
        List<String> rows = Table.rows("/icing/minus-eight-d.csv");
        assertThat(rows).hasSize(8);
        assertThat(rows).filteredOn(row -> row.contains("on the line")).hasSize(2);
    }

    @ParameterizedTest
    @CsvSource({"253.15", "273.15", "293.15"})
    @DisplayName("is at 0 °C where air is saturated")
    void saturated(double temperatureK) {
        assertThat(MinusEightD.line(temperatureK, temperatureK)).isEqualTo(273.15);
    }

    @Nested
    @DisplayName("in a profile")
    class InAProfile {
        @Test
        @DisplayName("gives the layer in which the air is colder than it, edges and all")
        void layer() {
            // T falls 5 K/km from 5 °C; D is 0 up to 2 km and grows 1 K/km above
            ProfileAir air = new ProfileAir().with(0, 5, 5).with(2000, -5, -5).with(6000, -25, -29);
            List<IndicationSpan> spans = MinusEightD.spansIn(air);
            assertThat(spans).hasSize(1);
            assertThat(spans.get(0).kind()).isEqualTo(Kind.INDICATED);
            // 0 °C at 1,000 m; above 2 km T + 8 D = -5 - 5 x + 8 x with x in km: 0 at 3,666.67 m
            assertThat(altitude(spans.get(0).bottom().pressurePa()))
                    .isCloseTo(1000.0, within(1e-5));
            assertThat(altitude(spans.get(0).top().pressurePa()))
                    .isCloseTo(2000.0 + 5000.0 / 3.0, within(1e-2));
            assertThat(spans.get(0).depth().orElseThrow().inMetres())
                    .isCloseTo(1000.0 + 5000.0 / 3.0, within(1e-2));
            assertThat(spans.get(0).reason())
                    .isEqualTo(
                            "0.0 °C at its bottom and -13.3 °C at its top, and colder than minus"
                                    + " eight times the dew point depression between");
        }

        @Test
        @DisplayName("ends at the coldest temperature that counts")
        void coldest() {
            ProfileAir air = new ProfileAir().with(0, 5, 5).with(6000, -55, -55);
            List<IndicationSpan> spans =
                    MinusEightD.spansIn(air, StaticAirTemperature.ofCelsius(-20));
            assertThat(spans).hasSize(1);
            assertThat(altitude(spans.get(0).bottom().pressurePa())).isCloseTo(500, within(1e-5));
            assertThat(altitude(spans.get(0).top().pressurePa())).isCloseTo(2500, within(1e-5));
            assertThat(altitude(MinusEightD.spansIn(air).get(0).top().pressurePa()))
                    .isCloseTo(6000, within(1e-6));
        }

        @Test
        @DisplayName("cannot be told below 0 °C where humidity is not known, and says so")
        void notKnown() {
            ProfileAir air = new ProfileAir().with(0, 5).with(2000, -5);
            List<IndicationSpan> spans = MinusEightD.spansIn(air);
            assertThat(spans).hasSize(1);
            assertThat(spans.get(0).kind()).isEqualTo(Kind.NOT_KNOWN);
            assertThat(altitude(spans.get(0).bottom().pressurePa())).isCloseTo(1000, within(1e-5));
            assertThat(spans.get(0).reason())
                    .isEqualTo(
                            "0.0 °C at its bottom and -5.0 °C at its top, colder than 0 °C;"
                                    + " humidity is not known, and so the dew point is not");
        }

        @Test
        @DisplayName("finds nothing in dry air, and nothing in saturated air of 0 °C or warmer")
        void nothing() {
            assertThat(MinusEightD.spansIn(Atmosphere.standard())).isEmpty();
            assertThat(MinusEightD.spansIn(new ProfileAir().with(0, 9, 9).with(2000, 0, 0)))
                    .isEmpty();
            assertThat(MinusEightD.spansIn(new ProfileAir().with(0, -9, -280).with(2000, -9, -280)))
                    .isEmpty();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "122.9, 122.9, static air temperature must be from 123.0 to 332.0 K",
        "NaN, 250, static air temperature must be from 123.0 to 332.0 K",
        "250, NaN, static air temperature must be from 123.0 to 332.0 K",
        "250, 250.1, dew point must be from 123.0 to 250.0 K",
    })
    @DisplayName("refuses air that is out of range")
    void refuses(double temperatureK, double dewPointK, String message) {
        assertThat(MinusEightD.covers(temperatureK, dewPointK)).isFalse();
        assertThatThrownBy(() -> MinusEightD.line(temperatureK, dewPointK))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageStartingWith(message);
    }

    private static double altitude(double pressurePa) {
        return ProfileAir.altitude(pressurePa);
    }
}
