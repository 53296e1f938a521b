package org.climbwright.examples.benchmark;

import org.climbwright.airspeed.AirspeedArrays;
import org.climbwright.airspeed.AirspeedConversion;
import org.climbwright.airspeed.TotalTemperature;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.OperationsPerInvocation;

/** Airspeeds against the same by hand. */
public final class AirspeedBenchmark {
    private AirspeedBenchmark() {}

    /** Mach number. */
    @Line("CAS → Mach")
    @OperationsPerInvocation(Batch.SIZE)
    public static class MachFromCas {
        /** By hand. */
        @Benchmark
        public void byHand(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                batch.results[0][i] = ByHand.machOfCas(batch.casMps[i], batch.pressurePa[i]);
            }
        }

        /** By hand, the same on every machine. */
        @Benchmark
        public void strictMath(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                batch.results[0][i] =
                        ByHandStrictly.machOfCas(batch.casMps[i], batch.pressurePa[i]);
            }
        }

        /** Ours, one by one. */
        @Benchmark
        public void scalar(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                batch.results[0][i] =
                        AirspeedConversion.machFromCas(batch.casMps[i], batch.pressurePa[i]);
            }
        }

        /** Ours, over arrays. */
        @Benchmark
        public void bulk(Batch batch) {
            AirspeedArrays.machFromCas(
                    batch.casMps, batch.pressurePa, batch.results[0], 0, Batch.SIZE);
        }
    }

    /** Mach number and true airspeed. */
    @Line(value = "CAS → Mach and TAS", bar = 30, aim = 35)
    @OperationsPerInvocation(Batch.SIZE)
    public static class MachAndTasFromCas {
        /** By hand. */
        @Benchmark
        public void byHand(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                double mach = ByHand.machOfCas(batch.casMps[i], batch.pressurePa[i]);
                batch.results[0][i] = mach;
                batch.results[1][i] = ByHand.tasOfMach(mach, batch.temperatureK[i]);
            }
        }

        /** By hand, the same on every machine. */
        @Benchmark
        public void strictMath(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                double mach = ByHandStrictly.machOfCas(batch.casMps[i], batch.pressurePa[i]);
                batch.results[0][i] = mach;
                batch.results[1][i] = ByHandStrictly.tasOfMach(mach, batch.temperatureK[i]);
            }
        }

        /** Ours, one by one. */
        @Benchmark
        public void scalar(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                double mach = AirspeedConversion.machFromCas(batch.casMps[i], batch.pressurePa[i]);
                batch.results[0][i] = mach;
                batch.results[1][i] = AirspeedConversion.tasFromMach(mach, batch.temperatureK[i]);
            }
        }

        /** Ours, over arrays. */
        @Benchmark
        public void bulk(Batch batch) {
            AirspeedArrays.machFromCas(
                    batch.casMps, batch.pressurePa, batch.results[0], 0, Batch.SIZE);
            AirspeedArrays.tasFromMach(
                    batch.results[0], batch.temperatureK, batch.results[1], 0, Batch.SIZE);
        }
    }

    /** Calibrated airspeed. */
    @Line(value = "Mach → CAS", bar = 30, aim = 35)
    @OperationsPerInvocation(Batch.SIZE)
    public static class CasFromMach {
        /** By hand. */
        @Benchmark
        public void byHand(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                batch.results[0][i] = ByHand.casOfMach(batch.mach[i], batch.pressurePa[i]);
            }
        }

        /** By hand, the same on every machine. */
        @Benchmark
        public void strictMath(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                batch.results[0][i] = ByHandStrictly.casOfMach(batch.mach[i], batch.pressurePa[i]);
            }
        }

        /** Ours, one by one. */
        @Benchmark
        public void scalar(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                batch.results[0][i] =
                        AirspeedConversion.casFromMach(batch.mach[i], batch.pressurePa[i]);
            }
        }

        /** Ours, over arrays. */
        @Benchmark
        public void bulk(Batch batch) {
            AirspeedArrays.casFromMach(
                    batch.mach, batch.pressurePa, batch.results[0], 0, Batch.SIZE);
        }
    }

    /** Equivalent airspeed. */
    @Line("Mach → EAS")
    @OperationsPerInvocation(Batch.SIZE)
    public static class EasFromMach {
        /** By hand. */
        @Benchmark
        public void byHand(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                batch.results[0][i] = ByHand.easOfMach(batch.mach[i], batch.pressurePa[i]);
            }
        }

        /** By hand, the same on every machine. */
        @Benchmark
        public void strictMath(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                batch.results[0][i] = ByHandStrictly.easOfMach(batch.mach[i], batch.pressurePa[i]);
            }
        }

        /** Ours, one by one. */
        @Benchmark
        public void scalar(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                batch.results[0][i] =
                        AirspeedConversion.easFromMach(batch.mach[i], batch.pressurePa[i]);
            }
        }

        /** Ours, over arrays. */
        @Benchmark
        public void bulk(Batch batch) {
            AirspeedArrays.easFromMach(
                    batch.mach, batch.pressurePa, batch.results[0], 0, Batch.SIZE);
        }
    }

    /** Mach number beyond 1. */
    @Line(value = "supersonic impact pressure → Mach", bar = 300, aim = 600)
    @OperationsPerInvocation(Batch.SIZE)
    public static class MachFromPitot {
        /** By hand. */
        @Benchmark
        public void byHand(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                batch.results[0][i] =
                        ByHand.machOfPitot(
                                batch.supersonicImpactPressurePa[i], batch.pressurePa[i]);
            }
        }

        /** By hand, the same on every machine. */
        @Benchmark
        public void strictMath(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                batch.results[0][i] =
                        ByHandStrictly.machOfPitot(
                                batch.supersonicImpactPressurePa[i], batch.pressurePa[i]);
            }
        }

        /** Ours, one by one. */
        @Benchmark
        public void scalar(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                batch.results[0][i] =
                        AirspeedConversion.machFromImpactPressure(
                                batch.supersonicImpactPressurePa[i], batch.pressurePa[i]);
            }
        }

        /** Ours, over arrays. */
        @Benchmark
        public void bulk(Batch batch) {
            AirspeedArrays.machFromImpactPressure(
                    batch.supersonicImpactPressurePa,
                    batch.pressurePa,
                    batch.results[0],
                    0,
                    Batch.SIZE);
        }
    }

    /** Total air temperature. */
    @Line("Mach → total temperature")
    @OperationsPerInvocation(Batch.SIZE)
    public static class TotalTemperatureFromMach {
        /** By hand. */
        @Benchmark
        public void byHand(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                batch.results[0][i] = ByHand.totalTemperature(batch.mach[i], batch.temperatureK[i]);
            }
        }

        /** By hand, the same on every machine. */
        @Benchmark
        public void strictMath(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                batch.results[0][i] =
                        ByHandStrictly.totalTemperature(batch.mach[i], batch.temperatureK[i]);
            }
        }

        /** Ours, one by one. */
        @Benchmark
        public void scalar(Batch batch) {
            for (int i = 0; i < Batch.SIZE; i++) {
                batch.results[0][i] =
                        TotalTemperature.fromMach(batch.mach[i], batch.temperatureK[i], 1.0);
            }
        }

        /** Ours, over arrays. */
        @Benchmark
        public void bulk(Batch batch) {
            AirspeedArrays.recoveryTemperatureFromMach(
                    batch.mach, batch.temperatureK, 1.0, batch.results[0], 0, Batch.SIZE);
        }
    }
}
