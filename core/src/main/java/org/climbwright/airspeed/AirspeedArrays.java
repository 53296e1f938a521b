package org.climbwright.airspeed;

import static org.climbwright.atmosphere.IcaoConstants.SEA_LEVEL_SPEED_OF_SOUND_MPS;

import org.climbwright.atmosphere.DryAir;
import org.climbwright.atmosphere.kernel.DryAirKernel;
import org.climbwright.numeric.Columns;

/**
 * The airspeeds over arrays: {@link AirspeedConversion} for many numbers at once, several times
 * faster, and equal to it to the last bit.
 *
 * <pre>{@code
 * double[] casMps = {150.0, 150.0};
 * double[] pressurePa = {101325.0, 30000.0};
 * double[] mach = new double[2];
 * AirspeedArrays.machFromCas(casMps, pressurePa, mach, 0, 2)    // 0
 * mach[1]                                                       // 0.7713134999474114
 * }</pre>
 *
 * <p>Each function fills the results from index {@code from} (included) to {@code to} (excluded),
 * at the indices of the arguments. Where the function of one number would refuse an argument the
 * result is NaN; the function returns how many those are. No allocation. Up to Mach 1 it is at its
 * fastest; beyond each number costs what {@link AirspeedConversion} takes for it, except from
 * impact pressure, where a span that is beyond Mach 1 throughout is as fast.
 *
 * <p>All throw {@link IndexOutOfBoundsException} where the span does not lie in the arrays, and
 * {@link IllegalArgumentException} where the array of the results is also one of the arguments.
 *
 * @source {@link AirspeedConversion}
 */
public final class AirspeedArrays {
    // The fast forms hold in these ranges, told by middle and reach; whatever lies beyond goes the
    // other way.
    private static final double MIDDLE_CAS_MPS = 170.1;
    private static final double REACH_CAS_MPS = 170.0;
    private static final double MIDDLE_PA = 500_001.0;
    private static final double REACH_PA = 499_998.0;
    private static final double MIDDLE_SUBSONIC = 0.5;
    private static final double REACH_SUBSONIC = 0.4999;
    private static final double MIDDLE_MACH = 2.5;
    private static final double REACH_MACH = 2.4999;
    private static final double MIDDLE_K = 250.0;
    private static final double REACH_K = 149.0;

    /** Impact ratios of up to Mach 1, and from there to Mach 5. */
    private static final double MIDDLE_SUBSONIC_RATIO = 0.4464;

    private static final double REACH_SUBSONIC_RATIO = 0.4463;
    private static final double MIDDLE_SUPERSONIC_RATIO = 16.27;
    private static final double REACH_SUPERSONIC_RATIO = 15.37;

    private AirspeedArrays() {}

    /**
     * Fills in the Mach numbers of calibrated airspeeds at pressures.
     *
     * @param casMps calibrated airspeeds [m/s], from 0 to that of Mach 5 at the pressure
     * @param pressurePa static pressures [Pa], 0.1 to 1e6
     * @param mach results: Mach numbers
     * @param from first index
     * @param to index after the last
     * @return how many speeds are refused
     * @accuracy {@link AirspeedConversion#machFromCas}, to the last bit
     * @source see the class comment
     */
    public static int machFromCas(
            double[] casMps, double[] pressurePa, double[] mach, int from, int to) {
        Columns.check(casMps, mach, from, to);
        Columns.check(pressurePa, mach, from, to);
        int refused = 0;
        for (int start = from; start < to; ) {
            int end = Columns.blockEnd(start, to);
            for (int i = machsFromCas(casMps, pressurePa, mach, start, end);
                    i < end;
                    i = Columns.nextUnanswered(mach, i + 1, end)) {
                if (AirspeedConversion.coversCas(casMps[i], pressurePa[i])) {
                    mach[i] = AirspeedConversion.machFromCas(casMps[i], pressurePa[i]);
                } else {
                    refused++;
                }
            }
            start = end;
        }
        return refused;
    }

