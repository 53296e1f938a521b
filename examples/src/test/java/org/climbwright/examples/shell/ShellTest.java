package org.climbwright.examples.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(120)
@DisplayName("The shell, with a pipe for a person")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ShellTest {
    private static final int GREETING = 6;

    /** A number, what to type, and what comes of it, with an ellipsis for what is left out. */
    private static final Pattern THING =
            Pattern.compile("(?:^| {2,})(\\d+) (\\S.*?) +→ (.+?)(?= {2,}\\d+ \\w|$)");

    @TempDir private static Path folder;
    private int code;
    private String out = "";
    private String err = "";
    private List<String> typed = List.of();

    @BeforeAll
    void typeTheGreeting() throws IOException {
        typed = things().stream().map(thing -> intoTheFolder(thing.group(2))).toList();
        String more =
                """
                isa("FL800000")
                isa("35,000 ft")
                System.out.println("on a line of its own, in °C")
                int twice(int n) { return 2 * n; }
                twice(21)
                nonsense()
                /exit
                """;
        String input = String.join("\n", typed) + "\n" + more;
        ByteArrayOutputStream written = new ByteArrayOutputStream();
        ByteArrayOutputStream faults = new ByteArrayOutputStream();
        code =
                Shell.run(
                        Optional.of(
                                new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8))),
                        new PrintStream(written, true, StandardCharsets.UTF_8),
                        new PrintStream(faults, true, StandardCharsets.UTF_8));
        // JShell repeats what it reads from any stream but that of the process
        List<String> repeated = input.lines().toList();
        out =
                written.toString(StandardCharsets.UTF_8)
                        .lines()
                        .filter(line -> !repeated.contains(line))
                        .collect(Collectors.joining("\n", "", "\n"));
        err = faults.toString(StandardCharsets.UTF_8);
    }

    private static List<MatchResult> things() throws IOException {
        return resource("greeting.txt")
                .lines()
                .skip(1)
                .flatMap(line -> THING.matcher(" " + line).results())
                .toList();
    }

    private static String intoTheFolder(String line) {
        return line.replace("climb.svg", folder.resolve("climb.svg").toString().replace('\\', '/'));
    }

    private static String resource(String name) throws IOException {
        try (var in = ShellTest.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    @DisplayName("greets in six lines, and says nothing else of itself")
    void greets() throws IOException {
        assertThat(out).startsWith(resource("greeting.txt"));
        assertThat(resource("greeting.txt").lines()).hasSize(GREETING);
        assertThat(out)
                .doesNotContain("Welcome")
                .doesNotContain("jshell>")
                .doesNotContain("\u001b");
        assertThat(err).isEmpty();
    }

    @Test
    @DisplayName("gives the greeting's answers to what the greeting numbers from 1 to 10")
    void greetingsAnswers() throws IOException {
        List<MatchResult> things = things();
        assertThat(things)
                .extracting(thing -> thing.group(1))
                .containsExactly("1", "2", "3", "4", "5", "6", "7", "8", "9", "10");
        for (MatchResult thing : things) {
            String answer =
                    Arrays.stream(thing.group(3).split("…", -1))
                            .map(Pattern::quote)
                            .collect(Collectors.joining(".*"));
            assertThat(out).containsPattern("(?m)^\\$" + thing.group(1) + " ==> " + answer + "$");
        }
    }

    @Test
    @DisplayName("answers all that is typed, and refuses in one sentence")
    void answers() throws IOException {
        String answers =
                out.lines()
                        .skip(GREETING)
                        .map(line -> line.replace(folder.toAbsolutePath().toString(), "FOLDER"))
                        .filter(line -> !line.startsWith("|        at ")) // where in the library
                        .collect(Collectors.joining("\n", "", "\n"));
        assertThat(answers).isEqualTo(resource("answers.txt"));
    }

    @Test
    @DisplayName("draws the climb that it is asked for: a panel for each column")
    void draws() throws IOException {
        String svg = Files.readString(folder.resolve("climb.svg"));
        assertThat(svg).startsWith("<svg").endsWith("</svg>\n").doesNotContain("NaN");
        assertThat(svg.split("<polyline")).hasSize(7);
        assertThat(svg).contains(">rate [ft/min]<").contains(">time [min]<");
    }

    @Test
    @DisplayName("ends with exit code 0")
    void exits() {
        assertThat(code).isZero();
    }
}
