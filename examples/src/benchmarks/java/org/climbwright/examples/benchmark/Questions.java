package org.climbwright.examples.benchmark;

import java.util.List;
import java.util.stream.Stream;

/** What is asked, in the order of the tables. */
final class Questions {
    /** Asked by hand, with StrictMath, and of us: one by one and over arrays. */
    static final List<Class<?>> AGAINST_BY_HAND =
            List.of(
                    StandardAirBenchmark.PressureFromAltitude.class,
                    StandardAirBenchmark.TemperatureFromAltitude.class,
                    StandardAirBenchmark.DensityFromAltitude.class,
                    StandardAirBenchmark.AirFromAltitude.class,
                    StandardAirBenchmark.AltitudeFromPressure.class,
                    StandardAirBenchmark.AltitudeFromDensity.class,
                    AirspeedBenchmark.MachFromCas.class,
                    AirspeedBenchmark.MachAndTasFromCas.class,
                    AirspeedBenchmark.CasFromMach.class,
                    AirspeedBenchmark.EasFromMach.class,
                    AirspeedBenchmark.MachFromPitot.class,
                    AirspeedBenchmark.TotalTemperatureFromMach.class,
                    FrameBenchmark.OverArrays.class,
                    FrameBenchmark.SixtyHertz.class);

    /** Asked of the typed way and of the SI functions. */
    static final List<Class<?>> TYPED_AGAINST_SI =
            List.of(
                    TypedBenchmark.MachFromCas.class,
                    TypedBenchmark.TasFromCas.class,
                    TypedBenchmark.CasFromMach.class,
                    TypedBenchmark.TotalTemperatureFromMach.class,
                    TypedBenchmark.AirFromAltitude.class,
                    TypedBenchmark.DensityAltitudeOfAir.class,
                    TypedBenchmark.Frame.class);

    /** Asked of the typed way alone. */
    static final List<Class<?>> UNITS =
            List.of(
                    UnitBenchmark.NamedKnots.class,
                    UnitBenchmark.NumberInKnots.class,
                    UnitBenchmark.QuantityInKnots.class,
                    UnitBenchmark.QuantityInFeet.class,
                    UnitBenchmark.NumberInCelsius.class,
                    UnitBenchmark.QuantityInCelsius.class,
                    UnitBenchmark.ValueInKnots.class,
                    UnitBenchmark.NumberInEqualUnit.class);

    /** Asked of a cabin, step by step. */
    static final List<Class<?>> CABIN =
            List.of(
                    CabinBenchmark.NoFailure.class,
                    CabinBenchmark.InflowLostIsothermal.class,
                    CabinBenchmark.InflowLostAdiabatic.class,
                    CabinBenchmark.HoleIsothermal.class,
                    CabinBenchmark.HoleAdiabatic.class);

    /** Asked of a whole climb, by both integrations. */
    static final List<Class<?>> PROFILE =
            List.of(
                    ClimbProfileBenchmark.Free.class,
                    ClimbProfileBenchmark.Restricted.class,
                    ClimbProfileBenchmark.InNewAir.class,
                    ClimbProfileBenchmark.Events.class);

    private Questions() {}

    static List<Class<?>> all() {
        return Stream.of(alike(), PROFILE).flatMap(List::stream).toList();
    }

    /** Those that every way answers with the same numbers; integrations agree less closely. */
    static List<Class<?>> alike() {
        return Stream.of(AGAINST_BY_HAND, TYPED_AGAINST_SI, UNITS, CABIN)
                .flatMap(List::stream)
                .toList();
    }

    /** The line of the record that a class stands for. */
    static Line line(Class<?> question) {
        Line line = question.getAnnotation(Line.class);
        if (line == null) {
            throw new IllegalStateException(question + " has no @Line");
        }
        return line;
    }
}
