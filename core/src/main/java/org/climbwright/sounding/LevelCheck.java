package org.climbwright.sounding;

import org.climbwright.atmosphere.MoistAir;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.atmosphere.wind.Wind;
import org.climbwright.quantity.path.TrueDirection;
import org.climbwright.quantity.speed.WindSpeed;
import org.jspecify.annotations.Nullable;

/** What a level can hold, whatever format it came in; a number that cannot be becomes NaN. */
final class LevelCheck {
    private static final double HIGHEST_PRESSURE_PA = 120000.0;
    private static final double LOWEST_HEIGHT_M = -1000.0;
    private static final double HIGHEST_HEIGHT_M = 80000.0;
    private static final double HIGHEST_WIND_MPS = 200.0;

    /** Derived files print temperatures to 0.1 K, and vapour pressures of other temperatures. */
    private static final double ROUNDING_K = 0.1;

    private final SourceLine line;

    LevelCheck(SourceLine line) {
        this.line = line;
    }

    double pressure(Field field, double pressurePa) {
        boolean possible =
                StandardAir.coversPressure(pressurePa) && pressurePa <= HIGHEST_PRESSURE_PA;
        return orMissing(field, pressurePa, possible, "not a possible pressure");
    }

    double height(Field field, double heightM) {
        boolean possible = heightM >= LOWEST_HEIGHT_M && heightM <= HIGHEST_HEIGHT_M;
        return orMissing(field, heightM, possible, "not a possible height");
    }

    double temperature(Field field, double temperatureK) {
        return orMissing(
                field,
                temperatureK,
                MoistAir.coversWater(temperatureK),
                "no temperature of the free air");
    }

    double dewPoint(Field field, double dewPointK, double temperatureK, double pressurePa) {
        if (Double.isNaN(dewPointK)) {
            return dewPointK;
        }
        if (dewPointK > temperatureK) {
            return missing(field, "a dew point above the temperature");
        }
        if (!MoistAir.coversWater(dewPointK)) {
            return missing(field, "no dew point of air");
        }
        // Air cannot hold more vapour than there is air: most likely a slip in the pressure.
        return MoistAir.saturationVapourPressure(dewPointK) >= pressurePa
                ? missing(field, "a vapour pressure above the pressure")
                : dewPointK;
    }

    /** A vapour pressure as a dew point; 0 in a file is less than it prints, and tells none. */
    double dewPointOfVapour(
            Field field, double vapourPressurePa, double temperatureK, double pressurePa) {
        if (Double.isNaN(vapourPressurePa) || vapourPressurePa == 0.0) {
            return Double.NaN;
        }
        return MoistAir.coversDewPoint(vapourPressurePa)
                ? dewPoint(
                        field,
                        atMost(temperatureK, MoistAir.dewPoint(vapourPressurePa)),
                        temperatureK,
                        pressurePa)
                : missing(field, "not a possible vapour pressure");
    }

    /** A relative humidity over water as a dew point; 0 is less than a file prints, tells none. */
    double dewPointOfHumidity(
            Field field, double relativeHumidity, double temperatureK, double pressurePa) {
        if (Double.isNaN(relativeHumidity) || relativeHumidity == 0.0) {
            return Double.NaN;
        }
        if (!(relativeHumidity > 0.0 && relativeHumidity <= 1.0)) {
            return missing(field, "not a possible relative humidity");
        }
        double vapourPressurePa =
                relativeHumidity * MoistAir.saturationVapourPressure(temperatureK);
        return MoistAir.coversDewPoint(vapourPressurePa)
                ? dewPoint(
                        field,
                        Math.min(MoistAir.dewPoint(vapourPressurePa), temperatureK),
                        temperatureK,
                        pressurePa)
                : missing(field, "no dew point of air");
    }

    /** Saturated air: temperature and vapour pressure were rounded each for itself. */
    private static double atMost(double temperatureK, double dewPointK) {
        return dewPointK <= temperatureK + ROUNDING_K
                ? Math.min(dewPointK, temperatureK)
                : dewPointK;
    }

    /** A wind by where it comes from; null when either part is missing or cannot be. */
    @Nullable Wind wind(Field from, Field speed, double speedMps) {
        double degrees =
                orMissing(
                        from,
                        from.number(),
                        from.number() >= 0.0 && from.number() <= 360.0,
                        "not a possible direction");
        double mps =
                orMissing(
                        speed,
                        speedMps,
                        speedMps >= 0.0 && speedMps <= HIGHEST_WIND_MPS,
                        "not a possible wind speed");
        return Double.isNaN(degrees) || Double.isNaN(mps)
                ? null
                : Wind.from(TrueDirection.ofDegrees(degrees), WindSpeed.ofMetresPerSecond(mps));
    }

    /** A wind by its components; null when either is missing or cannot be. */
    @Nullable Wind wind(Field eastward, double eastwardMps, Field northward, double northwardMps) {
        double east = component(eastward, eastwardMps);
        double north = component(northward, northwardMps);
        return Double.isNaN(east) || Double.isNaN(north) ? null : Wind.ofComponents(east, north);
    }

    private double component(Field field, double mps) {
        return orMissing(
                field, mps, Math.abs(mps) <= HIGHEST_WIND_MPS, "not a possible wind speed");
    }

    private double orMissing(Field field, double value, boolean possible, String reason) {
        return Double.isNaN(value) || possible ? value : missing(field, reason);
    }

    private double missing(Field field, String reason) {
        return line.missing(field.name(), field.text(), reason);
    }
}
