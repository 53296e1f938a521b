package org.climbwright.quantity.temperature;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Temperatures and the differences between them")
class TemperatureArithmeticTest {
    private static final TemperatureDifference TEN = TemperatureDifference.ofKelvins(10.0);

    @Test
    @DisplayName("15 °C and 10 degrees warmer is 25 °C, not 298 °C")
    void warmer() {
        StaticAirTemperature air = StaticAirTemperature.ofCelsius(15.0);

        assertThat(air.plus(TEN)).isEqualTo(StaticAirTemperature.ofCelsius(25.0));
        assertThat(air.minus(TEN)).isEqualTo(StaticAirTemperature.ofCelsius(5.0));
        assertThat(air.plus(TEN).minus(air)).isEqualTo(TEN);
        assertThat(air.minus(air.plus(TEN))).isEqualTo(TemperatureDifference.ofKelvins(-10.0));
    }

    @Test
    @DisplayName("a probe and a dew point have differences of their own kind")
    void otherPoints() {
        TotalAirTemperature probe = TotalAirTemperature.ofCelsius(-25.0);
        DewPoint dew = DewPoint.ofCelsius(8.0);

        assertThat(probe.plus(TEN).inCelsius()).isEqualTo(-15.0);
        assertThat(dew.minus(TEN).inCelsius()).isEqualTo(-2.0);
        assertThat(dew.minus(dew).inKelvins()).isZero();
        assertThat(FrostPoint.ofCelsius(-8.0).minus(TEN).inCelsius()).isEqualTo(-18.0);
    }

    @Test
    @DisplayName("no difference leads below absolute zero")
    void absoluteZero() {
        StaticAirTemperature cold = StaticAirTemperature.ofKelvins(5.0);

        assertThat(cold.minus(TemperatureDifference.ofKelvins(5.0)).inKelvins()).isZero();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> cold.minus(TEN))
                .withMessage(
                        "static air temperature must be a finite number, at least 0.0 K,"
                                + " but was -5.0 K");
    }

    @Test
    @DisplayName("differences add up and multiply; an ISA deviation is one too")
    void differences() {
        assertThat(TEN.plus(TEN)).isEqualTo(TEN.times(2.0));
        assertThat(TEN.times(-0.5)).isEqualTo(TemperatureDifference.ofKelvins(-5.0));
        assertThat(IsaDeviation.ofKelvins(10.0).toDifference()).isEqualTo(TEN);
        assertThat(IsaDeviation.ofKelvins(10.0)).isNotEqualTo(TEN);
        assertThat(IsaDeviationAtAltitude.ofKelvins(10.0).toDifference()).isEqualTo(TEN);
        assertThat(IsaDeviationAtAltitude.ofKelvins(10.0))
                .isNotEqualTo(IsaDeviation.ofKelvins(10.0));
    }

    @Test
    @DisplayName("two temperatures are close within their difference, and no less")
    void closeness() {
        StaticAirTemperature air = StaticAirTemperature.ofKelvins(250.0);
        StaticAirTemperature warm = air.plus(TEN);
        TemperatureDifference justLess = TemperatureDifference.ofKelvins(Math.nextDown(10.0));

        assertThat(air.isCloseTo(warm, TEN)).isTrue();
        assertThat(warm.isCloseTo(air, TEN)).isTrue();
        assertThat(warm.isCloseTo(air, justLess)).isFalse();
        assertThat(TEN.isCloseTo(TEN.times(2.0), TEN)).isTrue();
        assertThat(TEN.isCloseTo(TEN.times(2.0), justLess)).isFalse();
    }
}
