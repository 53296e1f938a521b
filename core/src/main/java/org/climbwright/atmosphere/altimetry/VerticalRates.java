package org.climbwright.atmosphere.altimetry;

import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.Geopotential;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.speed.GeometricRate;
import org.climbwright.quantity.speed.PressureAltitudeRate;

/**
 * Between the rate that an instrument shows, of pressure altitude, and the rate in true height.
 *
 * <p>In air warmer than standard a foot of the instrument is more than a foot: some {@code T /
 * T_ISA}.
 *
 * <p>Limits of use: gradients over obstacles are those of the procedure and the flight manual, with
 * the margins that they demand.
 *
 * @source hydrostatic equation in the air and in standard air of the same pressure, {@code dH / dHp
 *     = Tv / T_ISA}
 */
public final class VerticalRates {
    private static final ModelRange TEMPERATURE =
            new ModelRange(
                    "static air temperature",
                    100.0,
                    400.0,
                    "K",
                    "no air of the atmosphere is outside");

    private VerticalRates() {}

    /**
     * Returns how many metres of geopotential altitude one metre of pressure altitude is.
     *
     * @param air the air, with its humidity where that is known
     * @return virtual temperature over the standard temperature at its pressure: more than 1 in
     *     warm air
     * @throws org.climbwright.quantity.OutsideModelException if the standard atmosphere has no such
     *     pressure
     * @accuracy 1e-15 relative where humidity is known. Unknown humidity counts as none, which is
     *     2.1 % too little in saturated air of 35 °C at sea level and less in colder
     * @source see the class comment
     */
    public static double geopotentialPerPressureAltitude(AirState air) {
        return air.virtualTemperatureK() / StandardAir.temperatureFromPressure(air.pressurePa());
    }

    /**
     * Returns how many metres of true height one metre of pressure altitude is.
     *
     * @param air the air, with its humidity and altitude where those are known
     * @return {@link #geopotentialPerPressureAltitude} times the height of a geopotential metre
     *     there
     * @throws org.climbwright.quantity.OutsideModelException if the standard atmosphere has no such
     *     pressure
     * @accuracy as {@link #geopotentialPerPressureAltitude}; where the pressure altitude stands in
     *     for an unknown altitude, each kilometre between the two costs 0.03 %
     * @source {@link Geopotential#geometricPerGeopotential}
     */
    public static double geometricPerPressureAltitude(AirState air) {
        return geopotentialPerPressureAltitude(air) * geometricPerGeopotential(air);
    }

    /**
     * Returns how many metres of true height one metre of geopotential altitude is.
     *
     * @param air the air, with its altitude where that is known
     * @return the ratio
     * @accuracy rounding; where the pressure altitude stands in for an unknown altitude, each
     *     kilometre between the two costs 0.03 %
     * @source {@link Geopotential#geometricPerGeopotential}
     */
    public static double geometricPerGeopotential(AirState air) {
        return air.geometricAltitude()
                .map(known -> Geopotential.geometricPerGeopotential(known.inMetres()))
                .orElseGet(
                        () ->
                                Geopotential.geometricPerGeopotentialAtGeopotential(
                                        air.pressureAltitude().inMetres()));
    }

    /**
     * Returns how many metres of true height one metre of pressure altitude is, where only
     * temperature is known.
     *
     * @param pressureAltitudeM pressure altitude [m], -5000 to 80000
     * @param temperatureK static air temperature [K], 100 to 400; the virtual one for moist air
     * @return temperature over standard temperature, times the height of a geopotential metre
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 6 ulp, 1e-15 relative; the pressure altitude stands in for the altitude, of which
     *     each kilometre that they are apart costs 0.03 %
     * @source see the class comment, and {@link Geopotential#geometricPerGeopotential}
     */
    public static double geometricPerPressureAltitude(
            double pressureAltitudeM, double temperatureK) {
        return TEMPERATURE.check(temperatureK)
                / StandardAir.temperatureFromAltitude(pressureAltitudeM)
                * Geopotential.geometricPerGeopotentialAtGeopotential(pressureAltitudeM);
    }

    /**
     * Returns the rate in true height of a rate on the instrument.
     *
     * @param rate rate of pressure altitude
     * @param air the air
     * @return geometric rate: more than the instrument's when the air is warmer than standard
     * @throws org.climbwright.quantity.OutsideModelException if the standard atmosphere has no such
     *     pressure
     * @accuracy {@link #geometricPerPressureAltitude}
     */
    public static GeometricRate geometricRate(PressureAltitudeRate rate, AirState air) {
        return GeometricRate.ofMetresPerSecond(
                rate.inMetresPerSecond() * geometricPerPressureAltitude(air));
    }

    /**
     * Returns the rate that the instrument must show for a rate in true height, as a gradient over
     * the ground demands it.
     *
     * @param rate geometric rate
     * @param air the air
     * @return rate of pressure altitude: less than the true rate when the air is warmer than
     *     standard
     * @throws org.climbwright.quantity.OutsideModelException if the standard atmosphere has no such
     *     pressure
     * @accuracy {@link #geometricPerPressureAltitude}
     */
    public static PressureAltitudeRate pressureAltitudeRate(GeometricRate rate, AirState air) {
        return PressureAltitudeRate.ofMetresPerSecond(
                rate.inMetresPerSecond() / geometricPerPressureAltitude(air));
    }
}
