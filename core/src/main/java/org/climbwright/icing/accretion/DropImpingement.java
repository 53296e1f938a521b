package org.climbwright.icing.accretion;

import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.OutsideModelException;

/**
 * How much of the cloud water before a cylinder hits it, in SI doubles.
 *
 * <p>A drop that is heavy and fast against the size of the obstacle flies on and hits; a small one
 * goes round with the air. The inertia parameter K tells which, and its <em>modified</em> form K₀
 * allows for the drag of drops faster than Stokes's law. Two definitions of K₀ are in print under
 * one symbol: {@link #langmuirModifiedInertia} and {@link #productModifiedInertia}. The
 * efficiencies here go with the first, on the <em>radius</em>; with the length of a chart use what
 * the chart uses.
 *
 * <p>Limits of use: a clean cylinder across the flow, drops of one size, no splashing of large
 * ones. A leading edge is near a cylinder only about its stagnation line.
 *
 * @source I. Langmuir and K. B. Blodgett, AAF Technical Report 5418 (1946); DOT/FAA/CT-88/8-1,
 *     Aircraft Icing Handbook, examples 2-1 to 2-4; NASA/CR-2004-212875, equations 3.8 to 3.13
 */
public final class DropImpingement {
    /** Density of water [kg/m³]. */
    public static final double WATER_DENSITY_KG_PER_M3 = 1000.0;

    /** At and below this inertia no drop hits a cylinder. */
    private static final double NO_CATCH = 0.125;

    /** Where the second formula of the overall efficiency takes over. */
    private static final double SECOND_FORMULA = 1.1;

    /** Below this Reynolds number the fit takes Stokes's law. */
    private static final double STOKES = 0.752;

    private static final ModelRange DIAMETER =
            new ModelRange("drop diameter", 1e-7, 2e-3, "m", "larger drops break up");

    private static final ModelRange RADIUS =
            new ModelRange("radius", 1e-4, 100.0, "m", "no part of an aeroplane is outside");

    private static final ModelRange SPEED =
            new ModelRange("true airspeed", 0.0, 400.0, "m/s", "the flow is to be subsonic");

    static final ModelRange DENSITY =
            new ModelRange("density of air", 1e-3, 5.0, "kg/m³", "no cloud is outside");

    static final ModelRange VISCOSITY =
            new ModelRange("dynamic viscosity of air", 5e-6, 3e-5, "Pa·s", "no cloud is outside");

    private static final ModelRange REYNOLDS =
            new ModelRange(
                    "Reynolds number of the drop",
                    0.0,
                    3000.0,
                    "",
                    "the formulas depart from the table of Langmuir and Blodgett beyond");

    private static final ModelRange INERTIA =
            new ModelRange("inertia parameter", 0.0, 1e6, "", "no drop before a wing is outside");

    private static final ModelRange RATIO =
            new ModelRange("range ratio", 0.0, 1.0, "", "drag is at least Stokes's");

    private DropImpingement() {}

    /**
     * Tells whether the formulas take a drop, a cylinder and a speed.
     *
     * @param dropDiameterM diameter of the drop [m]
     * @param tasMps true airspeed [m/s]
     * @param radiusM radius of the cylinder or of the leading edge [m]
     * @return true if {@link #inertiaParameter} takes these, in air of a cloud
     */
    public static boolean covers(double dropDiameterM, double tasMps, double radiusM) {
        return DIAMETER.covers(dropDiameterM) && SPEED.covers(tasMps) && RADIUS.covers(radiusM);
    }

