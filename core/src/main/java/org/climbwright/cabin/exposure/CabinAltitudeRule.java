package org.climbwright.cabin.exposure;

import java.io.Serializable;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.climbwright.cabin.CabinHistory;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;

/**
 * How high a cabin may get, and for how long, by a rule that aeroplanes are certificated to; and at
 * which cabin altitude it must warn.
 *
 * <pre>{@code
 * CabinHistory history =
 *         CabinHistory.ofSi(
 *                 new double[] {0, 60, 240},
 *                 new double[] {11000, 11000, 7000},
 *                 new double[] {2400, 8000, 7000});
 * CabinAltitudeRule rule = CabinAltitudeRule.transport();
 * CabinAltitudeRule.Finding finding = rule.assess(history).get(2);
 * finding.timeAbove().toSeconds()    // 72
 * finding.isExceeded()               // false
 * }</pre>
 *
 * <p>Limits of use: a rule of certification binds the design of a type, shown by analysis and test
 * of its failures. The record of one flight cannot show that, whatever it kept; a limit exceeded is
 * a question for those who maintain the aeroplane. The flight manual, the operator's checklists,
 * local regulations and licensed practice decide.
 *
 * @param name the rule
 * @param limits its limits
 * @param warning the cabin altitude at which the crew must be warned
 * @param highestWarning the highest that the warning may be set to for the aerodromes of the rule;
 *     {@link #warning} where it may not be shifted
 * @param warningBasis conditions of the warning, and where they were read
 */
