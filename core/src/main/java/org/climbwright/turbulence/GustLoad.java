package org.climbwright.turbulence;

import static org.climbwright.atmosphere.IcaoConstants.GRAVITY_MPS2;
import static org.climbwright.atmosphere.IcaoConstants.SEA_LEVEL_DENSITY_KG_PER_M3;

import java.io.Serializable;
import java.util.Locale;
import org.climbwright.atmosphere.AirState;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.speed.EquivalentAirspeed;
import org.climbwright.unit.UnitScale;

/**
 * The static gust load factor: how many g a vertical gust adds to level flight, by wing loading,
 * chord and lift slope.
 *
 * <p>The gust comes from below or above: the load factor is 1 plus or minus the increment. Speed
 * and gust are equivalent airspeeds, so the density at sea level stands in the formula; only the
 * mass ratio has the density at the altitude.
 *
 * <pre>{@code
 * GustLoad wing = GustLoad.ofRuleUnits(100.0, 12.5, 5.5);     // lb/ft², ft, per radian
 * AirState air = Atmosphere.standard().at(PressureAltitude.ofFeet(10000));
 * GustVelocity gust = GustVelocity.ofCallerInFeetPerSecond(50);
 * wing.increment(gust, EquivalentAirspeed.ofKnots(280), air)             // 1.2323…, g
 * wing.speedForIncrement(gust, 1.0, air).inKnots()                       // 227.2…, kn
 * }</pre>
 *
 * <p>Limits of use: a rigid aeroplane that does not pitch, a gust that rises within 12.5 chords
 * (from memory), no limit of lift: near the stall the wing cannot give the load. For transport
 * aeroplanes a first estimate only, since their rule asks for a dynamic analysis. A speed found
 * here is not a rough-air speed; the flight manual has that.
 *
 * @source 14 CFR 23.341(c) (amendment 23-48, since removed, from memory); K. G. Pratt, NACA
 *     Technical Note 2964 (1953), and NACA Report 1206 (1954)
 */
public final class GustLoad implements Serializable {
    private static final long serialVersionUID = 1L;

    /** The rule's rounding of 498.5, which two units and the density at sea level come to. */
    private static final double RULE_CONSTANT = 498.0;

    private static final double PASCALS_PER_RULE_LOADING =
            UnitScale.POUND_FORCE.toSi(1.0) / (UnitScale.FOOT.factor() * UnitScale.FOOT.factor());

    private static final ModelRange LOADING =
            new ModelRange("wing loading", 10.0, 2e4, "N/m²", "a weight over an area, not a mass");

    private static final ModelRange CHORD =
            new ModelRange("mean geometric chord", 0.1, 50.0, "m", "no wing has another");

    private static final ModelRange SLOPE =
            new ModelRange(
                    "slope of the lift curve",
                    1.0,
                    15.0,
                    "1/rad",
                    "it is per radian; a slope per degree is some 0.1");

    private static final ModelRange DENSITY =
            new ModelRange("density", 1e-3, 3.0, "kg/m³", "no air that aeroplanes fly in");

    private static final ModelRange MASS_RATIO =
            new ModelRange("mass ratio", 0.0, 1e12, "", "a mass over another");

    private static final ModelRange ALLEVIATION =
            new ModelRange("gust alleviation factor", 0.0, 0.88, "", "it is 0.88 at most");

    private static final ModelRange GUST =
            new ModelRange("gust velocity", 0.0, 100.0, "m/s", "a gust has a strength, no sign");

    private static final ModelRange SPEED =
            new ModelRange("equivalent airspeed", 0.0, 1000.0, "m/s", "no aeroplane is faster");

    private static final ModelRange INCREMENT =
            new ModelRange(
                    "load factor increment", 0.0, 100.0, "g", "a gust from below or above adds it");

    private final double wingLoadingPa;
    private final double chordM;
    private final double liftSlopePerRad;

    private GustLoad(double wingLoadingPa, double chordM, double liftSlopePerRad) {
        this.wingLoadingPa = LOADING.check(wingLoadingPa);
        this.chordM = CHORD.check(chordM);
        this.liftSlopePerRad = SLOPE.check(liftSlopePerRad);
    }

