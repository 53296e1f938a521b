package org.climbwright.profile;

import static org.climbwright.atmosphere.IcaoConstants.GRAVITY_MPS2;

import org.climbwright.airspeed.AirspeedConversion;
import org.climbwright.atmosphere.DryAir;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.path.GroundTrack;
import org.climbwright.performance.AccelerationFactor;
import org.climbwright.performance.Aeroplane;
import org.climbwright.performance.ClimbAir;
import org.climbwright.performance.ClimbBalance;
import org.climbwright.performance.ClimbMotion;

/**
 * What the forces do with an aeroplane at a level: a working space that is filled again at every
 * point, so that an integration leaves no garbage.
 *
 * <p>What depends on the level alone is kept while the level stays, since the masses of one step
 * meet at the same level.
 */
final class Motion {
    /** From a sine as large as this the next is not sought. */
    private static final double STEEP = 0.5;

    private final Aeroplane aeroplane;
    private final ClimbAir air;

    // the place
    private int stretch = -1;
    private double level = Double.NaN;
    private double pressure;
    private double standardTemperature;
    private double casOfMach;
    private double machOfCas;
    private double temperature;
    private double geopotential;
    private double geometric;
    private double staticPerVirtual;
    private double sound;
    private double lapse;
    private double along;
    private double across;
    private double windPerMetre;

    // the speed held there, and what follows from it
    private Leg leg = Leg.NONE;
    private boolean isSpeedKnown;
    private double mach;
    private double tas;
    private double dynamic;
    private double fullThrust;
    private double factor;
    private double windFactor;

    // what the forces do
    private double sine;
    private double lastSine = Double.NaN;
    private double sineLevel = Double.NaN;
    private double sinePerMetre;
    private double rate;
    private double thrust;
    private double fuelFlow;
    private double groundSpeed;
    private double tasPerMetre;
    private double fullRate;
    private double acceleration;
    private boolean isTrackLost;

    Motion(Aeroplane aeroplane, ClimbAir air) {
        this.aeroplane = aeroplane;
        this.air = air;
    }

    /** Says how it goes on; the same for a stretch of levels. */
    void begin(Leg next) {
        leg = next;
        isSpeedKnown = false;
    }

    /** Fills in all that is told below. */
    void at(int inStretch, double levelM, double massKg, double tasMps) {
        place(inStretch, levelM);
        if (leg.isSpeedHeld()) {
            holdSpeed();
        } else {
            speed(tasMps / sound);
            tas = tasMps;
        }
        switch (leg.law()) {
            case SPEED -> climbAtSpeed(massKg);
            case CHANGE_OF_SPEED -> changeSpeed(massKg);
            case RATE_BY_THRUST -> climbAtRate(massKg);
            case RATE_BY_SPEED -> climbAtRateAndThrust(massKg);
        }
        groundSpeed = groundSpeed(ClimbMotion.geometricRate(tas, sine, geometric));
        // less than no thrust is for a guard to see, and no engine is asked for it
        fuelFlow =
                aeroplane.fuelFlow(Math.max(0.0, thrust), mach, pressure, temperature, leg.use());
    }

    /** Goes to a level; nothing is flown yet. */
    void place(int inStretch, double levelM) {
        if (inStretch == stretch && levelM == level) {
            return;
        }
        if (levelM != level) {
            level = levelM;
            pressure = StandardAir.pressureFromAltitude(levelM);
            standardTemperature = StandardAir.temperatureFromAltitude(levelM);
            casOfMach = Double.NaN;
        }
        stretch = inStretch;
        isSpeedKnown = false;
        temperature = air.temperature(stretch, levelM);
        geopotential = air.geopotentialPerPressureAltitude(stretch, levelM);
        geometric = air.geometricPerGeopotential(stretch, levelM);
        staticPerVirtual =
                ClimbMotion.staticPerVirtual(temperature, standardTemperature, geopotential);
        sound = DryAir.speedOfSound(temperature);
        lapse =
                ClimbMotion.perGeopotentialMetre(
                        air.temperaturePerMetre(stretch, levelM), geopotential);
        along = air.alongTrack(stretch, levelM);
        across = air.acrossTrack(stretch, levelM);
        windPerMetre =
                ClimbMotion.perGeopotentialMetre(
                        air.alongTrackPerMetre(stretch, levelM), geopotential);
    }

