package org.climbwright.unit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.function.AddConverter;
import tech.units.indriya.function.MultiplyConverter;
import tech.units.indriya.unit.AlternateUnit;
import tech.units.indriya.unit.ProductUnit;
import tech.units.indriya.unit.TransformedUnit;
import tech.units.indriya.unit.Units;

/**
 * The units of the trade on javax.measure, made from the factors of {@link UnitScale}.
 *
 * <p>A value type recognises these objects by identity and then needs one multiplication. A unit
 * that is only equal to one of them, such as {@code METRE.divide(SECOND)}, is right too, and some
 * hundred times slower.
 *
 * <pre>{@code
 * PressureAltitude.of(2.0, AviationUnits.NAUTICAL_MILE).inFeet()   // 12152.230971128609
 * }</pre>
 */
public final class AviationUnits {
    private static final Map<UnitScale, Unit<?>> BY_SCALE = new EnumMap<>(UnitScale.class);
    private static final Map<QuantityKind, List<Known>> BY_KIND = new EnumMap<>(QuantityKind.class);

    /** Metre. */
    public static final Unit<Length> METRE = si(UnitScale.METRE, Units.METRE);

    /** International foot. */
    public static final Unit<Length> FOOT = derived(UnitScale.FOOT, METRE);

    /** International nautical mile. */
    public static final Unit<Length> NAUTICAL_MILE = derived(UnitScale.NAUTICAL_MILE, METRE);

    /** Kilometre. */
    public static final Unit<Length> KILOMETRE = derived(UnitScale.KILOMETRE, METRE);

    /** Micrometre. */
    public static final Unit<Length> MICROMETRE = derived(UnitScale.MICROMETRE, METRE);

    /** Inch. */
    public static final Unit<Length> INCH = derived(UnitScale.INCH, METRE);

    /** Metre per second. */
    public static final Unit<Speed> METRE_PER_SECOND =
            si(UnitScale.METRE_PER_SECOND, Units.METRE_PER_SECOND);

    /** Knot. */
    public static final Unit<Speed> KNOT = derived(UnitScale.KNOT, METRE_PER_SECOND);

    /** Foot per minute. */
    public static final Unit<Speed> FOOT_PER_MINUTE =
            derived(UnitScale.FOOT_PER_MINUTE, METRE_PER_SECOND);

    /** Foot per second. */
    public static final Unit<Speed> FOOT_PER_SECOND =
            derived(UnitScale.FOOT_PER_SECOND, METRE_PER_SECOND);

    /** Kilometre per hour. */
    public static final Unit<Speed> KILOMETRE_PER_HOUR =
            derived(UnitScale.KILOMETRE_PER_HOUR, METRE_PER_SECOND);

    /** Pascal. */
    public static final Unit<Pressure> PASCAL = si(UnitScale.PASCAL, Units.PASCAL);

    /** Hectopascal. */
    public static final Unit<Pressure> HECTOPASCAL = derived(UnitScale.HECTOPASCAL, PASCAL);

    /** Kilopascal. */
    public static final Unit<Pressure> KILOPASCAL = derived(UnitScale.KILOPASCAL, PASCAL);

    /** Conventional inch of mercury. */
    public static final Unit<Pressure> INCH_OF_MERCURY = derived(UnitScale.INCH_OF_MERCURY, PASCAL);

    /** Conventional millimetre of mercury. */
    public static final Unit<Pressure> MILLIMETRE_OF_MERCURY =
            derived(UnitScale.MILLIMETRE_OF_MERCURY, PASCAL);

    /** Pound-force per square inch. */
    public static final Unit<Pressure> POUND_PER_SQUARE_INCH =
            derived(UnitScale.POUND_PER_SQUARE_INCH, PASCAL);

    /** Pascal per second. */
    public static final Unit<PressureRate> PASCAL_PER_SECOND =
            product(UnitScale.PASCAL_PER_SECOND, Units.PASCAL.divide(Units.SECOND));

    /** Hectopascal per minute. */
    public static final Unit<PressureRate> HECTOPASCAL_PER_MINUTE =
            derived(UnitScale.HECTOPASCAL_PER_MINUTE, PASCAL_PER_SECOND);

    /** Pound-force per square inch and minute. */
    public static final Unit<PressureRate> POUND_PER_SQUARE_INCH_PER_MINUTE =
            derived(UnitScale.POUND_PER_SQUARE_INCH_PER_MINUTE, PASCAL_PER_SECOND);

