package org.climbwright.path;

/**
 * Between the motion through the air and the motion over the ground, in SI doubles.
 *
 * @source vector addition of the velocity through the air and the wind; the aeroplane's heading is
 *     the one that keeps the track
 */
public final class GroundTrack {
    private GroundTrack() {}

    /**
     * Returns the horizontal part of a true airspeed on a climbing path.
     *
     * @param tasMps true airspeed [m/s]
     * @param geometricRateMps geometric rate of climb [m/s], in size no more than the airspeed
     * @return horizontal speed through the air [m/s]
     * @throws IllegalArgumentException if the rate is more than the airspeed
     * @accuracy 2 ulp of the true airspeed
     * @source see the class comment
     */
    public static double horizontalAirspeed(double tasMps, double geometricRateMps) {
        if (!(Math.abs(geometricRateMps) <= tasMps)) {
            throw new IllegalArgumentException(
                    "a rate of climb must be no more than the true airspeed of "
                            + tasMps
                            + " m/s, but was "
                            + geometricRateMps
                            + " m/s");
        }
        return horizontal(tasMps, geometricRateMps);
    }

    /**
     * Returns the gradient through the air.
     *
     * @param tasMps true airspeed [m/s]
     * @param geometricRateMps geometric rate of climb [m/s], in size less than the airspeed
     * @return true height gained per horizontal distance through the air
     * @throws IllegalArgumentException if the rate is not less than the airspeed
     * @accuracy 4 ulp where the rate is below half the airspeed
     * @source see the class comment
     */
    public static double airGradient(double tasMps, double geometricRateMps) {
        if (!(Math.abs(geometricRateMps) < tasMps)) {
            throw new IllegalArgumentException(
                    "a gradient needs a rate of climb that is less than the true airspeed of "
                            + tasMps
                            + " m/s, but it was "
                            + geometricRateMps
                            + " m/s");
        }
        return gradient(tasMps, geometricRateMps);
    }

    /** {@link #airGradient} that checks nothing: NaN where the rate is more than the airspeed. */
    static double gradient(double tasMps, double geometricRateMps) {
        return geometricRateMps / horizontal(tasMps, geometricRateMps);
    }

    private static double horizontal(double tasMps, double geometricRateMps) {
        return Math.sqrt((tasMps - geometricRateMps) * (tasMps + geometricRateMps));
    }

    /**
     * Tells whether a track can be kept in a wind.
     *
     * @param horizontalAirspeedMps horizontal speed through the air [m/s]
     * @param alongTrackWindMps wind along the track [m/s], positive from behind
     * @param acrossTrackWindMps wind across the track [m/s]
     * @return true if {@link #groundSpeed} answers
     */
    public static boolean coversGroundSpeed(
            double horizontalAirspeedMps, double alongTrackWindMps, double acrossTrackWindMps) {
        double across = Math.abs(acrossTrackWindMps);
        return across <= horizontalAirspeedMps
                && alongTrackWindMps
                                + Math.sqrt(
                                        (horizontalAirspeedMps - across)
                                                * (horizontalAirspeedMps + across))
                        > 0.0;
    }

    /**
     * Returns the ground speed on a track in a wind.
     *
     * @param horizontalAirspeedMps horizontal speed through the air [m/s]
     * @param alongTrackWindMps wind along the track [m/s], positive from behind
     * @param acrossTrackWindMps wind across the track [m/s], in size no more than the speed
     * @return ground speed [m/s], above 0
     * @throws IllegalArgumentException if the wind does not let the track be kept
     * @accuracy 3 ulp of the airspeed
     * @source see the class comment
     */
    public static double groundSpeed(
            double horizontalAirspeedMps, double alongTrackWindMps, double acrossTrackWindMps) {
        double across = Math.abs(acrossTrackWindMps);
        double ground =
                across <= horizontalAirspeedMps
                        ? alongTrackWindMps
                                + Math.sqrt(
                                        (horizontalAirspeedMps - across)
                                                * (horizontalAirspeedMps + across))
                        : Double.NEGATIVE_INFINITY;
        if (!(ground > 0.0)) {
            throw new IllegalArgumentException(
                    "the track cannot be kept: an airspeed of "
                            + horizontalAirspeedMps
                            + " m/s in a wind of "
                            + alongTrackWindMps
                            + " m/s along and "
                            + acrossTrackWindMps
                            + " m/s across it");
        }
        return ground;
    }

    /**
     * Returns the speed along the surface of the earth below an aeroplane: distances of a climb
     * count there.
     *
     * @param groundSpeedMps ground speed at the level flown [m/s]
     * @param geometricPerGeopotential metres of true height in one of geopotential altitude at that
     *     level, {@code ((r + Z) / r)²}
     * @return speed of the point below [m/s]: 0.16 % less than the ground speed at 10 km
     * @accuracy 2 ulp
     * @source similar arcs, with the nominal radius of the earth of ICAO Doc 7488
     */
    public static double alongSurface(double groundSpeedMps, double geometricPerGeopotential) {
        return groundSpeedMps / Math.sqrt(geometricPerGeopotential);
    }
}
