package org.climbwright.atmosphere;

import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.StaticPressure;

/** {@link StandardAir} as a plug. */
enum StandardAtmosphere implements Atmosphere {
    INSTANCE;

    @Override
    public ModelRange range() {
        return StandardAir.pressureRange();
    }

    /** The same as for every air, whose range has to be asked, which is not needed here. */
    @Override
    public AirState at(PressureAltitude altitude) {
        return air(StandardAir.pressureFromAltitude(altitude.inMetres()));
    }

    @Override
    public AirState at(StaticPressure pressure) {
        return air(pressure.inPascals());
    }

    /**
     * The altitude of the pressure is computed once, and the temperature is that of no deviation.
     */
    private static AirState air(double pressurePa) {
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

    /**
     * Returns the atmosphere for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return "ICAO standard atmosphere";
    }
}
