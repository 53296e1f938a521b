package org.climbwright.atmosphere.altimetry;

import java.util.Locale;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.AltitudeDatum;
import org.climbwright.atmosphere.DryAir;
import org.climbwright.atmosphere.IcaoConstants;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.altitude.Height;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.quantity.temperature.StaticAirTemperature;

/**
 * What an exact altimeter makes of a pressure on a setting, and which setting an aerodrome gives.
 *
 * <p>An altimeter shows the distance, in standard air, between the level of the pressure it feels
 * and the level of the pressure it is set to. The difference between its reading on QNH and
 * pressure altitude is therefore the same at every level.
 *
 * <p>Limits of use: an altimeter shows the true altitude at the aerodrome of the QNH only. Settings
 * and corrections are those of the aeronautical information, the operator's procedures and the
 * controller.
 *
 * @source ICAO Doc 7488/3 for the relation of pressure and altitude; ICAO Annex 3 and Doc 8896 for
 *     QNH as the setting that shows the elevation (definition from memory)
 */
public final class Altimetry {
    private static final ModelRange ALTITUDE =
            new ModelRange(
                    "altitude", -10000.0, 100000.0, "m", "no altimeter of an aeroplane shows it");

    private Altimetry() {}

    /**
     * Returns the reading on QNH at a pressure altitude: {@code Hp - H(QNH)}.
     *
     * @param pressureAltitudeM pressure altitude [m], -10000 to 100000
     * @param qnhPa altimeter setting [Pa], 0.886 to 177687
     * @return altitude on that setting [m]
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 1e-9 m
     * @source see the class comment
     */
    public static double altitudeOnQnh(double pressureAltitudeM, double qnhPa) {
        return ALTITUDE.check(pressureAltitudeM) - StandardAir.altitudeFromPressure(qnhPa);
    }

    /**
     * Returns the pressure altitude of a reading on QNH: {@code h + H(QNH)}.
     *
     * @param altitudeOnQnhM reading on the setting [m], -10000 to 100000
     * @param qnhPa altimeter setting [Pa], 0.886 to 177687
     * @return pressure altitude [m]
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 1e-9 m
     * @source see the class comment
     */
    public static double pressureAltitude(double altitudeOnQnhM, double qnhPa) {
        return ALTITUDE.check(altitudeOnQnhM) + StandardAir.altitudeFromPressure(qnhPa);
    }

    /**
     * Returns the QNH of an aerodrome: the setting on which an altimeter there shows its elevation.
     *
     * @param pressurePa static pressure at the aerodrome [Pa], 0.886 to 177687
     * @param elevationM elevation of the aerodrome above mean sea level [m]
     * @return exact QNH [Pa]; a report rounds it down to a whole hectopascal
     * @throws org.climbwright.quantity.OutsideModelException if pressure or result is out of range
     * @accuracy 1e-12 relative
     * @source see the class comment
     */
    public static double qnh(double pressurePa, double elevationM) {
        return StandardAir.pressureFromAltitude(
                StandardAir.altitudeFromPressure(pressurePa) - elevationM);
    }

    /**
     * Returns the static pressure at an aerodrome with a QNH, which is its QFE: the inverse of
     * {@link #qnh(double, double)}.
     *
     * @param qnhPa altimeter setting [Pa], 0.886 to 177687
     * @param elevationM elevation of the aerodrome above mean sea level [m]
     * @return exact QFE [Pa]
     * @throws org.climbwright.quantity.OutsideModelException if setting or result is out of range
     * @accuracy 1e-12 relative
     * @source see the class comment
     */
    public static double qfe(double qnhPa, double elevationM) {
        return StandardAir.pressureFromAltitude(
                StandardAir.altitudeFromPressure(qnhPa) + elevationM);
    }

    /**
     * Returns the elevation at which a static pressure and a QNH belong together.
     *
     * @param pressurePa static pressure there, the QFE [Pa], 0.886 to 177687
     * @param qnhPa altimeter setting [Pa], 0.886 to 177687
     * @return elevation above mean sea level [m]: what an altimeter there shows on the QNH
     * @throws org.climbwright.quantity.OutsideModelException if a pressure is out of range
     * @accuracy 1e-9 m
     * @source see the class comment
     */
    public static double elevation(double pressurePa, double qnhPa) {
        return altitudeOnQnh(StandardAir.altitudeFromPressure(pressurePa), qnhPa);
    }

