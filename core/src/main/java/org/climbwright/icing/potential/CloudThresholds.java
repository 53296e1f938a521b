package org.climbwright.icing.potential;

import java.io.Serializable;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.icing.potential.ForecastCloud.Kind;
import org.climbwright.icing.potential.ProfileSearch.Stretch;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.humidity.RelativeHumidity;

/**
 * The two relative humidities by which a forecast scheme finds one cloud in a column: its top, the
 * first level from 300 hPa downward that is moist enough, and its base, the first from below.
 *
 * <p>Limits of use: 80 % at the base and 70 % at the top are tuned to the bias of the forecast
 * model that the scheme was made for. They are no physics, and in the air of a sounding they find
 * cloud where there is none. One base and one top hide clear air between layers. The thresholds are
 * over liquid water; ice cloud in colder air is missed. A clear column is not "no icing".
 *
 * @param base the lowest relative humidity over water at the base, itself included
 * @param top the lowest relative humidity over water at the top, itself included; at most that of
 *     the base
 * @source F. McDonough and others, The Forecast Icing Potential (FIP) algorithm, conference paper
 *     3.2 of the American Meteorological Society, section 2a
 */
public record CloudThresholds(RelativeHumidity base, RelativeHumidity top) implements Serializable {
    private static final double HIGHEST_TOP_PA = 30000.0;

    private static final int NOT_KNOWN = -1;

    /**
     * Makes thresholds.
     *
     * @param base the lowest relative humidity over water at the base
     * @param top the lowest relative humidity over water at the top
     * @throws IllegalArgumentException if that of the top is above that of the base, so that a base
     *     could have no top
     */
    public CloudThresholds {
        Objects.requireNonNull(base, "base");
        Objects.requireNonNull(top, "top");
        if (top.compareTo(base) > 0) {
            throw new IllegalArgumentException(
                    "relative humidity at the top must be at most that at the base, "
                            + base.inPercent()
                            + " %, but was "
                            + top.inPercent()
                            + " %");
        }
    }

    /**
     * Returns the thresholds as published: 80 % at the base, 70 % at the top.
     *
     * @return the thresholds
     */
    public static CloudThresholds published() {
        return new CloudThresholds(
                RelativeHumidity.ofPercent(80.0), RelativeHumidity.ofPercent(70.0));
    }

    /**
     * Finds the cloud between a level and 300 hPa, or the top of the air if that is lower.
     *
     * @param air the air
     * @param lowest where to begin; the scheme begins 1,000 ft above the ground
     * @return the cloud, or that there is none or that it cannot be told, each with its reason
     * @throws org.climbwright.quantity.OutsideModelException if the air does not reach there, or is
     *     outside 123 to 332 K and its humidity known
     * @throws IllegalArgumentException if the air begins above 300 hPa, or is more than saturated
     * @accuracy base and top to 1e-8 m of where the humidity passes the threshold
     */
    public ForecastCloud cloudIn(Atmosphere air, PressureAltitude lowest) {
        double bottomPa = air.at(lowest).pressurePa();
        double topPa = Math.max(HIGHEST_TOP_PA, air.range().lowest());
        if (!(bottomPa > topPa)) {
            throw new IllegalArgumentException(
                    "the search must begin below 300 hPa and below the top of the air, but began"
                            + " at "
                            + lowest);
        }
        List<Stretch> stretches =
                ProfileSearch.of(air, bottomPa, topPa, pressurePa -> state(air, pressurePa));
        // 0 drier than both, 1 as moist as a top, 2 as moist as a base too
        Optional<AirState> foundBase = Optional.empty();
        for (int i = 0; i < stretches.size() && stretches.get(i).state() != NOT_KNOWN; i++) {
            if (stretches.get(i).state() == 2) {
                foundBase = Optional.of(IndicationSpan.state(air, stretches.get(i).bottomPa()));
                break;
            }
        }
        Optional<AirState> foundTop = Optional.empty();
        for (int i = stretches.size() - 1; i >= 0 && stretches.get(i).state() != NOT_KNOWN; i--) {
            if (stretches.get(i).state() > 0) {
                foundTop = Optional.of(IndicationSpan.state(air, stretches.get(i).topPa()));
                break;
            }
        }
        if (foundBase.isPresent() && foundTop.isPresent()) {
            return new ForecastCloud(
                    Kind.CLOUD,
                    foundBase,
                    foundTop,
                    words(
                            "from the first %.0f %% above the start to the last %.0f %% below %.0f"
                                    + " hPa",
                            topPa));
        }
        if (stretches.stream().anyMatch(stretch -> stretch.state() == NOT_KNOWN)) {
            return new ForecastCloud(
                    Kind.NOT_DECIDED, foundBase, foundTop, "humidity is not known all the way");
        }
        return foundTop.isPresent()
                ? new ForecastCloud(
                        Kind.NOT_DECIDED,
                        foundBase,
                        foundTop,
                        words(
                                "nowhere %.0f %%, but %.0f %% somewhere below %.0f hPa: the scheme"
                                        + " does not say",
                                topPa))
                : new ForecastCloud(
                        Kind.CLEAR,
                        foundBase,
                        foundTop,
                        String.format(
                                Locale.ROOT,
                                "drier than %.0f %% from the start up to %.0f hPa",
                                top.inPercent(),
                                topPa / 100.0));
    }

    private int state(Atmosphere air, double pressurePa) {
        int moist = MoistLayers.state(air, pressurePa, top);
        return moist == 1 && MoistLayers.state(air, pressurePa, base) == 1 ? 2 : moist;
    }

    private String words(String format, double topPa) {
        return String.format(Locale.ROOT, format, base.inPercent(), top.inPercent(), topPa / 100.0);
    }
}
