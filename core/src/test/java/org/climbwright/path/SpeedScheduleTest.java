package org.climbwright.path;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("A speed schedule")
class SpeedScheduleTest {
    private static final String TABLE = "/path/crossover.csv";

    @ParameterizedTest(name = "{0}, {1} cross at {2}")
    @CsvFileSource(resources = TABLE, useHeadersInDisplayName = true)
    @DisplayName("crosses from calibrated airspeed to Mach where the table says")
    void crossover(double knots, double mach, double feet, String source) {
        SpeedSchedule schedule = SpeedSchedule.of(CalibratedAirspeed.ofKnots(knots), Mach.of(mach));
        // half a unit of the ninth digit that the table gives
        assertThat(schedule.crossover().orElseThrow().inFeet())
                .isCloseTo(feet, within(0.5e-4))
                .isNotNaN();
        assertThat(source).isNotBlank();
    }

    @Test
    @DisplayName("is checked with every row of the table")
    void rows() {
        assertThat(Table.rows(TABLE)).hasSize(8);
    }

    @Test
    @DisplayName("flies its own numbers to the last bit, limit, speed and Mach")
    void itsOwnNumbers() {
        SpeedSchedule schedule = Scene.schedule();
        assertThat(cas(schedule, 5000, Side.ABOVE)).isEqualTo(250);
        assertThat(cas(schedule, 15000, Side.ABOVE)).isEqualTo(290);
        assertThat(schedule.mach(metres(33000), Side.ABOVE)).isEqualTo(0.76);
    }

    @Test
    @DisplayName("jumps at the limit's altitude: 250 kn as the climb arrives, 290 kn as it leaves")
    void jumpsAtTheLimit() {
        SpeedSchedule schedule = Scene.schedule();
        assertThat(schedule.changeOfSpeed()).contains(PressureAltitude.ofFeet(10000));
        assertThat(cas(schedule, 10000, Side.BELOW)).isEqualTo(250);
        assertThat(cas(schedule, 10000, Side.ABOVE)).isEqualTo(290);
    }

    @Test
    @DisplayName("is continuous at the crossover")
    void continuousAtTheCrossover() {
        SpeedSchedule schedule = Scene.schedule();
        double crossover = schedule.crossover().orElseThrow().inMetres();
        assertThat(schedule.mach(crossover, Side.BELOW))
                .isCloseTo(schedule.mach(crossover, Side.ABOVE), within(1e-12));
        assertThat(schedule.calibratedAirspeed(crossover, Side.BELOW))
                .isCloseTo(schedule.calibratedAirspeed(crossover, Side.ABOVE), within(1e-9));
    }

    @Test
    @DisplayName("has no change of speed when the limit is no lower than its speed")
    void limitThatDoesNotBind() {
        SpeedSchedule schedule =
                SpeedSchedule.of(CalibratedAirspeed.ofKnots(240), Mach.of(0.6))
                        .withLimit(CalibratedAirspeed.ofKnots(250), PressureAltitude.ofFeet(10000));
        assertThat(schedule.changeOfSpeed()).isEmpty();
        assertThat(cas(schedule, 5000, Side.ABOVE)).isEqualTo(240);
    }

    @Test
    @DisplayName("goes to Mach at the top of the limit when the crossover lies below it")
    void crossoverBelowTheLimit() {
        SpeedSchedule schedule =
                SpeedSchedule.of(CalibratedAirspeed.ofKnots(290), Mach.of(0.5))
                        .withLimit(CalibratedAirspeed.ofKnots(200), PressureAltitude.ofFeet(12000));
        assertThat(schedule.crossover()).contains(PressureAltitude.ofFeet(12000));
        assertThat(cas(schedule, 12000, Side.BELOW)).isEqualTo(200);
        assertThat(schedule.mach(metres(12000), Side.ABOVE)).isEqualTo(0.5);
    }

    @Test
    @DisplayName("goes to Mach already below the top of a limit that meets it there")
    void limitThatMeetsMach() {
        SpeedSchedule schedule =
                SpeedSchedule.of(CalibratedAirspeed.ofKnots(290), Mach.of(0.5))
                        .withLimit(CalibratedAirspeed.ofKnots(250), PressureAltitude.ofFeet(25000));
        assertThat(schedule.changeOfSpeed()).isEmpty();
        double crossover = schedule.crossover().orElseThrow().inFeet();
        assertThat(crossover).isBetween(15000.0, 16000.0);
        assertThat(schedule.mach(metres(crossover - 1), Side.ABOVE)).isLessThan(0.5);
        assertThat(schedule.mach(metres(crossover + 1), Side.ABOVE)).isEqualTo(0.5);
        assertThat(schedule.mach(metres(25000), Side.ABOVE)).isEqualTo(0.5);
        assertThat(cas(schedule, 25000, Side.BELOW))
                .isCloseTo(cas(schedule, 25000, Side.ABOVE), within(1e-9));
    }

