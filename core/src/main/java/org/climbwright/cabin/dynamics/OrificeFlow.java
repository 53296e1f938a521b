package org.climbwright.cabin.dynamics;

import static org.climbwright.atmosphere.IcaoConstants.GAS_CONSTANT_J_PER_KG_K;
import static org.climbwright.atmosphere.IcaoConstants.HEAT_CAPACITY_RATIO;

import org.climbwright.airspeed.AirspeedConversion;
import org.climbwright.quantity.ModelRange;

/**
 * How much air flows through an opening: an outflow valve, a leak, a hole.
 *
 * <p>The jet has the Mach number M that its pressure ratio gives air from rest, {@code pu / pd = (1
 * + M² / 5)^(7/2)}, and carries {@code m = A pu sqrt(gamma / (R Tu)) M / (1 + M² / 5)³}. At Mach 1
 * the opening is choked and carries no more, however low the pressure behind it: {@code m =
 * 0.0404147 A pu / sqrt(Tu)}. Written so, nothing cancels where the pressures are nearly equal, and
 * flow and slope are continuous at the choke.
 *
 * <pre>{@code
 * OrificeFlow.massFlow(0.01, 101325.0, 53500.0, 288.15)     // 2.41238…, kg/s
 * OrificeFlow.massFlow(0.01, 101325.0, 0.0, 288.15)         // 2.412385…, choked
 * OrificeFlow.area(1.0, 75262.36, 23842.3, 297.15)          // 0.0056672…, m²
 * }</pre>
 *
 * <p>Areas are effective ones, the discharge coefficient in them. Not for molecules that pass one
 * by one: a formula of effusion is wrong for a hole of a millimetre at a bar, and gives 1.7 times
 * the time.
 *
 * @source isentropic flow of a perfect gas, NACA Report 1135; choked flow as in the answer of A.
 *     Higgins, geoffreylandis.com/higgins.html, equation 3, after M. Saad, Compressible Fluid Flow,
 *     2nd ed., pp. 103-106
 */
public final class OrificeFlow {
    /** Downstream over upstream pressure at which an opening chokes, 0.528282. */
    public static final double CRITICAL_PRESSURE_RATIO = 1.0 / (1.728 * Math.sqrt(1.2));

    /** Choked flow over effective area and pressure, times the root of the temperature. */
    public static final double CHOKED_COEFFICIENT =
            Math.sqrt(HEAT_CAPACITY_RATIO / GAS_CONSTANT_J_PER_KG_K) / 1.728;

    /** Pressure difference over downstream pressure at the choke, 0.893. */
    private static final double CHOKED_EXCESS = 1.0 / CRITICAL_PRESSURE_RATIO - 1.0;

    private static final double COEFFICIENT =
            Math.sqrt(HEAT_CAPACITY_RATIO / GAS_CONSTANT_J_PER_KG_K);

    private static final ModelRange AREA =
            new ModelRange("effective area", 0.0, 1000.0, "m²", "no opening is larger");

    private static final ModelRange UPSTREAM =
            new ModelRange("pressure upstream", 0.1, 1e6, "Pa", "no cabin has another");

    private static final ModelRange TEMPERATURE =
            new ModelRange("temperature upstream", 100.0, 1000.0, "K", "a perfect gas ends there");

    private static final ModelRange FLOW =
            new ModelRange("mass flow", 0.0, 1e6, "kg/s", "no cabin is fed more");

    private OrificeFlow() {}

    /**
     * Tells whether a flow has an answer.
     *
     * @param areaM2 effective area [m²]
     * @param upstreamPa pressure upstream [Pa]
     * @param downstreamPa pressure downstream [Pa]
     * @param upstreamK temperature upstream [K]
     * @return true if {@link #massFlow} gives one
     */
    public static boolean covers(
            double areaM2, double upstreamPa, double downstreamPa, double upstreamK) {
        return AREA.covers(areaM2)
                && UPSTREAM.covers(upstreamPa)
                && downstreamPa >= 0.0
                && downstreamPa <= upstreamPa
                && TEMPERATURE.covers(upstreamK);
    }

