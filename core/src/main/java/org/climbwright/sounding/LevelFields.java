package org.climbwright.sounding;

import org.climbwright.atmosphere.wind.Wind;
import org.jspecify.annotations.Nullable;

/**
 * What one line of a file says of a level, in SI; NaN, and null for the wind, where it says
 * nothing.
 */
record LevelFields(
        double pressurePa,
        double heightM,
        double temperatureK,
        double dewPointK,
        @Nullable Wind wind) {

    boolean hasPlace() {
        return !Double.isNaN(pressurePa) || !Double.isNaN(heightM);
    }

    SoundingLevel level() {
        return SoundingLevel.ofSi(
                pressurePa,
                heightM,
                temperatureK,
                dewPointK,
                wind == null ? Double.NaN : wind.eastwardMps(),
                wind == null ? Double.NaN : wind.northwardMps());
    }
}
