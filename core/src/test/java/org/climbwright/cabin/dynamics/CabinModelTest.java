package org.climbwright.cabin.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.cabin.dynamics.Flights.hull;
import static org.climbwright.cabin.dynamics.Flights.plan;
import static org.climbwright.cabin.dynamics.Flights.psi;

import java.time.Duration;
import java.util.stream.Stream;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.cabin.CabinHistory;
import org.climbwright.cabin.CabinPlan;
import org.climbwright.cabin.CabinPlan.Precedence;
import org.climbwright.cabin.CabinRateLimits;
import org.climbwright.cabin.CabinSchedule;
import org.climbwright.cabin.DifferentialLimits;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A cabin that steps in time")
class CabinModelTest {
    private static final double FOOT = 0.3048;
    private static final double FL350_M = 35000.0 * FOOT;
    private static final double OUTSIDE_K = 218.8;

    private static CabinModel flown(CabinHull hull, double untilS, double stepS) {
        AltitudeHistory flight = Flights.climbAndCruise();
        CabinModel cabin = CabinModel.onGround(hull, plan());
        int steps = (int) Math.round(untilS / stepS);
        for (int i = 1; i <= steps; i++) {
            cabin.step(stepS, flight.pressureAltitudeM(i * stepS), OUTSIDE_K);
        }
        return cabin;
    }

    @ParameterizedTest(name = "{0}")
    @EnumSource
    @DisplayName("is at the schedule in cruise, with the valve that lets the inflow out")
    void steady(CabinAir air) {
        // adiabatic air comes to its last temperature by e each two and a half minutes
        CabinModel cabin = flown(hull(air), 3100.0, 1.0);
        assertThat(cabin.cabinAltitudeM()).isCloseTo(plan().targetM(FL350_M), within(1e-6));
        assertThat(cabin.cabinRateMps()).isCloseTo(0.0, within(1e-9));
        double needed =
                OrificeFlow.area(
                        0.9,
                        cabin.cabinPressurePa(),
                        StandardAir.pressureFromAltitude(FL350_M),
                        cabin.cabinTemperatureK());
        assertThat(cabin.valveAreaM2() + 6e-4).isCloseTo(needed, within(1e-9));
    }

    @Test
    @DisplayName("stays at the schedule where that valve is left as it is")
    void steadyByItself() {
        CabinModel cabin = flown(hull(CabinAir.ISOTHERMAL), 2400.0, 1.0);
        double before = cabin.cabinAltitudeM();
        cabin.fail(new CabinFailure.ControllerStopped());
        for (int i = 0; i < 3600; i++) {
            cabin.step(1.0, FL350_M, OUTSIDE_K);
        }
        assertThat(cabin.cabinAltitudeM()).isCloseTo(before, within(0.001));
    }

    static Stream<Arguments> failures() {
        return Stream.of(
                        new CabinFailure.InflowLost(),
                        new CabinFailure.InflowLost(0.5),
                        new CabinFailure.ControllerStopped(),
                        new CabinFailure.ValveStuck(0.0),
                        new CabinFailure.ValveStuck(0.03),
                        new CabinFailure.ExcessLeak(0.002),
                        new CabinFailure.ExcessLeak(0.01),
                        new CabinFailure.Hole(0.01),
                        new CabinFailure.Hole(0.2),
                        new CabinFailure.Hole(2.0))
                .flatMap(
                        failure ->
                                Stream.of(CabinAir.values())
                                        .map(air -> Arguments.of(failure, air)));
    }

    @ParameterizedTest(name = "{0}, {1}")
    @MethodSource("failures")
    @DisplayName("is at the same altitude with steps of 1 s and of 1/120 s, within 0.1 ft")
    void doesNotDependOnTheStep(CabinFailure failure, CabinAir air) {
        AltitudeHistory flight = Flights.climbAndCruise();
        CabinModel slow = CabinModel.onGround(hull(air), plan());
        CabinModel fast = CabinModel.onGround(hull(air), plan());
        for (int second = 1; second <= 2400; second++) {
            slow.step(1.0, flight.pressureAltitudeM(second), OUTSIDE_K);
            for (int i = 1; i <= 120; i++) {
                double time = second - 1 + i / 120.0;
                fast.step(1.0 / 120.0, flight.pressureAltitudeM(time), OUTSIDE_K);
            }
            assertThat(slow.cabinAltitudeM() / FOOT)
                    .as("at %d s", second)
                    .isCloseTo(fast.cabinAltitudeM() / FOOT, within(0.1));
            if (second == 1200) {
                slow.fail(failure);
                fast.fail(failure);
            }
        }
    }

