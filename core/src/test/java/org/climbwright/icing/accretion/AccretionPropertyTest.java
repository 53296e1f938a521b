package org.climbwright.icing.accretion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.SaturationFormula;
import org.climbwright.quantity.speed.TrueAirspeed;

@Label("A cylinder in a cloud")
class AccretionPropertyTest {
    /** By how much the two formulas of the overall efficiency miss each other where they meet. */
    private static final double JOINT = 0.0039;

    private static CylinderInCloud cylinder(
            double celsius, double mps, double centimetres, double micrometres, double grams) {
        return CylinderInCloud.of(
                AirState.ofSi(70_000.0, celsius + 273.15, Double.NaN, Double.NaN),
                TrueAirspeed.ofMetresPerSecond(mps),
                centimetres / 100.0,
                micrometres / 1e6,
                grams / 1e3);
    }

    @Property
    @Label("catches a share from 0 to 1, more of larger drops, and less the larger it is")
    void efficiency(
            @ForAll @DoubleRange(min = 30.0, max = 200.0) double mps,
            @ForAll @DoubleRange(min = 0.5, max = 50.0) double centimetres,
            @ForAll @DoubleRange(min = 5.0, max = 60.0) double one,
            @ForAll @DoubleRange(min = 5.0, max = 60.0) double other) {
        double small = Math.min(one, other);
        double large = Math.max(one, other);
        CylinderInCloud of = cylinder(-10, mps, centimetres, large, 0.5);
        CylinderInCloud finer = cylinder(-10, mps, centimetres, small, 0.5);
        CylinderInCloud wider = cylinder(-10, mps, 1.5 * centimetres, large, 0.5);
        assertThat(of.stagnationEfficiency())
                .isBetween(finer.stagnationEfficiency(), 1.0)
                .isGreaterThanOrEqualTo(wider.stagnationEfficiency());
        assertThat(finer.stagnationEfficiency()).isNotNegative();
        assertThat(of.overallEfficiency()).isBetween(finer.overallEfficiency() - JOINT, 1.0);
        assertThat(finer.overallEfficiency()).isNotNegative();
        assertThat(of.overallEfficiency()).isLessThanOrEqualTo(of.stagnationEfficiency());
    }

    @Property
    @Label("freezes less of its water the warmer it is, and the more there is")
    void freezing(
            @ForAll @DoubleRange(min = -35.0, max = 5.0) double one,
            @ForAll @DoubleRange(min = -35.0, max = 5.0) double other,
            @ForAll @DoubleRange(min = 40.0, max = 150.0) double mps,
            @ForAll @DoubleRange(min = 0.05, max = 2.0) double grams) {
        double cold = Math.min(one, other);
        double warm = Math.max(one, other);
        double inCold = fraction(cylinder(cold, mps, 5, 20, grams));
        double inWarm = fraction(cylinder(warm, mps, 5, 20, grams));
        assertThat(inWarm).isBetween(0.0, inCold);
        assertThat(inCold).isLessThanOrEqualTo(1.0);
        double moreWater = fraction(cylinder(cold, mps, 5, 20, 1.5 * grams));
        // where the air brings heat, water that is colder freezes the better the more there is
        boolean airCools =
                cylinder(cold, mps, 5, 20, grams).criticalLiquidWaterContentKgPerM3().orElseThrow()
                        > 0.0;
        assertThat(moreWater).isBetween(airCools ? 0.0 : inCold, airCools ? inCold : 1.0);
    }

    private static double fraction(CylinderInCloud cylinder) {
        return cylinder.freezingFraction().orElseThrow();
    }

    @Property
    @Label("freezes all of the critical water, and not all of a little more")
    void critical(
            @ForAll @DoubleRange(min = -30.0, max = -8.0) double celsius,
            @ForAll @DoubleRange(min = 40.0, max = 100.0) double mps) {
        CylinderInCloud any = cylinder(celsius, mps, 5, 20, 0.5);
        double water = any.criticalLiquidWaterContentKgPerM3().orElseThrow();
        assertThat(water).isPositive().isLessThan(0.01);
        assertThat(fraction(any.withLiquidWaterContent(water * 0.999999))).isEqualTo(1.0);
        assertThat(fraction(any.withLiquidWaterContent(water * 1.01)))
                .isLessThan(1.0)
                .isGreaterThan(0.97);
    }

    @Property
    @Label("is between the air and its dry temperature when wet, and the equation holds there")
    void wet(
            @ForAll @DoubleRange(min = -45.0, max = 20.0) double celsius,
            @ForAll @DoubleRange(min = 0.0, max = 250.0) double mps,
            @ForAll @DoubleRange(min = 20_000.0, max = 105_000.0) double pressure,
            @ForAll @DoubleRange(min = 0.0, max = 1.0) double recovery) {
        double t = celsius + 273.15;
        double dry = KineticHeating.dryTemperature(t, mps, recovery);
        double wet = KineticHeating.wetTemperature(t, mps, pressure, recovery);
        assertThat(wet).isBetween(t, dry);
        double evaporated =
                0.622
                        * 2.501e6
                        * (SaturationFormula.MURPHY_KOOP.overWater(wet)
                                - SaturationFormula.MURPHY_KOOP.overWater(t))
                        / (3.5 * 287.05287 * pressure);
        assertThat(wet + evaporated).isCloseTo(dry, within(1e-9));
    }

    @Property
    @Label("grows a thickness in the time that is told")
    void time(
            @ForAll @DoubleRange(min = -30.0, max = -15.0) double celsius,
            @ForAll @DoubleRange(min = 0.1, max = 1.0) double grams) {
        CylinderInCloud cylinder = cylinder(celsius, 80, 5, 20, grams);
        double seconds = cylinder.timeToThickness(0.00635, 900.0).orElseThrow().toMillis() / 1e3;
        assertThat(seconds * cylinder.growthMps(900.0)).isCloseTo(0.00635, within(1e-7));
        IcingIntensity intensity = cylinder.intensity(900.0).orElseThrow();
        assertThat(seconds).isGreaterThan(intensity.shortestTimeS() - 0.001);
        OptionalDouble fraction = cylinder.freezingFraction();
        assertThat(cylinder.growthMps(900.0))
                .isCloseTo(
                        cylinder.waterCatchKgPerM2S() * fraction.orElseThrow() / 900.0,
                        within(1e-18));
    }
}
