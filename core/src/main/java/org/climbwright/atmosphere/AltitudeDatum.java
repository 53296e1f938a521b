package org.climbwright.atmosphere;

import java.io.Serializable;
import java.util.Locale;
import java.util.Objects;
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
     * Makes it of parts that are all there.
     *
     * @param pressure see above
     * @param altitude see above
     */
    public AltitudeDatum {
        Objects.requireNonNull(pressure, "pressure");
        Objects.requireNonNull(altitude, "altitude");
    }

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
     * Returns the datum of the standard atmosphere.
     *
     * @return 1013.25 hPa at altitude 0
     */
    public static AltitudeDatum standard() {
        return onQnh(AltimeterSetting.standard());
    }

    /**
     * Returns the datum for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%.2f hPa at geopotential altitude %.0f ft",
                pressure.inHectopascals(),
                altitude.inFeet());
    }
}
