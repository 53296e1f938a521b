package org.climbwright.sounding.surface;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The recorded reports that these tests read; ORIGIN.csv beside them says whose they are. */
final class Reports {
    static final String FILE = "reports-20190701-1200.txt";

    private Reports() {}

    static Path path() {
        try {
            return Path.of(Reports.class.getResource("/sounding/surface/" + FILE).toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The 32 reports as they stand in the file, one a line. */
    static List<String> lines() {
        try {
            return Files.readAllLines(path(), StandardCharsets.ISO_8859_1);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A report whose body is these groups. */
    static SurfaceReport reportOf(String groups) {
        return SurfaceReportReader.parse("LOWW 011200Z " + groups);
    }
}
