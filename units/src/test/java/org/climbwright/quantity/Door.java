package org.climbwright.quantity;

import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import org.climbwright.unit.UnitScale;

/**
 * One way in for a plain number, with the way out that must undo it.
 *
 * @param entrance the factory, such as {@code ofFeet}
 * @param exit the accessor, such as {@code inFeet}
 * @param scale the unit of both; null for a plain number
 */
public record Door<T>(
        String entrance,
        String exit,
        UnitScale scale,
        DoubleFunction<T> in,
        ToDoubleFunction<T> out) {

    static <T> Door<T> of(
            String unitInWords, UnitScale scale, DoubleFunction<T> in, ToDoubleFunction<T> out) {
        return new Door<>("of" + unitInWords, "in" + unitInWords, scale, in, out);
    }

    /** The label of the unit with a space before it; nothing for a plain number. */
    String unitBehind() {
        return scale == null ? "" : " " + scale.label();
    }
}
