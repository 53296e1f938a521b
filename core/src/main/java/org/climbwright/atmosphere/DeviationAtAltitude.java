package org.climbwright.atmosphere;

import java.util.Locale;
import org.climbwright.quantity.ModelRange;

/**
 * Air that is warmer than standard by the same amount at every geopotential altitude; its bends are
 * at the altitudes of the standard atmosphere, and at other pressures.
 */
final class DeviationAtAltitude implements Atmosphere {
    private final double deviationK;
    private final LayeredAir layers;
    private final ModelRange range;

    DeviationAtAltitude(double deviationK, AltitudeDatum datum) {
        this.deviationK = Deviation.RANGE.check(deviationK);
        layers =
                LayeredAir.warmerBy(
                        deviationK,
                        datum.pressure().inPascals(),
                        LayeredAir.ALTITUDE.check(datum.altitude().inMetres()));
        range =
                new ModelRange(
                        "static pressure",
                        layers.pressure(LayeredAir.HIGHEST_M),
                        layers.pressure(LayeredAir.LOWEST_M),
                        "Pa",
                        "this air reaches from -5 to 80 km");
    }

    @Override
    public ModelRange range() {
        return range;
    }

    @Override
    public double temperature(double pressurePa) {
        return layers.temperature(geopotentialAltitude(pressurePa));
    }

    @Override
    public double geopotentialAltitude(double pressurePa) {
        double altitudeM = layers.altitudeFromPressure(range.check(pressurePa));
        // the pressure of an end of the range gives its altitude back to some ulps only
        return Math.max(LayeredAir.LOWEST_M, Math.min(LayeredAir.HIGHEST_M, altitudeM));
    }

    @Override
    public double pressureFromGeopotentialAltitude(double geopotentialAltitudeM) {
        return layers.pressure(LayeredAir.ALTITUDE.check(geopotentialAltitudeM));
    }

    @Override
    public double vapourPressure(double pressurePa) {
        range.check(pressurePa);
        return Double.NaN;
    }

    @Override
    public double[] bendsPa() {
        return layers.bendsPa();
    }

    /**
     * Returns the atmosphere for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "ICAO standard atmosphere %+.1f K at every geopotential altitude",
                deviationK);
    }
}
