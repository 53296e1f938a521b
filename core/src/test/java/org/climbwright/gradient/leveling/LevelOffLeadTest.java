package org.climbwright.gradient.leveling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.GeometricRate;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The lead of a level-off")
class LevelOffLeadTest {
    /** Half the last digit of eight. */
    private static final double EIGHT_DIGITS = 5e-8;

    private static GeometricRate rate(double feetPerMinute) {
        return GeometricRate.ofFeetPerMinute(feetPerMinute);
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/gradient/level-off-lead.csv", useHeadersInDisplayName = true)
    @DisplayName("is that of the table by 10 % and by 0.05 g, with deceleration and time")
    void agreesWithTheTable(
            double feetPerMinute,
            double leadFeet,
            double decelerationMps2,
            double loadFactorChange,
            double seconds,
            double leadFor005Feet) {
        GeometricRate rate = rate(feetPerMinute);
        LevelOffLead lead = LevelOffLead.tenPercent();
        assertThat(lead.height(rate).inFeet()).isCloseTo(leadFeet, within(1e-9));
        assertThat(lead.decelerationMps2(rate.inMetresPerSecond()))
                .isCloseTo(decelerationMps2, within(EIGHT_DIGITS * decelerationMps2 * 2));
        assertThat(lead.loadFactorChange(rate))
                .isCloseTo(loadFactorChange, within(EIGHT_DIGITS * loadFactorChange * 5));
        assertThat(lead.time(rate).toNanos() / 1e9).isCloseTo(seconds, within(1e-9));
        LevelOffLead gentle = LevelOffLead.ofLoadFactorChange(0.05);
        assertThat(gentle.height(rate).inFeet())
                .isCloseTo(leadFor005Feet, within(EIGHT_DIGITS * leadFor005Feet * 5));
        assertThat(gentle.loadFactorChange(rate)).isCloseTo(0.05, within(1e-16));
    }

    @Test
    @DisplayName("has 7 rows in the table, and 5 printed ones")
    void rows() {
        assertThat(Table.rows("/gradient/level-off-lead.csv")).hasSize(7);
        assertThat(Table.rows("/gradient/level-off-printed-leads.csv")).hasSize(5);
    }

    @ParameterizedTest(name = "{0}, {1}: {2}")
    @CsvFileSource(
            resources = "/gradient/level-off-printed-leads.csv",
            useHeadersInDisplayName = true)
    @DisplayName("is as printed, up and down")
    void isAsPrinted(double feetPerMinute, double percent, double leadFeet, String source) {
        assertThat(LevelOffLead.ofPercentOfRate(percent).height(rate(feetPerMinute)).inFeet())
                .as(source)
                .isCloseTo(leadFeet, within(1e-9));
    }

    @Test
    @DisplayName("by 10 % is felt four times as much at 4,000 as at 1,000 ft/min")
    void isFeltMoreWithTheRate() {
        LevelOffLead lead = LevelOffLead.tenPercent();
        assertThat(lead.loadFactorChange(rate(1000))).isCloseTo(0.043, within(0.0005));
        assertThat(lead.loadFactorChange(rate(4000))).isCloseTo(0.17, within(0.005));
        assertThat(lead.loadFactorChange(rate(4000)) / lead.loadFactorChange(rate(1000)))
                .isCloseTo(4.0, within(1e-14));
    }

    @Test
    @DisplayName("of 500 ft is 152.4 m, and five flight levels")
    void flightLevels() {
        // eAIP Bosnia and Herzegovina ENR 1.7: flight levels 500 ft (152.4 m) apart
        AltitudeChange interval =
                PressureAltitude.ofFlightLevel(105).minus(PressureAltitude.ofFlightLevel(100));
        assertThat(interval.inFeet()).isCloseTo(500.0, within(1e-9));
        assertThat(interval.inMetres()).isCloseTo(152.4, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, -1.0, 0.0, 1e9})
    @DisplayName("is refused for a share or a deceleration that levels nothing off")
    void refuses(double value) {
        assertThatThrownBy(() -> LevelOffLead.ofPercentOfRate(value))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageContaining("percent of the rate must be from 0.1 to 200.0 %");
        assertThatThrownBy(() -> LevelOffLead.ofDeceleration(value))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageContaining("vertical deceleration must be from 0.001 to 50.0 m/s2");
        assertThatThrownBy(() -> LevelOffLead.ofLoadFactorChange(value))
                .isInstanceOf(OutsideModelException.class);
        assertThat(LevelOff.coversPercent(5.0, value)).isFalse();
        assertThat(LevelOff.coversReduction(5.0, 0.0, value)).isFalse();
    }

    @Test
    @DisplayName("is refused for a rate that is to grow")
    void refusesGrowth() {
        assertThat(LevelOff.coversReduction(5.0, 5.0, 0.5)).isTrue();
        assertThat(LevelOff.coversReduction(5.0, 5.1, 0.5)).isFalse();
        assertThat(LevelOff.coversReduction(-5.0, 0.0, 0.5)).isFalse();
        assertThat(LevelOff.heightToReduce(5.0, 5.0, 0.5)).isZero();
        assertThatThrownBy(() -> LevelOff.heightToReduce(5.0, 5.1, 0.5))
                .isInstanceOf(OutsideModelException.class)
                .hasMessage(
                        "rate to reduce to must be from 0.0 to 5.0 m/s, but was 5.1 m/s: it is not"
                                + " a reduction");
        assertThatThrownBy(() -> LevelOff.leadByPercent(Double.NaN, 10.0))
                .isInstanceOf(OutsideModelException.class);
    }
}
