package org.climbwright.airspeed;

import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.DryAir;
import org.climbwright.atmosphere.Geopotential;
import org.climbwright.atmosphere.LiftedAir;
import org.climbwright.atmosphere.MoistAir;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.atmosphere.altimetry.Altimetry;
import org.climbwright.atmosphere.altimetry.ColdAir;
import org.climbwright.atmosphere.wind.Wind;
import org.climbwright.quantity.OutsideModelException;

/** Asks every room here for plain doubles, and for an error; run by {@link PlainDoublesTest}. */
final class PlainDoublesProgram {
    private PlainDoublesProgram() {}

    public static void main(String[] arguments) {
        double p = StandardAir.pressureFromAltitude(5000.0);
        double t = StandardAir.temperatureFromPressure(p);
        double sum =
                StandardAir.altitudeFromDensity(DryAir.density(p, t))
                        + DryAir.thermalConductivity(t)
                        + DryAir.kinematicViscosity(p, t)
                        + Geopotential.gravity(Geopotential.geometricFromGeopotential(5000.0))
                        + MoistAir.dewPoint(MoistAir.saturationVapourPressure(t))
                        + Altimetry.qnh(p, 5000.0)
                        + Altimetry.altitudeOnQnh(5000.0, 100000.0)
                        + Altimetry.qfe(100000.0, 500.0)
                        + Altimetry.altitudePerPressure(p, t)
                        + MoistAir.frostPoint(MoistAir.saturationVapourPressureOverIce(t))
                        + MoistAir.density(p, t, 100.0)
                        + LiftedAir.heightToCondensation(290.0, 1000.0, 100000.0)
                        + StandardAir.thicknessWithDeviation(100000.0, p, -20.0)
                        + ColdAir.tableCorrection(1000.0, 250.0)
                        + ColdAir.exactCorrection(1000.0, 250.0, 500.0)
                        + ColdAir.errorAtIndicatedHeight(1000.0, 250.0, 500.0)
                        + Atmosphere.standard().temperature(p)
                        + Wind.ofComponents(3.0, 4.0).eastwardMps()
                        + Wind.alongTrack(3.0, 4.0, 1.0);
        double mach = AirspeedConversion.machFromCas(150.0, p);
        double supersonic = AirspeedConversion.machFromCas(400.0, p);
        sum +=
                AirspeedConversion.casFromMach(supersonic, p)
                        + AirspeedConversion.compressibilityFactorFromMach(supersonic, p)
                        + TotalTemperature.staticFromTas(260.0, 150.0, 0.98)
                        + TotalTemperature.totalFromRecovery(260.0, 0.5, 0.98)
                        + Crossover.altitude(150.0, 0.78);
        sum +=
                AirspeedConversion.tasFromMach(mach, t)
                        + AirspeedConversion.easFromMach(mach, p)
                        + TotalTemperature.fromMach(mach, t, 1.0)
                        + AirspeedConversion.crossoverPressure(150.0, 0.78);
        System.out.print("answers are numbers: ");
        System.out.println(Double.isFinite(sum));
        try {
            StandardAir.pressureFromAltitude(90000.0);
        } catch (OutsideModelException refused) {
            System.out.println(refused.getMessage());
        }
        try {
            ColdAir.aerodromeCorrection(-1.0, 250.0, 0.0);
        } catch (OutsideModelException refused) {
            System.out.println(refused.getMessage());
        }
        try {
            MoistAir.dewPoint(-1.0);
        } catch (OutsideModelException refused) {
            System.out.println(refused.getMessage());
        }
        try {
            AirspeedConversion.machFromCas(1702.0, p);
        } catch (OutsideModelException refused) {
            System.out.println(refused.getMessage());
        }
    }
}
