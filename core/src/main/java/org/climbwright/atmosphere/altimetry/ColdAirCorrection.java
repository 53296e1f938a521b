package org.climbwright.atmosphere.altimetry;

import java.io.Serializable;
import java.util.Locale;
import java.util.Objects;
import org.climbwright.quantity.altitude.AltitudeChange;

/**
 * What to add to a published height or altitude because the air is cold.
 *
 * <p>Not the error of the altimeter at an indicated height, which is another number: {@link
 * AltimeterError}.
 *
 * <p>Limits of use: whether and to what a correction is applied is laid down by the state, the
 * aeronautical information and the operator's procedures.
 *
 * @param difference what the altimeter must show more than the published figure; negative in air
 *     warmer than standard, where nothing is taken off
 * @param published the published figure, as words
 * @param basis where the figure comes from, as words
 */
public record ColdAirCorrection(AltitudeChange difference, String published, String basis)
        implements Serializable {
    /**
     * Makes it of parts that are all there.
     *
     * @param difference see above
     * @param published see above
     * @param basis see above
     */
    public ColdAirCorrection {
        Objects.requireNonNull(difference, "difference");
        Objects.requireNonNull(published, "published");
        Objects.requireNonNull(basis, "basis");
    }

    /** What rounding may leave of nothing. */
    private static final double ROUNDING_FT = 1e-6;

    /**
     * Tells whether there is something to add.
     *
     * @return true in air colder than standard; false otherwise, for nothing is ever taken off
     */
    public boolean applies() {
        return difference.inFeet() > ROUNDING_FT;
    }

    /**
     * Returns what to do in words.
     *
     * @return one or two sentences with the figure to the foot; may change between versions
     */
    public String inWords() {
        long feet = Math.round(difference.inFeet());
        if (feet <= 0) {
            return String.format(
                    Locale.ROOT,
                    "Add nothing to the published %s, by %s: the altimeter shows no more than the"
                            + " height that there is, and nothing is taken off.",
                    published,
                    basis);
        }
        return String.format(
                Locale.ROOT,
                "Add %,d ft to the published %s, by %s: without it the aeroplane would be lower"
                    + " than published. The operator's procedures decide whether and to what it is"
                    + " applied.",
                feet,
                published,
                basis);
    }

    /**
     * Returns the correction for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return inWords();
    }
}