    @ParameterizedTest(name = "{0}, {1}")
    @MethodSource("failures")
    @DisplayName("loses no mass: what came in less what went out is what it has more, to 1e-9")
    void massIsKept(CabinFailure failure, CabinAir air) {
        AltitudeHistory flight = Flights.climbAndCruise();
        CabinModel cabin = CabinModel.onGround(hull(air), plan());
        double atFirst = cabin.airMassKg();
        for (int i = 1; i <= 3000; i++) {
            cabin.step(1.0, flight.pressureAltitudeM(i), OUTSIDE_K);
            if (i == 1200) {
                cabin.fail(failure);
            }
            double gained = cabin.massInKg() - cabin.massOutKg();
            assertThat(cabin.airMassKg() - atFirst).isCloseTo(gained, within(1e-9 * atFirst));
            assertThat(cabin.cabinPressurePa() * 140.0 / (287.05287 * cabin.cabinTemperatureK()))
                    .isCloseTo(cabin.airMassKg(), within(1e-9 * atFirst));
        }
    }

    @ParameterizedTest(name = "{0}")
    @EnumSource
    @DisplayName("lets out what its valve and leaks let out by the formula of an orifice")
    void flowsAddUp(CabinAir air) {
        double step = 1.0 / 60.0;
        AltitudeHistory flight = Flights.climbAndCruise();
        CabinModel cabin = CabinModel.onGround(hull(air), plan());
        double out = 0.0;
        double before = 0.0;
        for (int i = 1; i <= 90_000; i++) {
            cabin.step(step, flight.pressureAltitudeM(i * step), OUTSIDE_K);
            double now =
                    OrificeFlow.massFlow(
                            cabin.valveAreaM2() + 6e-4,
                            cabin.cabinPressurePa(),
                            cabin.cabinPressurePa() - cabin.differentialPa(),
                            cabin.cabinTemperatureK());
            out += step * (i == 1 ? now : 0.5 * (before + now));
            before = now;
        }
        assertThat(cabin.massOutKg()).isCloseTo(out, within(2e-5 * out));
    }

    @Test
    @DisplayName("controls a small leak away, and not a hole that is larger than its valve")
    void leakIsControlled() {
        CabinModel leaking = flown(hull(CabinAir.ISOTHERMAL), 1200.0, 1.0);
        CabinModel sound = flown(hull(CabinAir.ISOTHERMAL), 1200.0, 1.0);
        CabinModel holed = flown(hull(CabinAir.ISOTHERMAL), 1200.0, 1.0);
        double valve = sound.valveAreaM2();
        leaking.fail(new CabinFailure.ExcessLeak(0.001));
        holed.fail(new CabinFailure.Hole(0.01));
        AltitudeHistory flight = Flights.climbAndCruise();
        for (int i = 1201; i <= 1500; i++) {
            double level = flight.pressureAltitudeM(i);
            leaking.step(1.0, level, OUTSIDE_K);
            sound.step(1.0, level, OUTSIDE_K);
            holed.step(1.0, level, OUTSIDE_K);
        }
        assertThat(valve).isGreaterThan(0.001);
        assertThat(leaking.cabinAltitudeM()).isCloseTo(sound.cabinAltitudeM(), within(1e-6));
        assertThat(leaking.valveAreaM2()).isCloseTo(sound.valveAreaM2() - 0.001, within(1e-9));
        assertThat(holed.valveAreaM2()).isZero();
        assertThat(holed.cabinAltitudeM()).isGreaterThan(sound.cabinAltitudeM() + 3000.0);
    }

