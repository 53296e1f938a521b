package org.climbwright.icing.envelope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.icing.envelope.EnvelopeVerdict.Answer.INSIDE;
import static org.climbwright.icing.envelope.EnvelopeVerdict.Answer.NOT_KNOWN;
import static org.climbwright.icing.envelope.EnvelopeVerdict.Answer.OUTSIDE;
import static org.climbwright.icing.envelope.FreezingDrizzle.Spectrum.MEDIAN_ABOVE_40_MICROMETRES;
import static org.climbwright.icing.envelope.LimitMargin.Limit.COLDEST_TEMPERATURE;
import static org.climbwright.icing.envelope.LimitMargin.Limit.LARGEST_DROP;
import static org.climbwright.icing.envelope.LimitMargin.Limit.LIQUID_WATER_CONTENT;
import static org.climbwright.icing.envelope.LimitMargin.Limit.TEMPERATURE_FOR_ALTITUDE;
import static org.climbwright.icing.envelope.LimitMargin.Limit.VERTICAL_EXTENT;

import java.util.List;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.Height;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.testing.Streams;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("A verdict on icing conditions")
class EnvelopeVerdictTest {
    private static final GroundDistance STANDARD = GroundDistance.ofNauticalMiles(17.4);

    private static EnvelopeVerdict continuous(double feet, double celsius, double microns) {
        return ContinuousMaximum.verdict(
                PressureAltitude.ofFeet(feet),
                StaticAirTemperature.ofCelsius(celsius),
                microns * 1e-6,
                0.3e-3,
                STANDARD);
    }

    @Test
    @DisplayName("is inside with a margin for each limit")
    void inside() {
        EnvelopeVerdict verdict = continuous(5000, -10, 25);
        assertThat(verdict.answer()).isEqualTo(INSIDE);
        assertThat(verdict.margins()).hasSize(8).allMatch(LimitMargin::isKnown);
        assertThat(verdict.exceeded()).isEmpty();
        assertThat(verdict.margin(LIQUID_WATER_CONTENT).margin()).hasValue(0.0);
        assertThat(verdict.margin(COLDEST_TEMPERATURE))
                .hasToString("coldest temperature: 20.0 K inside");
    }

    @Test
    @DisplayName("is outside by so much, and the other limits still have their margins")
    void outside() {
        EnvelopeVerdict verdict = continuous(20_000, -10, 42);
        assertThat(verdict.answer()).isEqualTo(OUTSIDE);
        assertThat(verdict.exceeded())
                .extracting(LimitMargin::limit)
                .containsExactly(LARGEST_DROP, TEMPERATURE_FOR_ALTITUDE);
        assertThat(verdict.margin(LARGEST_DROP).margin().orElseThrow())
                .isCloseTo(-2e-6, within(1e-15));
        assertThat(verdict.margin(TEMPERATURE_FOR_ALTITUDE).margin().orElseThrow())
                .isCloseTo(-6.0, within(1e-9));
        assertThat(verdict.margin(LIQUID_WATER_CONTENT).isKnown()).isFalse();
        assertThat(verdict.margin(LIQUID_WATER_CONTENT))
                .hasToString(
                        "liquid water content: not known, no line is drawn at that drop size and"
                                + " temperature");
    }

    @ParameterizedTest(name = "{0} ft, {1} °C, {2} µm")
    @CsvSource({
        "0, 0, 25",
        "12000, 0, 25",
        "22000, -20, 15",
        "22000, -30, 15",
        "0, -30, 15",
        "14000, -4, 20"
    })
    @DisplayName("is inside on every edge: they belong to the envelope")
    void closed(double feet, double celsius, double microns) {
        EnvelopeVerdict verdict =
                ContinuousMaximum.verdict(
                        PressureAltitude.ofFeet(feet),
                        StaticAirTemperature.ofCelsius(celsius),
                        microns * 1e-6,
                        0.1e-3,
                        STANDARD);
        assertThat(verdict.answer()).isEqualTo(INSIDE);
    }

    @Test
    @DisplayName("over an extent for which no factor is drawn does not know about the water")
    void extent() {
        EnvelopeVerdict verdict =
                ContinuousMaximum.verdict(
                        PressureAltitude.ofFeet(5000),
                        StaticAirTemperature.ofCelsius(-10),
                        20e-6,
                        0.1e-3,
                        GroundDistance.ofNauticalMiles(400));
        assertThat(verdict.answer()).isEqualTo(NOT_KNOWN);
        assertThat(verdict.margin(LIQUID_WATER_CONTENT).basis())
                .isEqualTo("no factor is drawn for that horizontal extent");
    }

    @ParameterizedTest
    @EnumSource(RememberedValues.class)
    @DisplayName("on cumulus is never inside, since its envelope was not seen")
    void neverInside(RememberedValues remembered) {
        EnvelopeVerdict verdict =
                IntermittentMaximum.verdict(
                        PressureAltitude.ofFeet(10_000),
                        StaticAirTemperature.ofCelsius(-10),
                        20e-6,
                        1e-3,
                        GroundDistance.ofNauticalMiles(2.6),
                        remembered);
        assertThat(verdict.answer()).isEqualTo(NOT_KNOWN);
        assertThat(verdict.margin(TEMPERATURE_FOR_ALTITUDE).basis()).contains("figure 5");
        assertThat(verdict.margins().stream().filter(m -> m.basis().contains("from memory")))
                .hasSize(remembered == RememberedValues.USED ? 2 : 0);
    }

