package org.climbwright.sounding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.climbwright.atmosphere.MoistAir;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The vapour pressure of a derived file, its temperature rounded to 0.1 K,")
class LevelCheckTest {
    private static final double TEMPERATURE_K = 272.9;
    private final List<ReadingProblem> problems = new ArrayList<>();

    @Test
    @DisplayName("is that of saturated air when it is above saturation by the rounding only")
    void saturated() {
        assertThat(dewPoint(TEMPERATURE_K + 0.05)).isEqualTo(TEMPERATURE_K);
        assertThat(problems).isEmpty();
    }

    @Test
    @DisplayName("is its own below saturation")
    void unsaturated() {
        assertThat(dewPoint(TEMPERATURE_K - 1.0)).isCloseTo(TEMPERATURE_K - 1.0, within(1e-6));
        assertThat(problems).isEmpty();
    }

    @Test
    @DisplayName("is refused farther above saturation")
    void supersaturated() {
        assertThat(dewPoint(TEMPERATURE_K + 0.2)).isNaN();
        assertThat(problems)
                .containsExactly(
                        new ReadingProblem(
                                7,
                                "VAPPRESS",
                                "6000",
                                "a dew point above the temperature; taken as missing"));
    }

    private double dewPoint(double saturatedAtK) {
        LevelCheck check = new LevelCheck(new SourceLine(7, "the line", problems));
        return check.dewPointOfVapour(
                new Field("VAPPRESS", "6000", 6000.0),
                MoistAir.saturationVapourPressure(saturatedAtK),
                TEMPERATURE_K,
                100000.0);
    }
}
