package org.climbwright.cabin;

import static org.climbwright.atmosphere.IcaoConstants.GRAVITY_MPS2;

import org.climbwright.atmosphere.StandardAir;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.CabinPressureRate;
import org.climbwright.quantity.pressure.DifferentialPressure;
import org.climbwright.quantity.speed.CabinAltitudeRate;

/**
 * Cabin altitude, differential pressure and the aeroplane's altitude, each from the other two, and
 * rates of cabin altitude as rates of pressure.
 *
 * <pre>{@code
 * DifferentialPressure eight = DifferentialPressure.ofPoundsPerSquareInch(8.0);
 * CabinPressure.cabinAltitude(eight, PressureAltitude.ofFlightLevel(350)).inFeet()  // 6726.58…
 * CabinAltitudeRate rate = CabinAltitudeRate.ofFeetPerMinute(500);
 * CabinPressure.pressureRate(rate, CabinAltitude.ofFeet(0)).inHectopascalsPerMinute() // -18.308…
 * CabinPressure.pressureLost(500 * 0.3048, 0.0)                        // 1817.46…, Pa
 * }</pre>
 *
 * <p>The last two are not the same figure: 500 ft/min is 18.31 hPa/min at sea level as a rate, and
 * a minute of it loses 18.17 hPa, since air thins on the way. At 8,000 ft they are 14.39 and 14.28.
 *
 * <p>Limits of use: the cabin's pressure is one number here, the same in all the hull.
 *
 * @source pressure altitude by ICAO Doc 7488/3, see {@link StandardAir}; rates by its hydrostatic
 *     equation, {@code dp = -rho g0 dH} with the density of standard air
 */
public final class CabinPressure {
    private static final ModelRange CABIN =
            new ModelRange(
                    "cabin altitude",
                    -5000.0,
                    80000.0,
                    "m",
                    "the standard atmosphere ends there, and no cabin is beyond");

    private static final ModelRange RATE =
            new ModelRange(
                    "rate of cabin altitude",
                    -1e5,
                    1e5,
                    "m/s",
                    "no cabin changes so fast, a burst one neither");

    private static final ModelRange PRESSURE_RATE =
            new ModelRange(
                    "rate of cabin pressure",
                    -1e8,
                    1e8,
                    "Pa/s",
                    "no cabin changes so fast, a burst one neither");

    private CabinPressure() {}

    /**
     * Tells whether a cabin altitude is one that this class converts.
     *
     * @param cabinAltitudeM cabin altitude [m]
     * @return true from -5000 to 80000 m
     */
    public static boolean coversCabinAltitude(double cabinAltitudeM) {
        return CABIN.covers(cabinAltitudeM);
    }

    /**
     * Returns the differential pressure of a cabin: {@code p(cabin) - p(aeroplane)}.
     *
     * @param cabinAltitudeM cabin altitude [m], -5000 to 80000
     * @param pressureAltitudeM pressure altitude of the aeroplane [m], -5000 to 80000
     * @return differential [Pa]; negative where the cabin is above the aeroplane
     * @throws org.climbwright.quantity.OutsideModelException if an altitude is out of range
     * @accuracy 1e-10 Pa
     * @source see the class comment
     */
    public static double differential(double cabinAltitudeM, double pressureAltitudeM) {
        return StandardAir.pressureFromAltitude(CABIN.check(cabinAltitudeM))
                - StandardAir.pressureFromAltitude(pressureAltitudeM);
    }

    /**
     * Returns the cabin altitude that a differential pressure makes.
     *
     * @param differentialPa differential [Pa], positive where the cabin has more
     * @param pressureAltitudeM pressure altitude of the aeroplane [m], -5000 to 80000
     * @return cabin altitude [m]; below sea level is an answer
     * @throws org.climbwright.quantity.OutsideModelException if the altitude is out of range, or
     *     the cabin pressure outside 0.886 to 177687 Pa
     * @accuracy 1e-11 m for the pressure in the cabin, whose rounding is worth 1e-10 m
     * @source see the class comment
     */
    public static double cabinAltitude(double differentialPa, double pressureAltitudeM) {
        return StandardAir.altitudeFromPressure(
                StandardAir.pressureFromAltitude(pressureAltitudeM) + differentialPa);
    }

    /**
     * Returns where an aeroplane is, of its cabin altitude and its differential pressure: for a
     * cabin held at an altitude, the knee at which a differential is reached.
     *
     * @param cabinAltitudeM cabin altitude [m], -5000 to 80000
     * @param differentialPa differential [Pa], positive where the cabin has more
     * @return pressure altitude of the aeroplane [m]
     * @throws org.climbwright.quantity.OutsideModelException if the altitude is out of range, or
     *     nothing is left outside: the pressure there is not from 0.886 to 177687 Pa
     * @accuracy an ulp of the cabin pressure, 1.5e-11 Pa, which is worth 1e-8 m at 30 km
     * @source see the class comment
     */
    public static double pressureAltitude(double cabinAltitudeM, double differentialPa) {
        return StandardAir.altitudeFromPressure(
                StandardAir.pressureFromAltitude(CABIN.check(cabinAltitudeM)) - differentialPa);
    }

