package org.climbwright.quantity;

import java.io.IOException;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;

/**
 * What all values have in common: one finite number in SI, an order, and a text.
 *
 * <p>Not for extension: the values of this library are all there are. Not for use as a parameter:
 * ask for the value you mean, a {@code PressureAltitude} and not any altitude. Two values are equal
 * when they are of the same class and their stored doubles are.
 *
 * @param <T> the value type itself
 */
public abstract class Scalar<T extends Scalar<T>> implements Comparable<T>, Serializable {
    private static final long serialVersionUID = 1L;

    private final double si;

    /**
     * Keeps a number that the value's term has checked.
     *
     * @param si the number in SI
     */
    protected Scalar(double si) {
        this.si = si + 0.0; // makes -0.0 into 0.0, so that equal numbers are equal values
    }

    /**
     * Returns what this value is called and which numbers it may hold.
     *
     * @return the term, one for each class
     */
    protected abstract Term term();

    /**
     * Returns the stored number.
     *
     * @return the number in SI
     */
    protected final double si() {
        return si;
    }

    /**
     * Tells whether another value of this class lies within a tolerance.
     *
     * @param other the other value
     * @param toleranceSi the tolerance in SI
     * @return true if the two differ by the tolerance or less
     */
    protected final boolean isWithin(T other, double toleranceSi) {
        return Math.abs(si - ((Scalar<?>) other).si) <= toleranceSi;
    }

    /**
     * Returns this value in the text form that {@code parse} reads: {@code "35000 ft"}.
     *
     * @return the text in the trade's unit, or in SI where only that reads back as the same value
     */
    public String text() {
        return term().text(si);
    }

    @Override
    public final int compareTo(T other) {
        return Double.compare(si, ((Scalar<?>) other).si);
    }

    @Override
    @SuppressWarnings(
            "EqualsGetClass") // equal numbers of two types are two things; the types are final
    public final boolean equals(Object other) {
        return other != null
                && other.getClass() == getClass()
                && Double.compare(si, ((Scalar<?>) other).si) == 0;
    }

    @Override
    public final int hashCode() {
        return Double.hashCode(si);
    }

    /**
     * Returns this value for reading, in SI and in the trade's unit.
     *
     * @return a text such as {@code "10668.0 m (35000.0 ft)"}; may change between versions
     */
    @Override
    public final String toString() {
        return term().describe(si);
    }

    private void readObject(ObjectInputStream in) throws IOException, ClassNotFoundException {
        in.defaultReadObject();
        if (Double.doubleToRawLongBits(si) == Double.doubleToRawLongBits(-0.0)) {
            throw new InvalidObjectException("a value never holds -0.0");
        }
        try {
            term().check(si);
        } catch (IllegalArgumentException refused) {
            InvalidObjectException invalid = new InvalidObjectException(refused.getMessage());
            invalid.initCause(refused);
            throw invalid;
        }
    }
}
