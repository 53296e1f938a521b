package org.climbwright.performance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.atmosphere.wind.Wind;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.path.Side;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.path.TrueDirection;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.speed.TrueAirspeed;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

@DisplayName("A climb at a point")
class ClimbPointTest {
    private static final PressureAltitude FL200 = PressureAltitude.ofFlightLevel(200);
    private static final ClimbSpeed SPEED = ClimbSpeed.constant(CalibratedAirspeed.ofKnots(300));
    private static final double FEET_PER_MINUTE = 0.3048 / 60.0;

    private static ClimbPoint in(ClimbAir air) {
        return InventedAeroplanes.conditions(air).at(FL200, SPEED);
    }

    @Test
    @DisplayName("has a rate that is power over weight only at a constant true airspeed (Q16)")
    void powerIsNotRate() {
        String row =
                Table.rows("/gradient/pitfalls.csv").stream()
                        .filter(line -> line.startsWith("Q16,"))
                        .findFirst()
                        .orElseThrow();
        assertThat(row).contains("300 kt CAS at 20,000 ft").contains("divide by 1+AF");
        String[] factor =
                Table.rows("/performance/acceleration-factor.csv").stream()
                        .filter(line -> line.startsWith("AF-CAS-300.0-20000-0,"))
                        .findFirst()
                        .orElseThrow()
                        .split(",");
        ClimbPoint point = in(InventedAeroplanes.CALM);
        double geopotential = point.sine() * point.trueAirspeed().inMetresPerSecond();
        assertThat(point.specificExcessPowerMps() / geopotential)
                .isCloseTo(Double.parseDouble(factor[7]), within(1e-8));
        // in standard air a metre of one is a metre of the other
        assertThat(point.pressureAltitudeRate().inMetresPerSecond())
                .isCloseTo(geopotential, within(1e-10));
        ClimbPoint warm = in(InventedAeroplanes.air(20.0, Winds.calm()));
        double standard = 288.15 - 0.0065 * FL200.inMetres();
        double warmGeopotential = warm.sine() * warm.trueAirspeed().inMetresPerSecond();
        assertThat(warm.pressureAltitudeRate().inMetresPerSecond())
                .isCloseTo(
                        warmGeopotential * standard / (standard + 20.0),
                        within(1e-10 * warmGeopotential));
        assertThat(warm.geometricRate().inMetresPerSecond()).isGreaterThan(warmGeopotential);
    }

    @Test
    @DisplayName("is lifted a fifth by a headwind that rises 5 kn in 1,000 ft, at 450 kn")
    void windIsWorthAFifth() {
        // w = V/g0 dW/dH; all rates over 1 + w for what lift has no part in
        double knot = 1852.0 / 3600.0;
        double shear = 5.0 * knot / 304.8;
        Aeroplane noLiftDrag =
                Aeroplane.of(
                        2,
                        (liftN, mach, q, use) -> 30000.0,
                        (mach, pressurePa, temperatureK, use) -> 60000.0,
                        (thrustN, mach, pressurePa, temperatureK, use) -> 1.0);
        ClimbSpeed steady = ClimbSpeed.accelerating(TrueAirspeed.ofKnots(450), 0.0);
        PressureAltitude level = PressureAltitude.ofFlightLevel(250);
        ClimbConditions calm =
                ClimbConditions.of(noLiftDrag, InventedAeroplanes.CALM, Mass.ofKilograms(60000));
        ClimbPoint still = calm.at(level, steady);
        ClimbPoint sheared =
                calm.withAir(InventedAeroplanes.air(0.0, InventedAeroplanes.tailwind(0.0, -shear)))
                        .at(level, steady);
        double w = 450.0 * knot / 9.80665 * shear;
        assertThat(w).isCloseTo(0.1992, within(5e-5));
        double factor = sheared.windFactor().orElseThrow();
        assertThat(factor).isCloseTo(-w, within(1e-9));
        double cosine = Math.sqrt(1.0 - sheared.sine() * sheared.sine());
        assertThat(sheared.sine() * (1.0 - w * cosine)).isCloseTo(still.sine(), within(1e-10));
        double worth =
                sheared.worthOfWindGradient().orElseThrow().inMetresPerSecond()
                        / sheared.pressureAltitudeRate().inMetresPerSecond();
        // 20 % of the rate with it, 25 % of that without
        assertThat(worth).isCloseTo(w * cosine, within(1e-9));
        assertThat(worth).isCloseTo(0.20, within(0.002));
        assertThat(still.worthOfWindGradient().orElseThrow().inMetresPerSecond()).isZero();
    }

