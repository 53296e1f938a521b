package org.climbwright.gradient.procedure;

import org.climbwright.quantity.path.AirGradient;

/**
 * Gradients through the air that certification requires of transport aeroplanes, by the number of
 * engines.
 *
 * <p>Limits of use: each holds for a configuration, speed, mass, altitude and temperature that the
 * rule names. They are least values for a certificate and clear no obstacle.
 *
 * @source in {@link #source}
 */
public enum CertificationGradient {
    /** Take-off with the landing gear extended, one engine inoperative. */
    TAKEOFF_GEAR_EXTENDED("25.121(a)", 0.0, 0.3, 0.5, CertificationGradient.ECFR),
    /** Take-off with the landing gear retracted, one engine inoperative, at V2. */
    TAKEOFF_GEAR_RETRACTED("25.121(b)", 2.4, 2.7, 3.0, CertificationGradient.ECFR),
    /** Final take-off in en-route configuration, one engine inoperative. */
    FINAL_TAKEOFF("25.121(c)", 1.2, 1.5, 1.7, CertificationGradient.ECFR),
    /** Approach climb, one engine inoperative. */
    APPROACH(
            "25.121(d)",
            2.1,
            2.4,
            2.7,
            "14 CFR volume 1, print page 217 (Amdt 25-140), read in a public copy"),
    /** Available gradient on the take-off path from 400 ft on. */
    TAKEOFF_PATH_FROM_400_FT("25.111(c)(3)", 1.2, 1.5, 1.7, CertificationGradient.COPY),
    /** Landing climb, all engines operating. */
    LANDING("25.119", 3.2, 3.2, 3.2, CertificationGradient.COPY);

    private static final String ECFR = "14 CFR part 25, eCFR text read in a public copy (2026-04)";
    private static final String COPY = "14 CFR part 25, read in a public copy of no date";

    private final String rule;
    private final double two;
    private final double three;
    private final double four;
    private final String source;

    CertificationGradient(String rule, double two, double three, double four, String source) {
        this.rule = rule;
        this.two = two;
        this.three = three;
        this.four = four;
        this.source = source;
    }

    /**
     * Returns the section of part 25.
     *
     * @return such as 25.121(b)
     */
    public String rule() {
        return rule;
    }

    /**
     * Returns where the figures are from and how far it was read.
     *
     * @return document and copy
     */
    public String source() {
        return source;
    }

    /**
     * Returns the gradient required.
     *
     * @param engines number of engines, 2 to 4
     * @return the least gradient; 0 where the rule says "positive", see {@link #isReachedBy}
     * @throws IllegalArgumentException if the number is another
     */
    public AirGradient least(int engines) {
        return AirGradient.ofPercent(Engines.choose(engines, two, three, four));
    }

    /**
     * Tells whether a gradient reaches the one required.
     *
     * @param gradient gradient through the air in the conditions of the rule
     * @param engines number of engines, 2 to 4
     * @return true from the least value on; above 0 where the rule says "positive"
     * @throws IllegalArgumentException if the number is another
     */
    public boolean isReachedBy(AirGradient gradient, int engines) {
        int compared = gradient.compareTo(least(engines));
        return least(engines).inPercent() > 0.0 ? compared >= 0 : compared > 0;
    }
}
