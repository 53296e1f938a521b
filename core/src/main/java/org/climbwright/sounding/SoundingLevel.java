package org.climbwright.sounding;

import java.io.Serializable;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.MoistAir;
import org.climbwright.atmosphere.wind.Wind;
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

    private static final double ICE_POINT_K = 273.15;

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
        // + 0.0 makes -0.0 into 0.0
        this.pressurePa = pressurePa;
        this.geopotentialAltitudeM = geopotentialAltitudeM + 0.0;
        this.temperatureK = temperatureK;
        this.dewPointK = dewPointK;
        this.eastwardMps = eastwardMps + 0.0;
        this.northwardMps = northwardMps + 0.0;
    }

    /**
     * Returns a level; NaN stands for every number that was not reported.
     *
     * @param pressurePa static pressure [Pa], one that standard air has: 0.886 to 177687
     * @param geopotentialAltitudeM geopotential altitude above mean sea level [m], finite
     * @param temperatureK static air temperature [K], above 0, finite
     * @param dewPointK dew point over liquid water [K], 123 to 332, at most the temperature, its
     *     vapour pressure below the pressure
     * @param eastwardMps speed of the air towards the east [m/s], finite
     * @param northwardMps speed of the air towards the north [m/s], finite
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
        if (!Double.isNaN(pressurePa)) {
            Atmosphere.standard().range().check(pressurePa);
        }
        refuse(
                Double.isInfinite(geopotentialAltitudeM),
                "height",
                "finite",
                geopotentialAltitudeM,
                "m");
        refuse(
                temperatureK <= 0.0 || Double.isInfinite(temperatureK),
                "temperature",
                "a finite number above 0.0",
                temperatureK,
                "K");
        if (!Double.isNaN(dewPointK)) {
            refuse(
                    MoistAir.saturationVapourPressure(dewPointK) >= pressurePa,
                    "dew point",
                    "one of a vapour pressure below the static pressure of " + pressurePa + " Pa",
                    dewPointK,
                    "K");
        }
        refuse(
                dewPointK > temperatureK,
                "dew point",
                "at most the temperature of " + temperatureK + " K",
                dewPointK,
                "K");
        if (Double.isNaN(eastwardMps) != Double.isNaN(northwardMps)) {
            throw new IllegalArgumentException(
                    "a wind needs both components, but had "
                            + eastwardMps
                            + " and "
                            + northwardMps);
        }
        refuse(Double.isInfinite(eastwardMps), "eastward wind", "finite", eastwardMps, "m/s");
        refuse(Double.isInfinite(northwardMps), "northward wind", "finite", northwardMps, "m/s");
        return new SoundingLevel(
                pressurePa,
                geopotentialAltitudeM,
                temperatureK,
                dewPointK,
                eastwardMps,
                northwardMps);
    }

    private static void refuse(boolean bad, String term, String range, double value, String unit) {
        if (bad) {
            throw new IllegalArgumentException(
                    term + " must be " + range + ", but was " + value + " " + unit);
        }
    }

    double pressurePa() {
        return pressurePa;
    }

    /** Depth in the air: what interpolation is linear in. */
    double lnPressure() {
        return StrictMath.log(pressurePa);
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

    @Override
    public boolean equals(Object other) {
        return other instanceof SoundingLevel that
                && Double.compare(pressurePa, that.pressurePa) == 0
                && Double.compare(geopotentialAltitudeM, that.geopotentialAltitudeM) == 0
                && Double.compare(temperatureK, that.temperatureK) == 0
                && Double.compare(dewPointK, that.dewPointK) == 0
                && Double.compare(eastwardMps, that.eastwardMps) == 0
                && Double.compare(northwardMps, that.northwardMps) == 0;
    }

    @Override
    public int hashCode() {
        int hash = Double.hashCode(pressurePa);
        hash = 31 * hash + Double.hashCode(geopotentialAltitudeM);
        hash = 31 * hash + Double.hashCode(temperatureK);
        hash = 31 * hash + Double.hashCode(dewPointK);
        hash = 31 * hash + Double.hashCode(eastwardMps);
        return 31 * hash + Double.hashCode(northwardMps);
    }

    /**
     * Returns what was reported for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return Stream.of(
                        told("%.2f hPa", pressurePa / 100.0),
                        told("%.0f m", geopotentialAltitudeM),
                        told("%.1f °C", temperatureK - ICE_POINT_K),
                        told("dew point %.1f °C", dewPointK - ICE_POINT_K),
                        wind().map(Wind::toString))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(", ", "level of ", ""));
    }

    private static Optional<String> told(String pattern, double figure) {
        return Double.isNaN(figure)
                ? Optional.empty()
                : Optional.of(String.format(Locale.ROOT, pattern, figure));
    }

    private Object readResolve() {
        return ofSi(
                pressurePa,
                geopotentialAltitudeM,
                temperatureK,
                dewPointK,
                eastwardMps,
                northwardMps);
    }
}
