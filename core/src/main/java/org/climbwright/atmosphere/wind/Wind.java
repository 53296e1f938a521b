package org.climbwright.atmosphere.wind;

import java.io.Serializable;
import java.util.Locale;
import org.climbwright.quantity.path.TrueDirection;
import org.climbwright.quantity.speed.AlongTrackWind;
import org.climbwright.quantity.speed.WindSpeed;

/**
 * A wind: where the air goes, and how fast, in degrees true.
 *
 * <p>A wind is told by where it comes <em>from</em> and computed by where it goes <em>to</em>; this
 * class is where the two meet.
 *
 * <pre>{@code
 * Wind.from(TrueDirection.ofDegrees(270), WindSpeed.ofKnots(40))
 *         .alongTrack(TrueDirection.ofDegrees(90)).inKnots()     // 40.0, a tailwind
 * }</pre>
 */
public final class Wind implements Serializable {
    private static final long serialVersionUID = 1L;

    private final double eastwardMps;
    private final double northwardMps;

    private Wind(double eastwardMps, double northwardMps) {
        this.eastwardMps = eastwardMps;
        this.northwardMps = northwardMps;
    }

    /**
     * Returns a wind by its components.
     *
     * @param eastwardMps speed towards the east [m/s], finite
     * @param northwardMps speed towards the north [m/s], finite
     * @return the wind
     * @throws IllegalArgumentException if a component is not finite
     */
    public static Wind ofComponents(double eastwardMps, double northwardMps) {
        if (!(Math.abs(eastwardMps) <= Double.MAX_VALUE
                && Math.abs(northwardMps) <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException(
                    "wind components must be finite, but were "
                            + eastwardMps
                            + " and "
                            + northwardMps
                            + " m/s");
        }
        return new Wind(eastwardMps + 0.0, northwardMps + 0.0);
    }

    /**
     * Returns a wind as reports tell it.
     *
     * @param direction where it comes from, from true north
     * @param speed how fast
     * @return the wind
     */
    public static Wind from(TrueDirection direction, WindSpeed speed) {
        double angle = direction.inRadians();
        double mps = speed.inMetresPerSecond();
        return ofComponents(-mps * StrictMath.sin(angle), -mps * StrictMath.cos(angle));
    }

    /**
     * Returns the speed towards the east.
     *
     * @return the component [m/s]
     */
    public double eastwardMps() {
        return eastwardMps;
    }

    /**
     * Returns the speed towards the north.
     *
     * @return the component [m/s]
     */
    public double northwardMps() {
        return northwardMps;
    }

    /**
     * Returns how fast the air moves.
     *
     * @return the speed
     */
    public WindSpeed speed() {
        return WindSpeed.ofMetresPerSecond(StrictMath.hypot(eastwardMps, northwardMps));
    }

    /**
     * Returns where the wind comes from.
     *
     * @return the direction from true north; 0 degrees for a calm
     */
    public TrueDirection direction() {
        double angle = StrictMath.atan2(-eastwardMps, -northwardMps);
        double full = angle < 0.0 ? angle + 2.0 * Math.PI : angle;
        return TrueDirection.ofRadians(eastwardMps == 0.0 && northwardMps == 0.0 ? 0.0 : full);
    }

    /**
     * Returns the part of the wind that blows along a track.
     *
     * @param track where the aeroplane goes, from true north
     * @return positive from behind, negative on the nose
     */
    public AlongTrackWind alongTrack(TrueDirection track) {
        return AlongTrackWind.ofMetresPerSecond(
                alongTrack(eastwardMps, northwardMps, track.inRadians()));
    }

    /**
     * Returns the part of a wind that blows along a track.
     *
     * @param eastwardMps speed of the air towards the east [m/s]
     * @param northwardMps speed of the air towards the north [m/s]
     * @param trackRad track from true north [rad]
     * @return the component [m/s], positive from behind
     * @accuracy 1e-15 of the wind speed
     * @source scalar product of the wind and the unit vector of the track
     */
    public static double alongTrack(double eastwardMps, double northwardMps, double trackRad) {
        return eastwardMps * StrictMath.sin(trackRad) + northwardMps * StrictMath.cos(trackRad);
    }

    /**
     * Returns the part of a wind that blows across a track.
     *
     * @param eastwardMps speed of the air towards the east [m/s]
     * @param northwardMps speed of the air towards the north [m/s]
     * @param trackRad track from true north [rad]
     * @return the component [m/s], positive towards the right
     * @accuracy 1e-15 of the wind speed
     * @source scalar product of the wind and the unit vector to the right of the track
     */
    public static double acrossTrack(double eastwardMps, double northwardMps, double trackRad) {
        return eastwardMps * StrictMath.cos(trackRad) - northwardMps * StrictMath.sin(trackRad);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Wind that
                && Double.compare(eastwardMps, that.eastwardMps) == 0
                && Double.compare(northwardMps, that.northwardMps) == 0;
    }

    @Override
    public int hashCode() {
        return 31 * Double.hashCode(eastwardMps) + Double.hashCode(northwardMps);
    }

    /**
     * Returns direction and speed for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return eastwardMps == 0.0 && northwardMps == 0.0
                ? "calm"
                : String.format(
                        Locale.ROOT,
                        "wind from %.0f° true at %.1f kn",
                        direction().inDegrees(),
                        speed().inKnots());
    }

    private Object readResolve() {
        return ofComponents(eastwardMps, northwardMps);
    }
}
