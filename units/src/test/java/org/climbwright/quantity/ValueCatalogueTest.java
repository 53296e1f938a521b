package org.climbwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("The catalogue of values that the tests go through")
class ValueCatalogueTest {
    @Test
    @DisplayName("has every value type of the library")
    void hasEveryValueType() {
        Set<String> inTheLibrary =
                new ClassFileImporter()
                                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                                .importPackages("org.climbwright.quantity")
                                .stream()
                                .filter(type -> type.isAssignableTo(Scalar.class))
                                .filter(
                                        type ->
                                                !type.getModifiers()
                                                        .contains(JavaModifier.ABSTRACT))
                                .map(JavaClass::getName)
                                .collect(Collectors.toSet());

        List<String> inTheCatalogue =
                ValueCatalogue.all().map(type -> type.type().getName()).toList();

        assertThat(inTheCatalogue)
                .doesNotHaveDuplicates()
                .containsExactlyInAnyOrderElementsOf(inTheLibrary)
                .hasSize(46);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("org.climbwright.quantity.ValueCatalogue#all")
    @DisplayName("has every way in and out of a value for a plain number")
    void hasEveryDoor(ValueType<?> type) {
        // A flight level is a reading and not a unit; PressureAltitudeTest has it.
        List<String> entrances =
                Arrays.stream(type.type().getMethods())
                        .filter(method -> Modifier.isStatic(method.getModifiers()))
                        .filter(
                                method ->
                                        Arrays.equals(
                                                method.getParameterTypes(),
                                                new Class<?>[] {double.class}))
                        .map(method -> method.getName())
                        .filter(name -> !name.equals("ofFlightLevel"))
                        .toList();
        List<String> exits =
                Arrays.stream(type.type().getMethods())
                        .filter(method -> method.getReturnType() == double.class)
                        .filter(method -> method.getParameterCount() == 0)
                        .map(method -> method.getName())
                        .filter(name -> !name.equals("inFlightLevels"))
                        .toList();

        assertThat(type.doors())
                .extracting(Door::entrance)
                .containsExactlyInAnyOrderElementsOf(entrances);
        assertThat(exits).containsAll(type.doors().stream().map(Door::exit).toList());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("org.climbwright.quantity.ValueCatalogue#all")
    @DisplayName("calls a value by the word that its messages use")
    void usesTheTermOfTheField(ValueType<?> type) {
        assertThat(type.lowValue().term().name()).isEqualTo(type.term());
    }
}
