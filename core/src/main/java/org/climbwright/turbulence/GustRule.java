package org.climbwright.turbulence;

import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.unit.UnitScale;

/**
 * The discrete design gust and the continuous turbulence of the rule for transport aeroplanes, in
 * SI doubles.
 *
 * <p>Reference gusts are <em>equivalent</em> airspeeds, the intensity of continuous turbulence is a
 * <em>true</em> airspeed. Altitude here is pressure altitude, since the rule names no other and
 * aeroplanes are flown by it.
 *
 * <p>Limits of use: what an aeroplane is designed for, not what is met on a day, and no permission
 * to fly into it. The rule asks for a dynamic analysis; editions before amendment 25-141 ended
 * lower and had other figures.
 *
 * @source 14 CFR 25.341, amendment 25-141 (2014): (a)(2) to (a)(6), (b)(3); figures seen in public
 *     copies of the text, the typography of the equations from memory
 */
public final class GustRule {
    private static final double SEA_LEVEL_MPS = UnitScale.FOOT_PER_SECOND.toSi(56.0);
    private static final double BEND_MPS = UnitScale.FOOT_PER_SECOND.toSi(44.0);
    private static final double TOP_MPS = UnitScale.FOOT_PER_SECOND.toSi(20.86);
    private static final double BEND_M = UnitScale.FOOT.toSi(15000.0);
    private static final double TOP_M = UnitScale.FOOT.toSi(60000.0);

    /** At the design dive speed the gust, or the intensity, is this part of the one up to VC. */
    private static final double AT_DIVE_SPEED = 0.5;

    private static final double INTENSITY_SEA_LEVEL_MPS = 27.43;
    private static final double INTENSITY_ALOFT_MPS = 24.08;
    private static final double INTENSITY_BEND_M = 7315.0;

    /** The altitude of the factor for the maximum operating altitude, 250,000 ft. */
    private static final double OPERATING_SCALE_M = UnitScale.FOOT.toSi(250000.0);

    private static final double LONGEST_GRADIENT_M = UnitScale.FOOT.toSi(350.0);

    private static final ModelRange ALTITUDE =
            new ModelRange(
                    "pressure altitude",
                    0.0,
                    TOP_M,
                    "m",
                    "the rule gives gusts from sea level to 60,000 ft");

    private static final ModelRange OPERATING =
            new ModelRange(
                    "maximum operating altitude",
                    1.0,
                    TOP_M,
                    "m",
                    "the rule gives gusts from sea level to 60,000 ft");

    private static final ModelRange LANDING =
            new ModelRange(
                    "maximum landing mass over maximum take-off mass",
                    0.0,
                    1.0,
                    "",
                    "no landing mass is above that of take-off");

    private static final ModelRange ZERO_FUEL =
            new ModelRange(
                    "maximum zero-fuel mass over maximum take-off mass",
                    0.0,
                    1.0,
                    "",
                    "no zero-fuel mass is above that of take-off");

    private static final ModelRange ALLEVIATION =
            new ModelRange(
                    "flight-profile alleviation factor", 0.0, 1.0, "", "it only makes gusts less");

    private static final ModelRange GRADIENT =
            new ModelRange(
                    "gust gradient distance",
                    UnitScale.FOOT.toSi(30.0),
                    LONGEST_GRADIENT_M,
                    "m",
                    "the rule looks at gusts that rise within 30 to 350 ft");

    private static final ModelRange GUST =
            new ModelRange("gust velocity", 0.0, 100.0, "m/s", "no rule has a stronger gust");

    private GustRule() {}

    /**
     * Tells whether the rule has gusts at an altitude.
     *
     * @param pressureAltitudeM pressure altitude [m]
     * @return true from sea level to 18,288 m (60,000 ft)
     */
    public static boolean covers(double pressureAltitudeM) {
        return ALTITUDE.covers(pressureAltitudeM);
    }

    /**
     * Tells whether a gust of the rule has such a gradient distance.
     *
     * @param gradientDistanceM distance from the beginning of the gust to its peak [m]
     * @return true from 9.144 to 106.68 m (30 to 350 ft)
     */
    public static boolean coversGradient(double gradientDistanceM) {
        return GRADIENT.covers(gradientDistanceM);
    }