    @Test
    @DisplayName("is Mach at every level when the airspeed is faster even deep below the sea")
    void machAllTheWay() {
        SpeedSchedule schedule = SpeedSchedule.of(CalibratedAirspeed.ofKnots(300), Mach.of(0.3));
        assertThat(schedule.crossover()).isEmpty();
        assertThat(schedule.mach(metres(0), Side.ABOVE)).isEqualTo(0.3);
    }

    @Test
    @DisplayName("refuses a speed of 0 and a Mach number beyond the relations")
    void refusals() {
        assertThatThrownBy(() -> SpeedSchedule.of(CalibratedAirspeed.ofKnots(0), Mach.of(0.7)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a schedule needs speeds above 0, but had 0 kn and M0.7");
        assertThatThrownBy(() -> SpeedSchedule.of(CalibratedAirspeed.ofKnots(300), Mach.of(5.1)))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageContaining("to 5.0, but was 5.1");
    }

    private static double cas(SpeedSchedule schedule, double feet, Side side) {
        return CalibratedAirspeed.ofMetresPerSecond(schedule.calibratedAirspeed(metres(feet), side))
                .inKnots();
    }

    private static double metres(double feet) {
        return PressureAltitude.ofFeet(feet).inMetres();
    }

    @Test
    @DisplayName("with other speeds keeps its limit, rough air and minimum as they were given")
    void otherSpeeds() {
        SpeedSchedule slow = restOf(CalibratedAirspeed.ofKnots(240), Mach.of(0.70));
        SpeedSchedule fast = restOf(CalibratedAirspeed.ofKnots(300), Mach.of(0.78));
        assertThat(slow.withSpeeds(CalibratedAirspeed.ofKnots(300), Mach.of(0.78))).isEqualTo(fast);
        assertThat(fast.calibratedAirspeed()).isEqualTo(CalibratedAirspeed.ofKnots(300));
        assertThat(fast.mach()).isEqualTo(Mach.of(0.78));
        // the limit was above the slower speed, and is felt by the faster
        assertThat(cas(slow, 5000, Side.ABOVE)).isEqualTo(240);
        assertThat(cas(fast, 5000, Side.ABOVE)).isEqualTo(250);
        assertThat(cas(fast, 16000, Side.ABOVE)).isEqualTo(270);
        assertThat(cas(fast, 60000, Side.ABOVE)).isEqualTo(205);
    }

    @Test
    @DisplayName("with its own speeds is the same, with and without a limit")
    void ownSpeedsAgain() {
        SpeedSchedule bare = SpeedSchedule.of(CalibratedAirspeed.ofKnots(290), Mach.of(0.76));
        assertThat(bare.withSpeeds(bare.calibratedAirspeed(), bare.mach())).isEqualTo(bare);
        SpeedSchedule whole = restOf(CalibratedAirspeed.ofKnots(290), Mach.of(0.76));
        assertThat(whole.withSpeeds(whole.calibratedAirspeed(), whole.mach())).isEqualTo(whole);
    }

    @Test
    @DisplayName("refuses other speeds of 0")
    void refusesOtherSpeedsOf0() {
        SpeedSchedule schedule = Scene.schedule();
        assertThatThrownBy(
                        () -> schedule.withSpeeds(CalibratedAirspeed.ofKnots(0), schedule.mach()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("above 0");
    }

    private static SpeedSchedule restOf(CalibratedAirspeed calibratedAirspeed, Mach mach) {
        return SpeedSchedule.of(calibratedAirspeed, mach)
                .withLimit(CalibratedAirspeed.ofKnots(250), PressureAltitude.ofFeet(10000))
                .withRoughAir(
                        CalibratedAirspeed.ofKnots(270),
                        Mach.of(0.72),
                        PressureAltitude.ofFeet(15000),
                        PressureAltitude.ofFeet(18000))
                .withMinimum(CalibratedAirspeed.ofKnots(205));
    }
}
