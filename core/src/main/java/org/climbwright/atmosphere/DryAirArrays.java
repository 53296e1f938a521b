package org.climbwright.atmosphere;

import org.climbwright.atmosphere.kernel.DryAirKernel;
import org.climbwright.numeric.Columns;

/**
 * What follows from pressure and temperature of dry air over arrays: {@link DryAir} for many
 * numbers at once, several times faster, and equal to it to the last bit.
 *
 * <p>Each function fills the results from index {@code from} (included) to {@code to} (excluded),
 * at the indices of the arguments. Where {@link DryAir} would refuse an argument the result is NaN;
 * the function returns how many those are. No allocation.
 *
 * <p>All throw {@link IndexOutOfBoundsException} where the span does not lie in the arrays, and
 * {@link IllegalArgumentException} where the array of the results is also one of the arguments.
 *
 * @source {@link DryAir}
 */
public final class DryAirArrays {
    // The fast forms hold in these ranges, told by middle and reach; whatever lies beyond goes the
    // other way.
    private static final double MIDDLE_K = 250.0;
    private static final double REACH_K = 149.0;
    private static final double MIDDLE_PA = 500_001.0;
    private static final double REACH_PA = 499_998.0;

    private DryAirArrays() {}

    /**
     * Fills in the density of dry air.
     *
     * @param pressurePa static pressures [Pa], 0.1 to 1e6
     * @param temperatureK static air temperatures [K], 100 to 400; virtual ones for moist air
     * @param densityKgPerM3 results: densities [kg/m³]
     * @param from first index
     * @param to index after the last
     * @return how many elements have a pressure or a temperature out of range
     * @accuracy {@link DryAir#density}, to the last bit
     * @source see the class comment
     */
    public static int density(
            double[] pressurePa, double[] temperatureK, double[] densityKgPerM3, int from, int to) {
        Columns.check(pressurePa, densityKgPerM3, from, to);
        Columns.check(temperatureK, densityKgPerM3, from, to);
        int refused = 0;
        for (int start = from; start < to; ) {
            int end = Columns.blockEnd(start, to);
            for (int i = densities(pressurePa, temperatureK, densityKgPerM3, start, end);
                    i < end;
                    i = Columns.nextUnanswered(densityKgPerM3, i + 1, end)) {
                if (DryAir.coversPressure(pressurePa[i])
                        && DryAir.coversTemperature(temperatureK[i])) {
                    densityKgPerM3[i] = DryAir.density(pressurePa[i], temperatureK[i]);
                } else {
                    refused++;
                }
            }
            start = end;
        }
        return refused;
    }

    /**
     * Fills in the speed of sound.
     *
     * @param temperatureK static air temperatures [K], 100 to 400
     * @param speedOfSoundMps results: speeds of sound [m/s]
     * @param from first index
     * @param to index after the last
     * @return how many temperatures are out of range
     * @accuracy {@link DryAir#speedOfSound}, to the last bit
     * @source see the class comment
     */
    public static int speedOfSound(
            double[] temperatureK, double[] speedOfSoundMps, int from, int to) {
        Columns.check(temperatureK, speedOfSoundMps, from, to);
        int refused = 0;
        for (int start = from; start < to; ) {
            int end = Columns.blockEnd(start, to);
            for (int i = speedsOfSound(temperatureK, speedOfSoundMps, start, end);
                    i < end;
                    i = Columns.nextUnanswered(speedOfSoundMps, i + 1, end)) {
                if (DryAir.coversTemperature(temperatureK[i])) {
                    speedOfSoundMps[i] = DryAir.speedOfSound(temperatureK[i]);
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

    private static int densities(
            double[] pressurePa, double[] temperatureK, double[] out, int from, int to) {
        for (int i = from; i < to; i++) {
            double pressure = pressurePa[i];
            double density = DryAirKernel.density(pressure, temperatureK[i]);
            out[i] =
                    ofTemperature(
                            temperatureK[i],
                            Columns.within(pressure, MIDDLE_PA, REACH_PA, density));
        }
        return Columns.nextUnanswered(out, from, to);
    }

    private static int speedsOfSound(double[] temperatureK, double[] out, int from, int to) {
        for (int i = from; i < to; i++) {
            double temperature = temperatureK[i];
            out[i] = ofTemperature(temperature, DryAirKernel.speedOfSound(temperature));
        }
        return Columns.nextUnanswered(out, from, to);
    }

    private static double ofTemperature(double temperatureK, double result) {
        return Columns.within(temperatureK, MIDDLE_K, REACH_K, result);
    }
}
