package org.climbwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.climbwright.ForkedJvm;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A program that has plain numbers only")
class PlainNumbersTest {
    @Test
    @DisplayName("never loads javax.measure or what implements it, errors and text included")
    void loadsNoUnits() throws Exception {
        List<String> doors = ValueCatalogue.all().flatMap(PlainNumbersTest::doorsOf).toList();

        ForkedJvm jvm = ForkedJvm.run(PlainNumbersMain.class, doors);

        assertThat(jvm.output().lines())
                .containsExactly(
                        "true 10668.0 m (35000.0 ft) 35000 ft 35000.0",
                        "IllegalArgumentException:"
                                + " pressure altitude must be a finite number, but was NaN ft",
                        "UnitTextException: cannot read \"FL350\" as geometric altitude:"
                                + " expected a digit at character 1, but found 'F'",
                        "OutsideModelException: pressure altitude must be from 0.0 to 80000.0 m,"
                                + " but was 90000.0 m: it ends there",
                        doors.size() + " doors");
        assertThat(jvm.exitCode()).isZero();
        assertThat(jvm.classesOfTheUnitsStack()).isEmpty();
        assertThat(jvm.loadedClasses())
                .contains("org.climbwright.unit.UnitText")
                .containsAll(ValueCatalogue.all().map(type -> type.type().getName()).toList());
    }

    @Test
    @DisplayName("would load it with the first unit of javax.measure: the log of classes sees it")
    void theLogSeesUnits() throws Exception {
        ForkedJvm jvm = ForkedJvm.run(UnitsStackMain.class, List.of());

        assertThat(jvm.output().strip()).isEqualTo("0.3048 m (1.0 ft)");
        assertThat(jvm.exitCode()).isZero();
        assertThat(jvm.classesOfTheUnitsStack())
                .contains("javax.measure.Unit", "tech.units.indriya.unit.TransformedUnit");
    }

    private static <T extends Scalar<T>> Stream<String> doorsOf(ValueType<T> type) {
        return type.doors().stream()
                .map(
                        door ->
                                String.join(
                                        "#",
                                        type.type().getName(),
                                        door.entrance(),
                                        door.exit(),
                                        Double.toString(
                                                door.out().applyAsDouble(type.highValue()))));
    }
}