    @Test
    @DisplayName("says where its forces come from")
    void forces() {
        ClimbPoint point = in(InventedAeroplanes.CALM);
        double pressure = StandardAir.pressureFromAltitude(FL200.inMetres());
        assertThat(point.thrustN()).isCloseTo(2.0 * pressure, within(1e-9));
        double q = 0.7 * pressure * point.mach().number() * point.mach().number();
        double cosine = Math.sqrt(1.0 - point.sine() * point.sine());
        assertThat(point.liftN()).isCloseTo(60000.0 * 9.80665 * cosine, within(1e-6));
        assertThat(point.dragN())
                .isCloseTo(
                        120.0 * 0.02 * q + 0.045 * point.liftN() * point.liftN() / (120.0 * q),
                        within(1e-6));
        assertThat(point.liftToDrag()).isCloseTo(point.liftN() / point.dragN(), within(0.0));
        assertThat(point.calibratedAirspeed().inKnots()).isCloseTo(300.0, within(1e-10));
        assertThat(point.mass()).isEqualTo(Mass.ofKilograms(60000.0));
        assertThat(point.pressureAltitude()).isEqualTo(FL200);
        assertThat(point.fuelFlow().inKilogramsPerSecond())
                .isCloseTo(1.6e-5 * point.thrustN(), within(1e-12));
        double seconds = 304.8 / point.pressureAltitudeRate().inMetresPerSecond();
        assertThat(point.fuelFor(AltitudeChange.ofFeet(1000)).orElseThrow().inKilograms())
                .isCloseTo(seconds * point.fuelFlow().inKilogramsPerSecond(), within(1e-9));
        assertThat(point.toString()).contains("ft/min at 20000 ft");
    }

    @Test
    @DisplayName("has an angle whose tangent is the gradient, and over the ground that of the wind")
    void anglesAndGradients() {
        Winds head = Winds.uniform(Wind.ofComponents(-20.0, 10.0));
        ClimbAir air = ClimbAir.of(Atmosphere.standard(), head, TrueDirection.ofDegrees(90));
        ClimbPoint point = in(air);
        double gradient = point.airGradient().inMetresPerMetre();
        assertThat(StrictMath.tan(point.climbAngle().inRadians()))
                .isCloseTo(gradient, within(1e-14));
        double tas = point.trueAirspeed().inMetresPerSecond();
        double rate = point.geometricRate().inMetresPerSecond();
        double ground = Math.sqrt(tas * tas - rate * rate - 100.0) - 20.0;
        assertThat(point.groundSpeed().orElseThrow().inMetresPerSecond())
                .isCloseTo(ground, within(1e-9));
        assertThat(point.groundGradient().orElseThrow().inMetresPerMetre())
                .isCloseTo(rate / ground, within(1e-12));
        assertThat(point.worthOfWindGradient().orElseThrow().inMetresPerSecond())
                .isCloseTo(0.0, within(1e-9));
    }

    @Test
    @DisplayName("tells what acceleration is worth: less at constant CAS, more at constant Mach")
    void worthOfAcceleration() {
        ClimbPoint held = in(InventedAeroplanes.CALM);
        ClimbPoint steady =
                InventedAeroplanes.conditions(InventedAeroplanes.CALM)
                        .at(FL200, ClimbSpeed.accelerating(held.trueAirspeed(), 0.0));
        double rate = held.pressureAltitudeRate().inMetresPerSecond();
        assertThat(held.worthOfAcceleration().inMetresPerSecond())
                .isNegative()
                .isCloseTo(rate - steady.pressureAltitudeRate().inMetresPerSecond(), within(1e-9));
        ClimbPoint mach =
                InventedAeroplanes.conditions(InventedAeroplanes.CALM)
                        .at(FL200, ClimbSpeed.constant(Mach.of(0.6)));
        assertThat(mach.worthOfAcceleration().inMetresPerSecond()).isPositive();
        ClimbPoint stated =
                InventedAeroplanes.conditions(InventedAeroplanes.CALM)
                        .at(FL200, ClimbSpeed.accelerating(held.trueAirspeed(), 0.5));
        // a / g0 is what the sine loses, but for the lift's change
        assertThat(steady.sine() - stated.sine()).isCloseTo(0.5 / 9.80665, within(1e-3));
        assertThat(stated.accelerationFactor()).isZero();
        assertThat(stated.worthOfAcceleration().inMetresPerSecond()).isNegative();
    }

