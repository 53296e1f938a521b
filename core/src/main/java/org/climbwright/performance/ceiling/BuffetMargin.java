package org.climbwright.performance.ceiling;

import static org.climbwright.atmosphere.IcaoConstants.GRAVITY_MPS2;

import java.util.Optional;
import java.util.OptionalDouble;
import org.climbwright.airspeed.AirspeedConversion;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.numeric.BracketingSolver;
import org.climbwright.performance.AeroplaneLimits;
import org.climbwright.performance.BuffetOnset;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.speed.Mach;

/**
 * How far an aeroplane is from buffet at a level and a Mach number: load factor and bank to it, and
 * the Mach numbers between low-speed and high-speed buffet.
 *
 * <p>Temperature has no part in it: lift goes with {@code 0.7 p M²}. It is that of level flight; a
 * climb needs the cosine of its angle of that lift.
 *
 * <p>Limits of use: the flight manual has the buffet boundary, and a gust takes of the margin; for
 * study and simulation.
 *
 * @source lift coefficient by definition, {@code n m g0 / (q S)}, with {@code q = 0.7 p M²}
 */
public final class BuffetMargin {
    /** Lift over weight at which buffet is mostly asked for: 1.3, common practice, no source. */
    public static final double USUAL_LOAD_FACTOR = 1.3;

    private static final ModelRange LOAD_FACTOR =
            new ModelRange("load factor", 1.0, 12.0, "", "less is no level flight");
    private static final ModelRange FLOWN =
            new ModelRange("Mach number", 0.01, 1.0, "", "a climb here is one below the shock");

    /** Buffet is looked for at Mach numbers so far apart; narrower gaps are missed. */
    private static final double STEP = 0.002;

    private static final double CLOSE = 1e-12;

    private final BuffetOnset onset;
    private final double areaM2;
    private final double massKg;
    private final double pressurePa;
    private final double mach;

    private BuffetMargin(
            BuffetOnset onset, double areaM2, double massKg, double pressurePa, double mach) {
        this.onset = onset;
        this.areaM2 = areaM2;
        this.massKg = massKg;
        this.pressurePa = pressurePa;
        this.mach = mach;
    }

    /**
     * The Mach numbers without buffet at a load factor.
     *
     * @param low where low-speed buffet ends; empty where the table ends first
     * @param high where high-speed buffet begins; empty where the table, or Mach 1, comes first
     */
    public record FreeOfBuffet(OptionalDouble low, OptionalDouble high) {}

    /**
     * Returns the margin.
     *
     * @param limits limits of the aeroplane
     * @param mass mass, above 0
     * @param level pressure altitude, -5 to 80 km
     * @param mach Mach number, 0.01 to 1
     * @return the margin; empty where the beginning of buffet is not known, or not at that Mach
     *     number
     * @throws IllegalArgumentException if the mass is 0
     * @throws org.climbwright.quantity.OutsideModelException if another argument is out of range
     */
    public static Optional<BuffetMargin> of(
            AeroplaneLimits limits, Mass mass, PressureAltitude level, Mach mach) {
        FLOWN.check(mach.number());
        double pressure = StandardAir.pressureFromAltitude(level.inMetres());
        if (!(mass.inKilograms() > 0.0)) {
            throw new IllegalArgumentException(
                    "an aeroplane needs a mass above 0 kg, but it was " + mass.text());
        }
        return limits.buffetOnset()
                .filter(known -> limits.wingAreaM2().isPresent())
                .filter(known -> !Double.isNaN(known.liftCoefficient(mach.number())))
                .map(
                        known ->
                                new BuffetMargin(
                                        known,
                                        limits.wingAreaM2().getAsDouble(),
                                        mass.inKilograms(),
                                        pressure,
                                        mach.number()));
    }