    /**
     * Tells whether there is a flight-profile alleviation factor.
     *
     * @param pressureAltitudeM pressure altitude [m]; 0 for the factor at sea level
     * @param operatingAltitudeM maximum operating altitude [m]
     * @param landingMassRatio maximum landing mass over maximum take-off mass
     * @param zeroFuelMassRatio maximum zero-fuel mass over maximum take-off mass
     * @return true if {@link #alleviation} answers
     */
    public static boolean coversAlleviation(
            double pressureAltitudeM,
            double operatingAltitudeM,
            double landingMassRatio,
            double zeroFuelMassRatio) {
        return OPERATING.covers(operatingAltitudeM)
                && pressureAltitudeM >= 0.0
                && pressureAltitudeM <= operatingAltitudeM
                && LANDING.covers(landingMassRatio)
                && ZERO_FUEL.covers(zeroFuelMassRatio);
    }

    /**
     * Tells whether there is a design gust.
     *
     * @param gustEasMps reference or design gust velocity [m/s]
     * @param alleviationFactor flight-profile alleviation factor
     * @param gradientDistanceM distance from the beginning of the gust to its peak [m]
     * @return true if {@link #designGust} answers, and {@link #gustAfter} for distances up to twice
     *     the gradient
     */
    public static boolean coversGust(
            double gustEasMps, double alleviationFactor, double gradientDistanceM) {
        return GUST.covers(gustEasMps)
                && ALLEVIATION.covers(alleviationFactor)
                && GRADIENT.covers(gradientDistanceM);
    }

    /**
     * Returns the reference gust velocity from the design speed for maximum gust intensity to the
     * design cruise speed: 56 ft/s at sea level, 44 ft/s at 15,000 ft, 20.86 ft/s at 60,000 ft,
     * linear between.
     *
     * @param pressureAltitudeM pressure altitude [m], 0 to 18,288
     * @return reference gust velocity, equivalent airspeed [m/s]
     * @throws OutsideModelException if the altitude is out of range
     * @accuracy 3 ulp of the rule
     * @source 14 CFR 25.341(a)(5)(i)
     */
    public static double referenceGustUpToCruiseSpeed(double pressureAltitudeM) {
        return ALTITUDE.check(pressureAltitudeM) <= BEND_M
                ? between(SEA_LEVEL_MPS, BEND_MPS, pressureAltitudeM / BEND_M)
                : between(BEND_MPS, TOP_MPS, (pressureAltitudeM - BEND_M) / (TOP_M - BEND_M));
    }

    /**
     * Returns the reference gust velocity at the design dive speed: half of {@link
     * #referenceGustUpToCruiseSpeed}.
     *
     * @param pressureAltitudeM pressure altitude [m], 0 to 18,288
     * @return reference gust velocity, equivalent airspeed [m/s]
     * @throws OutsideModelException if the altitude is out of range
     * @accuracy 3 ulp of the rule
     * @source 14 CFR 25.341(a)(5)(ii)
     */
    public static double referenceGustAtDiveSpeed(double pressureAltitudeM) {
        return AT_DIVE_SPEED * referenceGustUpToCruiseSpeed(pressureAltitudeM);
    }

    /**
     * Returns the flight-profile alleviation factor at sea level: the mean of {@code 1 - Zmo /
     * 250,000 ft} and {@code sqrt(R2 tan(pi R1 / 4))}.
     *
     * @param operatingAltitudeM maximum operating altitude [m], 1 to 18,288
     * @param landingMassRatio R1, maximum landing mass over maximum take-off mass, 0 to 1
     * @param zeroFuelMassRatio R2, maximum zero-fuel mass over maximum take-off mass, 0 to 1
     * @return the factor, 0 to 1
     * @throws OutsideModelException if a value is out of range
     * @accuracy 1e-15
     * @source 14 CFR 25.341(a)(6)
     */
    public static double alleviationAtSeaLevel(
            double operatingAltitudeM, double landingMassRatio, double zeroFuelMassRatio) {
        double byAltitude = 1.0 - OPERATING.check(operatingAltitudeM) / OPERATING_SCALE_M;
        double byMass =
                Math.sqrt(
                        ZERO_FUEL.check(zeroFuelMassRatio)
                                * StrictMath.tan(Math.PI / 4.0 * LANDING.check(landingMassRatio)));
        return 0.5 * (byAltitude + byMass);
    }

