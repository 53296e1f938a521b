package org.climbwright.quantity.speed;

import org.climbwright.quantity.Scalar;
import org.climbwright.quantity.Term;

/**
 * True airspeed over the speed of sound in the air flown through.
 *
 * <p>A number without a unit, and no ratio of anything else: it takes no percent and no gradient.
 *
 * <pre>{@code
 * Mach.of(0.78).text()   // "M0.78"
 * }</pre>
 */
public final class Mach extends Scalar<Mach> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM = Term.plain("Mach number", "M").from(0.0);

    private Mach(double number) {
        super(number);
    }

    /**
     * Returns a Mach number.
     *
     * @param number true airspeed over the speed of sound, 0 or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be 0 or more, finite
     */
    public static Mach of(double number) {
        return new Mach(TERM.check(number));
    }

    /**
     * Returns the Mach number that a text stands for.
     *
     * @param text the letter M and a number: {@code "M0.78"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static Mach parse(String text) {
        return new Mach(TERM.parse(text));
    }

    /**
     * Returns the number itself.
     *
     * @return true airspeed over the speed of sound
     */
    public double number() {
        return si();
    }

    /**
     * Tells whether another Mach number lies within a tolerance of this one.
     *
     * @param other the other value
     * @param tolerance the largest difference allowed
     * @return true if the two differ by the tolerance or less
     */
    public boolean isCloseTo(Mach other, Mach tolerance) {
        return isWithin(other, tolerance.si());
    }

    @Override
    protected Term term() {
        return TERM;
    }
}
