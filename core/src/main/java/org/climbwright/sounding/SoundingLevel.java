package org.climbwright.sounding;

import java.io.Serializable;
import java.util.Optional;
import org.climbwright.atmosphere.Wind;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.quantity.temperature.DewPoint;
import org.climbwright.quantity.temperature.StaticAirTemperature;

/**
 * What a balloon reported at one level. Any part may be missing; a level has a pressure or a
 * height.
 *
 * <p>In most ascents wind and temperature stand on different levels, and many winds have a height
 * and no pressure.
 */
public final class SoundingLevel implements Serializable {
    private static final long serialVersionUID = 1L;

    private final double pressurePa;
    private final double geopotentialAltitudeM;
    private final double temperatureK;
    private final double dewPointK;
    private final double eastwardMps;
    private final double northwardMps;

    private SoundingLevel(
            double pressurePa,
            double geopotentialAltitudeM,
            double temperatureK,
            double dewPointK,
            double eastwardMps,
            double northwardMps) {
        this.pressurePa = pressurePa;
        this.geopotentialAltitudeM = geopotentialAltitudeM;
        this.temperatureK = temperatureK;
        this.dewPointK = dewPointK;
        this.eastwardMps = eastwardMps;
        this.northwardMps = northwardMps;
    }

    /**
     * Returns a level; NaN stands for every number that was not reported.
     *
     * @param pressurePa static pressure [Pa], above 0
     * @param geopotentialAltitudeM geopotential altitude above mean sea level [m]
     * @param temperatureK static air temperature [K], above 0
     * @param dewPointK dew point over liquid water [K], above 0
     * @param eastwardMps speed of the air towards the east [m/s]
     * @param northwardMps speed of the air towards the north [m/s]
     * @return the level
     * @throws IllegalArgumentException if it has neither pressure nor height, a number cannot be,
     *     or only one component of the wind is given
     */
    public static SoundingLevel ofSi(
            double pressurePa,
            double geopotentialAltitudeM,
            double temperatureK,
            double dewPointK,
            double eastwardMps,
            double northwardMps) {
        if (Double.isNaN(pressurePa) && Double.isNaN(geopotentialAltitudeM)) {
            throw new IllegalArgumentException("a level needs a pressure or a height");
        }
        if (pressurePa <= 0.0 || temperatureK <= 0.0 || dewPointK <= 0.0) {
            throw new IllegalArgumentException(
                    "pressure and temperatures must be above 0, but were "
                            + pressurePa
                            + " Pa, "
                            + temperatureK
                            + " K and "
                            + dewPointK
                            + " K");
        }
        if (Double.isNaN(eastwardMps) != Double.isNaN(northwardMps)) {
            throw new IllegalArgumentException(
                    "a wind needs both components, but had "
                            + eastwardMps
                            + " and "
                            + northwardMps);
        }
        return new SoundingLevel(
                pressurePa,
                geopotentialAltitudeM,
                temperatureK,
                dewPointK,
                eastwardMps,
                northwardMps);
    }

    double pressurePa() {
        return pressurePa;
    }

    double geopotentialAltitudeM() {
        return geopotentialAltitudeM;
    }

    double temperatureK() {
        return temperatureK;
    }

    double dewPointK() {
        return dewPointK;
    }

    double eastwardMps() {
        return eastwardMps;
    }

    double northwardMps() {
        return northwardMps;
    }

    SoundingLevel withoutAltitude() {
        return new SoundingLevel(
                pressurePa, Double.NaN, temperatureK, dewPointK, eastwardMps, northwardMps);
    }

    /**
     * Returns the pressure.
     *
     * @return static pressure; empty when the level was told by its height
     */
    public Optional<StaticPressure> staticPressure() {
        return Double.isNaN(pressurePa)
                ? Optional.empty()
                : Optional.of(StaticPressure.ofPascals(pressurePa));
    }

    /**
     * Returns the reported height.
     *
     * @return geopotential altitude; empty when not reported
     */
    public Optional<GeopotentialAltitude> geopotentialAltitude() {
        return Double.isNaN(geopotentialAltitudeM)
                ? Optional.empty()
                : Optional.of(GeopotentialAltitude.ofMetres(geopotentialAltitudeM));
    }

    /**
     * Returns the temperature.
     *
     * @return static air temperature; empty when not reported
     */
    public Optional<StaticAirTemperature> staticAirTemperature() {
        return Double.isNaN(temperatureK)
                ? Optional.empty()
                : Optional.of(StaticAirTemperature.ofKelvins(temperatureK));
    }

    /**
     * Returns the dew point.
     *
     * @return dew point over liquid water; empty when not reported
     */
    public Optional<DewPoint> dewPoint() {
        return Double.isNaN(dewPointK)
                ? Optional.empty()
                : Optional.of(DewPoint.ofKelvins(dewPointK));
    }

    /**
     * Returns the wind.
     *
     * @return the wind; empty when not reported
     */
    public Optional<Wind> wind() {
        return Double.isNaN(eastwardMps)
                ? Optional.empty()
                : Optional.of(Wind.ofComponents(eastwardMps, northwardMps));
    }
}
