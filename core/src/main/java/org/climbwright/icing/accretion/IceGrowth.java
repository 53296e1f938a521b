package org.climbwright.icing.accretion;

import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.OutsideModelException;

/**
 * How fast ice grows from the water that hits and freezes, in SI doubles.
 *
 * <p>Limits of use: at the stagnation line, while the ice is thin and the shape still that of the
 * clean surface. Not a prediction of ice on an aeroplane.
 *
 * @source DOT/FAA/CT-88/8-1, Aircraft Icing Handbook, example 2-4
 */
public final class IceGrowth {
    /** Density of clear ice [kg/m³]; rime is lighter, down to 800 and less. */
    public static final double CLEAR_ICE_KG_PER_M3 = 917.0;

    private static final ModelRange WATER =
            new ModelRange("liquid water content", 0.0, 0.02, "kg/m³", "no cloud holds so much");

    private static final ModelRange SPEED =
            new ModelRange("true airspeed", 0.0, 400.0, "m/s", "the flow is to be subsonic");

    private static final ModelRange SHARE =
            new ModelRange("share", 0.0, 1.0, "", "no more than all hits, or freezes");

    private static final ModelRange TIME =
            new ModelRange("time", 0.0, 1e6, "s", "the ice would not be thin");

    private static final ModelRange ICE =
            new ModelRange("density of ice", 50.0, 1000.0, "kg/m³", "no ice is outside");

    private static final ModelRange LENGTH =
            new ModelRange("length", 1e-4, 100.0, "m", "no part of an aeroplane is outside");

    private static final ModelRange GROWTH =
            new ModelRange("growth of ice", Double.MIN_NORMAL, 0.1, "m/s", "no ice grows so");

    private static final ModelRange CATCH =
            new ModelRange("water catch", 0.0, 10.0, "kg/(m²·s)", "no cloud holds so much");

    private static final ModelRange THICKNESS =
            new ModelRange("thickness of ice", 0.0, 1.0, "m", "the ice would not be thin");

    private IceGrowth() {}

    /**
     * Returns the water that hits each square metre: {@code LWC V β}.
     *
     * @param liquidWaterContentKgPerM3 liquid water content [kg/m³], 0 to 0.02
     * @param tasMps true airspeed [m/s], 0 to 400
     * @param collectionEfficiency share of the water in the way that hits, 0 to 1
     * @return water catch [kg/(m²·s)]; times projected height, that of each metre of span
     * @throws OutsideModelException if a value is out of range
     * @accuracy 1 ulp
     * @source DOT/FAA/CT-88/8-1, example 2-4
     */
    public static double waterCatch(
            double liquidWaterContentKgPerM3, double tasMps, double collectionEfficiency) {
        return WATER.check(liquidWaterContentKgPerM3)
                * SPEED.check(tasMps)
                * SHARE.check(collectionEfficiency);
    }

    /**
     * Returns how fast the ice grows thicker: {@code n m / ρ}.
     *
     * @param catchKgPerM2S {@link #waterCatch} [kg/(m²·s)]
     * @param freezingFraction share of it that freezes where it hits, 0 to 1
     * @param iceDensityKgPerM3 density of the ice [kg/m³], 50 to 1000
     * @return growth [m/s]
     * @throws OutsideModelException if a value is out of range
     * @accuracy 1 ulp
     * @source DOT/FAA/CT-88/8-1, example 2-4
     */
    public static double rate(
            double catchKgPerM2S, double freezingFraction, double iceDensityKgPerM3) {
        return CATCH.check(catchKgPerM2S)
                * SHARE.check(freezingFraction)
                / ICE.check(iceDensityKgPerM3);
    }

    /**
     * Returns how long ice takes to grow to a thickness.
     *
     * @param thicknessM thickness [m], 0 to 1
     * @param rateMps {@link #rate} [m/s], above 0
     * @return time [s]
     * @throws OutsideModelException if a value is out of range
     * @accuracy 1 ulp
     * @source growth that does not change
     */
    public static double timeToThickness(double thicknessM, double rateMps) {
        return THICKNESS.check(thicknessM) / GROWTH.check(rateMps);
    }

    /**
     * Tells whether ice grows at all.
     *
     * @param rateMps {@link #rate} [m/s]
     * @return true if {@link #timeToThickness} takes the rate
     */
    public static boolean grows(double rateMps) {
        return GROWTH.covers(rateMps);
    }

    /**
     * Returns the accumulation parameter: {@code Ac = LWC V t / (ρ d)}, the thickness over the
     * length if all water hit and froze.
     *
     * @param liquidWaterContentKgPerM3 liquid water content [kg/m³], 0 to 0.02
     * @param tasMps true airspeed [m/s], 0 to 400
     * @param timeS time in the cloud [s], 0 to 1e6
     * @param iceDensityKgPerM3 density of the ice [kg/m³], 50 to 1000
     * @param lengthM what the thickness is measured in [m]: diameter, or twice the radius of a
     *     leading edge, or chord; say which
     * @return Ac, a plain number
     * @throws OutsideModelException if a value is out of range
     * @accuracy 3 ulp
     * @source DOT/FAA/CT-88/8-1, example 2-4
     */
    public static double accumulationParameter(
            double liquidWaterContentKgPerM3,
            double tasMps,
            double timeS,
            double iceDensityKgPerM3,
            double lengthM) {
        return waterCatch(liquidWaterContentKgPerM3, tasMps, 1.0)
                * TIME.check(timeS)
                / (ICE.check(iceDensityKgPerM3) * LENGTH.check(lengthM));
    }
}
