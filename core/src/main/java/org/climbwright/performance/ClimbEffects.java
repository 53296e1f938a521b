package org.climbwright.performance;

import java.io.Serializable;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.path.Side;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.ClimbAngle;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.speed.PressureAltitudeRate;
import org.climbwright.quantity.temperature.IsaDeviation;

/**
 * What one thing changes of a climb at a point: another mass, another temperature, hot air for ice
 * protection, a turn. All else stays, the speed held included.
 *
 * <p>Each is computed in full, and not from a slope at the point: the effects of two things do not
 * add up to that of both.
 *
 * <p>Limits of use: as good as the aeroplane's figures; for study. The flight manual has the
 * corrections to use.
 *
 * @source differences of {@link ClimbPoint}
 */
public final class ClimbEffects {
    private final ClimbConditions conditions;
    private final PressureAltitude level;
    private final Side side;
    private final ClimbSpeed speed;
    private final ClimbPoint asItIs;

    private ClimbEffects(
            ClimbConditions conditions, PressureAltitude level, Side side, ClimbSpeed speed) {
        this.conditions = conditions;
        this.level = level;
        this.side = side;
        this.speed = speed;
        this.asItIs = conditions.at(level, side, speed);
    }

    /**
     * What has changed.
     *
     * @param rate change of the rate of pressure altitude
     * @param angle change of the angle of climb through the air
     * @param point the climb after it
     */
    public record Change(PressureAltitudeRate rate, ClimbAngle angle, ClimbPoint point)
            implements Serializable {}

    /**
     * Returns the effects at a point.
     *
     * @param conditions the climb as it is
     * @param level pressure altitude, inside the air
     * @param side from which side, where air or wind bends there
     * @param speed the speed held
     * @return what is asked for the effects
     * @throws org.climbwright.quantity.OutsideModelException if the air does not reach there, or
     *     the speed is more than Mach 1
     * @throws IllegalArgumentException if the forces balance at no angle
     */
    public static ClimbEffects of(
            ClimbConditions conditions, PressureAltitude level, Side side, ClimbSpeed speed) {
        return new ClimbEffects(conditions, level, side, speed);
    }

    private Change to(ClimbConditions other) {
        ClimbPoint changed = other.at(level, side, speed);
        return new Change(
                PressureAltitudeRate.ofMetresPerSecond(
                        changed.pressureAltitudeRateMps() - asItIs.pressureAltitudeRateMps()),
                ClimbAngle.ofRadians(
                        changed.climbAngle().inRadians() - asItIs.climbAngle().inRadians()),
                changed);
    }

    /**
     * Returns the climb as it is.
     *
     * @return the point that all changes are against
     */
    public ClimbPoint asItIs() {
        return asItIs;
    }

    /**
     * Returns the effect of another mass.
     *
     * @param mass the mass instead, above 0
     * @return the change
     * @throws IllegalArgumentException if it is 0, or the forces balance at no angle
     */
    public Change ofMass(Mass mass) {
        return to(conditions.withMass(mass));
    }

    /**
     * Returns the effect of air that is warmer or colder than standard by the same at each
     * pressure, dry, with the winds as they are.
     *
     * @param deviation the deviation instead of the air as it is
     * @return the change
     * @throws org.climbwright.quantity.OutsideModelException if there is no such air, or the speed
     *     is more than Mach 1 in it
     */
    public Change ofDeviation(IsaDeviation deviation) {
        return ofAir(Atmosphere.withDeviationAtEachPressure(deviation));
    }

    /**
     * Returns the effect of other air.
     *
     * @param air the air instead, with the winds as they are
     * @return the change
     * @throws org.climbwright.quantity.OutsideModelException if it does not reach there, or the
     *     speed is more than Mach 1 in it
     */
    public Change ofAir(Atmosphere air) {
        return to(conditions.withAir(conditions.air().withAir(air)));
    }

    /**
     * Returns the effect of hot air taken from the engines.
     *
     * @param bleed what it is taken for instead
     * @return the change
     */
    public Change ofBleed(Bleed bleed) {
        return to(conditions.withUse(conditions.use().withBleed(bleed)));
    }

    /**
     * Returns the excess power that goes into hot air for the anti-ice.
     *
     * @return specific excess power without any bleed less that as it is [m/s], 0 or more for
     *     engines that lose thrust by it
     * @accuracy that of {@link ClimbPoint#specificExcessPowerMps}
     */
    public double powerTakenByBleedMps() {
        return ofBleed(Bleed.NONE).point().specificExcessPowerMps()
                - asItIs.specificExcessPowerMps();
    }

    /**
     * Returns the effect of a turn.
     *
     * @param degrees bank to either side instead [deg], 0 to 80
     * @return the change
     * @throws org.climbwright.quantity.OutsideModelException if the bank is out of range
     */
    public Change ofBankOfDegrees(double degrees) {
        return to(conditions.withBankOfDegrees(degrees));
    }
}
