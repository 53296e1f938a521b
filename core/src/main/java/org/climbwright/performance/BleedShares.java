package org.climbwright.performance;

import java.io.Serializable;
import org.climbwright.quantity.ModelRange;

/** What ice protection takes, as shares of the thrust, the power or the fuel. */
record BleedShares(double engine, double airframe) implements Serializable {
    private static final ModelRange SHARE =
            new ModelRange("share for ice protection", 0.0, 0.45, "", "bleed takes some percent");

    static final BleedShares NONE = new BleedShares(0.0, 0.0);

    BleedShares {
        SHARE.check(engine);
        SHARE.check(airframe);
    }

    /** Of what is protected, together. */
    double of(Bleed bleed) {
        return (bleed.ofEngine() ? engine : 0.0) + (bleed.ofAirframe() ? airframe : 0.0);
    }
}
