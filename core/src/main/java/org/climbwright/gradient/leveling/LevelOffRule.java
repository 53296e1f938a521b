package org.climbwright.gradient.leveling;

import java.io.Serializable;
import java.time.Duration;
import java.util.Objects;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.speed.PressureAltitudeRate;

/**
 * The largest vertical rate that a rule allows within a height to go to the level.
 *
 * <pre>{@code
 * LevelOffRule rule = LevelOffRule.icaoInFeet();
 * AltitudeChange toGo = AltitudeChange.ofFeet(1000);
 * rule.isKept(toGo, PressureAltitudeRate.ofFeetPerMinute(1500))     // false, "less than" 1,500
 * LevelOffRule.tradeFigure().isKept(toGo, PressureAltitudeRate.ofFeetPerMinute(1500))  // true
 * LevelOffRule.icaoInMetres().largest().inFeetPerMinute()           // 1574.8…
 * LevelOffRule.tradeFigure().leastTime().toSeconds()                // 40
 * }</pre>
 *
 * <p>Height to go and rate are the altimeter's and the instrument's own, up or down alike. The rule
 * is in force at its edge too.
 *
 * <p>Limits of use: a rule binds where and when its condition says; the clearance, the operator's
 * procedures, local regulations and licensed practice decide. That it is kept does not mean that no
 * other aeroplane is there.
 *
 * @param name the rule
 * @param heightToGo its edge, above 0: in force where no more is left to the level
 * @param largest the largest rate, above 0
 * @param bound whether the largest rate itself is allowed
 * @param leastAdvised the smallest rate that it advises; 0 where it advises none
 * @param mostAdvised the largest rate that it advises; {@link #largest} where it advises no less
 * @param condition when it applies
 * @param source where it was read
 */
