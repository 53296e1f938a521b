package org.climbwright.cabin.exposure;

import java.util.Set;
import java.util.stream.Collectors;
import org.climbwright.testing.Table;

/** The rows that the tests of this package do not compare; every other one they must. */
final class LeftOut {
    static final String FILE = "/cabin/rows-left-out-exposure.csv";

    private LeftOut() {}

    static Set<String> rows(String table) {
        return Table.rows(FILE).stream()
                .map(line -> line.split(",", 3))
                .filter(fields -> fields[0].equals(table))
                .map(fields -> fields[1])
                .collect(Collectors.toSet());
    }
}
