package org.climbwright.sounding;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.climbwright.atmosphere.altimetry.Altimetry;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.quantity.temperature.TemperatureDifference;

/**
 * A layer in which it gets warmer upwards.
 *
 * @param base pressure altitude of its coldest level, at the bottom
 * @param top pressure altitude of its warmest level, at the top
 * @param rise how much warmer the top is
 */
public record Inversion(PressureAltitude base, PressureAltitude top, TemperatureDifference rise)
        implements Serializable {

    static List<Inversion> in(SoundingAtmosphere air, double smallestRiseK) {
        List<Inversion> inversions = new ArrayList<>();
        int base = 0;
        while (base < air.size() - 1) {
            int top = base;
            while (top + 1 < air.size() && air.temperatureAt(top + 1) > air.temperatureAt(top)) {
                top++;
            }
            double rise = air.temperatureAt(top) - air.temperatureAt(base);
            if (top > base && rise >= smallestRiseK) {
                inversions.add(
                        new Inversion(
                                pressureAltitude(air, base),
                                pressureAltitude(air, top),
                                TemperatureDifference.ofKelvins(rise)));
            }
            base = Math.max(top, base + 1);
        }
        return inversions;
    }

    private static PressureAltitude pressureAltitude(SoundingAtmosphere air, int level) {
        return Altimetry.pressureAltitude(StaticPressure.ofPascals(air.pressureAt(level)));
    }
}
