package org.climbwright.examples.teaching;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.lang.reflect.InvocationTargetException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What the teaching programs print. The texts were written by the programs, after their figures had
 * been worked out a second time from the formulas, in another language and not with this library;
 * they hold that neither a figure nor a line of a working changes unseen. That a printed formula
 * gives the printed result is held beside the workings, for any input.
 */
@DisplayName("The teaching program")
class TeachingTest {
    private static final Path SOURCES =
            Path.of("src", "main", "java", "org", "climbwright", "examples", "teaching");

    static Stream<Class<?>> questions() {
        return Stream.of(
                Question01CasToMachAndTas.class,
                Question02ConstantCasThenMach.class,
                Question03Crossover.class,
                Question04TotalOnStaticOff.class,
                Question05ThreeFreezingLevels.class,
                Question06PercentFeetAndWind.class,
                Question07CanIMakeTheRestriction.class,
                Question08LevelOff.class,
                Question09CabinFromDifferential.class,
                Question10ColdDayFromWhichDatum.class,
                Question11IsaPlusTwenty.class,
                Question12UpdraftAtTwoSpeeds.class);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("questions")
    @DisplayName("prints its answer and its working:")
    void prints(Class<?> question) throws ReflectiveOperationException, IOException {
        assertThat(printed(question)).isEqualTo(expected(question));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("questions")
    @DisplayName("is short enough to be copied to a board:")
    void isShort(Class<?> question) throws IOException {
        Path source = SOURCES.resolve(question.getSimpleName() + ".java");
        assertThat(Files.readAllLines(source)).hasSizeLessThan(60);
    }

    @Test
    @DisplayName("is one of twelve, and all of them are asked here")
    void areTwelve() throws IOException {
        try (Stream<Path> files = Files.list(SOURCES)) {
            List<String> names =
                    files.map(file -> file.getFileName().toString().replace(".java", ""))
                            .filter(name -> name.startsWith("Question"))
                            .sorted()
                            .toList();
            assertThat(questions().map(Class::getSimpleName)).hasSize(12).isEqualTo(names);
        }
    }

    /** Lines end as they do here, whatever the machine. */
    private static String printed(Class<?> question) throws ReflectiveOperationException {
        PrintStream before = System.out;
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        try {
            System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
            question.getMethod("main", String[].class).invoke(null, (Object) new String[0]);
        } catch (InvocationTargetException thrown) {
            throw new AssertionError(thrown.getCause());
        } finally {
            System.setOut(before);
        }
        return printed.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
    }

    private static String expected(Class<?> question) throws IOException {
        String number = question.getSimpleName().substring("Question".length()).substring(0, 2);
        try (InputStream text = TeachingTest.class.getResourceAsStream(number + ".txt")) {
            byte[] bytes = Objects.requireNonNull(text, number).readAllBytes();
            return new String(bytes, StandardCharsets.UTF_8);
        }
    }
}
