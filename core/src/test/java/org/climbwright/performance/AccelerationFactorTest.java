package org.climbwright.performance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.testing.FiftyDigits.DIGITS;

import java.math.BigDecimal;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.climbwright.airspeed.AirspeedConversion;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.EquivalentAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.speed.TrueAirspeed;
import org.climbwright.quantity.temperature.IsaDeviation;
import org.climbwright.testing.Agreement;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The acceleration factor")
class AccelerationFactorTest {
    private static final String TABLE = "/performance/acceleration-factor.csv";
    private static final String PUBLISHED = "/performance/acceleration-factor-published.csv";
    private static final String LEFT_OUT = "/performance/rows-left-out-point.csv";

    @ParameterizedTest(name = "{1} {2} at {3} ft, ISA{4}: {7}")
    @CsvFileSource(resources = TABLE, useHeadersInDisplayName = true)
    @DisplayName("is that of the table, at a point of a climb:")
    void isThatOfTheTable(
            String id,
            String schedule,
            double value,
            double feet,
            double deviation,
            double mach,
            double tasKnots,
            double onePlus,
            double multiplier,
            String source) {
        ClimbSpeed speed =
                switch (schedule) {
                    case "CAS" -> ClimbSpeed.constant(CalibratedAirspeed.ofKnots(value));
                    case "EAS" -> ClimbSpeed.constant(EquivalentAirspeed.ofKnots(value));
                    default -> ClimbSpeed.constant(Mach.of(value));
                };
        ClimbPoint point =
                InventedAeroplanes.conditions(InventedAeroplanes.air(deviation, Winds.calm()))
                        .at(PressureAltitude.ofFeet(feet), speed);
        // half the last digit of a Mach number of 8 and a true airspeed of 5 decimals
        assertThat(point.mach().number()).isCloseTo(mach, within(5.1e-9));
        assertThat(point.trueAirspeed().inKnots()).isCloseTo(tasKnots, within(5.1e-6));
        double ours = 1.0 + point.accelerationFactor();
        assertThat(ours).isCloseTo(onePlus, within(1e-8 * onePlus));
        assertThat(1.0 / ours).isCloseTo(multiplier, within(1e-8 * multiplier));
        assertThat(source).isNotBlank();
    }

    @ParameterizedTest(name = "{0} {1}: {2}")
    @CsvFileSource(resources = PUBLISHED, useHeadersInDisplayName = true)
    @DisplayName("agrees with what is published:")
    void published(
            String id, String statement, String published, String recomputed, String source) {
        assertThat(source).isNotBlank();
        double squareOfMach = AccelerationFactor.atConstantMach(1.0, -0.0065);
        switch (id) {
            case "AFP1" -> {
                // a rounded 0.13335, 0.12 % off the constants of the standard
                double off = Double.parseDouble(published) / -squareOfMach - 1.0;
                assertThat(off).isCloseTo(0.00124, within(5e-5));
                assertThat(-squareOfMach).isCloseTo(Double.parseDouble(recomputed), within(5e-9));
            }
            case "AFP3" -> {
                ClimbPoint steady = atFlightLevel200(ClimbSpeed.accelerating(tas(), 0.0));
                ClimbPoint held = atFlightLevel200(speed300());
                assertThat(held.sine() * (1.0 + held.accelerationFactor()))
                        .isCloseTo(steady.sine(), within(1e-3 * steady.sine())); // lift differs
            }
            case "AFP4" -> {
                ClimbPoint held = atFlightLevel200(speed300());
                double climbs = held.sine() * held.trueAirspeed().inMetresPerSecond();
                assertThat(climbs * (1.0 + held.accelerationFactor()))
                        .isCloseTo(held.specificExcessPowerMps(), within(1e-11));
            }
            case "AFP5" -> {
                assertThat(-squareOfMach).isCloseTo(0.133184, within(5e-7));
                assertThat(AccelerationFactor.atConstantEas(1.0, -0.0065, 1.0))
                        .isCloseTo(0.5668158, within(5e-8));
                assertThat(AccelerationFactor.atConstantMach(0.8, 0.0)).isZero();
                assertThat(AccelerationFactor.atConstantEas(0.8, 0.0, 1.0))
                        .isCloseTo(0.7 * 0.64, within(1e-15));
            }
            default -> assertThat(leftOut()).contains(id);
        }
    }

    private static TrueAirspeed tas() {
        return atFlightLevel200(speed300()).trueAirspeed();
    }

    private static ClimbSpeed speed300() {
        return ClimbSpeed.constant(CalibratedAirspeed.ofKnots(300));
    }

    private static ClimbPoint atFlightLevel200(ClimbSpeed speed) {
        return InventedAeroplanes.conditions(InventedAeroplanes.CALM)
                .at(PressureAltitude.ofFlightLevel(200), speed);
    }

    private static Set<String> leftOut() {
        return Table.rows(LEFT_OUT).stream()
                .map(row -> row.split(",")[1])
                .collect(Collectors.toSet());
    }

    @Test
    @DisplayName("is checked with 52 rows and 6, of which 2 are left out for a reason")
    void rows() {
        assertThat(Table.rows(TABLE)).hasSize(52);
        assertThat(Table.rows(PUBLISHED)).hasSize(6);
        assertThat(Table.rows(LEFT_OUT)).hasSize(2);
        assertThat(leftOut()).containsExactlyInAnyOrder("AFP2", "AFP6");
    }

