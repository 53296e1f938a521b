package org.climbwright.examples.briefing;

import org.climbwright.unit.UnitText;

/** A number in full for a program: the shortest text that reads back to it, without exponent. */
final class FullNumber {
    private FullNumber() {}

    /** What comes back to 1200 ft or 0 °C by way of a pressure may miss it in the twelfth digit. */
    static String of(double value) {
        double rounded = Math.rint(value * 1e6) / 1e6 + 0.0;
        return UnitText.number(Math.abs(value - rounded) <= 1e-10 ? rounded : value);
    }
}
