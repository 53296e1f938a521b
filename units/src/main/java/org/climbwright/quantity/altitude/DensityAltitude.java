package org.climbwright.quantity.altitude;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * The altitude at which the standard atmosphere has the density that the air has here.
 *
 * <p>A measure of performance, not of position: no obstacle and no level is at a density altitude.
 */
public final class DensityAltitude extends VerticalPosition<DensityAltitude> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM = Term.of("density altitude", UnitScale.METRE, UnitScale.FOOT);

    private DensityAltitude(double si) {
        super(si);
    }

    /**
     * Returns a density altitude given in metres.
     *
     * @param metres the value [m], any finite number
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number
     */
    public static DensityAltitude ofMetres(double metres) {
        return new DensityAltitude(TERM.inSi(metres));
    }

    /**
     * Returns a density altitude given in feet.
     *
     * @param feet the value [ft], any finite number
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number
     */
    public static DensityAltitude ofFeet(double feet) {
        return new DensityAltitude(TERM.si(feet, UnitScale.FOOT));
    }

    /**
     * Returns a density altitude given in any unit of length.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static DensityAltitude of(double value, Unit<Length> unit) {
        return new DensityAltitude(Edge.si(TERM, value, unit));
    }

    /**
     * Returns a density altitude given as a quantity.
     *
     * @param quantity the quantity, in any unit of length
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static DensityAltitude of(Quantity<Length> quantity) {
        return new DensityAltitude(Edge.si(TERM, quantity));
    }

    /**
     * Returns the density altitude that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "35000 ft"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static DensityAltitude parse(String text) {
        return new DensityAltitude(TERM.parse(text));
    }

    @Override
    protected Term term() {
        return TERM;
    }

    @Override
    DensityAltitude ofSi(double metres) {
        return ofMetres(metres);
    }
}