    @Test
    @DisplayName("gives its power to the climb, to a stated acceleration and to the wind, by hand")
    void sharesOfPower() {
        ClimbAir sheared = InventedAeroplanes.air(0.0, InventedAeroplanes.tailwind(5.0, 0.004));
        ClimbSpeed stated = ClimbSpeed.accelerating(TrueAirspeed.ofMetresPerSecond(180), 0.5);
        ClimbPoint point = InventedAeroplanes.conditions(sheared).at(FL200, stated);
        // V a / g0, and V sin g · (V / g0) dW/dH · cos g
        assertThat(point.powerOfAccelerationMps()).isCloseTo(180.0 * 0.5 / 9.80665, within(1e-12));
        double cosine = Math.sqrt(1.0 - point.sine() * point.sine());
        assertThat(point.powerOfClimbMps()).isCloseTo(180.0 * point.sine(), within(1e-12));
        assertThat(point.powerOfWindChangeMps().orElseThrow())
                .isCloseTo(180.0 * point.sine() * 180.0 / 9.80665 * 0.004 * cosine, within(1e-9));
        ClimbPoint held = in(InventedAeroplanes.CALM);
        assertThat(held.powerOfAccelerationMps())
                .isCloseTo(held.powerOfClimbMps() * held.accelerationFactor(), within(1e-12));
        assertThat(held.powerOfWindChangeMps().orElseThrow()).isCloseTo(0.0, within(1e-12));
    }

    @Test
    @DisplayName("makes do without a wind that nobody knows, and says so")
    void unknownWind() {
        ClimbPoint point = in(InventedAeroplanes.CALM.withWinds(InventedAeroplanes.unknown()));
        ClimbPoint calm = in(InventedAeroplanes.CALM);
        assertThat(point.windFactor()).isEmpty();
        assertThat(point.worthOfWindGradient()).isEmpty();
        assertThat(point.groundGradient()).isEmpty();
        assertThat(point.groundSpeed()).isEmpty();
        assertThat(point.pressureAltitudeRate()).isEqualTo(calm.pressureAltitudeRate());
        assertThat(calm.windFactor()).hasValue(0.0);
    }

    @Test
    @DisplayName("has no gradient over a ground from which the wind keeps it")
    void trackNotKept() {
        Winds gale = Winds.uniform(Wind.ofComponents(-300.0, 0.0));
        ClimbPoint point = in(InventedAeroplanes.CALM.withWinds(gale));
        assertThat(point.windFactor()).isPresent();
        assertThat(point.groundGradient()).isEmpty();
        Winds across = Winds.uniform(Wind.ofComponents(0.0, 300.0));
        assertThat(in(InventedAeroplanes.CALM.withWinds(across)).groundGradient()).isEmpty();
    }

    @Test
    @DisplayName("jumps at the tropopause, where each side has its own lapse")
    void sides() {
        ClimbConditions conditions = InventedAeroplanes.conditions(InventedAeroplanes.CALM);
        PressureAltitude tropopause = PressureAltitude.ofMetres(11000);
        ClimbSpeed speed = ClimbSpeed.constant(Mach.of(0.78));
        ClimbPoint below = conditions.at(tropopause, Side.BELOW, speed);
        ClimbPoint above = conditions.at(tropopause, Side.ABOVE, speed);
        assertThat(below.accelerationFactor()).isCloseTo(-0.0810, within(5e-4));
        assertThat(above.accelerationFactor()).isCloseTo(0.0, within(1e-11));
        assertThat(conditions.at(tropopause, speed).sine()).isEqualTo(above.sine());
        assertThat(below.sine()).isGreaterThan(above.sine());
    }

    @Test
    @DisplayName("has no fuel for a gain where it does not climb, and none for a gain below 0")
    void descends() {
        ClimbConditions heavy =
                InventedAeroplanes.conditions(InventedAeroplanes.CALM)
                        .withMass(Mass.ofKilograms(150000));
        ClimbPoint point = heavy.at(PressureAltitude.ofFlightLevel(390), SPEED);
        assertThat(point.pressureAltitudeRate().inFeetPerMinute()).isNegative();
        assertThat(point.fuelFor(AltitudeChange.ofFeet(1000))).isEmpty();
        assertThatThrownBy(() -> point.fuelFor(AltitudeChange.ofFeet(-1)))
                .isInstanceOf(OutsideModelException.class);
    }

