package org.climbwright.turbulence;

import java.io.Serializable;
import java.util.Locale;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.unit.UnitScale;

/**
 * The vertical gust that a load is computed for, as an equivalent airspeed: that of the rule, or
 * one that the caller stands for.
 *
 * <p>Not the updraft that a parcel could reach: that is a true airspeed, sustained over kilometres
 * and an upper bound; nothing here takes it.
 *
 * <p>Limits of use: a gust that an aeroplane was designed for, not a forecast.
 */
public final class GustVelocity implements Serializable {
    private static final long serialVersionUID = 1L;

    private static final ModelRange RANGE =
            new ModelRange(
                    "gust velocity", 0.0, 100.0, "m/s", "a gust has a strength, and no sign");

    /** The design speeds for which the rule has a reference gust. */
    public enum DesignSpeed {
        /** From the speed for maximum gust intensity, VB, to the cruise speed, VC. */
        UP_TO_CRUISE_SPEED,
        /** The dive speed, VD. */
        AT_DIVE_SPEED
    }

    private final double easMps;
    private final String basis;

    private GustVelocity(double easMps, String basis) {
        this.easMps = RANGE.check(easMps) + 0.0;
        this.basis = basis;
    }

    /**
     * Returns the reference gust of the rule for transport aeroplanes.
     *
     * @param altitude pressure altitude, sea level to 60,000 ft
     * @param speed the design speed
     * @return the reference gust velocity
     * @throws org.climbwright.quantity.OutsideModelException if the altitude is out of range
     * @source {@link GustRule#referenceGustUpToCruiseSpeed}, {@link
     *     GustRule#referenceGustAtDiveSpeed}
     */
    public static GustVelocity reference(PressureAltitude altitude, DesignSpeed speed) {
        double metres = altitude.inMetres();
        return switch (speed) {
            case UP_TO_CRUISE_SPEED ->
                    new GustVelocity(
                            GustRule.referenceGustUpToCruiseSpeed(metres),
                            "reference gust of 14 CFR 25.341(a)(5), VB to VC");
            case AT_DIVE_SPEED ->
                    new GustVelocity(
                            GustRule.referenceGustAtDiveSpeed(metres),
                            "reference gust of 14 CFR 25.341(a)(5), at VD");
        };
    }

    /**
     * Returns a gust of the caller's.
     *
     * @param easMps equivalent airspeed [m/s], 0 to 100
     * @return the gust velocity
     * @throws org.climbwright.quantity.OutsideModelException if the value is out of range
     */
    public static GustVelocity ofCallerInMetresPerSecond(double easMps) {
        return new GustVelocity(easMps, "the caller's");
    }

    /**
     * Returns a gust of the caller's.
     *
     * @param easFps equivalent airspeed [ft/s], 0 to 328.08
     * @return the gust velocity
     * @throws org.climbwright.quantity.OutsideModelException if the value is out of range
     */
    public static GustVelocity ofCallerInFeetPerSecond(double easFps) {
        return ofCallerInMetresPerSecond(UnitScale.FOOT_PER_SECOND.toSi(easFps));
    }

    /**
     * Returns the equivalent airspeed of the gust.
     *
     * @return gust velocity [m/s]
     */
    public double inMetresPerSecond() {
        return easMps;
    }

    /**
     * Returns the equivalent airspeed of the gust in the unit of the rule.
     *
     * @return gust velocity [ft/s]
     */
    public double inFeetPerSecond() {
        return UnitScale.FOOT_PER_SECOND.fromSi(easMps);
    }

    /**
     * Returns where the figure comes from.
     *
     * @return the rule, or that it is the caller's
     */
    public String basis() {
        return basis;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof GustVelocity that
                && Double.compare(easMps, that.easMps) == 0
                && basis.equals(that.basis);
    }

    @Override
    public int hashCode() {
        return 31 * Double.hashCode(easMps) + basis.hashCode();
    }

    /**
     * Returns the gust for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT, "gust of %.2f m/s equivalent airspeed (%s)", easMps, basis);
    }

    private Object readResolve() {
        return new GustVelocity(easMps, basis);
    }
}
