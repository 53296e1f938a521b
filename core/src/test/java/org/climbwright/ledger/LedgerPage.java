package org.climbwright.ledger;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** The ledger as a page to read, made from nothing but its entries. */
final class LedgerPage {
    private LedgerPage() {}

    /** The page of some entries; those of a row stand together. */
    static String text(List<Entry> entries) {
        Map<String, List<Entry>> rows = new LinkedHashMap<>();
        for (Entry entry : entries) {
            rows.computeIfAbsent(entry.row(), row -> new ArrayList<>()).add(entry);
        }
        long points = rows.values().stream().mapToLong(row -> row.get(0).points()).sum();
        StringBuilder page = new StringBuilder(introduction(points));
        Map<List<String>, List<List<Entry>>> tables =
                rows.values().stream()
                        .collect(
                                Collectors.groupingBy(
                                        row -> row.stream().map(Entry::measure).toList(),
                                        LinkedHashMap::new,
                                        Collectors.toList()));
        tables.forEach((measures, table) -> page.append(table(measures, table)));
        return page.toString();
    }

    private static String introduction(long points) {
        return String.format(
                Locale.ROOT,
                """
                # Accuracy ledger

                How far each function of plain doubles is from the exact value of its own formula: of standard air, dry air,
                geopotential altitude, airspeeds, temperatures and crossovers. Made by a program; do not edit.

                    mvn -q -pl core -am -P ledger test-compile exec:java

                makes it anew in a few minutes, with `src/test/resources/ledger/accuracy.csv` for machines.

                ## What is measured

                - **Against** the same formula in 50-digit arithmetic, written a second time from the defining constants as
                  decimals. The doubles that go in count as exact numbers: their own rounding is nobody's error here. How well
                  the formula describes real air is another question, which the tables of published values answer.
                - **At** %,d steps over the range of each input, even in the input and, where it begins at or near 0, even in
                  its logarithm from a thousand-millionth of the upper bound (the square of that for an impact pressure); the
                  other inputs random over their ranges. As many points with all inputs random, from a written seed. Each
                  bound, the bounds of layers, Mach 1, the speed of sound at sea level, and the one and two doubles to both
                  sides of them, in all combinations.
                  %,d points in all.
                - **ulp**: units in the last place of the exact result. To round correctly is 0.5; 1 is next to it.
                - **The bar** is what must not be exceeded: 4 ulp and 1e-15 relative, less or more where the function states
                  so; for an altitude 1e-11 m, or 2 ulp where that is more. A figure above its bar is **bold**, and its reason
                  stands in `src/test/resources/ledger/rows-above-the-bar.csv`. Figures are rounded up.
                - Next to 0 the square of a number has no digits left in a double: a result below 1e-100 counts as one of
                  1e-100.

                The build measures a hundredth of the points and all bounds again, and fails if it finds a larger error, if an
                error is no longer what is written here, if a function is missing, or if one is above its bar and not known so.
                """,
                Points.STEPS,
                points);
    }

    private static String table(List<String> measures, Collection<List<Entry>> rows) {
        StringBuilder table = new StringBuilder("\n## Errors in ");
        table.append(String.join(", ", measures)).append("\n\n| function | inputs | points |");
        measures.forEach(measure -> table.append(' ').append(measure).append(" | bar |"));
        table.append(" largest at |\n|---|---|--:|").append("--:|--:|".repeat(measures.size()));
        table.append("---|\n");
        rows.forEach(row -> table.append(line(row)));
        return table.toString();
    }

    private static String line(List<Entry> row) {
        Entry first = row.get(0);
        StringBuilder line = new StringBuilder("| `").append(first.function()).append('`');
        line.append(first.part().isEmpty() ? "" : ", " + first.part());
        line.append(" | ").append(first.ranges()).append(" | ");
        line.append(String.format(Locale.ROOT, "%,d", first.points())).append(" |");
        for (Entry entry : row) {
            String figure = Figures.error(entry.largest());
            line.append(entry.isAboveBar() ? " **" + figure + "**" : " " + figure).append(" | ");
            line.append(Double.isNaN(entry.bar()) ? "" : Figures.plain(entry.bar())).append(" |");
        }
        return line.append(' ').append(nearestToItsBar(row).at()).append(" |\n").toString();
    }

    private static Entry nearestToItsBar(List<Entry> row) {
        return row.stream()
                .filter(entry -> !Double.isNaN(entry.bar()))
                .max(Comparator.comparingDouble(entry -> entry.largest() / entry.bar()))
                .orElseThrow();
    }
}
