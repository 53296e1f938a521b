package org.climbwright.examples.benchmark;

import org.climbwright.airspeed.AirspeedConversion;
import org.climbwright.airspeed.TotalTemperature;
import org.climbwright.atmosphere.DryAir;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.atmosphere.altimetry.VerticalRates;
import org.climbwright.path.GroundTrack;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.OperationsPerInvocation;

/**
 * A whole frame of a simulation against the same by hand: from pressure altitude, temperature,
 * calibrated airspeed and rate the pressure, density and speed of sound, Mach number, equivalent
 * and true airspeed, total temperature, density altitude, geometric rate and the gradient through
 * the air.
 */
public final class FrameBenchmark {
    private FrameBenchmark() {}

    /** Ten results of each moment, summed and not kept, as a loop of 60 Hz makes them. */
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
                double density = ByHand.density(pressure, temperature);
                double mach = ByHand.machOfCas(batch.casMps[i], pressure);
                double tas = ByHand.tasOfMach(mach, temperature);
                double rate =
                        ByHand.geometricRate(batch.rateMps[i], batch.altitudeM[i], temperature);
                sum +=
                        pressure
                                + density
                                + ByHand.speedOfSound(temperature)
                                + mach
                                + ByHand.easOfMach(mach, pressure)
                                + tas
                                + ByHand.totalTemperature(mach, temperature)
                                + ByHand.altitudeOfDensity(density)
                                + rate
                                + ByHand.gradient(tas, rate);
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
                double density = ByHandStrictly.density(pressure, temperature);
                double mach = ByHandStrictly.machOfCas(batch.casMps[i], pressure);
                double tas = ByHandStrictly.tasOfMach(mach, temperature);
                double rate =
                        ByHandStrictly.geometricRate(
                                batch.rateMps[i], batch.altitudeM[i], temperature);
                sum +=
                        pressure
                                + density
                                + ByHandStrictly.speedOfSound(temperature)
                                + mach
                                + ByHandStrictly.easOfMach(mach, pressure)
                                + tas
                                + ByHandStrictly.totalTemperature(mach, temperature)
                                + ByHandStrictly.altitudeOfDensity(density)
                                + rate
                                + ByHandStrictly.gradient(tas, rate);
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
                double density = DryAir.density(pressure, temperature);
                double mach = AirspeedConversion.machFromCas(batch.casMps[i], pressure);
                double tas = AirspeedConversion.tasFromMach(mach, temperature);
                double rate =
                        batch.rateMps[i]
                                * VerticalRates.geometricPerPressureAltitude(
                                        batch.altitudeM[i], temperature);
                sum +=
                        pressure
                                + density
                                + DryAir.speedOfSound(temperature)
                                + mach
                                + AirspeedConversion.easFromMach(mach, pressure)
                                + tas
                                + TotalTemperature.fromMach(mach, temperature, 1.0)
                                + StandardAir.altitudeFromDensity(density)
                                + rate
                                + GroundTrack.airGradient(tas, rate);
            }
            return sum;
        }
    }

    /** Ten results of each moment, kept. */
    @Line(value = "whole frame, into arrays", bar = 15, barBefore25 = 5, aim = 20, altitude = 7)
    @OperationsPerInvocation(Batch.SIZE)
    public static class OverArrays {
        /** By hand. */
        @Benchmark
        public void byHand(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                double temperature = batch.temperatureK[i];
                double pressure = ByHand.pressure(batch.altitudeM[i]);
                double density = ByHand.density(pressure, temperature);
                double mach = ByHand.machOfCas(batch.casMps[i], pressure);
                double tas = ByHand.tasOfMach(mach, temperature);
                double rate =
                        ByHand.geometricRate(batch.rateMps[i], batch.altitudeM[i], temperature);
                batch.results[0][i] = pressure;
                batch.results[1][i] = density;
                batch.results[2][i] = ByHand.speedOfSound(temperature);
                batch.results[3][i] = mach;
                batch.results[4][i] = ByHand.easOfMach(mach, pressure);
                batch.results[5][i] = tas;
                batch.results[6][i] = ByHand.totalTemperature(mach, temperature);
                batch.results[7][i] = ByHand.altitudeOfDensity(density);
                batch.results[8][i] = rate;
                batch.results[9][i] = ByHand.gradient(tas, rate);
            }
        }

        /** By hand, the same on every machine. */
        @Benchmark
        public void strictMath(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                double temperature = batch.temperatureK[i];
                double pressure = ByHandStrictly.pressure(batch.altitudeM[i]);
                double density = ByHandStrictly.density(pressure, temperature);
                double mach = ByHandStrictly.machOfCas(batch.casMps[i], pressure);
                double tas = ByHandStrictly.tasOfMach(mach, temperature);
                double rate =
                        ByHandStrictly.geometricRate(
                                batch.rateMps[i], batch.altitudeM[i], temperature);
                batch.results[0][i] = pressure;
                batch.results[1][i] = density;
                batch.results[2][i] = ByHandStrictly.speedOfSound(temperature);
                batch.results[3][i] = mach;
                batch.results[4][i] = ByHandStrictly.easOfMach(mach, pressure);
                batch.results[5][i] = tas;
                batch.results[6][i] = ByHandStrictly.totalTemperature(mach, temperature);
                batch.results[7][i] = ByHandStrictly.altitudeOfDensity(density);
                batch.results[8][i] = rate;
                batch.results[9][i] = ByHandStrictly.gradient(tas, rate);
            }
        }

        /** Ours, one by one. */
        @Benchmark
        public void scalar(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                double temperature = batch.temperatureK[i];
                double pressure = StandardAir.pressureFromAltitude(batch.altitudeM[i]);
                double density = DryAir.density(pressure, temperature);
                double mach = AirspeedConversion.machFromCas(batch.casMps[i], pressure);
                double tas = AirspeedConversion.tasFromMach(mach, temperature);
                double rate =
                        batch.rateMps[i]
                                * VerticalRates.geometricPerPressureAltitude(
                                        batch.altitudeM[i], temperature);
                batch.results[0][i] = pressure;
                batch.results[1][i] = density;
                batch.results[2][i] = DryAir.speedOfSound(temperature);
                batch.results[3][i] = mach;
                batch.results[4][i] = AirspeedConversion.easFromMach(mach, pressure);
                batch.results[5][i] = tas;
                batch.results[6][i] = TotalTemperature.fromMach(mach, temperature, 1.0);
                batch.results[7][i] = StandardAir.altitudeFromDensity(density);
                batch.results[8][i] = rate;
                batch.results[9][i] = GroundTrack.airGradient(tas, rate);
            }
        }

        /** Ours, over arrays. */
        @Benchmark
        public void bulk(Batch batch) {
            batch.frames.fill(
                    batch.altitudeM,
                    batch.temperatureK,
                    batch.casMps,
                    batch.rateMps,
                    0,
                    Batch.SIZE);
        }
    }
}
