package org.climbwright.profile;

import org.climbwright.atmosphere.AltitudeDatum;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.MoistAir;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.atmosphere.TemperatureProfile;
import org.climbwright.quantity.ModelRange;

/** An invented day: 4 K above standard, 70 % of saturation up to 300 hPa, not known above. */
record MoistColumn() implements TemperatureProfile {
    static final double HUMIDITY = 0.7;
    static final double HUMID_TO_PA = 30000.0;

    static Atmosphere air() {
        return Atmosphere.of(new MoistColumn(), AltitudeDatum.standard());
    }

    @Override
    public ModelRange range() {
        return new ModelRange("static pressure", 10000.0, 104000.0, "Pa", "the day ends there");
    }

    @Override
    public double temperature(double pressurePa) {
        return StandardAir.temperatureFromPressure(pressurePa) + 4.0;
    }

    @Override
    public double vapourPressure(double pressurePa) {
        return pressurePa < HUMID_TO_PA
                ? Double.NaN
                : HUMIDITY * MoistAir.saturationVapourPressure(temperature(pressurePa));
    }

    @Override
    public double[] bendsPa() {
        return new double[] {HUMID_TO_PA, Atmosphere.standard().bendsPa()[0]};
    }
}
