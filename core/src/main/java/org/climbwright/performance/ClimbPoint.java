package org.climbwright.performance;

import static org.climbwright.atmosphere.IcaoConstants.GRAVITY_MPS2;

import java.io.Serializable;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.climbwright.airspeed.AirspeedConversion;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.path.GroundTrack;
import org.climbwright.path.Side;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.AirGradient;
import org.climbwright.quantity.path.ClimbAngle;
import org.climbwright.quantity.path.FuelFlow;
import org.climbwright.quantity.path.GroundGradient;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.GeometricRate;
import org.climbwright.quantity.speed.GroundSpeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.speed.PressureAltitudeRate;
import org.climbwright.quantity.speed.TrueAirspeed;

/**
 * A climb at one point: its forces, rate, angle and fuel, and what wind and acceleration are worth.
 *
 * <p>Where the wind is not known its share is not known: the rates are those without it, and {@link
 * #windFactor} is empty. The same holds for the ground, of which nothing is told then.
 *
 * <p>Made by {@link ClimbConditions#at(PressureAltitude, ClimbSpeed)}; the formulas are those of
 * {@link ClimbBalance}, {@link AccelerationFactor} and {@link ClimbMotion}.
 *
 * <p>Limits of use: quasi-steady flight of a point, as good as the aeroplane's figures; for study
 * and simulation. The flight manual and the operator's procedures decide.
 *
 * @source {@link ClimbBalance}
 */
public final class ClimbPoint implements Serializable {
    private static final long serialVersionUID = 2L;

    private static final ModelRange MACH =
            new ModelRange("Mach number", 0.0, 1.0, "", "a climb here is one below the shock");

    private static final ModelRange GAIN =
            new ModelRange("gain of pressure altitude", 0.0, 1e5, "m", "no climb is longer");

    private final double pressureAltitudeM;
    private final double massKg;
    private final double pressurePa;
    private final double mach;
    private final double tasMps;
    private final double dynamicPressurePa;
    private final double thrustN;
    private final double dragN;
    private final double liftFactor;
    private final double fuelFlowKgPerS;
    private final double accelerationFactor;
    private final double accelerationMps2;
    private final double windFactor;
    private final double sine;
    private final double sineWithoutWind;
    private final double sineAtConstantTas;
    private final double geopotentialPerPressureAltitude;
    private final double geometricPerGeopotential;
    private final double alongTrackMps;
    private final double acrossTrackMps;

    private ClimbPoint(ClimbConditions of, double altitude, Side side, ClimbSpeed speed) {
        ClimbAir air = of.air();
        Aeroplane aeroplane = of.aeroplane();
        int stretch = air.stretch(altitude, side == Side.ABOVE);
        pressureAltitudeM = altitude;
        massKg = of.mass().inKilograms();
        pressurePa = StandardAir.pressureFromAltitude(altitude);
        double temperature = air.temperature(stretch, altitude);
        HeldSpeed held = speed.held();
        mach = MACH.check(held.mach(speed.speed(), pressurePa, temperature));
        tasMps = AirspeedConversion.tasFromMach(mach, temperature);
        geopotentialPerPressureAltitude = air.geopotentialPerPressureAltitude(stretch, altitude);
        geometricPerGeopotential = air.geometricPerGeopotential(stretch, altitude);
        alongTrackMps = air.alongTrack(stretch, altitude);
        acrossTrackMps = air.acrossTrack(stretch, altitude);
        double staticPerVirtual =
                ClimbMotion.staticPerVirtual(
                        temperature,
                        StandardAir.temperatureFromAltitude(altitude),
                        geopotentialPerPressureAltitude);
        accelerationFactor =
                held.accelerationFactor(
                        mach,
                        ClimbMotion.perGeopotentialMetre(
                                air.temperaturePerMetre(stretch, altitude),
                                geopotentialPerPressureAltitude),
                        staticPerVirtual);
        dynamicPressurePa = ClimbMotion.dynamicPressure(mach, pressurePa, staticPerVirtual);
        accelerationMps2 = speed.accelerationMps2();
        windFactor =
                ClimbMotion.windFactor(
                        tasMps,
                        ClimbMotion.perGeopotentialMetre(
                                air.alongTrackPerMetre(stretch, altitude),
                                geopotentialPerPressureAltitude));
        double known = Double.isNaN(windFactor) ? 0.0 : windFactor;
        EngineUse use = of.use();
        liftFactor = ClimbMotion.liftFactor(of.bankRad());
        thrustN =
                aeroplane.thrust(mach, pressurePa, temperature, use)
                        * of.reducedThrust().share(altitude);
        fuelFlowKgPerS = aeroplane.fuelFlow(thrustN, mach, pressurePa, temperature, use);
        double left = ClimbMotion.thrustLeft(thrustN, massKg, accelerationMps2);
        double f = accelerationFactor;
        sine = sine(aeroplane, use, left, f, known);
        sineWithoutWind = known == 0.0 ? sine : sine(aeroplane, use, left, f, 0.0);
        sineAtConstantTas = sine(aeroplane, use, thrustN, 0.0, known);
        dragN = Double.isNaN(sine) ? Double.NaN : drag(aeroplane, use);
    }

