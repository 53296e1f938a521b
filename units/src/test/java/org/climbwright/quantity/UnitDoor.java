package org.climbwright.quantity;

import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.Unit;

/** The way in and out for a number with a javax.measure unit, and for a quantity. */
public record UnitDoor<T, Q extends Quantity<Q>>(
        NumberWithUnit<T, Q> of,
        Function<Quantity<Q>, T> ofQuantity,
        ValueIn<T, Q> valueIn,
        ToQuantity<T, Q> toQuantity) {

    /** A factory such as {@code PressureAltitude.of(double, Unit)}. */
    public interface NumberWithUnit<T, Q extends Quantity<Q>> {
        T of(double value, Unit<Q> unit);
    }

    /** An accessor such as {@code PressureAltitude.valueIn(Unit)}. */
    public interface ValueIn<T, Q extends Quantity<Q>> {
        double valueIn(T value, Unit<Q> unit);
    }

    /** A way out such as {@code PressureAltitude.toQuantity(Unit)}. */
    public interface ToQuantity<T, Q extends Quantity<Q>> {
        Quantity<Q> toQuantity(T value, Unit<Q> unit);
    }

    /** Forces any unit on the factory, as a caller with raw types can. */
    public T of(double value, Unit<?> unit) {
        return of.of(value, forced(unit));
    }

    /** Forces any unit on the accessor, as a caller with raw types can. */
    public double valueIn(T value, Unit<?> unit) {
        return valueIn.valueIn(value, forced(unit));
    }

    /** Goes out as a quantity and comes in again. */
    public T thereAndBack(T value, Unit<?> unit) {
        return ofQuantity.apply(toQuantity.toQuantity(value, forced(unit)));
    }

    @SuppressWarnings("unchecked") // what a raw type does, on purpose
    private static <Q extends Quantity<Q>> Unit<Q> forced(Unit<?> unit) {
        return (Unit<Q>) unit;
    }
}
