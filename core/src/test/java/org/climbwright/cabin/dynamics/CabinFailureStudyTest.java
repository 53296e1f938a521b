package org.climbwright.cabin.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.cabin.dynamics.Flights.hull;
import static org.climbwright.cabin.dynamics.Flights.plan;
import static org.climbwright.cabin.dynamics.Flights.rate;

import java.time.Duration;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.cabin.CabinHistory;
import org.climbwright.cabin.CabinPlan;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A flight on which something fails")
class CabinFailureStudyTest {
    private static CabinFailureStudy study() {
        return new CabinFailureStudy(
                hull(CabinAir.ISOTHERMAL), plan(), Flights.climbAndCruise(), Atmosphere.standard());
    }

    private static EmergencyDescent descent(double recognitionS, double toFeet) {
        return new EmergencyDescent(
                CabinAltitude.ofFeet(10000),
                Duration.ofMillis(Math.round(recognitionS * 1000.0)),
                rate(5000),
                PressureAltitude.ofFeet(toFeet));
    }

    @Test
    @Timeout(20)
    @DisplayName("ends whatever the step, with failures between steps and next to each other")
    void ends() {
        CabinHistory history =
                study().withFailure(new CabinFailure.InflowLost(), Duration.ofMillis(900))
                        .withFailure(new CabinFailure.Hole(1e-4), Duration.ofNanos(1_000_000_300L))
                        .withFailure(new CabinFailure.Hole(1e-4), Duration.ofNanos(1_000_000_800L))
                        .run(Duration.ofMillis(300));
        assertThat(history.length().toMillis())
                .isEqualTo(Math.round(Flights.climbAndCruise().lengthS() * 1000.0));
    }

    @Test
    @DisplayName("keeps the cabin below 10,000 ft where nothing fails")
    void nothingFails() {
        CabinHistory history = study().run(Duration.ofSeconds(1));
        assertThat(history.firstAtOrAbove(CabinAltitude.ofFeet(10000))).isEmpty();
        assertThat(history.timeAbove(CabinAltitude.ofFeet(8000))).isZero();
    }

    @ParameterizedTest(name = "recognised after {0} s")
    @ValueSource(doubles = {0.0, 0.3, 15.0, 60.0})
    @DisplayName("descends from where it was then, with steps of 1 s and of 1/50 s the same")
    void descends(double recognitionS) {
        CabinFailureStudy holed =
                study().withFailure(new CabinFailure.Hole(0.02), Duration.ofMinutes(20))
                        .withDescent(descent(recognitionS, 10000));
        CabinHistory coarse = holed.run(Duration.ofSeconds(1));
        CabinHistory fine = holed.run(Duration.ofMillis(20));
        assertThat(coarse.pressureAltitudeM(coarse.size() - 1) / 0.3048)
                .isCloseTo(10000.0, within(1e-6));
        for (int second = 1280; second <= 1600; second++) {
            assertThat(coarse.pressureAltitudeM(second) / 0.3048)
                    .as("at %d s", second)
                    .isCloseTo(fine.pressureAltitudeM(50 * second) / 0.3048, within(10.0));
        }
    }

    @Test
    @DisplayName("descends after the warning and the recognition, at the rate given")
    void when() {
        CabinHistory history =
                study().withFailure(new CabinFailure.InflowLost(), Duration.ofMinutes(20))
                        .withDescent(descent(60.0, 10000))
                        .run(Duration.ofSeconds(1));
        double warned =
                history.firstAtOrAbove(CabinAltitude.ofFeet(10000)).orElseThrow().toNanos() / 1e9;
        int descending = (int) Math.ceil(warned + 60.0) + 10;
        double lost =
                history.pressureAltitudeM(descending) - history.pressureAltitudeM(descending + 60);
        assertThat(lost / 0.3048).isCloseTo(5000.0, within(1e-6));
        assertThat(history.pressureAltitudeM((int) (warned + 59.0)) / 0.3048)
                .isCloseTo(35000.0, within(1e-6));
    }

    @Test
    @DisplayName(
            "is warned of nothing on a field above the warning, where the cabin was never below")
    void highField() {
        PressureAltitude field = PressureAltitude.ofFeet(13000);
        CabinHistory history =
                new CabinFailureStudy(
                                hull(CabinAir.ISOTHERMAL),
                                CabinPlan.forCruise(
                                        plan().limits(),
                                        plan().rates(),
                                        field,
                                        field,
                                        PressureAltitude.ofFlightLevel(350),
                                        AltitudeChange.ofFeet(0)),
                                AltitudeHistory.at(field)
                                        .to(PressureAltitude.ofFlightLevel(350), rate(2000)),
                                Atmosphere.standard())
                        .withDescent(descent(0.0, 10000))
                        .run(Duration.ofSeconds(1));
        assertThat(history.pressureAltitudeM(history.size() - 1) / 0.3048)
                .isCloseTo(35000.0, within(1e-6));
    }

    @Test
    @DisplayName("begins settled in flight where it does not begin on the field")
    void beginsInFlight() {
        CabinHistory history =
                new CabinFailureStudy(
                                hull(CabinAir.ISOTHERMAL),
                                plan(),
                                AltitudeHistory.at(PressureAltitude.ofFlightLevel(350))
                                        .hold(Duration.ofMinutes(5)),
                                Atmosphere.standard())
                        .run(Duration.ofSeconds(1));
        double target = plan().targetM(35000.0 * 0.3048);
        for (int i = 0; i < history.size(); i++) {
            assertThat(history.cabinAltitudeM(i)).isCloseTo(target, within(1e-6));
        }
    }

    @Test
    @DisplayName("refuses a failure after its end, and says when that is")
    void tooLate() {
        assertThatThrownBy(
                        () ->
                                study().withFailure(
                                                new CabinFailure.InflowLost(), Duration.ofHours(3)))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageContaining("time of a failure")
                .hasMessageContaining("the flight ends there");
    }
}
