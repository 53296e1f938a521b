package org.climbwright.unit;

import static org.climbwright.unit.QuantityKind.ANGLE;
import static org.climbwright.unit.QuantityKind.DENSITY;
import static org.climbwright.unit.QuantityKind.FORCE;
import static org.climbwright.unit.QuantityKind.GRADIENT;
import static org.climbwright.unit.QuantityKind.LENGTH;
import static org.climbwright.unit.QuantityKind.MASS;
import static org.climbwright.unit.QuantityKind.MASS_FLOW;
import static org.climbwright.unit.QuantityKind.PRESSURE;
import static org.climbwright.unit.QuantityKind.PRESSURE_RATE;
import static org.climbwright.unit.QuantityKind.SPEED;
import static org.climbwright.unit.QuantityKind.TEMPERATURE;
import static org.climbwright.unit.QuantityKind.TEMPERATURE_DIFFERENCE;
import static org.climbwright.unit.QuantityKind.TIME;

/**
 * The units of the trade: label, kind, and the exact factor to SI, each written once.
 *
 * <p>This is the one table of conversion factors. The units on javax.measure in {@link
 * AviationUnits}, the strict text form in {@link UnitText} and the value types all read it, and it
 * needs none of them: no class of javax.measure is loaded by its use.
 *
 * <p>The first unit of a kind is its SI unit. A number enters by {@link #toSi} and leaves by {@link
 * #fromSi}, which undoes it: a whole foot, knot or foot per minute and a hundredth of a degree come
 * back as they went in.
 *
 * @source The factors are exact by definition: international yard and pound agreement of 1959 (foot
 *     0.3048 m, pound 0.45359237 kg); the international nautical mile is 1852 m; the conventional
 *     inch of mercury is 3386.388640341 Pa, its millimetre 133.322387415 Pa, the standard gravity
 *     9.80665 m/s² (all as in the tables of GNU units 2.22).
 */
public enum UnitScale {
    /** Metre, m. */
    METRE("m", LENGTH, 1.0),
    /** International foot, ft: 0.3048 m. */
    FOOT("ft", LENGTH, 0.3048),
    /** International nautical mile, NM: 1852 m. */
    NAUTICAL_MILE("NM", LENGTH, 1852.0),
    /** Kilometre, km. */
    KILOMETRE("km", LENGTH, 1000.0),
    /** Micrometre, µm. */
    MICROMETRE("µm", LENGTH, 1e-6),
    /** Inch, in: 0.0254 m. */
    INCH("in", LENGTH, 0.0254),

    /** Metre per second, m/s. */
    METRE_PER_SECOND("m/s", SPEED, 1.0),
    /** Knot, kn: 1852 m in 3600 s. */
    KNOT("kn", SPEED, 1852.0 / 3600.0),
    /** Foot per minute, ft/min: 0.3048 m in 60 s. */
    FOOT_PER_MINUTE("ft/min", SPEED, 0.3048 / 60.0),
    /** Foot per second, ft/s. */
    FOOT_PER_SECOND("ft/s", SPEED, 0.3048),
    /** Kilometre per hour, km/h. */
    KILOMETRE_PER_HOUR("km/h", SPEED, 1000.0 / 3600.0),

    /** Pascal, Pa. */
    PASCAL("Pa", PRESSURE, 1.0),
    /** Hectopascal, hPa. */
    HECTOPASCAL("hPa", PRESSURE, 100.0),
    /** Kilopascal, kPa. */
    KILOPASCAL("kPa", PRESSURE, 1000.0),
    /** Conventional inch of mercury, inHg: 3386.388640341 Pa. */
    INCH_OF_MERCURY("inHg", PRESSURE, 3386.388640341),
    /** Conventional millimetre of mercury, mmHg: 133.322387415 Pa. */
    MILLIMETRE_OF_MERCURY("mmHg", PRESSURE, 133.322387415),
    /** Pound-force per square inch, psi: 4.4482216152605 N on 0.00064516 m². */
    // Both as whole numbers, which a double holds exactly: the decimals would cost the last bit.
    POUND_PER_SQUARE_INCH("psi", PRESSURE, 44_482_216_152_605.0 / 6_451_600_000.0),

    /** Pascal per second, Pa/s. */
    PASCAL_PER_SECOND("Pa/s", PRESSURE_RATE, 1.0),
    /** Hectopascal per minute, hPa/min. */
    HECTOPASCAL_PER_MINUTE("hPa/min", PRESSURE_RATE, 100.0 / 60.0),
    /** Pound-force per square inch and minute, psi/min. */
    POUND_PER_SQUARE_INCH_PER_MINUTE(
            "psi/min", PRESSURE_RATE, 44_482_216_152_605.0 / (6_451_600_000.0 * 60.0)),

    /** Kelvin, K, as a temperature. */
    KELVIN("K", TEMPERATURE, 1.0),
    /** Degree Celsius, °C, as a temperature. */
    CELSIUS("°C", TEMPERATURE, 1.0, 273.15),
    /** Degree Fahrenheit, °F, as a temperature. */
    FAHRENHEIT("°F", TEMPERATURE, 5.0 / 9.0, 459.67),

    /** Kelvin, K, as an interval. */
    KELVIN_DIFFERENCE("K", TEMPERATURE_DIFFERENCE, 1.0),
    /** Degree Celsius, °C, as an interval. */
    CELSIUS_DIFFERENCE("°C", TEMPERATURE_DIFFERENCE, 1.0),
    /** Degree Fahrenheit, °F, as an interval. */
    FAHRENHEIT_DIFFERENCE("°F", TEMPERATURE_DIFFERENCE, 5.0 / 9.0),