    /**
     * Fills in the Mach numbers of equivalent airspeeds at pressures.
     *
     * @param easMps equivalent airspeeds [m/s], from 0 to that of Mach 5
     * @param pressurePa static pressures [Pa], 0.1 to 1e6
     * @param mach results: Mach numbers
     * @param from first index
     * @param to index after the last
     * @return how many speeds are refused
     * @accuracy {@link AirspeedConversion#machFromEas}, to the last bit
     * @source see the class comment
     */
    public static int machFromEas(
            double[] easMps, double[] pressurePa, double[] mach, int from, int to) {
        Columns.check(easMps, mach, from, to);
        Columns.check(pressurePa, mach, from, to);
        int refused = 0;
        for (int start = from; start < to; ) {
            int end = Columns.blockEnd(start, to);
            for (int i = machsFromEas(easMps, pressurePa, mach, start, end);
                    i < end;
                    i = Columns.nextUnanswered(mach, i + 1, end)) {
                if (AirspeedConversion.coversEas(easMps[i], pressurePa[i])) {
                    mach[i] = AirspeedConversion.machFromEas(easMps[i], pressurePa[i]);
                } else {
                    refused++;
                }
            }
            start = end;
        }
        return refused;
    }

    /**
     * Fills in the Mach numbers of true airspeeds at temperatures.
     *
     * @param tasMps true airspeeds [m/s], from 0 to that of Mach 5
     * @param temperatureK static air temperatures [K], 100 to 400
     * @param mach results: Mach numbers
     * @param from first index
     * @param to index after the last
     * @return how many speeds are refused
     * @accuracy {@link AirspeedConversion#machFromTas}, to the last bit
     * @source see the class comment
     */
    public static int machFromTas(
            double[] tasMps, double[] temperatureK, double[] mach, int from, int to) {
        Columns.check(tasMps, mach, from, to);
        Columns.check(temperatureK, mach, from, to);
        int refused = 0;
        for (int start = from; start < to; ) {
            int end = Columns.blockEnd(start, to);
            for (int i = machsFromTas(tasMps, temperatureK, mach, start, end);
                    i < end;
                    i = Columns.nextUnanswered(mach, i + 1, end)) {
                if (AirspeedConversion.coversTas(tasMps[i], temperatureK[i])) {
                    mach[i] = AirspeedConversion.machFromTas(tasMps[i], temperatureK[i]);
                } else {
                    refused++;
                }
            }
            start = end;
        }
        return refused;
    }

    /**
     * Fills in the Mach numbers of impact pressures.
     *
     * @param impactPressurePa impact pressures [Pa], from 0 to 31.65 times the static pressure
     * @param pressurePa static pressures [Pa], 0.1 to 1e6
     * @param mach results: Mach numbers
     * @param from first index
     * @param to index after the last
     * @return how many pressures are refused
     * @accuracy {@link AirspeedConversion#machFromImpactPressure}, to the last bit
     * @source see the class comment
     */
    public static int machFromImpactPressure(
            double[] impactPressurePa, double[] pressurePa, double[] mach, int from, int to) {
        Columns.check(impactPressurePa, mach, from, to);
        Columns.check(pressurePa, mach, from, to);
        int refused = 0;
        for (int start = from; start < to; ) {
            int end = Columns.blockEnd(start, to);
            for (int i = machsFromImpactPressure(impactPressurePa, pressurePa, mach, start, end);
                    i < end;
                    i = Columns.nextUnanswered(mach, i + 1, end)) {
                if (AirspeedConversion.coversImpactPressure(impactPressurePa[i], pressurePa[i])) {
                    mach[i] =
                            AirspeedConversion.machFromImpactPressure(
                                    impactPressurePa[i], pressurePa[i]);
                } else {
                    refused++;
                }
            }
            start = end;
        }
        return refused;
    }

    /**
     * Fills in the calibrated airspeeds of Mach numbers at pressures.
     *
     * @param mach Mach numbers, 0 to 5, and no more than gives Mach 5 at sea level
     * @param pressurePa static pressures [Pa], 0.1 to 1e6
     * @param casMps results: calibrated airspeeds [m/s]
     * @param from first index
     * @param to index after the last
     * @return how many Mach numbers are refused
     * @accuracy {@link AirspeedConversion#casFromMach}, to the last bit
     * @source see the class comment
     */
    public static int casFromMach(
            double[] mach, double[] pressurePa, double[] casMps, int from, int to) {
        Columns.check(mach, casMps, from, to);
        Columns.check(pressurePa, casMps, from, to);
        int refused = 0;
        for (int start = from; start < to; ) {
            int end = Columns.blockEnd(start, to);
            for (int i = casFromMachs(mach, pressurePa, casMps, start, end);
                    i < end;
                    i = Columns.nextUnanswered(casMps, i + 1, end)) {
                if (AirspeedConversion.hasCas(mach[i], pressurePa[i])) {
                    casMps[i] = AirspeedConversion.casFromMach(mach[i], pressurePa[i]);
                } else {
                    refused++;
                }
            }
            start = end;
        }
        return refused;
    }

