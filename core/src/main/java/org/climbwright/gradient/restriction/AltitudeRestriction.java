package org.climbwright.gradient.restriction;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.jspecify.annotations.Nullable;

/**
 * Which levels a point may be crossed at: at, at or above, at or below, between, or none in
 * particular.
 *
 * <pre>{@code
 * AltimeterSetting qnh = AltimeterSetting.ofHectopascals(1003);
 * AltitudeRestriction least =
 *         AltitudeRestriction.atOrAbove(Level.of(AltitudeOnQnh.ofFeet(10000)));
 * least.isMet(PressureAltitude.ofFlightLevel(100), qnh)                 // false
 * least.margin(PressureAltitude.ofFlightLevel(100), qnh).get().inFeet() // -281.08…
 * }</pre>
 *
 * <p>Bounds themselves are inside. A chart draws no tolerance for "at": the caller gives one. A
 * recommended altitude never constrains.
 *
 * <p>Limits of use: for study and simulation, not for use in flight. The clearance and the
 * published procedure say what is restricted and by which altimeter; errors of altimeters and cold
 * air are not in it.
 *
 * @source FAA AIM, section on approach charts (paragraph 5-4-5, number from memory): a value
 *     underscored is a minimum, overscored a maximum, both mandatory, neither recommended
 */
public final class AltitudeRestriction implements Serializable {
    private static final long serialVersionUID = 1L;
    private static final ModelRange ALTITUDE =
            new ModelRange("pressure altitude", -10000.0, 100000.0, "m", "no restriction is there");

    private final Kind kind;
    private final @Nullable Level lower;
    private final @Nullable Level upper;
    private final AltitudeChange tolerance;

    private AltitudeRestriction(
            Kind kind, @Nullable Level lower, @Nullable Level upper, AltitudeChange tolerance) {
        this.kind = kind;
        this.lower = lower;
        this.upper = upper;
        this.tolerance = tolerance;
    }

    /** The kinds of restriction. */
    public enum Kind {
        /** At one level, within a tolerance. */
        AT,
        /** At a level or anywhere above. */
        AT_OR_ABOVE,
        /** At a level or anywhere below. */
        AT_OR_BELOW,
        /** From one level to another, both included. */
        BETWEEN,
        /** A recommendation, which constrains nothing. */
        RECOMMENDED
    }

    /**
     * Returns the restriction to one level.
     *
     * @param level the level
     * @param tolerance how far from it still counts as at it, 0 or more; charts draw none
     * @return the restriction
     * @throws IllegalArgumentException if the tolerance is below 0
     */
    public static AltitudeRestriction at(Level level, AltitudeChange tolerance) {
        if (!(tolerance.inMetres() >= 0.0)) {
            throw new IllegalArgumentException(
                    "the tolerance of a restriction must be 0 or more, but was "
                            + tolerance.text());
        }
        return new AltitudeRestriction(Kind.AT, nonNull(level), level, tolerance);
    }

    /**
     * Returns the restriction to a level or above.
     *
     * @param level the lowest level allowed
     * @return the restriction
     */
    public static AltitudeRestriction atOrAbove(Level level) {
        return new AltitudeRestriction(Kind.AT_OR_ABOVE, nonNull(level), null, none());
    }

    /**
     * Returns the restriction to a level or below.
     *
     * @param level the highest level allowed
     * @return the restriction
     */
    public static AltitudeRestriction atOrBelow(Level level) {
        return new AltitudeRestriction(Kind.AT_OR_BELOW, null, nonNull(level), none());
    }

    /**
     * Returns the restriction to a window.
     *
     * @param lower the lowest level allowed
     * @param upper the highest level allowed; of another reference than the lower it may turn out
     *     to be below it on some days, see {@link #emptyBecause}
     * @return the restriction
     * @throws IllegalArgumentException if both are of one reference and the lower is above the
     *     upper
     */
    public static AltitudeRestriction between(Level lower, Level upper) {
        if (lower.reference() == upper.reference() && !(lower.inFeet() <= upper.inFeet())) {
            throw new IllegalArgumentException(
                    "the lower level of a window must not be above the upper, but they were "
                            + lower
                            + " and "
                            + upper);
        }
        return new AltitudeRestriction(Kind.BETWEEN, lower, upper, none());
    }