    /**
     * Returns the flight-profile alleviation factor: linear from {@link #alleviationAtSeaLevel} to
     * 1 at the maximum operating altitude.
     *
     * @param pressureAltitudeM pressure altitude [m], 0 to the maximum operating altitude
     * @param operatingAltitudeM maximum operating altitude [m], 1 to 18,288
     * @param landingMassRatio R1, maximum landing mass over maximum take-off mass, 0 to 1
     * @param zeroFuelMassRatio R2, maximum zero-fuel mass over maximum take-off mass, 0 to 1
     * @return the factor, 0 to 1
     * @throws OutsideModelException if a value is out of range
     * @accuracy 1e-15
     * @source 14 CFR 25.341(a)(6)
     */
    public static double alleviation(
            double pressureAltitudeM,
            double operatingAltitudeM,
            double landingMassRatio,
            double zeroFuelMassRatio) {
        double atSeaLevel =
                alleviationAtSeaLevel(operatingAltitudeM, landingMassRatio, zeroFuelMassRatio);
        if (!(pressureAltitudeM >= 0.0 && pressureAltitudeM <= operatingAltitudeM)) {
            throw new OutsideModelException(
                    "pressure altitude",
                    pressureAltitudeM,
                    0.0,
                    operatingAltitudeM,
                    "m",
                    "the factor runs from sea level to the maximum operating altitude");
        }
        return between(atSeaLevel, 1.0, pressureAltitudeM / operatingAltitudeM);
    }

    /**
     * Returns the design gust velocity of a gradient distance: {@code Uds = Uref Fg (H / 350
     * ft)^(1/6)}.
     *
     * @param referenceGustEasMps reference gust velocity, equivalent airspeed [m/s], 0 to 100
     * @param alleviationFactor flight-profile alleviation factor, 0 to 1
     * @param gradientDistanceM distance from the beginning of the gust to its peak [m], 9.144 to
     *     106.68
     * @return design gust velocity, equivalent airspeed [m/s]
     * @throws OutsideModelException if a value is out of range
     * @accuracy 1e-15 relative
     * @source 14 CFR 25.341(a)(4)
     */
    public static double designGust(
            double referenceGustEasMps, double alleviationFactor, double gradientDistanceM) {
        double share = GRADIENT.check(gradientDistanceM) / LONGEST_GRADIENT_M;
        return GUST.check(referenceGustEasMps)
                * ALLEVIATION.check(alleviationFactor)
                * StrictMath.cbrt(Math.sqrt(share));
    }

    /**
     * Returns the velocity inside a gust, one minus cosine: {@code U = Uds / 2 (1 - cos(pi s /
     * H))}, the full {@code Uds} at {@code s = H} and nothing at {@code s = 2 H}.
     *
     * @param distanceM s, how far the aeroplane has flown into the gust [m], 0 to 2 H
     * @param gradientDistanceM H, distance from the beginning to the peak [m], 9.144 to 106.68
     * @param designGustEasMps Uds, design gust velocity, equivalent airspeed [m/s], 0 to 100
     * @return gust velocity there, equivalent airspeed [m/s]
     * @throws OutsideModelException if a value is out of range
     * @accuracy 1e-15 of the design gust velocity
     * @source 14 CFR 25.341(a)(2)
     */
    public static double gustAfter(
            double distanceM, double gradientDistanceM, double designGustEasMps) {
        GRADIENT.check(gradientDistanceM);
        if (!(distanceM >= 0.0 && distanceM <= 2.0 * gradientDistanceM)) {
            throw new OutsideModelException(
                    "distance into the gust",
                    distanceM,
                    0.0,
                    2.0 * gradientDistanceM,
                    "m",
                    "outside there is no gust");
        }
        return 0.5
                * GUST.check(designGustEasMps)
                * (1.0 - StrictMath.cos(Math.PI * (distanceM / gradientDistanceM)));
    }

    /**
     * Returns the limit intensity of continuous turbulence from the design speed for maximum gust
     * intensity to the design cruise speed: 27.43 m/s at sea level, 24.08 m/s at 7315 m, linear
     * between and constant above, times the flight-profile alleviation factor.
     *
     * <p>At the design dive speed the rule halves it.
     *
     * @param pressureAltitudeM pressure altitude [m], 0 to 18,288
     * @param alleviationFactor flight-profile alleviation factor, 0 to 1; 1 for the reference
     *     intensity
     * @return limit turbulence intensity, <em>true</em> airspeed [m/s]
     * @throws OutsideModelException if a value is out of range
     * @accuracy 3 ulp of the rule
     * @source 14 CFR 25.341(b)(3)
     */
    public static double limitTurbulenceIntensity(
            double pressureAltitudeM, double alleviationFactor) {
        double share = Math.min(1.0, ALTITUDE.check(pressureAltitudeM) / INTENSITY_BEND_M);
        return ALLEVIATION.check(alleviationFactor)
                * between(INTENSITY_SEA_LEVEL_MPS, INTENSITY_ALOFT_MPS, share);
    }

    private static double between(double from, double to, double share) {
        return from * (1.0 - share) + to * share; // meets both ends to the last bit
    }
}
