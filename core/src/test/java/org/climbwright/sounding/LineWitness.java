package org.climbwright.sounding;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.climbwright.atmosphere.MoistAir;

/**
 * What the numbers of each line can mean, found without the reader: every number of a line in every
 * place of a level. A level of the reader must be explained by one line alone.
 */
final class LineWitness {
    /** Numbers as profiles and listings have them, and whole ones as in the columns of IGRA. */
    private static final List<Pattern> NUMBERS =
            List.of(
                    Pattern.compile("[+-]?\\d+(\\.\\d+)?([eE][+-]?\\d+)?"),
                    Pattern.compile("-?\\d+"));

    /** A number that went through a unit conversion. */
    private static final double ULPS = 1e-9;

    private static final double METRES_PER_SECOND_PER_KNOT = 1852.0 / 3600.0;

    private final TreeMap<Double, List<List<Double>>> lines = new TreeMap<>();

    LineWitness(List<String> text) {
        for (String line : text) {
            List<Double> numbers = new ArrayList<>();
            for (Pattern pattern : NUMBERS) {
                Matcher matcher = pattern.matcher(line);
                while (matcher.find()) {
                    numbers.add(Double.parseDouble(matcher.group()));
                }
            }
            for (double number : numbers) {
                lines.computeIfAbsent(number, key -> new ArrayList<>()).add(numbers);
            }
        }
    }

    boolean holds(SoundingLevel level) {
        double place =
                Double.isNaN(level.pressurePa())
                        ? level.geopotentialAltitudeM()
                        : level.pressurePa();
        List<List<Double>> candidates = new ArrayList<>();
        // hPa in profiles and listings, Pa in IGRA; the neighbours of a double may be the one in
        // the line
        for (double number : new double[] {place, place / 100.0}) {
            lines.subMap(number - ULPS, true, number + ULPS, true)
                    .values()
                    .forEach(candidates::addAll);
        }
        return candidates.stream().anyMatch(numbers -> explains(numbers, level));
    }

    private static boolean explains(List<Double> numbers, SoundingLevel level) {
        return isHeight(numbers, level.geopotentialAltitudeM())
                && isTemperature(numbers, level.temperatureK())
                && isDewPoint(numbers, level)
                && isWind(numbers, level);
    }

    private static boolean isHeight(List<Double> numbers, double altitudeM) {
        return Double.isNaN(altitudeM) || numbers.contains(altitudeM);
    }

    private static boolean isTemperature(List<Double> numbers, double kelvin) {
        return Double.isNaN(kelvin)
                || numbers.stream()
                        .anyMatch(
                                number ->
                                        near(number + 273.15, kelvin)
                                                || near(number / 10.0 + 273.15, kelvin)
                                                || near(number / 10.0, kelvin));
    }

    private static boolean isDewPoint(List<Double> numbers, SoundingLevel level) {
        double dewPointK = level.dewPointK();
        if (Double.isNaN(dewPointK)) {
            return true;
        }
        double vapourPa = MoistAir.saturationVapourPressure(dewPointK);
        return numbers.stream()
                .anyMatch(
                        number ->
                                near(number + 273.15, dewPointK)
                                        || near(level.temperatureK() - number / 10.0, dewPointK)
                                        || isVapour(number / 10.0, vapourPa)
                                        || isSaturated(number / 10.0, level)
                                        || isHumidity(number / 1000.0, level));
    }

    private static boolean isVapour(double vapourPa, double levelVapourPa) {
        return Math.abs(levelVapourPa / vapourPa - 1.0) < ULPS;
    }

    /** A relative humidity, which IGRA has in tenths of a percent. */
    private static boolean isHumidity(double relativeHumidity, SoundingLevel level) {
        // Not every temperature that a level can have is one of saturated air.
        return MoistAir.coversWater(level.temperatureK())
                && isVapour(
                        relativeHumidity * MoistAir.saturationVapourPressure(level.temperatureK()),
                        MoistAir.saturationVapourPressure(level.dewPointK()));
    }

    /** A vapour pressure that is above saturation by the rounding of the temperature only. */
    private static boolean isSaturated(double vapourPa, SoundingLevel level) {
        double temperatureK = level.temperatureK();
        return level.dewPointK() == temperatureK
                && vapourPa >= MoistAir.saturationVapourPressure(temperatureK) * (1.0 - ULPS)
                && vapourPa <= MoistAir.saturationVapourPressure(temperatureK + 0.1 + ULPS);
    }

    private static boolean isWind(List<Double> numbers, SoundingLevel level) {
        double east = level.eastwardMps();
        double north = level.northwardMps();
        return Double.isNaN(east)
                || (hasComponent(numbers, east) && hasComponent(numbers, north))
                || (hasSpeed(numbers, Math.hypot(east, north))
                        && hasDirection(numbers, east, north));
    }

    private static boolean hasComponent(List<Double> numbers, double mps) {
        return numbers.stream().anyMatch(number -> near(number / 10.0, mps));
    }

    private static boolean hasSpeed(List<Double> numbers, double mps) {
        return numbers.stream()
                .anyMatch(
                        n ->
                                near(n, mps)
                                        || near(n / 10.0, mps)
                                        || near(n * METRES_PER_SECOND_PER_KNOT, mps));
    }

    private static boolean hasDirection(List<Double> numbers, double east, double north) {
        double mps = Math.hypot(east, north);
        return mps == 0.0
                || numbers.stream()
                        .map(Math::toRadians)
                        .anyMatch(
                                from ->
                                        near(-mps * Math.sin(from), east)
                                                && near(-mps * Math.cos(from), north));
    }

    private static boolean near(double one, double other) {
        return Math.abs(one - other) <= ULPS;
    }
}