    /**
     * Returns the loads on an aeroplane given in SI.
     *
     * @param wingLoadingPa weight over wing area [N/m²], 10 to 20,000
     * @param chordM mean geometric chord [m], 0.1 to 50
     * @param liftSlopePerRad slope of the lift coefficient [1/rad], 1 to 15
     * @return the loads
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     */
    public static GustLoad ofSi(double wingLoadingPa, double chordM, double liftSlopePerRad) {
        return new GustLoad(wingLoadingPa, chordM, liftSlopePerRad);
    }

    /**
     * Returns the loads on an aeroplane given in the units of the rule; computed in SI.
     *
     * @param wingLoadingLbPerFt2 wing loading [lb/ft²], 0.209 to 417
     * @param chordFt mean geometric chord [ft], 0.329 to 164
     * @param liftSlopePerRad slope of the lift coefficient [1/rad], 1 to 15
     * @return the loads
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     */
    public static GustLoad ofRuleUnits(
            double wingLoadingLbPerFt2, double chordFt, double liftSlopePerRad) {
        return ofSi(
                PASCALS_PER_RULE_LOADING * wingLoadingLbPerFt2,
                UnitScale.FOOT.toSi(chordFt),
                liftSlopePerRad);
    }

    /**
     * Returns the wing loading.
     *
     * @return weight over wing area [N/m²]
     */
    public double wingLoadingPa() {
        return wingLoadingPa;
    }

    /**
     * Returns the chord.
     *
     * @return mean geometric chord [m]
     */
    public double chordM() {
        return chordM;
    }

    /**
     * Returns the lift slope.
     *
     * @return slope of the lift coefficient [1/rad]
     */
    public double liftSlopePerRad() {
        return liftSlopePerRad;
    }

    /**
     * Tells whether there is an aeroplane of such figures here.
     *
     * @param wingLoadingPa weight over wing area [N/m²]
     * @param chordM mean geometric chord [m]
     * @param liftSlopePerRad slope of the lift coefficient [1/rad]
     * @return true if {@link #ofSi} takes them
     */
    public static boolean covers(double wingLoadingPa, double chordM, double liftSlopePerRad) {
        return LOADING.covers(wingLoadingPa)
                && CHORD.covers(chordM)
                && SLOPE.covers(liftSlopePerRad);
    }

    /**
     * Tells whether a gust has a load.
     *
     * @param alleviationFactor gust alleviation factor
     * @param gustEasMps gust velocity, equivalent airspeed [m/s]
     * @param easMps equivalent airspeed [m/s]
     * @param liftSlopePerRad slope of the lift coefficient [1/rad]
     * @param wingLoadingPa weight over wing area [N/m²]
     * @return true if {@link #increment(double, double, double, double, double)} answers
     */
    public static boolean coversIncrement(
            double alleviationFactor,
            double gustEasMps,
            double easMps,
            double liftSlopePerRad,
            double wingLoadingPa) {
        return ALLEVIATION.covers(alleviationFactor)
                && GUST.covers(gustEasMps)
                && SPEED.covers(easMps)
                && SLOPE.covers(liftSlopePerRad)
                && LOADING.covers(wingLoadingPa);
    }

    /**
     * Tells whether there is a speed at which a gust adds so much.
     *
     * @param alleviationFactor gust alleviation factor
     * @param gustEasMps gust velocity, equivalent airspeed [m/s]
     * @param increment increment of the load factor [g]
     * @param liftSlopePerRad slope of the lift coefficient [1/rad]
     * @param wingLoadingPa weight over wing area [N/m²]
     * @return true if {@link #speedForIncrement(double, double, double, double, double)} answers
     */
    public static boolean hasSpeed(
            double alleviationFactor,
            double gustEasMps,
            double increment,
            double liftSlopePerRad,
            double wingLoadingPa) {
        return coversIncrement(alleviationFactor, gustEasMps, 0.0, liftSlopePerRad, wingLoadingPa)
                && INCREMENT.covers(increment)
                && SPEED.covers(
                        increment
                                / (gustEasMps
                                        * perGustAndSpeed(
                                                alleviationFactor,
                                                liftSlopePerRad,
                                                wingLoadingPa)));
    }

