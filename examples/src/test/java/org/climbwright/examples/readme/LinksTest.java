package org.climbwright.examples.readme;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("A document")
class LinksTest {
    private static final Path ROOT = Path.of("..");
    private static final Pattern LINK = Pattern.compile("]\\(([^)\\s]+)\\)");
    private static final Pattern HEADING = Pattern.compile("(?m)^#+ (.+)$");

    /** All that is written in Markdown, beside the sources and not in what a build makes. */
    static List<Path> documents() throws IOException {
        try (Stream<Path> files = Files.walk(ROOT, 3)) {
            return files.filter(file -> file.toString().endsWith(".md"))
                    .filter(file -> !file.toString().contains("target"))
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("documents")
    @DisplayName("links to files and headings that there are")
    void links(Path document) throws IOException {
        String text = Files.readString(document);
        List<String> links =
                LINK.matcher(text)
                        .results()
                        .map(found -> found.group(1))
                        .filter(link -> !link.contains("://"))
                        .toList();
        for (String link : links) {
            String[] parts = link.split("#", 2);
            Path file = parts[0].isEmpty() ? document : document.resolveSibling(parts[0]);
            assertThat(file).as("%s in %s", link, document).exists();
            if (parts.length == 2) {
                assertThat(headings(Files.readString(file))).as(link).contains(parts[1]);
            }
        }
    }

    @Test
    @DisplayName("is found wherever one is written, and the README leads to others")
    void found() throws IOException {
        assertThat(documents())
                .contains(ROOT.resolve("README.md"), ROOT.resolve("DEVELOPERS.md"))
                .contains(ROOT.resolve("core/ACCURACY.md"));
        assertThat(LINK.matcher(Files.readString(ROOT.resolve("README.md"))).results().count())
                .isGreaterThan(5);
    }

    /** Headings as a link names them: small letters, hyphens for spaces, no other signs. */
    private static List<String> headings(String text) {
        return HEADING.matcher(text)
                .results()
                .map(found -> found.group(1).toLowerCase(Locale.ROOT))
                .map(heading -> heading.replaceAll("[^\\p{L}\\p{N} -]", "").replace(' ', '-'))
                .toList();
    }
}
