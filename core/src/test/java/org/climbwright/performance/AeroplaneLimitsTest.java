package org.climbwright.performance;

import static org.assertj.core.api.Assertions.assertThat;

import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.DifferentialPressure;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The limits of an aeroplane")
class AeroplaneLimitsTest {
    @Test
    @DisplayName("are read as those that are known, with their units")
    void text() {
        AeroplaneLimits some =
                AeroplaneLimits.none()
                        .withCertifiedCeiling(PressureAltitude.ofFlightLevel(410))
                        .withMaximumOperatingMach(Mach.of(0.82));
        assertThat(AeroplaneLimits.none()).hasToString("no limit known");
        assertThat(some).hasToString("certified ceiling 41000 ft, maximum operating Mach 0.82");
        assertThat(
                        some.withMaximumOperatingSpeed(CalibratedAirspeed.ofKnots(350))
                                .withLoadFactor(2.5)
                                .withBuffetOnset(120.0, InventedAeroplanes.buffet())
                                .withMaximumDifferential(DifferentialPressure.ofPascals(59000))
                                .withLiftSlope(5.5))
                .hasToString(
                        "certified ceiling 41000 ft, maximum operating speed 350 kn, maximum"
                                + " operating Mach 0.82, load factor 2.5, beginning of buffet by a"
                                + " wing of 120.0 m², maximum differential pressure 59000 Pa, lift"
                                + " slope 5.5 per rad");
    }
}
