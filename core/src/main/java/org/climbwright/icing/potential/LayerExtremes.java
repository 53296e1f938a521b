package org.climbwright.icing.potential;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.Atmosphere;

/**
 * The warmest and the coldest air of a layer: exact in air that is straight between the bends it
 * tells, as a sounding's; else the best of 64 places.
 */
final class LayerExtremes {
    private static final int PLACES = 64;

    private LayerExtremes() {}

    /** The warmest air, and the lowest such place. */
    static AirState warmest(Atmosphere air, AirState bottom, AirState top) {
        return extreme(air, bottom, top, 1.0);
    }

    /** The coldest air, and the lowest such place. */
    static AirState coldest(Atmosphere air, AirState bottom, AirState top) {
        return extreme(air, bottom, top, -1.0);
    }

    private static AirState extreme(Atmosphere air, AirState bottom, AirState top, double sign) {
        AirState best = bottom;
        for (double pressurePa : places(air, bottom, top)) {
            if (sign * air.temperature(pressurePa) > sign * best.temperatureK()) {
                best = IndicationSpan.state(air, pressurePa);
            }
        }
        return best;
    }

    /** The pressures above the bottom of a layer at which it is looked at, upwards to its top. */
    static double[] places(Atmosphere air, AirState bottom, AirState top) {
        double bottomPa = bottom.pressurePa();
        double topPa = top.pressurePa();
        DoubleStream between =
                IntStream.rangeClosed(1, PLACES)
                        .mapToDouble(i -> bottomPa + (double) i / PLACES * (topPa - bottomPa));
        double[] downwards =
                DoubleStream.concat(Arrays.stream(air.bendsPa()), between)
                        .map(pressurePa -> Math.max(topPa, pressurePa))
                        .filter(pressurePa -> pressurePa < bottomPa)
                        .sorted()
                        .distinct()
                        .toArray();
        int n = downwards.length;
        return IntStream.range(0, n).mapToDouble(i -> downwards[n - 1 - i]).toArray();
    }
}
