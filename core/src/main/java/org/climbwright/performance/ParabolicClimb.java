package org.climbwright.performance;

import org.climbwright.quantity.ModelRange;

/**
 * The closed forms of the textbooks for a climb on a parabolic polar, in SI doubles: best rate,
 * steepest angle and least sink, of thrust or of power that does not change with speed.
 *
 * <p>They take lift for equal to weight, and a true airspeed that does not change on the way: at
 * 15° the lift is 3.4 % less. {@link ClimbBalance} assumes neither; these are for teaching, for
 * first estimates and for checking it.
 *
 * <pre>{@code
 * double best = ParabolicClimb.speedOfBestClimb(6e5, 120.0, 0.018, 0.043, 1.225, 1.5e5);
 * best                                                                  // 197.8…, m/s
 * ParabolicClimb.rateOfClimb(6e5, 120.0, 0.018, 0.043, 1.225, 1.5e5, best)  // 30.6…, m/s
 * ParabolicClimb.maximumLiftToDrag(0.018, 0.043)                        // 17.97…
 * }</pre>
 *
 * <p>Limits of use: no rise of drag near the speed of sound, no stall: a speed found here may be
 * one that the aeroplane cannot or may not fly. Not the climb speeds of a flight manual.
 *
 * @source J. D. Anderson, Aircraft Performance and Design, chapter 5, equations of climb at
 *     constant thrust and at constant power, seen through its printed examples 5.11 and 5.16 to
 *     5.18 and table 5.1 (form of the equations from memory); derived again from {@code V (T - D) /
 *     W}
 */
public final class ParabolicClimb {
    private static final ModelRange WEIGHT =
            new ModelRange("weight", 1.0, 1e8, "N", "it is a force: mass times gravity");
    private static final ModelRange DENSITY =
            new ModelRange("density", 1e-3, 3.0, "kg/m³", "no air that aeroplanes fly in");
    private static final ModelRange SPEED =
            new ModelRange("true airspeed", 1.0, 1500.0, "m/s", "an aeroplane must move");
    private static final ModelRange THRUST =
            new ModelRange("thrust", 0.0, 1e8, "N", "it is that of all engines, along the path");
    private static final ModelRange POWER =
            new ModelRange("power of the thrust", 0.0, 1e9, "W", "that of the shafts is larger");

    /** Newton's steps grow in digits; these are far more than it takes. */
    private static final int MOST_STEPS = 100;

    private ParabolicClimb() {}

    /**
     * Tells whether an aeroplane in some air has these speeds.
     *
     * @param weightN weight [N]
     * @param wingAreaM2 wing area [m²]
     * @param zeroLiftDragCoefficient drag coefficient without lift
     * @param inducedDragFactor what the square of the lift coefficient is multiplied by
     * @param densityKgPerM3 density [kg/m³]
     * @return true if {@link #speedOfLeastDrag}, {@link #speedOfLeastPower} and {@link #leastSink}
     *     answer
     */
    public static boolean covers(
            double weightN,
            double wingAreaM2,
            double zeroLiftDragCoefficient,
            double inducedDragFactor,
            double densityKgPerM3) {
        return WEIGHT.covers(weightN)
                && DENSITY.covers(densityKgPerM3)
                && ParabolicPolar.covers(wingAreaM2, zeroLiftDragCoefficient, inducedDragFactor);
    }

    /**
     * Tells whether the functions of a thrust take it.
     *
     * @param thrustN thrust [N]
     * @return true if they do
     */
    public static boolean coversThrust(double thrustN) {
        return THRUST.covers(thrustN);
    }

    /**
     * Tells whether the functions of a power take it.
     *
     * @param powerW power of the thrust [W]
     * @return true if they do
     */
    public static boolean coversPower(double powerW) {
        return POWER.covers(powerW);
    }

    /**
     * Tells whether the functions of a speed take it.
     *
     * @param tasMps true airspeed [m/s]
     * @return true if they do
     */
    public static boolean coversSpeed(double tasMps) {
        return SPEED.covers(tasMps);
    }

    private static void check(
            double weightN,
            double wingAreaM2,
            double zeroLiftDragCoefficient,
            double inducedDragFactor,
            double densityKgPerM3) {
        WEIGHT.check(weightN);
        DENSITY.check(densityKgPerM3);
        ParabolicPolar.check(wingAreaM2, zeroLiftDragCoefficient, inducedDragFactor);
    }

