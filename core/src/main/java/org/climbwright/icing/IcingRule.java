package org.climbwright.icing;

import java.io.Serializable;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.climbwright.path.ClimbState;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.quantity.temperature.TotalAirTemperature;

/**
 * An operational rule for icing conditions: cold by total or static air temperature, with visible
 * moisture.
 *
 * <pre>{@code
 * VisibleMoisture moisture = VisibleMoisture.ofRelativeHumidity(RelativeHumidity.ofPercent(80));
 * IcingRule engine = IcingRule.engine(moisture);
 * IcingRule airframe = IcingRule.airframe(moisture);
 * engine.withWarmestTotal(TotalAirTemperature.ofCelsius(5));
 * }</pre>
 *
 * <p>Every threshold is the caller's to set, and holds itself: 10 °C is cold enough for a rule of
 * 10 °C. Where a rule has both temperatures, one of them suffices.
 *
 * <p>Limits of use: the thresholds of an aeroplane are those of its flight manual. A rule that is
 * not met is not "no icing". Colder than the coldest of the rule there may be ice crystals, which
 * can harm an engine.
 */
public final class IcingRule implements Serializable {
    private static final long serialVersionUID = 1L;

    /** Stands for a threshold that the rule does not have. */
    private static final double NONE = Double.NaN;

    private final ProtectedPart part;
    private final String basis;
    private final double warmestTotalK;
    private final double warmestStaticK;
    private final double coldestK;
    private final double offAboveK;
    private final VisibleMoisture moisture;

    private IcingRule(
            ProtectedPart part,
            String basis,
            double warmestTotalK,
            double warmestStaticK,
            double coldestK,
            double offAboveK,
            VisibleMoisture moisture) {
        this.part = Objects.requireNonNull(part, "part");
        this.basis = Objects.requireNonNull(basis, "basis");
        this.warmestTotalK = warmestTotalK;
        this.warmestStaticK = warmestStaticK;
        this.coldestK = coldestK;
        this.offAboveK = offAboveK;
        this.moisture = Objects.requireNonNull(moisture, "moisture");
    }

    /**
     * The usual rule for engines: total air temperature at or below 10 °C, static air temperature
     * not below -40 °C.
     *
     * @param moisture what counts as visible moisture
     * @return the rule
     * @source common practice, no source; the flight manual decides. That droplets freeze by
     *     themselves at -40 °C: FAA AC 00-6B, section 18.3.4
     */
    public static IcingRule engine(VisibleMoisture moisture) {
        return of(ProtectedPart.ENGINE, "common practice, no source", moisture)
                .withWarmestTotal(TotalAirTemperature.ofCelsius(10))
                .withColdest(StaticAirTemperature.ofCelsius(-40));
    }

    /**
     * The regulation's rule for airframes: static air temperature at or below 5 °C, or total at or
     * below 10 °C.
     *
     * @param moisture what counts as visible moisture
     * @return the rule
     * @source 14 CFR 121.321, opening paragraph: conditions conducive to airframe icing, unless the
     *     flight manual says otherwise
     */
    public static IcingRule airframe(VisibleMoisture moisture) {
        return of(ProtectedPart.AIRFRAME, "14 CFR 121.321", moisture)
                .withWarmestTotal(TotalAirTemperature.ofCelsius(10))
                .withWarmestStatic(StaticAirTemperature.ofCelsius(5));
    }

    /**
     * A rule of your own, which nothing meets before it is given a threshold.
     *
     * @param part what it protects
     * @param basis where it is from, in words
     * @param moisture what counts as visible moisture
     * @return the rule
     */
    public static IcingRule of(ProtectedPart part, String basis, VisibleMoisture moisture) {
        return new IcingRule(part, basis, NONE, NONE, NONE, NONE, moisture);
    }

    /**
     * Returns this rule with a threshold of total air temperature.
     *
     * @param warmest the highest at which the conditions hold
     * @return a copy that differs in it
     */
    public IcingRule withWarmestTotal(TotalAirTemperature warmest) {
        return new IcingRule(
                part, basis, warmest.inKelvins(), warmestStaticK, coldestK, offAboveK, moisture);
    }

    /**
     * Returns this rule with a threshold of static air temperature.
     *
     * @param warmest the highest at which the conditions hold
     * @return a copy that differs in it
     */
    public IcingRule withWarmestStatic(StaticAirTemperature warmest) {
        return new IcingRule(
                part, basis, warmestTotalK, warmest.inKelvins(), coldestK, offAboveK, moisture);
    }

