package org.climbwright.examples.figure;

import static org.assertj.core.api.Assertions.assertThat;

import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.path.ClimbState;
import org.climbwright.performance.ClimbAir;
import org.climbwright.profile.ClimbProfile;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.TrueDirection;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** No figure here is a reference: they say what kind of aeroplane was invented. */
@DisplayName("The invented twin-jet, of 60 t in standard air")
class InventedJetTest {
    private final ClimbProfile profile =
            InventedClimb.climb(
                            InventedClimb.programme(),
                            ClimbAir.of(
                                    Atmosphere.standard(),
                                    Winds.calm(),
                                    TrueDirection.ofDegrees(0)))
                    .between(PressureAltitude.ofFeet(1500), PressureAltitude.ofFlightLevel(410));

    private ClimbState at(double flightLevel) {
        return profile.at(PressureAltitude.ofFlightLevel(flightLevel));
    }

    private double rateAt(double flightLevel) {
        return at(flightLevel).pressureAltitudeRate().inFeetPerMinute();
    }

    @Test
    @DisplayName("climbs at some 3,000 ft/min at first and at some 1,500 in the middle")
    void rates() {
        assertThat(rateAt(50)).isBetween(2700.0, 3300.0);
        assertThat(rateAt(250)).isBetween(1300.0, 1600.0);
        assertThat(rateAt(350)).isBetween(700.0, 1100.0);
    }

    @Test
    @DisplayName("takes some 20 minutes and 1.5 t of fuel to FL350")
    void timeAndFuel() {
        assertThat(at(350).timeS() / 60.0).isBetween(18.0, 22.0);
        assertThat(InventedJet.MASS.inKilograms() - at(350).mass().inKilograms())
                .isBetween(1300.0, 1800.0);
    }

    @Test
    @DisplayName("comes to its ceiling between FL390 and FL410")
    void ceiling() {
        assertThat(profile.endsBecause()).startsWith("ceiling reached");
        assertThat(profile.top())
                .isBetween(
                        PressureAltitude.ofFlightLevel(390), PressureAltitude.ofFlightLevel(410));
    }
}