    /**
     * Tells whether a polar has a largest ratio of lift to drag.
     *
     * @param zeroLiftDragCoefficient drag coefficient without lift
     * @param inducedDragFactor what the square of the lift coefficient is multiplied by
     * @return true if {@link #maximumLiftToDrag} and {@link #liftCoefficientOfLeastDrag} answer
     */
    public static boolean coversPolar(double zeroLiftDragCoefficient, double inducedDragFactor) {
        return ParabolicPolar.covers(1.0, zeroLiftDragCoefficient, inducedDragFactor);
    }

    /**
     * Returns the largest ratio of lift to drag: {@code 1 / (2 sqrt(K C_D0))}.
     *
     * @param zeroLiftDragCoefficient {@code C_D0}, 0.0001 to 1
     * @param inducedDragFactor {@code K}, 0.001 to 10
     * @return lift over drag
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 3 ulp
     * @source see the class comment
     */
    public static double maximumLiftToDrag(
            double zeroLiftDragCoefficient, double inducedDragFactor) {
        ParabolicPolar.check(1.0, zeroLiftDragCoefficient, inducedDragFactor);
        return 0.5 / Math.sqrt(inducedDragFactor * zeroLiftDragCoefficient);
    }

    /**
     * Returns the lift coefficient of the least drag: {@code sqrt(C_D0 / K)}.
     *
     * @param zeroLiftDragCoefficient {@code C_D0}, 0.0001 to 1
     * @param inducedDragFactor {@code K}, 0.001 to 10
     * @return lift coefficient
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 2 ulp
     * @source see the class comment
     */
    public static double liftCoefficientOfLeastDrag(
            double zeroLiftDragCoefficient, double inducedDragFactor) {
        ParabolicPolar.check(1.0, zeroLiftDragCoefficient, inducedDragFactor);
        return Math.sqrt(zeroLiftDragCoefficient / inducedDragFactor);
    }

    /**
     * Returns the drag where lift is weight.
     *
     * @param weightN weight [N], 1 to 1e8
     * @param wingAreaM2 wing area [m²], 0.1 to 5000
     * @param zeroLiftDragCoefficient {@code C_D0}, 0.0001 to 1
     * @param inducedDragFactor {@code K}, 0.001 to 10
     * @param densityKgPerM3 density [kg/m³], 0.001 to 3
     * @param tasMps true airspeed [m/s], 1 to 1500
     * @return drag [N]
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 6 ulp
     * @source see the class comment
     */
    public static double drag(
            double weightN,
            double wingAreaM2,
            double zeroLiftDragCoefficient,
            double inducedDragFactor,
            double densityKgPerM3,
            double tasMps) {
        check(weightN, wingAreaM2, zeroLiftDragCoefficient, inducedDragFactor, densityKgPerM3);
        SPEED.check(tasMps);
        return ParabolicPolar.drag(
                weightN,
                0.5 * densityKgPerM3 * tasMps * tasMps,
                wingAreaM2,
                zeroLiftDragCoefficient,
                inducedDragFactor);
    }

    /**
     * Returns the rate of climb at a thrust: {@code V (T - D) / W}.
     *
     * @param weightN weight [N], 1 to 1e8
     * @param wingAreaM2 wing area [m²], 0.1 to 5000
     * @param zeroLiftDragCoefficient {@code C_D0}, 0.0001 to 1
     * @param inducedDragFactor {@code K}, 0.001 to 10
     * @param densityKgPerM3 density [kg/m³], 0.001 to 3
     * @param thrustN thrust [N], 0 to 1e8; of propellers, the power of the thrust over the speed
     * @param tasMps true airspeed [m/s], 1 to 1500
     * @return rate [m/s], below 0 where the drag is more
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 8 ulp of {@code V T / W} and of {@code V D / W}
     * @source see the class comment
     */
    public static double rateOfClimb(
            double weightN,
            double wingAreaM2,
            double zeroLiftDragCoefficient,
            double inducedDragFactor,
            double densityKgPerM3,
            double thrustN,
            double tasMps) {
        double drag =
                drag(
                        weightN,
                        wingAreaM2,
                        zeroLiftDragCoefficient,
                        inducedDragFactor,
                        densityKgPerM3,
                        tasMps);
        return tasMps * (THRUST.check(thrustN) - drag) / weightN;
    }