public record LevelOffRule(
        String name,
        AltitudeChange heightToGo,
        PressureAltitudeRate largest,
        Bound bound,
        PressureAltitudeRate leastAdvised,
        PressureAltitudeRate mostAdvised,
        String condition,
        String source)
        implements Serializable {
    /** Whether the largest rate itself is allowed. */
    public enum Bound {
        /** It is not: "less than". */
        LESS_THAN,
        /** It is: "at most". */
        AT_MOST
    }

    private static final PressureAltitudeRate NONE = PressureAltitudeRate.ofMetresPerSecond(0.0);
    private static final PressureAltitudeRate FIFTEEN_HUNDRED =
            PressureAltitudeRate.ofFeetPerMinute(1500);
    private static final PressureAltitudeRate FIVE_HUNDRED =
            PressureAltitudeRate.ofFeetPerMinute(500);
    private static final AltitudeChange THOUSAND_FEET = AltitudeChange.ofFeet(1000);

    private static final String ICAO_CONDITION =
            "when aware of another aircraft at or approaching an adjacent level, unless instructed"
                    + " otherwise by air traffic control";
    private static final String ICAO_SOURCE =
            "ICAO Doc 8168, part on ACAS, paragraph 3.3, as quoted in a forum of pilots";

    /**
     * Makes a rule, such as one of an operator.
     *
     * @param name the rule
     * @param heightToGo its edge, above 0
     * @param largest the largest rate, above 0
     * @param bound whether the largest rate itself is allowed
     * @param leastAdvised the smallest rate that it advises, 0 or more
     * @param mostAdvised the largest rate that it advises
     * @param condition when it applies
     * @param source where it was read
     * @throws IllegalArgumentException if edge or largest rate is not above 0, or the advised rates
     *     are not in order or beyond the largest
     */
    public LevelOffRule {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(bound, "bound");
        Objects.requireNonNull(condition, "condition");
        Objects.requireNonNull(source, "source");
        if (!(heightToGo.inMetres() > 0.0 && largest.inMetresPerSecond() > 0.0)) {
            throw new IllegalArgumentException(
                    "a rule for the level-off needs a height to go and a rate above 0, but had "
                            + heightToGo
                            + " and "
                            + largest);
        }
        if (leastAdvised.compareTo(NONE) < 0
                || leastAdvised.compareTo(mostAdvised) > 0
                || mostAdvised.compareTo(largest) > 0) {
            throw new IllegalArgumentException(
                    "advised rates must be from 0 to the largest of "
                            + largest
                            + " and in order, but were "
                            + leastAdvised
                            + " and "
                            + mostAdvised);
        }
    }

    /**
     * Returns the rule of ICAO in its metric figures: less than 8 m/s throughout the last 300 m.
     *
     * <p>Not {@link #icaoInFeet}: 8 m/s are 1,575 ft/min and 300 m are 984 ft. The caller chooses.
     *
     * @return the rule
     * @source ICAO Doc 8168, part on ACAS, paragraph 3.3
     */
    public static LevelOffRule icaoInMetres() {
        PressureAltitudeRate largest = PressureAltitudeRate.ofMetresPerSecond(8.0);
        return new LevelOffRule(
                "ICAO, less than 8 m/s throughout the last 300 m",
                AltitudeChange.ofMetres(300.0),
                largest,
                Bound.LESS_THAN,
                NONE,
                largest,
                ICAO_CONDITION,
                ICAO_SOURCE);
    }

    /**
     * Returns the rule of ICAO in feet: less than 1,500 ft/min throughout the last 1,000 ft.
     *
     * @return the rule; not {@link #icaoInMetres}
     * @source ICAO Doc 8168, part on ACAS, paragraph 3.3
     */
    public static LevelOffRule icaoInFeet() {
        return new LevelOffRule(
                "ICAO, less than 1,500 ft/min throughout the last 1,000 ft",
                THOUSAND_FEET,
                FIFTEEN_HUNDRED,
                Bound.LESS_THAN,
                NONE,
                FIFTEEN_HUNDRED,
                ICAO_CONDITION,
                ICAO_SOURCE);
    }

    /**
     * Returns the advice of the United Kingdom: from 1,500 ft to go at most 1,500 ft/min, ideally
     * 500 to 1,000 ft/min.
     *
     * @return the rule
     * @source UK AIP ENR 1.1, 3.2.2.3.1
     */
    public static LevelOffRule unitedKingdom() {
        return new LevelOffRule(
                "United Kingdom, at most 1,500 ft/min from 1,500 ft to go",
                AltitudeChange.ofFeet(1500),
                FIFTEEN_HUNDRED,
                Bound.AT_MOST,
                FIVE_HUNDRED,
                PressureAltitudeRate.ofFeetPerMinute(1000),
                "advice; ideally 500 to 1,000 ft/min",
                "UK AIP ENR 1.1, 3.2.2.3.1, as quoted in a forum of pilots");
    }

    /**
     * Returns the advice of the United States: 500 to 1,500 ft/min in the last 1,000 ft.
     *
     * @return the rule; its "between" is read as including both
     * @source Aeronautical Information Manual (FAA) 4-4-10(d)
     */
    public static LevelOffRule unitedStates() {
        return new LevelOffRule(
                "United States, 500 to 1,500 ft/min in the last 1,000 ft",
                THOUSAND_FEET,
                FIFTEEN_HUNDRED,
                Bound.AT_MOST,
                FIVE_HUNDRED,
                FIFTEEN_HUNDRED,
                "to be attempted; before that the optimum rate of the aeroplane",
                "FAA AIM 4-4-10(d)");
    }

    /**
     * Returns the figure of the trade: at most 1,500 ft/min in the last 1,000 ft (common practice,
     * no source).
     *
     * @return the rule
     */
    public static LevelOffRule tradeFigure() {
        return new LevelOffRule(
                "at most 1,500 ft/min in the last 1,000 ft",
                THOUSAND_FEET,
                FIFTEEN_HUNDRED,
                Bound.AT_MOST,
                NONE,
                FIFTEEN_HUNDRED,
                "always",
                "common practice, no source");
    }

    /**
     * Returns this rule with a smaller rate, as a pilot may choose who wants less than it allows.
     *
     * @param rate the largest rate, itself allowed, above 0
     * @return the stricter rule
     * @throws IllegalArgumentException if the rate is not above 0, or this rule forbids it
     */
    public LevelOffRule flownAtMost(PressureAltitudeRate rate) {
        if (!allows(rate)) {
            throw new IllegalArgumentException(
                    "a choice must keep the rule \"" + name + "\", but was " + rate);
        }
        return new LevelOffRule(
                name + ", flown at most at " + rate.text(),
                heightToGo,
                rate,
                Bound.AT_MOST,
                leastAdvised.compareTo(rate) > 0 ? rate : leastAdvised,
                mostAdvised.compareTo(rate) > 0 ? rate : mostAdvised,
                condition,
                source);
    }

    /**
     * Tells whether the rule is in force at a height to go.
     *
     * @param toGo the level less the altitude, on the same setting; negative where the level is
     *     below
     * @return true at the edge and nearer to the level, on either side of it
     */
    public boolean isInForce(AltitudeChange toGo) {
        return Math.abs(toGo.inMetres()) <= heightToGo.inMetres();
    }

    /**
     * Tells whether a height to go and a rate keep the rule.
     *
     * @param toGo the level less the altitude, on the same setting
     * @param rate the rate on the instrument, up or down
     * @return true where it is not in force, or allows the rate
     */
    public boolean isKept(AltitudeChange toGo, PressureAltitudeRate rate) {
        return !isInForce(toGo) || allows(rate);
    }

    private boolean allows(PressureAltitudeRate rate) {
        double rateMps = Math.abs(rate.inMetresPerSecond());
        return bound == Bound.AT_MOST
                ? rateMps <= largest.inMetresPerSecond()
                : rateMps < largest.inMetresPerSecond();
    }

    /**
     * Returns the largest rate that keeps the rule.
     *
     * @return {@link #largest} where that is allowed, else the largest number below it
     */
    public PressureAltitudeRate largestAllowed() {
        return bound == Bound.AT_MOST
                ? largest
                : PressureAltitudeRate.ofMetresPerSecond(
                        Math.nextDown(largest.inMetresPerSecond()));
    }

    /**
     * Returns the time from the edge to the level at the largest rate, kept all the way.
     *
     * @return the time: 40 s for 1,000 ft at 1,500 ft/min; levelling off adds to it, as {@link
     *     LevelOffPlan#timeInForce} tells
     */
    public Duration leastTime() {
        return Seconds.duration(heightToGo.inMetres() / largest.inMetresPerSecond());
    }

    /**
     * Returns the rule for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return name + " (" + source + ")";
    }
}
