package org.climbwright.examples.benchmark;

import org.climbwright.airspeed.AirspeedConversion;
import org.climbwright.airspeed.Airspeeds;
import org.climbwright.airspeed.TotalTemperature;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.DryAir;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.OperationsPerInvocation;

/**
 * The typed way against the SI functions that it is one line over, checks and all, in loops that
 * keep no object.
 */
public final class TypedBenchmark {
    private TypedBenchmark() {}

    private static AirState air(Batch batch, int i) {
        return AirState.of(
                StaticPressure.ofPascals(batch.pressurePa[i]),
                StaticAirTemperature.ofKelvins(batch.temperatureK[i]));
    }

    /** Mach number. */
    @Line(value = "CAS → Mach", bar = 1.15)
    @OperationsPerInvocation(Batch.SIZE)
    public static class MachFromCas {
        /** SI doubles. */
        @Benchmark
        public double si(Batch batch) {
            double sum = 0.0;
            for (int i = 0; i < Batch.SIZE; i++) {
                sum += AirspeedConversion.machFromCas(batch.casMps[i], batch.pressurePa[i]);
            }
            return sum;
        }

        /** Values. */
        @Benchmark
        public double typed(Batch batch) {
            double sum = 0.0;
            for (int i = 0; i < Batch.SIZE; i++) {
                CalibratedAirspeed cas = CalibratedAirspeed.ofMetresPerSecond(batch.casMps[i]);
                sum += Airspeeds.from(cas, air(batch, i)).mach().number();
            }
            return sum;
        }
    }

    /** The same, told in knots. */
    @Line(value = "CAS in knots → Mach, TAS in knots", bar = 1.15)
    @OperationsPerInvocation(Batch.SIZE)
    public static class TasFromCas {
        /** SI doubles. */
        @Benchmark
        public double si(Batch batch) {
            double sum = 0.0;
            for (int i = 0; i < Batch.SIZE; i++) {
                double cas = batch.casKnots[i] * Batch.MPS_PER_KNOT;
                double mach = AirspeedConversion.machFromCas(cas, batch.pressurePa[i]);
                double tas = AirspeedConversion.tasFromMach(mach, batch.temperatureK[i]);
                sum += mach + tas / Batch.MPS_PER_KNOT;
            }
            return sum;
        }

        /** Values. */
        @Benchmark
        public double typed(Batch batch) {
            double sum = 0.0;
            for (int i = 0; i < Batch.SIZE; i++) {
                CalibratedAirspeed cas = CalibratedAirspeed.ofKnots(batch.casKnots[i]);
                Airspeeds speeds = Airspeeds.from(cas, air(batch, i));
                sum += speeds.mach().number() + speeds.trueAirspeed().inKnots();
            }
            return sum;
        }
    }

    /** Calibrated airspeed. */
    @Line(value = "Mach → CAS", bar = 1.15)
    @OperationsPerInvocation(Batch.SIZE)
    public static class CasFromMach {
        /** SI doubles. */
        @Benchmark
        public double si(Batch batch) {
            double sum = 0.0;
            for (int i = 0; i < Batch.SIZE; i++) {
                sum += AirspeedConversion.casFromMach(batch.mach[i], batch.pressurePa[i]);
            }
            return sum;
        }

        /** Values. */
        @Benchmark
        public double typed(Batch batch) {
            double sum = 0.0;
            for (int i = 0; i < Batch.SIZE; i++) {
                Airspeeds speeds = Airspeeds.from(Mach.of(batch.mach[i]), air(batch, i));
                sum += speeds.calibratedAirspeed().inMetresPerSecond();
            }
            return sum;
        }
    }

    /** Total air temperature. */
    @Line(value = "Mach → total temperature", bar = 1.15)
    @OperationsPerInvocation(Batch.SIZE)
    public static class TotalTemperatureFromMach {
        /** SI doubles. */
        @Benchmark
        public double si(Batch batch) {
            double sum = 0.0;
            for (int i = 0; i < Batch.SIZE; i++) {
                sum += TotalTemperature.fromMach(batch.mach[i], batch.temperatureK[i], 1.0);
            }
            return sum;
        }

