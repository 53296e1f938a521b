package org.climbwright.sounding;

import java.util.Arrays;
import org.climbwright.atmosphere.wind.Wind;
import org.climbwright.quantity.path.TrueDirection;
import org.climbwright.quantity.speed.WindSpeed;

/** A level made up for a test: {@code hpa(850).metres(1500).celsius(-2).dewPoint(-5)}. */
record Level(
        double hpa,
        double metres,
        double celsius,
        double dewPoint,
        double eastwardMps,
        double northwardMps) {
    private static final double NONE = Double.NaN;
    private static final double ZERO_CELSIUS_K = 273.15;

    static Level hpa(double hpa) {
        return new Level(hpa, NONE, NONE, NONE, NONE, NONE);
    }

    static Level withoutPressure() {
        return hpa(NONE);
    }

    Level metres(double altitude) {
        return new Level(hpa, altitude, celsius, dewPoint, eastwardMps, northwardMps);
    }

    Level celsius(double temperature) {
        return new Level(hpa, metres, temperature, dewPoint, eastwardMps, northwardMps);
    }

    Level dewPoint(double temperature) {
        return new Level(hpa, metres, celsius, temperature, eastwardMps, northwardMps);
    }

    Level wind(double fromDegrees, double mps) {
        Wind wind =
                Wind.from(TrueDirection.ofDegrees(fromDegrees), WindSpeed.ofMetresPerSecond(mps));
        return components(wind.eastwardMps(), wind.northwardMps());
    }

    Level components(double eastward, double northward) {
        return new Level(hpa, metres, celsius, dewPoint, eastward, northward);
    }

    SoundingLevel reported() {
        return SoundingLevel.ofSi(
                hpa * 100.0,
                metres,
                celsius + ZERO_CELSIUS_K,
                dewPoint + ZERO_CELSIUS_K,
                eastwardMps,
                northwardMps);
    }

    static Sounding sounding(Level... levels) {
        return Sounding.of("", "", Arrays.stream(levels).map(Level::reported).toList());
    }
}
