package org.climbwright.atmosphere.altimetry;

import java.io.Serializable;
import java.util.Locale;
import java.util.Objects;
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
    /** What rounding may leave of no error at all. */
    private static final double NOTHING_M = 1e-8;

    /**
     * Makes it of parts that are all there.
     *
     * @param readsTooHighBy see above
     * @param reason see above
     */
    public AltimeterError {
        Objects.requireNonNull(readsTooHighBy, "readsTooHighBy");
        Objects.requireNonNull(reason, "reason");
    }

    /**
     * Tells whether the aeroplane is lower than the altimeter shows, which is the dangerous way.
     *
     * @return true when the altimeter reads too high
     */
    public boolean isLowerThanShown() {
        return readsTooHighBy.inMetres() > NOTHING_M;
    }

    /**
     * Returns the error in words.
     *
     * @return one sentence with the error to the foot; may change between versions
     */
    public String inWords() {
        long feet = Math.round(readsTooHighBy.inFeet());
        if (feet == 0) {
            return "The altimeter reads right to the foot.";
        }
        return String.format(
                Locale.ROOT,
                "The altimeter reads %,d ft too %s: the aeroplane is %,d ft %s than it shows,"
                        + " because %s.",
                Math.abs(feet),
                feet > 0 ? "high" : "low",
                Math.abs(feet),
                feet > 0 ? "lower" : "higher",
                reason);
    }

    /**
     * Returns the error for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return inWords();
    }
}