    /**
     * Returns the mass ratio: {@code mu = 2 (W/S) / (rho c a g)}.
     *
     * @param wingLoadingPa weight over wing area [N/m²], 10 to 20,000
     * @param densityKgPerM3 density of the air at the altitude [kg/m³], 0.001 to 3
     * @param chordM mean geometric chord [m], 0.1 to 50
     * @param liftSlopePerRad slope of the lift coefficient [1/rad], 1 to 15
     * @return mass ratio, a plain number
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 4 ulp
     * @source 14 CFR 23.341(c)
     */
    public static double massRatio(
            double wingLoadingPa, double densityKgPerM3, double chordM, double liftSlopePerRad) {
        return 2.0
                * LOADING.check(wingLoadingPa)
                / (DENSITY.check(densityKgPerM3)
                        * CHORD.check(chordM)
                        * SLOPE.check(liftSlopePerRad)
                        * GRAVITY_MPS2);
    }

    /**
     * Returns the gust alleviation factor: {@code Kg = 0.88 mu / (5.3 + mu)}.
     *
     * <p>Not the flight-profile alleviation factor of {@link GustRule}.
     *
     * @param massRatio mass ratio, 0 to 1e12
     * @return the factor, 0 to 0.88
     * @throws org.climbwright.quantity.OutsideModelException if the ratio is out of range
     * @accuracy 3 ulp
     * @source 14 CFR 23.341(c)
     */
    public static double alleviationFactor(double massRatio) {
        return 0.88 * (MASS_RATIO.check(massRatio) / (5.3 + massRatio));
    }

    /**
     * Returns the load factor increment in SI: {@code Kg rho0 V U a / (2 W/S)}.
     *
     * @param alleviationFactor gust alleviation factor, 0 to 0.88
     * @param gustEasMps gust velocity, equivalent airspeed [m/s], 0 to 100
     * @param easMps equivalent airspeed [m/s], 0 to 1000
     * @param liftSlopePerRad slope of the lift coefficient [1/rad], 1 to 15
     * @param wingLoadingPa weight over wing area [N/m²], 10 to 20,000
     * @return increment of the load factor [g], 0 or more
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 5 ulp; 0.11 % below {@link #incrementByRule}, which rounds its constant
     * @source NACA Report 1206 (1954), with the density at sea level since speeds are equivalent
     */
    public static double increment(
            double alleviationFactor,
            double gustEasMps,
            double easMps,
            double liftSlopePerRad,
            double wingLoadingPa) {
        return SPEED.check(easMps)
                * GUST.check(gustEasMps)
                * perGustAndSpeed(alleviationFactor, liftSlopePerRad, wingLoadingPa);
    }

    /**
     * Returns the load factor increment by the figures that the rule prints: {@code Kg U V a / (498
     * W/S)}.
     *
     * @param alleviationFactor gust alleviation factor, 0 to 0.88
     * @param gustEasFps gust velocity, equivalent airspeed [ft/s], 0 to 328
     * @param easKnots equivalent airspeed [kn], 0 to 1943
     * @param liftSlopePerRad slope of the lift coefficient [1/rad], 1 to 15
     * @param wingLoadingLbPerFt2 wing loading [lb/ft²], 0.209 to 417
     * @return increment of the load factor [g], 0 or more
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range, told in SI
     * @accuracy 5 ulp of the rule, whose 498 is 498.5 but for rounding
     * @source 14 CFR 23.341(c)
     */
    public static double incrementByRule(
            double alleviationFactor,
            double gustEasFps,
            double easKnots,
            double liftSlopePerRad,
            double wingLoadingLbPerFt2) {
        GUST.check(UnitScale.FOOT_PER_SECOND.toSi(gustEasFps));
        SPEED.check(UnitScale.KNOT.toSi(easKnots));
        LOADING.check(PASCALS_PER_RULE_LOADING * wingLoadingLbPerFt2);
        return ALLEVIATION.check(alleviationFactor)
                * gustEasFps
                * easKnots
                * SLOPE.check(liftSlopePerRad)
                / (RULE_CONSTANT * wingLoadingLbPerFt2);
    }

