package org.climbwright.examples.benchmark;

import org.climbwright.atmosphere.DryAir;
import org.climbwright.atmosphere.DryAirArrays;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.atmosphere.StandardAirArrays;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.OperationsPerInvocation;

/** Standard air against the same by hand. */
public final class StandardAirBenchmark {
    private StandardAirBenchmark() {}

    /** Pressure. */
    @Line(value = "p from altitude", bar = 13, aim = 15)
    @OperationsPerInvocation(Batch.SIZE)
    public static class PressureFromAltitude {
        /** By hand. */
        @Benchmark
        public void byHand(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                batch.results[0][i] = ByHand.pressure(batch.altitudeM[i]);
            }
        }

        /** By hand, the same on every machine. */
        @Benchmark
        public void strictMath(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                batch.results[0][i] = ByHandStrictly.pressure(batch.altitudeM[i]);
            }
        }

        /** Ours, one by one. */
        @Benchmark
        public void scalar(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                batch.results[0][i] = StandardAir.pressureFromAltitude(batch.altitudeM[i]);
            }
        }

        /** Ours, over arrays. */
        @Benchmark
        public void bulk(Batch batch) {
            StandardAirArrays.pressureFromAltitude(
                    batch.altitudeM, batch.results[0], 0, Batch.SIZE);
        }
    }

    /** Temperature. */
    @Line("T from altitude")
    @OperationsPerInvocation(Batch.SIZE)
    public static class TemperatureFromAltitude {
        /** By hand. */
        @Benchmark
        public void byHand(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                batch.results[0][i] = ByHand.temperature(batch.altitudeM[i]);
            }
        }

        /** By hand, the same on every machine. */
        @Benchmark
        public void strictMath(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                batch.results[0][i] = ByHandStrictly.temperature(batch.altitudeM[i]);
            }
        }

        /** Ours, one by one. */
        @Benchmark
        public void scalar(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                batch.results[0][i] = StandardAir.temperatureFromAltitude(batch.altitudeM[i]);
            }
        }

        /** Ours, over arrays. */
        @Benchmark
        public void bulk(Batch batch) {
            StandardAirArrays.temperatureFromAltitude(
                    batch.altitudeM, batch.results[0], 0, Batch.SIZE);
        }
    }

    /** Density. */
    @Line("ρ from altitude")
    @OperationsPerInvocation(Batch.SIZE)
    public static class DensityFromAltitude {
        /** By hand. */
        @Benchmark
        public void byHand(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                batch.results[0][i] =
                        ByHand.density(
                                ByHand.pressure(batch.altitudeM[i]),
                                ByHand.temperature(batch.altitudeM[i]));
            }
        }

        /** By hand, the same on every machine. */
        @Benchmark
        public void strictMath(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                batch.results[0][i] =
                        ByHandStrictly.density(
                                ByHandStrictly.pressure(batch.altitudeM[i]),
                                ByHandStrictly.temperature(batch.altitudeM[i]));
            }
        }

        /** Ours, one by one. */
        @Benchmark
        public void scalar(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                batch.results[0][i] = StandardAir.densityFromAltitude(batch.altitudeM[i]);
            }
        }

        /** Ours, over arrays. */
        @Benchmark
        public void bulk(Batch batch) {
            StandardAirArrays.densityFromAltitude(batch.altitudeM, batch.results[0], 0, Batch.SIZE);
        }
    }

    /** Pressure, temperature, density and speed of sound. */
    @Line(value = "p, T, ρ, a from altitude", bar = 8, aim = 15)
    @OperationsPerInvocation(Batch.SIZE)
    public static class AirFromAltitude {
        /** By hand. */
        @Benchmark
        public void byHand(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                double pressure = ByHand.pressure(batch.altitudeM[i]);
                double temperature = ByHand.temperature(batch.altitudeM[i]);
                batch.results[0][i] = pressure;
                batch.results[1][i] = temperature;
                batch.results[2][i] = ByHand.density(pressure, temperature);
                batch.results[3][i] = ByHand.speedOfSound(temperature);
            }
        }

        /** By hand, the same on every machine. */
        @Benchmark
        public void strictMath(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                double pressure = ByHandStrictly.pressure(batch.altitudeM[i]);
                double temperature = ByHandStrictly.temperature(batch.altitudeM[i]);
                batch.results[0][i] = pressure;
                batch.results[1][i] = temperature;
                batch.results[2][i] = ByHandStrictly.density(pressure, temperature);
                batch.results[3][i] = ByHandStrictly.speedOfSound(temperature);
            }
        }

        /** Ours, one by one. */
        @Benchmark
        public void scalar(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                double pressure = StandardAir.pressureFromAltitude(batch.altitudeM[i]);
                double temperature = StandardAir.temperatureFromAltitude(batch.altitudeM[i]);
                batch.results[0][i] = pressure;
                batch.results[1][i] = temperature;
                batch.results[2][i] = DryAir.density(pressure, temperature);
                batch.results[3][i] = DryAir.speedOfSound(temperature);
            }
        }

        /** Ours, over arrays. */
        @Benchmark
        public void bulk(Batch batch) {
            StandardAirArrays.pressureFromAltitude(
                    batch.altitudeM, batch.results[0], 0, Batch.SIZE);
            StandardAirArrays.temperatureFromAltitude(
                    batch.altitudeM, batch.results[1], 0, Batch.SIZE);
            DryAirArrays.density(
                    batch.results[0], batch.results[1], batch.results[2], 0, Batch.SIZE);
            DryAirArrays.speedOfSound(batch.results[1], batch.results[3], 0, Batch.SIZE);
        }
    }

    /** Pressure altitude. */
    @Line(value = "altitude from p", bar = 5.6, aim = 12, altitude = 0)
    @OperationsPerInvocation(Batch.SIZE)
    public static class AltitudeFromPressure {
        /** By hand. */
        @Benchmark
        public void byHand(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                batch.results[0][i] = ByHand.altitudeOfPressure(batch.pressurePa[i]);
            }
        }

        /** By hand, the same on every machine. */
        @Benchmark
        public void strictMath(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                batch.results[0][i] = ByHandStrictly.altitudeOfPressure(batch.pressurePa[i]);
            }
        }

        /** Ours, one by one. */
        @Benchmark
        public void scalar(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                batch.results[0][i] = StandardAir.altitudeFromPressure(batch.pressurePa[i]);
            }
        }

        /** Ours, over arrays. */
        @Benchmark
        public void bulk(Batch batch) {
            StandardAirArrays.altitudeFromPressure(
                    batch.pressurePa, batch.results[0], 0, Batch.SIZE);
        }
    }

    /** Density altitude. */
    @Line(value = "altitude from ρ", altitude = 0)
    @OperationsPerInvocation(Batch.SIZE)
    public static class AltitudeFromDensity {
        /** By hand. */
        @Benchmark
        public void byHand(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                batch.results[0][i] = ByHand.altitudeOfDensity(batch.densityKgPerM3[i]);
            }
        }

        /** By hand, the same on every machine. */
        @Benchmark
        public void strictMath(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                batch.results[0][i] = ByHandStrictly.altitudeOfDensity(batch.densityKgPerM3[i]);
            }
        }

        /** Ours, one by one. */
        @Benchmark
        public void scalar(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                batch.results[0][i] = StandardAir.altitudeFromDensity(batch.densityKgPerM3[i]);
            }
        }

        /** Ours, over arrays. */
        @Benchmark
        public void bulk(Batch batch) {
            StandardAirArrays.altitudeFromDensity(
                    batch.densityKgPerM3, batch.results[0], 0, Batch.SIZE);
        }
    }
}
