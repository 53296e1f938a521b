package org.climbwright.icing.potential;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.testing.Table;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The interest of a forecast scheme")
class IcingInterestTest {
    private static final double HALF_LAST_PRINTED_DIGIT = 5e-7;

    @ParameterizedTest(name = "{0}, {1} {2}: {3}")
    @CsvFileSource(resources = "/icing/interest-maps.csv", useHeadersInDisplayName = true)
    @DisplayName("in a figure of the air is as its formula or its nodes say:")
    void agreesWithTheTable(String map, double input, String unit, double value, String source) {
        double interest =
                switch (map) {
                    case "temperature" -> IcingInterest.ofTemperature(273.15 + input);
                    case "relative humidity" -> IcingInterest.ofRelativeHumidity(input / 100.0);
                    case "cloud top" -> IcingInterest.ofCloudTop(input);
                    case "vertical velocity" -> IcingInterest.ofVerticalVelocity(input);
                    case "cloud water" ->
                            IcingInterest.ofCloudWater(UnitScale.GRAM_PER_KILOGRAM.toSi(input));
                    case "temperature in convection" ->
                            IcingInterest.ofTemperatureInConvection(input);
                    case "severity damping" -> IcingInterest.severityDamping(input);
                    default -> throw new IllegalArgumentException(map);
                };
        assertThat(interest).isCloseTo(value, within(HALF_LAST_PRINTED_DIGIT));
    }

    @Test
    @DisplayName("is compared in 77 rows of 7 maps")
    void rows() {
        List<String> rows = Table.rows("/icing/interest-maps.csv");
        assertThat(rows).hasSize(77);
        assertThat(rows).filteredOn(row -> row.startsWith("temperature,")).hasSize(20);
        assertThat(rows).filteredOn(row -> row.startsWith("relative humidity,")).hasSize(13);
        assertThat(rows).filteredOn(row -> row.startsWith("cloud top,")).hasSize(13);
        assertThat(rows).filteredOn(row -> row.startsWith("vertical velocity,")).hasSize(7);
        assertThat(rows).filteredOn(row -> row.startsWith("cloud water,")).hasSize(8);
        assertThat(rows).filteredOn(row -> row.startsWith("temperature in conv")).hasSize(7);
        assertThat(rows).filteredOn(row -> row.startsWith("severity damping,")).hasSize(9);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.NEGATIVE_INFINITY, -1001.0, 20001.0})
    @DisplayName("is refused outside the range of its figure")
    void refuses(double value) {
        assertThat(IcingInterest.coversTemperature(value)).isFalse();
        assertThat(IcingInterest.coversRelativeHumidity(value)).isFalse();
        assertThat(IcingInterest.coversVerticalVelocity(value)).isFalse();
        assertThat(IcingInterest.coversCloudWater(value)).isFalse();
        assertThat(IcingInterest.coversConvectiveEnergy(value)).isFalse();
        refused(() -> IcingInterest.ofTemperature(value), "static air temperature");
        refused(() -> IcingInterest.ofTemperatureInConvection(value), "static air temperature");
        refused(() -> IcingInterest.severityDamping(value), "static air temperature");
        refused(() -> IcingInterest.ofCloudTop(value), "cloud top temperature");
        refused(() -> IcingInterest.ofRelativeHumidity(value), "relative humidity");
        refused(() -> IcingInterest.ofVerticalVelocity(value), "vertical velocity");
        refused(() -> IcingInterest.ofCloudWater(value), "cloud water");
        refused(() -> IcingInterest.ofConvectiveEnergy(value), "convective available");
        refused(() -> IcingInterest.potential(value, 0.0, 0.0, 270.0), "initial potential");
        // water is checked also where it does not count
        refused(() -> IcingInterest.potential(0.5, 0.0, value, 230.0), "cloud water");
    }

    private static void refused(Runnable call, String term) {
        assertThatThrownBy(call::run)
                .isInstanceOf(OutsideModelException.class)
                .hasMessageStartingWith(term)
                .hasMessageContaining("must be from");
    }
}
