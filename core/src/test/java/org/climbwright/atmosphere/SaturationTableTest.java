package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.climbwright.testing.Agreement.computedAs;
import static org.climbwright.testing.Agreement.printedAs;
import static org.climbwright.testing.Agreement.relativelyCloseTo;

import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.testing.Table;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("Saturated air")
class SaturationTableTest {
    private static final SaturationFormula MURPHY_KOOP = SaturationFormula.MURPHY_KOOP;
    private static final SaturationFormula WMO = SaturationFormula.WMO;

    @ParameterizedTest(name = "at {0}: {1}, {2}")
    @CsvFileSource(resources = "/atmosphere/saturation.csv", useHeadersInDisplayName = true)
    @DisplayName("over water has the vapour pressure of the table, or the formula ends before")
    void overWater(double celsius, String murphyKoop, String wmo) {
        double kelvin = UnitScale.CELSIUS.toSi(celsius);
        assertThat(hectopascal(MURPHY_KOOP.overWater(kelvin))).is(computedAs(murphyKoop, 14));
        assertThat(MoistAir.saturationVapourPressure(kelvin))
                .isEqualTo(MURPHY_KOOP.overWater(kelvin));
        assertThat(WMO.coversWater(kelvin)).isEqualTo(celsius >= -45.0);
        agreesOrIsRefused(WMO::overWater, kelvin, wmo, WMO.coversWater(kelvin));
    }

    @ParameterizedTest(name = "at {0}: {7}, {8}")
    @CsvFileSource(resources = "/atmosphere/saturation.csv", useHeadersInDisplayName = true)
    @DisplayName("over ice has the vapour pressure of the table, or the formula ends before")
    void overIce(
            double celsius,
            String waterMurphyKoop,
            String waterWmo,
            String waterBolton,
            String waterBuck,
            String waterGoff,
            String waterShort,
            String murphyKoop,
            String wmo,
            String buck,
            String goffGratch,
            String iapws) {
        double kelvin = UnitScale.CELSIUS.toSi(celsius);
        assertThat(MURPHY_KOOP.coversIce(kelvin)).isEqualTo(celsius <= 0.0);
        assertThat(WMO.coversIce(kelvin)).isEqualTo(celsius >= -65.0 && celsius <= 0.0);
        agreesOrIsRefused(MURPHY_KOOP::overIce, kelvin, murphyKoop, MURPHY_KOOP.coversIce(kelvin));
        agreesOrIsRefused(WMO::overIce, kelvin, wmo, WMO.coversIce(kelvin));
        if (celsius <= 0.0) {
            assertThat(MoistAir.saturationVapourPressureOverIce(kelvin))
                    .isEqualTo(MURPHY_KOOP.overIce(kelvin));
            // what the formula says of itself: 4e-5 down to -5 °C, 6e-4 down to -80 °C
            assertThat(hectopascal(MURPHY_KOOP.overIce(kelvin)))
                    .is(relativelyCloseTo(iapws, celsius >= -5.0 ? 4e-5 : 6.5e-4));
        }
    }

    @ParameterizedTest(name = "at {0}: {12}")
    @CsvFileSource(resources = "/atmosphere/saturation.csv", useHeadersInDisplayName = true)
    @DisplayName("over water is as far from five other formulas as the table says, and no farther")
    void spread(
            double celsius,
            String murphyKoop,
            double wmo,
            double bolton,
            double buck,
            double goff,
            double shortForm,
            String iceMurphyKoop,
            String iceWmo,
            String iceBuck,
            String iceGoffGratch,
            String iceIapws,
            String spread) {
        double ours = hectopascal(MURPHY_KOOP.overWater(UnitScale.CELSIUS.toSi(celsius)));
        double farthest =
                DoubleStream.of(wmo, bolton, buck, goff, shortForm)
                        .map(other -> Math.abs(other / ours - 1.0))
                        .max()
                        .orElseThrow();
        assertThat(farthest).is(printedAs(spread, 3));
    }

    private static void agreesOrIsRefused(
            DoubleUnaryOperator formula, double kelvin, String hectopascal, boolean covered) {
        if (covered) {
            assertThat(hectopascal(formula.applyAsDouble(kelvin))).is(computedAs(hectopascal, 14));
        } else {
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> formula.applyAsDouble(kelvin));
        }
    }

    private static double hectopascal(double pascal) {
        return UnitScale.HECTOPASCAL.fromSi(pascal);
    }

    @Test
    @DisplayName("is compared in 15 rows")
    void rows() {
        assertThat(Table.rows("/atmosphere/saturation.csv")).hasSize(15);
    }
}