    @Test
    @DisplayName("climbs with a share of its thrust where that is reduced, and all of it above")
    void reducedThrust() {
        ReducedThrust reduced =
                ReducedThrust.of(
                        0.8, PressureAltitude.ofFeet(10000), PressureAltitude.ofFeet(15000));
        ClimbConditions full = InventedAeroplanes.conditions(InventedAeroplanes.CALM);
        ClimbConditions less = full.withReducedThrust(reduced);
        for (double feet : new double[] {5000, 10000, 12500, 15000, 20000}) {
            PressureAltitude level = PressureAltitude.ofFeet(feet);
            double share = feet <= 10000 ? 0.8 : feet >= 15000 ? 1.0 : 0.9;
            assertThat(reduced.share(level)).isCloseTo(share, within(1e-15));
            assertThat(less.at(level, SPEED).thrustN())
                    .isCloseTo(share * full.at(level, SPEED).thrustN(), within(1e-9));
        }
        assertThat(reduced.bendsM()).containsExactly(10000 * 0.3048, 15000 * 0.3048);
        assertThat(ReducedThrust.none().bendsM()).isEmpty();
        assertThat(ReducedThrust.none().share(-5000.0)).isEqualTo(1.0);
        assertThat(reduced.toString())
                .isEqualTo("0.8 of the thrust to 10000 ft, all from 15000 ft");
    }

    @Nested
    @DisplayName("refuses")
    class Refuses {
        private final ClimbConditions conditions =
                InventedAeroplanes.conditions(InventedAeroplanes.CALM);

        @Test
        @DisplayName("a speed beyond Mach 1, and says so beforehand")
        void supersonic() {
            ClimbSpeed fast = ClimbSpeed.constant(Mach.of(1.01));
            assertThat(conditions.covers(FL200.inMetres(), Side.ABOVE, fast)).isFalse();
            assertThat(conditions.covers(FL200.inMetres(), Side.ABOVE, SPEED)).isTrue();
            assertThatThrownBy(() -> conditions.at(FL200, fast))
                    .isInstanceOf(OutsideModelException.class)
                    .hasMessageStartingWith("Mach number must be from 0.0 to 1.0, but was 1.01");
        }

        @Test
        @DisplayName("a level outside the air")
        void outside() {
            assertThat(conditions.covers(90000.0, Side.ABOVE, SPEED)).isFalse();
            assertThatThrownBy(() -> conditions.at(PressureAltitude.ofMetres(90000), SPEED))
                    .isInstanceOf(OutsideModelException.class);
        }

        @Test
        @DisplayName("a climb straight up, where the forces balance at no angle")
        void noAngle() {
            Aeroplane rocket =
                    Aeroplane.of(
                            1,
                            (liftN, mach, q, use) -> 1.0,
                            (mach, pressurePa, temperatureK, use) -> 20000.0,
                            (thrustN, mach, pressurePa, temperatureK, use) -> 0.0);
            ClimbConditions up =
                    ClimbConditions.of(rocket, InventedAeroplanes.CALM, Mass.ofKilograms(1000));
            assertThatThrownBy(() -> up.at(FL200, SPEED))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageStartingWith(
                            "the forces balance at no angle of climb: a thrust of 20000.0 N");
        }

        @Test
        @DisplayName("conditions that cannot be")
        void conditionsThatCannotBe() {
            assertThatThrownBy(() -> conditions.withMass(Mass.ofKilograms(0)))
                    .hasMessage("an aeroplane needs a mass above 0 kg, but it was 0 kg");
            assertThatThrownBy(() -> conditions.withUse(EngineUse.climb(3)))
                    .hasMessage(
                            "no more engines can run than the 2 of the aeroplane, but the number"
                                    + " was 3");
            assertThatThrownBy(() -> conditions.withBankOfDegrees(81))
                    .isInstanceOf(OutsideModelException.class);
            assertThatThrownBy(() -> ClimbSpeed.constant(Mach.of(0)))
                    .isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> ReducedThrust.of(0.8, FL200, FL200))
                    .isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> ReducedThrust.of(1.1, FL200, FL200))
                    .isInstanceOf(OutsideModelException.class);
            assertThat(ClimbMotion.coversBank(0.5)).isTrue();
            assertThat(ClimbMotion.coversBank(-0.1)).isFalse();
        }
    }

    @Test
    @DisplayName("shows a rate in feet per minute that a pilot expects of such an aeroplane")
    void plausible() {
        double rate =
                in(InventedAeroplanes.CALM).pressureAltitudeRate().inMetresPerSecond()
                        / FEET_PER_MINUTE;
        assertThat(rate).isBetween(500.0, 4000.0);
    }
}
