package org.climbwright.cabin;

import java.io.Serializable;
import java.util.Locale;
import java.util.Objects;
import org.climbwright.quantity.pressure.DifferentialPressure;

/**
 * The three differential pressures of a hull, which are three different numbers: what the
 * controller keeps to, where the relief valves open, and where the inward ones do.
 *
 * <p>A strength of the structure is none of them: it is a factor on the relief setting.
 *
 * @param scheduled the most that the controller builds
 * @param relief where the positive relief valve opens; above the scheduled one
 * @param negativeRelief where the negative relief valve opens, as a differential: 0 or less
 */
public record DifferentialLimits(
        DifferentialPressure scheduled,
        DifferentialPressure relief,
        DifferentialPressure negativeRelief)
        implements Serializable {
    /**
     * Makes the limits.
     *
     * @param scheduled above 0
     * @param relief above the scheduled one
     * @param negativeRelief 0 or less
     * @throws IllegalArgumentException if they are not in that order
     */
    public DifferentialLimits {
        Objects.requireNonNull(scheduled, "scheduled");
        Objects.requireNonNull(relief, "relief");
        Objects.requireNonNull(negativeRelief, "negativeRelief");
        boolean inOrder =
                negativeRelief.inPascals() <= 0.0
                        && scheduled.inPascals() > 0.0
                        && relief.inPascals() > scheduled.inPascals();
        if (!inOrder) {
            throw new IllegalArgumentException(
                    "the scheduled differential must be above 0, the relief setting above it and"
                            + " the negative relief 0 or less, but they were "
                            + scheduled.text()
                            + ", "
                            + relief.text()
                            + " and "
                            + negativeRelief.text());
        }
    }

    /**
     * Returns the limits for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "differential scheduled up to %.2f psi, relief at %.2f psi, negative relief at %.2f"
                        + " psi",
                scheduled.inPoundsPerSquareInch(),
                relief.inPoundsPerSquareInch(),
                negativeRelief.inPoundsPerSquareInch());
    }
}
