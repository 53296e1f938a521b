package org.climbwright.performance;

import java.io.Serializable;
import org.climbwright.quantity.ModelRange;

/** Which share of its thrust or power an engine gives at a rating, after bleed. */
record EngineSettings(double takeOff, double maximumContinuous, double climb, BleedShares bleed)
        implements Serializable {
    private static final ModelRange RATING =
            new ModelRange(
                    "share at a rating", 0.01, 1.5, "", "it is of the thrust or power given");

    static final EngineSettings FULL = new EngineSettings(1.0, 1.0, 1.0, BleedShares.NONE);

    EngineSettings {
        RATING.check(takeOff);
        RATING.check(maximumContinuous);
        RATING.check(climb);
    }

    EngineSettings with(Rating rating, double share) {
        return new EngineSettings(
                rating == Rating.TAKE_OFF ? share : takeOff,
                rating == Rating.MAXIMUM_CONTINUOUS ? share : maximumContinuous,
                rating == Rating.CLIMB ? share : climb,
                bleed);
    }

    EngineSettings with(BleedShares shares) {
        return new EngineSettings(takeOff, maximumContinuous, climb, shares);
    }

    /** Of what one engine gives unrated and without bleed, that of all engines that run. */
    double share(EngineUse use) {
        double rated =
                switch (use.rating()) {
                    case TAKE_OFF -> takeOff;
                    case MAXIMUM_CONTINUOUS -> maximumContinuous;
                    case CLIMB -> climb;
                };
        return use.operating() * rated * (1.0 - bleed.of(use.bleed()));
    }
}
