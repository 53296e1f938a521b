package org.climbwright.quantity;

import java.util.Objects;
import org.climbwright.unit.QuantityKind;
import org.climbwright.unit.UnitScale;
import org.climbwright.unit.UnitText;
import org.jspecify.annotations.Nullable;

/**
 * What a value is called, the units it is shown in, and the numbers that it can be.
 *
 * <p>Knows nothing of javax.measure, so that a value made from a plain number does not load it. All
 * text is built without string concatenation, whose first use costs a start-up of 10 ms and more.
 *
 * <p>A record, since of these a just-in-time compiler knows that a bound never changes.
 *
 * @param name the field's word for the value
 * @param prefix what stands before a plain number in text; empty where there is a unit
 * @param si the SI unit of its kind; null for a plain number
 * @param trade the unit the trade uses; null for a plain number
 * @param lowest the lowest number that it can be, in SI
 * @param highest the highest number that it can be, in SI
 */
public record Term(
        String name,
        String prefix,
        @Nullable UnitScale si,
        @Nullable UnitScale trade,
        double lowest,
        double highest) {
    /**
     * Returns the term of a value with a unit, which may be any finite number.
     *
     * @param name the field's word for the value
     * @param si the SI unit of its kind
     * @param trade the unit the trade uses
     * @return the term
     */
    public static Term of(String name, UnitScale si, UnitScale trade) {
        return new Term(name, "", si, trade, -Double.MAX_VALUE, Double.MAX_VALUE);
    }

    /**
     * Returns the term of a plain number, which may be any finite one.
     *
     * @param name the field's word for the number
     * @param prefix what stands before it in text, instead of a unit behind it
     * @return the term
     */
    public static Term plain(String name, String prefix) {
        return new Term(name, prefix, null, null, -Double.MAX_VALUE, Double.MAX_VALUE);
    }

    /**
     * Returns this term for a value that cannot be below a bound.
     *
     * @param lowestSi the bound in SI, allowed itself
     * @return a copy with that bound
     */
    public Term from(double lowestSi) {
        return new Term(name, prefix, si, trade, lowestSi, highest);
    }

    /**
     * Returns this term for a value that cannot be above a bound.
     *
     * @param highestSi the bound in SI, allowed itself
     * @return a copy with that bound
     */
    public Term upTo(double highestSi) {
        return new Term(name, prefix, si, trade, lowest, highestSi);
    }

    /**
     * Returns what kind of quantity the value is.
     *
     * @return the kind; a plain number has none
     */
    public QuantityKind kind() {
        return Objects.requireNonNull(si, name).kind();
    }

    /**
     * Returns a number of the SI unit that the value can be.
     *
     * @param value the number in SI
     * @return the same; 0.0 for -0.0, so that equal values are equal numbers
     * @throws IllegalArgumentException if the value cannot be
     */
    public double inSi(double value) {
        return check(value) + 0.0;
    }

    /**
     * Returns a number that the value can be, as it is.
     *
     * @param value the number in SI
     * @return the same
     * @throws IllegalArgumentException if the value cannot be
     */
    public double check(double value) {
        if (!holds(value)) {
            throw new IllegalArgumentException(refusal(value, si));
        }
        return value;
    }

    /**
     * Returns a number with a unit in SI.
     *
     * @param value the number
     * @param scale its unit
     * @return the number in SI
     * @throws IllegalArgumentException if the value cannot be, told in the unit it came with
     */
    public double si(double value, UnitScale scale) {
        double inSi = scale.toSi(value);
        if (!holds(inSi)) {
            throw new IllegalArgumentException(refusal(value, scale));
        }
        return inSi;
    }

    private boolean holds(double value) {
        return value >= lowest && value <= highest; // false for NaN
    }

    /**
     * Returns the number in SI that a text stands for.
     *
     * @param text a number and a unit, or the prefix and a number
     * @return the number in SI
     * @throws org.climbwright.unit.UnitTextException if it is not of that form
     * @throws IllegalArgumentException if the value cannot be
     */
    public double parse(String text) {
        if (si == null) {
            return check(UnitText.parsePrefixed(name, prefix, text));
        }
        double value = UnitText.parse(name, text, si.kind());
        if (!holds(value)) {
            UnitScale given = UnitText.unit(name, text, si.kind());
            throw new IllegalArgumentException(refusal(given.fromSi(value), given));
        }
        return value;
    }

    /**
     * Returns the strict text of a number, which {@link #parse} reads.
     *
     * @param value the number in SI
     * @return the text in the trade's unit, or in SI where only that reads back as the same
     */
    public String text(double value) {
        return trade == null
                ? prefix.concat(UnitText.number(value))
                : UnitText.format(value, trade);
    }

    /**
     * Returns a number for reading, in SI and in the trade's unit.
     *
     * @param value the number in SI
     * @return a text such as {@code "10668.0 m (35000.0 ft)"}
     */
    public String describe(double value) {
        StringBuilder text = new StringBuilder(40).append(prefix).append(value);
        if (si == null || trade == null) {
            return text.toString();
        }
        text.append(behind(si));
        if (trade != si) {
            text.append(" (").append(trade.fromSi(value)).append(behind(trade)).append(')');
        }
        return text.toString();
    }

    private String refusal(double value, @Nullable UnitScale scale) {
        String unit = behind(scale);
        StringBuilder text = new StringBuilder(120).append(name).append(" must be ");
        boolean floor = lowest > -Double.MAX_VALUE;
        boolean ceiling = highest < Double.MAX_VALUE;
        if (floor && ceiling) {
            text.append("from ").append(in(scale, lowest));
            text.append(" to ").append(in(scale, highest)).append(unit);
        } else {
            text.append("a finite number");
            if (floor) {
                text.append(", at least ").append(in(scale, lowest)).append(unit);
            }
        }
        text.append(", but was ").append(value).append(unit);
        UnitScale meant = unitMeant(value);
        if (meant != null) {
            text.append(": as ").append(meant.label()).append(" it would be ");
            text.append(in(scale, meant.toSi(value))).append(unit).append(", check the unit");
        }
        return text.toString();
    }

    /** The unit in which a refused number could be; null where the number does not tell it. */
    private @Nullable UnitScale unitMeant(double refused) {
        // Only a range that ends above zero keeps the units of its kind apart. Others would have
        // a direction of 361 degrees meant in minutes of arc.
        if (si != null && lowest > 0.0 && highest < Double.MAX_VALUE) {
            for (UnitScale scale : UnitScale.values()) {
                if (scale.kind() == si.kind() && holds(scale.toSi(refused))) {
                    return scale;
                }
            }
        }
        return null;
    }

    /** What stands behind a number for reading: a space and the label of its unit. */
    private static String behind(@Nullable UnitScale scale) {
        // The unit of a plain ratio is called 1: "0.63 1" would read as two numbers.
        return scale == null || scale == UnitScale.RELATIVE_HUMIDITY_RATIO
                ? ""
                : " ".concat(scale.label());
    }

    private static double in(@Nullable UnitScale scale, double value) {
        return scale == null ? value : scale.fromSi(value);
    }
}
