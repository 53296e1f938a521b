package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.quantity.OutsideModelException;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("A saturation formula")
class SaturationFormulaTest {
    private static final SaturationFormula MURPHY_KOOP = SaturationFormula.MURPHY_KOOP;
    private static final SaturationFormula WMO = SaturationFormula.WMO;

    @Test
    @DisplayName("knows that over water at -40 °C the pressure is 1.47 times that over ice")
    void waterAndIce() {
        double minus40 = UnitScale.CELSIUS.toSi(-40.0);
        assertThat(MURPHY_KOOP.overWater(minus40) / MURPHY_KOOP.overIce(minus40))
                .isCloseTo(1.47, within(0.005));
        // and so the frost point lies some 3.5 K above the dew point
        assertThat(MURPHY_KOOP.frostPoint(MURPHY_KOOP.overWater(minus40)) - minus40)
                .isCloseTo(3.5, within(0.05));
    }

    @Test
    @DisplayName("of the weather services is as near to the reference as it says")
    void wmoAgainstTheReference() {
        for (int tenths = -650; tenths <= 588; tenths++) {
            double kelvin = UnitScale.CELSIUS.toSi(tenths / 10.0);
            if (tenths >= -450) {
                assertThat(WMO.overWater(kelvin) / MURPHY_KOOP.overWater(kelvin))
                        .as("over water at %s K", kelvin)
                        .isCloseTo(1.0, within(tenths >= -200 ? 0.004 : 0.008));
            }
            if (tenths >= -500 && tenths <= 0) {
                assertThat(WMO.overIce(kelvin) / MURPHY_KOOP.overIce(kelvin))
                        .as("over ice at %s K", kelvin)
                        .isCloseTo(1.0, within(5e-4));
            }
        }
    }

    @Test
    @DisplayName("meets that over ice at the triple point, or at 0 °C, as its authors fitted it")
    void whereTheyMeet() {
        assertThat(MURPHY_KOOP.overIce(273.16))
                .isCloseTo(MURPHY_KOOP.overWater(273.16), within(5e-8 * 611.657));
        // the triple point is at 611.657 Pa, IAPWS R14-08
        assertThat(MURPHY_KOOP.overIce(273.16)).isCloseTo(611.657, within(1e-3));
        assertThat(MURPHY_KOOP.overIce(273.15) / MURPHY_KOOP.overWater(273.15))
                .isCloseTo(1.0 - 1e-4, within(5e-6));
        assertThat(WMO.overIce(273.15)).isEqualTo(WMO.overWater(273.15));
        assertThat(WMO.overWater(273.15)).isCloseTo(611.2, within(1e-10));
    }

    @ParameterizedTest(name = "{0}: water {2} to {3}, ice {4} to {5} in {1}")
    @CsvSource({"WMO, CELSIUS, -45, 60, -65, 0", "MURPHY_KOOP, KELVIN, 123, 332, 110, 273.16"})
    @DisplayName("reaches from end to end of its range, in the unit of its source, and not farther")
    void ends(
            SaturationFormula formula,
            UnitScale scale,
            double coldestWater,
            double warmestWater,
            double coldestIce,
            double warmestIce) {
        for (double end : new double[] {coldestWater, warmestWater}) {
            double kelvin = scale.toSi(end);
            assertThat(formula.coversWater(kelvin)).as("%s", end).isTrue();
            double vapour = formula.overWater(kelvin);
            assertThat(formula.coversDewPoint(vapour)).isTrue();
            assertThat(formula.dewPoint(vapour)).isCloseTo(kelvin, within(1e-12));
        }
        for (double end : new double[] {coldestIce, warmestIce}) {
            double kelvin = scale.toSi(end);
            assertThat(formula.coversIce(kelvin)).as("%s", end).isTrue();
            double vapour = formula.overIce(kelvin);
            assertThat(formula.coversFrostPoint(vapour)).isTrue();
            assertThat(formula.frostPoint(vapour)).isCloseTo(kelvin, within(1e-12));
        }
        assertThat(formula.coversWater(scale.toSi(coldestWater - 1e-9))).isFalse();
        assertThat(formula.coversWater(scale.toSi(warmestWater + 1e-9))).isFalse();
        assertThat(formula.coversIce(scale.toSi(coldestIce - 1e-9))).isFalse();
        assertThat(formula.coversIce(scale.toSi(warmestIce + 1e-9))).isFalse();
    }

    @Nested
    @DisplayName("refuses")
    class Refuses {
        @ParameterizedTest
        @EnumSource
        @DisplayName("what is not a number, whatever is asked")
        void notANumber(SaturationFormula formula) {
            assertThat(formula.coversWater(Double.NaN)).isFalse();
            assertThat(formula.coversIce(Double.NaN)).isFalse();
            assertThat(formula.coversDewPoint(Double.NaN)).isFalse();
            assertThat(formula.coversFrostPoint(Double.NaN)).isFalse();
            outside(() -> formula.overWater(Double.NaN));
            outside(() -> formula.overIce(Double.NaN));
            outside(() -> formula.dewPoint(Double.NaN));
            outside(() -> formula.frostPoint(Double.NaN));
        }

        @Test
        @DisplayName("a temperature over ice above the triple point")
        void aboveTheTriplePoint() {
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> MURPHY_KOOP.overIce(273.17))
                    .withMessage(
                            "temperature of saturated air must be from 110.0 to 273.16 K, but was"
                                + " 273.17 K: the saturation formula over ice was fitted there");
        }

        @Test
        @DisplayName("a temperature that its fit does not reach")
        void tooCold() {
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> WMO.overWater(220.0))
                    .withMessageStartingWith("temperature of saturated air must be from 228.1")
                    .withMessageEndingWith(
                            " to 333.15 K, but was 220.0 K: the saturation formula over water was"
                                    + " fitted there");
        }

        @Test
        @DisplayName("a vapour pressure without a frost point in range")
        void frostPoint() {
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> MURPHY_KOOP.frostPoint(700.0))
                    .withMessageStartingWith("vapour pressure must be from ")
                    .withMessageEndingWith(
                            " Pa, but was 700.0 Pa: its frost point must be from 110.0 to 273.16"
                                    + " K");
            outside(() -> MURPHY_KOOP.frostPoint(0.0));
            outside(() -> WMO.dewPoint(1.0));
        }

        private void outside(Runnable question) {
            assertThatExceptionOfType(OutsideModelException.class).isThrownBy(question::run);
        }
    }
}
