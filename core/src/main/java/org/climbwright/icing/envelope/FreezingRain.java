package org.climbwright.icing.envelope;

import static org.climbwright.icing.envelope.LimitMargin.Limit.HIGHEST_ALTITUDE;
import static org.climbwright.icing.envelope.LimitMargin.Limit.LIQUID_WATER_CONTENT;
import static org.climbwright.icing.envelope.LimitMargin.Limit.LOWEST_ALTITUDE;
import static org.climbwright.icing.envelope.LimitMargin.Limit.TEMPERATURE_FOR_ALTITUDE;
import static org.climbwright.icing.envelope.LimitMargin.Limit.VERTICAL_EXTENT;
import static org.climbwright.icing.envelope.LimitMargin.atLeast;
import static org.climbwright.icing.envelope.LimitMargin.atMost;
import static org.climbwright.icing.envelope.LimitMargin.notKnown;

import java.util.List;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.unit.UnitScale;

/**
 * Freezing rain: design conditions with drops whose largest are above 500 µm.
 *
 * <p>Only altitude and depth were seen. The liquid water content, figure 4 of Appendix O, and the
 * envelope of altitude and temperature, figure 6, were not: a verdict here is at best "not known",
 * never "inside".
 *
 * <p>Limits of use: for study and teaching, not certification evidence.
 *
 * @source 14 CFR part 25, Appendix O, part I: pressure altitude 0 to 12,000 ft, vertical extent
 *     7000 ft
 */
public final class FreezingRain {
    private static final String RULE = "14 CFR 25 Appendix O, part I";
    private static final String NOT_SEEN =
            " of 14 CFR 25 Appendix O was not seen by the makers of this library";
    private static final double HIGHEST_M = UnitScale.FOOT.toSi(12_000.0);
    private static final double DEEPEST_M = UnitScale.FOOT.toSi(7_000.0);

    private FreezingRain() {}

    /**
     * Says whether a layer of freezing rain is outside, and by how much of each limit that is
     * known.
     *
     * @param altitude pressure altitude
     * @param depth vertical extent of the layer
     * @return the verdict; edges are inside; never "inside" as a whole
     */
    public static EnvelopeVerdict verdict(PressureAltitude altitude, AltitudeChange depth) {
        return new EnvelopeVerdict(
                "freezing rain, 14 CFR 25 Appendix O",
                List.of(
                        atLeast(LOWEST_ALTITUDE, altitude.inMetres(), 0.0, RULE),
                        atMost(HIGHEST_ALTITUDE, altitude.inMetres(), HIGHEST_M, RULE),
                        atMost(VERTICAL_EXTENT, depth.inMetres(), DEEPEST_M, RULE),
                        notKnown(LIQUID_WATER_CONTENT, "figure 4" + NOT_SEEN),
                        notKnown(TEMPERATURE_FOR_ALTITUDE, "figure 6" + NOT_SEEN)));
    }
}
