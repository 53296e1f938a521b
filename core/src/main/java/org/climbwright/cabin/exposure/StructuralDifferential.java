package org.climbwright.cabin.exposure;

import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.DifferentialPressure;

/**
 * The differential pressure that a structure must bear by rule: a factor on the highest setting of
 * the relief valves.
 *
 * <p>On the relief setting, which is above the differential that the controller schedules: the
 * three are three numbers.
 *
 * <p>Limits of use: a figure of design, with other loads left out. No margin that a crew may use;
 * the limits of an aeroplane are in its flight manual.
 *
 * @source 14 CFR 25.365(d), read in a superseded edition and in the twin rule AP-25 25.365, which
 *     has the split at 13,700 m (44,948 ft) for 45,000 ft; 23.365(d) and 23.2225(c)(3)
 */
public final class StructuralDifferential {
    private static final double SPLIT_M = PressureAltitude.ofFeet(45_000).inMetres();
    private static final double TRANSPORT = 1.33;
    private static final double TRANSPORT_ABOVE_SPLIT = 1.67;
    private static final double SMALL = 1.33;

    private static final ModelRange APPROVED =
            new ModelRange(
                    "approved altitude", 0.0, 32000.0, "m", "no pressurised aeroplane flies there");
    private static final ModelRange RELIEF =
            new ModelRange(
                    "setting of the relief valves", 0.0, 101325.0, "Pa", "a cabin has less air");

    private StructuralDifferential() {}

    /**
     * Tells whether there is a factor for an approved altitude.
     *
     * @param approvedM highest pressure altitude that the aeroplane is approved for [m]
     * @return true from 0 to 32000 m
     */
    public static boolean coversApprovedAltitude(double approvedM) {
        return APPROVED.covers(approvedM);
    }

    /**
     * Tells whether a relief setting can be one.
     *
     * @param reliefPa highest setting of the relief valves [Pa]
     * @return true from 0 to 101325 Pa
     */
    public static boolean coversRelief(double reliefPa) {
        return RELIEF.covers(reliefPa);
    }

    /**
     * Returns the factor of transport aeroplanes.
     *
     * @param approvedM highest pressure altitude that the aeroplane is approved for [m], 0 to 32000
     * @return 1.33 up to and including 45,000 ft, to 1e-6 m, 1.67 above
     * @throws org.climbwright.quantity.OutsideModelException if the altitude is out of range
     * @accuracy the figures as written
     * @source 14 CFR 25.365(d), see the class comment
     */
    public static double transportFactor(double approvedM) {
        boolean isAbove = Level.isAbove(APPROVED.check(approvedM), SPLIT_M);
        return isAbove ? TRANSPORT_ABOVE_SPLIT : TRANSPORT;
    }

    /**
     * Returns the factor of small aeroplanes, whatever their altitude.
     *
     * @return 1.33
     * @source 14 CFR 23.365(d) and 23.2225(c)(3)
     */
    public static double smallFactor() {
        return SMALL;
    }

    /**
     * Returns the differential that the structure of a transport aeroplane must bear.
     *
     * @param relief highest setting of the relief valves, 0 to 101325 Pa
     * @param approved highest pressure altitude that the aeroplane is approved for, 0 to 32000 m
     * @return relief setting times {@link #transportFactor}
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     */
    public static DifferentialPressure transport(
            DifferentialPressure relief, PressureAltitude approved) {
        return DifferentialPressure.ofPascals(
                RELIEF.check(relief.inPascals()) * transportFactor(approved.inMetres()));
    }

    /**
     * Returns the differential that the structure of a small aeroplane must bear.
     *
     * @param relief highest setting of the relief valves, 0 to 101325 Pa
     * @return relief setting times {@link #smallFactor}
     * @throws org.climbwright.quantity.OutsideModelException if the setting is out of range
     */
    public static DifferentialPressure small(DifferentialPressure relief) {
        return DifferentialPressure.ofPascals(RELIEF.check(relief.inPascals()) * smallFactor());
    }
}
