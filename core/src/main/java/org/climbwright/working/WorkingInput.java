package org.climbwright.working;

import java.io.Serializable;
import java.util.Objects;

/**
 * A value that a working is given.
 *
 * @param name what it is, in the field's words
 * @param symbol how formulas call it: a letter, then letters, digits and underscores
 * @param value its number in {@code unit}, as formulas take it
 * @param unit the unit of the number; empty for a plain number
 * @param reading the same as the trade reads it
 * @param datum what it counts from or where it is from; empty where nothing needs saying
 */
public record WorkingInput(
        String name, String symbol, double value, String unit, String reading, String datum)
        implements Serializable {
    /**
     * Makes an input.
     *
     * @param name see above
     * @param symbol see above
     * @param value see above, finite
     * @param unit see above
     * @param reading see above
     * @param datum see above
     * @throws IllegalArgumentException if formulas cannot have such a symbol, or the value is not
     *     finite
     */
    public WorkingInput {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(reading, "reading");
        Objects.requireNonNull(datum, "datum");
        FormulaText.requireSymbol(symbol);
        FormulaText.requireNumber(symbol, value);
    }
}
