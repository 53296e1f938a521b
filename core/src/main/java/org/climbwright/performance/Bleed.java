package org.climbwright.performance;

/** What hot air is taken from the engines for, besides the cabin. */
public enum Bleed {
    /** For nothing: ice protection is off. */
    NONE,
    /** For the anti-ice of the engines. */
    ENGINE,
    /** For the anti-ice of the airframe. */
    AIRFRAME,
    /** For the anti-ice of engines and airframe. */
    ENGINE_AND_AIRFRAME;

    /**
     * Returns the bleed of parts that are protected.
     *
     * @param engine whether the engines are
     * @param airframe whether the airframe is
     * @return the bleed of both together
     */
    public static Bleed of(boolean engine, boolean airframe) {
        if (engine) {
            return airframe ? ENGINE_AND_AIRFRAME : ENGINE;
        }
        return airframe ? AIRFRAME : NONE;
    }

    /**
     * Tells whether the engines are protected.
     *
     * @return true if air is taken for them
     */
    public boolean ofEngine() {
        return this == ENGINE || this == ENGINE_AND_AIRFRAME;
    }

    /**
     * Tells whether the airframe is protected.
     *
     * @return true if air is taken for it
     */
    public boolean ofAirframe() {
        return this == AIRFRAME || this == ENGINE_AND_AIRFRAME;
    }
}
