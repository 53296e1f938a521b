package org.climbwright.icing.envelope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.icing.envelope.EnvelopeVerdict.Answer.INSIDE;
import static org.climbwright.icing.envelope.EnvelopeVerdict.Answer.NOT_KNOWN;
import static org.climbwright.icing.envelope.EnvelopeVerdict.Answer.OUTSIDE;
import static org.climbwright.icing.envelope.LimitMargin.Limit.TEMPERATURE_FOR_ALTITUDE;

import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("The envelope of altitude and temperature")
class AltitudeAndTemperatureTableTest {
    private static final String TABLE = "/icing/envelope/altitude-and-temperature.csv";

    @ParameterizedTest(name = "{0} {1}: {2}, {3}")
    @CsvFileSource(resources = TABLE, useHeadersInDisplayName = true)
    @DisplayName("has the corners, the warm edge and the bounds of the rule")
    void agreesWithTheFigure(
            String envelope, String item, String feet, Double celsius, String status, String src) {
        if (item.contains("17.4 nmi")) {
            assertThat(ContinuousMaximum.STANDARD_EXTENT_M / 1852.0).isCloseTo(17.4, within(1e-12));
        } else if (item.contains("2.6 nmi")) {
            assertThat(IntermittentMaximum.STANDARD_EXTENT_M / 1852.0)
                    .isCloseTo(2.6, within(1e-12));
        } else if (feet.contains(" to ")) {
            isTheRange(envelope, feet.split(" to "));
        } else if (item.startsWith("vertex")) {
            assertThat(ContinuousMaximum.corners())
                    .contains(
                            new EnvelopeCorner(
                                    PressureAltitude.ofFeet(Double.parseDouble(feet)),
                                    StaticAirTemperature.ofCelsius(celsius)));
            assertThat(continuous(Double.parseDouble(feet), celsius).answer()).isEqualTo(INSIDE);
        } else {
            isTheWarmEdge(Double.parseDouble(feet), celsius);
        }
    }

    private static void isTheRange(String envelope, String[] feet) {
        double low = Double.parseDouble(feet[0]);
        double high = Double.parseDouble(feet[1]);
        if ("CM".equals(envelope)) {
            assertThat(continuous(low, -25.0).answer()).isEqualTo(INSIDE);
            assertThat(continuous(high, -25.0).answer()).isEqualTo(INSIDE);
            assertThat(continuous(low - 0.001, -25.0).answer()).isEqualTo(OUTSIDE);
            assertThat(continuous(high + 0.001, -25.0).answer()).isEqualTo(OUTSIDE);
        } else {
            assertThat(intermittent(low).answer()).isEqualTo(NOT_KNOWN);
            assertThat(intermittent(high).answer()).isEqualTo(NOT_KNOWN);
            assertThat(intermittent(low - 0.001).answer()).isEqualTo(OUTSIDE);
            assertThat(intermittent(high + 0.001).answer()).isEqualTo(OUTSIDE);
        }
    }

    private static void isTheWarmEdge(double feet, double celsius) {
        assertThat(ContinuousMaximum.warmestTemperature(feet * 0.3048) - 273.15)
                .isCloseTo(celsius, within(1e-9));
        EnvelopeVerdict onTheEdge = continuous(feet, celsius);
        assertThat(onTheEdge.answer()).isEqualTo(INSIDE);
        assertThat(onTheEdge.margin(TEMPERATURE_FOR_ALTITUDE).margin()).hasValue(0.0);
        EnvelopeVerdict warmer = continuous(feet, celsius + 0.5);
        assertThat(warmer.answer()).isEqualTo(OUTSIDE);
        assertThat(warmer.exceeded()).hasSize(1);
        assertThat(warmer.margin(TEMPERATURE_FOR_ALTITUDE).margin().orElseThrow())
                .isCloseTo(-0.5, within(1e-9));
    }

    private static EnvelopeVerdict continuous(double feet, double celsius) {
        return ContinuousMaximum.verdict(
                PressureAltitude.ofFeet(feet),
                StaticAirTemperature.ofCelsius(celsius),
                20e-6,
                0.1e-3,
                GroundDistance.ofNauticalMiles(17.4));
    }

    private static EnvelopeVerdict intermittent(double feet) {
        return IntermittentMaximum.verdict(
                PressureAltitude.ofFeet(feet),
                StaticAirTemperature.ofCelsius(-10),
                20e-6,
                0.1e-3,
                GroundDistance.ofNauticalMiles(2.6),
                RememberedValues.USED);
    }

    @Test
    @DisplayName("is compared in 15 rows, 5 of them corners, 1 from memory")
    void rows() {
        assertThat(Table.rows(TABLE)).hasSize(15);
        assertThat(Table.rows(TABLE)).filteredOn(row -> row.contains("vertex")).hasSize(5);
        assertThat(Table.rows(TABLE)).filteredOn(row -> row.contains("MEMORY")).hasSize(1);
        assertThat(ContinuousMaximum.corners()).hasSize(5);
    }
}
