package org.climbwright.atmosphere.altimetry;

import java.io.Serializable;
import java.util.Locale;
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
 * @param basis where the figure comes from, as words
 */
public record ColdAirCorrection(AltitudeChange difference, String basis) implements Serializable {
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
     * @return one or two sentences; may change between versions
     */
    public String inWords() {
        String rule = " The operator's procedures decide whether and to what it is applied.";
        return applies()
                ? String.format(
                                Locale.ROOT,
                                "Add %,d ft to the published figure, by %s: in air colder than"
                                        + " standard the aeroplane is lower than the altimeter"
                                        + " shows.",
                                (long) Math.ceil(difference.inFeet() - ROUNDING_FT),
                                basis)
                        + rule
                : "Add nothing, by "
                        + basis
                        + ": the air is not colder than standard, and nothing is taken off for"
                        + " warm air.";
    }
}