    /**
     * Fills in the equivalent airspeeds of Mach numbers at pressures.
     *
     * @param mach Mach numbers, 0 to 5
     * @param pressurePa static pressures [Pa], 0.1 to 1e6
     * @param easMps results: equivalent airspeeds [m/s]
     * @param from first index
     * @param to index after the last
     * @return how many Mach numbers are refused
     * @accuracy {@link AirspeedConversion#easFromMach}, to the last bit
     * @source see the class comment
     */
    public static int easFromMach(
            double[] mach, double[] pressurePa, double[] easMps, int from, int to) {
        Columns.check(mach, easMps, from, to);
        Columns.check(pressurePa, easMps, from, to);
        int refused = 0;
        for (int start = from; start < to; ) {
            int end = Columns.blockEnd(start, to);
            for (int i = easFromMachs(mach, pressurePa, easMps, start, end);
                    i < end;
                    i = Columns.nextUnanswered(easMps, i + 1, end)) {
                if (AirspeedConversion.coversMach(mach[i])
                        && AirspeedConversion.coversPressure(pressurePa[i])) {
                    easMps[i] = AirspeedConversion.easFromMach(mach[i], pressurePa[i]);
                } else {
                    refused++;
                }
            }
            start = end;
        }
        return refused;
    }

    /**
     * Fills in the true airspeeds of Mach numbers at temperatures.
     *
     * @param mach Mach numbers, 0 to 5
     * @param temperatureK static air temperatures [K], 100 to 400
     * @param tasMps results: true airspeeds [m/s]
     * @param from first index
     * @param to index after the last
     * @return how many Mach numbers are refused
     * @accuracy {@link AirspeedConversion#tasFromMach}, to the last bit
     * @source see the class comment
     */
    public static int tasFromMach(
            double[] mach, double[] temperatureK, double[] tasMps, int from, int to) {
        Columns.check(mach, tasMps, from, to);
        Columns.check(temperatureK, tasMps, from, to);
        int refused = 0;
        for (int start = from; start < to; ) {
            int end = Columns.blockEnd(start, to);
            for (int i = tasFromMachs(mach, temperatureK, tasMps, start, end);
                    i < end;
                    i = Columns.nextUnanswered(tasMps, i + 1, end)) {
                if (AirspeedConversion.coversMach(mach[i])
                        && DryAir.coversTemperature(temperatureK[i])) {
                    tasMps[i] = AirspeedConversion.tasFromMach(mach[i], temperatureK[i]);
                } else {
                    refused++;
                }
            }
            start = end;
        }
        return refused;
    }

    /**
     * Fills in the impact pressures of Mach numbers at pressures.
     *
     * @param mach Mach numbers, 0 to 5
     * @param pressurePa static pressures [Pa], 0.1 to 1e6
     * @param impactPressurePa results: impact pressures [Pa]
     * @param from first index
     * @param to index after the last
     * @return how many Mach numbers are refused
     * @accuracy {@link AirspeedConversion#impactPressureFromMach}, to the last bit
     * @source see the class comment
     */
    public static int impactPressureFromMach(
            double[] mach, double[] pressurePa, double[] impactPressurePa, int from, int to) {
        Columns.check(mach, impactPressurePa, from, to);
        Columns.check(pressurePa, impactPressurePa, from, to);
        int refused = 0;
        for (int start = from; start < to; ) {
            int end = Columns.blockEnd(start, to);
            for (int i = impactPressuresFromMach(mach, pressurePa, impactPressurePa, start, end);
                    i < end;
                    i = Columns.nextUnanswered(impactPressurePa, i + 1, end)) {
                if (AirspeedConversion.coversMach(mach[i])
                        && AirspeedConversion.coversPressure(pressurePa[i])) {
                    impactPressurePa[i] =
                            AirspeedConversion.impactPressureFromMach(mach[i], pressurePa[i]);
                } else {
                    refused++;
                }
            }
            start = end;
        }
        return refused;
    }

