package org.climbwright.performance;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.climbwright.path.Side;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.CalibratedAirspeed;

@Label("The best speeds of any aeroplane")
class BestClimbPropertyTest {
    @Provide
    Arbitrary<Aeroplane> jets() {
        return InventedAeroplanes.jets();
    }

    @Provide
    Arbitrary<Double> levels() {
        return Arbitraries.doubles().between(0.0, 12500.0).ofScale(3);
    }

    @Provide
    Arbitrary<Double> knots() {
        return Arbitraries.doubles().between(150.0, 300.0).ofScale(3);
    }

    @Property(tries = 60)
    @Label("beat others")
    void beatOthers(
            @ForAll("jets") Aeroplane jet,
            @ForAll("levels") double metres,
            @ForAll("knots") double knots) {
        ClimbConditions conditions =
                ClimbConditions.of(
                        jet, InventedAeroplanes.CALM, InventedAeroplanes.mass(jet, 4500.0));
        PressureAltitude level = PressureAltitude.ofMetres(metres);
        CalibratedAirspeed least = CalibratedAirspeed.ofKnots(150);
        HeldSpeed held = HeldSpeed.CALIBRATED_AIRSPEED;
        ClimbPoint other =
                conditions.at(level, ClimbSpeed.constant(CalibratedAirspeed.ofKnots(knots)));
        ClimbPoint rate = BestClimb.rate(conditions, level, Side.ABOVE, held, least).point();
        ClimbPoint angle = BestClimb.angle(conditions, level, Side.ABOVE, held, least).point();
        ClimbPoint ground =
                BestClimb.overGround(conditions, level, Side.ABOVE, held, least)
                        .orElseThrow()
                        .point();
        // 1e-12: a maximum is found to the root of what is added to it
        assertThat(rate.pressureAltitudeRateMps())
                .isGreaterThanOrEqualTo(other.pressureAltitudeRateMps() - 1e-10);
        assertThat(angle.sine()).isGreaterThanOrEqualTo(other.sine() - 1e-12);
        assertThat(ground.groundGradientOrNaN())
                .isGreaterThanOrEqualTo(other.groundGradientOrNaN() - 1e-12);
    }
}
