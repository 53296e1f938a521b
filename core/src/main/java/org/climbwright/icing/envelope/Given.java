package org.climbwright.icing.envelope;

/** Refuses what cannot be of the plain numbers that a verdict is asked with. */
final class Given {
    private Given() {}

    static double water(double kgPerM3) {
        return check("liquid water content", kgPerM3, "kg/m³");
    }

    static double diameter(double metres) {
        return check("mean effective drop diameter", metres, "m");
    }

    private static double check(String term, double value, String unit) {
        if (!(value >= 0.0 && Double.isFinite(value))) {
            throw new IllegalArgumentException(
                    term
                            + " must be 0.0 "
                            + unit
                            + " or more, finite, but was "
                            + value
                            + " "
                            + unit);
        }
        return value;
    }
}
