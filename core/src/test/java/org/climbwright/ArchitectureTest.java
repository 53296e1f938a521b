package org.climbwright;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The house: a room uses only what lies below it, and figures are the same everywhere. */
@AnalyzeClasses(
        packages = "org.climbwright",
        importOptions = {ImportOption.DoNotIncludeTests.class})
class ArchitectureTest {
    /** The rooms of core from the ground up: each uses only what stands before it. */
    private static final List<String> FLOORS =
            List.of(
                    "unit",
                    "quantity",
                    "numeric",
                    "atmosphere",
                    "sounding",
                    "airspeed",
                    "path",
                    "icing",
                    "turbulence",
                    "cabin",
                    "gradient",
                    "performance",
                    "profile",
                    "briefing",
                    "working");

    /** Math functions that the language fixes to the last bit. */
    private static final Set<String> EXACT =
            Set.of(
                    "abs",
                    "min",
                    "max",
                    "sqrt",
                    "fma",
                    "rint",
                    "ceil",
                    "floor",
                    "round",
                    "ulp",
                    "signum",
                    "nextUp",
                    "nextDown");

    /** Classes that compute with the four operations and {@link #EXACT} alone, for speed. */
    private static final List<String> KERNELS =
            List.of(
                    "org.climbwright.numeric.Columns",
                    "org.climbwright.numeric.Powers",
                    "org.climbwright.atmosphere.StandardAirArrays",
                    "org.climbwright.atmosphere.StandardAirKernel",
                    "org.climbwright.atmosphere.StandardAirPolynomials",
                    "org.climbwright.atmosphere.UpperAirKernel",
                    "org.climbwright.atmosphere.DryAirArrays",
                    "org.climbwright.atmosphere.kernel.DryAirKernel",
                    "org.climbwright.atmosphere.Geopotential",
                    "org.climbwright.airspeed.PitotTube",
                    "org.climbwright.airspeed.PitotPolynomials",
                    "org.climbwright.airspeed.AirspeedArrays",
                    "org.climbwright.airspeed.AirspeedConversion",
                    "org.climbwright.airspeed.TotalTemperature",
                    "org.climbwright.performance.ParabolicPolar",
                    "org.climbwright.performance.ParabolicClimb",
                    "org.climbwright.performance.TimeToClimb",
                    "org.climbwright.performance.JetThrust",
                    "org.climbwright.performance.PropellerThrust",
                    "org.climbwright.performance.ThrustSpecificFuel",
                    "org.climbwright.performance.PowerSpecificFuel");

    @ArchTest
    static void everyRoomHasAFloor(JavaClasses all) {
        Set<String> rooms =
                all.stream().map(type -> room(type.getPackageName())).collect(Collectors.toSet());
        assertThat(rooms).containsExactlyInAnyOrderElementsOf(FLOORS);
    }

    private static String room(String packageName) {
        String inside = packageName.substring("org.climbwright.".length());
        int dot = inside.indexOf('.');
        return dot < 0 ? inside : inside.substring(0, dot);
    }

