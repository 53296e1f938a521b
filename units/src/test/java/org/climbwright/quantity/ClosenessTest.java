package org.climbwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.stream.Stream;
import org.climbwright.quantity.altitude.VerticalPosition;
import org.climbwright.quantity.path.TrueDirection;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.pressure.DifferentialPressure;
import org.climbwright.quantity.pressure.PressureValue;
import org.climbwright.quantity.temperature.TemperaturePoint;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every value has {@code isCloseTo}. A position and a temperature take a difference as tolerance
 * and have it in AltitudeArithmeticTest and TemperatureArithmeticTest; here are the pressures,
 * which take a differential pressure, and the others, whose tolerance is of their own kind.
 */
@DisplayName("Two values of a kind")
class ClosenessTest {
    static Stream<ValueType<?>> withToleranceOfTheirKind() {
        return ValueCatalogue.all()
                .filter(type -> !VerticalPosition.class.isAssignableFrom(type.type()))
                .filter(type -> !TemperaturePoint.class.isAssignableFrom(type.type()))
                .filter(type -> !PressureValue.class.isAssignableFrom(type.type()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("withToleranceOfTheirKind")
    @DisplayName("are close within their difference, and no less")
    <T extends Scalar<T>> void areClose(ValueType<T> type) throws ReflectiveOperationException {
        Method isCloseTo =
                Arrays.stream(type.type().getMethods())
                        .filter(method -> method.getName().equals("isCloseTo"))
                        .filter(method -> !method.isBridge())
                        .findAny()
                        .orElseThrow();
        // 0.25, 0.75 and 0.5 are exact in binary, and every kind holds them.
        Door<T> door = type.doors().get(0);
        T low = door.in().apply(0.25);
        T high = door.in().apply(0.75);
        T difference = door.in().apply(0.5);
        T less = door.in().apply(Math.nextDown(0.5));

        assertThat(isCloseTo.invoke(low, high, difference)).isEqualTo(true);
        assertThat(isCloseTo.invoke(high, low, difference)).isEqualTo(true);
        assertThat(isCloseTo.invoke(high, low, less)).isEqualTo(false);
        assertThat(isCloseTo.invoke(high, high, door.in().apply(0.0))).isEqualTo(true);
    }

    @Test
    @DisplayName("that are altimeter settings are close within their difference, and no less")
    void settings() {
        AltimeterSetting low = AltimeterSetting.ofHectopascals(1000.0);
        AltimeterSetting high = AltimeterSetting.ofHectopascals(1000.5);
        assertThat(low.isCloseTo(high, DifferentialPressure.ofHectopascals(0.5))).isTrue();
        assertThat(low.isCloseTo(high, DifferentialPressure.ofHectopascals(0.499))).isFalse();
    }

    @Test
    @DisplayName("that are directions are close the short way round: 359 and 1 degrees by 2")
    void directions() {
        TrueDirection west = TrueDirection.ofDegrees(359.0);
        TrueDirection east = TrueDirection.ofDegrees(1.0);
        assertThat(west.isCloseTo(east, TrueDirection.ofDegrees(2.001))).isTrue();
        assertThat(east.isCloseTo(west, TrueDirection.ofDegrees(1.999))).isFalse();
        assertThat(
                        TrueDirection.ofDegrees(0)
                                .isCloseTo(
                                        TrueDirection.ofDegrees(360), TrueDirection.ofDegrees(0)))
                .isTrue();
    }
}
