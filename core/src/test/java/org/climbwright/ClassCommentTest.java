package org.climbwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import org.assertj.core.api.Condition;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Types the examples of the class comments into JShell, as a reader would. */
@DisplayName("The example in the class comment of")
class ClassCommentTest {
    private static final Path SOURCES = Path.of("src", "main", "java");
    private static final Pattern BLOCK =
            Pattern.compile("<pre>\\{@code\\R(.*?)\\R \\* }</pre>", Pattern.DOTALL);
    private static final Pattern ANSWER = Pattern.compile("(.*[^;{\\s])\\s+// (.*)");

    /** Their first lines stand for what the reader has: a plan, a path, a file. */
    private static final List<String> NOT_ALONE =
            List.of(
                    "ClimbBriefing",
                    "IcingSpan",
                    "Climb",
                    "Sounding",
                    "CabinModel",
                    "CabinFailureStudy",
                    "CabinCheck",
                    "ExpectedCabin",
                    "Restrictions");

    private static final String IMPORTS =
            """
            import java.time.*;
            import java.util.*;
            import org.climbwright.airspeed.*;
            import org.climbwright.atmosphere.*;
            import org.climbwright.atmosphere.altimetry.*;
            import org.climbwright.atmosphere.wind.*;
            import org.climbwright.cabin.*;
            import org.climbwright.cabin.dynamics.*;
            import org.climbwright.cabin.exposure.*;
            import org.climbwright.gradient.*;
            import org.climbwright.gradient.procedure.*;
            import org.climbwright.gradient.restriction.*;
            import org.climbwright.gradient.cloudtop.*;
            import org.climbwright.gradient.leveling.*;
            import org.climbwright.icing.*;
            import org.climbwright.icing.ground.*;
            import org.climbwright.icing.accretion.*;
            import org.climbwright.icing.envelope.*;
            import org.climbwright.icing.potential.*;
            import org.climbwright.path.*;
            import org.climbwright.performance.*;
            import org.climbwright.profile.*;
            import org.climbwright.performance.ceiling.*;
            import org.climbwright.quantity.*;
            import org.climbwright.quantity.altitude.*;
            import org.climbwright.quantity.humidity.*;
            import org.climbwright.quantity.path.*;
            import org.climbwright.quantity.pressure.*;
            import org.climbwright.quantity.speed.*;
            import org.climbwright.quantity.temperature.*;
            import org.climbwright.sounding.*;
            import org.climbwright.sounding.surface.*;
            import org.climbwright.turbulence.*;
            import org.climbwright.turbulence.convection.*;
            import org.climbwright.working.*;
            """;

    /** A block of code under a class comment. */
    record Example(String className, String code) {
        @Override
        public String toString() {
            return className;
        }
    }

    private static JShell shell;

    @BeforeAll
    static void open() {
        shell = JShell.builder().executionEngine("local").build();
        IMPORTS.lines().forEach(shell::eval);
    }

    @AfterAll
    static void close() {
        shell.close();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("examples")
    @DisplayName("does what it says:")
    void doesWhatItSays(Example example) {
        StringBuilder entered = new StringBuilder();
        List<String> lines = example.code().lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            Matcher answer = ANSWER.matcher(lines.get(i));
            entered.append(answer.matches() ? answer.group(1) : lines.get(i)).append('\n');
            boolean goesOn = i + 1 < lines.size() && lines.get(i + 1).strip().startsWith(".");
            if (!goesOn && isComplete(entered.toString())) {
                String value = enter(entered.toString());
                if (answer.matches()) {
                    assertThat(value).is(told(answer.group(2)));
                }
                entered.setLength(0);
            }
        }
        assertThat(entered).isEmpty();
    }

    private static boolean isComplete(String text) {
        return shell.sourceCodeAnalysis().analyzeCompletion(text).completeness().isComplete();
    }

