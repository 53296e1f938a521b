package org.climbwright.gradient.procedure;

import org.climbwright.gradient.ClimbGradient;
import org.climbwright.gradient.RoundedUp;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.Height;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.path.GroundGradient;

/**
 * Figures of the two systems by which departure procedures are designed.
 *
 * <pre>{@code
 * DepartureCriteria us = DepartureCriteria.US;
 * Obstacle mast = new Obstacle(Height.ofFeet(415), GroundDistance.ofNauticalMiles(1));
 * us.assess(mast).requiredGradient().inFeetPerNauticalMile()                      // 500.0…
 * us.assess(mast).isPublishedInstead()                                            // false
 * }</pre>
 *
 * <p>Surfaces and climbs start together, at the height of {@link #start}. Where one wants the
 * surface to start at the departure end itself, {@link #assess(Obstacle, Height)} takes a height of
 * 0, which asks more.
 *
 * <p>Limits of use: no design of procedures, which has areas, turns, segments and tolerances
 * besides. All engines operate in these criteria: with one failed they say nothing, and the
 * operator's analysis of obstacles is another. The published procedure decides.
 *
 * @source in {@link #source}
 */
public enum DepartureCriteria {
    /** United States: 200 ft/NM above a surface of 40:1, from 35 ft above the departure end. */
    US(
            "FAA AIM, Departure Procedures, paragraph e (2023-04); 40:1 from a USAF appendix on IFR"
                    + " departures; low close-in obstacles from AFMAN 11-217V1 (2005) 9.7.8"),
    /** PANS-OPS, aeroplanes: 3.3 % above a surface of 2.5 %, from 5 m above the departure end. */
    PANS_OPS(
            "ICAO Doc 8168 volume I, I-3-3-2, and volume II (2006), I-3-2, which prints the turn"
                    + " height as 120 m (294 ft), a misprint of 394 ft; 60 m (200 ft) from memory");

    private static final GroundGradient US_ROUNDING = GroundGradient.ofFeetPerNauticalMile(20);

    private final String source;

    DepartureCriteria(String source) {
        this.source = source;
    }

    /**
     * Returns the gradient that every departure climbs at where no other is published.
     *
     * @return 200 ft/NM, or 3.3 %: not the same
     */
    public GroundGradient leastGradient() {
        return this == US
                ? GroundGradient.ofFeetPerNauticalMile(200)
                : GroundGradient.ofPercent(3.3);
    }

    /**
     * Returns the gradient of the surface that obstacles must not reach at that gradient.
     *
     * @return 40:1, or 2.5 %: the same
     */
    public GroundGradient surfaceGradient() {
        return this == US
                ? GroundGradient.ofMetresPerMetre(1.0 / 40.0)
                : GroundGradient.ofPercent(2.5);
    }

    /**
     * Returns the height above the departure end at which climb and surface start.
     *
     * @return 35 ft, or 5 m (16 ft)
     */
    public PrintedHeight start() {
        return this == US
                ? PrintedHeight.of(Height.ofFeet(35))
                : PrintedHeight.of(Height.ofMetres(5), Height.ofFeet(16));
    }

    /**
     * Returns the height above the departure end before which no turn is made.
     *
     * @return 400 ft, or 120 m (394 ft)
     */
    public PrintedHeight turnHeight() {
        return this == US
                ? PrintedHeight.of(Height.ofFeet(400))
                : PrintedHeight.of(Height.ofMetres(120), Height.ofFeet(394));
    }

    /**
     * Returns the height above the departure end up to which an obstacle is published instead of
     * the gradient that it takes.
     *
     * @return 200 ft, or 60 m (200 ft), the latter from memory
     */
    public PrintedHeight closeInHeight() {
        return this == US
                ? PrintedHeight.of(Height.ofFeet(200))
                : PrintedHeight.of(Height.ofMetres(60), Height.ofFeet(200));
    }

    /**
     * Returns where the figures are from.
     *
     * @return document, place and how far it was read
     */
    public String source() {
        return source;
    }

    /**
     * Returns the gradient of the surface below a climb of some gradient.
     *
     * @param climb gradient of the climb
     * @return 76 % of it, or 0.8 % less
     * @throws org.climbwright.quantity.OutsideModelException if the gradient is not from 0 to 10
     */
    public GroundGradient surfaceBelow(GroundGradient climb) {
        double gradient = climb.inMetresPerMetre();
        return GroundGradient.ofMetresPerMetre(
                this == US
                        ? ObstacleClearance.usSurface(gradient)
                        : ObstacleClearance.pansOpsSurface(gradient));
    }

    /**
     * Returns what lies between a climb and the surface below it.
     *
     * @param climb gradient of the climb
     * @param distance distance from the departure end, above 0
     * @return the clearance there
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     */
    public AltitudeChange clearance(GroundGradient climb, GroundDistance distance) {
        return ClimbGradient.heightGained(climb, distance)
                .minus(ClimbGradient.heightGained(surfaceBelow(climb), distance));
    }

    /**
     * Returns the clearance that PANS-OPS asks before a turn in any direction.
     *
     * @return 90 m (295 ft)
     * @source ICAO Doc 8168 volume I, I-3-3-2
     */
    public static PrintedHeight pansOpsClearanceBeforeTurn() {
        return PrintedHeight.of(Height.ofMetres(90), Height.ofFeet(295));
    }

    /**
     * Returns a gradient that an altitude at a distance takes, as the US publishes it.
     *
     * @param height height to gain
     * @param distance distance in which to gain it, above 0
     * @return the gradient, up to the next 20 ft/NM
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @source draft of an FAA order on RNAV departures (8260.RNAVDEP, 1997), paragraph 12e
     */
    public static GroundGradient usAltitudeDriven(AltitudeChange height, GroundDistance distance) {
        return RoundedUp.of(ClimbGradient.required(height, distance), US_ROUNDING);
    }

    /**
     * Holds an obstacle against the surface that starts at {@link #start}.
     *
     * @param obstacle the obstacle
     * @return by how much it penetrates, and the gradient that it takes
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     */
    public ObstacleAssessment assess(Obstacle obstacle) {
        return assess(obstacle, start().first());
    }

    /**
     * Holds an obstacle against the surface that starts at some height.
     *
     * @param obstacle the obstacle
     * @param climbStart height above the departure end at which climb and surface start
     * @return by how much it penetrates, and the gradient that it takes
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     */
    public ObstacleAssessment assess(Obstacle obstacle, Height climbStart) {
        return new ObstacleAssessment(this, obstacle, climbStart);
    }
}