    /**
     * Returns the inertia parameter of a drop: {@code K = ρw d² V / (18 µ R)}.
     *
     * @param dropDiameterM diameter of the drop [m], 1e-7 to 2e-3
     * @param tasMps true airspeed [m/s], 0 to 400
     * @param dynamicViscosityPaS dynamic viscosity of the air [Pa·s]
     * @param radiusM radius of the cylinder or of the leading edge [m]; charts that are based on
     *     diameter or chord take that in its place
     * @return K, a plain number
     * @throws OutsideModelException if a value is out of range
     * @accuracy 3 ulp
     * @source DOT/FAA/CT-88/8-1, example 2-1; the constant 1.985e-12 printed in its equation 2-15
     *     is a misprint for 1.958e-12
     */
    public static double inertiaParameter(
            double dropDiameterM, double tasMps, double dynamicViscosityPaS, double radiusM) {
        double d = DIAMETER.check(dropDiameterM);
        return WATER_DENSITY_KG_PER_M3
                * d
                * d
                * SPEED.check(tasMps)
                / (18.0 * VISCOSITY.check(dynamicViscosityPaS) * RADIUS.check(radiusM));
    }

    /**
     * Returns the Reynolds number of a drop in the free stream: {@code ρ V d / µ}.
     *
     * @param dropDiameterM diameter of the drop [m], 1e-7 to 2e-3
     * @param tasMps true airspeed [m/s], 0 to 400
     * @param densityKgPerM3 density of the air [kg/m³]
     * @param dynamicViscosityPaS dynamic viscosity of the air [Pa·s]
     * @return the Reynolds number
     * @throws OutsideModelException if a value is out of range
     * @accuracy 2 ulp
     * @source definition
     */
    public static double dropReynoldsNumber(
            double dropDiameterM,
            double tasMps,
            double densityKgPerM3,
            double dynamicViscosityPaS) {
        return DENSITY.check(densityKgPerM3)
                * SPEED.check(tasMps)
                * DIAMETER.check(dropDiameterM)
                / VISCOSITY.check(dynamicViscosityPaS);
    }

    /**
     * Tells whether there is a range ratio.
     *
     * @param dropReynoldsNumber Reynolds number of the drop
     * @return true from 0 to 3000
     */
    public static boolean coversReynoldsNumber(double dropReynoldsNumber) {
        return REYNOLDS.covers(dropReynoldsNumber);
    }

    /**
     * Returns how far a drop flies into still air, against what Stokes's law gives, by the closed
     * integral {@code 18 (Re^(-2/3) - (√6 / Re) arctan(Re^(1/3) / √6))}.
     *
     * @param dropReynoldsNumber Reynolds number of the drop, 0 to 3000
     * @return the ratio, 1 at 0, falling
     * @throws OutsideModelException if the Reynolds number is out of range
     * @accuracy 1e-13 of the formula; the formula within 2 % of Langmuir and Blodgett's table up to
     *     1000, within 6 % to 3000
     * @source DOT/FAA/CT-88/8-1, equation 2-10, divided by K
     */
    public static double rangeRatioByIntegral(double dropReynoldsNumber) {
        double u = StrictMath.cbrt(REYNOLDS.check(dropReynoldsNumber)) / Math.sqrt(6.0);
        double v = u * u;
        if (v < 1e-3) { // the series of the same: the difference would lose its digits
            return 1.0 - v * (3.0 / 5.0 - v * (3.0 / 7.0 - v * (3.0 / 9.0 - v * (3.0 / 11.0))));
        }
        return 3.0 * (1.0 - StrictMath.atan(u) / u) / v;
    }

    /**
     * Returns how far a drop flies into still air, against what Stokes's law gives, by a fit:
     * {@code 1 / (0.8388 + 0.001483 Re + 0.1847 √Re)}, and 1 below a Reynolds number of 0.752.
     *
     * <p>Better than {@link #rangeRatioByIntegral} above a Reynolds number of 10, where most drops
     * of a cloud are, and worse below.
     *
     * @param dropReynoldsNumber Reynolds number of the drop, 0 to 3000
     * @return the ratio, 1 at 0, falling
     * @throws OutsideModelException if the Reynolds number is out of range
     * @accuracy 3 ulp of the formula; the formula within 1.1 % of Langmuir and Blodgett's table
     *     from 10 to 1000, within 6.5 % below and 4.2 % to 3000
     * @source NASA/CR-2004-212875, equation 3.12, as cited in a public implementation
     */
    public static double rangeRatioByFit(double dropReynoldsNumber) {
        double re = REYNOLDS.check(dropReynoldsNumber);
        return re < STOKES ? 1.0 : 1.0 / (0.8388 + 0.001483 * re + 0.1847 * Math.sqrt(re));
    }