    /**
     * Returns the speed of the best rate of climb at a thrust that does not change with speed:
     * {@code sqrt(T Z / (3 rho S C_D0))}, with {@code Z = 1 + sqrt(1 + 3 / (E T / W)²)} and {@code
     * E} the largest ratio of lift to drag.
     *
     * <p>With no thrust it is the speed of the least sink.
     *
     * @param weightN weight [N], 1 to 1e8
     * @param wingAreaM2 wing area [m²], 0.1 to 5000
     * @param zeroLiftDragCoefficient {@code C_D0}, 0.0001 to 1
     * @param inducedDragFactor {@code K}, 0.001 to 10
     * @param densityKgPerM3 density [kg/m³], 0.001 to 3
     * @param thrustN thrust [N], 0 to 1e8
     * @return true airspeed [m/s]
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 6 ulp
     * @source see the class comment
     */
    public static double speedOfBestClimb(
            double weightN,
            double wingAreaM2,
            double zeroLiftDragCoefficient,
            double inducedDragFactor,
            double densityKgPerM3,
            double thrustN) {
        check(weightN, wingAreaM2, zeroLiftDragCoefficient, inducedDragFactor, densityKgPerM3);
        THRUST.check(thrustN);
        // T Z with E put in, which has no division by T
        double product = 12.0 * inducedDragFactor * zeroLiftDragCoefficient * weightN * weightN;
        double thrustZ = thrustN + Math.sqrt(Math.fma(thrustN, thrustN, product));
        return Math.sqrt(thrustZ / (3.0 * densityKgPerM3 * wingAreaM2 * zeroLiftDragCoefficient));
    }

    /**
     * Returns the speed of the least drag, which is that of the steepest climb at a thrust that
     * does not change with speed and of the flattest glide: {@code sqrt(2 W / (rho S) sqrt(K /
     * C_D0))}.
     *
     * @param weightN weight [N], 1 to 1e8
     * @param wingAreaM2 wing area [m²], 0.1 to 5000
     * @param zeroLiftDragCoefficient {@code C_D0}, 0.0001 to 1
     * @param inducedDragFactor {@code K}, 0.001 to 10
     * @param densityKgPerM3 density [kg/m³], 0.001 to 3
     * @return true airspeed [m/s]
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 4 ulp
     * @source see the class comment
     */
    public static double speedOfLeastDrag(
            double weightN,
            double wingAreaM2,
            double zeroLiftDragCoefficient,
            double inducedDragFactor,
            double densityKgPerM3) {
        check(weightN, wingAreaM2, zeroLiftDragCoefficient, inducedDragFactor, densityKgPerM3);
        return Math.sqrt(
                2.0
                        * weightN
                        / (densityKgPerM3 * wingAreaM2)
                        * Math.sqrt(inducedDragFactor / zeroLiftDragCoefficient));
    }

    /**
     * Returns the sine of the steepest angle of climb at a thrust that does not change with speed:
     * {@code T / W - 1 / E}.
     *
     * @param weightN weight [N], 1 to 1e8
     * @param zeroLiftDragCoefficient {@code C_D0}, 0.0001 to 1
     * @param inducedDragFactor {@code K}, 0.001 to 10
     * @param thrustN thrust [N], 0 to 1e8
     * @return the sine, below 0 in a glide; above 1 where lift is not weight and there is no such
     *     angle
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 3 ulp of {@code T / W} and of {@code 1 / E}
     * @source see the class comment
     */
    public static double steepestSine(
            double weightN,
            double zeroLiftDragCoefficient,
            double inducedDragFactor,
            double thrustN) {
        return THRUST.check(thrustN) / WEIGHT.check(weightN)
                - 1.0 / maximumLiftToDrag(zeroLiftDragCoefficient, inducedDragFactor);
    }

    /**
     * Returns the speed of the least power, which is that of the least sink and of the best rate of
     * climb at a power that does not change with speed: {@code sqrt(2 W / (rho S) sqrt(K / (3
     * C_D0)))}.
     *
     * @param weightN weight [N], 1 to 1e8
     * @param wingAreaM2 wing area [m²], 0.1 to 5000
     * @param zeroLiftDragCoefficient {@code C_D0}, 0.0001 to 1
     * @param inducedDragFactor {@code K}, 0.001 to 10
     * @param densityKgPerM3 density [kg/m³], 0.001 to 3
     * @return true airspeed [m/s]
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 6 ulp
     * @source see the class comment
     */
    public static double speedOfLeastPower(
            double weightN,
            double wingAreaM2,
            double zeroLiftDragCoefficient,
            double inducedDragFactor,
            double densityKgPerM3) {
        return speedOfLeastDrag(
                        weightN,
                        wingAreaM2,
                        zeroLiftDragCoefficient,
                        inducedDragFactor,
                        densityKgPerM3)
                / Math.sqrt(Math.sqrt(3.0));
    }

