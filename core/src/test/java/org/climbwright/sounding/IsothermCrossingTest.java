package org.climbwright.sounding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.sounding.Level.hpa;
import static org.climbwright.sounding.Level.sounding;

import org.climbwright.atmosphere.altimetry.Altimetry;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A crossing of an isotherm")
class IsothermCrossingTest {
    private final Sounding sounding =
            sounding(
                    hpa(1000).celsius(10).dewPoint(8).metres(100),
                    hpa(810).celsius(-10).dewPoint(-12).metres(1900));

    @Test
    @DisplayName("lies where temperature, straight in ln p, has it: 900 hPa between 1000 and 810")
    void isLinearInLnP() {
        IsothermCrossing crossing = sounding.freezingLevels().get(0);
        // half way from 10 to -10 degC, and 900 is the geometric mean of 1000 and 810
        assertThat(crossing.air().pressurePa()).isEqualTo(90000.0, within(1e-8));
        assertThat(crossing.trend()).isEqualTo(IsothermCrossing.Trend.FALLING);
        assertThat(crossing.pressureAltitude())
                .isEqualTo(
                        Altimetry.pressureAltitude(
                                StaticPressure.ofPascals(crossing.air().pressurePa())));
        assertThat(crossing.air().dewPoint().orElseThrow().inCelsius())
                .isEqualTo(-2.0, within(1e-8));
    }

    @Test
    @DisplayName("at a reported level is that level to the last bit")
    void atALevel() {
        for (int hpa = 900; hpa < 1000; hpa += 7) {
            Sounding through =
                    sounding(hpa(1000).celsius(3), hpa(hpa).celsius(0), hpa(500).celsius(-7));
            assertThat(through.freezingLevels().get(0).air().pressurePa()).isEqualTo(hpa * 100.0);
        }
    }

    @Test
    @DisplayName("is one of any temperature, and empty where the air never has it")
    void otherTemperatures() {
        assertThat(sounding.isothermCrossings(StaticAirTemperature.ofCelsius(-9.99))).hasSize(1);
        assertThat(sounding.isothermCrossings(StaticAirTemperature.ofCelsius(-10))).isEmpty();
        assertThat(sounding.isothermCrossings(StaticAirTemperature.ofCelsius(-10.01))).isEmpty();
        assertThat(sounding.isothermCrossings(StaticAirTemperature.ofCelsius(10))).isEmpty();
    }
}
