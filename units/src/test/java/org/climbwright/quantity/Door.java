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

    /** What stands behind a number in a message: nothing for a plain number or a plain ratio. */
    String unitBehind() {
        return scale == null || scale.label().equals("1") ? "" : " " + scale.label();
    }
}
