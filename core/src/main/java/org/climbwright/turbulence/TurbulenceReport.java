package org.climbwright.turbulence;

import org.climbwright.quantity.ModelRange;

/**
 * The criteria by which a crew reports turbulence: what the aeroplane does, and what happens in the
 * cabin.
 *
 * <p>Limits of use: criteria for a report of what was met, in words of our own; the publication has
 * the text.
 *
 * @source US Federal Aviation Administration, Aeronautical Information Manual, table of turbulence
 *     reporting criteria (7-1-10 in the edition seen)
 */
public enum TurbulenceReport {
    /** Light turbulence. */
    LIGHT_TURBULENCE(
            TurbulenceIntensity.LIGHT,
            "slight erratic changes of altitude or attitude, for moments",
            "food service is possible, and walking little trouble"),
    /** Light chop. */
    LIGHT_CHOP(
            TurbulenceIntensity.LIGHT,
            "slight rapid bumps in some rhythm, with no change of altitude or attitude to speak of",
            "as in light turbulence"),
    /** Moderate turbulence. */
    MODERATE_TURBULENCE(
            TurbulenceIntensity.MODERATE,
            "stronger changes of altitude or attitude, in control at all times; the indicated"
                    + " airspeed usually varies",
            "definite strain on the belts; loose objects move; service and walking are difficult"),
    /** Moderate chop. */
    MODERATE_CHOP(
            TurbulenceIntensity.MODERATE,
            "rapid bumps or jolts, with no change of altitude or attitude to speak of",
            "as in moderate turbulence"),
    /** Severe turbulence. */
    SEVERE_TURBULENCE(
            TurbulenceIntensity.SEVERE,
            "large abrupt changes of altitude or attitude, usually large ones of indicated"
                    + " airspeed; perhaps out of control for moments",
            "thrown hard against the belts; service and walking are impossible"),
    /** Extreme turbulence. */
    EXTREME_TURBULENCE(
            TurbulenceIntensity.EXTREME,
            "tossed about violently and hardly to be controlled; may damage the structure",
            "as in severe turbulence");

    /** How much of the time turbulence is met. */
    public enum Frequency {
        /** Less than a third of the time. */
        OCCASIONAL,
        /** From a third to two thirds of the time, both included. */
        INTERMITTENT,
        /** More than two thirds of the time. */
        CONTINUOUS;

        private static final ModelRange SHARE =
                new ModelRange("share of the time", 0.0, 1.0, "", "a part of the whole");

        /**
         * Tells whether a number is a share.
         *
         * @param share part of the time
         * @return true from 0 to 1
         */
        public static boolean covers(double share) {
            return SHARE.covers(share);
        }

        /**
         * Returns the word for a share of the time.
         *
         * @param share part of the time in which turbulence is met, 0 to 1
         * @return the word; a third and two thirds are intermittent
         * @throws org.climbwright.quantity.OutsideModelException if it is no share
         * @accuracy the bounds as written
         * @source see {@link TurbulenceReport}
         */
        public static Frequency of(double share) {
            if (SHARE.check(share) < 1.0 / 3.0) {
                return OCCASIONAL;
            }
            return share <= 2.0 / 3.0 ? INTERMITTENT : CONTINUOUS;
        }
    }

    private final TurbulenceIntensity intensity;
    private final String aeroplane;
    private final String cabin;

    TurbulenceReport(TurbulenceIntensity intensity, String aeroplane, String cabin) {
        this.intensity = intensity;
        this.aeroplane = aeroplane;
        this.cabin = cabin;
    }

    /**
     * Returns how strong it is.
     *
     * @return light to extreme
     */
    public TurbulenceIntensity intensity() {
        return intensity;
    }

    /**
     * Returns what the aeroplane does.
     *
     * @return the criterion in words
     */
    public String aeroplane() {
        return aeroplane;
    }

    /**
     * Returns what happens in the cabin.
     *
     * @return the criterion in words; for chop and for the extreme, that of the word below
     */
    public String cabin() {
        return cabin;
    }
}
