package org.climbwright.performance.ceiling;

import java.io.Serializable;
import java.util.Arrays;
import java.util.List;
import org.climbwright.performance.BuffetOnset;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.speed.Mach;

/**
 * The beginning of buffet as a table has it: lift coefficients by Mach number, a straight line from
 * row to row, and not known outside of the rows.
 *
 * <pre>{@code
 * BuffetTable table = BuffetTable.of(List.of(          // figures of nobody's aeroplane
 *         new BuffetTable.Row(Mach.of(0.2), 1.4),
 *         new BuffetTable.Row(Mach.of(0.7), 0.9),
 *         new BuffetTable.Row(Mach.of(0.8), 0.6)));
 * table.liftCoefficient(0.75)            // 0.75
 * table.liftCoefficient(0.85)            // NaN
 * }</pre>
 *
 * <p>Limits of use: a table is as good as its rows; the flight manual has the buffet boundary.
 *
 * @accuracy exact at the rows; between them, where the true curve bends downwards, the straight
 *     line lies below it
 * @source the table
 */
public final class BuffetTable implements BuffetOnset, Serializable {
    private static final long serialVersionUID = 1L;
    private static final ModelRange LIFT =
            new ModelRange("lift coefficient", 0.01, 10.0, "", "no wing lifts so");

    private final double[] machs;
    private final double[] lifts;

    /**
     * A row of the table.
     *
     * @param mach Mach number, above 0
     * @param liftCoefficient the lift coefficient at which buffet begins, 0.01 to 10
     */
    public record Row(Mach mach, double liftCoefficient) implements Serializable {}

    private BuffetTable(double[] machs, double[] lifts) {
        this.machs = machs;
        this.lifts = lifts;
        if (machs.length < 2) {
            throw new IllegalArgumentException(
                    "a table of buffet needs at least two rows, but had " + machs.length);
        }
        for (int i = 0; i < machs.length; i++) {
            LIFT.check(lifts[i]);
            double before = i == 0 ? 0.0 : machs[i - 1];
            if (!(machs[i] > before)) {
                throw new IllegalArgumentException(
                        "the Mach numbers of a table of buffet must rise from above 0, but "
                                + machs[i]
                                + " follows "
                                + before);
            }
        }
    }

    /**
     * Returns a table.
     *
     * @param rows the rows, at least two, with Mach numbers that rise
     * @return the table
     * @throws IllegalArgumentException if there are less, or they do not rise
     * @throws org.climbwright.quantity.OutsideModelException if a lift coefficient is out of range
     */
    public static BuffetTable of(List<Row> rows) {
        return new BuffetTable(
                rows.stream().mapToDouble(row -> row.mach().number()).toArray(),
                rows.stream().mapToDouble(Row::liftCoefficient).toArray());
    }

    @Override
    public double liftCoefficient(double mach) {
        int last = machs.length - 1;
        if (!(mach >= machs[0] && mach <= machs[last])) {
            return Double.NaN;
        }
        int above = 1;
        while (machs[above] < mach) {
            above++;
        }
        double way = (mach - machs[above - 1]) / (machs[above] - machs[above - 1]);
        // from both ends, so that each row is met exactly
        return (1.0 - way) * lifts[above - 1] + way * lifts[above];
    }

    /**
     * Returns the Mach numbers between which it is known.
     *
     * @return range of Mach numbers
     */
    public ModelRange range() {
        return new ModelRange(
                "Mach number", machs[0], machs[machs.length - 1], "", "the table ends there");
    }

    /**
     * Returns the table for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return "buffet at " + Arrays.toString(lifts) + " for Mach " + Arrays.toString(machs);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof BuffetTable that
                && Arrays.equals(machs, that.machs)
                && Arrays.equals(lifts, that.lifts);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(machs) + Arrays.hashCode(lifts);
    }

    private Object readResolve() {
        return new BuffetTable(machs.clone(), lifts.clone());
    }
}