    /** The point, with NaN for what hangs on the angle where the forces balance at none. */
    static ClimbPoint of(ClimbConditions conditions, double altitude, Side side, ClimbSpeed speed) {
        return new ClimbPoint(conditions, altitude, side, speed);
    }

    boolean isBalanced() {
        return !Double.isNaN(sine);
    }

    ClimbPoint checked() {
        if (!isBalanced()) {
            throw new IllegalArgumentException(
                    "the forces balance at no angle of climb: a thrust of "
                            + thrustN
                            + " N for a mass of "
                            + massKg
                            + " kg at Mach "
                            + mach);
        }
        return this;
    }

    private double sine(
            Aeroplane aeroplane, EngineUse use, double left, double factor, double wind) {
        return ClimbBalance.sine(
                aeroplane,
                use,
                left,
                massKg,
                mach,
                dynamicPressurePa,
                liftFactor,
                1.0,
                factor,
                wind);
    }

    private double drag(Aeroplane aeroplane, EngineUse use) {
        return ClimbBalance.drag(aeroplane, use, massKg, mach, dynamicPressurePa, liftFactor, sine);
    }

    private double geometricRateMps() {
        return ClimbMotion.geometricRate(tasMps, sine, geometricPerGeopotential);
    }

    double pressureAltitudeRateMps() {
        return rateOf(sine);
    }

    private double rateOf(double anySine) {
        return ClimbMotion.pressureAltitudeRate(tasMps, anySine, geopotentialPerPressureAltitude);
    }

    /** Gradient over the ground; NaN where the wind is not known or does not let it be flown. */
    double groundGradientOrNaN() {
        double rate = geometricRateMps();
        if (!(Math.abs(rate) < tasMps)) {
            return Double.NaN;
        }
        double horizontal = GroundTrack.horizontalAirspeed(tasMps, rate);
        return GroundTrack.coversGroundSpeed(horizontal, alongTrackMps, acrossTrackMps)
                ? rate / GroundTrack.groundSpeed(horizontal, alongTrackMps, acrossTrackMps)
                : Double.NaN;
    }

    /**
     * Returns the level.
     *
     * @return pressure altitude
     */
    public PressureAltitude pressureAltitude() {
        return PressureAltitude.ofMetres(pressureAltitudeM);
    }

    /**
     * Returns the mass.
     *
     * @return the mass
     */
    public Mass mass() {
        return Mass.ofKilograms(massKg);
    }

    /**
     * Returns the Mach number.
     *
     * @return Mach number
     */
    public Mach mach() {
        return Mach.of(mach);
    }

    /**
     * Returns the true airspeed.
     *
     * @return true airspeed
     */
    public TrueAirspeed trueAirspeed() {
        return TrueAirspeed.ofMetresPerSecond(tasMps);
    }

    /**
     * Returns the calibrated airspeed.
     *
     * @return calibrated airspeed
     */
    public CalibratedAirspeed calibratedAirspeed() {
        return CalibratedAirspeed.ofMetresPerSecond(
                AirspeedConversion.casFromMach(mach, pressurePa));
    }

