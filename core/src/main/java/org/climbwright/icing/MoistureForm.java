package org.climbwright.icing;

/**
 * A form of visible moisture.
 *
 * @source the kinds that flight manuals name, common practice, no source
 */
public enum MoistureForm {
    /** Cloud. */
    CLOUD,
    /** Fog, on the ground with a limit of visibility. */
    FOG,
    /** Drizzle. */
    DRIZZLE,
    /** Rain. */
    RAIN,
    /** Snow. */
    SNOW,
    /** Ice pellets. */
    ICE_PELLETS,
    /** Ice crystals. */
    ICE_CRYSTALS;

    /**
     * Returns the form as a sentence has it.
     *
     * @return one or two words
     */
    public String words() {
        return switch (this) {
            case CLOUD -> "cloud";
            case FOG -> "fog";
            case DRIZZLE -> "drizzle";
            case RAIN -> "rain";
            case SNOW -> "snow";
            case ICE_PELLETS -> "ice pellets";
            case ICE_CRYSTALS -> "ice crystals";
        };
    }
}