    /**
     * Returns the modified inertia parameter of Langmuir and Blodgett, and of NASA: {@code K₀ = 1/8
     * + ratio (K - 1/8)}.
     *
     * @param inertiaParameter K
     * @param rangeRatio how far the drop flies against Stokes's law, 0 to 1
     * @return K₀; 1/8 or less, and then no drop hits a cylinder, exactly where K is
     * @throws OutsideModelException if a value is out of range
     * @accuracy 2 ulp
     * @source Langmuir and Blodgett, equation 40; NASA/CR-2004-212875, equation 3.8
     */
    public static double langmuirModifiedInertia(double inertiaParameter, double rangeRatio) {
        return NO_CATCH + RATIO.check(rangeRatio) * (INERTIA.check(inertiaParameter) - NO_CATCH);
    }

    /**
     * Returns the modified inertia parameter as a product, the other definition in print: {@code K₀
     * = ratio K}.
     *
     * @param inertiaParameter K
     * @param rangeRatio how far the drop flies against Stokes's law, 0 to 1
     * @return K₀ for charts that are drawn with this definition, not for the efficiencies here
     * @throws OutsideModelException if a value is out of range
     * @accuracy 1 ulp
     * @source DOT/FAA/CT-88/8-1, example 2-1; AEDC-TR-85-30
     */
    public static double productModifiedInertia(double inertiaParameter, double rangeRatio) {
        return RATIO.check(rangeRatio) * INERTIA.check(inertiaParameter);
    }

    /**
     * Returns the share of the water in the way of the stagnation line of a cylinder that hits it:
     * {@code x / (1 + x)} with {@code x = 1.40 (K₀ - 1/8)^0.84}.
     *
     * @param modifiedInertia {@link #langmuirModifiedInertia} on the radius
     * @return collection efficiency, 0 to 1, rising; 0 where no drop hits
     * @throws OutsideModelException if the parameter is out of range
     * @accuracy 1e-14 of the formula; the formula within 0.05 of Langmuir and Blodgett's table for
     *     φ = Re²/K up to 10,000
     * @source NASA/CR-2004-212875, equation 3.13
     */
    public static double stagnationEfficiency(double modifiedInertia) {
        double k0 = INERTIA.check(modifiedInertia);
        if (k0 <= NO_CATCH) {
            return 0.0;
        }
        double x = 1.40 * StrictMath.pow(k0 - NO_CATCH, 0.84);
        return x / (1.0 + x);
    }

    /**
     * Returns the share of the water in the way of a whole cylinder that hits it: {@code 0.466
     * (log10(8 K₀))²} up to 1.1, and {@code K₀ / (K₀ + π/2)} above.
     *
     * @param modifiedInertia {@link #langmuirModifiedInertia} on the radius
     * @return collection efficiency, 0 to 1, rising but for the joint at 1.1, where the formulas of
     *     the source do not meet and it falls by 0.0038; 0 where no drop hits
     * @throws OutsideModelException if the parameter is out of range
     * @accuracy 1e-14 of the formula; the formula within 0.05 of Langmuir and Blodgett's table for
     *     φ = Re²/K up to 10,000
     * @source Langmuir and Blodgett, equations 33 and 34, as cited in a public implementation
     */
    public static double overallEfficiency(double modifiedInertia) {
        double k0 = INERTIA.check(modifiedInertia);
        if (k0 <= NO_CATCH) {
            return 0.0;
        }
        double decades = StrictMath.log10(8.0 * k0);
        return k0 <= SECOND_FORMULA ? 0.466 * decades * decades : k0 / (k0 + Math.PI / 2.0);
    }
}