    private void holdSpeed() {
        if (isSpeedKnown) {
            return;
        }
        if (leg.isMach()) {
            speed(leg.held());
            factor = AccelerationFactor.atConstantMach(mach, lapse);
        } else {
            speed(machFromCas(leg.held()));
            factor = AccelerationFactor.atConstantCas(mach, lapse, staticPerVirtual);
        }
        isSpeedKnown = true;
    }

    private void speed(double machNumber) {
        mach = machNumber;
        tas = machNumber * sound;
        dynamic = ClimbMotion.dynamicPressure(mach, pressure, staticPerVirtual);
        fullThrust =
                leg.thrustShare(level) * aeroplane.thrust(mach, pressure, temperature, leg.use());
        windFactor = windFactor();
        isSpeedKnown = false;
    }

    /** The wind's change has no part in it where it is not known. */
    private double windFactor() {
        return Double.isNaN(windPerMetre) ? 0.0 : ClimbMotion.windFactor(tas, windPerMetre);
    }

    /** NaN where the wind is not known, does not let the track be kept, or nothing balances. */
    private double groundSpeed(double geometricRate) {
        isTrackLost = false;
        if (!(Math.abs(geometricRate) < tas) || Double.isNaN(along)) {
            return Double.NaN;
        }
        double horizontal = GroundTrack.horizontalAirspeed(tas, geometricRate);
        isTrackLost =
                Math.abs(along) + Math.abs(across)
                                > 0.5 * horizontal // else there is no need to ask
                        && !GroundTrack.coversGroundSpeed(horizontal, along, across);
        return isTrackLost ? Double.NaN : GroundTrack.groundSpeed(horizontal, along, across);
    }

    /** Whether the wind is stronger than the aeroplane can fly against. */
    boolean isTrackLost() {
        return isTrackLost;
    }

    /** Refuses what no aeroplane can be, in the words of its plug. */
    void requireLaws(double massKg) {
        require("thrust", fullThrust, "N");
        require("fuel flow", fuelFlow, "kg/s");
        if (Double.isNaN(rate)) {
            sine = 0.0;
            require("drag", drag(massKg), "N");
            sine = Double.NaN;
        }
    }