    @ArchTest
    static void noRoomReachesUp(JavaClasses all) {
        for (int floor = 0; floor < FLOORS.size() - 1; floor++) {
            String[] above =
                    IntStream.range(floor + 1, FLOORS.size())
                            .mapToObj(i -> "org.climbwright." + FLOORS.get(i) + "..")
                            .toArray(String[]::new);
            noClasses()
                    .that()
                    .resideInAPackage("org.climbwright." + FLOORS.get(floor) + "..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(above)
                    .check(all);
        }
    }

    /**
     * A package within a room knows the room, and the room does not know it; but the kernels of a
     * room know nothing.
     */
    @ArchTest
    static void aRoomStandsOnItsOwn(JavaClasses all) {
        for (String room :
                List.of(
                        "atmosphere",
                        "sounding",
                        "turbulence",
                        "cabin",
                        "gradient",
                        "performance")) {
            String name = "org.climbwright." + room;
            noClasses()
                    .that()
                    .resideInAPackage(name)
                    .should()
                    .dependOnClassesThat(
                            resideInAPackage(name + ".*..")
                                    .and(not(resideInAPackage(name + ".kernel"))))
                    .check(all);
        }
        classes()
                .that()
                .resideInAPackage("org.climbwright.atmosphere.kernel")
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(
                        "java.lang",
                        "org.jspecify.annotations",
                        "org.climbwright.atmosphere.kernel")
                .check(all);
    }

    @ArchTest
    static final ArchRule noRoomReachesSideways =
            noClasses()
                    .that()
                    .resideInAnyPackage(
                            "org.climbwright.airspeed..",
                            "org.climbwright.path..",
                            "org.climbwright.icing..",
                            "org.climbwright.turbulence..",
                            "org.climbwright.cabin..",
                            "org.climbwright.gradient..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAPackage("org.climbwright.sounding..");

    /** Beside the briefing: neither uses the other. */
    @ArchTest
    static final ArchRule workingsKnowNoBriefing =
            noClasses()
                    .that()
                    .resideInAPackage("org.climbwright.working..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAPackage("org.climbwright.briefing..");

    /** The four questions of a climb are each on its own. */
    @ArchTest
    static void theFourQuestionsKnowNothingOfEachOther(JavaClasses all) {
        List<String> questions = List.of("icing", "turbulence", "cabin", "gradient");
        for (String question : questions) {
            String[] others =
                    questions.stream()
                            .filter(other -> !other.equals(question))
                            .map(other -> "org.climbwright." + other + "..")
                            .toArray(String[]::new);
            noClasses()
                    .that()
                    .resideInAPackage("org.climbwright." + question + "..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(others)
                    .check(all);
        }
    }

    @ArchTest
    static final ArchRule exposureKnowsNoSibling =
            noClasses()
                    .that()
                    .resideInAPackage("org.climbwright.cabin.exposure..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAPackage("org.climbwright.cabin.dynamics..");

    @ArchTest
    static final ArchRule exposureIsNotUsedByItsSibling =
            noClasses()
                    .that()
                    .resideInAPackage("org.climbwright.cabin.dynamics..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAPackage("org.climbwright.cabin.exposure..")
                    .allowEmptyShould(true);

    @ArchTest
    static final ArchRule exposureUsesCabinAndAirOnly =
            classes()
                    .that()
                    .resideInAPackage("org.climbwright.cabin.exposure..")
                    .should()
                    .onlyDependOnClassesThat()
                    .resideInAnyPackage(
                            "java..",
                            "org.jspecify..",
                            "org.climbwright.unit..",
                            "org.climbwright.quantity..",
                            "org.climbwright.atmosphere..",
                            "org.climbwright.cabin",
                            "org.climbwright.cabin.exposure");

    @ArchTest
    static final ArchRule noCircles =
            slices().matching("org.climbwright.(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule sameFiguresEverywhere =
            noClasses()
                    .should()
                    .callMethodWhere(
                            new DescribedPredicate<JavaCall<?>>("is a function of Math not exact") {
                                @Override
                                public boolean test(JavaCall<?> call) {
                                    return call.getTargetOwner().isEquivalentTo(Math.class)
                                            && !EXACT.contains(call.getName());
                                }
                            });

    @ArchTest
    static void kernelsTakeNoPowersAndLogarithms(JavaClasses all) {
        for (String kernel : KERNELS) {
            assertThat(inexactCalls(all, kernel)).isEmpty();
        }
        assertThat(inexactCalls(all, "org.climbwright.atmosphere.SaturationFormula")).isNotEmpty();
    }

    /** Of a class, which there must be, and of those inside it. */
    private static List<String> inexactCalls(JavaClasses all, String name) {
        assertThat(all.contain(name)).as(name + " exists").isTrue();
        return all.stream()
                .filter(
                        type ->
                                type.getName().equals(name)
                                        || type.getName().startsWith(name + "$"))
                .flatMap(
                        type ->
                                Stream.concat(
                                        type.getMethodCallsFromSelf().stream(),
                                        type.getMethodReferencesFromSelf().stream()))
                .filter(
                        access ->
                                access.getTargetOwner().isEquivalentTo(StrictMath.class)
                                        || access.getTargetOwner().isEquivalentTo(Math.class))
                .filter(access -> !EXACT.contains(access.getName()))
                .map(JavaAccess::getDescription)
                .toList();
    }

    @ArchTest
    static final ArchRule fewFriends =
            classes()
                    .that()
                    .resideInAnyPackage(
                            FLOORS.stream()
                                    .skip(2)
                                    .map(room -> "org.climbwright." + room + "..")
                                    .toArray(String[]::new))
                    .and()
                    .haveNameNotMatching(
                            ".*[.]cabin[.]dynamics[.]CabinIntegration.*|.*[.]profile[.]DormandPrinceStepper.*")
                    .should()
                    .onlyDependOnClassesThat()
                    .resideInAnyPackage(
                            Stream.of("java..", "org.climbwright..", "org.jspecify..")
                                    .toArray(String[]::new));
}
