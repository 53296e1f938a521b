package org.climbwright;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The overview page, from question to class")
class OverviewTest {
    private static final Path PAGE = Path.of("src/main/javadoc/overview.html");
    private static final Pattern LINK = Pattern.compile("\\{@link ([\\w.]+)}");
    private static final Pattern QUESTION = Pattern.compile("<li>(.+?)</li>", Pattern.DOTALL);

    @Test
    @DisplayName("leads each question to classes that there are, by their full names")
    void classes() throws IOException {
        List<String> questions =
                QUESTION.matcher(Files.readString(PAGE))
                        .results()
                        .map(found -> found.group(1))
                        .toList();
        assertThat(questions).hasSizeGreaterThan(50).doesNotHaveDuplicates();
        for (String question : questions) {
            List<String> names =
                    LINK.matcher(question).results().map(found -> found.group(1)).toList();
            assertThat(names).as(question).isNotEmpty();
            for (String name : names) {
                assertThatCode(() -> Class.forName(name, false, getClass().getClassLoader()))
                        .as(question)
                        .doesNotThrowAnyException();
            }
        }
    }

    @Test
    @DisplayName("says that it is for study and simulation, not for use in flight")
    void limits() throws IOException {
        assertThat(Files.readString(PAGE))
                .contains("Limits of use:")
                .contains("not for use in flight");
    }
}