    /**
     * Returns a recommended level, which constrains nothing.
     *
     * @param level the level recommended
     * @return the restriction that is none
     */
    public static AltitudeRestriction recommended(Level level) {
        return new AltitudeRestriction(Kind.RECOMMENDED, nonNull(level), level, none());
    }

    private static Level nonNull(Level level) {
        return Objects.requireNonNull(level, "level");
    }

    private static AltitudeChange none() {
        return AltitudeChange.ofMetres(0.0);
    }

    /**
     * Returns the kind.
     *
     * @return the kind of this restriction
     */
    public Kind kind() {
        return kind;
    }

    /**
     * Returns the level that must be reached.
     *
     * @return the level of "at" and "at or above", the lower one of a window; else empty
     */
    public Optional<Level> lower() {
        return constrains() ? Optional.ofNullable(lower) : Optional.empty();
    }

    /**
     * Returns the level that must not be passed.
     *
     * @return the level of "at" and "at or below", the upper one of a window; else empty
     */
    public Optional<Level> upper() {
        return constrains() ? Optional.ofNullable(upper) : Optional.empty();
    }

    /**
     * Tells whether it constrains at all.
     *
     * @return false for a recommendation
     */
    public boolean constrains() {
        return kind != Kind.RECOMMENDED;
    }

    /**
     * Returns the reference of its reading.
     *
     * @return the level whose reference a reading against this restriction takes: the lower where
     *     there is one
     */
    public Level readBy() {
        return lower != null ? lower : Objects.requireNonNull(upper, "upper");
    }

    /**
     * Returns the lowest pressure altitude allowed on a day.
     *
     * @param qnhPa altimeter setting [Pa], 0.886 to 177687
     * @return pressure altitude [m], the tolerance of "at" included; negative infinity where
     *     nothing is too low
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 1e-9 m
     */
    public double lowest(double qnhPa) {
        return constrains() && lower != null
                ? lower.pressureAltitude(qnhPa) - tolerance.inMetres()
                : Double.NEGATIVE_INFINITY;
    }

    /**
     * Returns the highest pressure altitude allowed on a day.
     *
     * @param qnhPa altimeter setting [Pa], 0.886 to 177687
     * @return pressure altitude [m], the tolerance of "at" included; infinity where nothing is too
     *     high
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 1e-9 m
     */
    public double highest(double qnhPa) {
        return constrains() && upper != null
                ? upper.pressureAltitude(qnhPa) + tolerance.inMetres()
                : Double.POSITIVE_INFINITY;
    }

    /**
     * Returns how far inside its bounds a level is: the smaller of {@code Hp - lowest} and {@code
     * highest - Hp}.
     *
     * @param pressureAltitudeM pressure altitude [m], -10000 to 100000
     * @param lowestM lowest pressure altitude allowed [m], same range; negative infinity if none
     * @param highestM highest pressure altitude allowed [m], same range; infinity if none, but not
     *     where the lowest is infinite too
     * @return margin [m], in the altimeter's own measure; below zero outside the bounds
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy to a whole nanometre, so that what rounding leaves of a level on its bound is none
     */
    public static double margin(double pressureAltitudeM, double lowestM, double highestM) {
        boolean isOpen = lowestM == Double.NEGATIVE_INFINITY;
        double above =
                isOpen ? Double.POSITIVE_INFINITY : pressureAltitudeM - ALTITUDE.check(lowestM);
        double below =
                !isOpen && highestM == Double.POSITIVE_INFINITY
                        ? Double.POSITIVE_INFINITY
                        : ALTITUDE.check(highestM) - pressureAltitudeM;
        ALTITUDE.check(pressureAltitudeM);
        return Figures.withoutRounding(Math.min(above, below));
    }

