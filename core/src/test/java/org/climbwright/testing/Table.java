package org.climbwright.testing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** A table of {@code src/test/resources}, for counting its rows. */
public final class Table {
    private Table() {}

    /** The rows of a table as lines, without comments and without the head. */
    public static List<String> rows(String resource) {
        List<String> lines = lines(resource);
        return lines.subList(1, lines.size());
    }

    /** The line that names the columns. */
    public static String head(String resource) {
        return lines(resource).get(0);
    }

    private static List<String> lines(String resource) {
        try (InputStream in = Table.class.getResourceAsStream(resource)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