    @Test
    @DisplayName(
            "leaves 78 % of the power at 300 kn and FL280, and adds 9 % at Mach 0.78 and FL320")
    void wellKnown() {
        double pressure = StandardAir.pressureFromAltitude(28000 * 0.3048);
        double mach = AirspeedConversion.machFromCas(300 * 1852 / 3600.0, pressure);
        assertThat(1.0 / (1.0 + AccelerationFactor.atConstantCas(mach, -0.0065, 1.0)))
                .isCloseTo(0.783, within(5e-4));
        assertThat(1.0 / (1.0 + AccelerationFactor.atConstantMach(0.78, -0.0065)))
                .isCloseTo(1.088, within(5e-4));
    }

    @Test
    @DisplayName("is exact to 1e-15 against fifty digits")
    void fiftyDigits() {
        Random random = new Random(20260101L);
        double worst = 0.0;
        for (int i = 0; i < 3000; i++) {
            double mach = i % 10 == 0 ? 1e-4 * random.nextDouble() : random.nextDouble();
            double lapse = -0.01 + 0.02 * random.nextDouble();
            double ratio = 0.97 + 0.03 * random.nextDouble();
            BigDecimal square = new BigDecimal(mach).multiply(new BigDecimal(mach));
            BigDecimal base = square.multiply(new BigDecimal("0.2")).add(BigDecimal.ONE);
            BigDecimal root = base.sqrt(DIGITS);
            BigDecimal impact =
                    base.pow(3)
                            .multiply(root)
                            .subtract(BigDecimal.ONE)
                            .divide(base.pow(2).multiply(root), DIGITS);
            BigDecimal byLapse =
                    square.multiply(new BigDecimal("0.7"))
                            .multiply(new BigDecimal("287.05287"))
                            .multiply(new BigDecimal(lapse))
                            .divide(new BigDecimal("9.80665"), DIGITS);
            BigDecimal constant = square.multiply(new BigDecimal("0.7"));
            BigDecimal share = new BigDecimal(ratio);
            worst =
                    Math.max(
                            worst,
                            Math.abs(
                                    Agreement.error(
                                            AccelerationFactor.atConstantCas(mach, lapse, ratio),
                                            impact.multiply(share).add(byLapse))));
            worst =
                    Math.max(
                            worst,
                            Math.abs(
                                    Agreement.error(
                                            AccelerationFactor.atConstantEas(mach, lapse, ratio),
                                            constant.multiply(share).add(byLapse))));
            worst =
                    Math.max(
                            worst,
                            Math.abs(
                                    Agreement.error(
                                            AccelerationFactor.atConstantMach(mach, lapse),
                                            byLapse)));
        }
        assertThat(worst).isLessThan(1e-15);
    }

    @ParameterizedTest(name = "{0} kn at {1} m, ISA{2}")
    @CsvSource({"250, 1500, 0", "300, 6000, -15", "280, 8000, 20", "250, 12000, 10"})
    @DisplayName("is the slope of the true airspeed along an atmosphere:")
    void isASlope(double knots, double altitude, double deviation) {
        Atmosphere air = Atmosphere.withDeviationAtEachPressure(IsaDeviation.ofKelvins(deviation));
        double cas = knots * 1852.0 / 3600.0;
        double half = 5.0;
        double speed = tas(air, cas, altitude);
        double slope =
                (tas(air, cas, altitude + half) - tas(air, cas, altitude - half))
                        / (height(air, altitude + half) - height(air, altitude - half));
        ClimbPoint point =
                InventedAeroplanes.conditions(InventedAeroplanes.air(deviation, Winds.calm()))
                        .at(
                                PressureAltitude.ofMetres(altitude),
                                ClimbSpeed.constant(CalibratedAirspeed.ofMetresPerSecond(cas)));
        // a central difference over 10 m: 1e-9 by its curvature, 1e-11 by rounding
        assertThat(point.accelerationFactor()).isCloseTo(speed / 9.80665 * slope, within(3e-8));
    }

    private static double tas(Atmosphere air, double cas, double altitude) {
        double pressure = StandardAir.pressureFromAltitude(altitude);
        return AirspeedConversion.tasFromMach(
                AirspeedConversion.machFromCas(cas, pressure), air.temperature(pressure));
    }

    private static double height(Atmosphere air, double altitude) {
        return air.geopotentialAltitude(StandardAir.pressureFromAltitude(altitude));
    }

    @Test
    @DisplayName("refuses what lies outside, and says the same beforehand")
    void refuses() {
        assertThatThrownBy(() -> AccelerationFactor.atConstantMach(1.01, 0.0))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageStartingWith("Mach number must be from 0.0 to 1.0");
        assertThatThrownBy(() -> AccelerationFactor.atConstantCas(0.5, 11.0, 1.0))
                .isInstanceOf(OutsideModelException.class);
        assertThatThrownBy(() -> AccelerationFactor.atConstantEas(0.5, 0.0, Double.NaN))
                .isInstanceOf(OutsideModelException.class);
        assertThat(AccelerationFactor.covers(1.0, 0.0, 1.0)).isTrue();
        assertThat(AccelerationFactor.covers(1.01, 0.0, 1.0)).isFalse();
        assertThat(AccelerationFactor.covers(0.5, -11.0, 1.0)).isFalse();
        assertThat(AccelerationFactor.covers(0.5, 0.0, 1.01)).isFalse();
    }
}