    /**
     * Tells whether {@link #margin(double, double, double)} has an answer.
     *
     * @param pressureAltitudeM pressure altitude [m]
     * @param lowestM lowest pressure altitude allowed [m]
     * @param highestM highest pressure altitude allowed [m]
     * @return true if all are in range, and one bound at least is finite
     */
    public static boolean coversMargin(double pressureAltitudeM, double lowestM, double highestM) {
        boolean hasLowest = ALTITUDE.covers(lowestM);
        boolean hasHighest = ALTITUDE.covers(highestM);
        return ALTITUDE.covers(pressureAltitudeM)
                && (hasLowest || lowestM == Double.NEGATIVE_INFINITY)
                && (hasHighest || highestM == Double.POSITIVE_INFINITY)
                && (hasLowest || hasHighest);
    }

    /**
     * Returns the margin at a level: how much is in hand, or missing.
     *
     * @param altitude pressure altitude of the aeroplane
     * @param qnh altimeter setting of the day
     * @return positive or zero when met; the smaller of both in a window, the tolerance less the
     *     deviation for "at"; empty for a recommendation
     * @throws org.climbwright.quantity.OutsideModelException if a level is out of range
     * @accuracy 1e-9 m
     */
    public Optional<AltitudeChange> margin(PressureAltitude altitude, AltimeterSetting qnh) {
        double qnhPa = qnh.inPascals();
        return constrains()
                ? Optional.of(
                        AltitudeChange.ofMetres(
                                margin(altitude.inMetres(), lowest(qnhPa), highest(qnhPa))))
                : Optional.empty();
    }

    /**
     * Tells whether a level meets this restriction.
     *
     * @param altitude pressure altitude of the aeroplane
     * @param qnh altimeter setting of the day
     * @return true where {@link #margin(PressureAltitude, AltimeterSetting)} is 0 or more, and for
     *     a recommendation
     * @throws org.climbwright.quantity.OutsideModelException if a level is out of range
     */
    public boolean isMet(PressureAltitude altitude, AltimeterSetting qnh) {
        return margin(altitude, qnh).map(margin -> margin.inMetres() >= 0.0).orElse(true);
    }

    /**
     * Returns why no level at all meets this restriction on a day.
     *
     * @param qnh altimeter setting of the day
     * @return the reason, where a window of two references has its lower level above its upper on
     *     that QNH; empty where some level meets it
     * @throws org.climbwright.quantity.OutsideModelException if a level is out of range
     */
    public Optional<String> emptyBecause(AltimeterSetting qnh) {
        double gap = lowest(qnh.inPascals()) - highest(qnh.inPascals());
        return Figures.withoutRounding(gap) > 0.0
                ? Optional.of(
                        "the window is empty: on QNH "
                                + qnh.text()
                                + " its lower level, "
                                + lower
                                + ", is "
                                + Figures.feet(gap)
                                + " above its upper, "
                                + upper)
                : Optional.empty();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof AltitudeRestriction that
                && kind == that.kind
                && Objects.equals(lower, that.lower)
                && Objects.equals(upper, that.upper)
                && tolerance.equals(that.tolerance);
    }

    @Override
    public int hashCode() {
        return Objects.hash(kind, lower, upper, tolerance);
    }

    /**
     * Returns the restriction in words.
     *
     * @return a text such as {@code "at or above FL120"}; may change between versions
     */
    @Override
    public String toString() {
        return switch (kind) {
            case AT -> "at " + lower + " within " + Figures.feet(tolerance.inMetres());
            case AT_OR_ABOVE -> "at or above " + lower;
            case AT_OR_BELOW -> "at or below " + upper;
            case BETWEEN -> "between " + lower + " and " + upper;
            case RECOMMENDED -> "recommended " + lower;
        };
    }

    private Object readResolve() {
        return switch (kind) {
            case AT -> at(readBy(), tolerance);
            case AT_OR_ABOVE -> atOrAbove(readBy());
            case AT_OR_BELOW -> atOrBelow(readBy());
            case BETWEEN -> between(readBy(), Objects.requireNonNull(upper, "upper"));
            case RECOMMENDED -> recommended(readBy());
        };
    }
}
