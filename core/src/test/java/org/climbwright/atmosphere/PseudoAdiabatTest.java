package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.quantity.OutsideModelException;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Saturated air that is lifted")
class PseudoAdiabatTest {
    /**
     * Bolton (1980), equation 43 (from memory), was fitted to ascents like these, to 0.02 K by its
     * author with his constants; his saturation formula, below 0 °C above all, is another than
     * ours. The largest difference is 0.133 K, 0.09 K in temperature.
     */
    @ParameterizedTest(name = "from {0} °C at {1} hPa to {2} hPa")
    @CsvSource({
        "24, 950, 700",
        "24, 950, 500",
        "24, 950, 300",
        "24, 950, 200",
        "15, 900, 500",
        "15, 900, 300",
        "5, 850, 400",
        "-10, 700, 300",
        "20, 1000, 250"
    })
    @DisplayName("keeps its equivalent potential temperature by a formula of another's")
    void keepsItsEquivalentPotentialTemperature(double celsius, double from, double to) {
        double t = celsius + 273.15;
        double lifted = PseudoAdiabat.temperature(t, from * 100.0, to * 100.0);
        assertThat(equivalentPotentialTemperature(lifted, to))
                .isCloseTo(equivalentPotentialTemperature(t, from), within(0.15));
        assertThat(PseudoAdiabat.temperature(lifted, to * 100.0, from * 100.0))
                .isCloseTo(t, within(1e-6));
    }

    private static double equivalentPotentialTemperature(double t, double hectopascal) {
        double e = 6.112 * Math.exp(17.67 * (t - 273.15) / (t - 29.65));
        double r = 0.622 * e / (hectopascal - e);
        return t
                * Math.pow(1000.0 / hectopascal, 0.2854 * (1.0 - 0.28 * r))
                * Math.exp((3376.0 / t - 2.54) * r * (1.0 + 0.81 * r));
    }

    @Test
    @DisplayName("cools as unsaturated air does where it is too cold to hold vapour")
    void coolsDryWhereCold() {
        assertThat(PseudoAdiabat.temperature(190.0, 20000.0, 15000.0))
                .isCloseTo(
                        LiftedAir.unsaturatedTemperature(190.0, 0.0, 20000.0, 15000.0),
                        within(0.01));
    }

    @Test
    @DisplayName("meets its condensation level: unsaturated below it, saturated at it")
    void meetsTheCondensationLevel() {
        double vapour = MoistAir.saturationVapourPressure(288.15);
        double p = LiftedAir.condensationPressure(298.15, vapour, 100000.0);
        assertThat(LiftedAir.unsaturatedTemperature(298.15, vapour, 100000.0, p))
                .isCloseTo(
                        LiftedAir.condensationTemperature(298.15, vapour, 100000.0), within(1e-9));
    }

    @Test
    @DisplayName("is refused where the formula of saturation ends, and where there is no air")
    void isRefused() {
        assertThat(LiftedAir.coversUnsaturated(1000.0, 100000.0, 50000.0)).isTrue();
        assertThat(LiftedAir.coversUnsaturated(1000.0, 900.0, 50000.0)).isFalse();
        assertThat(LiftedAir.coversUnsaturated(0.0, 100000.0, 0.0)).isFalse();
        assertThat(PseudoAdiabat.covers(122.9, 50000.0)).isFalse();
        assertThat(PseudoAdiabat.covers(300.0, 3000.0)).isFalse(); // boiling
        assertThat(PseudoAdiabat.covers(250.0, 50000.0)).isTrue();
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> PseudoAdiabat.slope(122.9, 50000.0));
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> PseudoAdiabat.temperature(250.0, 50000.0, 99.0));
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> PseudoAdiabat.temperature(250.0, 50000.0, Double.NaN));
    }
}
