package org.climbwright.airspeed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.testing.Table;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("The air of an icing tunnel")
class IcingTunnelTableTest {
    /** Half of the last digit of both temperatures, and of a speed of at most 140 m/s: 0.007 K. */
    private static final double KELVIN = 0.05 + 0.05 + 0.007;

    /** Half of the last digit, and that of a speed over the speed of sound. */
    private static final double MACH = 0.0005 + 0.05 / 320.0;

    private static final String TABLE = "/airspeed/total-temperature-icing-tunnel.csv";

    @ParameterizedTest(name = "case {0}")
    @CsvFileSource(resources = TABLE, useHeadersInDisplayName = true)
    @DisplayName("has the static temperature that its total temperature and speed leave")
    void agreesWithTheTable(
            String id,
            double staticCelsius,
            double totalCelsius,
            double tasMps,
            @Nullable Double mach,
            String source) {
        double air = staticCelsius + 273.15;
        double total = totalCelsius + 273.15;
        assertThat(TotalTemperature.staticFromTas(total, tasMps, 1.0))
                .isCloseTo(air, within(KELVIN));
        if (mach != null) {
            assertThat(AirspeedConversion.machFromTas(tasMps, air)).isCloseTo(mach, within(MACH));
            assertThat(TotalTemperature.fromMach(mach, air, 1.0)).isCloseTo(total, within(0.15));
        }
        assertThat(source).isNotBlank();
    }

    @Test
    @DisplayName("is compared in 14 rows, 12 of them with a Mach number")
    void rows() {
        assertThat(Table.rows(TABLE)).hasSize(14);
        assertThat(Table.rows(TABLE)).filteredOn(row -> row.contains(",,")).hasSize(2);
    }
}