        /** Values. */
        @Benchmark
        public double typed(Batch batch) {
            double sum = 0.0;
            for (int i = 0; i < Batch.SIZE; i++) {
                Airspeeds speeds = Airspeeds.from(Mach.of(batch.mach[i]), air(batch, i));
                sum += speeds.totalAirTemperature().inKelvins();
            }
            return sum;
        }
    }

    /**
     * Pressure, and what standard air has at that pressure: so its deviation is 0 to the last bit.
     */
    @Line(value = "standard air at a pressure altitude: p, altitude and T of p", bar = 1.15)
    @OperationsPerInvocation(Batch.SIZE)
    public static class AirFromAltitude {
        /** SI doubles. */
        @Benchmark
        public double si(Batch batch) {
            double sum = 0.0;
            for (int i = 0; i < Batch.SIZE; i++) {
                double pressure = StandardAir.pressureFromAltitude(batch.altitudeM[i]);
                double altitude = StandardAir.altitudeFromPressure(pressure);
                sum += pressure + StandardAir.temperatureFromAltitude(altitude);
            }
            return sum;
        }

        /** Values. */
        @Benchmark
        public double typed(Batch batch) {
            Atmosphere standard = Atmosphere.standard();
            double sum = 0.0;
            for (int i = 0; i < Batch.SIZE; i++) {
                AirState air = standard.at(PressureAltitude.ofMetres(batch.altitudeM[i]));
                sum += air.pressurePa() + air.temperatureK();
            }
            return sum;
        }
    }

    /** Density altitude. */
    @Line(value = "density altitude of p and T", bar = 1.15)
    @OperationsPerInvocation(Batch.SIZE)
    public static class DensityAltitudeOfAir {
        /** SI doubles. */
        @Benchmark
        public double si(Batch batch) {
            double sum = 0.0;
            for (int i = 0; i < Batch.SIZE; i++) {
                sum +=
                        StandardAir.altitudeFromDensity(
                                DryAir.density(batch.pressurePa[i], batch.temperatureK[i]));
            }
            return sum;
        }

        /** Values. */
        @Benchmark
        public double typed(Batch batch) {
            double sum = 0.0;
            for (int i = 0; i < Batch.SIZE; i++) {
                sum += air(batch, i).densityAltitude().inMetres();
            }
            return sum;
        }
    }

    /** All of {@link FrameBenchmark.SixtyHertz} but its first step and its last. */
    @Line(
            value = "frame of p, T and CAS: all speeds, total temperature, density altitude",
            bar = 1.15)
    @OperationsPerInvocation(Batch.SIZE)
    public static class Frame {
        /** SI doubles. */
        @Benchmark
        public double si(Batch batch) {
            double sum = 0.0;
            for (int i = 0; i < Batch.SIZE; i++) {
                double pressure = batch.pressurePa[i];
                double temperature = batch.temperatureK[i];
                double mach = AirspeedConversion.machFromCas(batch.casMps[i], pressure);
                sum +=
                        mach
                                + AirspeedConversion.easFromMach(mach, pressure)
                                + AirspeedConversion.tasFromMach(mach, temperature)
                                + TotalTemperature.fromMach(mach, temperature, 1.0)
                                + StandardAir.altitudeFromDensity(
                                        DryAir.density(pressure, temperature));
            }
            return sum;
        }

        /** Values. */
        @Benchmark
        public double typed(Batch batch) {
            double sum = 0.0;
            for (int i = 0; i < Batch.SIZE; i++) {
                AirState air = air(batch, i);
                CalibratedAirspeed cas = CalibratedAirspeed.ofMetresPerSecond(batch.casMps[i]);
                Airspeeds speeds = Airspeeds.from(cas, air);
                sum +=
                        speeds.mach().number()
                                + speeds.equivalentAirspeed().inMetresPerSecond()
                                + speeds.trueAirspeed().inMetresPerSecond()
                                + speeds.totalAirTemperature().inKelvins()
                                + air.densityAltitude().inMetres();
            }
            return sum;
        }
    }
}