    private void require(String what, double value, String unit) {
        if (!(value >= 0.0 && value <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException(
                    "the "
                            + what
                            + " of an aeroplane must be 0 "
                            + unit
                            + " or more, but was "
                            + value
                            + " "
                            + unit
                            + " at Mach "
                            + mach
                            + " and a pressure altitude of "
                            + level
                            + " m");
        }
    }

    private double sine(double massKg, double share, double accelerationFactor) {
        double found =
                ClimbBalance.sine(
                        aeroplane,
                        leg.use(),
                        fullThrust,
                        massKg,
                        mach,
                        dynamic,
                        1.0,
                        share,
                        accelerationFactor,
                        windFactor,
                        expectedSine());
        if (level != sineLevel) {
            sinePerMetre = (found - lastSine) / (level - sineLevel);
            sineLevel = level;
        }
        lastSine = found;
        return found;
    }

    /** On from the levels before. */
    private double expectedSine() {
        double expected = Math.fma(sinePerMetre, level - sineLevel, lastSine);
        return Math.abs(expected) < STEEP ? expected : 0.0; // where none is known too
    }

    private void climbAtSpeed(double massKg) {
        sine = sine(massKg, 1.0, factor);
        thrust = fullThrust;
        rate = ClimbMotion.pressureAltitudeRate(tas, sine, geopotential);
        fullRate = rate;
        tasPerMetre = AccelerationFactor.speedPerMetre(factor, tas, geopotential);
    }

    private void changeSpeed(double massKg) {
        sine = sine(massKg, leg.share(), 0.0);
        thrust = fullThrust;
        rate = ClimbMotion.pressureAltitudeRate(tas, sine, geopotential);
        fullRate = rate / leg.share();
        double cosine = Math.sqrt((1.0 - sine) * (1.0 + sine));
        // what the climb does not take of the excess: (1 - share) E, and E = sine (1 + w cos) /
        // share
        double perWeight = (1.0 - leg.share()) / leg.share() * sine * (1.0 + windFactor * cosine);
        tasPerMetre = perWeight * GRAVITY_MPS2 / rate;
    }

    /**
     * Whether the wind changes so fast upwards that the speed cannot be held by more or less rate:
     * it would take more than three times the rate in a steady wind, or leave less than a third.
     */
    boolean isShearTooStrong() {
        double steady = 1.0 + (leg.isSpeedHeld() ? factor : 0.0);
        return windFactor < -2.0 / 3.0 * steady || windFactor > 2.0 * steady;
    }

    /** The rate at this speed if the wind did not change [m/s]. */
    double rateInSteadyWind(double massKg) {
        double found =
                ClimbBalance.sine(
                        aeroplane,
                        leg.use(),
                        fullThrust,
                        massKg,
                        mach,
                        dynamic,
                        1.0,
                        1.0,
                        leg.isSpeedHeld() ? factor : 0.0,
                        0.0);
        return ClimbMotion.pressureAltitudeRate(tas, found, geopotential);
    }

    private void climbAtRate(double massKg) {
        rate = leg.rateMps();
        sine = rate * geopotential / tas;
        thrust = ClimbBalance.thrust(drag(massKg), massKg, sine, factor, windFactor);
        fullRate = rate;
        tasPerMetre = AccelerationFactor.speedPerMetre(factor, tas, geopotential);
    }

    private void climbAtRateAndThrust(double massKg) {
        rate = leg.rateMps();
        sine = rate * geopotential / tas;
        thrust = fullThrust;
        fullRate = rate;
        double cosine = Math.sqrt((1.0 - sine) * (1.0 + sine));
        double excess = (fullThrust - drag(massKg)) / (massKg * GRAVITY_MPS2);
        double found = excess / sine - 1.0 - windFactor * cosine;
        tasPerMetre = AccelerationFactor.speedPerMetre(found, tas, geopotential);
    }

    private double drag(double massKg) {
        return ClimbBalance.drag(
                aeroplane, leg.use(), massKg, mach, dynamic, 1.0, Math.min(1.0, sine));
    }

    /** In level flight: thrust is drag, or with full thrust the excess accelerates. */
    void atLevel(int inStretch, double levelM, double massKg, double tasMps, boolean isFullThrust) {
        place(inStretch, levelM);
        speed(tasMps / sound);
        tas = tasMps;
        sine = 0.0;
        rate = 0.0;
        fullRate = 0.0;
        double drag = drag(massKg);
        thrust = isFullThrust ? fullThrust : drag;
        tasPerMetre = Double.NaN;
        groundSpeed = groundSpeed(0.0);
        fuelFlow = aeroplane.fuelFlow(thrust, mach, pressure, temperature, leg.use());
        acceleration = (fullThrust - drag) / massKg;
    }

    boolean isSpeedHeld() {
        return leg.isSpeedHeld();
    }

    /** In level flight with full thrust [m/s²]. */
    double acceleration() {
        return acceleration;
    }

    double levelM() {
        return level;
    }

    double mach() {
        return mach;
    }

    double tasMps() {
        return tas;
    }

    double pressurePa() {
        return pressure;
    }

    double rateMps() {
        return rate;
    }

    /** The rate if all of the excess of thrust went into the climb. */
    double fullRateMps() {
        return fullRate;
    }

    double thrustN() {
        return thrust;
    }

    /** What the engines can give beyond the thrust that is used [N]. */
    double thrustInHandN() {
        return fullThrust - thrust;
    }

    double fuelFlowKgPerS() {
        return fuelFlow;
    }

    double alongMps() {
        return along;
    }

    double acrossMps() {
        return across;
    }

    /** Along the surface of the earth below [m/s]: that is nearer to its centre. */
    double surfaceSpeedMps() {
        return GroundTrack.alongSurface(groundSpeed, geometric);
    }

    double tasPerMetre() {
        return tasPerMetre;
    }

    double thrustBend() {
        return aeroplane.bend(mach, pressure, temperature);
    }

    /** True airspeed of a speed held at this level [m/s]. */
    double tasOf(boolean isMach, double held) {
        return sound * (isMach ? held : machFromCas(held));
    }

    /** Asked for the same speed several times at a level, on both sides of a bend. */
    private double machFromCas(double cas) {
        if (cas != casOfMach) {
            casOfMach = cas;
            machOfCas = AirspeedConversion.machFromCas(cas, pressure);
        }
        return machOfCas;
    }
}
