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
 *       names that the University of Wyoming's CSV service writes are understood too;
 *   <li>the text listing of that university: columns of seven characters under the names {@code
 *       PRES HGHT TEMP DWPT RELH MIXR DRCT SKNT THTA THTE THTV} (or {@code SPED} for {@code SKNT})
 *       and their units, each listing below a title that tells station and launch, if there is one;
 *       as plain text or as the web page around it, whose tags and indices are left out. Wind is in
 *       knots or metres per second, as the row of units says. A row with pressure and height only,
 *       such as 1000 hPa below the ground, is a level without temperature.
 * </ul>
 *
 * <p>A fault costs the field or the level that it stands in and nothing else; the result lists
 * each. In fixed columns a number that is cut, or that does not stand in its columns, is a fault.
 *
 * <p>An IGRA level that reports relative humidity and no dew point depression has the dew point of
 * that humidity, over liquid water ({@link org.climbwright.atmosphere.MoistAir}); 0 % is less than
 * the file prints and tells none.
 *
 * @source NOAA NCEI, IGRA version 2, igra2-data-format.txt and igra2-derived-format.txt (column
 *     positions from memory, confirmed by files of both kinds); University of Wyoming, Department
 *     of Atmospheric Science, upper air soundings as "Text: List" (no description of the format is
 *     published; columns, units and titles as in its files)
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
        if (clean.stream().anyMatch(IgraHeader::isOne)) {
            return IgraReader.read(clean);
        }
        return clean.stream().anyMatch(WyomingReader::isListing)
                ? WyomingReader.read(clean)
                : ProfileReader.read(clean);
    }
}
