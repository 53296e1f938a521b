package org.climbwright.atmosphere;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.DoubleStream;
import org.climbwright.quantity.ModelRange;

/**
 * Some air, and above its top the standard atmosphere with the deviation that the air has there.
 *
 * <p>What is carried on is a guess, and humidity is not part of it.
 */
final class DeviationCarriedOn implements Atmosphere {
    private final Atmosphere air;
    private final ModelRange range;
    private final double topPa;
    private final double topM;
    private final double deviationK;

    DeviationCarriedOn(Atmosphere air) {
        this.air = air;
        topPa = air.range().lowest();
        topM = air.geopotentialAltitude(topPa);
        deviationK = air.temperature(topPa) - StandardAir.temperatureFromPressure(topPa);
        range =
                new ModelRange(
                        "static pressure",
                        StandardAir.pressureRange().lowest(),
                        air.range().highest(),
                        "Pa",
                        "the air is not known below, and carried on above no farther than the"
                                + " standard atmosphere reaches");
    }

    @Override
    public ModelRange range() {
        return range;
    }

    @Override
    public double temperature(double pressurePa) {
        return range.check(pressurePa) >= topPa
                ? air.temperature(pressurePa)
                : StandardAir.temperatureFromPressure(pressurePa) + deviationK;
    }

    @Override
    public double geopotentialAltitude(double pressurePa) {
        return range.check(pressurePa) >= topPa
                ? air.geopotentialAltitude(pressurePa)
                : topM + StandardAir.thicknessWithDeviation(topPa, pressurePa, deviationK);
    }

    @Override
    public double vapourPressure(double pressurePa) {
        return range.check(pressurePa) >= topPa ? air.vapourPressure(pressurePa) : Double.NaN;
    }

    @Override
    public double[] bendsPa() {
        DoubleStream above = Arrays.stream(StandardAir.bendsPa()).filter(bend -> bend < topPa);
        return DoubleStream.concat(
                        DoubleStream.concat(Arrays.stream(air.bendsPa()), DoubleStream.of(topPa)),
                        above)
                .toArray();
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
                "%s, above %.2f hPa carried on as the standard atmosphere %+.1f K, a guess",
                air,
                topPa / 100.0,
                deviationK);
    }
}
