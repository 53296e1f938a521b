package org.climbwright.turbulence;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.speed.EquivalentAirspeed;
import org.climbwright.quantity.speed.TrueAirspeed;
import org.climbwright.unit.UnitScale;

/**
 * A rough-air speed held against the three relations that the rule sets, and the relations of
 * design speeds behind it.
 *
 * <p>Limits of use: relations that a designer has to meet. The speed to fly in rough air stands in
 * the flight manual; none of these takes its place.
 *
 * @param isNotAboveGustSpeed the speed is not above the design speed for maximum gust intensity, VB
 * @param isNotBelowLeastGustSpeed the speed is not below the least VB that {@link
 *     #leastGustSpeed(EquivalentAirspeed, double)} has
 * @param hasMarginToOperatingLimit its true airspeed is less than that of the maximum operating
 *     limit speed, VMO, less 35 kn
 * @source 14 CFR 25.1517 (amendment 25-86), 25.335(a)(2) and (d)(1); the equation of the latter
 *     from memory
 */
public record RoughAirSpeed(
        boolean isNotAboveGustSpeed,
        boolean isNotBelowLeastGustSpeed,
        boolean hasMarginToOperatingLimit)
        implements Serializable {
    private static final double MARGIN_MPS = UnitScale.KNOT.toSi(35.0);

    /** What the rule multiplies a figure in ft/s with, to add it to one in knots. */
    private static final double CRUISE_SPEED_FACTOR = 1.32;

    private static final ModelRange SPEED =
            new ModelRange("equivalent airspeed", 0.0, 1000.0, "m/s", "no aeroplane is faster");

    private static final ModelRange GUST =
            new ModelRange("gust velocity", 0.0, 100.0, "m/s", "a gust has a strength, no sign");

    private static final ModelRange INCREMENT =
            new ModelRange(
                    "load factor increment", 0.0, 100.0, "g", "a gust from below or above adds it");

    /**
     * Holds a rough-air speed against the relations.
     *
     * @param speed the rough-air speed, VRA
     * @param gustSpeed the design speed for maximum gust intensity, VB
     * @param leastGustSpeed the least that VB may be
     * @param trueAirspeed the true airspeed of VRA at the altitude
     * @param trueOperatingLimit the true airspeed of VMO at the same altitude
     * @return which relations it meets
     * @source 14 CFR 25.1517
     */
    public static RoughAirSpeed of(
            EquivalentAirspeed speed,
            EquivalentAirspeed gustSpeed,
            EquivalentAirspeed leastGustSpeed,
            TrueAirspeed trueAirspeed,
            TrueAirspeed trueOperatingLimit) {
        return new RoughAirSpeed(
                speed.compareTo(gustSpeed) <= 0,
                speed.compareTo(leastGustSpeed) >= 0,
                trueAirspeed.inMetresPerSecond()
                        < trueOperatingLimit.inMetresPerSecond() - MARGIN_MPS);
    }

    /**
     * Tells whether there is a least design speed for maximum gust intensity.
     *
     * @param stallSpeedMps 1 g stalling speed with flaps retracted, equivalent airspeed [m/s]
     * @param incrementAtCruiseSpeed what the reference gust adds to the load factor [g]
     * @return true if {@link #leastGustSpeed(double, double)} answers
     */
    public static boolean coversGustSpeed(double stallSpeedMps, double incrementAtCruiseSpeed) {
        return SPEED.covers(stallSpeedMps) && INCREMENT.covers(incrementAtCruiseSpeed);
    }

    /**
     * Tells whether there is a least design cruise speed.
     *
     * @param gustSpeedKnots design speed for maximum gust intensity, equivalent airspeed [kn]
     * @param referenceGustFps reference gust velocity, equivalent airspeed [ft/s]
     * @return true if {@link #leastCruiseSpeedByRule} answers
     */
    public static boolean coversCruiseSpeed(double gustSpeedKnots, double referenceGustFps) {
        return SPEED.covers(UnitScale.KNOT.toSi(gustSpeedKnots))
                && GUST.covers(UnitScale.FOOT_PER_SECOND.toSi(referenceGustFps));
    }

    /**
     * Returns the least design speed for maximum gust intensity: {@code VS1 sqrt(1 + Kg Uref VC a /
     * (498 w))}.
     *
     * @param stallSpeedMps VS1, 1 g stalling speed with flaps retracted, equivalent airspeed [m/s],
     *     0 to 1000
     * @param incrementAtCruiseSpeed what the reference gust adds to the load factor at VC [g], 0 to
     *     100; of {@link GustLoad#incrementByRule} for the figure as the rule prints it
     * @return equivalent airspeed [m/s]
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 2 ulp
     * @source 14 CFR 25.335(d)(1), the form from memory
     */
    public static double leastGustSpeed(double stallSpeedMps, double incrementAtCruiseSpeed) {
        return SPEED.check(stallSpeedMps)
                * Math.sqrt(1.0 + INCREMENT.check(incrementAtCruiseSpeed));
    }

    /**
     * Returns the least design speed for maximum gust intensity.
     *
     * @param stallSpeed VS1, 1 g stalling speed with flaps retracted
     * @param incrementAtCruiseSpeed what the reference gust adds to the load factor at VC [g]
     * @return equivalent airspeed
     * @source {@link #leastGustSpeed(double, double)}
     */
    public static EquivalentAirspeed leastGustSpeed(
            EquivalentAirspeed stallSpeed, double incrementAtCruiseSpeed) {
        return EquivalentAirspeed.ofMetresPerSecond(
                leastGustSpeed(stallSpeed.inMetresPerSecond(), incrementAtCruiseSpeed));
    }

    /**
     * Returns the least design cruise speed: {@code VB + 1.32 Uref}, a figure in ft/s added to one
     * in knots, as the rule prints it.
     *
     * <p>Do not convert the gust first: 1.32 times 56 ft/s adds 73.92 kn, not 43.8.
     *
     * @param gustSpeedKnots VB, design speed for maximum gust intensity, equivalent airspeed [kn],
     *     0 to 1943
     * @param referenceGustFps Uref, reference gust velocity, equivalent airspeed [ft/s], 0 to 328
     * @return equivalent airspeed [kn]
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range, told in SI
     * @accuracy 2 ulp of the rule
     * @source 14 CFR 25.335(a)(2)
     */
    public static double leastCruiseSpeedByRule(double gustSpeedKnots, double referenceGustFps) {
        SPEED.check(UnitScale.KNOT.toSi(gustSpeedKnots));
        GUST.check(UnitScale.FOOT_PER_SECOND.toSi(referenceGustFps));
        return gustSpeedKnots + CRUISE_SPEED_FACTOR * referenceGustFps;
    }

    /**
     * Returns the least design cruise speed; the rule does not ask for more than the greatest speed
     * in level flight.
     *
     * @param gustSpeed VB, design speed for maximum gust intensity
     * @param referenceGust the reference gust up to the design cruise speed
     * @return equivalent airspeed
     * @source {@link #leastCruiseSpeedByRule}
     */
    public static EquivalentAirspeed leastCruiseSpeed(
            EquivalentAirspeed gustSpeed, GustVelocity referenceGust) {
        return EquivalentAirspeed.ofKnots(
                leastCruiseSpeedByRule(gustSpeed.inKnots(), referenceGust.inFeetPerSecond()));
    }

    /**
     * Returns in words which relations are not met.
     *
     * @return a sentence each; empty where all three are met, which does not make the speed one to
     *     fly
     */
    public List<String> notMet() {
        List<String> notMet = new ArrayList<>();
        if (!isNotAboveGustSpeed) {
            notMet.add("The speed is above the design speed for maximum gust intensity.");
        }
        if (!isNotBelowLeastGustSpeed) {
            notMet.add("The speed is below the least design speed for maximum gust intensity.");
        }
        if (!hasMarginToOperatingLimit) {
            notMet.add("The speed is not less than the maximum operating limit less 35 kn true.");
        }
        return List.copyOf(notMet);
    }
}
