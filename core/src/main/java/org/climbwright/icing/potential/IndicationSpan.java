package org.climbwright.icing.potential;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.pressure.StaticPressure;

/**
 * A layer of air that a rule speaks of, or of which it cannot be told whether it would.
 *
 * <p>Limits of use: an indication by one rule, not a forecast; what lies outside all spans is not
 * "no icing". The rule's own class says what it is known to miss.
 *
 * @param kind what the layer is
 * @param bottom the air at its lower edge
 * @param top the air at its upper edge
 * @param reason the figures against the rule, in words
 */
public record IndicationSpan(Kind kind, AirState bottom, AirState top, String reason)
        implements Serializable {
    /**
     * Makes a span of parts that are all there.
     *
     * @param kind what the layer is
     * @param bottom the air at its lower edge
     * @param top the air at its upper edge
     * @param reason the figures against the rule, in words
     */
    public IndicationSpan {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(bottom, "bottom");
        Objects.requireNonNull(top, "top");
        Objects.requireNonNull(reason, "reason");
    }

    /** What a layer is. */
    public enum Kind {
        /** The rule is met. */
        INDICATED,
        /** The humidity is not known, and the rule needs it: it may be met or not. */
        NOT_KNOWN
    }

    /**
     * Returns how deep the layer is.
     *
     * @return the difference of geopotential altitude; empty when altitudes are not known
     */
    public Optional<AltitudeChange> depth() {
        return depth(bottom, top);
    }

    static Optional<AltitudeChange> depth(AirState bottom, AirState top) {
        return bottom.geopotentialAltitude()
                .flatMap(low -> top.geopotentialAltitude().map(high -> high.minus(low)));
    }

    static AirState state(Atmosphere air, double pressurePa) {
        return air.at(StaticPressure.ofPascals(pressurePa));
    }
}
