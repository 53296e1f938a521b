package org.climbwright.gradient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.RoundingMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.climbwright.quantity.path.ClimbAngle;
import org.climbwright.quantity.path.GroundGradient;
import org.climbwright.quantity.speed.GeometricRate;
import org.climbwright.quantity.speed.GroundSpeed;

@Label("The geometry of a climb, over its whole range")
class GradientPropertyTest {
    @Property
    @Label("gives percent, feet per mile, angle, sine and rate there and back")
    void thereAndBack(
            @ForAll @DoubleRange(min = -1, max = 1) @Scale(6) double gradient,
            @ForAll @DoubleRange(min = 20, max = 400) double speed) {
        double close = 1e-14 * Math.abs(gradient) + 1e-300;
        GroundGradient typed = GroundGradient.ofMetresPerMetre(gradient);
        assertThat(GroundGradient.ofPercent(typed.inPercent()).inMetresPerMetre())
                .isCloseTo(gradient, within(close));
        assertThat(
                        GroundGradient.ofFeetPerNauticalMile(typed.inFeetPerNauticalMile())
                                .inMetresPerMetre())
                .isCloseTo(gradient, within(close));
        assertThat(ClimbAngles.gradient(ClimbAngles.angle(gradient)))
                .isCloseTo(gradient, within(close));
        assertThat(ClimbAngles.gradientFromSine(ClimbAngles.sine(gradient)))
                .isCloseTo(gradient, within(close));
        assertThat(ClimbGradient.gradient(ClimbGradient.rate(gradient, speed), speed))
                .isCloseTo(gradient, within(close));
        ClimbAngle angle = ClimbAngles.angle(typed);
        assertThat(ClimbAngles.groundGradient(angle).inMetresPerMetre())
                .isCloseTo(gradient, within(close));
    }

    @Property
    @Label("has a sine below the angle, and the angle below the tangent")
    void order(@ForAll @DoubleRange(min = 0.001, max = 10) @Scale(6) double gradient) {
        double angle = ClimbAngles.angle(gradient);
        assertThat(ClimbAngles.sine(gradient)).isLessThan(angle);
        assertThat(angle).isLessThan(gradient);
        assertThat(ClimbAngles.alongPath(1000.0, gradient)).isGreaterThan(1000.0);
        assertThat(ClimbAngles.rateAlongPath(100.0, angle))
                .isCloseTo(100.0 * ClimbAngles.sine(gradient), within(1e-12));
    }

    @Property
    @Label("gains in the distance for a height that height, at the rate required")
    void heightAndDistance(
            @ForAll @DoubleRange(min = 1, max = 20000) @Scale(6) double height,
            @ForAll @DoubleRange(min = 0.001, max = 1) @Scale(6) double gradient,
            @ForAll @DoubleRange(min = 20, max = 400) double speed) {
        double distance = ClimbGradient.distanceFor(height, gradient);
        assertThat(ClimbGradient.heightGained(gradient, distance))
                .isCloseTo(height, within(1e-15 * 4 * height));
        assertThat(ClimbGradient.required(height, distance))
                .isCloseTo(gradient, within(1e-15 * 4 * gradient));
        double minutes = distance / speed; // by time: another way to the rate
        assertThat(ClimbGradient.requiredRate(height, distance, speed) * minutes)
                .isCloseTo(height, within(1e-14 * height));
    }

    @Property
    @Label("has one gradient for air and ground in calm air")
    void calm(
            @ForAll @DoubleRange(min = -1, max = 1) @Scale(6) double gradient,
            @ForAll @DoubleRange(min = 20, max = 400) double tas) {
        double close = 1e-14 * Math.abs(gradient) + 1e-300;
        assertThat(WindGradients.overGround(gradient, tas, 0.0, 0.0))
                .isCloseTo(gradient, within(close));
        assertThat(WindGradients.throughAir(gradient, tas, 0.0, 0.0))
                .isCloseTo(gradient, within(close));
    }

    @Property
    @Label("steepens the gradient over the ground the more headwind, and leaves the one of the air")
    void headwind(
            @ForAll @DoubleRange(min = 0.001, max = 0.3) @Scale(6) double air,
            @ForAll @DoubleRange(min = 60, max = 300) double tas,
            @ForAll @DoubleRange(min = -25, max = 25) double wind,
            @ForAll @DoubleRange(min = -20, max = 20) double across,
            @ForAll @DoubleRange(min = 0.1, max = 5) double more) {
        double ground = WindGradients.overGround(air, tas, wind, across);
        assertThat(WindGradients.overGround(air, tas, wind - more, across)).isGreaterThan(ground);
        assertThat(WindGradients.throughAir(ground, tas, wind, across))
                .isCloseTo(air, within(1e-13 * air));
        assertThat(WindGradients.overGround(air, tas, wind, -across)).isEqualTo(ground);
    }

