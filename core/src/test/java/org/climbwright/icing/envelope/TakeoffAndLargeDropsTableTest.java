package org.climbwright.icing.envelope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.icing.envelope.FreezingDrizzle.Spectrum.MEDIAN_ABOVE_40_MICROMETRES;
import static org.climbwright.icing.envelope.FreezingDrizzle.Spectrum.MEDIAN_BELOW_40_MICROMETRES;
import static org.climbwright.icing.envelope.LimitMargin.Limit.COLDEST_TEMPERATURE;
import static org.climbwright.icing.envelope.LimitMargin.Limit.HIGHEST_ALTITUDE;
import static org.climbwright.icing.envelope.LimitMargin.Limit.LOWEST_ALTITUDE;
import static org.climbwright.icing.envelope.LimitMargin.Limit.VERTICAL_EXTENT;
import static org.climbwright.icing.envelope.LimitMargin.Limit.WARMEST_TEMPERATURE;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.climbwright.icing.envelope.FreezingDrizzle.Spectrum;
import org.climbwright.icing.envelope.LimitMargin.Limit;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.Height;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("Takeoff maximum icing and large drops")
class TakeoffAndLargeDropsTableTest {
    private static final String TABLE = "/icing/envelope/takeoff-and-large-drops.csv";

    private static final Pattern WATER = Pattern.compile("FZDZ LWC at (-?\\d+) C, MVD([<>])40 um");

    private static final EnvelopeVerdict TAKEOFF =
            TakeoffMaximum.verdict(
                    0.0,
                    StaticAirTemperature.ofCelsius(0),
                    Height.ofMetres(0),
                    RememberedValues.USED);

    private static final EnvelopeVerdict DRIZZLE =
            FreezingDrizzle.verdict(
                    PressureAltitude.ofMetres(0),
                    StaticAirTemperature.ofCelsius(0),
                    AltitudeChange.ofMetres(0),
                    MEDIAN_BELOW_40_MICROMETRES,
                    0.0,
                    GroundDistance.ofNauticalMiles(17.4),
                    RememberedValues.LEFT_OUT);

    private static final EnvelopeVerdict RAIN =
            FreezingRain.verdict(PressureAltitude.ofMetres(0), AltitudeChange.ofMetres(0));

    @ParameterizedTest(name = "{0}, {1}: {2} {3}")
    @CsvFileSource(resources = TABLE, useHeadersInDisplayName = true)
    @DisplayName("are those of the rule")
    void agreesWithTheRule(
            String envelope, String quantity, String value, String unit, String stat, String src) {
        Matcher water = WATER.matcher(quantity);
        if (water.matches()) {
            isTheLine(water, Double.parseDouble(value));
            return;
        }
        switch (quantity) {
            case "LWC" -> isPrinted(TakeoffMaximum.LIQUID_WATER_CONTENT_KG_PER_M3 * 1e3, value);
            case "mean effective diameter" ->
                    isPrinted(TakeoffMaximum.DROP_DIAMETER_M * 1e6, value);
            case "ambient temperature at ground level" ->
                    isPrinted(-margin(TAKEOFF, COLDEST_TEMPERATURE), value);
            case "vertical extent above takeoff surface" ->
                    isPrinted(feet(TAKEOFF, HIGHEST_ALTITUDE), value);
            case "FZDZ pressure altitude range" -> isTheRange(DRIZZLE, value);
            case "FZRA pressure altitude range" -> isTheRange(RAIN, value);
            case "FZDZ maximum vertical extent" -> isPrinted(feet(DRIZZLE, VERTICAL_EXTENT), value);
            case "FZRA maximum vertical extent" -> isPrinted(feet(RAIN, VERTICAL_EXTENT), value);
            case "FZDZ/FZRA standard horizontal extent" ->
                    isPrinted(FreezingDrizzle.STANDARD_EXTENT_M / 1852.0, value);
            case "FZDZ temperature range of Fig. 1" -> {
                assertThat(value).isEqualTo("-25 to 0");
                isPrinted(-margin(DRIZZLE, COLDEST_TEMPERATURE), "-25");
                isPrinted(margin(DRIZZLE, WARMEST_TEMPERATURE), "0");
            }
            default -> {
                assertThat(quantity).startsWith("horizontal extent factor");
                assertThat(value).isEqualTo("1.0018 at H=17.4");
                assertThat(
                                FreezingDrizzle.extentFactorFromMemory(
                                        FreezingDrizzle.STANDARD_EXTENT_M))
                        .isCloseTo(1.0018, within(0.00005));
            }
        }
    }

    private static void isTheLine(Matcher water, double gramsPerM3) {
        double celsius = Double.parseDouble(water.group(1));
        boolean below = "<".equals(water.group(2));
        Spectrum spectrum = below ? MEDIAN_BELOW_40_MICROMETRES : MEDIAN_ABOVE_40_MICROMETRES;
        double ours = 1e3 * FreezingDrizzle.liquidWaterContent(celsius + 273.15, spectrum);
        assertThat(ours).isCloseTo(gramsPerM3, within(1e-12));
        // the printed ends joined by a straight line, to what the figure could be read
        double warm = below ? 0.44 : 0.27;
        double cold = below ? 0.29 : 0.18;
        assertThat(ours).isCloseTo(warm + (warm - cold) / 25.0 * celsius, within(0.0061));
    }

    private static void isTheRange(EnvelopeVerdict verdict, String feet) {
        isPrinted(margin(verdict, LOWEST_ALTITUDE), feet.split(" to ")[0]);
        isPrinted(feet(verdict, HIGHEST_ALTITUDE), feet.split(" to ")[1]);
    }

    private static void isPrinted(double ours, String value) {
        assertThat(ours).isCloseTo(Double.parseDouble(value), within(1e-9));
    }

    private static double feet(EnvelopeVerdict verdict, Limit limit) {
        return margin(verdict, limit) / 0.3048;
    }

    private static double margin(EnvelopeVerdict verdict, Limit limit) {
        return verdict.margin(limit).margin().orElseThrow();
    }

    @Test
    @DisplayName("are compared in 22 rows, three of them from memory")
    void rows() {
        assertThat(Table.rows(TABLE)).hasSize(22);
        assertThat(Table.rows(TABLE)).filteredOn(row -> row.contains("MEMORY")).hasSize(3);
    }
}
