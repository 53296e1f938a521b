package org.climbwright.examples.benchmark;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("The questions of the benchmarks")
class QuestionsTest {
    static Stream<Class<?>> all() {
        return Questions.alike().stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("all")
    @DisplayName("are answered alike in every way")
    void areAnsweredAlike(Class<?> question) throws ReflectiveOperationException {
        SameAnswers.check(question);
    }

    @Test
    @DisplayName("all have their line in the record")
    void allHaveTheirLine() {
        Stream<Class<?>> written =
                Stream.of(
                                StandardAirBenchmark.class,
                                AirspeedBenchmark.class,
                                FrameBenchmark.class,
                                TypedBenchmark.class,
                                UnitBenchmark.class,
                                CabinBenchmark.class,
                                ClimbProfileBenchmark.class)
                        .<Class<?>>flatMap(room -> Arrays.stream(room.getDeclaredClasses()))
                        .filter(question -> question.isAnnotationPresent(Line.class));
        List<Class<?>> asked = Questions.all();
        assertThat(written).containsExactlyInAnyOrderElementsOf(asked);
    }
}
