package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

@Label("Moist air, over its whole range")
class MoistAirPropertyTest {
    @Provide
    Arbitrary<Double> kelvins() {
        return Arbitraries.doubles().between(123.0, 332.0).ofScale(9);
    }

    @Property
    @Label("the dew point of saturated air is its temperature")
    void dewPointUndoesSaturation(@ForAll("kelvins") double kelvin) {
        // 1e-9 K is what dewPoint states
        assertThat(MoistAir.dewPoint(MoistAir.saturationVapourPressure(kelvin)))
                .isCloseTo(kelvin, within(1e-9));
    }

    @Property
    @Label("warmer air can hold more vapour")
    void saturationRises(@ForAll("kelvins") double one, @ForAll("kelvins") double other) {
        double colder = Math.min(one, other);
        double warmer = Math.max(one, other);
        if (warmer > colder) {
            assertThat(MoistAir.saturationVapourPressure(warmer))
                    .isGreaterThan(MoistAir.saturationVapourPressure(colder));
        }
    }

    @Property
    @Label("vapour makes air lighter: its virtual temperature is above its temperature")
    void virtualTemperatureIsAbove(@ForAll("kelvins") double kelvin) {
        double vapour = 0.5 * MoistAir.saturationVapourPressure(kelvin);
        // below 1e-16 of the pressure the last bit does not tell
        assertThat(MoistAir.virtualTemperature(kelvin, vapour, 101325.0))
                .isGreaterThanOrEqualTo(kelvin)
                .isFinite();
    }
}