    @Property
    @Label("answers for gradients over the ground where it says so, and refuses elsewhere")
    void covers(
            @ForAll @DoubleRange(min = -11, max = 11) @Scale(6) double gradient,
            @ForAll @DoubleRange(min = 0, max = 300) double tas,
            @ForAll @DoubleRange(min = -310, max = 310) double wind,
            @ForAll @DoubleRange(min = -310, max = 310) double across) {
        boolean answers;
        try {
            double speed = WindGradients.groundSpeed(gradient, tas, wind, across);
            assertThat(speed).isPositive();
            double upAndAlong = gradient * speed * (gradient * speed) + square(speed - wind);
            assertThat(Math.sqrt(upAndAlong + across * across)) // the airspeed, by its parts
                    .isCloseTo(tas, within(1e-11 * (tas + Math.abs(wind))));
            answers = true;
        } catch (IllegalArgumentException refused) {
            answers = false;
        }
        assertThat(WindGradients.coversGroundSpeed(gradient, tas, wind, across)).isEqualTo(answers);
        boolean other;
        try {
            WindGradients.overGround(gradient, tas, wind, across);
            other = true;
        } catch (IllegalArgumentException refused) {
            other = false;
        }
        assertThat(WindGradients.coversOverGround(gradient, tas, wind, across)).isEqualTo(other);
    }

    private static double square(double value) {
        return value * value;
    }

    @Property
    @Label("has the approximate height of a level line below the exact one, by the next term")
    void curvature(@ForAll @DoubleRange(min = 1, max = 1e6) double distance) {
        double radius = EarthCurvature.MEAN_RADIUS_M;
        double exact = EarthCurvature.tangentHeight(distance, radius);
        double approximate = EarthCurvature.approximateTangentHeight(distance, radius);
        double angle = distance / radius;
        assertThat(approximate).isLessThan(exact * (1.0 + 1e-15));
        assertThat(approximate)
                .isCloseTo(
                        exact * (1.0 - 5.0 / 12.0 * angle * angle),
                        within(exact * (square(angle * angle) + 1e-14) + square(angle) * angle));
        assertThat(EarthCurvature.tangentHeight(distance, radius + 1000.0)).isLessThan(exact);
        assertThat(EarthCurvature.tangentHeight(1.01 * distance, radius)).isGreaterThan(exact);
    }

    @Property
    @Label("finds a straight line where the triangle with the centre of the earth has it")
    void straightLine(
            @ForAll @DoubleRange(min = -0.5, max = 1) @Scale(6) double gradient,
            @ForAll @DoubleRange(min = 1000, max = 1e6) double distance) {
        double radius = EarthCurvature.MEAN_RADIUS_M;
        double height = EarthCurvature.straightLineHeight(gradient, distance, radius);
        double angle = distance / radius;
        double up = StrictMath.atan(gradient); // law of sines, with 90 degrees and the angle up
        double sines = radius * StrictMath.cos(up) / StrictMath.cos(up + angle) - radius;
        assertThat(height).isCloseTo(sines, within(1e-7)); // some ulps of the radius
    }

    @Property
    @Label("rounds up to what whole numbers have, be the product in doubles above or below it")
    void roundedUp(
            @ForAll @IntRange(min = 1, max = 1500) int feetPerMile,
            @ForAll @IntRange(min = 30, max = 600) int knots,
            @ForAll @IntRange(min = 1, max = 100) int step) {
        GeometricRate rate =
                ClimbGradient.rate(
                        GroundGradient.ofFeetPerNauticalMile(feetPerMile),
                        GroundSpeed.ofKnots(knots));
        long exactSteps =
                BigDecimal.valueOf((long) feetPerMile * knots)
                        .divide(BigDecimal.valueOf(60L * step), 0, RoundingMode.CEILING)
                        .longValueExact();
        GeometricRate rounded = RoundedUp.of(rate, GeometricRate.ofFeetPerMinute(step));
        assertThat(rounded.inFeetPerMinute()).isEqualTo((double) exactSteps * step);
    }

    @Property
    @Label("rounds any value up by less than a step, and never to less but for noise")
    void safeSide(
            @ForAll @DoubleRange(min = -1e5, max = 1e5) @Scale(6) double value,
            @ForAll @DoubleRange(min = 0.01, max = 1000) @Scale(6) double step) {
        double rounded = RoundedUp.of(value, step);
        double noise = 2e-14 * Math.abs(value);
        assertThat(rounded).isGreaterThanOrEqualTo(value - noise);
        assertThat(rounded).isLessThan(value + step + noise);
        double steps = rounded / step;
        assertThat(steps).isCloseTo(Math.rint(steps), within(1e-15 * Math.abs(steps)));
    }
}