    /**
     * Returns the least rate of sinking without thrust: the drag's power over the weight, at the
     * speed of the least power.
     *
     * @param weightN weight [N], 1 to 1e8
     * @param wingAreaM2 wing area [m²], 0.1 to 5000
     * @param zeroLiftDragCoefficient {@code C_D0}, 0.0001 to 1
     * @param inducedDragFactor {@code K}, 0.001 to 10
     * @param densityKgPerM3 density [kg/m³], 0.001 to 3
     * @return rate of descent [m/s], above 0
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 10 ulp
     * @source see the class comment
     */
    public static double leastSink(
            double weightN,
            double wingAreaM2,
            double zeroLiftDragCoefficient,
            double inducedDragFactor,
            double densityKgPerM3) {
        double speed =
                speedOfLeastPower(
                        weightN,
                        wingAreaM2,
                        zeroLiftDragCoefficient,
                        inducedDragFactor,
                        densityKgPerM3);
        // C_D is 4 C_D0 there
        return 2.0
                * zeroLiftDragCoefficient
                * densityKgPerM3
                * wingAreaM2
                * speed
                * speed
                * speed
                / weightN;
    }

    /**
     * Returns the best rate of climb at a power that does not change with speed: {@code P / W} less
     * the least sink.
     *
     * @param weightN weight [N], 1 to 1e8
     * @param wingAreaM2 wing area [m²], 0.1 to 5000
     * @param zeroLiftDragCoefficient {@code C_D0}, 0.0001 to 1
     * @param inducedDragFactor {@code K}, 0.001 to 10
     * @param densityKgPerM3 density [kg/m³], 0.001 to 3
     * @param powerW power of the thrust, that of the shafts times the efficiency of the propellers
     *     [W], 0 to 1e9
     * @return rate [m/s], below 0 where the power does not do
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 10 ulp of {@code P / W} and of the sink
     * @source see the class comment
     */
    public static double bestRateAtPower(
            double weightN,
            double wingAreaM2,
            double zeroLiftDragCoefficient,
            double inducedDragFactor,
            double densityKgPerM3,
            double powerW) {
        return POWER.check(powerW) / weightN
                - leastSink(
                        weightN,
                        wingAreaM2,
                        zeroLiftDragCoefficient,
                        inducedDragFactor,
                        densityKgPerM3);
    }

    /**
     * Returns the speed of the steepest climb at a power that does not change with speed, where
     * {@code rho S C_D0 V⁴ + P V = 4 K W² / (rho S)}.
     *
     * <p>It lies below the speed of least drag, with much power far below it and below that of the
     * stall: then the steepest climb is the slowest that is allowed.
     *
     * @param weightN weight [N], 1 to 1e8
     * @param wingAreaM2 wing area [m²], 0.1 to 5000
     * @param zeroLiftDragCoefficient {@code C_D0}, 0.0001 to 1
     * @param inducedDragFactor {@code K}, 0.001 to 10
     * @param densityKgPerM3 density [kg/m³], 0.001 to 3
     * @param powerW power of the thrust [W], 0 to 1e9
     * @return true airspeed [m/s]
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 1e-14
     * @source derived: no change of {@code (P / V - D) / W} with speed
     */
    public static double speedOfSteepestClimbAtPower(
            double weightN,
            double wingAreaM2,
            double zeroLiftDragCoefficient,
            double inducedDragFactor,
            double densityKgPerM3,
            double powerW) {
        double speed =
                speedOfLeastDrag(
                        weightN,
                        wingAreaM2,
                        zeroLiftDragCoefficient,
                        inducedDragFactor,
                        densityKgPerM3);
        POWER.check(powerW);
        double force = densityKgPerM3 * wingAreaM2;
        double fourth = force * zeroLiftDragCoefficient;
        double level = 4.0 * inducedDragFactor * weightN * weightN / force;
        // convex and rising: Newton's steps come down from the speed of least drag, all one way
        for (int step = 0; step < MOST_STEPS; step++) {
            double cube = fourth * speed * speed * speed;
            double next = speed - (cube * speed + powerW * speed - level) / (4.0 * cube + powerW);
            if (!(next < speed)) {
                break;
            }
            speed = next;
        }
        return speed;
    }
}
