package org.climbwright;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The units module")
class UnitsArchitectureTest {
    private static final JavaClasses MODULE =
            new ClassFileImporter()
                    .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                    .importPackages("org.climbwright.quantity", "org.climbwright.unit");

    @Test
    @DisplayName("has no circle of packages")
    void hasNoCircle() {
        slices().matching("org.climbwright.(**)").should().beFreeOfCycles().check(MODULE);
    }

    @Test
    @DisplayName("knows units below and values above, never the other way round")
    void unitsKnowNoValues() {
        noClasses()
                .that()
                .resideInAPackage("org.climbwright.unit..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.climbwright.quantity..")
                .check(MODULE);
    }

    @Test
    @DisplayName("touches javax.measure from its values in one package only")
    void valuesNameUnitsAndDoNotUseThem() {
        ArchRule rule =
                noClasses()
                        .that()
                        .resideInAPackage("org.climbwright.quantity..")
                        .and()
                        .resideOutsideOfPackage("org.climbwright.quantity.edge..")
                        .should()
                        .accessClassesThat()
                        .resideInAnyPackage("javax.measure..", "tech.units..");
        rule.check(MODULE);

        ArchRule thatTheEdgeBreaks =
                noClasses()
                        .that()
                        .resideInAPackage("org.climbwright.quantity.edge..")
                        .should()
                        .accessClassesThat()
                        .resideInAnyPackage("javax.measure..", "tech.units..");
        assertThat(thatTheEdgeBreaks.evaluate(MODULE).hasViolation())
                .as("the rule sees a class that does use javax.measure")
                .isTrue();
    }

    @Test
    @DisplayName("keeps the table of factors, the text form and the value types free of Indriya")
    void onlyTheEdgeKnowsTheImplementation() {
        noClasses()
                .that()
                .resideOutsideOfPackage("org.climbwright.quantity.edge..")
                .and()
                .haveSimpleNameNotStartingWith("Aviation")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("tech.units..")
                .check(MODULE);
    }

    @Test
    @DisplayName("lets nobody but its values use the edge")
    void theEdgeIsForTheValues() {
        classes()
                .that()
                .resideInAPackage("org.climbwright.quantity.edge..")
                .should()
                .onlyBeAccessed()
                .byAnyPackage("org.climbwright.quantity..")
                .check(MODULE);
    }
}
