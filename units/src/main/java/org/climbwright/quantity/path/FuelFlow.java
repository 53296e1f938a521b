package org.climbwright.quantity.path;

import javax.measure.Quantity;
import javax.measure.Unit;
import org.climbwright.quantity.Scalar;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.MassFlow;
import org.climbwright.unit.UnitScale;

/** Mass of fuel burnt per time, by all engines together. */
public final class FuelFlow extends Scalar<FuelFlow> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM =
            Term.of("fuel flow", UnitScale.KILOGRAM_PER_SECOND, UnitScale.KILOGRAM_PER_HOUR)
                    .from(0.0);

    private FuelFlow(double si) {
        super(si);
    }

    /**
     * Returns a fuel flow given in kilograms per second.
     *
     * @param kilogramsPerSecond the value [kg/s], 0 or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be 0 or more, finite
     */
    public static FuelFlow ofKilogramsPerSecond(double kilogramsPerSecond) {
        return new FuelFlow(TERM.inSi(kilogramsPerSecond));
    }

    /**
     * Returns a fuel flow given in kilograms per hour.
     *
     * @param kilogramsPerHour the value [kg/h], 0 or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be 0 or more, finite
     */
    public static FuelFlow ofKilogramsPerHour(double kilogramsPerHour) {
        return new FuelFlow(TERM.si(kilogramsPerHour, UnitScale.KILOGRAM_PER_HOUR));
    }

    /**
     * Returns a fuel flow given in any unit of mass flow.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static FuelFlow of(double value, Unit<MassFlow> unit) {
        return new FuelFlow(Edge.si(TERM, value, unit));
    }

    /**
     * Returns a fuel flow given as a quantity.
     *
     * @param quantity the quantity, in any unit of mass flow
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static FuelFlow of(Quantity<MassFlow> quantity) {
        return new FuelFlow(Edge.si(TERM, quantity));
    }

    /**
     * Returns the fuel flow that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "2400 kg/h"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static FuelFlow parse(String text) {
        return new FuelFlow(TERM.parse(text));
    }

    /**
     * Returns this value in kilograms per second.
     *
     * @return the number [kg/s], as it came in
     */
    public double inKilogramsPerSecond() {
        return si();
    }

    /**
     * Returns this value in kilograms per hour.
     *
     * @return the number [kg/h], as it came in
     */
    public double inKilogramsPerHour() {
        return UnitScale.KILOGRAM_PER_HOUR.fromSi(si());
    }

    /**
     * Returns this value as a number of any unit of its kind.
     *
     * @param unit the unit wanted
     * @return the number of that unit, as it came in
     * @throws IllegalArgumentException if the unit does not fit
     */
    public double valueIn(Unit<MassFlow> unit) {
        return Edge.valueIn(term(), si(), unit);
    }

    /**
     * Returns this value as a quantity, the way out to other libraries.
     *
     * @param unit the unit wanted
     * @return a new quantity in that unit
     * @throws IllegalArgumentException if the unit does not fit
     */
    public Quantity<MassFlow> toQuantity(Unit<MassFlow> unit) {
        return Edge.quantity(term(), si(), unit);
    }

    @Override
    protected Term term() {
        return TERM;
    }

    /**
     * Tells whether another value lies within a tolerance of this one.
     *
     * @param other the other value
     * @param tolerance the largest difference allowed, as a value of the same kind
     * @return true if the two differ by the tolerance or less
     */
    public boolean isCloseTo(FuelFlow other, FuelFlow tolerance) {
        return isWithin(other, tolerance.si());
    }
}
