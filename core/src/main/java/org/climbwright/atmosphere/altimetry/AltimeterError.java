package org.climbwright.atmosphere.altimetry;

import java.io.Serializable;
import java.util.Locale;
import org.climbwright.quantity.altitude.AltitudeChange;

/**
 * By how much an altimeter reads too high, and why.
 *
 * <p>This is about what the instrument shows. What must be added to a published height is another
 * number, see {@link ColdAirCorrection}.
 *
 * @param readsTooHighBy indication less what it should show; negative when it reads too low
 * @param reason what makes it so, as a clause
 */
public record AltimeterError(AltitudeChange readsTooHighBy, String reason) implements Serializable {
    /**
     * Tells whether the aeroplane is lower than the altimeter shows, which is the dangerous way.
     *
     * @return true when the altimeter reads too high
     */
    public boolean isLowerThanShown() {
        return readsTooHighBy.inMetres() > 0.0;
    }

    /**
     * Returns the error in words.
     *
     * @return one sentence with the error to the foot; may change between versions
     */
    public String inWords() {
        long feet = Math.round(readsTooHighBy.inFeet());
        String effect =
                feet == 0
                        ? "The altimeter reads right to the foot"
                        : String.format(
                                Locale.ROOT,
                                "The altimeter reads %,d ft too %s: the aeroplane is %,d ft %s than"
                                        + " it shows",
                                Math.abs(feet),
                                feet > 0 ? "high" : "low",
                                Math.abs(feet),
                                feet > 0 ? "lower" : "higher");
        return effect + ", because " + reason + ".";
    }
}
