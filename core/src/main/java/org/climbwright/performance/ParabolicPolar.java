package org.climbwright.performance;

import java.io.Serializable;
import java.util.Arrays;
import org.climbwright.numeric.Trigonometry;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.OutsideModelException;

/**
 * The drag of a parabolic polar: {@code C_D = C_D0 + K C_L²}, with what the speed of sound and
 * engines that stand still add.
 *
 * <pre>{@code
 * ParabolicPolar clean = ParabolicPolar.ofSi(120.0, 0.018, 0.043);      // m², C_D0, K
 * ParabolicPolar polar = clean
 *         .withCompressibilityRise(0.80, 0.12)       // critical Mach 0.80 - 0.12 C_L
 *         .withEngineOutDrag(2, 0.6);                // of 2 engines, m² each
 * clean.maximumLiftToDrag()                                             // 17.97…
 * clean.drag(6e5, 0.78, 1.1e4, EngineUse.climb(2))                      // 35487.…, N
 * polar.drag(6e5, 0.78, 1.1e4, EngineUse.climb(2))                      // 35524.…, N
 * }</pre>
 *
 * <p>Where the Mach number is above a critical one, which falls with the lift coefficient, the drag
 * coefficient rises by {@code 20 (M - Mcr)^4}: smooth, as the first three derivatives are. An
 * engine that stands still adds an area that is the caller's figure: of the windmilling engine or
 * the propeller, and of the rudder and the wing that hold against it; it does not depend on the
 * speed.
 *
 * <p>Limits of use: a textbook's polar, good near the lift coefficients it was fitted to, and its
 * rise some 0.05 beyond the critical Mach number and no farther. It knows no stall: what ends the
 * lift stands in {@link AeroplaneLimits}. For study and simulation; the flight manual has the
 * performance.
 *
 * @source J. D. Anderson, Aircraft Performance and Design, chapter 2, for the polar (chapter from
 *     memory); the rise is C. N. H. Lock's fourth-power law, its critical Mach number by D. Korn's
 *     relation as in W. H. Mason, Configuration Aerodynamics (from memory; formulas seen in public
 *     course work)
 */
public final class ParabolicPolar implements DragLaw, Serializable {
    private static final long serialVersionUID = 1L;

    private static final double LOCK = 20.0;

    /** Drag divergence is where the drag coefficient grows by 0.1 per Mach: 80 (M - Mcr)³ = 0.1. */
    private static final double DIVERGENCE_BEYOND_CRITICAL = 0.1077217345015942;

    /** A critical Mach number that no aeroplane reaches: without a rise. */
    private static final double NO_CRITICAL_MACH = 100.0;

    private static final ModelRange AREA =
            new ModelRange("wing area", 0.1, 5000.0, "m²", "no aeroplane has such a wing");
    private static final ModelRange ZERO_LIFT =
            new ModelRange("zero-lift drag coefficient", 1e-4, 1.0, "", "a wing is some 0.02");
    private static final ModelRange INDUCED =
            new ModelRange("induced drag factor", 1e-3, 10.0, "", "it is some 0.04 to 0.1");
    private static final ModelRange ASPECT_RATIO =
            new ModelRange("aspect ratio", 0.5, 60.0, "", "it is span squared over wing area");
    private static final ModelRange OSWALD =
            new ModelRange("Oswald factor", 0.2, 1.2, "", "it is 1 for an elliptic lift");
    private static final ModelRange CRITICAL =
            new ModelRange("critical Mach number", 0.2, 2.0, "", "it is that without lift");
    private static final ModelRange FALL =
            new ModelRange("fall of the critical Mach number", 0.0, 2.0, "", "it is per C_L");
    private static final ModelRange SWEEP =
            new ModelRange("sweep", -1.1, 1.1, "rad", "the law is for swept wings, in radians");
    private static final ModelRange TECHNOLOGY =
            new ModelRange("technology factor", 0.7, 1.1, "", "it is some 0.87 to 0.95");
    private static final ModelRange THICKNESS =
            new ModelRange("thickness ratio", 0.01, 0.4, "", "thickness is a share of the chord");
    private static final ModelRange ENGINES =
            new ModelRange(
                    "number of engines", 1.0, 100.0, "", "an aeroplane that climbs has some");
    private static final ModelRange ENGINE_OUT_AREA =
            new ModelRange("drag area of an engine", 0.0, 100.0, "m²", "it is drag over q");