    @Test
    @DisplayName("builds up to the relief setting and no further with its valve shut")
    void relief() {
        CabinModel cabin = flown(hull(CabinAir.ISOTHERMAL), 1200.0, 1.0);
        cabin.fail(new CabinFailure.ValveStuck(0.0));
        for (int i = 1; i <= 600; i++) {
            cabin.step(1.0, cabin.pressureAltitudeM(), OUTSIDE_K);
        }
        assertThat(cabin.differential().inPoundsPerSquareInch()).isCloseTo(8.5, within(1e-9));
        assertThat(cabin.isReliefOpen()).isTrue();
    }

    @Test
    @DisplayName(
            "goes below the aeroplane's pressure in a descent with nothing open, to the inward"
                    + " relief")
    void negativeDifferential() {
        CabinHull tight = hull(CabinAir.ISOTHERMAL).withLeak(0.0);
        CabinModel cabin =
                CabinModel.inFlight(
                        tight, plan(), PressureAltitude.ofFeet(12000), CabinAltitude.ofFeet(11000));
        cabin.fail(new CabinFailure.ValveStuck(0.0));
        cabin.fail(new CabinFailure.InflowLost());
        double least = 0.0;
        for (int i = 1; i <= 300; i++) {
            double level = 12000.0 * FOOT - i * 20.0 * FOOT;
            cabin.step(1.0, level, 275.0);
            least = Math.min(least, cabin.differential().inPoundsPerSquareInch());
        }
        assertThat(least).isCloseTo(-0.5, within(1e-9));
        assertThat(cabin.cabinAltitudeM()).isGreaterThan(cabin.pressureAltitudeM());
        assertThat(cabin.massInKg()).isPositive();
    }

    @Test
    @DisplayName("takes air back through an open valve in a descent, instead of a clamp at zero")
    void reverseFlow() {
        CabinModel cabin =
                CabinModel.inFlight(
                        hull(CabinAir.ADIABATIC),
                        plan(),
                        PressureAltitude.ofFeet(30000),
                        CabinAltitude.ofFeet(29900));
        cabin.fail(new CabinFailure.InflowLost());
        cabin.fail(new CabinFailure.ValveStuck(0.03));
        for (int i = 1; i <= 120; i++) {
            cabin.step(1.0, (30000.0 - i * 80.0) * FOOT, 240.0);
            assertThat(cabin.differentialPa()).isBetween(-0.5 * 6894.757293168361 - 1e-9, 1500.0);
        }
        assertThat(cabin.differentialPa()).isNegative();
        assertThat(cabin.massInKg()).isGreaterThan(10.0);
    }

    @Test
    @DisplayName("counts the time above its levels as its history does")
    void timeAbove() {
        CabinAltitude[] levels = {
            CabinAltitude.ofFeet(10000), CabinAltitude.ofFeet(14000), CabinAltitude.ofFeet(25000)
        };
        AltitudeHistory flight = Flights.climbAndCruise();
        CabinModel cabin = CabinModel.onGround(hull(CabinAir.ISOTHERMAL), plan(), levels);
        for (int i = 1; i <= 2400; i++) {
            if (i == 1201) {
                cabin.fail(new CabinFailure.Hole(0.02));
            }
            cabin.step(1.0, flight.pressureAltitudeM(i), OUTSIDE_K);
        }
        CabinHistory history =
                new CabinFailureStudy(
                                hull(CabinAir.ISOTHERMAL), plan(), flight, Atmosphere.standard())
                        .withFailure(new CabinFailure.Hole(0.02), Duration.ofSeconds(1200))
                        .run(Duration.ofSeconds(1));
        double rest = flight.lengthS() - 2400.0;
        for (int i = 0; i < levels.length; i++) {
            double whole = history.timeAbove(levels[i]).toNanos() / 1e9;
            assertThat(cabin.timeAboveS(i)).isCloseTo(whole - rest, within(1e-3));
        }
        assertThat(cabin.highest().inFeet()).isGreaterThan(25000.0);
    }

