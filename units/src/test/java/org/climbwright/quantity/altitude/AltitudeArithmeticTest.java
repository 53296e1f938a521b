package org.climbwright.quantity.altitude;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import org.climbwright.unit.AviationUnits;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("Altitudes and the changes between them")
class AltitudeArithmeticTest {
    static Stream<Named<DoubleFunction<? extends VerticalPosition<?>>>> positionsInFeet() {
        return Stream.of(
                Named.of("pressure altitude", PressureAltitude::ofFeet),
                Named.of("geopotential altitude", GeopotentialAltitude::ofFeet),
                Named.of("geometric altitude", GeometricAltitude::ofFeet),
                Named.of("altitude on QNH", AltitudeOnQnh::ofFeet),
                Named.of("indicated altitude", IndicatedAltitude::ofFeet),
                Named.of("density altitude", DensityAltitude::ofFeet),
                Named.of("cabin altitude", CabinAltitude::ofFeet),
                Named.of("height", Height::ofFeet));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("positionsInFeet")
    @DisplayName("a climb of 1000 ft from 5000 ft ends at 6000 ft, and the descent at 4000 ft:")
    <T extends VerticalPosition<T>> void aClimbAndADescent(DoubleFunction<T> ofFeet) {
        AltitudeChange change = AltitudeChange.ofFeet(1000.0);
        T start = ofFeet.apply(5000.0);

        // Three roundings of some 1829 m: 6000 ft has no exact double in metres, nor has 5000 ft.
        double roundings = 3.0 * Math.ulp(6000.0);
        assertEquals(6000.0, start.plus(change).inFeet(), roundings);
        assertEquals(4000.0, start.minus(change).inFeet(), roundings);
        assertEquals(1000.0, start.plus(change).minus(start).inFeet(), roundings);
        assertEquals(-1000.0, start.minus(start.plus(change)).inFeet(), roundings);
        assertThat(start.plus(change)).hasSameClassAs(start);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("positionsInFeet")
    @DisplayName("two levels 100 m apart are close to each other within 100 m, and no less:")
    <T extends VerticalPosition<T>> void closeness(DoubleFunction<T> ofFeet) {
        T low = ofFeet.apply(0.0);
        T high = low.plus(AltitudeChange.ofMetres(100.0));
        AltitudeChange justLess = AltitudeChange.ofMetres(Math.nextDown(100.0));

        assertThat(low.isCloseTo(high, AltitudeChange.ofMetres(100.0))).isTrue();
        assertThat(high.isCloseTo(low, AltitudeChange.ofMetres(100.0))).isTrue();
        assertThat(high.isCloseTo(low, justLess)).isFalse();
        assertThat(high.isCloseTo(high, AltitudeChange.ofMetres(0.0))).isTrue();
        assertThat(high.isCloseTo(high, AltitudeChange.ofMetres(-1.0))).isFalse();
    }

    @Test
    @DisplayName("changes add up, cancel and multiply")
    void changes() {
        AltitudeChange step = AltitudeChange.ofMetres(300.0);

        assertThat(step.plus(step)).isEqualTo(AltitudeChange.ofMetres(600.0));
        assertThat(step.plus(step)).isEqualTo(step.times(2.0));
        assertThat(step.minus(step)).isEqualTo(AltitudeChange.ofMetres(0.0));
        assertThat(step.times(-0.5)).isEqualTo(AltitudeChange.ofMetres(-150.0));
        assertThat(step.isCloseTo(step.times(2.0), step)).isTrue();
        assertThat(step.isCloseTo(step.times(3.0), step)).isFalse();
    }

    @Test
    @DisplayName("a flight level counts hundreds of feet above the 1013.25 hPa level")
    void flightLevels() {
        PressureAltitude level = PressureAltitude.ofFlightLevel(350);

        assertThat(level).hasToString("10668.0 m (35000.0 ft)");
        assertThat(level.text()).isEqualTo("35000 ft");
        assertThat(PressureAltitude.ofFeet(7000.0).inFlightLevels()).isEqualTo(70.0);
        assertThat((int) PressureAltitude.ofFeet(7000.0).inFlightLevels()).isEqualTo(70);
        assertThat(PressureAltitude.ofFeet(31050.0).inFlightLevels()).isEqualTo(310.5);
    }

    @Test
    @DisplayName("an altitude can be told in nautical miles where somebody wants that")
    void otherUnits() {
        GeometricAltitude altitude = GeometricAltitude.of(2.0, AviationUnits.NAUTICAL_MILE);

        assertThat(altitude.inMetres()).isEqualTo(3704.0);
        assertThat(altitude.valueIn(AviationUnits.KILOMETRE)).isEqualTo(3.704);
        // 3704 / 0.3048 is 12152.2309711286..., worked by hand.
        assertEquals(12152.2309711286, altitude.inFeet(), 5e-11);
    }

    @Test
    @DisplayName("nothing added, taken or compared is a mistake that names what was missing")
    void nothing() {
        PressureAltitude level = PressureAltitude.ofFeet(1000.0);

        assertThatNullPointerException()
                .isThrownBy(() -> level.plus(null))
                .withMessageContaining("change");
        assertThatNullPointerException()
                .isThrownBy(() -> level.minus((PressureAltitude) null))
                .withMessageContaining("other");
        assertThatNullPointerException()
                .isThrownBy(() -> level.isCloseTo(level, null))
                .withMessageContaining("tolerance");
    }
}
