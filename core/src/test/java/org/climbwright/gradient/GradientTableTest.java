package org.climbwright.gradient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.testing.Agreement.printedAs;

import org.climbwright.atmosphere.StandardAir;
import org.climbwright.atmosphere.altimetry.VerticalRates;
import org.climbwright.path.GroundTrack;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.AirGradient;
import org.climbwright.quantity.path.ClimbAngle;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.path.GroundGradient;
import org.climbwright.quantity.speed.AlongTrackWind;
import org.climbwright.quantity.speed.GeometricRate;
import org.climbwright.quantity.speed.GroundSpeed;
import org.climbwright.quantity.speed.TrueAirspeed;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("The geometry of a climb, as computed elsewhere and as printed,")
class GradientTableTest {
    private static final String GRID = "/gradient/rate-by-ground-speed.csv";
    private static final String WIND = "/gradient/wind.csv";
    private static final String EARTH = "/gradient/earth-curvature.csv";
    private static final String COLD = "/gradient/geometric-per-pressure-altitude.csv";
    private static final String DESCENT = "/gradient/rate-of-descent.csv";

    @ParameterizedTest(name = "{0} ft/NM at {1} kn is {2} ft/min")
    @CsvFileSource(resources = GRID, useHeadersInDisplayName = true)
    @DisplayName("has the rate, the percent and the angle of a gradient")
    void rate(
            double feetPerMile,
            double knots,
            String feetPerMinute,
            String percent,
            String degrees,
            String source) {
        GroundGradient gradient = GroundGradient.ofFeetPerNauticalMile(feetPerMile);
        GroundSpeed speed = GroundSpeed.ofKnots(knots);
        GeometricRate rate = ClimbGradient.rate(gradient, speed);
        assertThat(rate.inFeetPerMinute()).is(printedAs(feetPerMinute, 9));
        assertThat(gradient.inPercent()).is(printedAs(percent, 9));
        assertThat(ClimbAngles.angle(gradient).inDegrees()).is(printedAs(degrees, 9));
        assertThat(ClimbGradient.gradient(rate, speed).inPercent()).is(printedAs(percent, 9));
        assertThat(source).isNotBlank();
    }

    @ParameterizedTest(name = "{0} kn, {1} kn against it: {3} is {4}")
    @CsvFileSource(resources = WIND, useHeadersInDisplayName = true)
    @DisplayName("has both gradients in a wind, and not those of the airspeed taken as horizontal")
    void wind(
            double tasKnots,
            double headwindKnots,
            double feetPerMinute,
            String airPercent,
            String groundPercent,
            String groundFeetPerMile,
            String smallAngle,
            String source) {
        TrueAirspeed tas = TrueAirspeed.ofKnots(tasKnots);
        AlongTrackWind wind = AlongTrackWind.ofKnots(-headwindKnots);
        AirGradient air =
                AirGradient.ofMetresPerMetre(
                        GroundTrack.airGradient(
                                tas.inMetresPerSecond(),
                                GeometricRate.ofFeetPerMinute(feetPerMinute).inMetresPerSecond()));
        GroundGradient ground = WindGradients.overGround(air, tas, wind);
        assertThat(air.inPercent()).is(printedAs(airPercent, 9));
        assertThat(ground.inPercent()).is(printedAs(groundPercent, 9));
        assertThat(ground.inPercent()).isNotCloseTo(number(smallAngle), within(1e-3));
        assertThat(ground.inFeetPerNauticalMile()).is(printedAs(groundFeetPerMile, 9));
        assertThat(WindGradients.throughAir(ground, tas, wind).inPercent())
                .is(printedAs(airPercent, 9));
        GroundSpeed speed = WindGradients.groundSpeed(ground, tas, wind);
        assertThat(ClimbGradient.rate(ground, speed).inFeetPerMinute())
                .isCloseTo(feetPerMinute, within(1e-9));
        assertThat(source).isNotBlank();
    }

    @ParameterizedTest(name = "{0} NM: {2} ft")
    @CsvFileSource(resources = EARTH, useHeadersInDisplayName = true)
    @DisplayName("has the height of a level line above the curved earth")
    void earth(double miles, String approximateFeet, String exactFeet, String source) {
        GroundDistance distance = GroundDistance.ofNauticalMiles(miles);
        double approximate =
                EarthCurvature.approximateTangentHeight(
                        distance.inMetres(), EarthCurvature.MEAN_RADIUS_M);
        assertThat(EarthCurvature.tangentHeight(distance).inFeet()).is(printedAs(exactFeet, 9));
        assertThat(AltitudeChange.ofMetres(approximate).inFeet()).is(printedAs(approximateFeet, 9));
        assertThat(source).isNotBlank();
    }

