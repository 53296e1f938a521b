package org.climbwright.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.util.List;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.gradient.leveling.LevelOffRule;
import org.climbwright.icing.IcingRule;
import org.climbwright.icing.ProtectedPart;
import org.climbwright.icing.VisibleMoisture;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.humidity.RelativeHumidity;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.PressureAltitudeRate;
import org.climbwright.quantity.temperature.TemperatureDifference;
import org.climbwright.sounding.Sounding;
import org.climbwright.sounding.Soundings;
import org.climbwright.testing.Streams;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A working")
class WorkingTest {
    private static final WorkingInput WAY = new WorkingInput("way", "s", -3.0, "m", "-3 m", "a|b");
    private static final WorkingInput TIME = new WorkingInput("time", "t", 2.0, "s", "2 s", "");

    private static WorkingStep speed(String symbol, String formula) {
        return new WorkingStep("Speed", symbol, formula, -1.5, "m/s", "-1.5 m/s", "definition");
    }

    private static Working of(List<WorkingInput> inputs, List<WorkingStep> steps) {
        return new Working("How fast?", inputs, steps, List.of("So."), List.of("Not for ever."));
    }

    private static Working atLevel(double feet) {
        return AirspeedWorking.casToMachAndTas(
                CalibratedAirspeed.ofKnots(250),
                PressureAltitude.ofFeet(feet),
                Atmosphere.standard());
    }

    @Test
    @DisplayName("puts numbers for symbols, negative ones in brackets, and leaves functions alone")
    void numbersPutIn() {
        WorkingStep step = speed("v", "exp(s / t) + ln(t) · 2 - st0");
        Working working =
                of(
                        List.of(WAY, TIME, new WorkingInput("x", "st0", 1e-9, "", "", "")),
                        List.of(step));
        assertThat(working.numbersPutIn(step)).isEqualTo("exp((-3) / 2) + ln(2) · 2 - 0.000000001");
        assertThat(working.value("s")).isEqualTo(-3.0);
        assertThat(working.value("v")).isEqualTo(-1.5);
        assertThat(working).hasToString("How fast? So.");
    }

    @Test
    @DisplayName("keeps a bar in a name out of the columns of its table")
    void escapes() {
        assertThat(of(List.of(WAY), List.of()).toMarkdown())
                .contains("| way | -3 m | `s` | -3 m | a\\|b |\n");
    }

    @Test
    @DisplayName(
            "refuses a formula that names what is not known yet, and one symbol for two things")
    void refuses() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> of(List.of(WAY), List.of(speed("v", "s / t"))))
                .withMessage("the formula of v names t, which is neither given nor found before");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> of(List.of(WAY), List.of(speed("v", "v"))));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> of(List.of(WAY, TIME), List.of(speed("t", "s / t"))))
                .withMessage("each symbol of a working must stand for one thing, but t for two");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> of(List.of(WAY), List.of()).value("t"))
                .withMessage("no line of this working has the symbol t");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> of(List.of(WAY), List.of()).numbersPutIn(speed("v", "1")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "2a", "a b", "ln", "exp", "a·b"})
    @DisplayName("refuses a symbol that would not be one in a formula")
    void refusesSymbol(String symbol) {
        assertThatIllegalArgumentException().isThrownBy(() -> speed(symbol, "1"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new WorkingInput("way", symbol, 1.0, "m", "", ""));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    @DisplayName("refuses a value that is no number")
    void refusesValue(double value) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new WorkingInput("way", "s", value, "m", "", ""))
                .withMessageContaining("must be a finite number");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new WorkingStep("", "s", "1", value, "m", "", ""));
    }

    @Test
    @DisplayName("travels through a stream")
    void travels() throws IOException {
        Working working = atLevel(20000);
        assertThat(Streams.roundTrip(working)).isEqualTo(working);
    }

    @Test
    @DisplayName("whose printed formula is off by a part in a million million fails the check")
    void checkCanFail() {
        Working good = atLevel(30000);
        WorkingCheck.formulasGiveTheResults(good);
        List<WorkingStep> steps =
                good.steps().stream()
                        .map(
                                step ->
                                        new WorkingStep(
                                                step.what(),
                                                step.symbol(),
                                                step.formula()
                                                        .replace("287.05287", "287.0528700003"),
                                                step.value(),
                                                step.unit(),
                                                step.reading(),
                                                step.source()))
                        .toList();
        Working bad = of(good.inputs(), steps);
        assertThatExceptionOfType(AssertionError.class)
                .isThrownBy(() -> WorkingCheck.formulasGiveTheResults(bad));
    }

    @ParameterizedTest
    @CsvSource({"10999.999", "11000", "11000.001", "-5000", "20000"})
    @DisplayName("of standard air holds on both sides of the tropopause and at its ends")
    void layers(double metres) {
        WorkingCheck.holds(
                AirspeedWorking.casToMachAndTas(
                        CalibratedAirspeed.ofKnots(150),
                        PressureAltitude.ofMetres(metres),
                        Atmosphere.standard()));
    }

    @Test
    @DisplayName("is refused above 20 km, faster than sound, and for a lead longer than the rule")
    void outside() {
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(
                        () ->
                                AirspeedWorking.casToMachAndTas(
                                        CalibratedAirspeed.ofKnots(60),
                                        PressureAltitude.ofFeet(66000),
                                        Atmosphere.standard()))
                .withMessageContaining("two lowest layers");
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(
                        () ->
                                AirspeedWorking.casToMachAndTas(
                                        CalibratedAirspeed.ofKnots(500),
                                        PressureAltitude.ofFeet(30000),
                                        Atmosphere.standard()))
                .withMessageContaining("without a shock");
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(
                        () ->
                                GradientWorking.levelOff(
                                        PressureAltitudeRate.ofFeetPerMinute(3000),
                                        LevelOffRule.tradeFigure(),
                                        100.0))
                .withMessageContaining("within the edge of the rule");
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(
                        () ->
                                AtmosphereWorking.twoMeaningsOfDeviation(
                                        TemperatureDifference.ofKelvins(20),
                                        PressureAltitude.ofFlightLevel(350)))
                .withMessageContaining("lowest layer");
        IcingRule bare =
                IcingRule.of(
                        ProtectedPart.ENGINE,
                        "ours",
                        VisibleMoisture.ofRelativeHumidity(RelativeHumidity.ofPercent(80)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> IcingWorking.totalOnStaticOff(bare, List.of()))
                .withMessageContaining("threshold of total air temperature");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "v01028_bjornoya_three_zero, 3",
        "v72659_aberdeen_warmnose, -1",
        "v11035_vienna_winter, -1"
    })
    @DisplayName("of a sounding has its levels of 0 °C to the last bit, and true formulas")
    void freezingLevels(String name, int count) {
        Sounding sounding = Soundings.profile(name);
        Working working = IcingWorking.freezingLevels(sounding);
        int found = sounding.freezingLevels().size();
        assertThat(working.steps()).hasSize(2 * found);
        if (count >= 0) {
            assertThat(found).isEqualTo(count);
        }
        for (int i = 0; i < found; i++) {
            assertThat(working.value("p" + (i + 1)))
                    .isEqualTo(sounding.freezingLevels().get(i).air().pressurePa());
        }
        WorkingCheck.holds(working);
    }
}
