package org.climbwright.performance;

import java.io.Serializable;
import java.util.Objects;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.EquivalentAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.speed.TrueAirspeed;

/**
 * The speed that a climb holds at a level: calibrated, equivalent, Mach, or a true airspeed with
 * the acceleration it has.
 *
 * <pre>{@code
 * ClimbSpeed.constant(CalibratedAirspeed.ofKnots(290)).held()          // CALIBRATED_AIRSPEED
 * ClimbSpeed.accelerating(TrueAirspeed.ofKnots(300), 0.25).accelerationMps2()     // 0.25, m/s²
 * }</pre>
 *
 * <p>It differs from {@link org.climbwright.path.SpeedSchedule}, which has a speed for each level.
 */
public final class ClimbSpeed implements Serializable {
    private static final long serialVersionUID = 1L;
    private static final ModelRange ACCELERATION =
            new ModelRange("acceleration", -10.0, 10.0, "m/s²", "an aeroplane climbs meanwhile");

    private final HeldSpeed held;
    private final double speed;
    private final double accelerationMps2;

    private ClimbSpeed(HeldSpeed held, double speed, double accelerationMps2) {
        if (!(speed > 0.0)) {
            throw new IllegalArgumentException(
                    "a climb needs a speed above 0.0, but it was " + speed);
        }
        this.held = held;
        this.speed = speed;
        this.accelerationMps2 = ACCELERATION.check(accelerationMps2) + 0.0;
    }

    /**
     * Returns a calibrated airspeed that is held.
     *
     * @param speed the speed, above 0
     * @return the speed of a climb
     * @throws IllegalArgumentException if it is 0
     */
    public static ClimbSpeed constant(CalibratedAirspeed speed) {
        return new ClimbSpeed(HeldSpeed.CALIBRATED_AIRSPEED, speed.inMetresPerSecond(), 0.0);
    }

    /**
     * Returns an equivalent airspeed that is held.
     *
     * @param speed the speed, above 0
     * @return the speed of a climb
     * @throws IllegalArgumentException if it is 0
     */
    public static ClimbSpeed constant(EquivalentAirspeed speed) {
        return new ClimbSpeed(HeldSpeed.EQUIVALENT_AIRSPEED, speed.inMetresPerSecond(), 0.0);
    }

    /**
     * Returns a Mach number that is held.
     *
     * @param mach the Mach number, above 0
     * @return the speed of a climb
     * @throws IllegalArgumentException if it is 0
     */
    public static ClimbSpeed constant(Mach mach) {
        return new ClimbSpeed(HeldSpeed.MACH, mach.number(), 0.0);
    }

    /**
     * Returns a true airspeed that changes as stated.
     *
     * @param speed the speed at the point, above 0
     * @param accelerationMps2 change of true airspeed with time [m/s²], -10 to 10; 0 for a speed
     *     that stays
     * @return the speed of a climb
     * @throws IllegalArgumentException if the speed is 0
     * @throws org.climbwright.quantity.OutsideModelException if the acceleration is out of range
     */
    public static ClimbSpeed accelerating(TrueAirspeed speed, double accelerationMps2) {
        return new ClimbSpeed(HeldSpeed.TRUE_AIRSPEED, speed.inMetresPerSecond(), accelerationMps2);
    }

    static ClimbSpeed of(HeldSpeed held, double speed) {
        return new ClimbSpeed(held, speed, 0.0);
    }

    /**
     * Returns which speed is held.
     *
     * @return the kind
     */
    public HeldSpeed held() {
        return held;
    }

    /**
     * Returns the speed as a number.
     *
     * @return speed [m/s], or Mach number, above 0
     */
    public double speed() {
        return speed;
    }

    /**
     * Returns the acceleration stated.
     *
     * @return change of true airspeed with time [m/s²]; 0 unless stated
     */
    public double accelerationMps2() {
        return accelerationMps2;
    }

    /**
     * Returns the speed for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return switch (held) {
            case CALIBRATED_AIRSPEED -> CalibratedAirspeed.ofMetresPerSecond(speed).text() + " CAS";
            case EQUIVALENT_AIRSPEED -> EquivalentAirspeed.ofMetresPerSecond(speed).text() + " EAS";
            case MACH -> Mach.of(speed).text();
            case TRUE_AIRSPEED ->
                    TrueAirspeed.ofMetresPerSecond(speed).text()
                            + " TAS, changing by "
                            + accelerationMps2
                            + " m/s²";
        };
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ClimbSpeed that
                && held == that.held
                && Double.compare(speed, that.speed) == 0
                && Double.compare(accelerationMps2, that.accelerationMps2) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(held, speed, accelerationMps2);
    }

    private Object readResolve() {
        return new ClimbSpeed(Objects.requireNonNull(held, "speed held"), speed, accelerationMps2);
    }
}