    /**
     * Fills in the temperatures that a probe feels at Mach numbers in some air.
     *
     * @param mach Mach numbers, 0 to 5
     * @param temperatureK static air temperatures [K], 100 to 400
     * @param recoveryFactor share of the full rise that the probe feels, 0 to 1; 1 is total air
     *     temperature
     * @param recoveryTemperatureK results: temperatures felt [K]
     * @param from first index
     * @param to index after the last
     * @return how many elements have a Mach number or a temperature out of range
     * @throws org.climbwright.quantity.OutsideModelException if the recovery factor is out of range
     * @accuracy {@link TotalTemperature#fromMach}, to the last bit
     * @source see the class comment
     */
    public static int recoveryTemperatureFromMach(
            double[] mach,
            double[] temperatureK,
            double recoveryFactor,
            double[] recoveryTemperatureK,
            int from,
            int to) {
        Columns.check(mach, recoveryTemperatureK, from, to);
        Columns.check(temperatureK, recoveryTemperatureK, from, to);
        TotalTemperature.checkRecoveryFactor(recoveryFactor);
        int refused = 0;
        for (int start = from; start < to; ) {
            int end = Columns.blockEnd(start, to);
            recoveryTemperatures(
                    mach, temperatureK, recoveryFactor, recoveryTemperatureK, start, end);
            for (int i = Columns.nextUnanswered(recoveryTemperatureK, start, end);
                    i < end;
                    i = Columns.nextUnanswered(recoveryTemperatureK, i + 1, end)) {
                if (AirspeedConversion.coversMach(mach[i])
                        && DryAir.coversTemperature(temperatureK[i])) {
                    recoveryTemperatureK[i] =
                            TotalTemperature.fromMach(mach[i], temperatureK[i], recoveryFactor);
                } else {
                    refused++;
                }
            }
            start = end;
        }
        return refused;
    }

    private static void recoveryTemperatures(
            double[] mach,
            double[] temperatureK,
            double recoveryFactor,
            double[] out,
            int from,
            int to) {
        for (int i = from; i < to; i++) {
            double temperature = temperatureK[i];
            double felt = temperature * TotalTemperature.rise(mach[i], recoveryFactor);
            out[i] = ofMach(mach[i], ofTemperature(temperature, felt));
        }
    }

    // Each of these fills in what the fast forms answer, and returns the index of the first that
    // they leave. A loop stands in a method of its own, and two where one would be too long: else
    // it is not made vectors of.

    private static int machsFromCas(
            double[] casMps, double[] pressurePa, double[] out, int from, int to) {
        impactRatiosOfCas(casMps, pressurePa, out, from, to);
        machsOfSubsonicRatios(out, from, to);
        return Columns.nextUnanswered(out, from, to);
    }

    private static int machsFromEas(
            double[] easMps, double[] pressurePa, double[] out, int from, int to) {
        machsOfEas(easMps, pressurePa, out, from, to);
        return Columns.nextUnanswered(out, from, to);
    }

    private static int machsFromTas(
            double[] tasMps, double[] temperatureK, double[] out, int from, int to) {
        machsOfTas(tasMps, temperatureK, out, from, to);
        return Columns.nextUnanswered(out, from, to);
    }

    private static int machsFromImpactPressure(
            double[] impactPressurePa, double[] pressurePa, double[] out, int from, int to) {
        System.arraycopy(impactPressurePa, from, out, from, to - from);
        if (impactPressurePa[from] <= PitotTube.SONIC * pressurePa[from]) {
            divideBy(pressurePa, out, MIDDLE_SUBSONIC_RATIO, REACH_SUBSONIC_RATIO, from, to);
            machsOfSubsonicRatios(out, from, to);
        } else {
            divideBy(pressurePa, out, MIDDLE_SUPERSONIC_RATIO, REACH_SUPERSONIC_RATIO, from, to);
            machsOfSupersonicRatios(out, from, to);
        }
        return Columns.nextUnanswered(out, from, to);
    }

    private static int casFromMachs(
            double[] mach, double[] pressurePa, double[] out, int from, int to) {
        seaLevelRatiosOfMachs(mach, pressurePa, out, from, to);
        casOfRatios(out, from, to);
        return Columns.nextUnanswered(out, from, to);
    }

    private static int impactPressuresFromMach(
            double[] mach, double[] pressurePa, double[] out, int from, int to) {
        impactRatiosOfMachs(mach, out, from, to);
        multiplyBy(pressurePa, out, from, to);
        return Columns.nextUnanswered(out, from, to);
    }

    private static int easFromMachs(
            double[] mach, double[] pressurePa, double[] out, int from, int to) {
        easOfMachs(mach, pressurePa, out, from, to);
        return Columns.nextUnanswered(out, from, to);
    }

    private static int tasFromMachs(
            double[] mach, double[] temperatureK, double[] out, int from, int to) {
        tasOfMachs(mach, temperatureK, out, from, to);
        return Columns.nextUnanswered(out, from, to);
    }