    private static String enter(String text) {
        SnippetEvent last =
                shell.eval(text).stream()
                        .filter(event -> event.causeSnippet() == null)
                        .filter(event -> event.status() != Snippet.Status.OVERWRITTEN)
                        .findFirst()
                        .orElseThrow();
        assertThat(last.exception()).as(text).isNull();
        assertThat(last.status())
                .as(() -> text + shell.diagnostics(last.snippet()).map(Object::toString).toList())
                .isEqualTo(Snippet.Status.VALID);
        return String.valueOf(last.value());
    }

    /** The value as it stands, up to a comma and a remark; "…" stands for more digits. */
    private static Condition<String> told(String comment) {
        String told = comment.split(", ", 2)[0];
        return new Condition<>(
                value ->
                        told.endsWith("…")
                                ? value.startsWith(told.substring(0, told.length() - 1))
                                : value.equals(told),
                "told as \"%s\"",
                told);
    }

    @Test
    @DisplayName("each of these classes is run")
    void findsTheExamples() throws IOException {
        assertThat(examples())
                .extracting(Example::className)
                .containsExactlyInAnyOrder(
                        "AccelerationFactor",
                        "Aeroplane",
                        "AeroplaneLimits",
                        "AirState",
                        "AirspeedArrays",
                        "Airspeeds",
                        "AltitudeHistory",
                        "AltitudeRestriction",
                        "Atmosphere",
                        "Atmosphere",
                        "BlowDown",
                        "BuffetTable",
                        "CabinAltitudeRule",
                        "CabinHistory",
                        "CabinPlan",
                        "CabinPressure",
                        "CabinReading",
                        "CabinSchedule",
                        "CaptureLaw",
                        "Clearance",
                        "ClimbAngles",
                        "ClimbConditions",
                        "ClimbGradient",
                        "ClimbProgramme",
                        "ClimbRequirement",
                        "ClimbSensitivity",
                        "ClimbSpeed",
                        "CloudLayer",
                        "CloudTop",
                        "Conflict",
                        "ContinuousMaximum",
                        "Crossover",
                        "CylinderInCloud",
                        "DepartureCriteria",
                        "EarthCurvature",
                        "EddyDissipationRate",
                        "EngineUse",
                        "FrameColumns",
                        "FreezingLevels",
                        "GroundObservation",
                        "GustLoad",
                        "IcingInterest",
                        "IcingRule",
                        "JetThrust",
                        "Level",
                        "LevelOff",
                        "LevelOffLead",
                        "LevelOffPlan",
                        "LevelOffRule",
                        "LiftingCondensationLevel",
                        "MoistAir",
                        "OrificeFlow",
                        "OxygenRuleSet",
                        "ParabolicClimb",
                        "ParabolicPolar",
                        "PositionError",
                        "PowerSpecificFuel",
                        "PropellerThrust",
                        "PublishedSpeedLimits",
                        "ReducedThrust",
                        "Restriction",
                        "RoundedUp",
                        "SpeedLimits",
                        "SpeedRestriction",
                        "SpeedSchedule",
                        "StandardAir",
                        "StandardAirArrays",
                        "SurfaceReport",
                        "SurfaceWind",
                        "TemperatureProbe",
                        "ThrustSpecificFuel",
                        "TimeToClimb",
                        "TrachealOxygenPressure",
                        "TransitionLevel",
                        "UpdraftBound",
                        "UsefulConsciousnessTable",
                        "Visibility",
                        "Wind",
                        "WindGradients",
                        "Working");
    }

    static List<Example> examples() throws IOException {
        List<Example> found = new ArrayList<>();
        try (Stream<Path> files = Files.walk(SOURCES)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".java")).sorted().toList()) {
                String className = file.getFileName().toString().replace(".java", "");
                BLOCK.matcher(Files.readString(file))
                        .results()
                        .map((MatchResult block) -> block.group(1).replaceAll("(?m)^ \\* ?", ""))
                        .filter(code -> !NOT_ALONE.contains(className))
                        .forEach(code -> found.add(new Example(className, code)));
            }
        }
        return found;
    }
}
