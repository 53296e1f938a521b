package org.climbwright.working;

import java.io.Serializable;
import java.util.Objects;

/**
 * A step of a working: a formula and what the library's function gave for it.
 *
 * <p>The value is handed in by whoever called the function; the formula is text and never
 * evaluated. The formula as it stands, with the numbers of the inputs and of the steps before put
 * in, gives the value again; a test of each working holds that.
 *
 * @param what what is found, in the field's words
 * @param symbol how later formulas call it: a letter, then letters, digits and underscores
 * @param formula the right side, in symbols, numbers, {@code + - · / ^ √ ln exp} and brackets
 * @param value the result in {@code unit}, as the function gave it
 * @param unit the unit of the result; empty for a plain number
 * @param reading the same as the trade reads it
 * @param source where the formula is from
 */
public record WorkingStep(
        String what,
        String symbol,
        String formula,
        double value,
        String unit,
        String reading,
        String source)
        implements Serializable {
    /**
     * Makes a step.
     *
     * @param what see above
     * @param symbol see above
     * @param formula see above
     * @param value see above, finite
     * @param unit see above
     * @param reading see above
     * @param source see above
     * @throws IllegalArgumentException if formulas cannot have such a symbol, or the value is not
     *     finite
     */
    public WorkingStep {
        Objects.requireNonNull(what, "what");
        Objects.requireNonNull(formula, "formula");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(reading, "reading");
        Objects.requireNonNull(source, "source");
        FormulaText.requireSymbol(symbol);
        FormulaText.requireNumber(symbol, value);
    }
}
