package org.climbwright.quantity.path;

import javax.measure.Quantity;
import javax.measure.Unit;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.Gradient;
import org.climbwright.unit.UnitScale;

/**
 * Height gained per horizontal distance flown through the air: what thrust and drag fix.
 *
 * <p>Not {@link GroundGradient}: obstacles and restrictions stand on the ground.
 */
public final class AirGradient extends Slope<AirGradient> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM =
            Term.of(
                    "gradient through the air",
                    UnitScale.METRE_PER_METRE,
                    UnitScale.PERCENT_GRADIENT);

    private AirGradient(double si) {
        super(si);
    }

    /**
     * Returns a gradient through the air given in metres per metre.
     *
     * @param metresPerMetre the value [m/m], any finite number; climb positive
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number; climb
     *     positive
     */
    public static AirGradient ofMetresPerMetre(double metresPerMetre) {
        return new AirGradient(TERM.inSi(metresPerMetre));
    }

    /**
     * Returns a gradient through the air given in percent.
     *
     * @param percent the value [%], any finite number; climb positive
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number; climb
     *     positive
     */
    public static AirGradient ofPercent(double percent) {
        return new AirGradient(TERM.si(percent, UnitScale.PERCENT_GRADIENT));
    }

    /**
     * Returns a gradient through the air given in feet per nautical mile.
     *
     * @param feetPerNauticalMile the value [ft/NM], any finite number; climb positive
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number; climb
     *     positive
     */
    public static AirGradient ofFeetPerNauticalMile(double feetPerNauticalMile) {
        return new AirGradient(TERM.si(feetPerNauticalMile, UnitScale.FOOT_PER_NAUTICAL_MILE));
    }

    /**
     * Returns a gradient through the air given in any unit of gradient.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static AirGradient of(double value, Unit<Gradient> unit) {
        return new AirGradient(Edge.si(TERM, value, unit));
    }

    /**
     * Returns a gradient through the air given as a quantity.
     *
     * @param quantity the quantity, in any unit of gradient
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static AirGradient of(Quantity<Gradient> quantity) {
        return new AirGradient(Edge.si(TERM, quantity));
    }

    /**
     * Returns the gradient through the air that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "3.3 %"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static AirGradient parse(String text) {
        return new AirGradient(TERM.parse(text));
    }

    @Override
    protected Term term() {
        return TERM;
    }
}