    /**
     * Returns by how much the reading changes when the subscale is turned: {@code H(from) - H(to)}.
     *
     * <p>From QNH to 1013.25 hPa at the transition altitude, this is the jump of the reading. An
     * altimeter left on {@code to} where {@code from} is right reads too high by it.
     *
     * @param fromPa setting before [Pa], 0.886 to 177687
     * @param toPa setting afterwards [Pa], 0.886 to 177687
     * @return change of the reading [m], the same at every altitude; positive towards a higher
     *     setting
     * @throws org.climbwright.quantity.OutsideModelException if a setting is out of range
     * @accuracy 1e-9 m
     * @source see the class comment
     */
    public static double readingChange(double fromPa, double toPa) {
        return StandardAir.altitudeFromPressure(fromPa) - StandardAir.altitudeFromPressure(toPa);
    }

    /**
     * Returns how far apart in altitude two levels are whose pressures differ by one pascal: {@code
     * R T / (g0 p)}.
     *
     * @param pressurePa static pressure [Pa], above 0, at most 1e6
     * @param temperatureK static air temperature [K], 100 to 400; the virtual one in moist air, the
     *     standard one for what an altimeter shows
     * @return geopotential altitude per pressure [m/Pa], a positive number
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 5 ulp
     * @source hydrostatic equation and perfect gas
     */
    public static double altitudePerPressure(double pressurePa, double temperatureK) {
        return 1.0 / (DryAir.density(pressurePa, temperatureK) * IcaoConstants.GRAVITY_MPS2);
    }

    /**
     * Returns the pressure altitude of a pressure; see {@link StandardAir#altitudeFromPressure}.
     *
     * @param pressure static pressure
     * @return pressure altitude
     * @throws org.climbwright.quantity.OutsideModelException if the pressure is out of range
     */
    public static PressureAltitude pressureAltitude(StaticPressure pressure) {
        return PressureAltitude.ofMetres(StandardAir.altitudeFromPressure(pressure.inPascals()));
    }

    /**
     * Returns the reading on QNH at a pressure altitude.
     *
     * @param altitude pressure altitude
     * @param qnh altimeter setting
     * @return what an exact altimeter shows on that setting
     */
    public static AltitudeOnQnh altitudeOnQnh(PressureAltitude altitude, AltimeterSetting qnh) {
        return AltitudeOnQnh.ofMetres(altitudeOnQnh(altitude.inMetres(), qnh.inPascals()));
    }

    /**
     * Returns the pressure altitude of a reading on QNH.
     *
     * @param altitude what an exact altimeter shows
     * @param qnh altimeter setting
     * @return pressure altitude there
     */
    public static PressureAltitude pressureAltitude(AltitudeOnQnh altitude, AltimeterSetting qnh) {
        return PressureAltitude.ofMetres(pressureAltitude(altitude.inMetres(), qnh.inPascals()));
    }

    /**
     * Returns the exact QNH of an aerodrome.
     *
     * @param pressure static pressure at the aerodrome
     * @param elevation its elevation; standard air counts in geopotential altitude, and at 1000 m
     *     the two are 0.16 m apart
     * @return the setting on which an altimeter there shows the elevation
     * @throws IllegalArgumentException if that is no setting of 850 to 1100 hPa
     */
    public static AltimeterSetting qnh(StaticPressure pressure, GeopotentialAltitude elevation) {
        return AltimeterSetting.ofPascals(qnh(pressure.inPascals(), elevation.inMetres()));
    }

    /**
     * Returns the exact QFE of an aerodrome: the pressure there, on which an altimeter shows no
     * height.
     *
     * @param qnh its altimeter setting
     * @param elevation its elevation; standard air counts in geopotential altitude
     * @return static pressure at the aerodrome
     */
    public static StaticPressure qfe(AltimeterSetting qnh, GeopotentialAltitude elevation) {
        return StaticPressure.ofPascals(qfe(qnh.inPascals(), elevation.inMetres()));
    }

    /**
     * Returns the elevation at which a pressure and a QNH belong together.
     *
     * @param qfe static pressure there
     * @param qnh altimeter setting
     * @return the elevation, in geopotential altitude
     * @throws org.climbwright.quantity.OutsideModelException if the pressure is out of range
     */
    public static GeopotentialAltitude elevation(StaticPressure qfe, AltimeterSetting qnh) {
        return GeopotentialAltitude.ofMetres(elevation(qfe.inPascals(), qnh.inPascals()));
    }

