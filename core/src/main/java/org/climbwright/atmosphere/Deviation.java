package org.climbwright.atmosphere;

import org.climbwright.quantity.ModelRange;

/** How far the air of these models may be from standard. */
final class Deviation {
    static final ModelRange RANGE =
            new ModelRange(
                    "deviation from standard temperature",
                    -90.0,
                    75.0,
                    "K",
                    "the air of the earth is no farther from standard, and what follows from its"
                            + " temperature holds from 100 to 400 K");

    private Deviation() {}
}
