package org.climbwright.icing.ground;

/**
 * What may lie on ramps, taxiways and runways and reach an engine.
 *
 * @source the kinds that flight manuals name, common practice, no source
 */
public enum SurfaceContaminant {
    /** Standing water. */
    STANDING_WATER,
    /** Slush. */
    SLUSH,
    /** Snow. */
    SNOW,
    /** Ice. */
    ICE
}