    @ParameterizedTest(name = "{0} ft, {1} K off standard: {3}")
    @CsvFileSource(resources = COLD, useHeadersInDisplayName = true)
    @DisplayName("has the true feet of the instrument's")
    void cold(double feet, double deviation, String ratio, String feetPerThousand, String source) {
        double altitude = PressureAltitude.ofFeet(feet).inMetres();
        double temperature = StandardAir.temperatureFromAltitude(altitude) + deviation;
        // the table counts in geopotential feet: a true foot at 30,000 ft is 0.29 % more
        double geopotential =
                VerticalRates.geometricPerPressureAltitude(altitude, temperature)
                        / VerticalRates.geometricPerPressureAltitude(
                                altitude, StandardAir.temperatureFromAltitude(altitude));
        assertThat(geopotential).is(printedAs(ratio, 9));
        assertThat(1000.0 * geopotential).is(printedAs(feetPerThousand, 8));
        double atSeaLevel = ClimbGradient.instrumentRate(5.0, altitude, temperature);
        assertThat(5.0 / atSeaLevel).isCloseTo(number(ratio), within(0.0032 * number(ratio)));
        assertThat(source).isNotBlank();
    }

    @ParameterizedTest(name = "{0} deg at {1} kn: {2} ft/min")
    @CsvFileSource(resources = DESCENT, useHeadersInDisplayName = true)
    @DisplayName("gives a legend's rates of descent, speed times the sine, which are no gradients")
    void descent(double degrees, double knots, double printed, String source) {
        GroundSpeed speed = GroundSpeed.ofKnots(knots);
        ClimbAngle angle = ClimbAngle.ofDegrees(degrees);
        double sine =
                GeometricRate.ofMetresPerSecond(
                                ClimbAngles.rateAlongPath(
                                        speed.inMetresPerSecond(), angle.inRadians()))
                        .inFeetPerMinute();
        double tangent =
                ClimbGradient.rate(ClimbAngles.groundGradient(angle), speed).inFeetPerMinute();
        if (degrees == 12.0) { // printed as 21 times the knots, which neither relation has
            assertThat(printed).isEqualTo(21.0 * knots);
        } else {
            // to whole 5 ft/min is 2.5; a few cells are a hand's rounding farther
            assertThat(printed).isCloseTo(sine, within(4.0));
        }
        // what a ground speed needs is more, from 0.06 % at 2 degrees to 2.2 % at 12
        assertThat(tangent)
                .isCloseTo(sine / StrictMath.cos(angle.inRadians()), within(1e-9 * sine));
        assertThat(tangent).isGreaterThan(sine * 1.0006);
        assertThat(source).isNotBlank();
    }

    @Test
    @DisplayName("differs from the legend at the steepest angles by more than its rounding")
    void notTheTangent() {
        long beyond =
                Table.rows(DESCENT).stream()
                        .map(row -> row.split(","))
                        .filter(row -> number(row[0]) < 12.0)
                        .filter(
                                row ->
                                        ClimbGradient.rate(
                                                                        ClimbAngles.groundGradient(
                                                                                ClimbAngle
                                                                                        .ofDegrees(
                                                                                                number(
                                                                                                        row[
                                                                                                                0]))),
                                                                        GroundSpeed.ofKnots(
                                                                                number(row[1])))
                                                                .inFeetPerMinute()
                                                        - number(row[2])
                                                > 4.0)
                        .count();
        assertThat(beyond).isGreaterThan(30);
    }

    @Test
    @DisplayName("is compared in every row")
    void rows() {
        assertThat(Table.rows(GRID)).hasSize(74);
        assertThat(Table.rows(WIND)).hasSize(14);
        assertThat(Table.rows(EARTH)).hasSize(7);
        assertThat(Table.rows(COLD)).hasSize(11);
        assertThat(Table.rows(DESCENT)).hasSize(154);
    }

    private static double number(String text) {
        return Double.parseDouble(text);
    }
}
