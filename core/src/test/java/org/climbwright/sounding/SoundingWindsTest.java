package org.climbwright.sounding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.sounding.Level.hpa;
import static org.climbwright.sounding.Level.sounding;
import static org.climbwright.sounding.Level.withoutPressure;

import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.altimetry.Altimetry;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.quantity.pressure.StaticPressure;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("The winds of a sounding")
class SoundingWindsTest {
    private static final Level GROUND = hpa(1000).metres(100).celsius(10);
    private static final Level ALOFT = hpa(810).metres(1900).celsius(-2);

    @Test
    @DisplayName("turn from 350 to 010 degrees by north, not by south")
    void passNorth() {
        Winds winds =
                sounding(hpa(1000).wind(350, 10), hpa(810).wind(10, 10))
                        .winds(UnobservedWind.NOT_KNOWN);
        // Half way, at 900 hPa, the east components cancel: 10 m/s times the cosine of 10 degrees.
        assertThat(winds.eastward(90000.0)).isEqualTo(0.0, within(1e-12));
        assertThat(winds.northward(90000.0)).isEqualTo(-9.84807753012208, within(1e-12));
    }

    @Test
    @DisplayName("are asked at a pressure altitude too")
    void atAPressureAltitude() {
        Winds winds =
                sounding(hpa(1000).wind(270, 10), hpa(810).wind(270, 20))
                        .winds(UnobservedWind.NOT_KNOWN);
        assertThat(
                        winds.at(Altimetry.pressureAltitude(StaticPressure.ofHectopascals(900)))
                                .orElseThrow()
                                .speed()
                                .inMetresPerSecond())
                .isEqualTo(15.0, within(1e-9));
        assertThat(winds.at(Altimetry.pressureAltitude(StaticPressure.ofHectopascals(1001))))
                .isEmpty();
    }

    @Test
    @DisplayName("need no temperatures")
    void withoutTemperatures() {
        Winds winds = sounding(hpa(900).wind(90, 7)).winds(UnobservedWind.NOT_KNOWN);
        assertThat(winds.eastward(90000.0)).isEqualTo(-7.0);
        assertThat(winds.covers(89999.0)).isFalse();
        assertThat(winds.covers(90001.0)).isFalse();
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"NOT_KNOWN, NaN", "HOLD_LOWEST, NaN", "CALM, 0.0"})
    @DisplayName("of an ascent without winds are what the rule makes of nothing:")
    void withoutWinds(UnobservedWind rule, double component) {
        Winds winds = sounding(GROUND, ALOFT).winds(rule);
        assertThat(winds.bendsPa()).isEmpty();
        for (double pressure : new double[] {110000.0, 90000.0, 1000.0}) {
            assertThat(winds.eastward(pressure)).isEqualTo(Double.valueOf(component));
            assertThat(winds.northward(pressure)).isEqualTo(Double.valueOf(component));
            assertThat(winds.covers(pressure)).isEqualTo(!Double.isNaN(component));
        }
    }

    @Test
    @DisplayName("told by height stand where the air has that height, among those told by pressure")
    void byHeight() {
        Sounding sounding =
                sounding(
                        GROUND.wind(180, 4),
                        ALOFT.wind(180, 20),
                        withoutPressure().metres(1000).wind(270, 9));
        Atmosphere air = sounding.atmosphere();
        Winds winds = sounding.winds(UnobservedWind.NOT_KNOWN);
        double pressure = air.pressureFromGeopotentialAltitude(1000.0);
        assertThat(winds.bendsPa()).containsExactly(100000.0, pressure, 81000.0);
        assertThat(winds.eastward(pressure)).isEqualTo(9.0, within(1e-12));
        assertThat(winds.northward(pressure)).isEqualTo(0.0, within(1e-12));
    }

    @Test
    @DisplayName("told by height are left out below and above the heights of the air")
    void byHeightOutside() {
        Winds winds =
                sounding(
                                GROUND,
                                ALOFT,
                                withoutPressure().metres(99.9).wind(270, 9),
                                withoutPressure().metres(100).wind(270, 8),
                                withoutPressure().metres(1900).wind(270, 7),
                                withoutPressure().metres(1900.1).wind(270, 6))
                        .winds(UnobservedWind.NOT_KNOWN);
        assertThat(winds.bendsPa()).containsExactly(100000.0, 81000.0);
        assertThat(winds.eastward(100000.0)).isEqualTo(8.0, within(1e-12));
        assertThat(winds.eastward(81000.0)).isEqualTo(7.0, within(1e-12));
    }

    @ParameterizedTest(name = "{0}")
    @EnumSource(UnobservedWind.class)
    @DisplayName("told by height are left out where there is no air to place them in")
    void byHeightWithoutAir(UnobservedWind rule) {
        Level byHeight = withoutPressure().metres(1000).wind(270, 9);
        assertThat(sounding(hpa(900).wind(10, 5), byHeight).winds(rule).bendsPa())
                .containsExactly(90000.0);
        assertThat(
                        sounding(hpa(900).celsius(5), hpa(800).celsius(1), byHeight)
                                .winds(rule)
                                .bendsPa())
                .isEmpty();
    }

    @Test
    @DisplayName("told by height give way to one told by pressure at the same place")
    void byHeightOnALevel() {
        Winds winds =
                sounding(GROUND.wind(180, 4), ALOFT, withoutPressure().metres(100).wind(270, 9))
                        .winds(UnobservedWind.NOT_KNOWN);
        assertThat(winds.bendsPa()).containsExactly(100000.0);
        assertThat(winds.northward(100000.0)).isEqualTo(4.0, within(1e-12));
    }
}