    private static void impactRatiosOfCas(
            double[] casMps, double[] pressurePa, double[] out, int from, int to) {
        for (int i = from; i < to; i++) {
            double cas = casMps[i];
            double ratio = AirspeedConversion.impactRatioOfSubsonicCas(cas, pressurePa[i]);
            double known = Columns.within(cas, MIDDLE_CAS_MPS, REACH_CAS_MPS, ratio);
            out[i] = ofSubsonicRatio(ratio, ofPressure(pressurePa[i], known));
        }
    }

    private static void seaLevelRatiosOfMachs(
            double[] mach, double[] pressurePa, double[] out, int from, int to) {
        for (int i = from; i < to; i++) {
            double ratio =
                    AirspeedConversion.seaLevelImpactRatioOfSubsonicMach(mach[i], pressurePa[i]);
            double known = Columns.within(mach[i], MIDDLE_SUBSONIC, REACH_SUBSONIC, ratio);
            out[i] = ofSubsonicRatio(ratio, ofPressure(pressurePa[i], known));
        }
    }

    private static void impactRatiosOfMachs(double[] mach, double[] out, int from, int to) {
        for (int i = from; i < to; i++) {
            double number = mach[i];
            double ratio = PitotTube.subsonic(number * number);
            out[i] = Columns.within(number, MIDDLE_SUBSONIC, REACH_SUBSONIC, ratio);
        }
    }

    /** Divides impact pressures by static pressures, for ratios in a range. */
    private static void divideBy(
            double[] pressurePa, double[] out, double middle, double reach, int from, int to) {
        for (int i = from; i < to; i++) {
            double ratio = out[i] / pressurePa[i];
            out[i] = Columns.within(ratio, middle, reach, ofPressure(pressurePa[i], ratio));
        }
    }

    private static void multiplyBy(double[] pressurePa, double[] out, int from, int to) {
        for (int i = from; i < to; i++) {
            out[i] = ofPressure(pressurePa[i], out[i] * pressurePa[i]);
        }
    }

    private static void machsOfSubsonicRatios(double[] out, int from, int to) {
        for (int i = from; i < to; i++) {
            out[i] = Math.sqrt(PitotTube.squareBelowMachOne(out[i]));
        }
    }

    private static void machsOfSupersonicRatios(double[] out, int from, int to) {
        for (int i = from; i < to; i++) {
            out[i] = Math.sqrt(PitotTube.supersonicSquare(out[i]));
        }
    }

    private static void casOfRatios(double[] out, int from, int to) {
        for (int i = from; i < to; i++) {
            double machSquare = PitotTube.squareBelowMachOne(out[i]);
            out[i] = SEA_LEVEL_SPEED_OF_SOUND_MPS * Math.sqrt(machSquare);
        }
    }

    private static void machsOfEas(
            double[] easMps, double[] pressurePa, double[] out, int from, int to) {
        for (int i = from; i < to; i++) {
            double mach = easMps[i] / AirspeedConversion.machOneEas(pressurePa[i]);
            out[i] = ofMach(mach, ofPressure(pressurePa[i], mach));
        }
    }

    private static void easOfMachs(
            double[] mach, double[] pressurePa, double[] out, int from, int to) {
        for (int i = from; i < to; i++) {
            double eas = mach[i] * AirspeedConversion.machOneEas(pressurePa[i]);
            out[i] = ofMach(mach[i], ofPressure(pressurePa[i], eas));
        }
    }

    private static void machsOfTas(
            double[] tasMps, double[] temperatureK, double[] out, int from, int to) {
        for (int i = from; i < to; i++) {
            double mach = tasMps[i] / DryAirKernel.speedOfSound(temperatureK[i]);
            out[i] = ofMach(mach, ofTemperature(temperatureK[i], mach));
        }
    }

    private static void tasOfMachs(
            double[] mach, double[] temperatureK, double[] out, int from, int to) {
        for (int i = from; i < to; i++) {
            double tas = mach[i] * DryAirKernel.speedOfSound(temperatureK[i]);
            out[i] = ofMach(mach[i], ofTemperature(temperatureK[i], tas));
        }
    }

    private static double ofSubsonicRatio(double ratio, double result) {
        return Columns.within(ratio, MIDDLE_SUBSONIC_RATIO, REACH_SUBSONIC_RATIO, result);
    }

    private static double ofPressure(double pressurePa, double result) {
        return Columns.within(pressurePa, MIDDLE_PA, REACH_PA, result);
    }

    private static double ofTemperature(double temperatureK, double result) {
        return Columns.within(temperatureK, MIDDLE_K, REACH_K, result);
    }

    private static double ofMach(double mach, double result) {
        return Columns.within(mach, MIDDLE_MACH, REACH_MACH, result);
    }
}