    /** Kelvin. */
    public static final Unit<Temperature> KELVIN = si(UnitScale.KELVIN, Units.KELVIN);

    /** Degree Celsius. */
    public static final Unit<Temperature> CELSIUS = si(UnitScale.CELSIUS, Units.CELSIUS);

    /** Degree Fahrenheit. */
    public static final Unit<Temperature> FAHRENHEIT = derived(UnitScale.FAHRENHEIT, KELVIN);

    /** Kilogram. */
    public static final Unit<Mass> KILOGRAM = si(UnitScale.KILOGRAM, Units.KILOGRAM);

    /** Tonne. */
    public static final Unit<Mass> TONNE = derived(UnitScale.TONNE, KILOGRAM);

    /** Pound. */
    public static final Unit<Mass> POUND = derived(UnitScale.POUND, KILOGRAM);

    /** Kilogram per second. */
    public static final Unit<MassFlow> KILOGRAM_PER_SECOND =
            product(UnitScale.KILOGRAM_PER_SECOND, Units.KILOGRAM.divide(Units.SECOND));

    /** Kilogram per hour. */
    public static final Unit<MassFlow> KILOGRAM_PER_HOUR =
            derived(UnitScale.KILOGRAM_PER_HOUR, KILOGRAM_PER_SECOND);

    /** Pound per hour. */
    public static final Unit<MassFlow> POUND_PER_HOUR =
            derived(UnitScale.POUND_PER_HOUR, KILOGRAM_PER_SECOND);

    /** Newton. */
    public static final Unit<Force> NEWTON = si(UnitScale.NEWTON, Units.NEWTON);

    /** Kilonewton. */
    public static final Unit<Force> KILONEWTON = derived(UnitScale.KILONEWTON, NEWTON);

    /** Pound-force. */
    public static final Unit<Force> POUND_FORCE = derived(UnitScale.POUND_FORCE, NEWTON);

    /** Second. */
    public static final Unit<Time> SECOND = si(UnitScale.SECOND, Units.SECOND);

    /** Minute. */
    public static final Unit<Time> MINUTE = si(UnitScale.MINUTE, Units.MINUTE);

    /** Hour. */
    public static final Unit<Time> HOUR = si(UnitScale.HOUR, Units.HOUR);

    /** Radian. */
    public static final Unit<Angle> RADIAN = si(UnitScale.RADIAN, Units.RADIAN);

    /** Degree of arc. */
    public static final Unit<Angle> DEGREE = derived(UnitScale.DEGREE, RADIAN);

    /** Minute of arc. */
    public static final Unit<Angle> ARC_MINUTE = derived(UnitScale.ARC_MINUTE, RADIAN);

    /** Metre of height per metre of distance. */
    public static final Unit<Gradient> METRE_PER_METRE = ratio(UnitScale.METRE_PER_METRE);

    /** Percent gradient. */
    public static final Unit<Gradient> PERCENT_GRADIENT =
            derived(UnitScale.PERCENT_GRADIENT, METRE_PER_METRE);

    /** Foot of height per nautical mile of distance. */
    public static final Unit<Gradient> FOOT_PER_NAUTICAL_MILE =
            derived(UnitScale.FOOT_PER_NAUTICAL_MILE, METRE_PER_METRE);

    /** Kilogram per cubic metre. */
    public static final Unit<Density> KILOGRAM_PER_CUBIC_METRE =
            product(UnitScale.KILOGRAM_PER_CUBIC_METRE, Units.KILOGRAM.divide(Units.METRE.pow(3)));

    /** Gram per cubic metre. */
    public static final Unit<Density> GRAM_PER_CUBIC_METRE =
            derived(UnitScale.GRAM_PER_CUBIC_METRE, KILOGRAM_PER_CUBIC_METRE);

    /** Pascal second. */
    public static final Unit<DynamicViscosity> PASCAL_SECOND =
            product(UnitScale.PASCAL_SECOND, Units.PASCAL.multiply(Units.SECOND));

    /** Square metre per second. */
    public static final Unit<KinematicViscosity> SQUARE_METRE_PER_SECOND =
            product(UnitScale.SQUARE_METRE_PER_SECOND, Units.SQUARE_METRE.divide(Units.SECOND));

