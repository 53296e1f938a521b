package org.climbwright.gradient.procedure;

import java.util.Optional;
import org.climbwright.quantity.path.AirGradient;

/**
 * By how much a net gradient is less than a gross one, by the number of engines.
 *
 * <p>Limits of use: for transport aeroplanes of part 25. The flight manual has net data.
 *
 * @source in {@link #source}
 */
public enum NetReduction {
    /** Take-off flight path. */
    TAKEOFF_PATH(
            "25.115(b)",
            0.8,
            0.9,
            1.0,
            "CS 25.115 (ED Decision 2003/2/RM, CS-25 Amdt 27), same as 14 CFR, read in a public"
                    + " copy"),
    /** En route, one engine inoperative. */
    EN_ROUTE_ONE_INOPERATIVE(
            "25.123(b)", 1.1, 1.4, 1.6, "14 CFR 25.123, read in a public copy (2026-06)"),
    /** En route, two engines inoperative; for three and four engines. */
    EN_ROUTE_TWO_INOPERATIVE(
            "25.123(c)", Double.NaN, 0.3, 0.5, "14 CFR 25.123, read in a public copy (2026-06)");

    private final String rule;
    private final double two;
    private final double three;
    private final double four;
    private final String source;

    NetReduction(String rule, double two, double three, double four, String source) {
        this.rule = rule;
        this.two = two;
        this.three = three;
        this.four = four;
        this.source = source;
    }

    /**
     * Returns the section of part 25.
     *
     * @return such as 25.115(b)
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
     * Returns the reduction.
     *
     * @param engines number of engines, 2 to 4
     * @return the reduction; empty where the rule does not apply
     * @throws IllegalArgumentException if the number is another
     */
    public Optional<AirGradient> reduction(int engines) {
        double percent = Engines.choose(engines, two, three, four);
        return Double.isNaN(percent)
                ? Optional.empty()
                : Optional.of(AirGradient.ofPercent(percent));
    }
}
