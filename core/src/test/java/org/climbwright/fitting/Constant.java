package org.climbwright.fitting;

import java.math.BigDecimal;
import java.util.Locale;

/**
 * A constant of a kernel, rounded to a double.
 *
 * @param name in the form of a method's
 */
record Constant(String name, String meaning, BigDecimal value) implements Printed {
    @Override
    public String source() {
        return Polynomial.comment(meaning) + source(name, value.doubleValue());
    }

    @Override
    public boolean isNamed(String other) {
        return name.equals(other);
    }

    static String source(String name, double value) {
        String constant = name.replaceAll("([A-Z])", "_$1").toUpperCase(Locale.ROOT);
        return "    static final double " + constant + " = " + value + ";\n";
    }
}
