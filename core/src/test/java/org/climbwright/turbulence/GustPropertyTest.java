package org.climbwright.turbulence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

@Label("Any gust of the rule, and the load it makes")
class GustPropertyTest {
    @Property
    @Label("rises to its peak at the gradient distance, is even about it, and ends in nothing")
    void hasItsPeakInTheMiddle(
            @ForAll @DoubleRange(min = 10.0, max = 106.0) double gradient,
            @ForAll @DoubleRange(min = 0.1, max = 30.0) double gust,
            @ForAll @DoubleRange(min = 0.0, max = 0.99) double share) {
        assertThat(GustRule.gustAfter(gradient, gradient, gust)).isEqualTo(gust);
        assertThat(GustRule.gustAfter(0.0, gradient, gust)).isZero();
        assertThat(GustRule.gustAfter(2.0 * gradient, gradient, gust)).isZero();
        double here = GustRule.gustAfter(share * gradient, gradient, gust);
        assertThat(here).isBetween(0.0, gust);
        assertThat(GustRule.gustAfter((2.0 - share) * gradient, gradient, gust))
                .isCloseTo(here, within(1e-12));
        assertThat(GustRule.gustAfter((share + 0.001) * gradient, gradient, gust))
                .isGreaterThanOrEqualTo(here);
    }

    @Property
    @Label("is no stronger higher up, and the alleviation factor no smaller")
    void getsWeakerWithAltitude(
            @ForAll @DoubleRange(min = 0.0, max = 12000.0) double altitude,
            @ForAll @DoubleRange(min = 0.4, max = 1.0) double landing,
            @ForAll @DoubleRange(min = 0.4, max = 1.0) double zeroFuel) {
        assertThat(GustRule.referenceGustUpToCruiseSpeed(altitude + 1.0))
                .isLessThan(GustRule.referenceGustUpToCruiseSpeed(altitude));
        assertThat(GustRule.limitTurbulenceIntensity(altitude + 1.0, 1.0))
                .isLessThanOrEqualTo(GustRule.limitTurbulenceIntensity(altitude, 1.0));
        double factor = GustRule.alleviation(altitude, 12500.0, landing, zeroFuel);
        assertThat(factor)
                .isBetween(GustRule.alleviationAtSeaLevel(12500.0, landing, zeroFuel), 1.0);
        assertThat(GustRule.alleviation(12500.0, 12500.0, landing, zeroFuel)).isEqualTo(1.0);
    }

    @Property
    @Label("adds a load that is nothing without gust, and twice as much for twice the gust")
    void isLinear(
            @ForAll @DoubleRange(min = 0.05, max = 0.88) double factor,
            @ForAll @DoubleRange(min = 0.0, max = 40.0) double gust,
            @ForAll @DoubleRange(min = 10.0, max = 300.0) double speed,
            @ForAll @DoubleRange(min = 2.0, max = 9.0) double slope,
            @ForAll @DoubleRange(min = 500.0, max = 9000.0) double loading) {
        assertThat(GustLoad.increment(factor, 0.0, speed, slope, loading)).isZero();
        double once = GustLoad.increment(factor, gust, speed, slope, loading);
        assertThat(GustLoad.increment(factor, 2.0 * gust, speed, slope, loading))
                .isEqualTo(2.0 * once); // doubling a double is exact
        double third = GustLoad.increment(factor, gust / 3.0, speed, slope, loading);
        assertThat(3.0 * third).isCloseTo(once, within(1e-14 * once + 1e-300));
    }

    @Property
    @Label("has a speed for a limit of the load that gives the limit back")
    void speedForALimit(
            @ForAll @DoubleRange(min = 0.05, max = 0.88) double factor,
            @ForAll @DoubleRange(min = 1.0, max = 25.0) double gust,
            @ForAll @DoubleRange(min = 10.0, max = 300.0) double speed,
            @ForAll @DoubleRange(min = 2.0, max = 9.0) double slope,
            @ForAll @DoubleRange(min = 1000.0, max = 9000.0) double loading) {
        double increment = GustLoad.increment(factor, gust, speed, slope, loading);
        assertThat(GustLoad.speedForIncrement(factor, gust, increment, slope, loading))
                .isCloseTo(speed, within(1e-14 * speed));
    }

    @Property
    @Label("is alleviated the less, the heavier the aeroplane, and never by all or nothing")
    void heavyAeroplanesFeelMore(@ForAll @DoubleRange(min = 0.1, max = 1000.0) double massRatio) {
        double factor = GustLoad.alleviationFactor(massRatio);
        assertThat(factor).isBetween(0.0, 0.88);
        assertThat(GustLoad.alleviationFactor(1.01 * massRatio)).isGreaterThan(factor);
    }
}
