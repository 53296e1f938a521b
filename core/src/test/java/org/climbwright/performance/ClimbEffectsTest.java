package org.climbwright.performance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.path.Side;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.temperature.IsaDeviation;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The effect on a climb")
class ClimbEffectsTest {
    private static final PressureAltitude LEVEL = PressureAltitude.ofFlightLevel(200);
    private final ClimbEffects effects =
            ClimbEffects.of(
                    InventedAeroplanes.conditions(InventedAeroplanes.CALM),
                    LEVEL,
                    Side.ABOVE,
                    ClimbSpeed.constant(CalibratedAirspeed.ofKnots(300)));

    @Test
    @DisplayName("of another mass is the difference of two points")
    void mass() {
        ClimbEffects.Change change = effects.ofMass(Mass.ofKilograms(66000));
        assertThat(change.rate().inMetresPerSecond())
                .isNegative()
                .isCloseTo(
                        change.point().pressureAltitudeRate().inMetresPerSecond()
                                - effects.asItIs().pressureAltitudeRate().inMetresPerSecond(),
                        within(1e-12));
        assertThat(change.angle().inRadians()).isNegative();
        assertThat(change.point().mass()).isEqualTo(Mass.ofKilograms(66000));
    }

    @Test
    @DisplayName("of warm air, at thrust that temperature does not change, is a slower instrument")
    void deviation() {
        ClimbEffects.Change warm = effects.ofDeviation(IsaDeviation.ofKelvins(15));
        // the same Mach number and forces: V grows with sqrt(T), dHp/dt falls with T
        double standard = 288.15 - 0.0065 * LEVEL.inMetres();
        double slower =
                warm.point().pressureAltitudeRate().inMetresPerSecond()
                        / effects.asItIs().pressureAltitudeRate().inMetresPerSecond();
        double lapse =
                (1.0 + effects.asItIs().accelerationFactor())
                        / (1.0 + warm.point().accelerationFactor());
        // but for the lift, which the angle changes: 1e-4 of the drag
        assertThat(slower).isCloseTo(Math.sqrt(standard / (standard + 15.0)) * lapse, within(5e-4));
        assertThat(lapse).isLessThan(1.0);
        assertThat(warm.rate().inMetresPerSecond()).isNegative();
        assertThat(effects.ofAir(Atmosphere.standard()).rate().inMetresPerSecond()).isZero();
        assertThat(effects.ofDeviation(IsaDeviation.ofKelvins(0)).rate().inMetresPerSecond())
                .isCloseTo(0.0, within(1e-9));
    }

    @Test
    @DisplayName(
            "of bleed is the excess power that goes into it: less thrust and more drag, times"
                    + " speed")
    void bleed() {
        ClimbConditions bled =
                InventedAeroplanes.conditions(InventedAeroplanes.CALM)
                        .withUse(EngineUse.climb(2).withBleed(Bleed.ENGINE_AND_AIRFRAME));
        ClimbSpeed speed = ClimbSpeed.constant(CalibratedAirspeed.ofKnots(300));
        ClimbEffects with = ClimbEffects.of(bled, LEVEL, Side.ABOVE, speed);
        ClimbPoint without = effects.asItIs();
        ClimbPoint bledPoint = with.asItIs();
        double lessThrust = without.thrustN() - bledPoint.thrustN();
        assertThat(lessThrust).isCloseTo(0.05 * without.thrustN(), within(1e-6));
        // on a path less steep there is more lift, and more drag by it
        double moreDrag = bledPoint.dragN() - without.dragN();
        double taken =
                (lessThrust + moreDrag)
                        * without.trueAirspeed().inMetresPerSecond()
                        / (60000.0 * 9.80665);
        assertThat(with.powerTakenByBleedMps()).isCloseTo(taken, within(1e-12));
        assertThat(effects.powerTakenByBleedMps()).isZero();
    }
}