    @Test
    @DisplayName("on takeoff is not known without the remembered values, and inside with them")
    void takeoff() {
        StaticAirTemperature cold = StaticAirTemperature.ofCelsius(-9);
        Height top = Height.ofFeet(1500);
        assertThat(TakeoffMaximum.verdict(0.35e-3, cold, top, RememberedValues.USED).answer())
                .isEqualTo(INSIDE);
        assertThat(TakeoffMaximum.verdict(0.35e-3, cold, top, RememberedValues.LEFT_OUT).answer())
                .isEqualTo(NOT_KNOWN);
        assertThat(TakeoffMaximum.verdict(0.36e-3, cold, top, RememberedValues.LEFT_OUT).answer())
                .isEqualTo(OUTSIDE);
    }

    @Test
    @DisplayName("on freezing drizzle takes the remembered factor only where it is asked to")
    void drizzle() {
        LimitMargin left = drizzle(50, RememberedValues.LEFT_OUT).margin(LIQUID_WATER_CONTENT);
        assertThat(left.isKnown()).isFalse();
        LimitMargin used = drizzle(50, RememberedValues.USED).margin(LIQUID_WATER_CONTENT);
        // 0.231 g/m³ times 1.266 - 0.213 log10(50), less 0.2
        assertThat(used.margin().orElseThrow()).isCloseTo(8.8510e-6, within(1e-9));
        assertThat(used.basis()).endsWith("from memory");
        assertThat(drizzle(17.4, RememberedValues.LEFT_OUT).margin(LIQUID_WATER_CONTENT).margin())
                .isPresent();
        assertThat(drizzle(17.4, RememberedValues.USED).answer()).isEqualTo(NOT_KNOWN);
    }

    private static EnvelopeVerdict drizzle(double nauticalMiles, RememberedValues remembered) {
        return FreezingDrizzle.verdict(
                PressureAltitude.ofFeet(5000),
                StaticAirTemperature.ofCelsius(-10),
                AltitudeChange.ofFeet(2000),
                MEDIAN_ABOVE_40_MICROMETRES,
                0.2e-3,
                GroundDistance.ofNauticalMiles(nauticalMiles),
                remembered);
    }

    @Test
    @DisplayName("on freezing rain knows altitude and depth alone")
    void rain() {
        EnvelopeVerdict deep =
                FreezingRain.verdict(PressureAltitude.ofFeet(5000), AltitudeChange.ofFeet(7001));
        assertThat(deep.answer()).isEqualTo(OUTSIDE);
        assertThat(deep.margin(VERTICAL_EXTENT).margin().orElseThrow())
                .isCloseTo(-0.3048, within(1e-9));
        assertThat(deep.margin(LIQUID_WATER_CONTENT).isKnown()).isFalse();
        assertThatIllegalArgumentException().isThrownBy(() -> deep.margin(LARGEST_DROP));
    }

    @Test
    @DisplayName("is the same value when it was written to a stream")
    void serialized() throws Exception {
        EnvelopeVerdict verdict = continuous(20_000, -10, 42);
        assertThat(Streams.roundTrip(verdict)).isEqualTo(verdict).hasSameHashCodeAs(verdict);
    }

    @Test
    @DisplayName("has a line to draw for each temperature, from 15 to 40 µm")
    void line() {
        List<WaterPoint> line = ContinuousMaximum.line(StaticAirTemperature.ofCelsius(-10), 6);
        assertThat(line).hasSize(6);
        assertThat(line.get(0)).isEqualTo(new WaterPoint(15e-6, 0.6e-3));
        assertThat(line.get(2).liquidWaterContentKgPerM3()).isCloseTo(0.3e-3, within(1e-15));
        assertThat(line.get(5).liquidWaterContentKgPerM3()).isCloseTo(0.1e-3, within(1e-15));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ContinuousMaximum.line(StaticAirTemperature.ofCelsius(-10), 1));
        assertThat(IntermittentMaximum.line(StaticAirTemperature.ofCelsius(-40), 2))
                .last()
                .extracting(WaterPoint::liquidWaterContentKgPerM3)
                .isEqualTo(0.05e-3);
    }

    @Test
    @DisplayName("is not asked of water outside the lines: the value and its range are told")
    void refused() {
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> ContinuousMaximum.liquidWaterContent(20e-6, 274.0))
                .withMessage(
                        "static air temperature must be from 243.14999999999998 to 273.15 K, but"
                            + " was 274.0 K: the lines of continuous maximum are drawn for these");
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> ContinuousMaximum.liquidWaterContent(Double.NaN, 260.0));
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> ContinuousMaximum.warmestTemperature(7000.0));
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(
                        () ->
                                FreezingDrizzle.liquidWaterContent(
                                        240.0, MEDIAN_ABOVE_40_MICROMETRES));
    }

    @ParameterizedTest(name = "{0} kg/m³, {1} m")
    @CsvSource({"NaN, 20e-6", "-1e-9, 20e-6", "Infinity, 20e-6", "1e-4, NaN", "1e-4, -1e-6"})
    @DisplayName("is refused on water and drops that cannot be")
    void cannotBe(double water, double diameter) {
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                ContinuousMaximum.verdict(
                                        PressureAltitude.ofFeet(5000),
                                        StaticAirTemperature.ofCelsius(-10),
                                        diameter,
                                        water,
                                        STANDARD))
                .withMessageContaining("or more, finite, but was");
    }
}
