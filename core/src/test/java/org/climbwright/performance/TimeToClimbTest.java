package org.climbwright.performance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.PressureAltitudeRate;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The time of a climb")
class TimeToClimbTest {
    private static final double[] ALTITUDES = {0.0, 1000.0, 3000.0};
    private static final double[] RATES = {8.0, 6.0, 2.0};

    @ParameterizedTest(name = "{0}: {1} ft/min")
    @CsvFileSource(resources = "/performance/service-ceilings.csv", useHeadersInDisplayName = true)
    @DisplayName("ends at a service ceiling, of which there are three definitions")
    void serviceCeilings(String aeroplane, double feetPerMinute, String source) {
        assertThat(source).isNotBlank();
        double rate =
                switch (aeroplane) {
                    case "propeller" -> TimeToClimb.PROPELLER_RATE_MPS;
                    case "jet" -> TimeToClimb.JET_RATE_MPS;
                    default -> TimeToClimb.ENGINE_OUT_RATE_MPS;
                };
        assertThat(rate).isCloseTo(feetPerMinute * 0.3048 / 60.0, within(1e-15));
        double ceiling = TimeToClimb.altitudeOfRate(12000.0, 15.0, rate);
        assertThat(15.0 * (1.0 - ceiling / 12000.0)).isCloseTo(rate, within(1e-13));
    }

    @Test
    @DisplayName("has three rows of ceilings")
    void rows() {
        assertThat(Table.rows("/performance/service-ceilings.csv")).hasSize(3);
    }

    @Test
    @DisplayName("to the absolute ceiling has no end, and is refused in a clear sentence")
    void absoluteCeiling() {
        assertThatThrownBy(() -> TimeToClimb.linear(5000.0, 6.0, 0.0, 5000.0))
                .isInstanceOf(OutsideModelException.class)
                .hasMessage(
                        "altitude to climb to must be from 0.0 to 4999.999999999999 m, but was"
                                + " 5000.0 m: the absolute ceiling is never reached: the rate falls"
                                + " with what is left to climb");
        assertThat(TimeToClimb.coversLinear(5000.0, 6.0, 0.0, 5000.0)).isFalse();
        // each tenth of what was left takes as long as the one before
        double nine = TimeToClimb.linear(5000.0, 6.0, 0.0, 4500.0);
        assertThat(TimeToClimb.linear(5000.0, 6.0, 4500.0, 4950.0))
                .isCloseTo(nine, within(1e-9 * nine));
        assertThat(TimeToClimb.linear(5000.0, 6.0, 4950.0, 4995.0))
                .isCloseTo(nine, within(1e-9 * nine));
    }

    @Test
    @DisplayName("by a table that ends in no rate is refused")
    void tableToTheCeiling() {
        assertThatThrownBy(
                        () ->
                                TimeToClimb.tabulated(
                                        ALTITUDES, new double[] {8.0, 6.0, 0.0}, 0.0, 3000.0))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageContaining("rate of climb must be from 1.0E-6")
                .hasMessageContaining("at no rate nothing is reached");
    }

    @Test
    @DisplayName("by the mean of all rates of a table of eleven rows is 4.3 % too short")
    void meanOfTheEnds() {
        double right = WorkedExamples.ANSWERS.get("W08-10").getAsDouble();
        double wrong = 2.0 * 10000.0 / (925.0 + 440.0);
        assertThat(wrong).isCloseTo(14.652015, within(1e-6));
        assertThat(wrong / right - 1.0).isCloseTo(-0.043, within(0.0005));
    }

    @Test
    @DisplayName("by a table is that of its straight lines, wherever it begins and ends")
    void table() {
        double whole = TimeToClimb.tabulated(ALTITUDES, RATES, 0.0, 3000.0);
        // both lines lie on one: the rate is 8 m/s less 0.002 1/s of altitude
        assertThat(whole)
                .isCloseTo(TimeToClimb.linear(4000.0, 8.0, 0.0, 3000.0), within(1e-11 * whole));
        double parts =
                TimeToClimb.tabulated(ALTITUDES, RATES, 0.0, 1700.0)
                        + TimeToClimb.tabulated(ALTITUDES, RATES, 1700.0, 3000.0);
        assertThat(parts).isCloseTo(whole, within(1e-11 * whole));
        assertThat(TimeToClimb.tabulated(ALTITUDES, RATES, 500.0, 500.0)).isZero();
    }

    @Test
    @DisplayName("in typed values is that in doubles")
    void typed() {
        Duration time =
                TimeToClimb.linear(
                        PressureAltitude.ofMetres(5000),
                        PressureAltitudeRate.ofMetresPerSecond(6),
                        PressureAltitude.ofMetres(3000));
        assertThat(time.toNanos() / 1e9)
                .isCloseTo(TimeToClimb.linear(5000.0, 6.0, 0.0, 3000.0), within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, -1.0, 3000.1, Double.POSITIVE_INFINITY})
    @DisplayName("is refused where the climb ends outside the table")
    void endsOutside(double toM) {
        assertThat(TimeToClimb.coversTable(ALTITUDES, RATES, 0.0, toM)).isFalse();
        assertThatThrownBy(() -> TimeToClimb.tabulated(ALTITUDES, RATES, 0.0, toM))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageContaining("altitude to climb to");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, -1.0, 3000.1})
    @DisplayName("is refused where the climb begins outside the table")
    void beginsOutside(double fromM) {
        assertThat(TimeToClimb.coversTable(ALTITUDES, RATES, fromM, 3000.0)).isFalse();
        assertThatThrownBy(() -> TimeToClimb.tabulated(ALTITUDES, RATES, fromM, 3000.0))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageContaining("altitude to climb from");
    }

    @Test
    @DisplayName("is refused for a table that is none")
    void noTable() {
        double[] one = {0.0};
        double[] falling = {0.0, 2000.0, 1000.0};
        assertThat(TimeToClimb.coversTable(one, one, 0.0, 0.0)).isFalse();
        assertThat(TimeToClimb.coversTable(ALTITUDES, one, 0.0, 0.0)).isFalse();
        assertThat(TimeToClimb.coversTable(falling, RATES, 0.0, 0.0)).isFalse();
        assertThat(TimeToClimb.coversTable(ALTITUDES, RATES, 0.0, 3000.0)).isTrue();
        assertThatThrownBy(() -> TimeToClimb.tabulated(one, one, 0.0, 0.0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("two rows");
        assertThatThrownBy(() -> TimeToClimb.tabulated(falling, RATES, 0.0, 0.0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the altitudes of a table must rise, but row 3 had 1000.0 m");
    }

    @Test
    @DisplayName(
            "and the altitude of a rate are refused outside their ranges, as the predicates say")
    void outside() {
        assertThat(TimeToClimb.coversRate(5000.0, 6.0, 6.1)).isFalse();
        assertThat(TimeToClimb.coversRate(5000.0, 6.0, 6.0)).isTrue();
        assertThatThrownBy(() -> TimeToClimb.altitudeOfRate(5000.0, 6.0, 6.1))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageContaining("rate left must be from 0.0 to 6.0 m/s, but was 6.1 m/s");
        assertThat(TimeToClimb.coversRates(0.0, 1.0)).isFalse();
        assertThatThrownBy(() -> TimeToClimb.logarithmicMean(0.0, 1.0))
                .isInstanceOf(OutsideModelException.class);
        assertThat(TimeToClimb.coversLinear(5000.0, 0.0, 0.0, 1.0)).isFalse();
        assertThatThrownBy(() -> TimeToClimb.linear(5000.0, 0.0, 0.0, 1.0))
                .isInstanceOf(OutsideModelException.class);
    }
}
