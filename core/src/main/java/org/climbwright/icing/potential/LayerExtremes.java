package org.climbwright.icing.potential;

import java.util.Arrays;
import java.util.stream.DoubleStream;
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
        double bottomPa = bottom.pressurePa();
        double topPa = top.pressurePa();
        double[] between =
                DoubleStream.iterate(1.0, i -> i < PLACES, i -> i + 1.0)
                        .map(i -> bottomPa + i / PLACES * (topPa - bottomPa))
                        .toArray();
        double[] pressuresPa =
                DoubleStream.concat(Arrays.stream(air.bendsPa()), Arrays.stream(between))
                        .filter(pressurePa -> pressurePa < bottomPa && pressurePa > topPa)
                        .sorted()
                        .toArray();
        AirState best = bottom;
        for (int i = pressuresPa.length - 1; i >= 0; i--) {
            if (sign * air.temperature(pressuresPa[i]) > sign * best.temperatureK()) {
                best = IndicationSpan.state(air, pressuresPa[i]);
            }
        }
        return sign * top.temperatureK() > sign * best.temperatureK() ? top : best;
    }
}
