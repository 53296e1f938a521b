package org.climbwright.gradient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.path.AirGradient;
import org.climbwright.quantity.path.ClimbAngle;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.path.GroundGradient;
import org.climbwright.quantity.speed.AlongTrackWind;
import org.climbwright.quantity.speed.GroundSpeed;
import org.climbwright.quantity.speed.TrueAirspeed;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Each row has its case below: a row without one fails. */
@DisplayName("A printed example of a gradient")
class GradientExampleTest {
    @ParameterizedTest(name = "{0} {1}: {2} {3}")
    @CsvFileSource(resources = "/gradient/examples.csv", useHeadersInDisplayName = true)
    @DisplayName("is met to its rounding, and a rule of thumb by as much as it is off:")
    void first(
            String id,
            String words,
            double published,
            String unit,
            double recomputed,
            String tolerance,
            String source) {
        double ours =
                switch (id) {
                    case "X01" -> rate(feetPerMile(200), 100);
                    case "X02" -> rate(feetPerMile(310), 90);
                    case "X03" -> rate(feetPerMile(200), 90);
                    case "X04" -> rate(GroundGradient.ofPercent(3.3), 150);
                    case "X05" -> feetPerMile(300).inPercent();
                    case "X06" ->
                            ClimbGradient.heightGained(
                                            GroundGradient.ofPercent(100),
                                            GroundDistance.ofNauticalMiles(1))
                                    .inFeet();
                    case "X07", "X15" -> degrees(5.0);
                    case "X08" -> degrees(5.4);
                    case "X16" -> 1.0 / headwind(8.0, 160.0);
                    case "X17" -> GroundSpeed.ofKnots(1).inMetresPerSecond() / 0.3048;
                    case "X18" -> 5.0 * ClimbGradient.instrumentRate(1.0, 0.0, 268.15);
                    case "X19" ->
                            ClimbGradient.required(
                                            AltitudeChange.ofFeet(6800),
                                            GroundDistance.ofNauticalMiles(12))
                                    .inFeetPerNauticalMile();
                    default -> throw new AssertionError(id + " is not compared");
                };
        assertThat(ours).isCloseTo(recomputed, within(5e-6 * recomputed));
        double off =
                switch (id) {
                    case "X01" -> 1.0;
                    case "X02" -> { // rounded up to the next 10
                        assertThat(RoundedUp.of(ours, 10.0)).isEqualTo(published);
                        yield 5.0;
                    }
                    case "X04" -> { // percent times knots, on the unsafe side
                        assertThat(3.3 * 150).isEqualTo(published).isLessThan(ours);
                        yield 6.3;
                    }
                    case "X05", "X18" -> 0.05;
                    case "X06" -> 0.2;
                    case "X07", "X08" -> 0.005;
                    case "X15" -> 0.05 * 3.0;
                    case "X17" -> 5e-4;
                    case "X19" -> 0.01; // 566.666… cut, not rounded
                    default -> 1e-9;
                };
        assertThat(ours).as(tolerance).isCloseTo(published, within(off));
        assertThat(source).isNotBlank();
    }

    @ParameterizedTest(name = "{0} {1}: {2} {3}")
    @CsvFileSource(resources = "/gradient/second-examples.csv", useHeadersInDisplayName = true)
    @DisplayName("of a second reading is met likewise:")
    void second(
            String id,
            String words,
            double published,
            String unit,
            double recomputed,
            String tolerance,
            String source) {
        double ours =
                switch (id) {
                    case "S01" -> rate(feetPerMile(350), 120);
                    case "S02" -> GroundGradient.ofPercent(8).inFeetPerNauticalMile();
                    case "S03" -> rate(feetPerMile(480), 180);
                    case "S04" -> rate(GroundGradient.ofPercent(5), 100);
                    case "S05" -> GroundGradient.ofPercent(1).inFeetPerNauticalMile();
                    case "S06" ->
                            ClimbAngles.groundGradient(ClimbAngle.ofDegrees(3))
                                    .inFeetPerNauticalMile();
                    case "S07" -> rate(GroundGradient.ofPercent(100), 1);
                    case "S08" ->
                            ClimbGradient.heightGained(
                                            GroundGradient.ofPercent(7.4),
                                            GroundDistance.ofMetres(1609.344))
                                    .inFeet();
                    default -> throw new AssertionError(id + " is not compared");
                };
        assertThat(ours).isCloseTo(recomputed, within(5e-6 * recomputed));
        double off =
                switch (id) {
                    case "S02" -> 0.013 * published;
                    case "S04" -> 0.16; // 5 times 100 times 101.3, of a factor 101.2686
                    case "S05" -> 0.02;
                    case "S06" -> 0.5;
                    case "S07" -> 0.05;
                    default -> 1e-9;
                };
        assertThat(ours).as(tolerance).isCloseTo(published, within(off));
        assertThat(source).isNotBlank();
    }

    @Test
    @DisplayName("is one of 13 and of 8")
    void rows() {
        assertThat(Table.rows("/gradient/examples.csv")).hasSize(13);
        assertThat(Table.rows("/gradient/second-examples.csv")).hasSize(8);
    }

    private static GroundGradient feetPerMile(double feet) {
        return GroundGradient.ofFeetPerNauticalMile(feet);
    }

    private static double rate(GroundGradient gradient, double knots) {
        return ClimbGradient.rate(gradient, GroundSpeed.ofKnots(knots)).inFeetPerMinute();
    }

    private static double degrees(double percent) {
        return ClimbAngles.angle(GroundGradient.ofPercent(percent)).inDegrees();
    }

    /** How much steeper a headwind makes a gradient so flat that its airspeed is horizontal. */
    private static double headwind(double windKnots, double tasKnots) {
        AirGradient flat = AirGradient.ofPercent(1e-6);
        return WindGradients.overGround(
                                flat,
                                TrueAirspeed.ofKnots(tasKnots),
                                AlongTrackWind.ofKnots(-windKnots))
                        .inPercent()
                / flat.inPercent();
    }
}
