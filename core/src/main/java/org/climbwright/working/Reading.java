package org.climbwright.working;

import java.util.Locale;
import org.climbwright.unit.UnitScale;

/** SI values as the trade reads them; the decimals are a matter of reading, not of accuracy. */
final class Reading {
    private Reading() {}

    static String feet(double metres) {
        return in(UnitScale.FOOT, metres, "%,.0f");
    }

    static String knots(double metresPerSecond) {
        return in(UnitScale.KNOT, metresPerSecond, "%.1f");
    }

    static String feetPerMinute(double metresPerSecond) {
        return in(UnitScale.FOOT_PER_MINUTE, metresPerSecond, "%,.0f");
    }

    static String feetPerSecond(double metresPerSecond) {
        return in(UnitScale.FOOT_PER_SECOND, metresPerSecond, "%.1f");
    }

    static String nauticalMiles(double metres) {
        return in(UnitScale.NAUTICAL_MILE, metres, "%.2f");
    }

    static String hectopascals(double pascals) {
        return in(UnitScale.HECTOPASCAL, pascals, "%,.2f");
    }

    static String poundsPerSquareInch(double pascals) {
        return in(UnitScale.POUND_PER_SQUARE_INCH, pascals, "%.2f");
    }

    static String celsius(double kelvins) {
        return in(UnitScale.CELSIUS, kelvins, "%.1f");
    }

    static String kelvins(double difference) {
        return in(UnitScale.KELVIN_DIFFERENCE, difference, "%.1f");
    }

    static String percent(double metresPerMetre) {
        return in(UnitScale.PERCENT_GRADIENT, metresPerMetre, "%.2f");
    }

    static String seconds(double seconds) {
        return in(UnitScale.SECOND, seconds, "%.1f");
    }

    static String mach(double number) {
        return format("Mach %.4f", number);
    }

    static String number(double number) {
        return format("%.4f", number);
    }

    static String loadFactor(double g) {
        return format("%.3f g", g);
    }

    private static String in(UnitScale unit, double si, String pattern) {
        return format(pattern, unit.fromSi(si)) + " " + unit.label();
    }

    /** No "-0.0": what rounds to nothing has no sign. */
    private static String format(String pattern, double number) {
        String text = String.format(Locale.ROOT, pattern, number);
        return text.matches("-[0.]+") ? text.substring(1) : text;
    }
}