    /**
     * Returns the reading on QFE at a pressure altitude: a height above the aerodrome.
     *
     * @param altitude pressure altitude
     * @param qfe static pressure at the aerodrome
     * @return what an exact altimeter shows on that setting; true only in standard air
     * @throws org.climbwright.quantity.OutsideModelException if the pressure is out of range
     */
    public static Height heightOnQfe(PressureAltitude altitude, StaticPressure qfe) {
        return Height.ofMetres(altitudeOnQnh(altitude.inMetres(), qfe.inPascals()));
    }

    /**
     * Returns the pressure altitude of a reading on QFE.
     *
     * @param height what an exact altimeter shows
     * @param qfe static pressure at the aerodrome
     * @return pressure altitude there
     * @throws org.climbwright.quantity.OutsideModelException if the pressure is out of range
     */
    public static PressureAltitude pressureAltitude(Height height, StaticPressure qfe) {
        return PressureAltitude.ofMetres(pressureAltitude(height.inMetres(), qfe.inPascals()));
    }

    /**
     * Returns by how much the reading changes when the subscale is turned.
     *
     * <p>At the transition altitude: {@code readingChange(qnh, AltimeterSetting.standard())}.
     *
     * @param from setting before
     * @param to setting afterwards
     * @return change of the reading, positive towards a higher setting
     */
    public static AltitudeChange readingChange(AltimeterSetting from, AltimeterSetting to) {
        return AltitudeChange.ofMetres(readingChange(from.inPascals(), to.inPascals()));
    }

    /**
     * Returns what a setting does that is not the right one.
     *
     * @param set what the subscale is set to
     * @param correct what it should be set to
     * @return by how much the altimeter reads too high, and what that means
     */
    public static AltimeterError missetting(AltimeterSetting set, AltimeterSetting correct) {
        String reason =
                set.equals(correct)
                        ? "the subscale is on " + both(set) + ", as it should be"
                        : "the subscale is on "
                                + both(set)
                                + " where "
                                + both(correct)
                                + " is right";
        return new AltimeterError(readingChange(correct, set), reason);
    }

    private static String both(AltimeterSetting setting) {
        return String.format(
                Locale.ROOT,
                "%.2f hPa (%.2f inHg)",
                setting.inHectopascals(),
                setting.inInchesOfMercury());
    }

    /**
     * Returns how far one hectopascal reaches at a level, as an altimeter counts it: some 27 ft at
     * sea level.
     *
     * @param altitude pressure altitude
     * @return change of pressure altitude per hectopascal
     * @throws org.climbwright.quantity.OutsideModelException if standard air does not reach there
     */
    public static AltitudeChange altitudePerHectopascal(PressureAltitude altitude) {
        double pressurePa = StandardAir.pressureFromAltitude(altitude.inMetres());
        return AltitudeChange.ofMetres(
                100.0
                        * altitudePerPressure(
                                pressurePa, StandardAir.temperatureFromPressure(pressurePa)));
    }

    /**
     * Returns how far one hectopascal reaches in the air of the day.
     *
     * @param air the air, with its humidity where that is known
     * @return change of geopotential altitude per hectopascal
     * @throws org.climbwright.quantity.OutsideModelException outside 100 to 400 K
     */
    public static AltitudeChange altitudePerHectopascal(AirState air) {
        return AltitudeChange.ofMetres(
                100.0 * altitudePerPressure(air.pressurePa(), air.virtualTemperatureK()));
    }

    /**
     * Returns the pressure and the altitude that an aerodrome gives to air off standard.
     *
     * @param qnh its altimeter setting
     * @param elevation its elevation
     * @return its QFE at its elevation
     */
    public static AltitudeDatum datum(AltimeterSetting qnh, GeopotentialAltitude elevation) {
        return new AltitudeDatum(qfe(qnh, elevation), elevation);
    }

    /**
     * Returns the air of an aerodrome from what its report tells.
     *
     * <p>Its deviation from standard is two numbers: {@link AirState#isaDeviation} at the same
     * pressure and {@link AirState#isaDeviationAtAltitude} at the same elevation.
     *
     * @param qnh its altimeter setting; a reported one is rounded down, up to 1 hPa
     * @param elevation its elevation
     * @param temperature static air temperature there
     * @return the air, humidity not known; see {@link AirState#withDewPoint}
     */
    public static AirState aerodromeAir(
            AltimeterSetting qnh,
            GeopotentialAltitude elevation,
            StaticAirTemperature temperature) {
        return AirState.of(qfe(qnh, elevation), temperature).withGeopotentialAltitude(elevation);
    }
}
