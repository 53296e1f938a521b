package org.climbwright.examples.benchmark;

import org.climbwright.airspeed.AirspeedConversion;
import org.climbwright.airspeed.TotalTemperature;
import org.climbwright.atmosphere.DryAir;
import org.climbwright.atmosphere.StandardAir;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.OperationsPerInvocation;

/**
 * A whole frame of a simulation against the same by hand: from pressure altitude, temperature and
 * calibrated airspeed the Mach number, equivalent and true airspeed, total temperature, density
 * altitude, and the gradient through the air as geometric rate over true airspeed.
 */
public final class FrameBenchmark {
    private FrameBenchmark() {}

    /** Six results of each moment, summed and not kept, as a loop of 60 Hz makes them. */
    @Line(value = "frame of a 60 Hz loop", bar = 2.5, aim = 4)
    @OperationsPerInvocation(Batch.SIZE)
    public static class SixtyHertz {
        /** By hand. */
        @Benchmark
        public double byHand(Batch batch) {
            double sum = 0.0;
            for (int i = 0; i < Batch.SIZE; i++) {
                double temperature = batch.temperatureK[i];
                double pressure = ByHand.pressure(batch.altitudeM[i]);
                double mach = ByHand.machOfCas(batch.casMps[i], pressure);
                double tas = ByHand.tasOfMach(mach, temperature);
                sum +=
                        mach
                                + ByHand.easOfMach(mach, pressure)
                                + tas
                                + ByHand.totalTemperature(mach, temperature)
                                + ByHand.altitudeOfDensity(ByHand.density(pressure, temperature))
                                + batch.geometricRateMps[i] / tas;
            }
            return sum;
        }

        /** By hand, the same on every machine. */
        @Benchmark
        public double strictMath(Batch batch) {
            double sum = 0.0;
            for (int i = 0; i < Batch.SIZE; i++) {
                double temperature = batch.temperatureK[i];
                double pressure = ByHandStrictly.pressure(batch.altitudeM[i]);
                double mach = ByHandStrictly.machOfCas(batch.casMps[i], pressure);
                double tas = ByHandStrictly.tasOfMach(mach, temperature);
                sum +=
                        mach
                                + ByHandStrictly.easOfMach(mach, pressure)
                                + tas
                                + ByHandStrictly.totalTemperature(mach, temperature)
                                + ByHandStrictly.altitudeOfDensity(
                                        ByHandStrictly.density(pressure, temperature))
                                + batch.geometricRateMps[i] / tas;
            }
            return sum;
        }

        /** Ours, one by one. */
        @Benchmark
        public double scalar(Batch batch) {
            double sum = 0.0;
            for (int i = 0; i < Batch.SIZE; i++) {
                double temperature = batch.temperatureK[i];
                double pressure = StandardAir.pressureFromAltitude(batch.altitudeM[i]);
                double mach = AirspeedConversion.machFromCas(batch.casMps[i], pressure);
                double tas = AirspeedConversion.tasFromMach(mach, temperature);
                sum +=
                        mach
                                + AirspeedConversion.easFromMach(mach, pressure)
                                + tas
                                + TotalTemperature.fromMach(mach, temperature, 1.0)
                                + StandardAir.altitudeFromDensity(
                                        DryAir.density(pressure, temperature))
                                + batch.geometricRateMps[i] / tas;
            }
            return sum;
        }
    }

    /** Six results of each moment, kept. */
    @Line(value = "whole frame, into arrays", bar = 15, barBefore25 = 5, aim = 20, altitude = 4)
    @OperationsPerInvocation(Batch.SIZE)
    public static class OverArrays {
        /** By hand. */
        @Benchmark
        public void byHand(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                double pressure = ByHand.pressure(batch.altitudeM[i]);
                double mach = ByHand.machOfCas(batch.casMps[i], pressure);
                double tas = ByHand.tasOfMach(mach, batch.temperatureK[i]);
                batch.results[0][i] = mach;
                batch.results[1][i] = ByHand.easOfMach(mach, pressure);
                batch.results[2][i] = tas;
                batch.results[3][i] = ByHand.totalTemperature(mach, batch.temperatureK[i]);
                batch.results[4][i] =
                        ByHand.altitudeOfDensity(ByHand.density(pressure, batch.temperatureK[i]));
                batch.results[5][i] = batch.geometricRateMps[i] / tas;
            }
        }

        /** By hand, the same on every machine. */
        @Benchmark
        public void strictMath(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                double pressure = ByHandStrictly.pressure(batch.altitudeM[i]);
                double mach = ByHandStrictly.machOfCas(batch.casMps[i], pressure);
                double tas = ByHandStrictly.tasOfMach(mach, batch.temperatureK[i]);
                batch.results[0][i] = mach;
                batch.results[1][i] = ByHandStrictly.easOfMach(mach, pressure);
                batch.results[2][i] = tas;
                batch.results[3][i] = ByHandStrictly.totalTemperature(mach, batch.temperatureK[i]);
                batch.results[4][i] =
                        ByHandStrictly.altitudeOfDensity(
                                ByHandStrictly.density(pressure, batch.temperatureK[i]));
                batch.results[5][i] = batch.geometricRateMps[i] / tas;
            }
        }

        /** Ours, one by one. */
        @Benchmark
        public void scalar(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                double pressure = StandardAir.pressureFromAltitude(batch.altitudeM[i]);
                double mach = AirspeedConversion.machFromCas(batch.casMps[i], pressure);
                double tas = AirspeedConversion.tasFromMach(mach, batch.temperatureK[i]);
                batch.results[0][i] = mach;
                batch.results[1][i] = AirspeedConversion.easFromMach(mach, pressure);
                batch.results[2][i] = tas;
                batch.results[3][i] = TotalTemperature.fromMach(mach, batch.temperatureK[i], 1.0);
                batch.results[4][i] =
                        StandardAir.altitudeFromDensity(
                                DryAir.density(pressure, batch.temperatureK[i]));
                batch.results[5][i] = batch.geometricRateMps[i] / tas;
            }
        }
    }
}
