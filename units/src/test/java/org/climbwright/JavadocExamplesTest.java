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
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Compiles and runs the examples as they stand in the sources of the module. */
@DisplayName("The example in the class comment of")
class JavadocExamplesTest {
    private static final Path SOURCES = Path.of("src", "main", "java");
    private static final Pattern BLOCK =
            Pattern.compile("<pre>\\{@code\\R(.*?)\\R \\* }</pre>", Pattern.DOTALL);
    private static final Pattern LINE = Pattern.compile("(\\S.*?)(?:\\s+// (.*))?");

    /** Its lines are statements and no single expression: ModelRangeTest has it. */
    private static final List<String> STATEMENTS = List.of("ModelRange");

    @ParameterizedTest(name = "{0}: {1}")
    @MethodSource("lines")
    @DisplayName("prints what it says:")
    void printsWhatItSays(String className, String expression, String printed) throws Exception {
        JavaSnippet example =
                JavaSnippet.compile(
                        "Example",
                        """
                        import javax.measure.spi.ServiceProvider;
                        import org.climbwright.quantity.altitude.*;
                        import org.climbwright.quantity.pressure.*;
                        import org.climbwright.quantity.speed.*;
                        import org.climbwright.unit.*;

                        public class Example {
                            public static Object result() {
                                return %s;
                            }
                        }
                        """
                                .formatted(expression));
        assertThat(example.errors()).isEmpty();

        Object result = example.load("Example").getMethod("result").invoke(null);

        // A String is shown in quotes, as a console for Java shows it.
        String shown = result instanceof String ? "\"" + result + "\"" : String.valueOf(result);
        assertThat(shown).isEqualTo(printed);
    }

    @Test
    @DisplayName("each of these classes is run")
    void findsTheExamples() throws IOException {
        assertThat(blocks())
                .extracting(Block::className)
                .containsExactlyInAnyOrder(
                        "AltimeterSetting",
                        "AviationServiceProvider",
                        "AviationUnits",
                        "Mach",
                        "ModelRange",
                        "PressureAltitude");
    }

    static List<Object[]> lines() throws IOException {
        List<Object[]> lines = new ArrayList<>();
        for (Block block : blocks()) {
            if (STATEMENTS.contains(block.className())) {
                continue;
            }
            for (String text : block.text().lines().toList()) {
                Matcher line = LINE.matcher(text.replaceFirst("^ \\* ?", "").strip());
                assertThat(line.matches()).as(text).isTrue();
                // The look-up shows no result: it is the unit whose label it asks for.
                String printed = line.group(2) == null ? "kn" : line.group(2);
                lines.add(new Object[] {block.className(), line.group(1), printed});
            }
        }
        return lines;
    }

    private static List<Block> blocks() throws IOException {
        List<Block> blocks = new ArrayList<>();
        try (Stream<Path> files = Files.walk(SOURCES)) {
            for (Path file : files.filter(path -> path.toString().endsWith(".java")).toList()) {
                String className = file.getFileName().toString().replace(".java", "");
                BLOCK.matcher(Files.readString(file))
                        .results()
                        .map((MatchResult found) -> new Block(className, found.group(1)))
                        .forEach(blocks::add);
            }
        }
        return blocks;
    }

    private record Block(String className, String text) {}
}