    /** Kilogram, kg. */
    KILOGRAM("kg", MASS, 1.0),
    /** Tonne, t. */
    TONNE("t", MASS, 1000.0),
    /** Pound, lb: 0.45359237 kg. */
    POUND("lb", MASS, 0.45359237),

    /** Kilogram per second, kg/s. */
    KILOGRAM_PER_SECOND("kg/s", MASS_FLOW, 1.0),
    /** Kilogram per hour, kg/h. */
    KILOGRAM_PER_HOUR("kg/h", MASS_FLOW, 1.0 / 3600.0),
    /** Pound per hour, lb/h. */
    POUND_PER_HOUR("lb/h", MASS_FLOW, 0.45359237 / 3600.0),

    /** Newton, N. */
    NEWTON("N", FORCE, 1.0),
    /** Kilonewton, kN. */
    KILONEWTON("kN", FORCE, 1000.0),
    /** Pound-force, lbf. */
    POUND_FORCE("lbf", FORCE, 0.45359237 * 9.80665),

    /** Second, s. */
    SECOND("s", TIME, 1.0),
    /** Minute, min. */
    MINUTE("min", TIME, 60.0),
    /** Hour, h. */
    HOUR("h", TIME, 3600.0),

    /** Radian, rad. */
    RADIAN("rad", ANGLE, 1.0),
    /** Degree of arc, deg. */
    DEGREE("deg", ANGLE, Math.PI / 180.0),
    /** Minute of arc, arcmin. */
    ARC_MINUTE("arcmin", ANGLE, Math.PI / 10800.0),

    /** Metre of height per metre of distance, m/m. */
    METRE_PER_METRE("m/m", GRADIENT, 1.0),
    /** Percent gradient, %. */
    PERCENT_GRADIENT("%", GRADIENT, 0.01),
    /** Foot of height per nautical mile of distance, ft/NM. */
    FOOT_PER_NAUTICAL_MILE("ft/NM", GRADIENT, 0.3048 / 1852.0),

    /** Kilogram per cubic metre, kg/m³. */
    KILOGRAM_PER_CUBIC_METRE("kg/m³", DENSITY, 1.0),
    /** Gram per cubic metre, g/m³. */
    GRAM_PER_CUBIC_METRE("g/m³", DENSITY, 0.001),

    /** Pascal second, Pa·s. */
    PASCAL_SECOND("Pa·s", QuantityKind.DYNAMIC_VISCOSITY, 1.0),

    /** Square metre per second, m²/s. */
    SQUARE_METRE_PER_SECOND("m²/s", QuantityKind.KINEMATIC_VISCOSITY, 1.0),

    /** Watt per metre and kelvin, W/(m·K). */
    WATT_PER_METRE_KELVIN("W/(m·K)", QuantityKind.THERMAL_CONDUCTIVITY, 1.0),

    /** Relative humidity as a ratio, 1 at saturation. */
    RELATIVE_HUMIDITY_RATIO("1", QuantityKind.RELATIVE_HUMIDITY, 1.0),
    /** Relative humidity in percent, %. */
    PERCENT_RELATIVE_HUMIDITY("%", QuantityKind.RELATIVE_HUMIDITY, 0.01),

    /** Kilogram of vapour per kilogram of dry air, kg/kg. */
    KILOGRAM_PER_KILOGRAM("kg/kg", QuantityKind.MIXING_RATIO, 1.0),
    /** Gram of vapour per kilogram of dry air, g/kg. */
    GRAM_PER_KILOGRAM("g/kg", QuantityKind.MIXING_RATIO, 0.001);

    private final String label;
    private final QuantityKind kind;
    private final double factor;
    private final double offset;

    UnitScale(String label, QuantityKind kind, double factor) {
        this(label, kind, factor, 0.0);
    }

    UnitScale(String label, QuantityKind kind, double factor, double offset) {
        this.label = label;
        this.kind = kind;
        this.factor = factor;
        this.offset = offset;
    }

    /**
     * Returns the label that stands behind a number in text.
     *
     * @return the label, such as {@code "ft/min"}
     */
    public String label() {
        return label;
    }

    /**
     * Returns what a number in this unit is a number of.
     *
     * @return the kind
     */
    public QuantityKind kind() {
        return kind;
    }

    /**
     * Returns the size of one of this unit in SI.
     *
     * @return the factor, exact to the last bit of a double
     */
    public double factor() {
        return factor;
    }

    /**
     * Returns how far the zero of SI lies below that of this unit, in this unit: 273.15 for °C,
     * 459.67 for °F, 0 for all but temperatures.
     *
     * @return the offset, a number of this unit
     */
    public double offset() {
        return offset;
    }

    /**
     * Returns a number of this unit in SI.
     *
     * @param value a number of this unit; NaN and infinities go through
     * @return the same in SI
     * @accuracy correctly rounded multiplication and addition, at most 1 ulp
     */
    public double toSi(double value) {
        return (value + offset) * factor;
    }

    /**
     * Returns an SI value as a number of this unit, as it came in by {@link #toSi}.
     *
     * <p>A plain division loses whole feet: 31,000 ft would come back as 31000.000000000004. So the
     * quotient is rounded to nine decimals, and that is the answer if it makes the same SI value.
     *
     * @param si a value in SI; NaN and infinities go through
     * @return the same as a number of this unit
     * @accuracy exact for every number of at most nine decimals below a million that came in by
     *     this unit; else the rounded quotient
     */
    public double fromSi(double si) {
        if (factor == 1.0 && offset == 0.0) {
            return si; // what the rest would come to, without its divisions
        }
        double quotient = si / factor - offset;
        double rounded = Math.rint(quotient * 1e9) / 1e9;
        return toSi(rounded) == si ? rounded : quotient;
    }
}
