package org.climbwright.atmosphere;

import org.climbwright.numeric.Columns;

/**
 * The ICAO standard atmosphere over arrays: {@link StandardAir} for many numbers at once, several
 * times faster, and equal to it to the last bit.
 *
 * <pre>{@code
 * double[] altitudeM = {0.0, 5000.0, 11000.0, Double.NaN};
 * double[] pressurePa = new double[4];
 * StandardAirArrays.pressureFromAltitude(altitudeM, pressurePa, 0, 4)    // 1
 * pressurePa[2]                                                          // 22632.0400950078
 * pressurePa[3]                                                          // NaN
 * }</pre>
 *
 * <p>Each function fills the results from index {@code from} (included) to {@code to} (excluded),
 * at the indices of the arguments. Where {@link StandardAir} would refuse an argument the result is
 * NaN; the function returns how many those are. No allocation. From -5 to 20 km it is at its
 * fastest; higher up each number costs what {@link StandardAir} takes for it.
 *
 * <p>All throw {@link IndexOutOfBoundsException} where the span does not lie in the arrays, and
 * {@link IllegalArgumentException} where the array of the results is also that of the arguments.
 *
 * @source {@link StandardAir}
 */
public final class StandardAirArrays {
    private static final double LOWEST_M = -5000.0;
    private static final double TROPOPAUSE_M = 11000.0;
    private static final double TROPOPAUSE_PA = 22633.0;
    private static final double HIGHEST_PA = 177000.0;
    private static final double TROPOPAUSE_DENSITY = 0.364;
    private static final double HIGHEST_DENSITY = 1.93;

    // The fast forms hold in the troposphere, or up to 20 km: of these ranges the middle, and how
    // far it is from there to the nearer end. Whatever lies beyond goes the other way.
    private static final double TROPOSPHERE_MIDDLE_M = 3000.0;
    private static final double TROPOSPHERE_REACH_M = 7999.0;
    private static final double MIDDLE_M = 7500.0;
    private static final double REACH_M = 12499.0;

    private static final double TROPOSPHERE_MIDDLE_PA = 100000.0;
    private static final double TROPOSPHERE_REACH_PA = 77367.0;
    private static final double MIDDLE_PA = 91500.0;
    private static final double REACH_PA = 86000.0;

    private static final double TROPOSPHERE_MIDDLE_DENSITY = 1.147;
    private static final double TROPOSPHERE_REACH_DENSITY = 0.783;
    private static final double MIDDLE_DENSITY = 1.009;
    private static final double REACH_DENSITY = 0.92;

    private StandardAirArrays() {}

    /**
     * Fills in the temperature of standard air at altitudes.
     *
     * @param altitudeM geopotential altitudes [m], -5000 to 80000
     * @param temperatureK results: static air temperatures [K]
     * @param from first index
     * @param to index after the last
     * @return how many altitudes are out of range
     * @accuracy {@link StandardAir#temperatureFromAltitude}, to the last bit
     * @source see the class comment
     */
    public static int temperatureFromAltitude(
            double[] altitudeM, double[] temperatureK, int from, int to) {
        Columns.check(altitudeM, temperatureK, from, to);
        int refused = 0;
        for (int start = from; start < to; ) {
            int end = Columns.layerBlockEnd(start, to);
            for (int i = temperatures(altitudeM, temperatureK, start, end);
                    i < end;
                    i = Columns.nextUnanswered(temperatureK, i + 1, end)) {
                if (StandardAir.coversAltitude(altitudeM[i])) {
                    temperatureK[i] = StandardAirKernel.temperature(altitudeM[i]);
                } else {
                    refused++;
                }
            }
            start = end;
        }
        return refused;
    }

    /**
     * Fills in the pressure of standard air at altitudes.
     *
     * @param altitudeM geopotential altitudes [m], -5000 to 80000
     * @param pressurePa results: static pressures [Pa]
     * @param from first index
     * @param to index after the last
     * @return how many altitudes are out of range
     * @accuracy {@link StandardAir#pressureFromAltitude}, to the last bit
     * @source see the class comment
     */
    public static int pressureFromAltitude(
            double[] altitudeM, double[] pressurePa, int from, int to) {
        Columns.check(altitudeM, pressurePa, from, to);
        int refused = 0;
        for (int start = from; start < to; ) {
            int end = Columns.layerBlockEnd(start, to);
            for (int i = pressures(altitudeM, pressurePa, start, end);
                    i < end;
                    i = Columns.nextUnanswered(pressurePa, i + 1, end)) {
                if (StandardAir.coversAltitude(altitudeM[i])) {
                    pressurePa[i] = StandardAirKernel.pressure(altitudeM[i]);
                } else {
                    refused++;
                }
            }
            start = end;
        }
        return refused;
    }

