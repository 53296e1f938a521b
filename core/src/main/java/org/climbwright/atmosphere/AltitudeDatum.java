package org.climbwright.atmosphere;

import java.io.Serializable;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.pressure.StaticPressure;

/**
 * One pressure whose altitude is known, from which the hypsometric equation goes up and down.
 *
 * @param pressure static pressure there
 * @param altitude geopotential altitude above mean sea level there
 */
public record AltitudeDatum(StaticPressure pressure, GeopotentialAltitude altitude)
        implements Serializable {
    /**
     * Returns the datum of air whose pressure at mean sea level is a QNH.
     *
     * @param qnh the setting, here taken as the pressure at altitude 0
     * @return the datum
     */
    public static AltitudeDatum onQnh(AltimeterSetting qnh) {
        return new AltitudeDatum(
                StaticPressure.ofPascals(qnh.inPascals()), GeopotentialAltitude.ofMetres(0.0));
    }

    /**
     * Returns the datum of an aerodrome: the static pressure that its QNH means at its elevation.
     *
     * @param qnh altimeter setting of the aerodrome
     * @param elevation its elevation
     * @return the datum
     */
    public static AltitudeDatum ofAerodrome(AltimeterSetting qnh, GeopotentialAltitude elevation) {
        double pressureAltitudeM =
                StandardAir.altitudeFromPressure(qnh.inPascals()) + elevation.inMetres();
        return new AltitudeDatum(
                StaticPressure.ofPascals(StandardAir.pressureFromAltitude(pressureAltitudeM)),
                elevation);
    }

    /**
     * Returns the datum of the standard atmosphere.
     *
     * @return 1013.25 hPa at altitude 0
     */
    public static AltitudeDatum standard() {
        return onQnh(AltimeterSetting.standard());
    }
}
