package org.climbwright.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import javax.measure.IncommensurableException;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import tech.units.indriya.unit.Units;

@DisplayName("The units of the trade on javax.measure")
class AviationUnitsTest {
    private static final Set<UnitScale> INTERVALS =
            EnumSet.of(
                    UnitScale.KELVIN_DIFFERENCE,
                    UnitScale.CELSIUS_DIFFERENCE,
                    UnitScale.FAHRENHEIT_DIFFERENCE);

    static Stream<UnitScale> notIntervals() {
        return EnumSet.complementOf(EnumSet.copyOf(INTERVALS)).stream();
    }

    @ParameterizedTest
    @MethodSource("notIntervals")
    @DisplayName("convert to SI with the factor and the zero of the table:")
    void convertToSi(UnitScale scale) {
        Unit<?> unit = AviationUnits.of(scale);
        UnitConverter toSi = converterToSi(unit);

        // Indriya multiplies by the same double; a zero of its own costs one more rounding.
        double zero = toSi.convert(0.0);
        double one = toSi.convert(1.0) - zero;
        assertEquals(scale.toSi(0.0), zero, Math.ulp(scale.toSi(0.0)));
        assertEquals(1.0, one / scale.factor(), scale.offset() == 0.0 ? 1e-15 : 2e-13);
    }

    @ParameterizedTest
    @MethodSource("notIntervals")
    @DisplayName("convert from SI as the table does:")
    void convertFromSi(UnitScale scale) {
        UnitConverter fromSi = converterToSi(AviationUnits.of(scale)).inverse();
        double si = scale.toSi(250.0);

        // A quotient in place of a product: a few roundings of a number below 512 K or its like.
        assertEquals(250.0, fromSi.convert(si), 4.0 * Math.ulp(512.0));
    }

    private static UnitConverter converterToSi(Unit<?> unit) {
        try {
            return unit.getConverterToAny(unit.getSystemUnit());
        } catch (IncommensurableException impossible) {
            throw new AssertionError(impossible);
        }
    }

    @ParameterizedTest
    @EnumSource
    @DisplayName("are recognised by identity, for their own kind alone:")
    void areRecognised(UnitScale scale) {
        Unit<?> unit = AviationUnits.of(scale);

        assertThat(AviationUnits.of(scale)).isSameAs(unit);
        assertThat(AviationUnits.scaleOf(unit, scale.kind())).isEqualTo(scale);
        for (QuantityKind other : QuantityKind.values()) {
            boolean temperatures =
                    scale.kind().name().startsWith("TEMPERATURE")
                            && other.name().startsWith("TEMPERATURE");
            if (other != scale.kind() && !temperatures) {
                assertThat(AviationUnits.scaleOf(unit, other)).as(other.term()).isNull();
            }
        }
    }

    @Test
    @DisplayName("have one constant for each unit, and the list has them all")
    void constantsAndList() throws IllegalAccessException {
        List<Unit<?>> constants = new ArrayList<>();
        for (Field field : AviationUnits.class.getFields()) {
            assertThat(Modifier.isStatic(field.getModifiers())).isTrue();
            constants.add((Unit<?>) field.get(null));
            assertThat(field.get(null))
                    .as(field.getName())
                    .isSameAs(AviationUnits.of(UnitScale.valueOf(field.getName())));
        }

        assertThat(AviationUnits.all())
                .containsExactlyInAnyOrderElementsOf(constants)
                .hasSize(UnitScale.values().length - INTERVALS.size());
        assertThatExceptionOfType(UnsupportedOperationException.class)
                .isThrownBy(() -> AviationUnits.all().clear());
    }

    @Test
    @DisplayName("measure an interval of temperature in the units of a temperature")
    void intervals() {
        assertThat(AviationUnits.of(UnitScale.KELVIN_DIFFERENCE)).isSameAs(AviationUnits.KELVIN);
        assertThat(AviationUnits.of(UnitScale.CELSIUS_DIFFERENCE)).isSameAs(AviationUnits.CELSIUS);
        assertThat(AviationUnits.of(UnitScale.FAHRENHEIT_DIFFERENCE))
                .isSameAs(AviationUnits.FAHRENHEIT);
    }

    @Test
    @DisplayName("are the units of javax.measure where those exist")
    void stockUnits() {
        assertThat(AviationUnits.METRE).isSameAs(Units.METRE);
        assertThat(AviationUnits.PASCAL).isSameAs(Units.PASCAL);
        assertThat(AviationUnits.KELVIN).isSameAs(Units.KELVIN);
        assertThat(AviationUnits.CELSIUS).isSameAs(Units.CELSIUS);
        assertThat(AviationUnits.KILOGRAM).isSameAs(Units.KILOGRAM);
        assertThat(AviationUnits.HOUR).isSameAs(Units.HOUR);
        assertThat(AviationUnits.METRE_PER_SECOND).isSameAs(Units.METRE_PER_SECOND);
    }

    @Test
    @DisplayName("print their labels")
    void labels() {
        assertThat(AviationUnits.FOOT).hasToString("ft");
        assertThat(AviationUnits.KNOT).hasToString("kn");
        assertThat(AviationUnits.FOOT_PER_MINUTE).hasToString("ft/min");
        assertThat(AviationUnits.INCH_OF_MERCURY).hasToString("inHg");
        assertThat(AviationUnits.PERCENT_GRADIENT).hasToString("%");
        assertThat(AviationUnits.FOOT_PER_NAUTICAL_MILE).hasToString("ft/NM");
        assertThat(AviationUnits.KILOGRAM_PER_HOUR).hasToString("kg/h");
        assertThat(AviationUnits.GRAM_PER_KILOGRAM).hasToString("g/kg");
    }
}