    /**
     * Returns how fast the pressure changes in a cabin that climbs: {@code dp/dt = -rho g0 dH/dt}.
     *
     * <p>The rate at this instant; {@link #pressureLost(double, double)} is what a climb loses.
     *
     * @param cabinRateMps rate of cabin altitude [m/s], -100000 to 100000, climbing positive
     * @param cabinAltitudeM cabin altitude [m], -5000 to 80000
     * @return rate of pressure [Pa/s], negative in a climb
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 1e-15 relative
     * @source see the class comment
     */
    public static double pressureRate(double cabinRateMps, double cabinAltitudeM) {
        return -RATE.check(cabinRateMps) * pressurePerMetre(cabinAltitudeM);
    }

    /**
     * Returns how fast a cabin climbs whose pressure changes: {@code dH/dt = -(dp/dt) / (rho g0)}.
     *
     * @param pressureRatePaPerS rate of pressure [Pa/s], -1e8 to 1e8, rising positive
     * @param cabinAltitudeM cabin altitude [m], -5000 to 80000
     * @return rate of cabin altitude [m/s], climbing positive
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 1e-15 relative
     * @source see the class comment
     */
    public static double cabinRate(double pressureRatePaPerS, double cabinAltitudeM) {
        return -PRESSURE_RATE.check(pressureRatePaPerS) / pressurePerMetre(cabinAltitudeM);
    }

    /**
     * Returns the pressure that a cabin loses in a climb of some height: {@code p(H) - p(H + h)}.
     *
     * <p>Not a rate: over a minute it is less than the rate at the beginning tells.
     *
     * @param climbM what the cabin climbs [m], negative in a descent
     * @param cabinAltitudeM cabin altitude at the beginning [m], -5000 to 80000, as at the end
     * @return pressure lost [Pa], negative where it is gained
     * @throws org.climbwright.quantity.OutsideModelException if an altitude is out of range
     * @accuracy 1e-10 Pa
     * @source see the class comment
     */
    public static double pressureLost(double climbM, double cabinAltitudeM) {
        return StandardAir.pressureFromAltitude(CABIN.check(cabinAltitudeM))
                - StandardAir.pressureFromAltitude(CABIN.check(cabinAltitudeM + climbM));
    }

    private static double pressurePerMetre(double cabinAltitudeM) {
        return StandardAir.densityFromAltitude(CABIN.check(cabinAltitudeM)) * GRAVITY_MPS2;
    }

    /**
     * Returns the differential pressure of a cabin.
     *
     * @param cabin cabin altitude
     * @param aeroplane pressure altitude of the aeroplane
     * @return differential; negative where the cabin is above the aeroplane
     * @throws org.climbwright.quantity.OutsideModelException if an altitude is out of range
     * @accuracy see {@link #differential(double, double)}
     */
    public static DifferentialPressure differential(
            CabinAltitude cabin, PressureAltitude aeroplane) {
        return DifferentialPressure.ofPascals(differential(cabin.inMetres(), aeroplane.inMetres()));
    }

    /**
     * Returns the cabin altitude that a differential pressure makes.
     *
     * @param differential differential pressure
     * @param aeroplane pressure altitude of the aeroplane
     * @return cabin altitude
     * @throws org.climbwright.quantity.OutsideModelException if there is no such cabin
     * @accuracy see {@link #cabinAltitude(double, double)}
     */
    public static CabinAltitude cabinAltitude(
            DifferentialPressure differential, PressureAltitude aeroplane) {
        return CabinAltitude.ofMetres(
                cabinAltitude(differential.inPascals(), aeroplane.inMetres()));
    }

    /**
     * Returns where an aeroplane is, of its cabin altitude and its differential pressure.
     *
     * @param cabin cabin altitude
     * @param differential differential pressure
     * @return pressure altitude of the aeroplane
     * @throws org.climbwright.quantity.OutsideModelException if there is no such altitude
     * @accuracy see {@link #pressureAltitude(double, double)}
     */
    public static PressureAltitude pressureAltitude(
            CabinAltitude cabin, DifferentialPressure differential) {
        return PressureAltitude.ofMetres(
                pressureAltitude(cabin.inMetres(), differential.inPascals()));
    }

    /**
     * Returns how fast the pressure changes in a cabin that climbs, at this instant.
     *
     * @param rate rate of cabin altitude, climbing positive
     * @param cabin cabin altitude
     * @return rate of pressure, negative in a climb
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy see {@link #pressureRate(double, double)}
     */
    public static CabinPressureRate pressureRate(CabinAltitudeRate rate, CabinAltitude cabin) {
        return CabinPressureRate.ofPascalsPerSecond(
                pressureRate(rate.inMetresPerSecond(), cabin.inMetres()));
    }

    /**
     * Returns how fast a cabin climbs whose pressure changes.
     *
     * @param rate rate of pressure, rising positive
     * @param cabin cabin altitude
     * @return rate of cabin altitude, climbing positive
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy see {@link #cabinRate(double, double)}
     */
    public static CabinAltitudeRate cabinRate(CabinPressureRate rate, CabinAltitude cabin) {
        return CabinAltitudeRate.ofMetresPerSecond(
                cabinRate(rate.inPascalsPerSecond(), cabin.inMetres()));
    }
}
