package org.climbwright.airspeed;

import java.io.Serializable;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.speed.TrueAirspeed;

/**
 * Where a calibrated airspeed and a Mach number are the same speed.
 *
 * <p>Temperature has no part in it: the crossover stands at the same pressure altitude on every
 * day, at another true height and with another true airspeed.
 *
 * <pre>{@code
 * Crossover crossover = Crossover.of(CalibratedAirspeed.ofKnots(300), Mach.of(0.78));
 * crossover.pressureAltitude().inFeet()                      // 29314.0…, ft
 * crossover.trueAirspeed(Atmosphere.standard()).inKnots()    // 461.0…, kn
 * }</pre>
 *
 * <p>Limits of use: for study; the flight manual and the operator decide the speeds of a climb.
 */
public final class Crossover implements Serializable {
    private static final long serialVersionUID = 1L;

    private final double casMps;
    private final double mach;

    private Crossover(double casMps, double mach) {
        this.casMps = casMps;
        this.mach = mach;
    }

    /**
     * Returns the crossover of two speeds.
     *
     * @param calibratedAirspeed calibrated airspeed, 1 to 1701.47 m/s
     * @param mach Mach number, 0.01 to 5
     * @return the crossover
     * @throws org.climbwright.quantity.OutsideModelException if a speed is out of range
     */
    public static Crossover of(CalibratedAirspeed calibratedAirspeed, Mach mach) {
        double casMps = calibratedAirspeed.inMetresPerSecond();
        AirspeedConversion.crossoverPressure(casMps, mach.number()); // asked for its checks
        return new Crossover(casMps, mach.number());
    }

    /**
     * Tells whether the crossover of two speeds lies in the standard atmosphere.
     *
     * @param casMps calibrated airspeed [m/s]
     * @param mach Mach number
     * @return true if {@link #altitude} answers
     */
    public static boolean hasAltitude(double casMps, double mach) {
        return AirspeedConversion.hasCrossover(casMps, mach)
                && StandardAir.coversPressure(AirspeedConversion.crossoverPressure(casMps, mach));
    }

    /**
     * Returns the pressure altitude at which a calibrated airspeed and a Mach number are the same
     * speed.
     *
     * @param casMps calibrated airspeed [m/s], 1 to 1701.47
     * @param mach Mach number, 0.01 to 5
     * @return pressure altitude [m]
     * @throws org.climbwright.quantity.OutsideModelException if a speed is out of range, or the
     *     crossover lies outside -5 to 80 km
     * @accuracy that of {@link StandardAir#altitudeFromPressure}, and 1.5e-15 of the pressure
     * @source {@link AirspeedConversion#crossoverPressure}
     */
    public static double altitude(double casMps, double mach) {
        return StandardAir.altitudeFromPressure(AirspeedConversion.crossoverPressure(casMps, mach));
    }

    /**
     * Returns the calibrated airspeed.
     *
     * @return the speed as given
     */
    public CalibratedAirspeed calibratedAirspeed() {
        return CalibratedAirspeed.ofMetresPerSecond(casMps);
    }

    /**
     * Returns the Mach number.
     *
     * @return the number as given
     */
    public Mach mach() {
        return Mach.of(mach);
    }

    /**
     * Returns the pressure at which the two are the same speed.
     *
     * @return see {@link AirspeedConversion#crossoverPressure}
     */
    public StaticPressure staticPressure() {
        return StaticPressure.ofPascals(AirspeedConversion.crossoverPressure(casMps, mach));
    }

    /**
     * Returns the pressure altitude at which the two are the same speed.
     *
     * @return see {@link #altitude}
     * @throws org.climbwright.quantity.OutsideModelException if it is outside -5 to 80 km
     */
    public PressureAltitude pressureAltitude() {
        return PressureAltitude.ofMetres(altitude(casMps, mach));
    }

    /**
     * Returns the true airspeed at the crossover in some air.
     *
     * @param atmosphere the air of the day
     * @return true airspeed
     * @throws org.climbwright.quantity.OutsideModelException if the air does not reach there
     */
    public TrueAirspeed trueAirspeed(Atmosphere atmosphere) {
        double temperatureK =
                atmosphere.temperature(AirspeedConversion.crossoverPressure(casMps, mach));
        return TrueAirspeed.ofMetresPerSecond(AirspeedConversion.tasFromMach(mach, temperatureK));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Crossover that
                && Double.compare(casMps, that.casMps) == 0
                && Double.compare(mach, that.mach) == 0;
    }

    @Override
    public int hashCode() {
        return 31 * Double.hashCode(casMps) + Double.hashCode(mach);
    }

    /**
     * Returns the two speeds for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return calibratedAirspeed().text() + " and " + mach().text();
    }

    private Object readResolve() {
        return of(CalibratedAirspeed.ofMetresPerSecond(casMps), Mach.of(mach));
    }
}
