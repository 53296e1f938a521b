package org.climbwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * The refused line differs from its twin in the mistake alone, so that what stops the compiler is
 * the mistake: it is asked for its reason too.
 */
@DisplayName("The compiler stops who hands in")
class MustNotCompileTest {
    private static final String AROUND =
            """
            import javax.measure.Quantity;
            import javax.measure.Unit;
            import org.climbwright.quantity.altitude.*;
            import org.climbwright.quantity.humidity.*;
            import org.climbwright.quantity.path.*;
            import org.climbwright.quantity.pressure.*;
            import org.climbwright.quantity.speed.*;
            import org.climbwright.quantity.temperature.*;
            import org.climbwright.unit.AviationUnits;
            import tech.units.indriya.unit.Units;

            class Snippet {
                static void cruiseAt(TrueAirspeed tas) {}
                static void clearTheHillAt(GeometricAltitude altitude) {}
                static void balanceTheAirAt(GeopotentialAltitude altitude) {}
                static void setTheCabinTo(CabinAltitude altitude) {}
                static void warmTheAirBy(TemperatureDifference difference) {}
                static void warmTheDayBy(IsaDeviation deviation) {}
                static void meetTheRestrictionAt(GroundGradient gradient) {}
                static void clearTheHillWith(GeometricRate rate) {}
                static void setTheAltimeterTo(AltimeterSetting setting) {}
                static void formCloudAt(DewPoint dewPoint) {}
                static void growFrostAt(FrostPoint frostPoint) {}
                static void warmTheAirOverThePlaceBy(IsaDeviationAtAltitude deviation) {}
                static void moistenTo(RelativeHumidity humidity) {}
                static void mixIn(MixingRatio ratio) {}
                static void addTheVapourOf(VapourPressure pressure) {}
                static void pressuriseAt(CabinPressureRate rate) {}

                void line(
                        CalibratedAirspeed cas,
                        TrueAirspeed tas,
                        PressureAltitude level,
                        GeometricAltitude summit,
                        GeopotentialAltitude geopotential,
                        CabinAltitude cabin,
                        AltitudeChange change,
                        StaticAirTemperature air,
                        TemperatureDifference difference,
                        IsaDeviation deviation,
                        AirGradient throughAir,
                        GroundGradient overGround,
                        PressureAltitudeRate instrument,
                        GeometricRate overTheTerrain,
                        StaticPressure pressure,
                        AltimeterSetting qnh,
                        DewPoint dewPoint,
                        FrostPoint frostPoint,
                        IsaDeviationAtAltitude deviationAtAltitude,
                        VapourPressure vapour,
                        RelativeHumidity humidity,
                        MixingRatio mixingRatio,
                        CabinPressureRate cabinRate) {
                    LINE
                }
            }
            """;

    @ParameterizedTest(name = "{0}: {1}")
    @CsvFileSource(resources = "/must-not-compile.csv", useHeadersInDisplayName = true)
    @DisplayName("what belongs elsewhere, such as")
    void refuses(String mistake, String refused, String twin, String reason) throws IOException {
        assertThat(errorsOf(twin)).as("the twin line compiles").isEmpty();
        assertThat(errorsOf(refused)).singleElement().asString().startsWith(reason + ":");
    }

    private static List<String> errorsOf(String line) throws IOException {
        return JavaSnippet.compile("Snippet", AROUND.replace("LINE", line)).errors();
    }
}
