package org.climbwright.turbulence.convection;

import java.util.stream.DoubleStream;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.MoistAir;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.quantity.ModelRange;

/**
 * An invented day: standard temperatures with a warm lowest kilometre and steeper lapse above, and
 * a relative humidity that falls with height; known or not above some pressure.
 *
 * @param warmerK how much warmer the surface is than standard
 * @param humidity relative humidity at the surface
 * @param humidityKnownFromPa humidity is known at this pressure and below it in the air
 * @param topPa where the air ends
 */
record InventedAir(double warmerK, double humidity, double humidityKnownFromPa, double topPa)
        implements Atmosphere {
    static final double SURFACE_PA = 100000.0;

    InventedAir(double warmerK, double humidity) {
        this(warmerK, humidity, 0.0, 6000.0);
    }

    @Override
    public ModelRange range() {
        return new ModelRange("static pressure", topPa, SURFACE_PA, "Pa", "the day ends there");
    }

    @Override
    public double temperature(double pressurePa) {
        double p = range().check(pressurePa);
        // all of the warmth below 300 hPa, none above
        double share = Math.max(0.0, (p - 30000.0) / 70000.0);
        return StandardAir.temperatureFromPressure(p) + warmerK * share;
    }

    @Override
    public double geopotentialAltitude(double pressurePa) {
        return StandardAir.altitudeFromPressure(range().check(pressurePa));
    }

    @Override
    public double vapourPressure(double pressurePa) {
        double p = range().check(pressurePa);
        if (p < humidityKnownFromPa) {
            return Double.NaN;
        }
        double ratio = Math.max(0.05, humidity * (p / SURFACE_PA));
        return ratio * MoistAir.saturationVapourPressure(temperature(p));
    }

    @Override
    public double[] bendsPa() {
        return DoubleStream.of(
                        30000.0, // the end of the warmth
                        StandardAir.pressureFromAltitude(11000.0), // the tropopause
                        0.05 / humidity * SURFACE_PA, // the end of the fall of humidity
                        humidityKnownFromPa)
                .filter(p -> p > topPa && p < SURFACE_PA)
                .toArray();
    }
}
