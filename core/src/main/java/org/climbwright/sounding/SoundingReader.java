package org.climbwright.sounding;

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

/**
 * Reads soundings from open text formats, recognised by their headers.
 *
 * <ul>
 *   <li>IGRA version 2 of NOAA's National Centers for Environmental Information, observations and
 *       derived parameters: many ascents in fixed columns, each under a line that begins with
 *       {@code #};
 *   <li>a CSV profile: a header line with the names {@code pressure_hpa, geopotential_height_m,
 *       temperature_c, dewpoint_c, wind_from_deg, wind_speed_mps}, one ascent, rows in any order,
 *       an empty field for what is missing, lines that begin with {@code #} left out. The column
 *       names that the University of Wyoming's CSV service writes are understood too.
 * </ul>
 *
 * <p>A fault costs the field or the level that it stands in and nothing else; the result lists
 * each.
 *
 * @source NOAA NCEI, IGRA version 2, igra2-data-format.txt and igra2-derived-format.txt (column
 *     positions from memory, confirmed by files of both kinds)
 */
public final class SoundingReader {
    /** As a character, or as the three that Latin-1 makes of its bytes. */
    private static final Pattern BYTE_ORDER_MARK = Pattern.compile("^(\uFEFF|\u00EF\u00BB\u00BF)");

    private SoundingReader() {}

    /**
     * Reads a file.
     *
     * @param file the file; characters outside ASCII do not matter
     * @return every good ascent, and what could not be used
     * @throws IOException if the file cannot be read at all
     */
    public static SoundingReading read(Path file) throws IOException {
        // Latin-1 reads any byte, so a damaged character is a problem of its field only.
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
     * @return every good ascent, and what could not be used
     */
    public static SoundingReading read(List<String> lines) {
        List<String> clean = new ArrayList<>(lines);
        clean.replaceAll(line -> line.endsWith("\r") ? line.substring(0, line.length() - 1) : line);
        if (!clean.isEmpty()) {
            clean.set(0, BYTE_ORDER_MARK.matcher(clean.get(0)).replaceFirst(""));
        }
        return clean.stream().anyMatch(IgraHeader::isOne)
                ? IgraReader.read(clean)
                : ProfileReader.read(clean);
    }
}
