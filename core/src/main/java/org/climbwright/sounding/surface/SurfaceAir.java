package org.climbwright.sounding.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.altimetry.Altimetry;
import org.climbwright.atmosphere.wind.Wind;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.quantity.temperature.DewPoint;
import org.climbwright.sounding.Sounding;
import org.climbwright.sounding.SoundingLevel;

/** The air of a report at its aerodrome, and under an ascent. */
final class SurfaceAir {
    /** By how much a QNH is rounded down at most: what two barometers may differ by. */
    private static final double ROUNDING_PA = 100.0;

    /** Two levels nearer than this, in relation, are one: no ascent takes both. */
    private static final double LEAST_STEP = 2e-9;

    private SurfaceAir() {}

    static AirState of(SurfaceReport report, GeopotentialAltitude elevation) {
        AirState air =
                Altimetry.aerodromeAir(
                        required(report, report.qnh(), ReportElement.QNH).setting(),
                        elevation,
                        required(report, report.staticAirTemperature(), ReportElement.TEMPERATURE));
        return report.dewPoint().map(air::withDewPoint).orElse(air);
    }

    private static <T> T required(SurfaceReport report, Optional<T> told, ReportElement element) {
        return told.orElseThrow(
                () ->
                        new IllegalStateException(
                                "air needs temperature and QNH, but the report of "
                                        + report.station()
                                        + " has "
                                        + report.whyMissing(element).orElseThrow()));
    }

    static Sounding joined(
            SurfaceReport report, Sounding sounding, GeopotentialAltitude elevation) {
        AirState air = of(report, elevation);
        List<SoundingLevel> levels = new ArrayList<>();
        levels.add(surface(report, air));
        for (SoundingLevel level : sounding.levels()) {
            if (isAbove(level, air, elevation)) {
                levels.add(level);
            }
        }
        return Sounding.of(sounding.station(), sounding.launch(), levels);
    }

    private static SoundingLevel surface(SurfaceReport report, AirState air) {
        Optional<Wind> wind = report.wind().flatMap(SurfaceWind::wind);
        return SoundingLevel.ofSi(
                air.pressurePa(),
                air.geopotentialAltitude().map(GeopotentialAltitude::inMetres).orElse(Double.NaN),
                air.temperatureK(),
                report.dewPoint().map(DewPoint::inKelvins).orElse(Double.NaN),
                wind.map(Wind::eastwardMps).orElse(Double.NaN),
                wind.map(Wind::northwardMps).orElse(Double.NaN));
    }

    private static boolean isAbove(
            SoundingLevel level, AirState air, GeopotentialAltitude elevation) {
        boolean higher =
                level.geopotentialAltitude()
                        .map(altitude -> altitude.compareTo(elevation) > 0)
                        .orElse(true);
        Optional<StaticPressure> told = level.staticPressure();
        if (told.isEmpty()) {
            return higher;
        }
        double pressurePa = told.get().inPascals();
        if (pressurePa >= air.pressurePa() * (1.0 - LEAST_STEP)) {
            return false;
        }
        if (!higher && air.pressurePa() - pressurePa > ROUNDING_PA) {
            throw new IllegalArgumentException(
                    "a level of lower pressure than "
                            + air.staticPressure()
                            + " at the aerodrome must be above its elevation of "
                            + elevation
                            + ", but is a "
                            + level
                            + ": not the same elevation, or not the same weather");
        }
        return higher;
    }
}
