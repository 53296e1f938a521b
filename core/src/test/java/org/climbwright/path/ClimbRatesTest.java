package org.climbwright.path;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.speed.PressureAltitudeRate;
import org.climbwright.quantity.temperature.IsaDeviation;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

@DisplayName("A table of rates")
class ClimbRatesTest {
    private static final ClimbRates TABLE =
            ClimbRates.of(
                    ClimbRates.Kind.PRESSURE_ALTITUDE,
                    IsaDeviation.ofKelvins(10),
                    List.of(Mass.ofKilograms(50000), Mass.ofKilograms(60000)),
                    List.of(
                            Scene.row(0, 3000, 2000),
                            Scene.row(10000, 2000, 1600),
                            Scene.row(10000, 2400, 1800),
                            Scene.row(30000, 400, 200)));

    @Test
    @DisplayName("has its own numbers at its entries")
    void entries() {
        assertThat(rate(0, 50000, Side.ABOVE)).isEqualTo(3000);
        assertThat(rate(30000, 60000, Side.BELOW)).isCloseTo(200, within(1e-9));
    }

    @Test
    @DisplayName("is linear in altitude and in mass between them")
    void between() {
        assertThat(rate(5000, 50000, Side.ABOVE)).isCloseTo(2500, within(1e-9));
        assertThat(rate(0, 55000, Side.ABOVE)).isCloseTo(2500, within(1e-9));
        assertThat(rate(5000, 55000, Side.ABOVE)).isCloseTo(2150, within(1e-9));
    }

    @Test
    @DisplayName("jumps where an altitude stands twice")
    void jumps() {
        assertThat(TABLE.jumps()).containsExactly(PressureAltitude.ofFeet(10000));
        assertThat(rate(10000, 50000, Side.BELOW)).isCloseTo(2000, within(1e-9));
        assertThat(rate(10000, 50000, Side.ABOVE)).isCloseTo(2400, within(1e-9));
    }

    @Test
    @DisplayName("says for which air it was made, and how far it goes")
    void says() {
        assertThat(TABLE.isaDeviation()).isEqualTo(IsaDeviation.ofKelvins(10));
        assertThat(TABLE.lowest()).isEqualTo(PressureAltitude.ofFeet(0));
        assertThat(TABLE.highest()).isEqualTo(PressureAltitude.ofFeet(30000));
    }

    @Nested
    @DisplayName("refuses")
    class Refuses {
        @Test
        @DisplayName("an altitude and a mass that it does not have")
        void outside() {
            assertThatThrownBy(() -> rate(30001, 50000, Side.ABOVE))
                    .isInstanceOf(OutsideModelException.class)
                    .hasMessage(
                            "pressure altitude must be from 0.0 to 9144.0 m, but was 9144.3048 m:"
                                    + " the table of rates ends there");
            assertThatThrownBy(() -> rate(1000, 61000, Side.ABOVE))
                    .isInstanceOf(OutsideModelException.class)
                    .hasMessage(
                            "mass must be from 50000.0 to 60000.0 kg, but was 61000.0 kg:"
                                    + " the table of rates ends there");
            assertThatThrownBy(() -> rate(Double.NaN, 50000, Side.ABOVE))
                    .isInstanceOf(IllegalArgumentException.class);
        }

        @Test
        @DisplayName("a rate of 0, altitudes that fall, an altitude three times, a ragged line")
        void badTables() {
            refused(
                    "a rate of climb in a table must be a finite number above 0.0 m/s, but was 0.0"
                            + " m/s at 20000 ft",
                    Scene.row(0, 1000),
                    Scene.row(20000, 0));
            refused(
                    "altitudes must rise, the same at most twice, but 0 ft follows 1000 ft",
                    Scene.row(1000, 1000),
                    Scene.row(0, 900));
            refused(
                    "altitudes must rise, the same at most twice, but 0 ft follows 0 ft",
                    Scene.row(0, 1000),
                    Scene.row(0, 900),
                    Scene.row(0, 800));
            refused(
                    "a line of rates needs one for each of 1 masses, but had 2 at 20000 ft",
                    Scene.row(0, 1000),
                    Scene.row(20000, 900, 800));
            refused(
                    "the lowest and the highest altitude of a table stand once, but 0 ft stands"
                            + " twice",
                    Scene.row(0, 1000),
                    Scene.row(0, 900),
                    Scene.row(100, 900));
            refused("a table of rates needs at least two altitudes, but had 1", Scene.row(0, 1000));
        }

        private void refused(String message, ClimbRates.Row... rows) {
            assertThatThrownBy(() -> Scene.rates(rows))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage(message);
        }

        @Test
        @DisplayName("masses that do not rise")
        void masses() {
            List<Mass> falling = List.of(Mass.ofKilograms(2), Mass.ofKilograms(1));
            List<ClimbRates.Row> rows = List.of(Scene.row(0, 2, 1), Scene.row(1, 2, 1));
            assertThatThrownBy(
                            () ->
                                    ClimbRates.of(
                                            ClimbRates.Kind.GEOMETRIC,
                                            IsaDeviation.ofKelvins(0),
                                            falling,
                                            rows))
                    .hasMessage("masses must rise, but 1 kg follows 2 kg");
        }
    }

    private static double rate(double feet, double kilograms, Side side) {
        return PressureAltitudeRate.ofMetresPerSecond(
                        TABLE.rate(PressureAltitude.ofFeet(feet).inMetres(), kilograms, side))
                .inFeetPerMinute();
    }
}
