package org.climbwright.performance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Streams.roundTrip;

import org.climbwright.path.Side;
import org.climbwright.performance.ceiling.LevelLimit;
import org.climbwright.performance.ceiling.MaximumLevel;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.PressureAltitudeRate;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A point of a climb that travels")
class SerializedPointTest {
    @Test
    @DisplayName("arrives as it was")
    void arrives() throws Exception {
        ClimbSpeed speed = ClimbSpeed.constant(CalibratedAirspeed.ofKnots(280));
        PressureAltitude level = PressureAltitude.ofFlightLevel(200);
        ClimbConditions conditions = InventedAeroplanes.conditions(InventedAeroplanes.CALM);
        ReducedThrust reduced = ReducedThrust.of(0.9, PressureAltitude.ofFeet(0), level);
        assertThat(roundTrip(speed)).isEqualTo(speed);
        assertThat(roundTrip(reduced)).isEqualTo(reduced);
        assertThat(roundTrip(InventedAeroplanes.buffet())).isEqualTo(InventedAeroplanes.buffet());
        ClimbPoint point = conditions.at(level, speed);
        assertThat(roundTrip(point)).usingRecursiveComparison().isEqualTo(point);
        BestClimb best =
                BestClimb.angle(
                        conditions,
                        level,
                        Side.ABOVE,
                        HeldSpeed.MACH,
                        CalibratedAirspeed.ofKnots(200));
        assertThat(roundTrip(best)).usingRecursiveComparison().isEqualTo(best);
        MaximumLevel maximum =
                MaximumLevel.of(
                        conditions,
                        ClimbSpeeds.constant(speed),
                        level,
                        PressureAltitudeRate.ofFeetPerMinute(300),
                        1.3);
        LevelLimit limit = roundTrip(maximum).limiting().orElseThrow();
        assertThat(limit.toString()).isEqualTo(maximum.limiting().orElseThrow().toString());
    }
}
