package org.climbwright.sounding.surface;

/**
 * What a report says of the sky as a whole. The statements that there is no cloud differ: each
 * leaves out other clouds.
 *
 * @source WMO-No. 306, Manual on Codes, FM 15 METAR, regulation 15.9 (CAVOK, NSC, NCD; from
 *     memory); Federal Meteorological Handbook No. 1 (SKC, CLR; from memory)
 */
public enum Sky {
    /** Cloud is told by layers. */
    LAYERS,
    /** The sky is obscured; vertical visibility is told or told to be missing. */
    OBSCURED,
    /**
     * CAVOK: visibility 10 km or more, no cloud below 5,000 ft or the highest minimum sector
     * altitude, no cumulonimbus or towering cumulus, no significant weather.
     */
    CAVOK,
    /** SKC: an observer sees no cloud. */
    SKY_CLEAR,
    /**
     * CLR: an automatic station finds no cloud below 12,000 ft, and looks no higher. Some manned
     * stations write it too.
     */
    CLEAR_BELOW_12000_FEET,
    /** NSC: no cloud of operational significance, and CAVOK does not fit. */
    NO_SIGNIFICANT_CLOUD,
    /** NCD: an automatic station detects no cloud. */
    NO_CLOUD_DETECTED,
    /** Nothing is told; {@link SurfaceReport#whyMissing} has the reason. */
    NOT_REPORTED
}
