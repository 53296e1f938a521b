package org.climbwright.sounding.surface;

import java.util.ArrayList;
import java.util.List;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.MoistAir;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.temperature.DewPoint;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.sounding.Sounding;
import org.climbwright.sounding.SoundingLevel;

/**
 * Puts an ascent of any heights onto the air of a report: where it reports a height, it gets the
 * one that the hypsometric equation gives, and a shift.
 */
final class Fitted {
    private static final double METRES_PER_KELVIN = 287.05287 / 9.80665;

    /** As the Javadoc of a joined ascent tells it. */
    static final double SAME_LEVEL_PA = 1.0;

    private final AirState ground;
    private final double elevationM;
    private final List<SoundingLevel> levels = new ArrayList<>();
    private double toleranceM = Double.NaN;

    private Fitted(AirState ground, double elevationM) {
        this.ground = ground;
        this.elevationM = elevationM;
    }

    /** Shifted by a share of what the lowest height above the report may be off. */
    static Sounding onto(
            SurfaceReport report,
            GeopotentialAltitude elevation,
            Sounding shape,
            double shareOfTolerance) {
        Fitted fitted = new Fitted(report.air(elevation), elevation.inMetres());
        fitted.put(shape, shareOfTolerance);
        return Sounding.of("", "", fitted.levels);
    }

    private void put(Sounding shape, double share) {
        double belowPa = ground.pressurePa();
        double belowK = virtual(ground.temperatureK(), dewPointK(ground), belowPa);
        double thicknessM = 0.0;
        for (SoundingLevel level : shape.levels()) {
            double pressurePa = level.staticPressure().orElseThrow().inPascals();
            double belowGroundPa = pressurePa - ground.pressurePa();
            if (belowGroundPa >= -SAME_LEVEL_PA) {
                double depthM = 0.07 * belowGroundPa;
                levels.add(with(level, elevationM - 20.0 - depthM));
                continue;
            }
            double kelvin =
                    virtual(
                            level.staticAirTemperature().orElseThrow().inKelvins(),
                            level.dewPoint().map(DewPoint::inKelvins).orElse(Double.NaN),
                            pressurePa);
            thicknessM +=
                    METRES_PER_KELVIN * (belowK + kelvin) / 2.0 * Math.log(belowPa / pressurePa);
            belowPa = pressurePa;
            belowK = kelvin;
            if (Double.isNaN(toleranceM) && level.geopotentialAltitude().isPresent()) {
                toleranceM = tolerance(pressurePa, thicknessM);
            }
            levels.add(with(level, elevationM + thicknessM + share * toleranceM));
        }
    }

    /** As the Javadoc of a joined ascent tells it. */
    private double tolerance(double pressurePa, double thicknessM) {
        double scaleHeightM = METRES_PER_KELVIN * ground.temperatureK();
        return scaleHeightM * (100.0 / ground.pressurePa() + 50.0 / pressurePa)
                + 1.0
                + 0.01 * thicknessM;
    }

    private static double dewPointK(AirState air) {
        return air.dewPoint().map(DewPoint::inKelvins).orElse(Double.NaN);
    }

    /** Moist air as dry air of the same density: T / (1 - 0.378 e / p). */
    private static double virtual(double temperatureK, double dewPointK, double pressurePa) {
        return Double.isNaN(dewPointK)
                ? temperatureK
                : temperatureK
                        / (1.0 - 0.378 * MoistAir.saturationVapourPressure(dewPointK) / pressurePa);
    }

    private static SoundingLevel with(SoundingLevel level, double heightM) {
        return SoundingLevel.ofSi(
                level.staticPressure().orElseThrow().inPascals(),
                level.geopotentialAltitude().isPresent() ? heightM : Double.NaN,
                level.staticAirTemperature()
                        .map(StaticAirTemperature::inKelvins)
                        .orElse(Double.NaN),
                level.dewPoint().map(DewPoint::inKelvins).orElse(Double.NaN),
                level.wind().map(wind -> wind.eastwardMps()).orElse(Double.NaN),
                level.wind().map(wind -> wind.northwardMps()).orElse(Double.NaN));
    }
}
