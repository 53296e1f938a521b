package org.climbwright.examples.readme;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The README")
class ReadmeTest {
    private final String readme = read("../README.md");

    @ParameterizedTest
    @ValueSource(classes = {TenLines.class, ColdDay.class, OwnAeroplane.class})
    @DisplayName("shows the lines of its examples word for word")
    void code(Class<?> example) {
        String source =
                read("src/main/java/" + example.getName().replace('.', '/').concat(".java"));
        List<String> lines = source.lines().toList();
        int begin = lines.indexOf("        // begin");
        int end = lines.indexOf("        // end");
        String shown = String.join("\n", lines.subList(begin + 1, end)).stripIndent();
        assertThat(readme).contains("```java\n" + shown + "\n```");
    }

    @ParameterizedTest
    @ValueSource(classes = {TenLines.class, ColdDay.class, OwnAeroplane.class})
    @DisplayName("shows the answers that its examples print")
    void answers(Class<?> example) throws ReflectiveOperationException {
        PrintStream before = System.out;
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        try {
            System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
            example.getMethod("main", String[].class).invoke(null, (Object) new String[0]);
        } finally {
            System.setOut(before);
        }
        String answer = printed.toString(StandardCharsets.UTF_8);
        assertThat(answer).isNotEmpty();
        assertThat(readme).contains("```text\n" + answer + "```");
    }

    @Test
    @DisplayName("names the two commands, and CI runs the second")
    void commands() {
        assertThat(readme).contains("mvn -q compile exec:java").contains("mvn -B verify");
        assertThat(read("../.ci/run")).contains("mvn -B verify");
    }

    private static String read(String file) {
        try {
            return Files.readString(Path.of(file));
        } catch (IOException missing) {
            throw new AssertionError(missing);
        }
    }
}