    /**
     * Returns this rule with an end towards the cold.
     *
     * @param coldest the lowest static air temperature at which the conditions hold
     * @return a copy that differs in it
     */
    public IcingRule withColdest(StaticAirTemperature coldest) {
        return new IcingRule(
                part,
                basis,
                warmestTotalK,
                warmestStaticK,
                coldest.inKelvins(),
                offAboveK,
                moisture);
    }

    /**
     * Returns this rule without an end towards the cold.
     *
     * @return a copy that differs in it
     */
    public IcingRule withoutColdest() {
        return new IcingRule(part, basis, warmestTotalK, warmestStaticK, NONE, offAboveK, moisture);
    }

    /**
     * Returns this rule with a threshold of its own for the end: conditions that have begun last
     * until static air temperature is above it, even where they would not begin.
     *
     * @param warmest the highest static air temperature at which they last
     * @return a copy that differs in it
     */
    public IcingRule withOffAbove(StaticAirTemperature warmest) {
        return new IcingRule(
                part,
                basis,
                warmestTotalK,
                warmestStaticK,
                coldestK,
                warmest.inKelvins(),
                moisture);
    }

    /**
     * Returns this rule with another visible moisture.
     *
     * @param other what counts as visible moisture
     * @return a copy that differs in it
     */
    public IcingRule withMoisture(VisibleMoisture other) {
        return new IcingRule(
                part, basis, warmestTotalK, warmestStaticK, coldestK, offAboveK, other);
    }

    /**
     * Returns what counts as visible moisture.
     *
     * @return the way of telling
     */
    public VisibleMoisture moisture() {
        return moisture;
    }

    /**
     * Returns what the rule protects.
     *
     * @return the part
     */
    public ProtectedPart part() {
        return part;
    }

    /**
     * Returns where the rule is from.
     *
     * @return a regulation, or how well it is founded
     */
    public String basis() {
        return basis;
    }

    /**
     * Returns the threshold of total air temperature.
     *
     * @return the highest at which the conditions hold; empty where the rule has none
     */
    public Optional<TotalAirTemperature> warmestTotal() {
        return Double.isNaN(warmestTotalK)
                ? Optional.empty()
                : Optional.of(TotalAirTemperature.ofKelvins(warmestTotalK));
    }

    /**
     * Returns the threshold of static air temperature.
     *
     * @return the highest at which the conditions hold; empty where the rule has none
     */
    public Optional<StaticAirTemperature> warmestStatic() {
        return Double.isNaN(warmestStaticK)
                ? Optional.empty()
                : Optional.of(StaticAirTemperature.ofKelvins(warmestStaticK));
    }

    /**
     * Returns the end towards the cold.
     *
     * @return the lowest static air temperature at which the conditions hold; empty where the rule
     *     has none
     */
    public Optional<StaticAirTemperature> coldest() {
        return Double.isNaN(coldestK)
                ? Optional.empty()
                : Optional.of(StaticAirTemperature.ofKelvins(coldestK));
    }

    /**
     * Returns what the rule says of a point of a climb where no conditions have begun.
     *
     * @param state the point
     * @return the answer
     */
    public IcingAnswer at(ClimbState state) {
        return at(state, IcingAnswer.NOT_MET);
    }

    /**
     * Returns what the rule says of a point of a climb.
     *
     * @param state the point
     * @param before what it said just below, since conditions may last longer than they would begin
     * @return the answer
     */
    public IcingAnswer at(ClimbState state, IcingAnswer before) {
        boolean lasts = before != IcingAnswer.NOT_MET && isColdEnoughToLast(state);
        if (!isColdEnough(state) && !lasts) {
            return IcingAnswer.NOT_MET;
        }
        return switch (moisture.at(state)) {
            case ABSENT -> IcingAnswer.NOT_MET;
            case NOT_KNOWN -> IcingAnswer.NOT_KNOWN;
            case PRESENT ->
                    isTooCold(state) ? IcingAnswer.COLDER_THAN_THE_RULE : IcingAnswer.CONDITIONS;
        };
    }

