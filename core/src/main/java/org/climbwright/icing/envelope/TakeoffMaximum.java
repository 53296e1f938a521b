package org.climbwright.icing.envelope;

import static org.climbwright.icing.envelope.LimitMargin.Limit.COLDEST_TEMPERATURE;
import static org.climbwright.icing.envelope.LimitMargin.Limit.HIGHEST_ALTITUDE;
import static org.climbwright.icing.envelope.LimitMargin.Limit.LIQUID_WATER_CONTENT;
import static org.climbwright.icing.envelope.LimitMargin.Limit.LOWEST_ALTITUDE;
import static org.climbwright.icing.envelope.LimitMargin.atLeast;
import static org.climbwright.icing.envelope.LimitMargin.atMost;
import static org.climbwright.icing.envelope.LimitMargin.notKnown;

import java.util.List;
import org.climbwright.quantity.altitude.Height;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.unit.UnitScale;

/**
 * Takeoff maximum icing: the design condition for the first part of the climb.
 *
 * <p>One condition and no curve: 0.35 g/m³ of drops of 20 µm. The temperature at ground level, -9
 * °C, and the height to which it extends, 1500 ft above the takeoff surface, are from memory.
 *
 * <p>Limits of use: for study and teaching, not certification evidence; the flight manual and the
 * crew decide whether to take off.
 *
 * @source 14 CFR part 25, Appendix C, part I (c): water and drop diameter; temperature and height
 *     from memory
 */
public final class TakeoffMaximum {
    /** The liquid water content of the condition [kg/m³]. */
    public static final double LIQUID_WATER_CONTENT_KG_PER_M3 =
            UnitScale.GRAM_PER_CUBIC_METRE.toSi(0.35);

    /** The mean effective drop diameter of the condition [m]. */
    public static final double DROP_DIAMETER_M = UnitScale.MICROMETRE.toSi(20.0);

    private static final double GROUND_K = UnitScale.CELSIUS.toSi(-9.0);
    private static final double TOP_M = UnitScale.FOOT.toSi(1500.0);
    private static final String RULE = "14 CFR 25 Appendix C, part I (c)";
    private static final String MEMORY = RULE + ", from memory";

    private TakeoffMaximum() {}

    /**
     * Says whether conditions of drops of 20 µm are no more severe than the one of the rule, and by
     * how much of each limit.
     *
     * @param liquidWaterContentKgPerM3 liquid water content [kg/m³]
     * @param atGround static air temperature at ground level
     * @param above height above the takeoff surface
     * @param remembered whether -9 °C and 1500 ft, from memory, are limits
     * @return the verdict; edges are inside; not known at best if the remembered values are left
     *     out
     * @throws IllegalArgumentException if the water is negative or not finite
     */
    public static EnvelopeVerdict verdict(
            double liquidWaterContentKgPerM3,
            StaticAirTemperature atGround,
            Height above,
            RememberedValues remembered) {
        return new EnvelopeVerdict(
                "takeoff maximum icing, 14 CFR 25 Appendix C",
                List.of(
                        atMost(
                                LIQUID_WATER_CONTENT,
                                Given.water(liquidWaterContentKgPerM3),
                                LIQUID_WATER_CONTENT_KG_PER_M3,
                                RULE),
                        remembered.isUsed()
                                ? atLeast(
                                        COLDEST_TEMPERATURE, atGround.inKelvins(), GROUND_K, MEMORY)
                                : notKnown(COLDEST_TEMPERATURE, RememberedValues.REASON),
                        atLeast(LOWEST_ALTITUDE, above.inMetres(), 0.0, RULE),
                        remembered.isUsed()
                                ? atMost(HIGHEST_ALTITUDE, above.inMetres(), TOP_M, MEMORY)
                                : notKnown(HIGHEST_ALTITUDE, RememberedValues.REASON)));
    }
}
