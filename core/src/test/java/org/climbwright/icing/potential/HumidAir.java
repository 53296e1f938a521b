package org.climbwright.icing.potential;

import java.util.function.DoubleUnaryOperator;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.MoistAir;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.quantity.ModelRange;

/** Standard temperatures with a relative humidity of one's own by pressure altitude, in metres. */
record HumidAir(DoubleUnaryOperator relativeHumidity) implements Atmosphere {
    @Override
    public ModelRange range() {
        return new ModelRange("static pressure", 10000.0, 105000.0, "Pa", "the scene ends there");
    }

    @Override
    public double temperature(double pressurePa) {
        return StandardAir.temperatureFromPressure(pressurePa);
    }

    @Override
    public double geopotentialAltitude(double pressurePa) {
        return StandardAir.altitudeFromPressure(pressurePa);
    }

    @Override
    public double vapourPressure(double pressurePa) {
        return MoistAir.saturationVapourPressure(temperature(pressurePa))
                * relativeHumidity.applyAsDouble(StandardAir.altitudeFromPressure(pressurePa));
    }
}
