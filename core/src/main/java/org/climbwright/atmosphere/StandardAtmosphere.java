package org.climbwright.atmosphere;

import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.pressure.StaticPressure;

/** {@link StandardAir} as a plug. */
enum StandardAtmosphere implements Atmosphere {
    INSTANCE;

    @Override
    public ModelRange range() {
        return StandardAir.pressureRange();
    }

    /** The same as for every air, with the altitude of the pressure computed once. */
    @Override
    public AirState at(StaticPressure pressure) {
        double pressurePa = range().check(pressure.inPascals());
        double altitudeM = StandardAir.altitudeFromPressure(pressurePa);
        return AirState.ofSi(
                pressurePa, StandardAir.temperatureFromAltitude(altitudeM), 0.0, altitudeM);
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
    public double pressureFromGeopotentialAltitude(double geopotentialAltitudeM) {
        return StandardAir.pressureFromAltitude(geopotentialAltitudeM);
    }

    @Override
    public double vapourPressure(double pressurePa) {
        range().check(pressurePa);
        return 0.0;
    }

    @Override
    public double[] bendsPa() {
        return StandardAir.bendsPa();
    }
}
