package org.climbwright.cabin.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.cabin.dynamics.Flights.plan;

import java.time.Duration;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.cabin.CabinHistory;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** With openings so large that no relief valve opens, which the other integrator has not. */
@DisplayName("The cabin by another integrator")
class CabinIntegrationTest {
    @ParameterizedTest(name = "{0}, {1} m², inflow {2}")
    @CsvSource({
        "ISOTHERMAL, 0.006, 0.9",
        "ADIABATIC, 0.006, 0.9",
        "ISOTHERMAL, 0.02, 0.9",
        "ADIABATIC, 0.02, 0.9",
        "ISOTHERMAL, 0.002, 0.0",
        "ADIABATIC, 0.002, 0.0",
        "ISOTHERMAL, 0.5, 0.9",
        "ADIABATIC, 0.5, 0.9"
    })
    @DisplayName("is the same within 0.1 ft, in a climb from FL200 to FL350 and ten minutes there")
    void agrees(CabinAir air, double areaM2, double inflow) {
        CabinHull hull = new CabinHull(140.0, 297.15, inflow, 290.0, 6e-4, 1.0, air);
        CabinAltitude from = CabinAltitude.ofFeet(5000);
        PressureAltitude level = PressureAltitude.ofFlightLevel(200);
        AltitudeHistory flight =
                AltitudeHistory.at(level)
                        .to(PressureAltitude.ofFlightLevel(350), Flights.rate(1500))
                        .hold(Duration.ofMinutes(10));
        CabinHistory reference =
                CabinIntegration.byDormandPrince(
                        hull, areaM2, from, flight, Atmosphere.standard(), Duration.ofSeconds(1));
        CabinModel cabin = CabinModel.inFlight(hull, plan(), level, from);
        cabin.fail(new CabinFailure.ValveStuck(areaM2));
        for (int i = 1; i < reference.size(); i++) {
            // the reference has the altitude straight in time, a step of the model the pressure
            for (int k = 1; k <= 10; k++) {
                double time = i - 1 + k / 10.0;
                cabin.step(0.1, flight.pressureAltitudeM(time), 230.0);
            }
            assertThat(cabin.isReliefOpen()).isFalse();
            assertThat(cabin.cabinAltitudeM() / 0.3048)
                    .as("at %d s", i)
                    .isCloseTo(reference.cabinAltitudeM(i) / 0.3048, within(0.1));
        }
    }
}
