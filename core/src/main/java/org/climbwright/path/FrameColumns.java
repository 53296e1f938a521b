package org.climbwright.path;

import org.climbwright.airspeed.AirspeedArrays;
import org.climbwright.atmosphere.DryAirArrays;
import org.climbwright.atmosphere.StandardAirArrays;
import org.climbwright.atmosphere.kernel.GeopotentialKernel;
import org.climbwright.numeric.Columns;

/**
 * What a simulation asks in every frame, for many frames at once: of pressure altitude,
 * temperature, calibrated airspeed and rate the air, all speeds and the gradient, each in an array
 * of its own.
 *
 * <pre>{@code
 * double[] altitudeM = {3048.0};
 * double[] temperatureK = {268.34};
 * double[] casMps = {128.6};
 * double[] rateMps = {10.16};
 * FrameColumns columns = FrameColumns.ofSize(1);
 * columns.fill(altitudeM, temperatureK, casMps, rateMps, 0, 1)    // 0
 * columns.mach()[0]                                               // 0.4522366073875497
 * columns.airGradient()[0]                                        // 0.06864056179600364
 * }</pre>
 *
 * <p>The arrays are filled anew with every call, which allocates nothing; a program keeps one
 * object of this class for each thread.
 *
 * <p>Limits of use: air is dry and the pressure altitude stands in for the altitude, of which each
 * kilometre that they are apart costs 0.03 % of the geometric rate. Gradients over obstacles are
 * those of the procedure and the flight manual, with the margins that they demand.
 */
public final class FrameColumns {
    private final double[] pressurePa;
    private final double[] densityKgPerM3;
    private final double[] speedOfSoundMps;
    private final double[] mach;
    private final double[] easMps;
    private final double[] tasMps;
    private final double[] totalTemperatureK;
    private final double[] densityAltitudeM;
    private final double[] geometricRateMps;
    private final double[] airGradient;

    private FrameColumns(int size) {
        pressurePa = new double[size];
        densityKgPerM3 = new double[size];
        speedOfSoundMps = new double[size];
        mach = new double[size];
        easMps = new double[size];
        tasMps = new double[size];
        totalTemperatureK = new double[size];
        densityAltitudeM = new double[size];
        geometricRateMps = new double[size];
        airGradient = new double[size];
    }

    /**
     * Returns columns of new arrays.
     *
     * @param size how many frames they hold
     * @return the columns, all zero
     * @throws NegativeArraySizeException if the size is below 0
     */
    public static FrameColumns ofSize(int size) {
        return new FrameColumns(size);
    }

    /**
     * Fills in the frames of a span.
     *
     * <p>A figure is NaN where the function of one number would refuse: {@link
     * org.climbwright.atmosphere.StandardAir}, {@link org.climbwright.atmosphere.DryAir}, {@link
     * org.climbwright.airspeed.AirspeedConversion}, {@link
     * org.climbwright.airspeed.TotalTemperature}, {@link
     * org.climbwright.atmosphere.altimetry.VerticalRates#geometricPerPressureAltitude(double,
     * double)} and {@link GroundTrack#airGradient}; the others of the frame are there.
     *
     * @param pressureAltitudeM pressure altitudes [m], -5000 to 80000
     * @param temperatureK static air temperatures [K], 100 to 400
     * @param casMps calibrated airspeeds [m/s], from 0 to that of Mach 5 at the altitude
     * @param rateMps rates of pressure altitude [m/s]
     * @param from first index
     * @param to index after the last
     * @return how many frames have a figure that is refused
     * @throws IndexOutOfBoundsException if the span does not lie in all arrays
     * @throws IllegalArgumentException if an array of arguments is also a column
     * @accuracy those of the functions of one number, to the last bit
     * @source see there
     */
    public int fill(
            double[] pressureAltitudeM,
            double[] temperatureK,
            double[] casMps,
            double[] rateMps,
            int from,
            int to) {
        check(pressureAltitudeM, from, to);
        check(temperatureK, from, to);
        check(casMps, from, to);
        check(rateMps, from, to);
        int refused = 0;
        for (int start = from; start < to; ) {
            int end = Columns.blockEnd(start, to);
            if (fillBlock(pressureAltitudeM, temperatureK, casMps, rateMps, start, end) > 0) {
                refused += refused(start, end);
            }
            start = end;
        }
        return refused;
    }

    /**
     * Returns a column: static pressures [Pa].
     *
     * @return the array itself, not a copy
     */
    public double[] pressurePa() {
        return pressurePa;
    }

    /**
     * Returns a column: densities of dry air [kg/m³].
     *
     * @return the array itself, not a copy
     */
    public double[] densityKgPerM3() {
        return densityKgPerM3;
    }

