package org.climbwright.quantity;

import org.climbwright.unit.UnitText;

/**
 * Thrown by a model that is asked about a value outside the range in which it holds.
 *
 * <p>The value itself can be: a pressure altitude of 90 km exists, the standard atmosphere here
 * just ends below it. A value that cannot be at all is a plain {@link IllegalArgumentException}.
 */
public final class OutsideModelException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final String term;
    private final double value;
    private final double lowest;
    private final double highest;
    private final String unit;

    /**
     * Makes the error of one value outside a model.
     *
     * @param term what the value is, in the field's words
     * @param value the value refused, in {@code unit}; may be NaN
     * @param lowest the lowest value allowed, in {@code unit}
     * @param highest the highest value allowed, in {@code unit}
     * @param unit the label of the unit; empty for a plain number
     * @param reason why the range ends there, or what to do instead
     */
    public OutsideModelException(
            String term, double value, double lowest, double highest, String unit, String reason) {
        super(message(term, value, lowest, highest, unit, reason));
        this.term = term;
        this.value = value;
        this.lowest = lowest;
        this.highest = highest;
        this.unit = unit;
    }

    private static String message(
            String term, double value, double lowest, double highest, String unit, String reason) {
        // No string concatenation: its first use costs a start-up of 10 ms and more.
        String behind = unit.isEmpty() ? "" : " ".concat(unit);
        return new StringBuilder(160)
                .append(term)
                .append(" must be from ")
                .append(lowest)
                .append(" to ")
                .append(highest)
                .append(behind)
                .append(", but was ")
                .append(value)
                .append(behind)
                .append(": ")
                .append(reason)
                .toString();
    }

    /**
     * Returns what the value is.
     *
     * @return the term, such as {@code "pressure altitude"}
     */
    public String term() {
        return term;
    }

    /**
     * Returns the value that was refused.
     *
     * @return the value in {@link #unit}; may be NaN
     */
    public double value() {
        return value;
    }

    /**
     * Returns the lowest value that the model takes.
     *
     * @return the closed lower bound in {@link #unit}
     */
    public double lowest() {
        return lowest;
    }

    /**
     * Returns the highest value that the model takes.
     *
     * @return the closed upper bound in {@link #unit}
     */
    public double highest() {
        return highest;
    }

    /**
     * Returns the label of the unit of value and bounds.
     *
     * @return the label as {@link UnitText} has it; empty for a plain number
     */
    public String unit() {
        return unit;
    }
}
