package org.climbwright.performance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.climbwright.atmosphere.wind.Wind;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.path.Side;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.speed.TrueAirspeed;

@Label("A climb at any point of any aeroplane")
class ClimbPointPropertyTest {
    @Provide
    Arbitrary<Aeroplane> jets() {
        return InventedAeroplanes.jets();
    }

    @Provide
    Arbitrary<Double> loads() {
        return Arbitraries.doubles().between(3000.0, 6000.0).ofScale(3);
    }

    @Provide
    Arbitrary<Double> levels() {
        return Arbitraries.doubles().between(0.0, 10500.0).ofScale(3);
    }

    @Provide
    Arbitrary<ClimbSpeed> speeds() {
        return Arbitraries.doubles()
                .between(180.0, 280.0)
                .ofScale(3)
                .map(knots -> ClimbSpeed.constant(CalibratedAirspeed.ofKnots(knots)));
    }

    @Provide
    Arbitrary<Double> winds() {
        return Arbitraries.doubles().between(-60.0, 60.0).ofScale(3);
    }

    @Provide
    Arbitrary<Double> shears() {
        return Arbitraries.doubles().between(0.0005, 0.006).ofScale(6);
    }

    private static ClimbConditions conditions(Aeroplane jet, double load) {
        return ClimbConditions.of(jet, InventedAeroplanes.CALM, InventedAeroplanes.mass(jet, load));
    }

    @Property(tries = 300)
    @Label("is never steeper heavier, at the same speed")
    void heavier(
            @ForAll("jets") Aeroplane jet,
            @ForAll("loads") double load,
            @ForAll("levels") double level,
            @ForAll("speeds") ClimbSpeed speed) {
        ClimbConditions light = conditions(jet, load);
        PressureAltitude at = PressureAltitude.ofMetres(level);
        ClimbPoint point = light.at(at, speed);
        if (point.thrustN() < 0.02 * point.liftN()) {
            return;
        }
        ClimbPoint heavy =
                light.withMass(Mass.ofKilograms(light.mass().inKilograms() * 1.05)).at(at, speed);
        // gliding with the drag of its parts alone, more weight makes the descent flatter
        if (point.sine() > 0.0) {
            assertThat(heavy.sine()).isLessThan(point.sine());
        }
    }

    @Property(tries = 300)
    @Label("changes over the ground only in a uniform wind, and over it as the wind blows")
    void uniformWind(
            @ForAll("jets") Aeroplane jet,
            @ForAll("loads") double load,
            @ForAll("levels") double level,
            @ForAll("speeds") ClimbSpeed speed,
            @ForAll("winds") double wind) {
        ClimbConditions calm = conditions(jet, load);
        PressureAltitude at = PressureAltitude.ofMetres(level);
        ClimbPoint still = calm.at(at, speed);
        Winds uniform = Winds.uniform(Wind.ofComponents(wind, 0.0));
        ClimbPoint blown = calm.withAir(calm.air().withWinds(uniform)).at(at, speed);
        // the polynomial of a constant is flat to rounding
        assertThat(blown.sine()).isCloseTo(still.sine(), within(1e-12));
        double stillGround = still.groundGradient().orElseThrow().inMetresPerMetre();
        double ground = blown.groundGradient().orElseThrow().inMetresPerMetre();
        assertThat(stillGround).isCloseTo(still.airGradient().inMetresPerMetre(), within(1e-12));
        double speedThrough = still.groundSpeed().orElseThrow().inMetresPerSecond();
        assertThat(ground)
                .isCloseTo(stillGround * speedThrough / (speedThrough + wind), within(1e-10));
    }