    /**
     * Fills in the density of standard air at altitudes.
     *
     * @param altitudeM geopotential altitudes [m], -5000 to 80000
     * @param densityKgPerM3 results: densities [kg/m³]
     * @param from first index
     * @param to index after the last
     * @return how many altitudes are out of range
     * @accuracy {@link StandardAir#densityFromAltitude}, to the last bit
     * @source see the class comment
     */
    public static int densityFromAltitude(
            double[] altitudeM, double[] densityKgPerM3, int from, int to) {
        Columns.check(altitudeM, densityKgPerM3, from, to);
        int refused = 0;
        for (int start = from; start < to; ) {
            int end = Columns.layerBlockEnd(start, to);
            for (int i = densities(altitudeM, densityKgPerM3, start, end);
                    i < end;
                    i = Columns.nextUnanswered(densityKgPerM3, i + 1, end)) {
                if (StandardAir.coversAltitude(altitudeM[i])) {
                    densityKgPerM3[i] = StandardAirKernel.density(altitudeM[i]);
                } else {
                    refused++;
                }
            }
            start = end;
        }
        return refused;
    }

    /**
     * Fills in the altitudes at which standard air has pressures: pressure altitudes.
     *
     * @param pressurePa static pressures [Pa], 0.886 to 177687
     * @param altitudeM results: geopotential altitudes in standard air [m]
     * @param from first index
     * @param to index after the last
     * @return how many pressures are out of range
     * @accuracy {@link StandardAir#altitudeFromPressure}, to the last bit
     * @source see the class comment
     */
    public static int altitudeFromPressure(
            double[] pressurePa, double[] altitudeM, int from, int to) {
        Columns.check(pressurePa, altitudeM, from, to);
        int refused = 0;
        for (int start = from; start < to; ) {
            int end = Columns.layerBlockEnd(start, to);
            for (int i = altitudesFromPressure(pressurePa, altitudeM, start, end);
                    i < end;
                    i = Columns.nextUnanswered(altitudeM, i + 1, end)) {
                if (StandardAir.coversPressure(pressurePa[i])) {
                    altitudeM[i] = StandardAirKernel.altitudeFromPressure(pressurePa[i]);
                } else {
                    refused++;
                }
            }
            start = end;
        }
        return refused;
    }

    /**
     * Fills in the altitudes at which standard air has densities: density altitudes.
     *
     * @param densityKgPerM3 densities [kg/m³], from that at 80 km to that at -5 km
     * @param altitudeM results: geopotential altitudes in standard air [m]
     * @param from first index
     * @param to index after the last
     * @return how many densities are out of range
     * @accuracy {@link StandardAir#altitudeFromDensity}, to the last bit
     * @source see the class comment
     */
    public static int altitudeFromDensity(
            double[] densityKgPerM3, double[] altitudeM, int from, int to) {
        Columns.check(densityKgPerM3, altitudeM, from, to);
        int refused = 0;
        for (int start = from; start < to; ) {
            int end = Columns.layerBlockEnd(start, to);
            for (int i = altitudesFromDensity(densityKgPerM3, altitudeM, start, end);
                    i < end;
                    i = Columns.nextUnanswered(altitudeM, i + 1, end)) {
                if (StandardAir.coversDensity(densityKgPerM3[i])) {
                    altitudeM[i] = StandardAir.altitudeFromDensity(densityKgPerM3[i]);
                } else {
                    refused++;
                }
            }
            start = end;
        }
        return refused;
    }

    // Each of these fills in what the fast forms answer, and returns the index of the first that
    // they leave.

    private static int temperatures(double[] altitudeM, double[] out, int from, int to) {
        for (int i = from; i < to; i++) {
            double altitude = altitudeM[i];
            out[i] = inside(altitude, StandardAirKernel.lowTemperature(altitude));
        }
        return Columns.nextUnanswered(out, from, to);
    }

    private static int pressures(double[] altitudeM, double[] out, int from, int to) {
        if (Columns.seemWithin(altitudeM, from, to, LOWEST_M, TROPOPAUSE_M)) {
            tropospherePressures(altitudeM, out, from, to);
            if (Columns.nextUnanswered(out, from, to) == to) {
                return to;
            }
        }
        // two loops for what would be too long for one: a long loop is not made vectors of
        pressuresAboveTropopause(altitudeM, out, from, to);
        pressuresOfBothLayers(altitudeM, out, from, to);
        return Columns.nextUnanswered(out, from, to);
    }

    private static void tropospherePressures(double[] altitudeM, double[] out, int from, int to) {
        for (int i = from; i < to; i++) {
            double altitude = altitudeM[i];
            out[i] = inTroposphere(altitude, StandardAirKernel.tropospherePressure(altitude));
        }
    }

    private static void pressuresAboveTropopause(
            double[] altitudeM, double[] out, int from, int to) {
        for (int i = from; i < to; i++) {
            out[i] = StandardAirKernel.lowPressureAboveTropopause(altitudeM[i]);
        }
    }

    private static void pressuresOfBothLayers(double[] altitudeM, double[] out, int from, int to) {
        for (int i = from; i < to; i++) {
            double altitude = altitudeM[i];
            out[i] = inside(altitude, StandardAirKernel.lowPressure(altitude, out[i]));
        }
    }

