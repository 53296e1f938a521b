package org.climbwright.icing.envelope;

import java.io.Serializable;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * By how much some conditions keep one limit of an envelope, or that nobody knows.
 *
 * <p>A margin of zero is inside: the edges belong to an envelope.
 *
 * <p>Limits of use: a margin to a design figure is no margin of safety for an aeroplane.
 */
public final class LimitMargin implements Serializable {
    private static final long serialVersionUID = 1L;

    /** What an envelope limits. */
    public enum Limit {
        /** How warm the air may be; margin in kelvin. */
        WARMEST_TEMPERATURE("warmest temperature", "K"),
        /** How cold the air may be; margin in kelvin. */
        COLDEST_TEMPERATURE("coldest temperature", "K"),
        /** Which temperatures belong to which altitudes; margin in kelvin. */
        TEMPERATURE_FOR_ALTITUDE("temperature for the altitude", "K"),
        /** How low the pressure altitude, or the height, may be; margin in metres. */
        LOWEST_ALTITUDE("lowest altitude", "m"),
        /** How high the pressure altitude, or the height, may be; margin in metres. */
        HIGHEST_ALTITUDE("highest altitude", "m"),
        /** How deep the layer may be; margin in metres. */
        VERTICAL_EXTENT("vertical extent", "m"),
        /** How small the drops may be; margin in metres. */
        SMALLEST_DROP("smallest drop", "m"),
        /** How large the drops may be; margin in metres. */
        LARGEST_DROP("largest drop", "m"),
        /** How much liquid water there may be; margin in kilograms in a cubic metre. */
        LIQUID_WATER_CONTENT("liquid water content", "kg/m³");

        private final String words;
        private final String unit;

        Limit(String words, String unit) {
            this.words = words;
            this.unit = unit;
        }

        /**
         * Returns the SI unit of the margin.
         *
         * @return its label
         */
        public String unit() {
            return unit;
        }
    }

    private final Limit limit;
    private final double margin;
    private final String basis;

    private LimitMargin(Limit limit, double margin, String basis) {
        this.limit = Objects.requireNonNull(limit, "limit");
        this.margin = margin;
        this.basis = Objects.requireNonNull(basis, "basis");
    }

    static LimitMargin atMost(Limit limit, double value, double highest, String basis) {
        return new LimitMargin(limit, difference(highest, value), basis);
    }

    static LimitMargin atLeast(Limit limit, double value, double lowest, String basis) {
        return new LimitMargin(limit, difference(value, lowest), basis);
    }

    static LimitMargin notKnown(Limit limit, String reason) {
        return new LimitMargin(limit, Double.NaN, reason);
    }

    private static double difference(double one, double other) {
        double difference = one - other;
        return Bounds.isZero(difference, one, other) ? 0.0 : difference;
    }

    /**
     * Returns what is limited.
     *
     * @return the limit
     */
    public Limit limit() {
        return limit;
    }

    /**
     * Returns by how much the limit is kept.
     *
     * @return the margin in the unit of the limit: zero or more inside, negative by how much it is
     *     outside; empty if the limit is not known, {@link #basis} tells why
     */
    public OptionalDouble margin() {
        return isKnown() ? OptionalDouble.of(margin) : OptionalDouble.empty();
    }

    /**
     * Tells whether the limit is known for these conditions.
     *
     * @return true if there is a margin
     */
    public boolean isKnown() {
        return !Double.isNaN(margin);
    }

    /**
     * Tells whether the limit is known and not kept.
     *
     * @return true if the margin is negative
     */
    public boolean isExceeded() {
        return margin < 0.0;
    }

    /**
     * Returns where the limit comes from, or why it is not known.
     *
     * @return the source in words
     */
    public String basis() {
        return basis;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof LimitMargin that
                && limit == that.limit
                && Double.compare(margin, that.margin) == 0
                && basis.equals(that.basis);
    }

    @Override
    public int hashCode() {
        return Objects.hash(limit, margin, basis);
    }

    /**
     * Returns the margin for reading.
     *
     * @return a text such as {@code "warmest temperature: 2.0 K inside"}; may change between
     *     versions
     */
    @Override
    public String toString() {
        if (!isKnown()) {
            return limit.words + ": not known, " + basis;
        }
        String side = isExceeded() ? " outside" : " inside";
        return limit.words + ": " + Math.abs(margin) + " " + limit.unit + side;
    }
}