    private static final ModelRange LIFT =
            new ModelRange("lift", 0.0, 1e10, "N", "an aeroplane that climbs is carried");
    private static final ModelRange MACH =
            new ModelRange("Mach number", 0.0, 5.0, "", "it is a speed");
    private static final ModelRange DYNAMIC_PRESSURE =
            new ModelRange("dynamic pressure", 1e-3, 1e7, "Pa", "an aeroplane must move");

    private final double wingAreaM2;
    private final double zeroLiftDragCoefficient;
    private final double inducedDragFactor;
    private final double criticalMach;
    private final double criticalMachPerLift;
    private final int engines;
    private final double engineOutAreaM2;

    private ParabolicPolar(
            double wingAreaM2,
            double zeroLiftDragCoefficient,
            double inducedDragFactor,
            double criticalMach,
            double criticalMachPerLift,
            int engines,
            double engineOutAreaM2) {
        check(wingAreaM2, zeroLiftDragCoefficient, inducedDragFactor);
        this.wingAreaM2 = wingAreaM2;
        this.zeroLiftDragCoefficient = zeroLiftDragCoefficient;
        this.inducedDragFactor = inducedDragFactor;
        this.criticalMach = criticalMach;
        this.criticalMachPerLift = criticalMachPerLift;
        this.engines = engines;
        this.engineOutAreaM2 = engineOutAreaM2;
    }

    /**
     * Tells whether a polar can have such figures.
     *
     * @param wingAreaM2 wing area [m²]
     * @param zeroLiftDragCoefficient drag coefficient without lift
     * @param inducedDragFactor what the square of the lift coefficient is multiplied by
     * @return true if {@link #ofSi} takes them
     */
    public static boolean covers(
            double wingAreaM2, double zeroLiftDragCoefficient, double inducedDragFactor) {
        return AREA.covers(wingAreaM2)
                && ZERO_LIFT.covers(zeroLiftDragCoefficient)
                && INDUCED.covers(inducedDragFactor);
    }

    static void check(double wingAreaM2, double zeroLiftDragCoefficient, double inducedDragFactor) {
        AREA.check(wingAreaM2);
        ZERO_LIFT.check(zeroLiftDragCoefficient);
        INDUCED.check(inducedDragFactor);
    }

    /**
     * Returns a polar without rise at high Mach numbers, of an aeroplane whose engines run.
     *
     * @param wingAreaM2 the area that the coefficients refer to [m²], 0.1 to 5000
     * @param zeroLiftDragCoefficient {@code C_D0}, 0.0001 to 1
     * @param inducedDragFactor {@code K}, 0.001 to 10
     * @return the polar
     * @throws OutsideModelException if a value is out of range
     */
    public static ParabolicPolar ofSi(
            double wingAreaM2, double zeroLiftDragCoefficient, double inducedDragFactor) {
        return new ParabolicPolar(
                wingAreaM2,
                zeroLiftDragCoefficient,
                inducedDragFactor,
                NO_CRITICAL_MACH,
                0.0,
                1,
                0.0);
    }

    /**
     * Tells whether a wing has an induced drag factor.
     *
     * @param aspectRatio span squared over wing area
     * @param oswaldFactor Oswald factor
     * @return true if {@link #inducedDragFactor(double, double)} answers
     */
    public static boolean coversWing(double aspectRatio, double oswaldFactor) {
        return ASPECT_RATIO.covers(aspectRatio) && OSWALD.covers(oswaldFactor);
    }