public record CabinAltitudeRule(
        String name,
        List<Limit> limits,
        CabinAltitude warning,
        CabinAltitude highestWarning,
        String warningBasis)
        implements Serializable {
    /** To what a limit applies. A record does not tell which: who asks knows. */
    public enum Circumstance {
        /** Nothing has failed. */
        NORMAL_OPERATION("normal operation"),
        /** After a probable failure of the pressurisation. */
        PROBABLE_FAILURE("after a probable failure"),
        /** In a decompression, and after it. */
        DECOMPRESSION("decompression");

        private final String words;

        Circumstance(String words) {
            this.words = words;
        }

        /**
         * Returns the circumstance in words.
         *
         * @return a few words
         */
        public String words() {
            return words;
        }
    }

    /**
     * One limit: a cabin altitude, and how long the cabin may be above it.
     *
     * <p>Limits of use: those of {@link CabinAltitudeRule}.
     *
     * @param circumstance to what it applies
     * @param paragraph where the rule has it
     * @param level the cabin altitude, kept by a cabin that is at it
     * @param allowedAbove the time that the cabin may be above, all excursions together, kept by a
     *     time that is equal; zero where it may never be above
     * @param condition of which aeroplanes and failures
     * @param source where it was read
     * @param evidence how far it was read
     */
    public record Limit(
            Circumstance circumstance,
            String paragraph,
            CabinAltitude level,
            Duration allowedAbove,
            String condition,
            String source,
            Evidence evidence)
            implements Serializable {
        /**
         * Makes a limit.
         *
         * @param circumstance to what it applies
         * @param paragraph where the rule has it
         * @param level the cabin altitude
         * @param allowedAbove the time allowed above it, zero or more
         * @param condition of which aeroplanes and failures
         * @param source where it was read
         * @param evidence how far it was read
         * @throws IllegalArgumentException if the time is negative
         */
        public Limit {
            Objects.requireNonNull(circumstance, "circumstance");
            Objects.requireNonNull(paragraph, "paragraph");
            Objects.requireNonNull(level, "level");
            Objects.requireNonNull(condition, "condition");
            Objects.requireNonNull(source, "source");
            Objects.requireNonNull(evidence, "evidence");
            if (allowedAbove.isNegative()) {
                throw new IllegalArgumentException(
                        "the time allowed above a cabin altitude must be 0 or more, but was "
                                + allowedAbove);
            }
        }

        /**
         * Tells whether the limit is one of time: whether the cabin may be above for a while.
         *
         * @return false where it may never be above
         */
        public boolean isOfTime() {
            return !allowedAbove.isZero();
        }
    }

    /**
     * What a history reached of one limit.
     *
     * <p>Limits of use: those of {@link CabinAltitudeRule}. Not exceeded in one record is no more
     * than that.
     *
     * @param limit the limit
     * @param highest the highest cabin altitude of the history
     * @param timeAbove how long the cabin was above the level by more than 1e-6 m, all excursions
     *     together
     * @param longestAbove the longest of them
     */
    public record Finding(
            Limit limit, CabinAltitude highest, Duration timeAbove, Duration longestAbove)
            implements Serializable {
        /**
         * Makes a finding.
         *
         * @param limit the limit
         * @param highest the highest cabin altitude
         * @param timeAbove how long the cabin was above the level
         * @param longestAbove the longest of these times
         */
        public Finding {
            Objects.requireNonNull(limit, "limit");
            Objects.requireNonNull(highest, "highest");
            Objects.requireNonNull(timeAbove, "timeAbove");
            Objects.requireNonNull(longestAbove, "longestAbove");
        }

        /**
         * Returns how far the cabin stayed below the level.
         *
         * @return the level less the highest cabin altitude; negative if it was above, if only by
         *     rounding, see {@link #isExceeded}
         */
        public AltitudeChange altitudeMargin() {
            return limit.level().minus(highest);
        }

        /**
         * Returns how much of the time allowed was left.
         *
         * @return the time allowed less the time above; negative if it was longer
         */
        public Duration timeMargin() {
            return limit.allowedAbove().minus(timeAbove);
        }

        /**
         * Tells whether the history went beyond the limit.
         *
         * @return true if the cabin was above for longer than allowed; where it may never be above,
         *     if it was above at any sample, by more than 1e-6 m
         */
        public boolean isExceeded() {
            return limit.isOfTime()
                    ? timeMargin().isNegative()
                    : Level.isAbove(highest.inMetres(), limit.level().inMetres());
        }

        /**
         * Returns the finding for reading.
         *
         * @return a text; may change between versions
         */
        @Override
        public String toString() {
            String allowed =
                    limit.isOfTime()
                            ? "above " + limit.level().text() + " for " + limit.allowedAbove()
                            : limit.level().text();
            return limit.paragraph()
                    + ", "
                    + limit.circumstance().words()
                    + ", at most "
                    + allowed
                    + ": highest "
                    + String.format(
                            Locale.ROOT,
                            "%.0f ft, above for %.1f s",
                            highest.inFeet(),
                            timeAbove.toNanos() / 1e9)
                    + (isExceeded() ? ", exceeded" : ", not exceeded in this record");
        }
    }

    private static final ModelRange ELEVATION =
            new ModelRange(
                    "elevation of the aerodrome", -500.0, 5000.0, "m", "no aerodrome lies there");

    private static final ModelRange MOST =
            new ModelRange(
                    "highest altitude for take-off and landing",
                    -500.0,
                    5000.0,
                    "m",
                    "no aerodrome lies there");

    private static final GeopotentialAltitude HIGH_AERODROME = GeopotentialAltitude.ofFeet(8000);
    private static final double ABOVE_AERODROME_FT = 2000.0;
    private static final double FAILURE_FT = 15_000.0;
    private static final CabinAltitude WARNING = CabinAltitude.ofFeet(10_000);
    private static final Duration NEVER = Duration.ZERO;

    private static final String TWIN =
            "AP-25 sect. 25.841 (Russian, same structure and numbers as 14 CFR 25.841),"
                    + " consultant.ru";
    private static final String PRINT_25 =
            "14 CFR 25.841(c)-(d), 2023-era print page (section 25.841/25.851 page), faraim.org";
    private static final String AMENDMENT_87 =
            "FAA exemption 8695 (2005) quoting 25.841 at Amdt 25-87";
    private static final String PART_23 = "14 CFR 23 (2011 edition text, Amdt 23-62), public copy";
    private static final String WARNING_25 =
            "warning at 10,000 ft, 25.841(b)(6) (number of the paragraph from memory, (b) was not"
                    + " seen)";

    /**
     * Makes a rule.
     *
     * @param name the rule
     * @param limits its limits
     * @param warning the cabin altitude at which the crew must be warned
     * @param highestWarning the highest that the warning may be set to
     * @param warningBasis conditions of the warning, and where they were read
     * @throws IllegalArgumentException if the highest warning is below the warning
     */
    public CabinAltitudeRule {
        Objects.requireNonNull(name, "name");
        limits = List.copyOf(limits);
        Objects.requireNonNull(warningBasis, "warningBasis");
        if (highestWarning.compareTo(warning) < 0) {
            throw new IllegalArgumentException(
                    "a warning cannot be shifted down, but was to be at most "
                            + highestWarning
                            + " instead of "
                            + warning);
        }
    }

    /**
     * Returns the rule for transport aeroplanes, at aerodromes below 8,000 ft: 8,000 ft in normal
     * operation, 15,000 ft after a probable failure, in a decompression 2 minutes above 25,000 ft,
     * and never above 40,000 ft.
     *
     * @return the rule
     * @source 14 CFR 25.841(a), (b)(6) for the warning (paragraph number from memory; its figure
     *     seen in (d)(1))
     */
    public static CabinAltitudeRule transport() {
        Limit normal =
                never(
                        Circumstance.NORMAL_OPERATION,
                        "25.841(a)",
                        8000.0,
                        "at the highest operating altitude, under normal conditions",
                        TWIN);
        Limit failure =
                never(
                        Circumstance.PROBABLE_FAILURE,
                        "25.841(a)(1)",
                        FAILURE_FT,
                        "if certification above 25,000 ft is asked for",
                        TWIN);
        return transport(normal, failure, WARNING);
    }

    /**
     * Returns the rule for transport aeroplanes that operate at a certain aerodrome: from an
     * elevation of 8,000 ft on, the cabin may be up to 2,000 ft above it, after a probable failure
     * up to the higher of 15,000 ft and 2,000 ft above it. The warning may be shifted to the higher
     * of 15,000 ft and 2,000 ft above the highest altitude that the aeroplane may take off and land
     * at, whatever the aerodrome of the day.
     *
     * <p>The rule adds to the elevation, and so does this; a cabin altitude is a pressure altitude,
     * and on a day of another QNH the aerodrome has another.
     *
     * @param highest the higher of the aerodromes of take-off and landing, -500 to 5000 m
     * @param most the highest pressure altitude that the aeroplane may take off and land at, as its
     *     flight manual has it, -500 to 5000 m
     * @return the rule; {@link #transport()} below 8,000 ft
     * @throws org.climbwright.quantity.OutsideModelException if one is out of range
     * @source 14 CFR 25.841(c), of which the first half was not visible, (c)(1), and (d)
     */
    public static CabinAltitudeRule transportAt(
            GeopotentialAltitude highest, PressureAltitude most) {
        ELEVATION.check(highest.inMetres());
        MOST.check(most.inMetres());
        if (Level.isAbove(HIGH_AERODROME.inMetres(), highest.inMetres())) {
            return transport();
        }
        double aboveFt = highest.inFeet() + ABOVE_AERODROME_FT;
        double failureFt = Math.max(FAILURE_FT, aboveFt);
        Limit normal =
                never(
                        Circumstance.NORMAL_OPERATION,
                        "25.841(c)",
                        aboveFt,
                        "at aerodromes from 8,000 ft on (the first half of the paragraph was not"
                                + " visible)",
                        PRINT_25,
                        Evidence.PARTLY_SEEN);
        Limit failure =
                never(
                        Circumstance.PROBABLE_FAILURE,
                        "25.841(c)(1)",
                        failureFt,
                        "at aerodromes from 8,000 ft on",
                        PRINT_25);
        double warningFt = Math.max(FAILURE_FT, most.inFeet() + ABOVE_AERODROME_FT);
        return transport(normal, failure, CabinAltitude.ofFeet(warningFt));
    }

    private static CabinAltitudeRule transport(
            Limit normal, Limit failure, CabinAltitude highestWarning) {
        String failures = "any failure not shown to be extremely improbable";
        return new CabinAltitudeRule(
                "14 CFR 25.841, transport aeroplanes",
                List.of(
                        normal,
                        failure,
                        new Limit(
                                Circumstance.DECOMPRESSION,
                                "25.841(a)(2)(i)",
                                CabinAltitude.ofFeet(25_000),
                                Duration.ofMinutes(2),
                                failures,
                                AMENDMENT_87,
                                Evidence.SEEN),
                        never(
                                Circumstance.DECOMPRESSION,
                                "25.841(a)(2)(ii)",
                                40_000.0,
                                failures,
                                AMENDMENT_87)),
                WARNING,
                highestWarning,
                WARNING_25
                        + "; shifted for aerodromes from 8,000 ft only, not before the descent"
                        + " begins, and back to 10,000 ft before cruise: "
                        + PRINT_25);
    }

    /**
     * Returns the rule for small aeroplanes: 15,000 ft after a probable failure, in a decompression
     * 10 seconds above 15,000 ft, and never above 25,000 ft; 8,000 ft for those certificated above
     * 45,000 ft.
     *
     * @return the rule
     * @source 14 CFR 23.841(a) and (b)(6), edition of 2011; 23.841(d), edition of 2014
     */
    public static CabinAltitudeRule small() {
        return new CabinAltitudeRule(
                "14 CFR 23.841, small aeroplanes",
                List.of(
                        never(
                                Circumstance.NORMAL_OPERATION,
                                "23.841(d)",
                                8000.0,
                                "certificated above 45,000 ft and up to 51,000 ft",
                                "14 CFR Part 23 (2014 print) p.263, faraim.org"),
                        never(
                                Circumstance.PROBABLE_FAILURE,
                                "23.841(a)",
                                FAILURE_FT,
                                "if certification above 25,000 ft is asked for",
                                PART_23),
                        new Limit(
                                Circumstance.DECOMPRESSION,
                                "23.841(a)",
                                CabinAltitude.ofFeet(FAILURE_FT),
                                Duration.ofSeconds(10),
                                "during a decompression",
                                PART_23,
                                Evidence.SEEN),
                        never(
                                Circumstance.DECOMPRESSION,
                                "23.841(a)",
                                25_000.0,
                                "for any time",
                                PART_23)),
                WARNING,
                CabinAltitude.ofFeet(15_000),
                "warning at 10,000 ft, 23.841(b)(6); shifted for aerodromes from 10,000 to 15,000"
                        + " ft only, with conditions: "
                        + PART_23);
    }

    private static Limit never(
            Circumstance circumstance,
            String paragraph,
            double levelFt,
            String condition,
            String source) {
        Evidence evidence = source.equals(TWIN) ? Evidence.SEEN_IN_TWIN_RULE : Evidence.SEEN;
        return never(circumstance, paragraph, levelFt, condition, source, evidence);
    }

    private static Limit never(
            Circumstance circumstance,
            String paragraph,
            double levelFt,
            String condition,
            String source,
            Evidence evidence) {
        return new Limit(
                circumstance,
                paragraph,
                CabinAltitude.ofFeet(levelFt),
                NEVER,
                condition,
                source,
                evidence);
    }

    /**
     * Returns what a history reached of every limit.
     *
     * <p>Of every one, whatever its circumstance: a flight without a failure is not held to the
     * limits of a failure, nor a decompression to those of normal operation.
     *
     * @param history what the cabin did
     * @return one finding for each limit, in the same order
     */
    public List<Finding> assess(CabinHistory history) {
        return limits.stream().map(limit -> finding(limit, history)).toList();
    }

    /**
     * Returns what a history reached of the limits of one circumstance.
     *
     * @param history what the cabin did
     * @param circumstance what had happened
     * @return one finding for each limit of the circumstance; empty if the rule has none
     */
    public List<Finding> assess(CabinHistory history, Circumstance circumstance) {
        return assess(history).stream()
                .filter(finding -> finding.limit().circumstance() == circumstance)
                .toList();
    }

    private static Finding finding(Limit limit, CabinHistory history) {
        // a cabin held at a level from its pressure is not above it by what was rounded
        CabinAltitude level = CabinAltitude.ofMetres(limit.level().inMetres() + Level.ROUNDING_M);
        return new Finding(
                limit,
                history.highest(),
                history.timeAbove(level),
                history.longestTimeAbove(level));
    }
}
