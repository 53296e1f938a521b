package org.climbwright.examples.briefing;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.climbwright.unit.QuantityKind;
import org.climbwright.unit.UnitText;

/** Numbers of a scenario that have no type of the library, each with its unit in the text. */
final class ScenarioNumber {
    private static final Pattern TEXT =
            Pattern.compile("(-?[0-9]+(?:[.][0-9]+)?(?:e-?[0-9]+)?)(.*)");

    private ScenarioNumber() {}

    static double plain(String text) {
        return number(text, "", "a plain number");
    }

    static double share(String text) {
        return number(text, " %", "a percentage such as \"40 %\"") / 100.0;
    }

    static double area(String text) {
        return number(text, " m²", "an area such as \"120 m²\"");
    }

    static double force(String text) {
        return UnitText.parse("thrust", text, QuantityKind.FORCE);
    }

    static double massFlow(String text) {
        return UnitText.parse("fuel flow", text, QuantityKind.MASS_FLOW);
    }

    /** Fuel per thrust and time; milligrams keep the figures readable. */
    static double specificFuel(String text) {
        return number(text, " mg/(N s)", "a figure such as \"12 mg/(N s)\"") * 1e-6;
    }

    static double energy(String text) {
        return number(text, " J/kg", "an energy such as \"500 J/kg\"");
    }

    private static double number(String text, String unit, String wanted) {
        Matcher matcher = TEXT.matcher(text);
        if (!matcher.matches() || !matcher.group(2).equals(unit)) {
            throw new IllegalArgumentException("must be " + wanted + ", but was \"" + text + "\"");
        }
        return Double.parseDouble(matcher.group(1));
    }
}