    /**
     * Returns the induced drag factor of a wing: {@code K = 1 / (pi A e)}.
     *
     * @param aspectRatio span squared over wing area, 0.5 to 60
     * @param oswaldFactor Oswald factor, 0.2 to 1.2; 1 for an elliptic lift
     * @return {@code K}
     * @throws OutsideModelException if a value is out of range
     * @accuracy 3 ulp
     * @source J. D. Anderson, Aircraft Performance and Design, chapter 2 (from memory)
     */
    public static double inducedDragFactor(double aspectRatio, double oswaldFactor) {
        return 1.0 / (Math.PI * ASPECT_RATIO.check(aspectRatio) * OSWALD.check(oswaldFactor));
    }

    /**
     * Returns this polar with a rise of the drag above a critical Mach number.
     *
     * @param criticalMach the critical Mach number without lift, 0.2 to 2
     * @param fallPerLiftCoefficient how much smaller it is for a lift coefficient of 1, 0 to 2
     * @return a copy that differs in it
     * @throws OutsideModelException if a value is out of range
     */
    public ParabolicPolar withCompressibilityRise(
            double criticalMach, double fallPerLiftCoefficient) {
        return new ParabolicPolar(
                wingAreaM2,
                zeroLiftDragCoefficient,
                inducedDragFactor,
                CRITICAL.check(criticalMach),
                FALL.check(fallPerLiftCoefficient),
                engines,
                engineOutAreaM2);
    }

    /**
     * Returns this polar with the rise of a swept wing: drag diverges at {@code k / cos s - t /
     * cos² s - C_L / (10 cos³ s)}, and the critical Mach number is 0.108 less.
     *
     * @param technologyFactor {@code k}, 0.7 to 1.1; 0.87 for older sections, 0.95 for
     *     supercritical ones
     * @param thicknessRatio {@code t}, thickness over chord, 0.01 to 0.4
     * @param sweepRad {@code s}, sweep [rad], -1.1 to 1.1
     * @return a copy that differs in it
     * @throws OutsideModelException if a value is out of range, or the critical Mach number is
     */
    public ParabolicPolar withSweptWingRise(
            double technologyFactor, double thicknessRatio, double sweepRad) {
        double cosine = Trigonometry.cos(SWEEP.check(sweepRad));
        double divergence =
                (TECHNOLOGY.check(technologyFactor) - THICKNESS.check(thicknessRatio) / cosine)
                        / cosine;
        return withCompressibilityRise(
                divergence - DIVERGENCE_BEYOND_CRITICAL, 0.1 / (cosine * cosine * cosine));
    }

    /**
     * Returns this polar with the drag of engines that stand still.
     *
     * @param engines how many engines the aeroplane has, 1 to 100
     * @param dragAreaM2 what one of them adds, with the yaw it causes, as drag over dynamic
     *     pressure [m²], 0 to 100
     * @return a copy that differs in it
     * @throws OutsideModelException if a value is out of range
     */
    public ParabolicPolar withEngineOutDrag(int engines, double dragAreaM2) {
        ENGINES.check(engines);
        return new ParabolicPolar(
                wingAreaM2,
                zeroLiftDragCoefficient,
                inducedDragFactor,
                criticalMach,
                criticalMachPerLift,
                engines,
                ENGINE_OUT_AREA.check(dragAreaM2));
    }

    /**
     * Returns the drag of a polar alone: {@code q S C_D0 + K L² / (q S)}. Checks nothing.
     *
     * @param liftN lift [N]
     * @param dynamicPressurePa dynamic pressure [Pa], above 0
     * @param wingAreaM2 wing area [m²]
     * @param zeroLiftDragCoefficient {@code C_D0}
     * @param inducedDragFactor {@code K}
     * @return drag [N]
     * @accuracy 3 ulp
     * @source see the class comment
     */
    static double drag(
            double liftN,
            double dynamicPressurePa,
            double wingAreaM2,
            double zeroLiftDragCoefficient,
            double inducedDragFactor) {
        double force = dynamicPressurePa * wingAreaM2;
        return Math.fma(force, zeroLiftDragCoefficient, inducedDragFactor * liftN * liftN / force);
    }

