package org.climbwright.quantity.path;

import javax.measure.Quantity;
import javax.measure.Unit;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.Gradient;
import org.climbwright.unit.UnitScale;

/**
 * Height gained per horizontal distance covered over the ground: what obstacles and restrictions
 * need.
 *
 * <p>Not {@link AirGradient}: a headwind makes this one steeper and leaves that one.
 */
public final class GroundGradient extends Slope<GroundGradient> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM =
            Term.of(
                    "gradient over the ground",
                    UnitScale.METRE_PER_METRE,
                    UnitScale.PERCENT_GRADIENT);

    private GroundGradient(double si) {
        super(si);
    }

    /**
     * Returns a gradient over the ground given in metres per metre.
     *
     * @param metresPerMetre the value [m/m], any finite number; climb positive
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number; climb
     *     positive
     */
    public static GroundGradient ofMetresPerMetre(double metresPerMetre) {
        return new GroundGradient(TERM.inSi(metresPerMetre));
    }

    /**
     * Returns a gradient over the ground given in percent.
     *
     * @param percent the value [%], any finite number; climb positive
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number; climb
     *     positive
     */
    public static GroundGradient ofPercent(double percent) {
        return new GroundGradient(TERM.si(percent, UnitScale.PERCENT_GRADIENT));
    }

    /**
     * Returns a gradient over the ground given in feet per nautical mile.
     *
     * @param feetPerNauticalMile the value [ft/NM], any finite number; climb positive
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number; climb
     *     positive
     */
    public static GroundGradient ofFeetPerNauticalMile(double feetPerNauticalMile) {
        return new GroundGradient(TERM.si(feetPerNauticalMile, UnitScale.FOOT_PER_NAUTICAL_MILE));
    }

    /**
     * Returns a gradient over the ground given in any unit of gradient.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static GroundGradient of(double value, Unit<Gradient> unit) {
        return new GroundGradient(Edge.si(TERM, value, unit));
    }

    /**
     * Returns a gradient over the ground given as a quantity.
     *
     * @param quantity the quantity, in any unit of gradient
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static GroundGradient of(Quantity<Gradient> quantity) {
        return new GroundGradient(Edge.si(TERM, quantity));
    }

    /**
     * Returns the gradient over the ground that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "3.3 %"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static GroundGradient parse(String text) {
        return new GroundGradient(TERM.parse(text));
    }

    @Override
    protected Term term() {
        return TERM;
    }
}
