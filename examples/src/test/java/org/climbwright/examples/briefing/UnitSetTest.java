package org.climbwright.examples.briefing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A set of units")
class UnitSetTest {
    private static final double FOOT_M = 0.3048;

    @Test
    @DisplayName("rounds a figure to what a reader needs and writes its unit behind it")
    void figures() {
        assertThat(UnitSet.FEET_KNOTS.altitude().text(35000 * FOOT_M)).isEqualTo("35000 ft");
        assertThat(UnitSet.METRIC.altitude().text(35000 * FOOT_M)).isEqualTo("10668 m");
        assertThat(UnitSet.METRIC.speed().text(100.0)).isEqualTo("360 km/h");
        assertThat(UnitSet.METRIC.verticalRate().text(2000 * FOOT_M / 60.0)).isEqualTo("10.2 m/s");
        assertThat(UnitSet.METRIC.distance().text(1852.0)).isEqualTo("1.9 km");
        assertThat(UnitSet.METRIC.heightOverDistance().text(0.05)).isEqualTo("50.0 m/km");
        assertThat(UnitSet.FEET_KNOTS.heightOverDistance().text(FOOT_M * 200 / 1852.0))
                .isEqualTo("200 ft/NM");
        assertThat(UnitSet.METRIC.differential().text(53779.0)).isEqualTo("53.8 kPa");
    }

    @Test
    @DisplayName("writes a stated figure with no more decimals than it has")
    void stated() {
        double psi = 6894.757293168361;
        assertThat(UnitSet.FEET_KNOTS.differential().stated(7.8 * psi)).isEqualTo("7.8 psi");
        assertThat(UnitSet.FEET_KNOTS.differential().text(7.8 * psi)).isEqualTo("7.80 psi");
    }

    @Test
    @DisplayName("writes a difference with its sign, and nothing without a minus")
    void signs() {
        assertThat(UnitSet.FEET_KNOTS.altitude().difference(120 * FOOT_M)).isEqualTo("+120 ft");
        assertThat(UnitSet.FEET_KNOTS.altitude().signed(-0.1 * FOOT_M)).isEqualTo("+0");
        assertThat(UnitSet.METRIC.distance().number(-1.0)).isEqualTo("0.0");
    }

    @Test
    @DisplayName("has all its units of one family")
    void families() {
        assertThat(labels(UnitSet.FEET_KNOTS))
                .isEqualTo("ft kn ft/min NM ft/NM psi °C K kg kg/h hPa");
        assertThat(labels(UnitSet.METRIC)).isEqualTo("m km/h m/s km m/km kPa °C K kg kg/h hPa");
    }

    private static String labels(UnitSet set) {
        return String.join(
                " ",
                set.altitude().label(),
                set.speed().label(),
                set.verticalRate().label(),
                set.distance().label(),
                set.heightOverDistance().label(),
                set.differential().label(),
                set.temperature().label(),
                set.temperatureDifference().label(),
                set.mass().label(),
                set.fuelFlow().label(),
                set.altimeterSetting().label());
    }
}
