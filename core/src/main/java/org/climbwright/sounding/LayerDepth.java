package org.climbwright.sounding;

import java.util.Optional;
import org.climbwright.atmosphere.AirState;
import org.climbwright.quantity.altitude.AltitudeChange;

/** How far two states of the air lie apart. */
final class LayerDepth {
    private LayerDepth() {}

    /** The difference of their geopotential altitudes; empty when one is not known. */
    static Optional<AltitudeChange> between(AirState bottom, AirState top) {
        return bottom.geopotentialAltitude()
                .flatMap(low -> top.geopotentialAltitude().map(high -> high.minus(low)));
    }
}
