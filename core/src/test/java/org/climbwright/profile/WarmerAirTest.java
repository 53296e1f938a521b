package org.climbwright.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.MoistAir;
import org.climbwright.quantity.ModelRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Air that is warmer by the same amount at every pressure")
class WarmerAirTest {
    private static final double DATUM_PA = 95000.0;

    @ParameterizedTest(name = "at {0} Pa")
    @ValueSource(doubles = {101325, 95000, 70000, 50000, 30000, 22632, 15000, 5000})
    @DisplayName("is thicker by R dT / g0 times ln p, from where its altitude is kept")
    void dry(double pressurePa) {
        Atmosphere standard = Atmosphere.standard();
        Atmosphere warm = WarmerAir.of(standard, 12.0, DATUM_PA);
        assertThat(warm.temperature(pressurePa)).isEqualTo(standard.temperature(pressurePa) + 12.0);
        // the hypsometric equation by hand: the difference of two thicknesses is that of dT alone
        double grown = 287.05287 * 12.0 / 9.80665 * StrictMath.log(DATUM_PA / pressurePa);
        assertThat(
                        warm.geopotentialAltitude(pressurePa)
                                - standard.geopotentialAltitude(pressurePa))
                .isCloseTo(grown, within(1e-6));
        assertThat(warm.vapourPressure(pressurePa)).isZero();
    }

    @Test
    @DisplayName("keeps its relative humidity, and what is not known of it stays so")
    void humidity() {
        Atmosphere moist = MoistColumn.air();
        Atmosphere warm = WarmerAir.of(moist, 8.0, DATUM_PA);
        assertThat(MoistAir.relativeHumidity(warm.vapourPressure(80000), warm.temperature(80000)))
                .isCloseTo(MoistColumn.HUMIDITY, within(1e-12));
        assertThat(warm.vapourPressure(80000)).isGreaterThan(1.5 * moist.vapourPressure(80000));
        assertThat(warm.vapourPressure(25000)).isNaN();
        assertThat(warm.bendsPa()).isEqualTo(moist.bendsPa());
        assertThat(warm.range()).isEqualTo(moist.range());
        // vapour is light: the moist air grows more than the dry
        double dry = 287.05287 * 8.0 / 9.80665 * StrictMath.log(DATUM_PA / 50000);
        double grown = warm.geopotentialAltitude(50000) - moist.geopotentialAltitude(50000);
        assertThat(grown).isBetween(dry + 1.0, dry + 30.0);
        assertThat(warm.geopotentialAltitude(DATUM_PA))
                .isEqualTo(moist.geopotentialAltitude(DATUM_PA));
    }

    @Test
    @DisplayName("has no altitudes where the air before had none")
    void unknownAltitudes() {
        assertThat(WarmerAir.of(new NoAltitudes(), 5.0, DATUM_PA).geopotentialAltitude(50000))
                .isNaN();
    }

    @Test
    @DisplayName("does not know its vapour where the saturation formula ends")
    void beyondTheFormula() {
        Atmosphere hot = WarmerAir.of(MoistColumn.air(), 45.0, DATUM_PA);
        assertThat(hot.temperature(101325)).isGreaterThan(332.0);
        assertThat(hot.vapourPressure(101325)).isNaN();
        assertThat(hot.vapourPressure(80000)).isPositive();
    }

    @Test
    @DisplayName("is refused where it would be colder than air can be here")
    void tooCold() {
        assertThatThrownBy(() -> WarmerAir.of(new NoAltitudes(), -200.0, DATUM_PA))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("100.0 to 400.0 K");
    }

    /** Air whose altitudes nobody told. */
    private record NoAltitudes() implements Atmosphere {
        @Override
        public ModelRange range() {
            return new ModelRange("static pressure", 10000.0, 101325.0, "Pa", "it ends there");
        }

        @Override
        public double temperature(double pressurePa) {
            return 260.0;
        }

        @Override
        public double geopotentialAltitude(double pressurePa) {
            return Double.NaN;
        }

        @Override
        public double vapourPressure(double pressurePa) {
            return Double.NaN;
        }
    }
}