    /**
     * Which thresholds are met, as a number: two points of one number have one answer between them,
     * as far as a look at both can tell.
     */
    int met(ClimbState state) {
        return (isColdEnough(state) ? 1 : 0)
                + (isColdEnoughToLast(state) ? 2 : 0)
                + (isTooCold(state) ? 4 : 0)
                + switch (moisture.at(state)) {
                    case PRESENT -> 8;
                    case ABSENT -> 16;
                    case NOT_KNOWN -> 24;
                };
    }

    /** Levels that a search must not step over [m]. */
    double[] edgesM() {
        return moisture.edgesM();
    }

    // a comparison with no threshold is false

    private boolean isColdEnough(ClimbState state) {
        return totalK(state) <= warmestTotalK || staticK(state) <= warmestStaticK;
    }

    private boolean isColdEnoughToLast(ClimbState state) {
        return staticK(state) <= offAboveK;
    }

    private boolean isTooCold(ClimbState state) {
        return staticK(state) < coldestK;
    }

    private static double totalK(ClimbState state) {
        return state.totalAirTemperature().inKelvins();
    }

    private static double staticK(ClimbState state) {
        return state.air().temperatureK();
    }

    /** The figures of a stretch against the rule, in words. */
    String reason(IcingAnswer answer, List<ClimbState> states) {
        StringBuilder words = new StringBuilder();
        if (!Double.isNaN(warmestTotalK)) {
            words.append(
                    range(
                            "total air temperature",
                            states.stream().mapToDouble(IcingRule::totalK).toArray(),
                            warmestTotalK));
        }
        if (!Double.isNaN(warmestStaticK)) {
            words.append(words.length() == 0 ? "" : ", static ");
            words.append(
                    range(
                            words.length() == 0 ? "static air temperature" : "",
                            states.stream().mapToDouble(IcingRule::staticK).toArray(),
                            warmestStaticK));
        }
        if (answer == IcingAnswer.NOT_KNOWN) {
            return words.append("; ").append(moisture.notKnown(states)).toString();
        }
        words.append("; ").append(moisture.found(states));
        if (answer == IcingAnswer.COLDER_THAN_THE_RULE) {
            words.append(
                    String.format(
                            Locale.ROOT,
                            "; colder than the rule's %.1f °C, where ice crystals are possible",
                            celsius(coldestK)));
        }
        return words.toString();
    }

    private static String range(String term, double[] kelvins, double warmestK) {
        double warmest = Double.NEGATIVE_INFINITY;
        double coldest = Double.POSITIVE_INFINITY;
        for (double kelvin : kelvins) {
            warmest = Math.max(warmest, kelvin);
            coldest = Math.min(coldest, kelvin);
        }
        return String.format(
                        Locale.ROOT,
                        "%s %.1f to %.1f °C (rule: %.1f °C or below)",
                        term,
                        celsius(warmest),
                        celsius(coldest),
                        celsius(warmestK))
                .strip();
    }

    private static double celsius(double kelvins) {
        return StaticAirTemperature.ofKelvins(kelvins).inCelsius();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof IcingRule that
                && part == that.part
                && basis.equals(that.basis)
                && Double.compare(warmestTotalK, that.warmestTotalK) == 0
                && Double.compare(warmestStaticK, that.warmestStaticK) == 0
                && Double.compare(coldestK, that.coldestK) == 0
                && Double.compare(offAboveK, that.offAboveK) == 0
                && moisture.equals(that.moisture);
    }

    @Override
    public int hashCode() {
        return Objects.hash(
                part, basis, warmestTotalK, warmestStaticK, coldestK, offAboveK, moisture);
    }

    /**
     * Returns the rule for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        StringBuilder words =
                new StringBuilder(part.name().toLowerCase(Locale.ROOT))
                        .append(" (")
                        .append(basis)
                        .append(')');
        append(words, ", TAT to ", warmestTotalK);
        append(words, ", SAT to ", warmestStaticK);
        append(words, ", not below SAT ", coldestK);
        append(words, ", off above SAT ", offAboveK);
        return words.append(", ").append(moisture).toString();
    }

    private static void append(StringBuilder words, String term, double kelvins) {
        if (!Double.isNaN(kelvins)) {
            words.append(term).append(celsius(kelvins)).append(" °C");
        }
    }

    private Object readResolve() {
        return new IcingRule(
                part, basis, warmestTotalK, warmestStaticK, coldestK, offAboveK, moisture);
    }
}
