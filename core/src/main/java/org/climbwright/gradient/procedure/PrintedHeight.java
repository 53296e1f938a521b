package org.climbwright.gradient.procedure;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import org.climbwright.quantity.altitude.Height;

/**
 * A height as a rule prints it, with both figures where there are two: 120 m and 394 ft are not the
 * same number, and neither is a conversion of the other.
 *
 * <p>Limits of use: which of two figures binds, the rule in force says.
 */
public final class PrintedHeight implements Serializable {
    private static final long serialVersionUID = 1L;

    private final Height first;
    private final Height second;

    private PrintedHeight(Height first, Height second) {
        this.first = Objects.requireNonNull(first, "first");
        this.second = Objects.requireNonNull(second, "second");
    }

    /**
     * Returns a height printed in one unit.
     *
     * @param height the height
     * @return the printed height
     */
    public static PrintedHeight of(Height height) {
        return new PrintedHeight(height, height);
    }

    /**
     * Returns a height printed in two units.
     *
     * @param first the figure printed first, which the criteria are stated with
     * @param second the figure in parentheses
     * @return the printed height
     */
    public static PrintedHeight of(Height first, Height second) {
        return new PrintedHeight(first, second);
    }

    /**
     * Returns the figure printed first, with which everything here is computed.
     *
     * @return the height
     */
    public Height first() {
        return first;
    }

    /**
     * Returns the figure in parentheses.
     *
     * @return the height; empty where the rule prints one figure
     */
    public Optional<Height> second() {
        return first.equals(second) ? Optional.empty() : Optional.of(second);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof PrintedHeight that
                && first.equals(that.first)
                && second.equals(that.second);
    }

    @Override
    public int hashCode() {
        return Objects.hash(first, second);
    }

    /**
     * Returns the height for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return first + second().map(height -> " or " + height).orElse("");
    }
}