    /**
     * Returns the speed at which a gust adds so much to the load factor: the inverse of {@link
     * #increment}.
     *
     * @param alleviationFactor gust alleviation factor, above 0, to 0.88
     * @param gustEasMps gust velocity, equivalent airspeed [m/s], above 0, to 100
     * @param increment increment of the load factor [g], 0 to 100
     * @param liftSlopePerRad slope of the lift coefficient [1/rad], 1 to 15
     * @param wingLoadingPa weight over wing area [N/m²], 10 to 20,000
     * @return equivalent airspeed [m/s]
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range, or the
     *     speed would be above 1000 m/s, as it is where there is no gust
     * @accuracy 6 ulp
     * @source see {@link #increment}
     */
    public static double speedForIncrement(
            double alleviationFactor,
            double gustEasMps,
            double increment,
            double liftSlopePerRad,
            double wingLoadingPa) {
        double perSpeed =
                GUST.check(gustEasMps)
                        * perGustAndSpeed(alleviationFactor, liftSlopePerRad, wingLoadingPa);
        return SPEED.check(INCREMENT.check(increment) / perSpeed);
    }

    private static double perGustAndSpeed(
            double alleviationFactor, double liftSlopePerRad, double wingLoadingPa) {
        return ALLEVIATION.check(alleviationFactor)
                * SEA_LEVEL_DENSITY_KG_PER_M3
                * SLOPE.check(liftSlopePerRad)
                / (2.0 * LOADING.check(wingLoadingPa));
    }

    /**
     * Returns the mass ratio in some air.
     *
     * @param air the air at the altitude; that of dry air counts where humidity is not known
     * @return see {@link #massRatio(double, double, double, double)}
     */
    public double massRatio(AirState air) {
        return massRatio(wingLoadingPa, air.densityKgPerM3(), chordM, liftSlopePerRad);
    }

    /**
     * Returns the gust alleviation factor in some air.
     *
     * @param air the air at the altitude
     * @return see {@link #alleviationFactor(double)}
     */
    public double alleviationFactor(AirState air) {
        return alleviationFactor(massRatio(air));
    }

    /**
     * Returns what a gust adds to the load factor.
     *
     * @param gust the gust, of the rule or of the caller
     * @param speed equivalent airspeed
     * @param air the air at the altitude
     * @return increment of the load factor [g], 0 or more
     * @source {@link #increment(double, double, double, double, double)}
     */
    public double increment(GustVelocity gust, EquivalentAirspeed speed, AirState air) {
        return increment(
                alleviationFactor(air),
                gust.inMetresPerSecond(),
                speed.inMetresPerSecond(),
                liftSlopePerRad,
                wingLoadingPa);
    }

    /**
     * Returns the speed at which a gust adds so much to the load factor.
     *
     * @param gust the gust, of the rule or of the caller, not 0
     * @param increment increment of the load factor [g], 0 to 100
     * @param air the air at the altitude
     * @return equivalent airspeed; below it the gust adds less
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range, or there
     *     is no such speed
     * @source {@link #speedForIncrement(double, double, double, double, double)}
     */
    public EquivalentAirspeed speedForIncrement(GustVelocity gust, double increment, AirState air) {
        return EquivalentAirspeed.ofMetresPerSecond(
                speedForIncrement(
                        alleviationFactor(air),
                        gust.inMetresPerSecond(),
                        increment,
                        liftSlopePerRad,
                        wingLoadingPa));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof GustLoad that
                && Double.compare(wingLoadingPa, that.wingLoadingPa) == 0
                && Double.compare(chordM, that.chordM) == 0
                && Double.compare(liftSlopePerRad, that.liftSlopePerRad) == 0;
    }

    @Override
    public int hashCode() {
        return 31 * (31 * Double.hashCode(wingLoadingPa) + Double.hashCode(chordM))
                + Double.hashCode(liftSlopePerRad);
    }

    /**
     * Returns the aeroplane's figures for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "gust loads for a wing loading of %.1f N/m², chord %.2f m, lift slope %.2f per"
                        + " radian",
                wingLoadingPa,
                chordM,
                liftSlopePerRad);
    }

    private Object readResolve() {
        return ofSi(wingLoadingPa, chordM, liftSlopePerRad);
    }
}
