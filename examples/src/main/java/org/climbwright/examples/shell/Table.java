package org.climbwright.examples.shell;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;

/** Numbers in rows and columns, for reading: {@link #toString} lines them up. */
public final class Table {
    private static final int MOST_ROWS = 1000;
    private static final int MOST_REMARKS = 3;
    private static final MathContext DIGITS = new MathContext(5);

    /** Rounding may make the last row a little too much. */
    private static final double SHARE_OF_STEP = 1e-6;

    /**
     * A function with a name.
     *
     * @param name the heading, with the unit of the numbers
     * @param function the number of each row
     */
    public record Column(String name, DoubleUnaryOperator function) {
        /**
         * Makes it of parts that are there.
         *
         * @param name see above
         * @param function see above
         */
        public Column {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(function, "function");
        }
    }

    private final List<String> names;
    private final List<double[]> rows;
    private final List<String> remarks;

    private Table(List<String> names, List<double[]> rows, List<String> remarks) {
        this.names = List.copyOf(names);
        this.rows = List.copyOf(rows);
        this.remarks = List.copyOf(remarks);
    }

    static Table of(List<String> names, List<double[]> rows) {
        return new Table(names, rows, List.of());
    }

    static Table of(String name, double from, double to, double step, List<Column> columns) {
        double steps = Math.floor((to - from) / step + SHARE_OF_STEP);
        if (!(step > 0.0 && steps >= 0.0 && steps < MOST_ROWS)) {
            throw new IllegalArgumentException(
                    "a table goes up in steps above 0 and has 1 to 1000 rows, but was asked for "
                            + from
                            + " to "
                            + to
                            + " in steps of "
                            + step);
        }
        List<String> names = new ArrayList<>(List.of(name));
        columns.forEach(column -> names.add(column.name()));
        List<double[]> rows = new ArrayList<>();
        List<String> refusals = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            double[] row = new double[names.size()];
            row[0] = from + i * step;
            for (int j = 1; j < row.length; j++) {
                row[j] = ask(columns.get(j - 1), row[0], refusals);
            }
            rows.add(row);
        }
        List<String> remarks =
                new ArrayList<>(refusals.subList(0, Math.min(MOST_REMARKS, refusals.size())));
        if (refusals.size() > MOST_REMARKS) {
            remarks.add("and " + (refusals.size() - MOST_REMARKS) + " more refused");
        }
        return new Table(names, rows, remarks);
    }

    /** What is not known or refused is NaN, and why stands below the table. */
    private static double ask(Column column, double value, List<String> refusals) {
        try {
            return column.function().applyAsDouble(value);
        } catch (IllegalArgumentException refused) {
            refusals.add(column.name() + " at " + value + ": " + refused.getMessage());
            return Double.NaN;
        }
    }

    List<String> names() {
        return names;
    }

    double[] column(int index) {
        return rows.stream().mapToDouble(row -> row[index]).toArray();
    }

    /**
     * Returns the table for reading.
     *
     * @return a line of its size, a line of headings, a line for each row; "-" is where there is no
     *     number, and below stands why
     */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(rows.size() + (rows.size() == 1 ? " row" : " rows"));
        StringBuilder heading = new StringBuilder();
        List<StringBuilder> lines = rows.stream().map(row -> new StringBuilder()).toList();
        for (int j = 0; j < names.size(); j++) {
            int decimals = decimals(column(j), j == 0);
            int index = j;
            List<String> cells = rows.stream().map(row -> cell(row[index], decimals)).toList();
            int width =
                    cells.stream()
                            .mapToInt(String::length)
                            .reduce(names.get(j).length(), Math::max);
            String format = (j == 0 ? "%" : "  %") + width + "s";
            heading.append(String.format(Locale.ROOT, format, names.get(j)));
            for (int i = 0; i < cells.size(); i++) {
                lines.get(i).append(String.format(Locale.ROOT, format, cells.get(i)));
            }
        }
        text.append('\n').append(heading);
        lines.forEach(line -> text.append('\n').append(line));
        remarks.forEach(remark -> text.append('\n').append(remark));
        return text.toString();
    }

    private static String cell(double value, int decimals) {
        return Double.isNaN(value) ? "-" : String.format(Locale.ROOT, "%." + decimals + "f", value);
    }

    /** Five digits of the largest number of the column, fewer where all end sooner. */
    private static int decimals(double[] values, boolean isFirst) {
        int most = 0;
        double largest = 0.0;
        for (double value : values) {
            if (Math.abs(value) <= Double.MAX_VALUE) {
                largest = Math.max(largest, Math.abs(value));
                BigDecimal digits = new BigDecimal(value).round(DIGITS).stripTrailingZeros();
                most = Math.max(most, digits.scale());
            }
        }
        BigDecimal longest = new BigDecimal(largest).round(DIGITS);
        int fitting = Math.max(0, DIGITS.getPrecision() - longest.precision() + longest.scale());
        return isFirst ? most : Math.min(most, fitting);
    }
}
