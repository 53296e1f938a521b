package org.climbwright.sounding.surface;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.climbwright.atmosphere.IcaoConstants;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.quantity.temperature.DewPoint;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.sounding.Sounding;
import org.climbwright.sounding.SoundingLevel;

/**
 * Whether an ascent stands on the air of a report: the first height above it must be where the
 * pressures, temperatures and dew points in between put it.
 *
 * <p>It may be off by the thickness of one step of the QNH, which is rounded down; of half a
 * hectopascal at the level, since files have whole ones; by a metre, since heights are whole too;
 * and by 1 % of the thickness, which is some 3 K in its mean temperature: whole degrees, air that
 * is not straight between two levels, a humidity that was not told. Near the sea that makes 14 m
 * and 1 % under a QNH in hectopascals, 8 m and 1 % in inches.
 *
 * @source hypsometric equation as in {@link Sounding#atmosphere}; the tolerance is derived
 */
final class AscentFit {
    private static final double HALF_HECTOPASCAL_PA = 50.0;
    private static final double ROUNDING_OF_HEIGHTS_M = 1.0;
    private static final double SHARE_OF_THICKNESS = 0.01;
    private static final double METRES_PER_KELVIN =
            IcaoConstants.GAS_CONSTANT_J_PER_KG_K / IcaoConstants.GRAVITY_MPS2;

    private AscentFit() {}

    /** Refuses an ascent that a report does not fit under. */
    static void check(SoundingLevel report, ReportedQnh qnh, List<SoundingLevel> above) {
        Optional<SoundingLevel> first = above.stream().filter(AscentFit::hasHeight).findFirst();
        List<SoundingLevel> air = above.stream().filter(AscentFit::hasAir).toList();
        boolean comparable =
                first.isPresent()
                        && !air.isEmpty()
                        && pressurePa(air.get(air.size() - 1)) <= pressurePa(first.get());
        if (comparable) {
            check(report, qnh, first.get(), air);
        }
    }

    private static void check(
            SoundingLevel report, ReportedQnh qnh, SoundingLevel first, List<SoundingLevel> air) {
        double thicknessM = thickness(report, air, pressurePa(first));
        double riseM = heightM(first) - heightM(report);
        double toleranceM =
                scaleHeightM(report)
                                * (qnh.unit().stepPa() / pressurePa(report)
                                        + HALF_HECTOPASCAL_PA / pressurePa(first))
                        + ROUNDING_OF_HEIGHTS_M
                        + SHARE_OF_THICKNESS * thicknessM;
        if (!(Math.abs(riseM - thicknessM) <= toleranceM)) {
            // a judgement of weather, not of a number: rounded, far below the tolerance
            throw new IllegalArgumentException(
                    String.format(
                            Locale.ROOT,
                            "the air above the aerodrome at %.1f m is %.1f m thick by its pressures"
                                + " and temperatures up to a %s, but %.1f m by the height of that:"
                                + " not the same elevation, QNH or weather",
                            heightM(report),
                            thicknessM,
                            first,
                            riseM));
        }
    }

    /** The air without its heights lies on the report as the hypsometric equation has it. */
    private static double thickness(SoundingLevel report, List<SoundingLevel> air, double upToPa) {
        List<SoundingLevel> column =
                Stream.concat(Stream.of(report), air.stream().map(AscentFit::withoutHeight))
                        .toList();
        return Sounding.of("", "", column).atmosphere().geopotentialAltitude(upToPa)
                - heightM(report);
    }

    private static SoundingLevel withoutHeight(SoundingLevel level) {
        return SoundingLevel.ofSi(
                pressurePa(level),
                Double.NaN,
                level.staticAirTemperature()
                        .map(StaticAirTemperature::inKelvins)
                        .orElse(Double.NaN),
                level.dewPoint().map(DewPoint::inKelvins).orElse(Double.NaN),
                Double.NaN,
                Double.NaN);
    }

    private static double scaleHeightM(SoundingLevel report) {
        return METRES_PER_KELVIN * report.staticAirTemperature().orElseThrow().inKelvins();
    }

    private static boolean hasHeight(SoundingLevel level) {
        return level.staticPressure().isPresent() && level.geopotentialAltitude().isPresent();
    }

    private static boolean hasAir(SoundingLevel level) {
        return level.staticPressure().isPresent() && level.staticAirTemperature().isPresent();
    }

    private static double pressurePa(SoundingLevel level) {
        return level.staticPressure().map(StaticPressure::inPascals).orElseThrow();
    }

    private static double heightM(SoundingLevel level) {
        return level.geopotentialAltitude().map(GeopotentialAltitude::inMetres).orElseThrow();
    }
}
