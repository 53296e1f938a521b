package org.climbwright.cabin.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.cabin.CabinHistory;
import org.climbwright.cabin.CabinPlan;
import org.climbwright.cabin.CabinSchedule;
import org.climbwright.cabin.CabinState;
import org.climbwright.cabin.ExpectedCabin;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.Scene;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The cabin expected along a climb and the cabin that steps in time")
class ExpectedAndSteppedTest {
    private static final ClimbPath CLIMB =
            Scene.path(
                    Scene.rates(Scene.row(0, 3500), Scene.row(20000, 2200), Scene.row(35000, 800)),
                    Atmosphere.standard(),
                    Winds.calm());

    @ParameterizedTest(name = "{0}")
    @EnumSource(CabinPlan.Precedence.class)
    @DisplayName("are the same within 1 ft, whichever limit comes first")
    void automatic(CabinPlan.Precedence precedence) {
        agree(Flights.plan().withPrecedence(precedence));
    }

    @ParameterizedTest(name = "{0} ft")
    @ValueSource(doubles = {1500, 4000, 8000})
    @DisplayName("are the same within 1 ft with a cabin held at an altitude")
    void isobaric(double feet) {
        CabinPlan automatic = Flights.plan();
        agree(
                CabinPlan.of(
                                CabinSchedule.isobaric(CabinAltitude.ofFeet(feet)),
                                automatic.limits(),
                                automatic.rates(),
                                automatic.departure(),
                                automatic.landing(),
                                automatic.cruise())
                        .withPrePressurisation(automatic.prePressurisation()));
    }

    private static void agree(CabinPlan plan) {
        ExpectedCabin expected = ExpectedCabin.along(CLIMB, plan);
        CabinHistory stepped =
                new CabinFailureStudy(
                                Flights.hull(CabinAir.ISOTHERMAL),
                                plan,
                                AltitudeHistory.along(CLIMB).hold(Duration.ofMinutes(20)),
                                Atmosphere.standard())
                        .run(Duration.ofMillis(100));
        for (int i = 0; i < stepped.size(); i += 50) {
            Duration time = Duration.ofNanos(Math.round(stepped.timeS(i) * 1e9));
            CabinState state = expected.at(time);
            assertThat(stepped.cabinAltitudeM(i) / 0.3048)
                    .as("at %s, FL%.0f", time, stepped.pressureAltitudeM(i) / 30.48)
                    .isCloseTo(state.cabin().inFeet(), within(1.0));
        }
        assertThat(expected.top()).isEqualTo(PressureAltitude.ofFeet(35000));
    }
}
