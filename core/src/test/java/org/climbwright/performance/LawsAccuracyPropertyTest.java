package org.climbwright.performance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.FiftyDigits.DIGITS;

import java.math.BigDecimal;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.climbwright.testing.Agreement;
import org.climbwright.testing.FiftyDigits;

@Label("The laws of an aeroplane, against 50-digit arithmetic")
class LawsAccuracyPropertyTest {
    private static final double ULP = 0x1p-52;
    private static final BigDecimal WEIGHT = big(5e5);
    private static final BigDecimal AREA = big(120.0);

    private static BigDecimal big(double value) {
        return new BigDecimal(value);
    }

    private static BigDecimal over(BigDecimal a, BigDecimal b) {
        return a.divide(b, DIGITS);
    }

    @Property(tries = 300)
    @Label("thrust of a jet to 1e-14")
    void jet(
            @ForAll @DoubleRange(min = 0.1, max = 1.5) @Scale(6) double exponent,
            @ForAll @DoubleRange(min = 0.0, max = 0.95) @Scale(6) double mach,
            @ForAll @DoubleRange(min = 1e4, max = 1.05e5) @Scale(3) double pressure,
            @ForAll @DoubleRange(min = 200.0, max = 320.0) @Scale(6) double temperature) {
        BigDecimal density =
                over(big(pressure), FiftyDigits.seaLevelPressure())
                        .multiply(over(FiftyDigits.seaLevelTemperature(), big(temperature)));
        BigDecimal lapse =
                BigDecimal.ONE
                        .subtract(big(0.6).multiply(big(mach)))
                        .add(big(0.4).multiply(big(mach)).multiply(big(mach)));
        BigDecimal exact =
                FiftyDigits.exp(big(exponent).multiply(FiftyDigits.log(density), DIGITS))
                        .multiply(lapse)
                        .multiply(big(1e5));
        double ours =
                JetThrust.ofSi(1e5, exponent)
                        .withMachLapse(0.6, 0.4)
                        .thrust(mach, pressure, temperature, EngineUse.climb(1));
        assertThat(Agreement.relativeError(ours, exact)).isBetween(-1e-14, 1e-14);
    }

    @Property(tries = 300)
    @Label("drag of the polar to 10 units of the last place, with the rise apart")
    void drag(
            @ForAll @DoubleRange(min = 0.0, max = 2e6) @Scale(3) double lift,
            @ForAll @DoubleRange(min = 500.0, max = 3e4) @Scale(3) double q) {
        BigDecimal force = big(q).multiply(AREA);
        BigDecimal exact =
                force.multiply(big(0.018))
                        .add(over(big(0.043).multiply(big(lift).pow(2)), force))
                        .add(big(0.6).multiply(big(q)));
        double ours =
                ParabolicPolar.ofSi(120.0, 0.018, 0.043)
                        .withEngineOutDrag(2, 0.6)
                        .drag(lift, 0.5, q, EngineUse.climb(1));
        assertThat(Agreement.relativeError(ours, exact)).isBetween(-10.0 * ULP, 10.0 * ULP);
    }

    @Property(tries = 300)
    @Label("best speed to 6, steepest speed to 4 and least sink to 10 units of the last place")
    void closedForms(
            @ForAll @DoubleRange(min = 0.005, max = 0.1) @Scale(6) double zeroLift,
            @ForAll @DoubleRange(min = 0.01, max = 0.2) @Scale(6) double induced,
            @ForAll @DoubleRange(min = 0.0, max = 3e5) @Scale(3) double thrust,
            @ForAll @DoubleRange(min = 0.1, max = 1.3) @Scale(6) double density) {
        BigDecimal drag = big(zeroLift);
        BigDecimal force = big(density).multiply(AREA);
        BigDecimal root =
                FiftyDigits.sqrt(
                        big(thrust)
                                .pow(2)
                                .add(
                                        BigDecimal.valueOf(12)
                                                .multiply(drag)
                                                .multiply(big(induced))
                                                .multiply(WEIGHT.pow(2))));
        BigDecimal best =
                FiftyDigits.sqrt(
                        over(
                                big(thrust).add(root),
                                BigDecimal.valueOf(3).multiply(force).multiply(drag)));
        assertThat(
                        Agreement.relativeError(
                                ParabolicClimb.speedOfBestClimb(
                                        5e5, 120.0, zeroLift, induced, density, thrust),
                                best))
                .isBetween(-6.0 * ULP, 6.0 * ULP);
        BigDecimal loading = over(BigDecimal.valueOf(2).multiply(WEIGHT), force);
        BigDecimal steep =
                FiftyDigits.sqrt(
                        loading.multiply(FiftyDigits.sqrt(over(big(induced), drag)), DIGITS));
        assertThat(
                        Agreement.relativeError(
                                ParabolicClimb.speedOfLeastDrag(
                                        5e5, 120.0, zeroLift, induced, density),
                                steep))
                .isBetween(-4.0 * ULP, 4.0 * ULP);
        BigDecimal slow = over(steep, FiftyDigits.sqrt(FiftyDigits.sqrt(BigDecimal.valueOf(3))));
        BigDecimal sink =
                over(
                        BigDecimal.valueOf(2).multiply(drag).multiply(force).multiply(slow.pow(3)),
                        WEIGHT);
        assertThat(
                        Agreement.relativeError(
                                ParabolicClimb.leastSink(5e5, 120.0, zeroLift, induced, density),
                                sink))
                .isBetween(-10.0 * ULP, 10.0 * ULP);
    }

    @Property(tries = 300)
    @Label("time by a linear rate to 6, and the logarithmic mean to 4 units of the last place")
    void times(
            @ForAll @DoubleRange(min = 0.1, max = 50.0) @Scale(9) double lower,
            @ForAll @DoubleRange(min = 0.1, max = 50.0) @Scale(9) double upper,
            @ForAll @DoubleRange(min = 0.01, max = 11990.0) @Scale(3) double altitude) {
        BigDecimal time =
                over(BigDecimal.valueOf(12000), BigDecimal.valueOf(15))
                        .multiply(
                                FiftyDigits.log(
                                        over(BigDecimal.valueOf(12000), big(12000.0 - altitude))));
        assertThat(Agreement.relativeError(TimeToClimb.linear(12000.0, 15.0, 0.0, altitude), time))
                .isBetween(-6.0 * ULP, 6.0 * ULP);
        Assume.that(lower != upper);
        BigDecimal mean =
                over(
                        big(lower).subtract(big(upper)),
                        FiftyDigits.log(over(big(lower), big(upper))));
        assertThat(Agreement.relativeError(TimeToClimb.logarithmicMean(lower, upper), mean))
                .isBetween(-4.0 * ULP, 4.0 * ULP);
    }
}