    @Test
    @DisplayName(
            "keeps its rate first where the plan says so, and then passes the scheduled"
                    + " differential")
    void precedence() {
        AltitudeHistory steep =
                AltitudeHistory.at(PressureAltitude.ofFeet(1000))
                        .to(PressureAltitude.ofFlightLevel(350), Flights.rate(4000));
        CabinFailureStudy first =
                new CabinFailureStudy(
                        hull(CabinAir.ISOTHERMAL), plan(), steep, Atmosphere.standard());
        CabinFailureStudy rate =
                new CabinFailureStudy(
                        hull(CabinAir.ISOTHERMAL),
                        plan().withPrecedence(Precedence.RATE_FIRST),
                        steep,
                        Atmosphere.standard());
        CabinHistory differentialFirst = first.run(Duration.ofSeconds(1));
        CabinHistory rateFirst = rate.run(Duration.ofSeconds(1));
        // a history goes straight in altitude between its samples, which is not straight in
        // pressure
        assertThat(differentialFirst.differentialRange().largest())
                .isLessThanOrEqualTo(psi(8.0 + 1e-5));
        assertThat(rateFirst.differentialRange().largest()).isGreaterThan(psi(8.3));
        assertThat(rateFirst.differentialRange().largest()).isLessThanOrEqualTo(psi(8.5 + 1e-5));
    }

    @Test
    @DisplayName("keeps its differential on the ground for as long as it stands there")
    void prePressurisation() {
        CabinModel cabin = CabinModel.onGround(hull(CabinAir.ISOTHERMAL), plan());
        for (int i = 0; i < 600; i++) {
            cabin.step(1.0, 1000.0 * FOOT, 285.0);
        }
        assertThat(cabin.differential().inPoundsPerSquareInch()).isCloseTo(0.1, within(1e-6));
    }

    @Test
    @DisplayName(
            "leaves the valve where it was in balance if the controller stops before the first"
                    + " step")
    void stoppedAtOnce() {
        CabinModel cruising =
                CabinModel.inFlight(
                        hull(CabinAir.ISOTHERMAL),
                        plan(),
                        PressureAltitude.ofFlightLevel(350),
                        CabinAltitude.ofFeet(7500));
        CabinModel standing = CabinModel.onGround(hull(CabinAir.ISOTHERMAL), plan());
        cruising.fail(new CabinFailure.ControllerStopped());
        standing.fail(new CabinFailure.ControllerStopped());
        for (int i = 0; i < 120; i++) {
            cruising.step(1.0, FL350_M, OUTSIDE_K);
            standing.step(1.0, 1000.0 * FOOT, 285.0);
        }
        assertThat(cruising.cabinAltitude().inFeet()).isCloseTo(7500.0, within(0.01));
        assertThat(standing.differential().inPoundsPerSquareInch()).isCloseTo(0.1, within(1e-6));
    }

    @Test
    @DisplayName(
            "opens its valve where the outside has the higher pressure, and waits for no relief")
    void opensInwards() {
        CabinModel cabin =
                CabinModel.inFlight(
                        hull(CabinAir.ISOTHERMAL),
                        plan(),
                        PressureAltitude.ofFeet(12000),
                        CabinAltitude.ofFeet(7500));
        cabin.fail(new CabinFailure.InflowLost());
        double least = 0.0;
        for (int i = 1; i <= 180; i++) {
            cabin.step(1.0, Math.max(1000.0, 12000.0 - i * 100.0) * FOOT, 280.0);
            least = Math.min(least, cabin.differential().inPoundsPerSquareInch());
            assertThat(cabin.isReliefOpen()).isFalse();
        }
        assertThat(least).isBetween(-0.3, -0.01);
        assertThat(cabin.differential().inPoundsPerSquareInch()).isCloseTo(0.0, within(1e-3));
    }

