package org.climbwright.quantity.path;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * The angle of the path above the horizontal, negative in a descent.
 *
 * <p>Not a gradient: a gradient is its tangent.
 */
public final class ClimbAngle extends AngleValue<ClimbAngle> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM =
            Term.of("climb angle", UnitScale.RADIAN, UnitScale.DEGREE)
                    .from(-Math.PI / 2.0)
                    .upTo(Math.PI / 2.0);

    private ClimbAngle(double si) {
        super(si);
    }

    /**
     * Returns a climb angle given in radians.
     *
     * @param radians the value [rad], -90 to 90 degrees
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be -90 to 90 degrees
     */
    public static ClimbAngle ofRadians(double radians) {
        return new ClimbAngle(TERM.inSi(radians));
    }

    /**
     * Returns a climb angle given in degrees.
     *
     * @param degrees the value [deg], -90 to 90 degrees
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be -90 to 90 degrees
     */
    public static ClimbAngle ofDegrees(double degrees) {
        return new ClimbAngle(TERM.si(degrees, UnitScale.DEGREE));
    }

    /**
     * Returns a climb angle given in any unit of angle.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static ClimbAngle of(double value, Unit<Angle> unit) {
        return new ClimbAngle(Edge.si(TERM, value, unit));
    }

    /**
     * Returns a climb angle given as a quantity.
     *
     * @param quantity the quantity, in any unit of angle
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static ClimbAngle of(Quantity<Angle> quantity) {
        return new ClimbAngle(Edge.si(TERM, quantity));
    }

    /**
     * Returns the climb angle that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "3 deg"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static ClimbAngle parse(String text) {
        return new ClimbAngle(TERM.parse(text));
    }

    @Override
    protected Term term() {
        return TERM;
    }
}
