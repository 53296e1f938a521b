package org.climbwright.sounding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;
import static org.climbwright.sounding.Level.hpa;
import static org.climbwright.sounding.Level.sounding;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.stream.Stream;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.quantity.temperature.TemperatureDifference;
import org.climbwright.sounding.surface.ReportElement;
import org.climbwright.sounding.surface.SurfaceReport;
import org.climbwright.sounding.surface.SurfaceReportReader;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("A record of soundings and reports")
class NullPartsTest {
    static Stream<Record> records() {
        Sounding sounding = sounding(hpa(1000).celsius(-5), hpa(900).celsius(5));
        SurfaceReport report = SurfaceReportReader.parse("LOWW 011200Z CAVOK Q1013");
        return Stream.of(
                sounding.warmLayers(StaticAirTemperature.ofCelsius(0)).get(0),
                sounding.inversions(TemperatureDifference.ofKelvins(1)).get(0),
                sounding.freezingLevels().get(0),
                SoundingReader.read(List.of()),
                SoundingReader.read(List.of()).problems().get(0),
                report.qnh().orElseThrow(),
                report.visibility().orElseThrow(),
                report.whyMissing(ReportElement.WIND).orElseThrow(),
                SurfaceReportReader.read(List.of()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("records")
    @DisplayName("takes no null, and names the part that is")
    void takesNoNull(Record complete) throws Throwable {
        RecordComponent[] components = complete.getClass().getRecordComponents();
        for (int i = 0; i < components.length; i++) {
            if (components[i].getType().isPrimitive()) {
                continue;
            }
            Object[] parts = parts(complete, components);
            parts[i] = null;
            assertThat(catchThrowable(() -> make(complete.getClass(), components, parts)))
                    .isInstanceOf(NullPointerException.class)
                    .hasMessage(components[i].getName());
        }
        assertThat(make(complete.getClass(), components, parts(complete, components)))
                .isEqualTo(complete);
    }

    private static Object[] parts(Record record, RecordComponent[] components)
            throws ReflectiveOperationException {
        Object[] parts = new Object[components.length];
        for (int i = 0; i < parts.length; i++) {
            parts[i] = components[i].getAccessor().invoke(record);
        }
        return parts;
    }

    private static Object make(Class<?> type, RecordComponent[] components, Object[] parts)
            throws Throwable {
        Constructor<?> constructor =
                type.getConstructor(
                        Stream.of(components)
                                .map(RecordComponent::getType)
                                .toArray(Class<?>[]::new));
        try {
            return constructor.newInstance(parts);
        } catch (InvocationTargetException thrown) {
            throw thrown.getCause();
        }
    }
}