    /**
     * Returns a column: speeds of sound [m/s].
     *
     * @return the array itself, not a copy
     */
    public double[] speedOfSoundMps() {
        return speedOfSoundMps;
    }

    /**
     * Returns a column: Mach numbers.
     *
     * @return the array itself, not a copy
     */
    public double[] mach() {
        return mach;
    }

    /**
     * Returns a column: equivalent airspeeds [m/s].
     *
     * @return the array itself, not a copy
     */
    public double[] easMps() {
        return easMps;
    }

    /**
     * Returns a column: true airspeeds [m/s].
     *
     * @return the array itself, not a copy
     */
    public double[] tasMps() {
        return tasMps;
    }

    /**
     * Returns a column: total air temperatures [K].
     *
     * @return the array itself, not a copy
     */
    public double[] totalTemperatureK() {
        return totalTemperatureK;
    }

    /**
     * Returns a column: density altitudes [m].
     *
     * @return the array itself, not a copy
     */
    public double[] densityAltitudeM() {
        return densityAltitudeM;
    }

    /**
     * Returns a column: rates in true height [m/s].
     *
     * @return the array itself, not a copy
     */
    public double[] geometricRateMps() {
        return geometricRateMps;
    }

    /**
     * Returns a column: true height gained per horizontal distance through the air.
     *
     * @return the array itself, not a copy
     */
    public double[] airGradient() {
        return airGradient;
    }

    private void check(double[] argument, int from, int to) {
        Columns.check(argument, pressurePa, from, to);
        Columns.check(argument, densityKgPerM3, from, to);
        Columns.check(argument, speedOfSoundMps, from, to);
        Columns.check(argument, mach, from, to);
        Columns.check(argument, easMps, from, to);
        Columns.check(argument, tasMps, from, to);
        Columns.check(argument, totalTemperatureK, from, to);
        Columns.check(argument, densityAltitudeM, from, to);
        Columns.check(argument, geometricRateMps, from, to);
        Columns.check(argument, airGradient, from, to);
    }

    /** Returns how many figures are refused: 0 in most blocks. */
    private int fillBlock(
            double[] altitudeM,
            double[] temperatureK,
            double[] casMps,
            double[] rateMps,
            int from,
            int to) {
        int refused = StandardAirArrays.pressureFromAltitude(altitudeM, pressurePa, from, to);
        refused += DryAirArrays.density(pressurePa, temperatureK, densityKgPerM3, from, to);
        refused += DryAirArrays.speedOfSound(temperatureK, speedOfSoundMps, from, to);
        refused += AirspeedArrays.machFromCas(casMps, pressurePa, mach, from, to);
        refused += AirspeedArrays.easFromMach(mach, pressurePa, easMps, from, to);
        refused += AirspeedArrays.tasFromMach(mach, temperatureK, tasMps, from, to);
        refused +=
                AirspeedArrays.recoveryTemperatureFromMach(
                        mach, temperatureK, 1.0, totalTemperatureK, from, to);
        refused +=
                StandardAirArrays.altitudeFromDensity(densityKgPerM3, densityAltitudeM, from, to);
        // the standard temperature stands for a moment where the rate will
        StandardAirArrays.temperatureFromAltitude(altitudeM, geometricRateMps, from, to);
        rates(altitudeM, temperatureK, rateMps, speedOfSoundMps, geometricRateMps, from, to);
        gradients(tasMps, geometricRateMps, airGradient, from, to);
        return refused + to - Columns.nextUnanswered(airGradient, from, to);
    }

    private static void rates(
            double[] altitudeM,
            double[] temperatureK,
            double[] rateMps,
            double[] speedOfSoundMps,
            double[] out,
            int from,
            int to) {
        for (int i = from; i < to; i++) {
            double altitude = altitudeM[i];
            double perPressureAltitude =
                    temperatureK[i]
                            / out[i]
                            * GeopotentialKernel.geometricPerGeopotential(altitude);
            double rate = finite(rateMps[i] * perPressureAltitude);
            out[i] = Math.fma(-0.0, speedOfSoundMps[i], rate); // NaN if the temperature is refused
        }
    }

    private static void gradients(
            double[] tasMps, double[] rateMps, double[] out, int from, int to) {
        for (int i = from; i < to; i++) {
            out[i] = finite(GroundTrack.gradient(tasMps[i], rateMps[i]));
        }
    }

    /** The value, or NaN for one without end; a product of -0 leaves -0 as it is. */
    private static double finite(double value) {
        return Math.fma(-0.0, Math.abs(value), value);
    }

    private int refused(int from, int to) {
        int refused = 0;
        for (int i = from; i < to; i++) {
            double sum = airGradient[i] + densityAltitudeM[i] + totalTemperatureK[i] + easMps[i];
            if (Double.isNaN(sum)) {
                refused++;
            }
        }
        return refused;
    }
}
