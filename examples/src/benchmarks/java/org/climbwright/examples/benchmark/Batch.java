package org.climbwright.examples.benchmark;

import java.util.Arrays;
import java.util.Random;
import org.climbwright.airspeed.AirspeedConversion;
import org.climbwright.atmosphere.DryAir;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.path.FrameColumns;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/**
 * Moments of climbs, drawn from a written seed, and arrays for what is computed of them.
 *
 * <p>From -1000 to 13000 m, at a calibrated airspeed of 60 to 200 m/s that is no more than Mach 0.9
 * there, in air 20 K colder to 30 K warmer than standard. Impact pressures are those of Mach 1.05
 * to 2.5 at the same levels. The moments are invented; their altitudes rise, as in a climb that was
 * recorded.
 */
@State(Scope.Thread)
public class Batch {
    static final int SIZE = 1024;

    static final long SEED = 20_260_101L;

    /** A knot in metres per second, by definition. */
    static final double MPS_PER_KNOT = 1852.0 / 3600.0;

    private static final double HIGHEST_MACH = 0.9;

    final double[] altitudeM = new double[SIZE];
    final double[] pressurePa = new double[SIZE];
    final double[] densityKgPerM3 = new double[SIZE];
    final double[] temperatureK = new double[SIZE];
    final double[] casMps = new double[SIZE];
    final double[] casKnots = new double[SIZE];
    final double[] mach = new double[SIZE];
    final double[] supersonicImpactPressurePa = new double[SIZE];
    final double[] rateMps = new double[SIZE];

    /** A whole frame each, the longest answer. */
    final FrameColumns frames = FrameColumns.ofSize(SIZE);

    /** What a benchmark computes: the first array is its first result, and so on. */
    final double[][] results = {
        frames.pressurePa(),
        frames.densityKgPerM3(),
        frames.speedOfSoundMps(),
        frames.mach(),
        frames.easMps(),
        frames.tasMps(),
        frames.totalTemperatureK(),
        frames.densityAltitudeM(),
        frames.geometricRateMps(),
        frames.airGradient()
    };

    /** Draws the batch, the same every time. */
    public Batch() {
        Random random = new Random(SEED);
        Arrays.setAll(altitudeM, i -> between(random, -1000.0, 13000.0));
        Arrays.sort(altitudeM);
        for (int i = 0; i < SIZE; i++) {
            double altitude = altitudeM[i];
            double pressure = StandardAir.pressureFromAltitude(altitude);
            double temperature =
                    StandardAir.temperatureFromAltitude(altitude) + between(random, -20.0, 30.0);
            double fastest =
                    Math.min(200.0, AirspeedConversion.casFromMach(HIGHEST_MACH, pressure));
            double cas = between(random, 60.0, fastest);
            pressurePa[i] = pressure;
            temperatureK[i] = temperature;
            densityKgPerM3[i] = DryAir.density(pressure, temperature);
            casMps[i] = cas;
            casKnots[i] = cas / MPS_PER_KNOT;
            mach[i] = AirspeedConversion.machFromCas(cas, pressure);
            supersonicImpactPressurePa[i] =
                    AirspeedConversion.impactPressureFromMach(between(random, 1.05, 2.5), pressure);
            rateMps[i] = between(random, 0.5, 20.0);
        }
    }

    private static double between(Random random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }
}