    @Test
    @DisplayName("does not get back with a second loss of inflow what it lost with the first")
    void twoLosses() {
        CabinModel once = flown(hull(CabinAir.ISOTHERMAL), 1200.0, 1.0);
        CabinModel twice = flown(hull(CabinAir.ISOTHERMAL), 1200.0, 1.0);
        once.fail(new CabinFailure.InflowLost());
        twice.fail(new CabinFailure.InflowLost());
        twice.fail(new CabinFailure.InflowLost(0.8));
        for (int i = 0; i < 300; i++) {
            once.step(1.0, FL350_M, OUTSIDE_K);
            twice.step(1.0, FL350_M, OUTSIDE_K);
        }
        assertThat(twice.cabinAltitudeM()).isEqualTo(once.cabinAltitudeM());
    }

    @Test
    @DisplayName("refuses a valve that is stuck further open than it can be")
    void stuckTooFar() {
        CabinModel cabin = flown(hull(CabinAir.ISOTHERMAL), 60.0, 1.0);
        assertThatThrownBy(() -> cabin.fail(new CabinFailure.ValveStuck(0.031)))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageContaining("from 0.0 to 0.03 m²");
    }

    @ParameterizedTest(name = "departure at {0} ft")
    @ValueSource(doubles = {-1000, 350, 5150, 9950, 13_900})
    @DisplayName("may have a negative relief of 0, on any field")
    void noNegativeRelief(double feet) {
        CabinPlan strict =
                CabinPlan.of(
                        CabinSchedule.isobaric(CabinAltitude.ofFeet(feet + 500.0)),
                        new DifferentialLimits(psi(8.0), psi(8.5), psi(0.0)),
                        CabinRateLimits.ofCommonPractice(),
                        PressureAltitude.ofFeet(feet),
                        PressureAltitude.ofFeet(feet),
                        PressureAltitude.ofFlightLevel(350));
        CabinModel cabin = CabinModel.onGround(hull(CabinAir.ISOTHERMAL), strict);
        cabin.step(1.0, feet * FOOT, 280.0);
        assertThat(cabin.differentialPa())
                .isBetween(-1e-6, 500.0); // of the inflow through an open valve
    }

    @Test
    @DisplayName(
            "has the inflow's temperature where its relief valve stays open, whatever the step")
    void reliefKeepsTheTemperature() {
        CabinHull small = new CabinHull(8.0, 297.15, 0.25, 290.0, 0.0, 0.03, CabinAir.ADIABATIC);
        for (double step : new double[] {1.0, 1.0 / 120.0}) {
            CabinModel cabin =
                    CabinModel.inFlight(
                            small,
                            plan(),
                            PressureAltitude.ofFlightLevel(350),
                            CabinAltitude.ofFeet(7500));
            cabin.fail(new CabinFailure.ValveStuck(0.0));
            for (int i = 0; i < 600.0 / step; i++) {
                cabin.step(step, FL350_M, OUTSIDE_K);
            }
            assertThat(cabin.isReliefOpen()).isTrue();
            assertThat(cabin.cabinTemperatureK()).isCloseTo(290.0, within(0.01));
        }
    }

    @Test
    @DisplayName("refuses a step that is none, and has not changed then")
    void refuses() {
        CabinModel cabin = flown(hull(CabinAir.ISOTHERMAL), 60.0, 1.0);
        String before = cabin.toString();
        assertThatThrownBy(() -> cabin.step(0.0, 1000.0, 280.0))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageContaining("step must be from 1.0E-6 to 1.0 s, but was 0.0 s");
        assertThatThrownBy(() -> cabin.step(1.0, Double.NaN, 280.0))
                .isInstanceOf(OutsideModelException.class);
        assertThatThrownBy(() -> cabin.step(1.0, 1000.0, 80.0))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageContaining("temperature outside");
        assertThat(cabin.covers(0.0, 1000.0, 280.0)).isFalse();
        assertThat(cabin.covers(1.0, 1000.0, 280.0)).isTrue();
        assertThat(cabin).hasToString(before);
        assertThatThrownBy(
                        () ->
                                CabinModel.inFlight(
                                        hull(CabinAir.ISOTHERMAL),
                                        plan(),
                                        PressureAltitude.ofFlightLevel(350),
                                        CabinAltitude.ofFeet(0)))
                .hasMessageContaining("relief valves allow no other");
    }
}
