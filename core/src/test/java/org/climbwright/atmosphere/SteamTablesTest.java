package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.hummeling.if97.IF97;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * A second opinion at every hundredth of a degree: the industrial formulation IAPWS-IF97 of the
 * association for water and steam, in a library of its own. It is itself 3.4e-6 from the scientific
 * formulation IAPWS-95 at 275 K (the check value 698.451167 Pa).
 */
@DisplayName("Saturated air above 0 °C, against the steam tables of IAPWS-IF97")
class SteamTablesTest {
    private static final IF97 STEAM = new IF97(IF97.UnitSystem.SI);

    @Test
    @DisplayName("over water is within the 0.05 % that its authors state, up to 332 K")
    void overWater() {
        double farthest = 0.0;
        for (int hundredths = 27316; hundredths <= 33200; hundredths++) {
            double kelvin = hundredths / 100.0;
            double off =
                    SaturationFormula.MURPHY_KOOP.overWater(kelvin)
                                    / STEAM.saturationPressureT(kelvin)
                            - 1.0;
            farthest = Math.max(farthest, Math.abs(off));
            assertThat(off).as("at %s K", kelvin).isCloseTo(0.0, within(5e-4));
            if (kelvin <= 320.0) { // seen: -1.7e-5 to 8.2e-5
                assertThat(off).as("at %s K", kelvin).isCloseTo(0.0, within(1e-4));
            }
        }
        // measured, at 332 K: a change of the formula would move it
        assertThat(farthest).isCloseTo(3.23e-4, within(1e-6));
    }

    @Test
    @DisplayName("over water by the short form of WMO-No. 8 is within 0.4 %")
    void wmo() {
        for (int hundredths = 27316; hundredths <= 33300; hundredths++) {
            double kelvin = hundredths / 100.0;
            assertThat(SaturationFormula.WMO.overWater(kelvin) / STEAM.saturationPressureT(kelvin))
                    .as("at %s K", kelvin)
                    .isCloseTo(1.0, within(4e-3));
        }
    }

    @Test
    @DisplayName("is measured with tables that know the triple point and the check value at 275 K")
    void tables() {
        assertThat(STEAM.saturationPressureT(273.16)).isCloseTo(611.657, within(1e-4));
        assertThat(STEAM.saturationPressureT(275.0)).isCloseTo(698.451167, within(3.5e-6 * 698.45));
    }
}
