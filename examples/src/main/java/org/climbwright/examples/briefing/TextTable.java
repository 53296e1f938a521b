package org.climbwright.examples.briefing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * A table of text: one or two lines of heads, the last of them with the unit, and a line for each
 * row.
 *
 * @param <T> what a row tells
 */
final class TextTable<T> {
    private final List<Column<T>> columns = new ArrayList<>();

    /** A column; a negative width puts it to the left. */
    private record Column<T>(int width, String head, String second, Function<T, String> cell) {}

    TextTable<T> column(int width, String head, String second, Function<T, String> cell) {
        columns.add(new Column<>(width, head, second, cell));
        return this;
    }

    void heads(TextPage page) {
        String first = joined(Column::head);
        if (!first.isBlank()) {
            page.line("%s", first);
        }
        page.line("%s", joined(Column::second));
    }

    void row(TextPage page, T row) {
        page.line("%s", joined(column -> column.cell().apply(row)));
    }

    void write(TextPage page, List<T> rows) {
        heads(page);
        rows.forEach(row -> row(page, row));
    }

    private String joined(Function<Column<T>, String> part) {
        StringBuilder line = new StringBuilder();
        for (Column<T> column : columns) {
            line.append(TextPage.format("%" + column.width() + "s", part.apply(column)));
        }
        return line.toString();
    }
}
