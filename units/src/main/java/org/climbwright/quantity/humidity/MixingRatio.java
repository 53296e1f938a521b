package org.climbwright.quantity.humidity;

import javax.measure.Quantity;
import javax.measure.Unit;
import org.climbwright.quantity.Scalar;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * Mass of water vapour per mass of the dry air it is mixed with: 14.9 g/kg.
 *
 * <p>Not the specific humidity, which is per mass of dry air and vapour together and a little less;
 * not a {@link RelativeHumidity}, which is no ratio of masses.
 *
 * <p>Its quantity type in javax.measure has the same name and lies in another package: {@link
 * org.climbwright.unit.MixingRatio}.
 */
public final class MixingRatio extends Scalar<MixingRatio> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM =
            Term.of("mixing ratio", UnitScale.KILOGRAM_PER_KILOGRAM, UnitScale.GRAM_PER_KILOGRAM)
                    .from(0.0);

    private MixingRatio(double si) {
        super(si);
    }

    /**
     * Returns a mixing ratio given in kilograms per kilogram.
     *
     * @param kilogramsPerKilogram the value [kg/kg], 0 or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be 0 or more, finite
     */
    public static MixingRatio ofKilogramsPerKilogram(double kilogramsPerKilogram) {
        return new MixingRatio(TERM.inSi(kilogramsPerKilogram));
    }

    /**
     * Returns a mixing ratio given in grams per kilogram.
     *
     * @param gramsPerKilogram the value [g/kg], 0 or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be 0 or more, finite
     */
    public static MixingRatio ofGramsPerKilogram(double gramsPerKilogram) {
        return new MixingRatio(TERM.si(gramsPerKilogram, UnitScale.GRAM_PER_KILOGRAM));
    }

    /**
     * Returns a mixing ratio given in any unit of mixing ratio.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static MixingRatio of(double value, Unit<org.climbwright.unit.MixingRatio> unit) {
        return new MixingRatio(Edge.si(TERM, value, unit));
    }

    /**
     * Returns a mixing ratio given as a quantity.
     *
     * @param quantity the quantity, in any unit of mixing ratio
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static MixingRatio of(Quantity<org.climbwright.unit.MixingRatio> quantity) {
        return new MixingRatio(Edge.si(TERM, quantity));
    }

    /**
     * Returns the mixing ratio that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "14.9 g/kg"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static MixingRatio parse(String text) {
        return new MixingRatio(TERM.parse(text));
    }

    /**
     * Returns this value in kilograms per kilogram.
     *
     * @return the number [kg/kg], as it came in
     */
    public double inKilogramsPerKilogram() {
        return si();
    }

    /**
     * Returns this value in grams per kilogram.
     *
     * @return the number [g/kg], as it came in
     */
    public double inGramsPerKilogram() {
        return UnitScale.GRAM_PER_KILOGRAM.fromSi(si());
    }

    /**
     * Returns this value as a number of any unit of its kind.
     *
     * @param unit the unit wanted
     * @return the number of that unit, as it came in
     * @throws IllegalArgumentException if the unit does not fit
     */
    public double valueIn(Unit<org.climbwright.unit.MixingRatio> unit) {
        return Edge.valueIn(term(), si(), unit);
    }

    /**
     * Returns this value as a quantity, the way out to other libraries.
     *
     * @param unit the unit wanted
     * @return a new quantity in that unit
     * @throws IllegalArgumentException if the unit does not fit
     */
    public Quantity<org.climbwright.unit.MixingRatio> toQuantity(
            Unit<org.climbwright.unit.MixingRatio> unit) {
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
    public boolean isCloseTo(MixingRatio other, MixingRatio tolerance) {
        return isWithin(other, tolerance.si());
    }
}
