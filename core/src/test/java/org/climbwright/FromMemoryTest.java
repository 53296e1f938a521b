package org.climbwright;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What the sources say is from memory, or common practice without a source, in one list. */
@DisplayName("The list of what is not from a source that was seen")
class FromMemoryTest {
    private static final Path SOURCES = Path.of("src", "main", "java");
    private static final Path LIST = Path.of("FROM-MEMORY.md");
    private static final Pattern COMMENT = Pattern.compile("/\\*\\*(.*?)\\*/", Pattern.DOTALL);
    private static final Pattern SENTENCE =
            Pattern.compile(
                    "(?:[^.;@]|\\.(?!\\s))*(?:from memory|no source)(?:[^.;@]|\\.(?!\\s))*");

    private static final String HEAD =
            """
            # From memory, or without a source

            Every figure and formula has its source in the Javadoc. What was not seen but remembered, and what is common
            practice without a source, says so there; this is the list, taken from those comments. A test holds it.

            | class | what it says |
            | --- | --- |
            """;

    @Test
    @DisplayName("is what the comments say")
    void list() throws IOException {
        assertThat(Files.readString(LIST)).isEqualTo(text());
    }

    /** Writes the list anew; the argument is the folder of the module. */
    public static void main(String[] arguments) throws IOException {
        Files.writeString(Path.of(arguments[0]).resolve(LIST), text(), UTF_8);
    }

    private static String text() throws IOException {
        StringBuilder text = new StringBuilder(HEAD);
        try (Stream<Path> files = Files.walk(SOURCES)) {
            List<Path> sources =
                    files.filter(file -> file.toString().endsWith(".java")).sorted().toList();
            sources.forEach(
                    file -> sentences(file).forEach(line -> text.append(line).append('\n')));
        }
        return text.toString();
    }

    private static Stream<String> sentences(Path file) {
        String name = SOURCES.relativize(file).toString().replaceAll("[/\\\\]", ".");
        String type = name.replaceFirst("^org\\.climbwright\\.", "").replaceFirst("\\.java$", "");
        return COMMENT.matcher(read(file))
                .results()
                .map(
                        comment ->
                                comment.group(1)
                                        .replaceAll("\\R\\s*\\*", " ")
                                        .replaceAll("\\s+", " "))
                .flatMap(comment -> SENTENCE.matcher(comment).results())
                .map(MatchResult::group)
                .map(sentence -> sentence.replaceFirst("^source ", "").replace("<p>", "").strip())
                .distinct()
                .map(sentence -> "| " + type + " | " + sentence.replace("|", "\\|") + " |");
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
