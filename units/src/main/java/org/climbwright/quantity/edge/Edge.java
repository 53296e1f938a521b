package org.climbwright.quantity.edge;

import java.util.Objects;
import javax.measure.IncommensurableException;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import org.climbwright.quantity.Term;
import org.climbwright.unit.AviationUnits;
import org.climbwright.unit.QuantityKind;
import org.climbwright.unit.UnitScale;
import org.jspecify.annotations.Nullable;
import tech.units.indriya.quantity.Quantities;

/**
 * The only place where a value meets javax.measure.
 *
 * <p>A class of its own, so that the value types can name units in their signatures and still run
 * where javax.measure is never loaded. A unit of {@link AviationUnits} is recognised by identity
 * and costs a multiplication; any other goes through its general converter.
 */
public final class Edge {
    private Edge() {}

    /**
     * Returns a number with a unit in SI.
     *
     * @param term what the number is
     * @param value the number
     * @param unit its unit
     * @return the number in SI
     * @throws IllegalArgumentException if the unit does not fit the term, or the value cannot be
     */
    public static double si(Term term, double value, Unit<?> unit) {
        UnitScale scale = AviationUnits.scaleOf(Objects.requireNonNull(unit, "unit"), term.kind());
        if (scale != null) {
            return term.si(value, scale);
        }
        return term.check(converter(term, unit, siUnit(term.kind())).convert(value));
    }

    /**
     * Returns a number in SI as a number of a unit.
     *
     * @param term what the number is
     * @param si the number in SI
     * @param unit the unit wanted
     * @return the number of that unit
     * @throws IllegalArgumentException if the unit does not fit the term
     */
    public static double valueIn(Term term, double si, Unit<?> unit) {
        UnitScale scale = AviationUnits.scaleOf(Objects.requireNonNull(unit, "unit"), term.kind());
        if (scale != null) {
            return scale.fromSi(si);
        }
        return converter(term, siUnit(term.kind()), unit).convert(si);
    }

    /**
     * Returns a quantity in SI.
     *
     * @param term what the quantity is
     * @param quantity the quantity
     * @return the number in SI
     * @throws IllegalArgumentException if the unit does not fit the term, the value cannot be, or a
     *     point on a temperature scale is handed in for an interval or the other way round
     */
    public static double si(Term term, Quantity<?> quantity) {
        Unit<?> unit = quantity.getUnit();
        if (isShifted(unit, term.kind())) {
            boolean interval = term.kind() == QuantityKind.TEMPERATURE_DIFFERENCE;
            boolean relative = quantity.getScale() == Quantity.Scale.RELATIVE;
            if (interval != relative) {
                throw new IllegalArgumentException(
                        String.format(
                                "%s must be %s scale, but %s %s is %s scale: in %s the two differ",
                                term.name(),
                                interval ? "an interval on a RELATIVE" : "a point on an ABSOLUTE",
                                quantity.getValue(),
                                unit,
                                relative ? "an interval on a RELATIVE" : "a point on an ABSOLUTE",
                                unit));
            }
        }
        return si(term, quantity.getValue().doubleValue(), unit);
    }

    /**
     * Returns a number in SI as a quantity.
     *
     * @param <Q> the quantity type of the unit
     * @param term what the number is
     * @param si the number in SI
     * @param unit the unit wanted
     * @return the quantity; an interval is on a RELATIVE scale
     * @throws IllegalArgumentException if the unit does not fit the term
     */
    public static <Q extends Quantity<Q>> Quantity<Q> quantity(Term term, double si, Unit<Q> unit) {
        double value = valueIn(term, si, unit);
        return term.kind() == QuantityKind.TEMPERATURE_DIFFERENCE
                ? Quantities.getQuantity(value, unit, Quantity.Scale.RELATIVE)
                : Quantities.getQuantity(value, unit);
    }

    private static boolean isShifted(Unit<?> unit, QuantityKind kind) {
        @Nullable UnitScale scale = AviationUnits.scaleOf(unit, QuantityKind.TEMPERATURE);
        if (scale != null) {
            return scale.offset() != 0.0;
        }
        // No other unit of ours is shifted; to ask the unit itself costs a microsecond and garbage.
        return AviationUnits.scaleOf(unit, kind) == null
                && !unit.getSystemUnit().equals(unit)
                && !isLinear(unit);
    }

    private static boolean isLinear(Unit<?> unit) {
        try {
            return unit.getConverterToAny(unit.getSystemUnit()).isLinear();
        } catch (IncommensurableException impossible) {
            throw new IllegalArgumentException(unit + " has no system unit", impossible);
        }
    }

    private static Unit<?> siUnit(QuantityKind kind) {
        for (UnitScale scale : UnitScale.values()) {
            if (scale.kind() == kind) {
                return AviationUnits.of(scale);
            }
        }
        throw new IllegalArgumentException("no unit of " + kind.term());
    }

    private static UnitConverter converter(Term term, Unit<?> from, Unit<?> to) {
        Unit<?> foreign = AviationUnits.scaleOf(from, term.kind()) == null ? from : to;
        switch (term.kind()) {
            case GRADIENT, RELATIVE_HUMIDITY, MIXING_RATIO ->
                    // javax.measure converts any ratio into any other; here no ratio is another.
                    throw new IllegalArgumentException(
                            term.name() + " takes only its own units, but was in " + foreign);
            case TEMPERATURE_DIFFERENCE -> {
                if (isShifted(foreign, term.kind())) {
                    throw new IllegalArgumentException(
                            term.name() + " takes K, °C or °F, but was in " + foreign);
                }
            }
            case ANGLE -> {
                // A radian is a plain ratio to javax.measure, which makes 0.05 rad of 5 %.
                if (!foreign.getSystemUnit().equals(AviationUnits.RADIAN)) {
                    throw new IllegalArgumentException(
                            term.name() + " takes a unit of angle, but was in " + foreign);
                }
            }
            default -> {}
        }
        try {
            return from.getConverterToAny(to);
        } catch (IncommensurableException wrongDimension) {
            throw new IllegalArgumentException(
                    term.name()
                            + " takes a unit of "
                            + term.kind().term()
                            + ", but was in "
                            + foreign,
                    wrongDimension);
        }
    }
}