    /** Watt per metre and kelvin. */
    public static final Unit<ThermalConductivity> WATT_PER_METRE_KELVIN =
            product(
                    UnitScale.WATT_PER_METRE_KELVIN,
                    Units.WATT.divide(Units.METRE.multiply(Units.KELVIN)));

    /** Relative humidity as a ratio, 1 at saturation. */
    public static final Unit<RelativeHumidity> RELATIVE_HUMIDITY_RATIO =
            ratio(UnitScale.RELATIVE_HUMIDITY_RATIO);

    /** Relative humidity in percent. */
    public static final Unit<RelativeHumidity> PERCENT_RELATIVE_HUMIDITY =
            derived(UnitScale.PERCENT_RELATIVE_HUMIDITY, RELATIVE_HUMIDITY_RATIO);

    /** Kilogram of vapour per kilogram of dry air. */
    public static final Unit<MixingRatio> KILOGRAM_PER_KILOGRAM =
            ratio(UnitScale.KILOGRAM_PER_KILOGRAM);

    /** Gram of vapour per kilogram of dry air. */
    public static final Unit<MixingRatio> GRAM_PER_KILOGRAM =
            derived(UnitScale.GRAM_PER_KILOGRAM, KILOGRAM_PER_KILOGRAM);

    static {
        // An interval has no unit of its own in javax.measure: the temperature units serve both.
        know(UnitScale.KELVIN_DIFFERENCE, KELVIN);
        know(UnitScale.CELSIUS_DIFFERENCE, CELSIUS);
        know(UnitScale.FAHRENHEIT_DIFFERENCE, FAHRENHEIT);
    }

    /** A unit object and the scale it stands for, as a quantity of one kind. */
    private record Known(Unit<?> unit, UnitScale scale) {}

    private AviationUnits() {}

    /**
     * Returns every unit of the trade, the SI units among them.
     *
     * @return an unmodifiable list in the order of {@link UnitScale}
     */
    public static List<Unit<?>> all() {
        return BY_SCALE.values().stream().distinct().toList();
    }

    /**
     * Returns the unit of javax.measure that stands for a scale.
     *
     * @param scale the scale
     * @return the unit; the same object on every call
     */
    public static Unit<?> of(UnitScale scale) {
        return Objects.requireNonNull(BY_SCALE.get(scale), scale::name);
    }

    /**
     * Returns the scale of a unit of this class, recognised by identity.
     *
     * @param unit any unit
     * @param kind what the number is a number of
     * @return the scale, or null when the object is not one of ours for that kind
     */
    public static @Nullable UnitScale scaleOf(Unit<?> unit, QuantityKind kind) {
        List<Known> known = BY_KIND.getOrDefault(kind, Collections.emptyList());
        for (int i = 0; i < known.size(); i++) {
            Known candidate = known.get(i);
            if (candidate.unit() == unit) {
                return candidate.scale();
            }
        }
        return null;
    }

    private static <Q extends Quantity<Q>> Unit<Q> si(UnitScale scale, Unit<Q> unit) {
        return know(scale, unit);
    }

    private static <Q extends Quantity<Q>> Unit<Q> derived(UnitScale scale, Unit<Q> si) {
        UnitConverter factor = MultiplyConverter.of(scale.factor());
        UnitConverter converter =
                scale.offset() == 0.0
                        ? factor
                        : factor.concatenate(new AddConverter(scale.offset()));
        return know(scale, new TransformedUnit<>(scale.label(), si, si, converter));
    }

    private static <Q extends Quantity<Q>> Unit<Q> product(UnitScale scale, Unit<?> product) {
        return know(scale, new ProductUnit<Q>((ProductUnit<?>) product));
    }

    @SuppressWarnings("unchecked") // a plain ratio, renamed: it has no quantity type of its own
    private static <Q extends Quantity<Q>> Unit<Q> ratio(UnitScale scale) {
        Unit<Dimensionless> one = AbstractUnit.ONE;
        return know(scale, new AlternateUnit<Q>((Unit<Q>) (Unit<?>) one, scale.label()));
    }

    private static <Q extends Quantity<Q>> Unit<Q> know(UnitScale scale, Unit<Q> unit) {
        BY_SCALE.put(scale, unit);
        BY_KIND.computeIfAbsent(scale.kind(), kind -> new ArrayList<>())
                .add(new Known(unit, scale));
        return unit;
    }
}
