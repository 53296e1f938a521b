package org.climbwright.atmosphere;

import java.util.Locale;
import org.climbwright.quantity.ModelRange;

/**
 * Air that is warmer than standard by the same amount at every pressure; its bends are those of the
 * standard atmosphere, at other altitudes.
 */
final class DeviationAtPressure implements Atmosphere {
    private final double deviationK;
    private final double datumPa;
    private final double datumM;

    DeviationAtPressure(double deviationK, AltitudeDatum datum) {
        this.deviationK = Deviation.RANGE.check(deviationK);
        this.datumPa = range().check(datum.pressure().inPascals());
        this.datumM = datum.altitude().inMetres();
    }

    @Override
    public ModelRange range() {
        return StandardAir.pressureRange();
    }

    @Override
    public double temperature(double pressurePa) {
        return StandardAir.temperatureFromPressure(pressurePa) + deviationK;
    }

    @Override
    public double geopotentialAltitude(double pressurePa) {
        return datumM + StandardAir.thicknessWithDeviation(datumPa, pressurePa, deviationK);
    }

    @Override
    public double pressureFromGeopotentialAltitude(double geopotentialAltitudeM) {
        double standardM =
                geopotentialAltitudeM - datumM + StandardAir.altitudeFromPressure(datumPa);
        // no search in standard air, whose figures come out to the last bit
        return deviationK == 0.0 && StandardAir.coversAltitude(standardM)
                ? StandardAir.pressureFromAltitude(standardM)
                : Atmosphere.super.pressureFromGeopotentialAltitude(geopotentialAltitudeM);
    }

    @Override
    public double vapourPressure(double pressurePa) {
        range().check(pressurePa);
        return Double.NaN;
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
        return String.format(
                Locale.ROOT, "ICAO standard atmosphere %+.1f K at every pressure", deviationK);
    }
}
