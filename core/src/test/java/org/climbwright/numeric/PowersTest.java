package org.climbwright.numeric;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Powers at the ends")
class PowersTest {
    @Test
    @DisplayName("the exponential overflows and vanishes where a double ends")
    void exponential() {
        assertThat(Powers.exp(0.0)).isEqualTo(1.0);
        assertThat(Powers.exp(709.7)).isFinite();
        assertThat(Powers.exp(709.79)).isInfinite();
        assertThat(Powers.exp(-745.0)).isEqualTo(Double.MIN_VALUE);
        assertThat(Powers.exp(-746.0)).isZero();
        assertThat(Powers.exp(Double.NaN)).isNaN();
        assertThat(Powers.pow(10.0, 400.0)).isInfinite();
        assertThat(Powers.pow(10.0, -400.0)).isZero();
    }

    @Test
    @DisplayName("there is no logarithm and no power of what is not above 0 or not finite")
    void logarithm() {
        assertThat(Powers.log(1.0)).isZero();
        assertThat(Powers.log(0.0)).isNaN();
        assertThat(Powers.log(-1.0)).isNaN();
        assertThat(Powers.log(Double.POSITIVE_INFINITY)).isNaN();
        assertThat(Powers.log(Double.NaN)).isNaN();
        assertThat(Powers.pow(-1.0, 0.5)).isNaN();
    }
}