    /**
     * Returns the thrust.
     *
     * @return thrust of all engines, after any reduction [N]
     */
    public double thrustN() {
        return thrustN;
    }

    /**
     * Returns the drag.
     *
     * @return drag at the angle of climb [N]
     */
    public double dragN() {
        return dragN;
    }

    /**
     * Returns the lift.
     *
     * @return lift at the angle of climb and the bank [N]
     */
    public double liftN() {
        return massKg * GRAVITY_MPS2 * Math.sqrt((1.0 - sine) * (1.0 + sine)) * liftFactor;
    }

    /**
     * Returns the lift over the drag.
     *
     * @return the ratio
     */
    public double liftToDrag() {
        return liftN() / dragN;
    }

    /**
     * Returns the specific excess power.
     *
     * @return rate of energy height [m/s], of geopotential altitude
     * @source {@link ClimbMotion#specificExcessPower}
     */
    public double specificExcessPowerMps() {
        return ClimbMotion.specificExcessPower(tasMps, thrustN, dragN, massKg);
    }

    /**
     * Returns what the climb takes of the specific excess power.
     *
     * <p>This, {@link #powerOfAccelerationMps} and {@link #powerOfWindChangeMps} are its shares:
     * they add up to {@link #specificExcessPowerMps}.
     *
     * @return {@code V sin g} [m/s], the rate of geopotential altitude; below 0 in a descent
     * @accuracy 1e-13 of the true airspeed
     * @source {@link ClimbBalance}
     */
    public double powerOfClimbMps() {
        return tasMps * sine;
    }

    /**
     * Returns what the true airspeed that changes takes of the specific excess power.
     *
     * <p>It differs from {@link #worthOfAcceleration}, which compares with a climb that does not
     * accelerate: that one would climb at another rate and angle, and meet the wind at another.
     *
     * @return {@code V sin g f}, or {@code V a / g0} with a stated acceleration [m/s]; below 0
     *     where the speed falls on the way and so gives power
     * @accuracy 1e-13 of the true airspeed
     * @source {@link ClimbBalance}
     */
    public double powerOfAccelerationMps() {
        return tasMps * Math.fma(sine, accelerationFactor, accelerationMps2 / GRAVITY_MPS2);
    }

