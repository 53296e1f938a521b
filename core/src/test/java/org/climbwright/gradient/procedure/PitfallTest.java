package org.climbwright.gradient.procedure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.gradient.ClimbAngles;
import org.climbwright.gradient.ClimbGradient;
import org.climbwright.gradient.WindGradients;
import org.climbwright.quantity.altitude.Height;
import org.climbwright.quantity.path.AirGradient;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.path.GroundGradient;
import org.climbwright.quantity.speed.AlongTrackWind;
import org.climbwright.quantity.speed.GroundSpeed;
import org.climbwright.quantity.speed.TrueAirspeed;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Each row that is not left out has its case below: a row without one fails. */
@DisplayName("A mistake about gradients")
class PitfallTest {
    @ParameterizedTest(name = "{0} {1}: not {2}")
    @CsvFileSource(resources = "/gradient/pitfalls.csv", useHeadersInDisplayName = true)
    @DisplayName("is not made:")
    void isNotMade(
            String id, String trap, String wrong, String right, String check, String source) {
        assertThat(source).isNotBlank();
        if (ProcedureTableTest.leftOut("pitfalls.csv").contains(id)) {
            return;
        }
        switch (id) {
            case "Q01" -> {
                double ours = rate(GroundGradient.ofPercent(4.937365), 150);
                assertThat(ours).isCloseTo(750.0, within(0.01));
                assertThat(4.937365 * 150 / 60.0).isCloseTo(12.3, within(0.05)); // as is printed
            }
            case "Q02" -> {
                assertThat(wrong).startsWith("495");
                assertThat(rate(GroundGradient.ofPercent(3.3), 150))
                        .isCloseTo(501.3, within(0.05))
                        .isGreaterThan(495.0);
            }
            case "Q03" -> { // 150 kn indicated at 10,000 ft is some 174 kn true, and takes more
                GroundGradient gradient = GroundGradient.ofPercent(3.3);
                TrueAirspeed tas = TrueAirspeed.ofKnots(174);
                double needed =
                        ClimbGradient.rate(
                                        gradient,
                                        WindGradients.groundSpeed(
                                                gradient, tas, AlongTrackWind.ofKnots(0)))
                                .inFeetPerMinute();
                assertThat(needed).isGreaterThan(1.15 * rate(gradient, 150));
            }
            case "Q04" -> {
                AirGradient air = AirGradient.ofPercent(10);
                TrueAirspeed tas = TrueAirspeed.ofKnots(140);
                GroundGradient ground =
                        WindGradients.overGround(air, tas, AlongTrackWind.ofKnots(-30));
                assertThat(ground.inPercent()).isGreaterThan(12.0);
                assertThat(
                                WindGradients.throughAir(ground, tas, AlongTrackWind.ofKnots(-30))
                                        .inPercent())
                        .isCloseTo(10.0, within(1e-12));
            }
            case "Q05" -> {
                GroundGradient us = DepartureCriteria.US.leastGradient();
                GroundGradient pansOps = DepartureCriteria.PANS_OPS.leastGradient();
                assertThat(us.inPercent()).isCloseTo(3.2916, within(5e-5));
                assertThat(pansOps.inFeetPerNauticalMile()).isCloseTo(200.51, within(5e-3));
                assertThat(us).isLessThan(pansOps);
            }
            case "Q07" -> {
                assertThat(wrong).contains("misprint");
                assertThat(right).isEqualTo("394 ft");
                assertThat(DepartureCriteria.PANS_OPS.turnHeight().second())
                        .contains(Height.ofFeet(394));
                assertThat(DepartureCriteria.PANS_OPS.turnHeight().first().inFeet())
                        .isCloseTo(394.0, within(0.5));
            }
            case "Q09" -> {
                double feet =
                        DepartureCriteria.US
                                .clearance(
                                        GroundGradient.ofFeetPerNauticalMile(500),
                                        GroundDistance.ofNauticalMiles(1))
                                .inFeet();
                assertThat(feet).isCloseTo(120.0, within(1e-9)).isGreaterThan(2 * 48.0);
            }
            case "Q10" -> {
                double shown = ClimbGradient.instrumentRate(1.0, 0.0, 268.15);
                assertThat(shown).isCloseTo(1.0746, within(5e-5));
                assertThat(1000.0 / shown).isCloseTo(931.0, within(0.5));
            }
            case "Q15" -> {
                double ten = StrictMath.toRadians(10.0);
                assertThat(ClimbAngles.gradientFromSine(StrictMath.sin(ten)))
                        .isCloseTo(StrictMath.tan(ten), within(1e-15));
                assertThat(ClimbAngles.gradient(ten) / ClimbAngles.sine(ClimbAngles.gradient(ten)))
                        .isCloseTo(1.01543, within(5e-6));
            }
            default -> throw new AssertionError(id + " is not compared");
        }
    }

    private static double rate(GroundGradient gradient, double knots) {
        return ClimbGradient.rate(gradient, GroundSpeed.ofKnots(knots)).inFeetPerMinute();
    }
}
