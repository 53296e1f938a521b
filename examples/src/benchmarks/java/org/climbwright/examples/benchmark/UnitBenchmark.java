package org.climbwright.examples.benchmark;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.unit.AviationUnits;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** What a unit of javax.measure costs where a value enters or leaves. */
public final class UnitBenchmark {
    private UnitBenchmark() {}

    /** Quantities that somebody else has made. */
    @State(Scope.Thread)
    public static class UnitBatch {
        final List<Quantity<Speed>> knots = new ArrayList<>(Batch.SIZE);
        final List<Quantity<Length>> feet = new ArrayList<>(Batch.SIZE);
        final List<Quantity<Temperature>> celsius = new ArrayList<>(Batch.SIZE);

        final Unit<Speed> onlyEqual = Units.METRE.divide(Units.SECOND).asType(Speed.class);

        /** Makes them of the batch that all benchmarks share. */
        public UnitBatch() {
            Batch batch = new Batch();
            for (int i = 0; i < Batch.SIZE; i++) {
                knots.add(Quantities.getQuantity(batch.casKnots[i], AviationUnits.KNOT));
                feet.add(Quantities.getQuantity(batch.altitudeM[i] / 0.3048, AviationUnits.FOOT));
                celsius.add(
                        Quantities.getQuantity(
                                batch.temperatureK[i] - 273.15, AviationUnits.CELSIUS));
            }
        }
    }

    /** By the name of the method. */
    @Line("CAS.ofKnots(double), for comparison")
    @OperationsPerInvocation(Batch.SIZE)
    public static class NamedKnots {
        /** Into SI or out of it. */
        @Benchmark
        public double typed(Batch batch) {
            double sum = 0.0;
            for (int i = 0; i < Batch.SIZE; i++) {
                sum += CalibratedAirspeed.ofKnots(batch.casKnots[i]).inMetresPerSecond();
            }
            return sum;
        }
    }

    /** By a unit of the trade. */
    @Line(value = "CAS.of(double, KNOT)", bar = 35, aim = 12)
    @OperationsPerInvocation(Batch.SIZE)
    public static class NumberInKnots {
        /** Into SI or out of it. */
        @Benchmark
        public double typed(Batch batch) {
            double sum = 0.0;
            for (int i = 0; i < Batch.SIZE; i++) {
                sum +=
                        CalibratedAirspeed.of(batch.casKnots[i], AviationUnits.KNOT)
                                .inMetresPerSecond();
            }
            return sum;
        }
    }

    /** By a quantity. */
    @Line(value = "CAS.of(Quantity in KNOT)", bar = 35, aim = 12)
    @OperationsPerInvocation(Batch.SIZE)
    public static class QuantityInKnots {
        /** Into SI or out of it. */
        @Benchmark
        public double typed(UnitBatch units) {
            double sum = 0.0;
            for (int i = 0; i < Batch.SIZE; i++) {
                sum += CalibratedAirspeed.of(units.knots.get(i)).inMetresPerSecond();
            }
            return sum;
        }
    }

    /** By a quantity. */
    @Line(value = "PressureAltitude.of(Quantity in FOOT)", bar = 35, aim = 12)
    @OperationsPerInvocation(Batch.SIZE)
    public static class QuantityInFeet {
        /** Into SI or out of it. */
        @Benchmark
        public double typed(UnitBatch units) {
            double sum = 0.0;
            for (int i = 0; i < Batch.SIZE; i++) {
                sum += PressureAltitude.of(units.feet.get(i)).inMetres();
            }
            return sum;
        }
    }

    /** By a quantity on a shifted scale. */
    @Line(value = "StaticAirTemperature.of(Quantity in CELSIUS)", bar = 35, aim = 12)
    @OperationsPerInvocation(Batch.SIZE)
    public static class QuantityInCelsius {
        /** Into SI or out of it. */
        @Benchmark
        public double typed(UnitBatch units) {
            double sum = 0.0;
            for (int i = 0; i < Batch.SIZE; i++) {
                sum += StaticAirTemperature.of(units.celsius.get(i)).inKelvins();
            }
            return sum;
        }
    }

    /** By a unit with a shifted scale. */
    @Line(value = "StaticAirTemperature.of(double, CELSIUS)", bar = 35, aim = 12)
    @OperationsPerInvocation(Batch.SIZE)
    public static class NumberInCelsius {
        /** Into SI or out of it. */
        @Benchmark
        public double typed(Batch batch) {
            double sum = 0.0;
            for (int i = 0; i < Batch.SIZE; i++) {
                sum +=
                        StaticAirTemperature.of(
                                        batch.temperatureK[i] - 273.15, AviationUnits.CELSIUS)
                                .inKelvins();
            }
            return sum;
        }
    }

    /** The way out. */
    @Line(value = "CAS.valueIn(KNOT)", bar = 35, aim = 12)
    @OperationsPerInvocation(Batch.SIZE)
    public static class ValueInKnots {
        /** Into SI or out of it. */
        @Benchmark
        public double typed(Batch batch) {
            double sum = 0.0;
            for (int i = 0; i < Batch.SIZE; i++) {
                sum +=
                        CalibratedAirspeed.ofMetresPerSecond(batch.casMps[i])
                                .valueIn(AviationUnits.KNOT);
            }
            return sum;
        }
    }

    /** Through the general converter. */
    @Line("CAS.of(double, a unit that is only equal)")
    @OperationsPerInvocation(Batch.SIZE)
    public static class NumberInEqualUnit {
        /** Into SI or out of it. */
        @Benchmark
        public double typed(Batch batch, UnitBatch units) {
            double sum = 0.0;
            for (int i = 0; i < Batch.SIZE; i++) {
                sum += CalibratedAirspeed.of(batch.casMps[i], units.onlyEqual).inMetresPerSecond();
            }
            return sum;
        }
    }
}
