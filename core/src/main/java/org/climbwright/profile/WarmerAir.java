package org.climbwright.profile;

import org.climbwright.atmosphere.AltitudeDatum;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.MoistAir;
import org.climbwright.atmosphere.TemperatureProfile;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.pressure.StaticPressure;

/**
 * Some air, warmer by the same amount at every pressure, with the same altitude at one of them.
 *
 * <p>Relative humidity over water stays as it is; where the saturation formula does not take a
 * temperature, or there would be more vapour than air, the vapour is not known.
 */
final class WarmerAir implements Atmosphere {
    private final Atmosphere air;
    private final Column warmer;
    private final Atmosphere thickness;
    private final Atmosphere thicknessBefore;

    private WarmerAir(Atmosphere air, Column warmer, AltitudeDatum datum) {
        this.air = air;
        this.warmer = warmer;
        this.thickness = Atmosphere.of(warmer, datum);
        this.thicknessBefore = Atmosphere.of(new Column(air, 0.0), datum);
    }

    /** Air that is so much warmer and keeps its altitude at a pressure, inside its range. */
    static Atmosphere of(Atmosphere air, double kelvins, double datumPa) {
        AltitudeDatum datum =
                new AltitudeDatum(
                        StaticPressure.ofPascals(datumPa), GeopotentialAltitude.ofMetres(0.0));
        return new WarmerAir(air, new Column(air, kelvins), datum);
    }

    /** Temperature and vapour of the air, so much warmer. */
    private record Column(Atmosphere air, double kelvins) implements TemperatureProfile {
        @Override
        public ModelRange range() {
            return air.range();
        }

        @Override
        public double temperature(double pressurePa) {
            return air.temperature(pressurePa) + kelvins;
        }

        @Override
        public double vapourPressure(double pressurePa) {
            double vapourPa = air.vapourPressure(pressurePa);
            if (!(vapourPa > 0.0)) {
                return vapourPa;
            }
            double before = air.temperature(pressurePa);
            double after = before + kelvins;
            if (!MoistAir.coversWater(before) || !MoistAir.coversWater(after)) {
                return Double.NaN;
            }
            double grown =
                    vapourPa
                            * (MoistAir.saturationVapourPressure(after)
                                    / MoistAir.saturationVapourPressure(before));
            return grown < pressurePa ? grown : Double.NaN;
        }

        @Override
        public double[] bendsPa() {
            return air.bendsPa();
        }
    }

    @Override
    public ModelRange range() {
        return air.range();
    }

    @Override
    public double temperature(double pressurePa) {
        return warmer.temperature(pressurePa);
    }

    /** The altitude as it was, and by how much the air below has grown. */
    @Override
    public double geopotentialAltitude(double pressurePa) {
        return air.geopotentialAltitude(pressurePa)
                + (thickness.geopotentialAltitude(pressurePa)
                        - thicknessBefore.geopotentialAltitude(pressurePa));
    }

    @Override
    public double vapourPressure(double pressurePa) {
        return warmer.vapourPressure(pressurePa);
    }

    @Override
    public double[] bendsPa() {
        return air.bendsPa();
    }
}
