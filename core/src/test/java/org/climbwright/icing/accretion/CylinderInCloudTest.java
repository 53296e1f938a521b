package org.climbwright.icing.accretion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.atmosphere.AirState;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.speed.TrueAirspeed;
import org.climbwright.testing.Streams;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("A cylinder in a cloud")
class CylinderInCloudTest {
    private static CylinderInCloud cylinder(double celsius, double mps, double micrometres) {
        return CylinderInCloud.of(
                AirState.ofSi(70_000.0, celsius + 273.15, Double.NaN, Double.NaN),
                TrueAirspeed.ofMetresPerSecond(mps),
                0.05,
                micrometres / 1e6,
                0.5e-3);
    }

    @Test
    @DisplayName("of small drops catches nothing: no ice, and no word on how it would freeze")
    void nothingCaught() {
        CylinderInCloud fine = cylinder(-10, 50, 3);
        assertThat(fine.langmuirModifiedInertia()).isLessThan(0.125);
        assertThat(fine.stagnationEfficiency()).isZero();
        assertThat(fine.overallEfficiency()).isZero();
        assertThat(fine.freezingFraction()).isEmpty();
        assertThat(fine.criticalLiquidWaterContentKgPerM3()).isEmpty();
        assertThat(fine.growthMps(900.0)).isZero();
        assertThat(fine.timeToThickness(0.01, 900.0)).isEmpty();
        assertThat(fine.intensity(900.0)).isEmpty();
    }

    @Test
    @DisplayName("in warm air grows no ice, and at rest catches nothing")
    void noIce() {
        CylinderInCloud warm = cylinder(4, 100, 20);
        assertThat(warm.freezingFraction()).hasValue(0.0);
        assertThat(warm.criticalLiquidWaterContentKgPerM3()).hasValue(0.0);
        assertThat(warm.intensity(900.0)).isEmpty();
        CylinderInCloud atRest = cylinder(-10, 0, 20);
        assertThat(atRest.freezingFraction()).isEmpty();
        assertThat(atRest.wetTemperatureK()).isEqualTo(263.15);
    }

    @Test
    @DisplayName("is warmer dry than wet, and wet than the air")
    void temperatures() {
        CylinderInCloud fast = cylinder(-5, 150, 20);
        assertThat(fast.dryTemperatureK())
                .isCloseTo(268.15 + 150.0 * 150.0 / (7.0 * 287.05287), within(1e-9));
        assertThat(fast.wetTemperatureK()).isBetween(268.15, fast.dryTemperatureK());
    }

    @Test
    @DisplayName("has another modified inertia by the other definition, never mixed up")
    void twoDefinitions() {
        double langmuir = DropImpingement.langmuirModifiedInertia(2.0, 0.4);
        double product = DropImpingement.productModifiedInertia(2.0, 0.4);
        assertThat(langmuir).isCloseTo(0.875, within(1e-15));
        assertThat(product).isCloseTo(0.8, within(1e-15));
    }

    @ParameterizedTest(name = "{0} °C, {1} m/s, {2} µm")
    @CsvSource({
        "-45, 80, 20, static air temperature of a cloud",
        "15, 80, 20, static air temperature of a cloud",
        "-10, 311, 20, true airspeed",
        "-10, 80, 3000, drop diameter",
        "-10, 200, 900, Reynolds number of the drop",
        "-10, 80, NaN, drop diameter"
    })
    @DisplayName("refuses what its formulas do not know, when it is made")
    void refuses(double celsius, double mps, double micrometres, String term) {
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> cylinder(celsius, mps, micrometres))
                .satisfies(error -> assertThat(error.term()).isEqualTo(term))
                .withMessageContaining(" must be from ");
    }

    @Test
    @DisplayName("tells beforehand what the functions of plain numbers take")
    void predicates() {
        assertThat(DropImpingement.covers(20e-6, 100, 0.05)).isTrue();
        assertThat(DropImpingement.covers(20e-6, 100, 0.0)).isFalse();
        assertThat(HeatBalance.covers(263.15, 100, 7e4)).isTrue();
        assertThat(HeatBalance.covers(290.0, 100, 7e4)).isFalse();
        assertThat(KineticHeating.coversWet(263.15, 100, 7e4, 1.0)).isTrue();
        assertThat(KineticHeating.coversWet(263.15, 100, 7e4, 1.1)).isFalse();
        assertThat(IceGrowth.grows(0.0)).isFalse();
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> HeatBalance.balance(1.0, 1.0, 0.0))
                .withMessageContaining("relative heat factor");
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> HeatBalance.freezingFraction(Double.NaN, 1.0, 1.0));
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> HeatBalance.freezingFraction(1.0, Double.NaN, 1.0));
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> HeatBalance.stagnationHeatTransfer(50, 0.1, 1, 1.7e-5, 0.0));
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> KineticHeating.localRecovery(2.0, 0.85));
    }

    @Test
    @DisplayName("has overall efficiencies by two formulas that fall by 0.0038 where they meet")
    void joint() {
        double below = DropImpingement.overallEfficiency(1.1);
        double above = DropImpingement.overallEfficiency(Math.nextUp(1.1));
        assertThat(below - above).isBetween(0.0038, 0.0039);
    }

    @Test
    @DisplayName("is the same value when it was written to a stream")
    void serialized() throws Exception {
        CylinderInCloud one = cylinder(-10, 80, 20);
        assertThat(Streams.roundTrip(one)).isEqualTo(one).hasSameHashCodeAs(one);
        assertThat(one)
                .hasToString(
                        "cylinder of radius 0.05 m at 80.0 m/s in drops of 2.0E-5 m and 5.0E-4"
                                + " kg/m³");
        assertThat(one.withLiquidWaterContent(1e-3)).isNotEqualTo(one);
    }
}
