package org.climbwright.cabin.exposure;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Serializable;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.climbwright.quantity.altitude.CabinAltitude;

/**
 * The times of useful consciousness that one source has for one circumstance, at the altitudes that
 * it tabulates.
 *
 * <p>Published tables disagree, between editions of one circular too. So each stays by itself: none
 * is blended with another, nothing is put between two rows, and nothing beyond the first and the
 * last. In one of them the rows of 43,000 and 50,000 ft are the same: blood takes its time from the
 * lungs to the brain, and there is no slope to carry on.
 *
 * <pre>{@code
 * CabinAltitude cabin = CabinAltitude.ofFeet(26000);
 * UsefulConsciousnessTable table = UsefulConsciousnessTable.published().get(1);
 * table.circumstance()                                      // AFTER_RAPID_DECOMPRESSION
 * table.at(cabin).isPresent()                               // false
 * table.nextBelow(cabin).orElseThrow().low()                // PT1M30S
 * table.nextAbove(cabin).orElseThrow().low()                // PT1M15S
 * }</pre>
 *
 * <p>Limits of use: see {@link UsefulConsciousness}. Between two rows the higher altitude has the
 * shorter time.
 *
 * @param source where the table was published
 * @param circumstance how the people came to be at the altitude
 * @param rows its rows, the lowest altitude first
 * @source in each row; one row, of a later edition of AC 61-107B after rapid decompression at
 *     25,000 ft, is from memory and says so
 */
