package org.climbwright.sounding;

import java.util.Optional;
import org.climbwright.atmosphere.AirState;

/**
 * The search for the first tropopause among the levels of an ascent.
 *
 * <p>Only levels can be one, and only levels and the end of the 2 km need be compared: between two
 * levels temperature is concave in altitude, in warming and in cooling air, so that the lapse does
 * not decrease upwards there and the mean lapse from below is largest at an end. (Vapour could bend
 * it the other way; above 500 hPa there is too little of it.)
 */
final class Tropopause {
    private static final double HIGHEST_PRESSURE_PA = 50000.0;
    private static final double LARGEST_LAPSE_K_PER_M = 0.002;
    private static final double DEPTH_M = 2000.0;

    private Tropopause() {}

    static Optional<AirState> in(SoundingAtmosphere air) {
        for (int i = 0; i < air.size() - 1; i++) {
            if (air.pressureAt(i) <= HIGHEST_PRESSURE_PA && staysStable(air, i)) {
                return Optional.of(air.stateAt(i));
            }
        }
        return Optional.empty();
    }

    private static boolean staysStable(SoundingAtmosphere air, int base) {
        double end = air.altitudeAt(base) + DEPTH_M;
        int i = base + 1;
        while (i < air.size() && air.altitudeAt(i) < end) {
            if (coolsTooFast(air, base, air.altitudeAt(i), air.temperatureAt(i))) {
                return false;
            }
            i++;
        }
        // An ascent that ends within the 2 km cannot tell; unknown altitudes cannot either.
        return i < air.size()
                && air.altitudeAt(i) >= end
                && !coolsTooFast(
                        air, base, end, air.temperature(air.pressureFromGeopotentialAltitude(end)));
    }

    private static boolean coolsTooFast(
            SoundingAtmosphere air, int base, double altitudeM, double temperatureK) {
        double cooling = air.temperatureAt(base) - temperatureK;
        return cooling > LARGEST_LAPSE_K_PER_M * (altitudeM - air.altitudeAt(base));
    }
}
