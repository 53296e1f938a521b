package org.climbwright.performance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

@Label("The time of a climb, for any rates")
class TimeToClimbPropertyTest {
    @Property
    @Label("is always longer than by the mean of the rates, and shorter than by the smaller")
    void logarithmicMean(
            @ForAll @DoubleRange(min = 0.01, max = 50.0) @Scale(6) double lower,
            @ForAll @DoubleRange(min = 0.01, max = 50.0) @Scale(6) double upper) {
        double mean = TimeToClimb.logarithmicMean(lower, upper);
        double rounding = 1e-15 * (lower + upper);
        assertThat(mean).isLessThanOrEqualTo(0.5 * (lower + upper) + rounding);
        assertThat(mean).isGreaterThanOrEqualTo(Math.min(lower, upper) - rounding);
        // between the geometric mean and that of the two
        assertThat(mean).isGreaterThanOrEqualTo(Math.sqrt(lower * upper) - rounding);
        assertThat(TimeToClimb.logarithmicMean(upper, lower)).isCloseTo(mean, within(rounding));
    }

    @Property
    @Label("by a table of two rows is the altitude over the logarithmic mean")
    void twoRows(
            @ForAll @DoubleRange(min = 0.1, max = 50.0) @Scale(6) double lower,
            @ForAll @DoubleRange(min = 0.1, max = 50.0) @Scale(6) double upper) {
        double time =
                TimeToClimb.tabulated(
                        new double[] {0.0, 1000.0}, new double[] {lower, upper}, 0.0, 1000.0);
        assertThat(time)
                .isCloseTo(
                        1000.0 / TimeToClimb.logarithmicMean(lower, upper), within(1e-14 * time));
    }

    @Property
    @Label("grows with the altitude reached, and adds up")
    void addsUp(
            @ForAll @DoubleRange(min = 0.0, max = 6000.0) @Scale(3) double middle,
            @ForAll @DoubleRange(min = 6000.5, max = 11990.0) @Scale(3) double top) {
        double first = TimeToClimb.linear(12000.0, 15.0, 0.0, middle);
        double second = TimeToClimb.linear(12000.0, 15.0, middle, top);
        double whole = TimeToClimb.linear(12000.0, 15.0, 0.0, top);
        assertThat(second).isPositive();
        assertThat(first + second).isCloseTo(whole, within(1e-12 * whole));
    }
}
