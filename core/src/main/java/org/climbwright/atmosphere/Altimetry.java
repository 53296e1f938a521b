package org.climbwright.atmosphere;

import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.pressure.StaticPressure;

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
    private Altimetry() {}

    /**
     * Returns the reading on QNH at a pressure altitude: {@code Hp - H(QNH)}.
     *
     * @param pressureAltitudeM pressure altitude [m]
     * @param qnhPa altimeter setting [Pa], 0.886 to 177687
     * @return altitude on that setting [m]
     * @throws org.climbwright.quantity.OutsideModelException if the setting is out of range
     * @accuracy 1e-9 m
     * @source see the class comment
     */
    public static double altitudeOnQnh(double pressureAltitudeM, double qnhPa) {
        return pressureAltitudeM - StandardAir.altitudeFromPressure(qnhPa);
    }

    /**
     * Returns the pressure altitude of a reading on QNH: {@code h + H(QNH)}.
     *
     * @param altitudeOnQnhM reading on the setting [m]
     * @param qnhPa altimeter setting [Pa], 0.886 to 177687
     * @return pressure altitude [m]
     * @throws org.climbwright.quantity.OutsideModelException if the setting is out of range
     * @accuracy 1e-9 m
     * @source see the class comment
     */
    public static double pressureAltitude(double altitudeOnQnhM, double qnhPa) {
        return altitudeOnQnhM + StandardAir.altitudeFromPressure(qnhPa);
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
        return AltimeterSetting.ofHectopascals(
                qnh(pressure.inPascals(), elevation.inMetres()) / 100.0);
    }
}