public record UsefulConsciousnessTable(
        String source,
        UsefulConsciousness.Circumstance circumstance,
        List<UsefulConsciousness> rows)
        implements Serializable {
    private static final String RESOURCE = "useful-consciousness.csv";

    /**
     * Makes a table of rows of one source and one circumstance.
     *
     * @param source where the table was published
     * @param circumstance how the people came to be at the altitude
     * @param rows its rows, each at a higher altitude than the one before, at least one
     * @throws IllegalArgumentException if a row is of another source or circumstance, or the rows
     *     are not in order
     */
    public UsefulConsciousnessTable {
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(circumstance, "circumstance");
        rows = List.copyOf(rows);
        if (rows.isEmpty()) {
            throw new IllegalArgumentException("a table needs a row");
        }
        for (int i = 0; i < rows.size(); i++) {
            UsefulConsciousness row = rows.get(i);
            boolean higher = i == 0 || row.altitude().compareTo(rows.get(i - 1).altitude()) > 0;
            if (!(higher && row.source().equals(source) && row.circumstance() == circumstance)) {
                throw new IllegalArgumentException(
                        "the rows of a table are of one source and one circumstance, each higher"
                                + " than the one before, but one was "
                                + row);
            }
        }
    }

    /**
     * Returns every published table.
     *
     * @return one for each source and circumstance, as they are listed
     */
    public static List<UsefulConsciousnessTable> published() {
        return Published.TABLES;
    }

    /**
     * Returns the row of an altitude, if the table has it.
     *
     * @param cabin cabin altitude
     * @return the row of this altitude, to 1e-6 m; empty if there is none
     */
    public Optional<UsefulConsciousness> at(CabinAltitude cabin) {
        return rows.stream()
                .filter(row -> Level.isAt(row.altitude().inMetres(), cabin.inMetres()))
                .findFirst();
    }

    /**
     * Returns the row of the next altitude below, where times are longer.
     *
     * @param cabin cabin altitude
     * @return the highest row that is lower; empty below the first row, and at it
     */
    public Optional<UsefulConsciousness> nextBelow(CabinAltitude cabin) {
        return rows.stream()
                .filter(row -> Level.isAbove(cabin.inMetres(), row.altitude().inMetres()))
                .reduce((lower, higher) -> higher);
    }

    /**
     * Returns the row of the next altitude above, where times are shorter.
     *
     * @param cabin cabin altitude
     * @return the lowest row that is higher; empty above the last row, and at it
     */
    public Optional<UsefulConsciousness> nextAbove(CabinAltitude cabin) {
        return rows.stream()
                .filter(row -> Level.isAbove(row.altitude().inMetres(), cabin.inMetres()))
                .findFirst();
    }

    /**
     * Returns what the table has for an altitude: its row, or those beside it.
     *
     * <p>Beyond its ends it has nothing: the time of the first row would be taken for that of a
     * lower altitude, that of the last for a higher one. {@link #nextAbove} and {@link #nextBelow}
     * have these rows for whoever asks for them by name.
     *
     * @param cabin cabin altitude
     * @return the row of this altitude alone; else the one below and the one above; empty below the
     *     first row and above the last, where the time is not known
     */
    public List<UsefulConsciousness> around(CabinAltitude cabin) {
        Optional<UsefulConsciousness> row = at(cabin);
        if (row.isPresent()) {
            return List.of(row.get());
        }
        Optional<UsefulConsciousness> below = nextBelow(cabin);
        Optional<UsefulConsciousness> above = nextAbove(cabin);
        return below.isPresent() && above.isPresent()
                ? List.of(below.get(), above.get())
                : List.of();
    }

    /**
     * Returns what the table has for an altitude, in words: no time without the altitude that it is
     * tabulated for.
     *
     * @param cabin cabin altitude
     * @return a text; may change between versions
     */
    public String inWords(CabinAltitude cabin) {
        List<UsefulConsciousness> found = around(cabin);
        if (found.isEmpty()) {
            return cabin.text()
                    + ": not known, the table is from "
                    + rows.get(0).altitude().text()
                    + " to "
                    + rows.get(rows.size() - 1).altitude().text()
                    + ", "
                    + circumstance.words()
                    + " ("
                    + source
                    + ")";
        }
        return found.size() == 1
                ? found.get(0).toString()
                : cabin.text()
                        + ": not tabulated, below it "
                        + found.get(0)
                        + ", above it "
                        + found.get(1);
    }

    /** Read once, when it is first asked for. */
    private static final class Published {
        static final List<UsefulConsciousnessTable> TABLES = read();

        private static List<UsefulConsciousnessTable> read() {
            Map<String, List<UsefulConsciousness>> tables = new LinkedHashMap<>();
            for (String line : lines()) {
                UsefulConsciousness row = row(line);
                tables.computeIfAbsent(
                                row.source() + row.circumstance(), table -> new ArrayList<>())
                        .add(row);
            }
            return tables.values().stream().map(Published::table).toList();
        }

        private static UsefulConsciousnessTable table(List<UsefulConsciousness> rows) {
            rows.sort(Comparator.comparing(UsefulConsciousness::altitude));
            UsefulConsciousness first = rows.get(0);
            return new UsefulConsciousnessTable(first.source(), first.circumstance(), rows);
        }

        private static List<String> lines() {
            try (BufferedReader reader =
                    new BufferedReader(
                            new InputStreamReader(
                                    Objects.requireNonNull(
                                            UsefulConsciousnessTable.class.getResourceAsStream(
                                                    RESOURCE),
                                            RESOURCE),
                                    StandardCharsets.UTF_8))) {
                return reader.lines().filter(line -> !line.startsWith("#")).skip(1).toList();
            } catch (IOException e) {
                throw new UncheckedIOException(RESOURCE, e);
            }
        }

        /** The source comes last and may have commas. */
        private static UsefulConsciousness row(String line) {
            String[] fields = line.split(",", 6);
            return new UsefulConsciousness(
                    fields[5],
                    Evidence.valueOf(fields[4]),
                    UsefulConsciousness.Circumstance.valueOf(fields[1]),
                    CabinAltitude.ofFeet(Double.parseDouble(fields[0])),
                    Duration.ofSeconds(Long.parseLong(fields[2])),
                    fields[3].isEmpty() ? null : Duration.ofSeconds(Long.parseLong(fields[3])));
        }
    }
}
