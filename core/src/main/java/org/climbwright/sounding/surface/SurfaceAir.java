package org.climbwright.sounding.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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

    /** Nearer than this, 0.01 hPa or 8 cm, a level is the aerodrome's: files print no less. */
    private static final double SAME_LEVEL_PA = 1.0;

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
        SoundingLevel surface = surface(report, air);
        List<SoundingLevel> above =
                sounding.levels().stream().filter(level -> isAbove(level, air, elevation)).toList();
        AscentFit.check(surface, report.qnh().orElseThrow(), above);
        List<SoundingLevel> levels = new ArrayList<>(above);
        levels.add(0, surface);
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
        if (pressurePa >= air.pressurePa() - SAME_LEVEL_PA) {
            return false;
        }
        if (!higher && air.pressurePa() - pressurePa > ROUNDING_PA) {
            // a judgement of weather, not of a number: rounded, as the level is
            throw new IllegalArgumentException(
                    String.format(
                            Locale.ROOT,
                            "a level of lower pressure than %.2f hPa at the aerodrome must be above"
                                + " its elevation of %.0f m, but is a %s: not the same elevation,"
                                + " or not the same weather",
                            air.staticPressure().inHectopascals(),
                            elevation.inMetres(),
                            level));
        }
        return higher;
    }
}