    /**
     * Returns what the wind that changes with height takes of the specific excess power.
     *
     * <p>It differs from {@link #worthOfWindGradient}, which compares with a climb in a uniform
     * wind.
     *
     * @return {@code V sin g w cos g} [m/s]; below 0 in a headwind that grows upwards, which gives
     *     power to a climb; empty where the wind is not known, and then the other two shares are
     *     all
     * @accuracy 1e-13 of the true airspeed
     * @source {@link ClimbBalance}
     */
    public OptionalDouble powerOfWindChangeMps() {
        return Double.isNaN(windFactor)
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        tasMps * sine * windFactor * Math.sqrt((1.0 - sine) * (1.0 + sine)));
    }

    /**
     * Returns the acceleration factor of the speed held.
     *
     * @return {@code (V / g0) dV/dH}; 0 for a true airspeed
     */
    public double accelerationFactor() {
        return accelerationFactor;
    }

    /**
     * Returns what the wind that changes with height does to the balance.
     *
     * @return {@code (V / g0) dW/dH}, below 0 for a headwind that grows upwards; empty where the
     *     wind is not known, and then no rate of this point has a share of it
     */
    public OptionalDouble windFactor() {
        return Double.isNaN(windFactor) ? OptionalDouble.empty() : OptionalDouble.of(windFactor);
    }

    /**
     * Returns the sine of the angle of climb that the balance of forces has.
     *
     * @return rate of geopotential altitude over true airspeed; below 0 in a descent
     */
    public double sine() {
        return sine;
    }

    /**
     * Returns the angle of climb through the air, the one whose tangent is {@link #airGradient}.
     *
     * @return the angle, of true height
     */
    public ClimbAngle climbAngle() {
        return ClimbAngle.ofRadians(StrictMath.asin(geometricRateMps() / tasMps));
    }

    /**
     * Returns the rate of climb in true height.
     *
     * @return geometric rate
     */
    public GeometricRate geometricRate() {
        return GeometricRate.ofMetresPerSecond(geometricRateMps());
    }

    /**
     * Returns the rate of climb that the instrument shows.
     *
     * @return rate of pressure altitude; in warm air less than the geometric one
     */
    public PressureAltitudeRate pressureAltitudeRate() {
        return PressureAltitudeRate.ofMetresPerSecond(pressureAltitudeRateMps());
    }

    /**
     * Returns how much of the rate is due to the wind that changes with height: the rate with it
     * less the rate without.
     *
     * <p>Such differences do not add up, since each cause is taken away alone and the others then
     * act on another rate; for shares that do, see {@link #powerOfWindChangeMps}.
     *
     * @return the rate less the one in a uniform wind; empty where the wind is not known
     */
    public Optional<PressureAltitudeRate> worthOfWindGradient() {
        return Double.isNaN(windFactor)
                ? Optional.empty()
                : Optional.of(
                        PressureAltitudeRate.ofMetresPerSecond(
                                rateOf(sine) - rateOf(sineWithoutWind)));
    }

    /**
     * Returns how much of the rate is due to the true airspeed that changes on the way: the rate
     * with it less the rate without.
     *
     * <p>Such differences do not add up, see {@link #worthOfWindGradient}; for shares that do, see
     * {@link #powerOfAccelerationMps}.
     *
     * @return the rate less the one at a true airspeed that stays; below 0 where the aeroplane
     *     accelerates
     */
    public PressureAltitudeRate worthOfAcceleration() {
        return PressureAltitudeRate.ofMetresPerSecond(rateOf(sine) - rateOf(sineAtConstantTas));
    }

    /**
     * Returns the gradient through the air.
     *
     * @return true height per horizontal distance through the air
     */
    public AirGradient airGradient() {
        return AirGradient.ofMetresPerMetre(GroundTrack.airGradient(tasMps, geometricRateMps()));
    }

    /**
     * Returns the gradient over the ground.
     *
     * @return true height per distance along the track; empty where the wind is not known or does
     *     not let the track be kept
     */
    public Optional<GroundGradient> groundGradient() {
        double gradient = groundGradientOrNaN();
        return Double.isNaN(gradient)
                ? Optional.empty()
                : Optional.of(GroundGradient.ofMetresPerMetre(gradient));
    }

    /**
     * Returns the ground speed.
     *
     * @return speed along the track; empty where {@link #groundGradient} is
     */
    public Optional<GroundSpeed> groundSpeed() {
        return Double.isNaN(groundGradientOrNaN())
                ? Optional.empty()
                : Optional.of(
                        GroundSpeed.ofMetresPerSecond(
                                GroundTrack.groundSpeed(
                                        GroundTrack.horizontalAirspeed(tasMps, geometricRateMps()),
                                        alongTrackMps,
                                        acrossTrackMps)));
    }

    /**
     * Returns the fuel flow.
     *
     * @return fuel flow of all engines that run
     */
    public FuelFlow fuelFlow() {
        return FuelFlow.ofKilogramsPerSecond(fuelFlowKgPerS);
    }

    /**
     * Returns the fuel for a gain of pressure altitude at the rate and the flow of this point.
     *
     * @param gain how much is gained, 0 or more
     * @return mass of fuel; empty where the aeroplane does not climb
     * @throws OutsideModelException if the gain is below 0 or above 100 km
     */
    public Optional<Mass> fuelFor(AltitudeChange gain) {
        double metres = GAIN.check(gain.inMetres());
        double rate = pressureAltitudeRateMps();
        return rate > 0.0
                ? Optional.of(Mass.ofKilograms(fuelFlowKgPerS / rate * metres))
                : Optional.empty();
    }

    /**
     * Returns the point for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%.0f ft/min at %.0f ft, M%.4f",
                pressureAltitudeRate().inFeetPerMinute(),
                pressureAltitude().inFeet(),
                mach().number());
    }
}