    private static int densities(double[] altitudeM, double[] out, int from, int to) {
        if (Columns.seemWithin(altitudeM, from, to, LOWEST_M, TROPOPAUSE_M)) {
            troposphereDensities(altitudeM, out, from, to);
            if (Columns.nextUnanswered(out, from, to) == to) {
                return to;
            }
        }
        pressuresAboveTropopause(altitudeM, out, from, to);
        densitiesOfBothLayers(altitudeM, out, from, to);
        return Columns.nextUnanswered(out, from, to);
    }

    private static void troposphereDensities(double[] altitudeM, double[] out, int from, int to) {
        for (int i = from; i < to; i++) {
            double altitude = altitudeM[i];
            out[i] = inTroposphere(altitude, StandardAirKernel.troposphereDensity(altitude));
        }
    }

    private static void densitiesOfBothLayers(double[] altitudeM, double[] out, int from, int to) {
        for (int i = from; i < to; i++) {
            double altitude = altitudeM[i];
            out[i] = inside(altitude, StandardAirKernel.lowDensity(altitude, out[i]));
        }
    }

    private static double inside(double altitudeM, double result) {
        return Columns.within(altitudeM, MIDDLE_M, REACH_M, result);
    }

    private static double inTroposphere(double altitudeM, double result) {
        return Columns.within(altitudeM, TROPOSPHERE_MIDDLE_M, TROPOSPHERE_REACH_M, result);
    }

    private static int altitudesFromPressure(double[] pressurePa, double[] out, int from, int to) {
        if (Columns.seemWithin(pressurePa, from, to, TROPOPAUSE_PA, HIGHEST_PA)) {
            troposphereAltitudesFromPressure(pressurePa, out, from, to);
            if (Columns.nextUnanswered(out, from, to) == to) {
                return to;
            }
        }
        altitudesAboveTropopauseFromPressure(pressurePa, out, from, to);
        altitudesOfBothLayersFromPressure(pressurePa, out, from, to);
        return Columns.nextUnanswered(out, from, to);
    }

    private static void troposphereAltitudesFromPressure(
            double[] pressurePa, double[] out, int from, int to) {
        for (int i = from; i < to; i++) {
            double pressure = pressurePa[i];
            double altitude = StandardAirKernel.troposphereFromPressure(pressure);
            out[i] =
                    Columns.within(pressure, TROPOSPHERE_MIDDLE_PA, TROPOSPHERE_REACH_PA, altitude);
        }
    }

    private static void altitudesAboveTropopauseFromPressure(
            double[] pressurePa, double[] out, int from, int to) {
        for (int i = from; i < to; i++) {
            out[i] = StandardAirKernel.lowAltitudeAboveTropopauseFromPressure(pressurePa[i]);
        }
    }

    private static void altitudesOfBothLayersFromPressure(
            double[] pressurePa, double[] out, int from, int to) {
        for (int i = from; i < to; i++) {
            double pressure = pressurePa[i];
            double altitude = StandardAirKernel.lowAltitudeFromPressure(pressure, out[i]);
            out[i] = Columns.within(pressure, MIDDLE_PA, REACH_PA, altitude);
        }
    }

    private static int altitudesFromDensity(
            double[] densityKgPerM3, double[] out, int from, int to) {
        if (Columns.seemWithin(densityKgPerM3, from, to, TROPOPAUSE_DENSITY, HIGHEST_DENSITY)) {
            troposphereAltitudesFromDensity(densityKgPerM3, out, from, to);
            if (Columns.nextUnanswered(out, from, to) == to) {
                return to;
            }
        }
        altitudesAboveTropopauseFromDensity(densityKgPerM3, out, from, to);
        altitudesOfBothLayersFromDensity(densityKgPerM3, out, from, to);
        return Columns.nextUnanswered(out, from, to);
    }

    private static void troposphereAltitudesFromDensity(
            double[] densityKgPerM3, double[] out, int from, int to) {
        for (int i = from; i < to; i++) {
            double density = densityKgPerM3[i];
            double altitude = StandardAirKernel.troposphereFromDensity(density);
            out[i] =
                    Columns.within(
                            density,
                            TROPOSPHERE_MIDDLE_DENSITY,
                            TROPOSPHERE_REACH_DENSITY,
                            altitude);
        }
    }

    private static void altitudesAboveTropopauseFromDensity(
            double[] densityKgPerM3, double[] out, int from, int to) {
        for (int i = from; i < to; i++) {
            out[i] = StandardAirKernel.lowAltitudeAboveTropopauseFromDensity(densityKgPerM3[i]);
        }
    }

    private static void altitudesOfBothLayersFromDensity(
            double[] densityKgPerM3, double[] out, int from, int to) {
        for (int i = from; i < to; i++) {
            double density = densityKgPerM3[i];
            double altitude = StandardAirKernel.lowAltitudeFromDensity(density, out[i]);
            out[i] = Columns.within(density, MIDDLE_DENSITY, REACH_DENSITY, altitude);
        }
    }
}
