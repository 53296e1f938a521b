package org.climbwright.examples.briefing;

import java.util.Locale;
import java.util.Optional;
import org.climbwright.unit.UnitScale;
import org.climbwright.unit.UnitText;

/** The unit that one kind of figure is written in, and how many of its decimals a reader needs. */
public enum FigureUnit {
    /** Feet, whole. */
    FEET(UnitScale.FOOT, 0),
    /** Metres, whole. */
    METRES(UnitScale.METRE, 0),
    /** Knots, whole. */
    KNOTS(UnitScale.KNOT, 0),
    /** Kilometres per hour, whole. */
    KILOMETRES_PER_HOUR(UnitScale.KILOMETRE_PER_HOUR, 0),
    /** Feet per minute, whole. */
    FEET_PER_MINUTE(UnitScale.FOOT_PER_MINUTE, 0),
    /** Metres per second, tenths. */
    METRES_PER_SECOND(UnitScale.METRE_PER_SECOND, 1),
    /** Nautical miles, tenths. */
    NAUTICAL_MILES(UnitScale.NAUTICAL_MILE, 1),
    /** Kilometres, tenths. */
    KILOMETRES(UnitScale.KILOMETRE, 1),
    /** Feet of height over a nautical mile, whole. */
    FEET_PER_NAUTICAL_MILE(UnitScale.FOOT_PER_NAUTICAL_MILE, 0),
    /** Metres of height over a kilometre, tenths. */
    METRES_PER_KILOMETRE(UnitScale.METRE, UnitScale.KILOMETRE, 1),
    /** Percent of a gradient, tenths. */
    PERCENT(UnitScale.PERCENT_GRADIENT, 1),
    /** Pounds per square inch, hundredths. */
    POUNDS_PER_SQUARE_INCH(UnitScale.POUND_PER_SQUARE_INCH, 2),
    /** Kilopascals, tenths. */
    KILOPASCALS(UnitScale.KILOPASCAL, 1),
    /** Hectopascals, hundredths. */
    HECTOPASCALS(UnitScale.HECTOPASCAL, 2),
    /** Degrees Celsius, tenths. */
    DEGREES_CELSIUS(UnitScale.CELSIUS, 1),
    /** Kelvins of a difference, tenths. */
    KELVINS(UnitScale.KELVIN_DIFFERENCE, 1),
    /** Kilograms, whole. */
    KILOGRAMS(UnitScale.KILOGRAM, 0),
    /** Kilograms per hour, whole. */
    KILOGRAMS_PER_HOUR(UnitScale.KILOGRAM_PER_HOUR, 0),
    /** Seconds, whole. */
    SECONDS(UnitScale.SECOND, 0),
    /** A Mach number, which has no unit, thousandths. */
    MACH(3);

    private final Optional<UnitScale> scale;
    private final Optional<UnitScale> over;
    private final int decimals;

    FigureUnit(int decimals) {
        this.scale = Optional.empty();
        this.over = Optional.empty();
        this.decimals = decimals;
    }

    FigureUnit(UnitScale scale, int decimals) {
        this.scale = Optional.of(scale);
        this.over = Optional.empty();
        this.decimals = decimals;
    }

    /** Of a ratio: how many of the one scale come with one of the other. */
    FigureUnit(UnitScale scale, UnitScale over, int decimals) {
        this.scale = Optional.of(scale);
        this.over = Optional.of(over);
        this.decimals = decimals;
    }

    /**
     * Returns what stands behind a number, or in the head of a column.
     *
     * @return the label of the unit, such as {@code "ft/min"}
     */
    public String label() {
        return scale.map(UnitScale::label).orElse("")
                + over.map(other -> "/" + other.label()).orElse("");
    }

    /**
     * Returns how many decimals a reader needs.
     *
     * @return 0 or more
     */
    public int decimals() {
        return decimals;
    }

    /**
     * Returns a figure in this unit, in full.
     *
     * @param si the figure in SI
     * @return the same in this unit
     */
    public double fromSi(double si) {
        double ofOne = over.map(other -> other.toSi(si)).orElse(si);
        return scale.map(unit -> unit.fromSi(ofOne)).orElse(ofOne);
    }

    /**
     * Returns a figure as a rounded number alone; nothing has no sign.
     *
     * @param si the figure in SI
     * @return the number, such as {@code "35000"}
     */
    public String number(double si) {
        return number("%", si);
    }

    /**
     * Returns a difference as a rounded number with its sign.
     *
     * @param si the difference in SI
     * @return the number, such as {@code "+120"}
     */
    public String signed(double si) {
        return number("%+", si);
    }

    /**
     * Returns a figure as a rounded number with its unit.
     *
     * @param si the figure in SI
     * @return both, such as {@code "35000 ft"}
     */
    public String text(double si) {
        return number(si) + " " + label();
    }

    /**
     * Returns a difference as a rounded number with its sign and its unit.
     *
     * @param si the difference in SI
     * @return both, such as {@code "+120 ft"}
     */
    public String difference(double si) {
        return signed(si) + " " + label();
    }

    /**
     * Returns a figure that somebody has stated, with its unit: as many decimals as it takes up to
     * those of the unit, so that 7.8 psi is not 7.80.
     *
     * @param si the figure in SI
     * @return both, such as {@code "7.8 psi"}
     */
    public String stated(double si) {
        return UnitText.number(Double.parseDouble(number(si))) + " " + label();
    }

    private String number(String flag, double si) {
        String text = String.format(Locale.ROOT, flag + "." + decimals + "f", fromSi(si));
        // A number that rounds to nothing has no minus for a reader.
        return Double.parseDouble(text) == 0.0 ? text.replace("-", flag.substring(1)) : text;
    }
}