    @Property(tries = 300)
    @Label("is lifted by a headwind that rises with height, and kept down by a tailwind that does")
    void shear(
            @ForAll("jets") Aeroplane jet,
            @ForAll("loads") double load,
            @ForAll("levels") double level,
            @ForAll("speeds") ClimbSpeed speed,
            @ForAll("shears") double shear) {
        ClimbConditions calm = conditions(jet, load);
        PressureAltitude at = PressureAltitude.ofMetres(level);
        double still = calm.at(at, speed).sine();
        if (still < 1e-3) {
            return; // in a descent the signs are the other way
        }
        ClimbPoint head =
                calm.withAir(calm.air().withWinds(InventedAeroplanes.tailwind(0.0, -shear)))
                        .at(at, speed);
        ClimbPoint tail =
                calm.withAir(calm.air().withWinds(InventedAeroplanes.tailwind(0.0, shear)))
                        .at(at, speed);
        assertThat(head.sine()).isGreaterThan(still);
        assertThat(tail.sine()).isLessThan(still);
        assertThat(head.worthOfWindGradient().orElseThrow().inMetresPerSecond()).isPositive();
        assertThat(tail.worthOfWindGradient().orElseThrow().inMetresPerSecond()).isNegative();
    }

    @Property(tries = 300)
    @Label("is helped by no bank and no bleed, and told so by the effects")
    void bankAndBleed(
            @ForAll("jets") Aeroplane jet,
            @ForAll("loads") double load,
            @ForAll("levels") double level,
            @ForAll("speeds") ClimbSpeed speed) {
        ClimbEffects effects =
                ClimbEffects.of(
                        conditions(jet, load), PressureAltitude.ofMetres(level), Side.ABOVE, speed);
        double before = 0.0;
        for (double bank : new double[] {0.0, 5.0, 15.0, 25.0, 35.0}) {
            ClimbEffects.Change change = effects.ofBankOfDegrees(bank);
            double rate = change.rate().inMetresPerSecond();
            assertThat(rate).isLessThanOrEqualTo(before);
            assertThat(change.angle().inRadians()).isLessThanOrEqualTo(0.0);
            before = rate;
        }
        assertThat(before).isNegative();
        assertThat(effects.ofBleed(Bleed.NONE).rate().inMetresPerSecond()).isZero();
        double engine = effects.ofBleed(Bleed.ENGINE).rate().inMetresPerSecond();
        double both = effects.ofBleed(Bleed.ENGINE_AND_AIRFRAME).rate().inMetresPerSecond();
        assertThat(engine).isNegative();
        assertThat(both).isLessThan(engine);
    }

    @Provide
    Arbitrary<ClimbSpeed> heldInAnyWay() {
        return Arbitraries.oneOf(
                speeds(),
                Arbitraries.doubles()
                        .between(0.3, 0.8)
                        .ofScale(4)
                        .map(mach -> ClimbSpeed.constant(Mach.of(mach))),
                Arbitraries.doubles()
                        .between(-0.8, 0.8)
                        .ofScale(3)
                        .map(a -> ClimbSpeed.accelerating(TrueAirspeed.ofKnots(320), a)));
    }

    @Property(tries = 500)
    @Label("has shares of its power that add up to all of it")
    void sharesOfPower(
            @ForAll("jets") Aeroplane jet,
            @ForAll("loads") double load,
            @ForAll("levels") double level,
            @ForAll("heldInAnyWay") ClimbSpeed speed,
            @ForAll("winds") double wind,
            @ForAll("shears") double shear) {
        Winds winds = InventedAeroplanes.tailwind(wind, wind < 0.0 ? -shear : shear);
        PressureAltitude at = PressureAltitude.ofMetres(level);
        ClimbConditions warm = conditions(jet, load).withAir(InventedAeroplanes.air(10.0, winds));
        ClimbPoint point = warm.at(at, speed);
        double twoShares = point.powerOfClimbMps() + point.powerOfAccelerationMps();
        assertThat(twoShares + point.powerOfWindChangeMps().orElseThrow())
                .isCloseTo(point.specificExcessPowerMps(), within(1e-12));
        ClimbPoint unknown =
                warm.withAir(InventedAeroplanes.air(10.0, InventedAeroplanes.unknown()))
                        .at(at, speed);
        assertThat(unknown.powerOfWindChangeMps()).isEmpty();
        assertThat(unknown.powerOfClimbMps() + unknown.powerOfAccelerationMps())
                .isCloseTo(unknown.specificExcessPowerMps(), within(1e-12));
    }
}
