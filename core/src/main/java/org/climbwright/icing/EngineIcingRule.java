package org.climbwright.icing;

import java.io.Serializable;
import java.util.Objects;
import org.climbwright.quantity.humidity.RelativeHumidity;
import org.climbwright.quantity.temperature.TotalAirTemperature;

/**
 * The operational rule for engine anti-ice: total air temperature at or below a threshold, with
 * visible moisture.
 *
 * <p>Moisture is taken from the relative humidity over liquid water, at or above a threshold of the
 * caller's. Over ice air is saturated at 82 % of that at -20 °C and at 68 % at -40 °C: a threshold
 * of 80 % misses ice cloud there.
 *
 * <p>Limits of use: the thresholds of an aeroplane are those of its flight manual. No span found is
 * not "no icing".
 *
 * @param warmest the highest total air temperature at which the conditions hold, itself included
 * @param leastRelativeHumidity the lowest relative humidity over water that counts as visible
 *     moisture, above 0, itself included
 * @source total air temperature at or below 10 °C with visible moisture: common practice, no source
 */
public record EngineIcingRule(TotalAirTemperature warmest, RelativeHumidity leastRelativeHumidity)
        implements Serializable {
    /**
     * Makes a rule.
     *
     * @param warmest the highest total air temperature
     * @param leastRelativeHumidity the lowest relative humidity over water, above 0
     * @throws IllegalArgumentException if the humidity is 0, which all air has
     */
    public EngineIcingRule {
        Objects.requireNonNull(warmest, "warmest");
        if (leastRelativeHumidity.inRatio() == 0.0) {
            throw new IllegalArgumentException(
                    "least relative humidity must be above 0.0 %, which all air has, but was "
                            + leastRelativeHumidity);
        }
    }
}