    /**
     * Tells whether an opening is choked: a lower pressure behind it would let out no more.
     *
     * @param upstreamPa pressure upstream [Pa], 0.1 to 1e6
     * @param downstreamPa pressure downstream [Pa], 0 to that upstream
     * @return true at the critical ratio and below
     * @throws org.climbwright.quantity.OutsideModelException if a pressure is out of range
     */
    public static boolean isChoked(double upstreamPa, double downstreamPa) {
        checkPressures(upstreamPa, downstreamPa);
        return chokes(upstreamPa - downstreamPa, downstreamPa);
    }

    /**
     * Returns the flow through an opening.
     *
     * @param areaM2 effective area [m²], 0 to 1000
     * @param upstreamPa pressure upstream [Pa], 0.1 to 1e6
     * @param downstreamPa pressure downstream [Pa], 0 to that upstream
     * @param upstreamK temperature upstream [K], 100 to 1000
     * @return mass flow [kg/s], 0 at equal pressures
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 2e-15 relative, at every pressure ratio
     * @source see the class comment
     */
    public static double massFlow(
            double areaM2, double upstreamPa, double downstreamPa, double upstreamK) {
        AREA.check(areaM2);
        checkPressures(upstreamPa, downstreamPa);
        TEMPERATURE.check(upstreamK);
        double difference = upstreamPa - downstreamPa;
        double mach = jetMach(difference, downstreamPa);
        return areaM2 * flux(upstreamPa, mach) / Math.sqrt(upstreamK);
    }

    /**
     * Returns the effective area that lets a flow pass.
     *
     * @param massFlowKgPerS mass flow [kg/s], 0 to 1e6
     * @param upstreamPa pressure upstream [Pa], 0.1 to 1e6
     * @param downstreamPa pressure downstream [Pa], 0 to less than that upstream
     * @param upstreamK temperature upstream [K], 100 to 1000
     * @return effective area [m²]
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range, or the
     *     pressures are equal: no area lets anything pass then
     * @accuracy 2e-15 relative, at every pressure ratio
     * @source see the class comment
     */
    public static double area(
            double massFlowKgPerS, double upstreamPa, double downstreamPa, double upstreamK) {
        FLOW.check(massFlowKgPerS);
        double perArea = massFlow(1.0, upstreamPa, downstreamPa, upstreamK);
        if (!(perArea > 0.0)) {
            new ModelRange(
                            "pressure downstream",
                            0.0,
                            Math.nextDown(upstreamPa),
                            "Pa",
                            "at equal pressures nothing flows through any area")
                    .check(downstreamPa);
        }
        return massFlowKgPerS / perArea;
    }

    private static void checkPressures(double upstreamPa, double downstreamPa) {
        UPSTREAM.check(upstreamPa);
        if (!(downstreamPa >= 0.0 && downstreamPa <= upstreamPa)) {
            new ModelRange(
                            "pressure downstream",
                            0.0,
                            upstreamPa,
                            "Pa",
                            "air flows to the lower pressure, exchange the two")
                    .check(downstreamPa);
        }
    }

    private static boolean chokes(double differencePa, double downstreamPa) {
        return differencePa >= CHOKED_EXCESS * downstreamPa;
    }

    /** Mach number of the jet, at most 1. The difference comes as such, so that none is lost. */
    static double jetMach(double differencePa, double downstreamPa) {
        return chokes(differencePa, downstreamPa)
                ? 1.0
                : AirspeedConversion.machFromImpactPressure(differencePa, downstreamPa);
    }

    /** Flow over effective area, times the root of the temperature upstream. */
    static double flux(double upstreamPa, double mach) {
        double ratio = 1.0 / Math.fma(0.2 * mach, mach, 1.0);
        return COEFFICIENT * upstreamPa * mach * (ratio * ratio * ratio);
    }
}
