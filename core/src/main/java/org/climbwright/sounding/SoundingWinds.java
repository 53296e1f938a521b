package org.climbwright.sounding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.wind.Winds;

/** The levels of an ascent that have a wind, by components, on pressures of their own. */
final class SoundingWinds implements Winds {
    private final PressureLevels levels;
    private final double[] eastwardMps;
    private final double[] northwardMps;
    private final UnobservedWind elsewhere;

    private SoundingWinds(List<Report> reports, UnobservedWind elsewhere) {
        this.elsewhere = elsewhere;
        levels = new PressureLevels(reports.stream().mapToDouble(Report::pressurePa).toArray());
        eastwardMps = reports.stream().mapToDouble(r -> r.level().eastwardMps()).toArray();
        northwardMps = reports.stream().mapToDouble(r -> r.level().northwardMps()).toArray();
    }

    /** A level with a wind, and the pressure it has or that the air has at its height. */
    private record Report(double pressurePa, SoundingLevel level) {
        double lnPressure() {
            return StrictMath.log(pressurePa);
        }

        boolean isAbove(Report other) {
            return LevelOrder.falls(lnPressure(), other.lnPressure());
        }
    }

    static SoundingWinds of(Sounding sounding, UnobservedWind elsewhere) {
        List<Report> reports = new ArrayList<>();
        for (SoundingLevel level : sounding.levels()) {
            if (level.wind().isPresent() && !Double.isNaN(level.pressurePa())) {
                reports.add(new Report(level.pressurePa(), level));
            }
        }
        addReportsByHeight(sounding, reports);
        reports.sort(Comparator.comparingDouble((Report r) -> -r.pressurePa()));
        List<Report> distinct = new ArrayList<>();
        for (Report report : reports) {
            // The sort is stable: where two stand on one pressure, the one reported there stays.
            if (distinct.isEmpty() || report.isAbove(distinct.get(distinct.size() - 1))) {
                distinct.add(report);
            }
        }
        return new SoundingWinds(distinct, elsewhere);
    }

    private static void addReportsByHeight(Sounding sounding, List<Report> reports) {
        List<SoundingLevel> byHeight =
                sounding.levels().stream()
                        .filter(level -> Double.isNaN(level.pressurePa()))
                        .filter(level -> level.wind().isPresent())
                        .toList();
        if (byHeight.isEmpty() || !SoundingAtmosphere.isKnownOf(sounding)) {
            return;
        }
        Atmosphere air = SoundingAtmosphere.of(sounding);
        double lowest = air.geopotentialAltitude(air.range().highest());
        double highest = air.geopotentialAltitude(air.range().lowest());
        for (SoundingLevel level : byHeight) {
            double height = level.geopotentialAltitudeM();
            // A height outside the observed temperatures has no pressure here.
            if (height >= lowest && height <= highest) {
                reports.add(new Report(air.pressureFromGeopotentialAltitude(height), level));
            }
        }
    }

    @Override
    public double eastward(double pressure) {
        return component(eastwardMps, pressure);
    }

    @Override
    public double northward(double pressure) {
        return component(northwardMps, pressure);
    }

    @Override
    public boolean covers(double pressure) {
        return !Double.isNaN(eastward(pressure));
    }

    @Override
    public double[] bendsPa() {
        return levels.pressures();
    }

    private double component(double[] values, double pressure) {
        return levels.covers(pressure)
                ? levels.interpolate(values, pressure)
                : unobserved(values, pressure);
    }

    private double unobserved(double[] values, double pressure) {
        return switch (elsewhere) {
            case NOT_KNOWN -> Double.NaN;
            case CALM -> 0.0;
            case HOLD_LOWEST ->
                    values.length > 0 && pressure > levels.pressure(0) ? values[0] : Double.NaN;
        };
    }
}
