package org.climbwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import java.lang.reflect.Modifier;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.measure.Unit;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.unit.AviationUnits;
import org.climbwright.unit.UnitTextException;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("Every value of the library")
class ValueContractTest {
    private static final String ALL = "org.climbwright.quantity.ValueCatalogue#all";
    private static final String WITH_UNITS = "org.climbwright.quantity.ValueCatalogue#withUnits";
    private static final String DOORS = "org.climbwright.quantity.ValueContractTest#doors";
    private static final String DOORS_WITH_BOUNDS =
            "org.climbwright.quantity.ValueContractTest#doorsWithBounds";

    static Stream<Arguments> doors() {
        return doorsOf(ValueCatalogue.all());
    }

    static Stream<Arguments> doorsWithBounds() {
        return doorsOf(ValueCatalogue.all().filter(type -> type.hasFloor() || type.hasCeiling()));
    }

    static Stream<ValueType<?>> takingZero() {
        return ValueCatalogue.all().filter(type -> type.lowestSi() <= 0.0);
    }

    private static Stream<Arguments> doorsOf(Stream<ValueType<?>> types) {
        return types.flatMap(type -> type.doors().stream().map(door -> Arguments.of(type, door)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource(ALL)
    @DisplayName("cannot be made without a unit, nor be extended or changed")
    void isClosed(ValueType<?> type) {
        assertThat(type.type()).isFinal();
        assertThat(type.type().getConstructors()).isEmpty();
        assertThat(type.type().getDeclaredConstructors())
                .allMatch(constructor -> Modifier.isPrivate(constructor.getModifiers()));
        assertThat(type.type().getFields()).isEmpty();
        assertThat(type.type().getDeclaredFields())
                .allMatch(field -> Modifier.isStatic(field.getModifiers()))
                .allMatch(field -> Modifier.isFinal(field.getModifiers()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource(ALL)
    @DisplayName("equals another of the same kind and number, and no other")
    <T extends Scalar<T>> void equality(ValueType<T> type) {
        T low = type.lowValue();

        assertThat(low).isEqualTo(type.lowValue()).hasSameHashCodeAs(type.lowValue());
        assertThat(low).isNotEqualTo(type.highValue()).isNotEqualTo(null).isNotEqualTo("text");
        assertThat(low.hashCode()).isNotEqualTo(type.highValue().hashCode());
    }

    @Test
    @DisplayName("is not equal to a value of another kind with the same number")
    void kindsAreNotEqual() {
        List<Object> sameNumber = // 1 is a number of every kind but an altimeter setting
                takingZero().<Object>map(type -> ofSi(type, 1.0)).toList();

        // A list of values of which any two were equal would have a duplicate.
        assertThat(sameNumber).hasSizeGreaterThan(30).doesNotHaveDuplicates();
        assertThat(AltimeterSetting.ofHectopascals(1000.0))
                .isNotEqualTo(StaticPressure.ofHectopascals(1000.0));
    }

    private static <T extends Scalar<T>> T ofSi(ValueType<T> type, double si) {
        Door<T> first = type.doors().get(0);
        return first.in().apply(first.scale() == null ? si : first.scale().fromSi(si));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource(ALL)
    @DisplayName("has an order, which agrees with equality")
    <T extends Scalar<T>> void order(ValueType<T> type) {
        T low = type.lowValue();
        T high = type.highValue();

        assertThat(low).isLessThan(high);
        assertThat(high).isGreaterThan(low);
        assertThat(low.compareTo(type.lowValue())).isZero();
        assertThatNullPointerException().isThrownBy(() -> low.compareTo(null));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("takingZero")
    @DisplayName("knows no minus zero")
    <T extends Scalar<T>> void minusZero(ValueType<T> type) {
        Door<T> door = type.doors().get(0);
        T zero = door.in().apply(0.0);
        T minusZero = door.in().apply(-0.0);

        assertThat(minusZero).isEqualTo(zero).isEqualByComparingTo(zero).hasSameHashCodeAs(zero);
        assertThat(minusZero).hasToString(zero.toString());
        assertThat(minusZero.text()).isEqualTo(zero.text()).doesNotStartWith("-0 ");
        assertThat(1.0 / door.out().applyAsDouble(minusZero)).isPositive();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource(ALL)
    @DisplayName("reads its own text, whatever the language of the machine")
    <T extends Scalar<T>> void text(ValueType<T> type) {
        Locale before = Locale.getDefault();
        String rootText = type.highValue().text();
        String rootDescription = type.highValue().toString();
        try {
            for (String language : new String[] {"de-DE", "ar-EG", "hi-IN-u-nu-deva", "tr-TR"}) {
                Locale.setDefault(Locale.forLanguageTag(language));
                assertThat(type.highValue().text()).isEqualTo(rootText);
                assertThat(type.highValue()).hasToString(rootDescription);
                assertThat(type.parse().apply(rootText)).isEqualTo(type.highValue());
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    @Nested
    @DisplayName("refuses")
    class Refuses {
        @ParameterizedTest(name = "{0} by {1}")
        @MethodSource(DOORS)
        @DisplayName("what is no finite number, in one sentence with its word and unit")
        <T extends Scalar<T>> void notFinite(ValueType<T> type, Door<T> door) {
            for (double number :
                    new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
                assertThatIllegalArgumentException()
                        .isThrownBy(() -> door.in().apply(number))
                        .satisfies(
                                refused ->
                                        isOneSentence(
                                                refused.getMessage(),
                                                type.term(),
                                                number + door.unitBehind()));
            }
        }

        @ParameterizedTest(name = "{0} by {1}")
        @MethodSource(DOORS_WITH_BOUNDS)
        @DisplayName("what lies beyond its bounds, and takes the bounds themselves")
        <T extends Scalar<T>> void beyondItsBounds(ValueType<T> type, Door<T> door) {
            double floor = inUnitOf(door, type.lowestSi());
            double ceiling = inUnitOf(door, type.highestSi());
            if (type.hasFloor()) {
                assertThat(door.out().applyAsDouble(door.in().apply(floor))).isEqualTo(floor);
                refusesWithItsRange(type, door, floor - 1.0);
            }
            if (type.hasCeiling()) {
                // 1100 hPa has no double in inHg that is not a hair above it.
                double highest = Math.nextDown(ceiling);
                assertThat(door.out().applyAsDouble(door.in().apply(highest)))
                        .isGreaterThan(Math.nextDown(highest))
                        .isLessThanOrEqualTo(ceiling);
                refusesWithItsRange(type, door, ceiling + 1.0);
            }
        }

        private static <T> double inUnitOf(Door<T> door, double si) {
            return door.scale() == null ? si : door.scale().fromSi(si);
        }

        private static <T extends Scalar<T>> void refusesWithItsRange(
                ValueType<T> type, Door<T> door, double number) {
            String given = number + door.unitBehind();
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> door.in().apply(number))
                    .satisfies(
                            refused -> {
                                isOneSentence(refused.getMessage(), type.term(), given);
                                assertThat(refused.getMessage()).containsAnyOf("at least ", " to ");
                            });
            if (type.units() != null) {
                Unit<?> unit = AviationUnits.of(door.scale());
                assertThatIllegalArgumentException()
                        .isThrownBy(() -> type.units().of(number, unit))
                        .satisfies(
                                refused -> isOneSentence(refused.getMessage(), type.term(), given));
            }
        }

        @ParameterizedTest(name = "{0}")
        @MethodSource(WITH_UNITS)
        @DisplayName("a unit of another dimension forced upon it")
        <T extends Scalar<T>> void aUnitOfAnotherDimension(ValueType<T> type) {
            Unit<?> foreign = AviationUnits.POUND_FORCE; // no value of ours is a force
            T value = type.lowValue();

            assertThatIllegalArgumentException()
                    .isThrownBy(() -> type.units().of(1.0, foreign))
                    .withMessageStartingWith(type.term() + " takes ")
                    .withMessageEndingWith(", but was in lbf");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> type.units().valueIn(value, foreign))
                    .withMessageStartingWith(type.term() + " takes ")
                    .withMessageEndingWith(", but was in lbf");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> type.units().thereAndBack(value, foreign));
        }

        @ParameterizedTest(name = "{0}")
        @MethodSource(ALL)
        @DisplayName("a bare number as text, and nothing at all")
        void aBareNumber(ValueType<?> type) {
            assertThat(new String[] {"", " ", "1", "0.5", "NaN", "Infinity"})
                    .allSatisfy(
                            text ->
                                    assertThatExceptionOfType(UnitTextException.class)
                                            .isThrownBy(() -> type.parse().apply(text)));
        }

        @ParameterizedTest(name = "{0}")
        @MethodSource(ALL)
        @DisplayName("null, and says for which parameter")
        void nothing(ValueType<?> type) {
            assertThatNullPointerException()
                    .isThrownBy(() -> type.parse().apply(null))
                    .withMessageContaining("text");
            if (type.units() != null) {
                assertThatNullPointerException()
                        .isThrownBy(() -> type.units().of(1.0, null))
                        .withMessageContaining("unit");
                assertThatNullPointerException()
                        .isThrownBy(() -> type.units().ofQuantity().apply(null))
                        .withMessageContaining("quantity");
            }
        }

        private static void isOneSentence(String message, String term, String given) {
            assertThat(message)
                    .startsWith(term + " must be ")
                    .endsWith(", but was " + given)
                    .doesNotContain("\n", ". ", "null");
        }
    }
}
