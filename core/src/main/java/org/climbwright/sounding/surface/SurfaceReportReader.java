package org.climbwright.sounding.surface;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.climbwright.sounding.ReadingProblem;

/**
 * Reads weather reports of aerodromes in the codes METAR and SPECI.
 *
 * <p>In a file each report begins a line; lines that begin with a blank continue it, up to an
 * equals sign. Blank lines and lines that begin with {@code #} are left out. A fault costs the
 * group that it stands in and nothing else, or the line if it is no report at all; the result lists
 * each.
 *
 * @source see {@link SurfaceReport}
 */
public final class SurfaceReportReader {
    /** As a character, or as the three that Latin-1 makes of its bytes. */
    private static final Pattern BYTE_ORDER_MARK = Pattern.compile("^(\uFEFF|\u00EF\u00BB\u00BF)");

    private SurfaceReportReader() {}

    /**
     * Reads a file.
     *
     * @param file the file; characters outside ASCII do not matter
     * @return every report, and what could not be used
     * @throws IOException if the file cannot be read at all
     */
    public static SurfaceReportReading read(Path file) throws IOException {
        // Latin-1 reads any byte, so a damaged character is a problem of its group only.
        try (Stream<String> lines = Files.lines(file, StandardCharsets.ISO_8859_1)) {
            return read(lines.collect(Collectors.toList()));
        } catch (UncheckedIOException broken) {
            throw new IOException(broken.getMessage(), broken);
        }
    }

    /**
     * Reads the lines of a file.
     *
     * @param lines all lines, in order
     * @return every report, and what could not be used
     */
    public static SurfaceReportReading read(List<String> lines) {
        List<SurfaceReport> reports = new ArrayList<>();
        List<ReadingProblem> problems = new ArrayList<>();
        for (int first = 0; first < lines.size(); ) {
            int end = first + 1;
            String line = lines.get(first);
            if (first == 0) {
                line = BYTE_ORDER_MARK.matcher(line).replaceFirst("");
            }
            if (!isSkipped(line)) {
                StringBuilder text = new StringBuilder(line);
                while (end < lines.size() && continues(lines.get(end), text)) {
                    text.append('\n').append(lines.get(end));
                    end++;
                }
                read(first + 1, text.toString(), reports, problems);
            }
            first = end;
        }
        return new SurfaceReportReading(reports, problems);
    }

    private static boolean isSkipped(String line) {
        return line.isBlank() || line.startsWith("#");
    }

    private static boolean continues(String line, CharSequence before) {
        return !line.isBlank()
                && Character.isWhitespace(line.charAt(0))
                && before.chars().noneMatch(c -> c == '=');
    }

    private static void read(
            int line, String text, List<SurfaceReport> reports, List<ReadingProblem> problems) {
        try {
            SurfaceReport report = parse(text);
            reports.add(report);
            for (ReadingProblem problem : report.problems()) {
                problems.add(
                        new ReadingProblem(
                                line + problem.line() - 1,
                                problem.field(),
                                problem.text(),
                                problem.reason()));
            }
        } catch (IllegalArgumentException refusal) {
            problems.add(
                    new ReadingProblem(
                            line, "line", text.strip(), refusal.getMessage() + "; not read"));
        }
    }

    /**
     * Reads one report.
     *
     * @param text the report, on one line or several
     * @return the report; what of it could not be used is in its problems
     * @throws IllegalArgumentException if the text is no report: it has no station or, but for NIL,
     *     no time of observation, or it is a forecast
     */
    public static SurfaceReport parse(String text) {
        return SurfaceReport.of(text.strip());
    }
}