    /**
     * Returns the load factor at which the lift has a coefficient.
     *
     * @param liftCoefficient lift coefficient, such as that of the beginning of buffet
     * @param mach Mach number
     * @param pressurePa static pressure [Pa]
     * @param wingAreaM2 the area that the coefficient refers to [m²]
     * @param massKg mass [kg]
     * @return lift over weight; NaN for an argument that is NaN
     * @throws org.climbwright.quantity.OutsideModelException if Mach number or pressure are out of
     *     range
     * @accuracy 6 ulp
     * @source see the class comment
     */
    public static double loadFactor(
            double liftCoefficient,
            double mach,
            double pressurePa,
            double wingAreaM2,
            double massKg) {
        double dynamic = AirspeedConversion.dynamicPressureFromMach(mach, pressurePa);
        return liftCoefficient * dynamic * wingAreaM2 / (massKg * GRAVITY_MPS2);
    }

    /**
     * Returns the lift coefficient at a load factor.
     *
     * @param loadFactor lift over weight
     * @param mach Mach number, above 0
     * @param pressurePa static pressure [Pa]
     * @param wingAreaM2 the area that the coefficient refers to [m²]
     * @param massKg mass [kg]
     * @return lift coefficient
     * @throws org.climbwright.quantity.OutsideModelException if Mach number or pressure are out of
     *     range
     * @accuracy 6 ulp
     * @source see the class comment
     */
    public static double liftCoefficient(
            double loadFactor, double mach, double pressurePa, double wingAreaM2, double massKg) {
        double dynamic = AirspeedConversion.dynamicPressureFromMach(mach, pressurePa);
        return loadFactor * massKg * GRAVITY_MPS2 / (dynamic * wingAreaM2);
    }

    /**
     * Returns the lift coefficient of level flight.
     *
     * @return lift coefficient at a load factor of 1
     */
    public double liftCoefficient() {
        return liftCoefficient(1.0, mach, pressurePa, areaM2, massKg);
    }

    /**
     * Returns the lift coefficient at which buffet begins.
     *
     * @return lift coefficient at the Mach number flown
     */
    public double buffetLiftCoefficient() {
        return onset.liftCoefficient(mach);
    }

    /**
     * Returns the load factor at which buffet begins.
     *
     * @return lift over weight; below 1 where level flight buffets
     */
    public double loadFactor() {
        return loadFactorAt(mach);
    }

    /**
     * Returns the bank of a level turn in which buffet begins.
     *
     * @return bank [rad], 0 to a right angle; empty where level flight buffets
     */
    public OptionalDouble bankRad() {
        double factor = loadFactor();
        return factor >= 1.0
                ? OptionalDouble.of(StrictMath.acos(1.0 / factor))
                : OptionalDouble.empty();
    }

    /**
     * Returns the Mach numbers around the one flown at which there is no buffet.
     *
     * @param loadFactor lift over weight that shall not buffet, 1 to 12
     * @return the range; empty where the Mach number flown buffets
     * @throws org.climbwright.quantity.OutsideModelException if the load factor is out of range
     * @accuracy 1e-12; buffet within less than 0.002 of Mach number can be missed
     */
    public Optional<FreeOfBuffet> freeOfBuffet(double loadFactor) {
        LOAD_FACTOR.check(loadFactor);
        return loadFactor() >= loadFactor
                ? Optional.of(new FreeOfBuffet(edge(-STEP, loadFactor), edge(STEP, loadFactor)))
                : Optional.empty();
    }

    private OptionalDouble edge(double step, double loadFactor) {
        double inside = mach;
        while (true) {
            double next = inside + step;
            if (!FLOWN.covers(next)) {
                return OptionalDouble.empty();
            }
            double left = loadFactorAt(next) - loadFactor;
            if (Double.isNaN(left)) {
                return OptionalDouble.empty();
            }
            if (left < 0.0) {
                return OptionalDouble.of(
                        BracketingSolver.solve(
                                at -> loadFactorAt(at) - loadFactor, inside, next, CLOSE));
            }
            inside = next;
        }
    }

    private double loadFactorAt(double anyMach) {
        return loadFactor(onset.liftCoefficient(anyMach), anyMach, pressurePa, areaM2, massKg);
    }

    /**
     * Returns the margin for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return "buffet at a load factor of " + loadFactor() + ", Mach " + mach;
    }
}