    /**
     * Returns the drag.
     *
     * @param liftN lift [N], 0 to 1e10; NaN where it is not known
     * @param mach Mach number, 0 to 5
     * @param dynamicPressurePa dynamic pressure [Pa], 0.001 to 1e7
     * @param use how the engines are used; those of {@link #withEngineOutDrag} that do not run add
     *     drag
     * @return drag [N], above 0; NaN where the lift is, as on the way of an iteration that finds no
     *     angle
     * @throws OutsideModelException if a value is out of range, or more engines run than the
     *     aeroplane has, where that is known
     * @accuracy 10 ulp
     * @source see the class comment
     */
    @Override
    public double drag(double liftN, double mach, double dynamicPressurePa, EngineUse use) {
        MACH.check(mach);
        DYNAMIC_PRESSURE.check(dynamicPressurePa);
        if (liftN < 0.0 || liftN > LIFT.highest()) { // NaN passes
            LIFT.check(liftN);
        }
        double drag =
                drag(
                        liftN,
                        dynamicPressurePa,
                        wingAreaM2,
                        zeroLiftDragCoefficient,
                        inducedDragFactor);
        double force = dynamicPressurePa * wingAreaM2;
        double beyond = Math.fma(criticalMachPerLift, liftN / force, mach - criticalMach);
        if (beyond > 0.0) {
            double square = beyond * beyond;
            drag = Math.fma(LOCK * force, square * square, drag);
        }
        return engineOutAreaM2 > 0.0
                ? Math.fma(standing(use.operating()) * engineOutAreaM2, dynamicPressurePa, drag)
                : drag;
    }

    private int standing(int operating) {
        if (operating > engines) {
            throw new OutsideModelException(
                    "number of engines that run", operating, 1.0, engines, "", "it has no more");
        }
        return engines - operating;
    }

    /**
     * Returns the wing area.
     *
     * @return the area that the coefficients refer to [m²]
     */
    public double wingAreaM2() {
        return wingAreaM2;
    }

    /**
     * Returns the drag coefficient without lift.
     *
     * @return {@code C_D0}
     */
    public double zeroLiftDragCoefficient() {
        return zeroLiftDragCoefficient;
    }

    /**
     * Returns what the square of the lift coefficient is multiplied by.
     *
     * @return {@code K}
     */
    public double inducedDragFactor() {
        return inducedDragFactor;
    }

    /**
     * Returns the largest ratio of lift to drag, with all engines and below the critical Mach
     * number.
     *
     * @return see {@link ParabolicClimb#maximumLiftToDrag}
     */
    public double maximumLiftToDrag() {
        return ParabolicClimb.maximumLiftToDrag(zeroLiftDragCoefficient, inducedDragFactor);
    }

    /** The figures in their order, for comparing. */
    private double[] figures() {
        return new double[] {
            wingAreaM2,
            zeroLiftDragCoefficient,
            inducedDragFactor,
            criticalMach,
            criticalMachPerLift,
            engines,
            engineOutAreaM2
        };
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ParabolicPolar that && Arrays.equals(figures(), that.figures());
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(figures());
    }

    /**
     * Returns the polar for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return "C_D = "
                + zeroLiftDragCoefficient
                + " + "
                + inducedDragFactor
                + " C_L² of "
                + wingAreaM2
                + " m²";
    }

    private Object readResolve() {
        ParabolicPolar plain = ofSi(wingAreaM2, zeroLiftDragCoefficient, inducedDragFactor);
        ParabolicPolar rising =
                criticalMach == NO_CRITICAL_MACH
                        ? plain
                        : plain.withCompressibilityRise(criticalMach, criticalMachPerLift);
        return rising.withEngineOutDrag(engines, engineOutAreaM2);
    }
}
