package org.climbwright.cabin;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.DifferentialPressure;
import org.climbwright.quantity.speed.CabinAltitudeRate;

/**
 * The check of the cabin on the way up: what is read at a level against what is expected there, and
 * against what was read before.
 *
 * <pre>{@code
 * CabinCheck check = CabinCheck.of(ExpectedCabin.along(path, plan));
 * check.levels(AltitudeChange.ofFeet(10000))   // what to expect at FL100, FL200, FL300 and the top
 * CabinCheck.Answer answer = check.against(reading, previous);
 * answer.verdict()                             // AS_EXPECTED, DRIFTING or BEYOND_LIMIT
 * answer.reasons()                             // each with its figures
 * }</pre>
 *
 * <p>It tells what does not agree, not why: a leak, a valve, the inflow or an instrument can look
 * the same. What was not read is called not read, and is never as expected.
 *
 * <p>Limits of use: for study and simulation. An answer of as expected is no statement that the
 * cabin is pressurised safely, and no other answer is a checklist: checklists and memory items are
 * the operator's; the flight manual, the operator's procedures, local regulations and licensed
 * practice decide.
 */
public final class CabinCheck implements Serializable {
    private static final long serialVersionUID = 1L;

    /**
     * The cabin altitude at which crews of transport aeroplanes are warned: 10,000 ft, 14 CFR
     * 25.841(b)(6) (paragraph number from memory; its figure seen in (d)(1)).
     */
    private static final CabinAltitude WARNING = CabinAltitude.ofFeet(10_000);

    private final ExpectedCabin expected;
    private final Tolerances tolerances;
    private final CabinAltitude warning;

    private CabinCheck(ExpectedCabin expected, Tolerances tolerances, CabinAltitude warning) {
        this.expected = Objects.requireNonNull(expected, "expected");
        this.tolerances = Objects.requireNonNull(tolerances, "tolerances");
        this.warning = Objects.requireNonNull(warning, "warning");
    }

    /** What a reading says, from the least to the worst. */
    public enum Verdict {
        /** All that was read is within its tolerance of what is expected. */
        AS_EXPECTED,
        /** Something is out of tolerance, or readings do not belong together. */
        DRIFTING,
        /**
         * A limit of the plan is passed by more than its tolerance; the relief settings also where
         * an instrument reads just them, unless the plan itself expects the relief valve to be
         * open. Or the cabin is at the warning altitude or above where the plan is below, or more
         * than two tolerances above the highest altitude that the plan ever has, or it is where the
         * aeroplane is, or climbs as the aeroplane does.
         */
        BEYOND_LIMIT
    }

    /**
     * How far a reading may be from what is expected.
     *
     * @param cabinAltitude of the cabin altitude, above 0
     * @param rate of the cabin's rate, above 0
     * @param differential of the differential, above 0
     */
    public record Tolerances(
            AltitudeChange cabinAltitude, CabinAltitudeRate rate, DifferentialPressure differential)
            implements Serializable {
        /**
         * Makes the tolerances.
         *
         * @param cabinAltitude of the cabin altitude, above 0
         * @param rate of the cabin's rate, above 0
         * @param differential of the differential, above 0
         * @throws IllegalArgumentException if one is not above 0
         */
        public Tolerances {
            boolean isSome =
                    cabinAltitude.inMetres() > 0.0
                            && rate.inMetresPerSecond() > 0.0
                            && differential.inPascals() > 0.0;
            if (!isSome) {
                throw new IllegalArgumentException(
                        "tolerances must be above 0, but were "
                                + cabinAltitude.text()
                                + ", "
                                + rate.text()
                                + " and "
                                + differential.text());
            }
        }

        /**
         * Returns tolerances of ours: 500 ft, 200 ft/min, 0.2 psi (no source, choose your own).
         *
         * @return the tolerances
         */
        public static Tolerances ofOurs() {
            return new Tolerances(
                    AltitudeChange.ofFeet(500),
                    CabinAltitudeRate.ofFeetPerMinute(200),
                    DifferentialPressure.ofPoundsPerSquareInch(0.2));
        }
    }

    /**
     * What a reading says against what is expected.
     *
     * @param verdict the worst of what was found
     * @param reasons what was found, each with its figures; also what was not read
     * @param expected the cabin expected there; where the reading is later than the climb of the
     *     plan, the cabin as that climbs through the level, and the reasons have the whole span
     */
    public record Answer(Verdict verdict, List<String> reasons, CabinState expected)
            implements Serializable {
        /**
         * Makes an answer.
         *
         * @param verdict the worst of what was found
         * @param reasons what was found, each with its figures
         * @param expected the cabin expected there
         */
        public Answer {
            Objects.requireNonNull(verdict, "verdict");
            Objects.requireNonNull(expected, "expected");
            reasons = List.copyOf(reasons);
        }
    }

    /**
     * Returns the check of a cabin, with tolerances of ours and a warning at 10,000 ft.
     *
     * @param expected the cabin as it is expected
     * @return the check
     */
    public static CabinCheck of(ExpectedCabin expected) {
        return new CabinCheck(expected, Tolerances.ofOurs(), WARNING);
    }

    /**
     * Returns this check with other tolerances.
     *
     * @param other the tolerances
     * @return a copy with them
     */
    public CabinCheck withTolerances(Tolerances other) {
        return new CabinCheck(expected, other, warning);
    }

    /**
     * Returns this check with another altitude of the cabin altitude warning, as for aerodromes for
     * which it is shifted.
     *
     * @param altitude the cabin altitude at which the crew is warned
     * @return a copy with it
     */
    public CabinCheck withWarning(CabinAltitude altitude) {
        return new CabinCheck(expected, tolerances, altitude);
    }

    /**
     * Returns the cabin expected at each 10,000 ft and at the top (common practice, no source).
     *
     * @return as {@link #levels(AltitudeChange)}
     */
    public List<CabinState> levels() {
        return levels(AltitudeChange.ofFeet(10000));
    }

    /**
     * Returns the cabin expected at the levels of the check: the multiples of an interval on the
     * climb, and its top.
     *
     * @param interval how far apart, 1 m or more
     * @return the cabin at each level, upwards; at the top as the aeroplane arrives there
     * @throws IllegalArgumentException if the interval is below 1 m
     */
    public List<CabinState> levels(AltitudeChange interval) {
        double apart = interval.inMetres();
        if (!(apart >= 1.0)) {
            throw new IllegalArgumentException(
                    "the levels of a check must be 1 m or more apart, but the interval was "
                            + interval.text());
        }
        List<CabinState> levels = new ArrayList<>();
        double top = expected.top().inMetres();
        // from the number of the level and not by adding up, so that FL300 is FL300
        for (double n = Math.floor(expected.bottom().inMetres() / apart) + 1.0;
                n * apart < top;
                n++) {
            levels.add(expected.at(PressureAltitude.ofMetres(n * apart)));
        }
        levels.add(expected.at(expected.top()));
        return List.copyOf(levels);
    }

    /**
     * Returns what a reading says.
     *
     * <p>A reading later than the climb of the plan is of an aeroplane that climbed slower or has
     * flown level: the cabin may be anywhere from where the climb has it to where its limit of rate
     * would have brought it since, on its way to what the plan wants at that level. Within a
     * tolerance of altitude from the top the aeroplane is at the top, and after the climb the cabin
     * is the one of that time; without a time it may have arrived or settled.
     *
     * <p>A cabin altitude at the warning or above is always named.
     *
     * @param reading what was read, at a level of the climb, or outside it by no more than the
     *     tolerance of altitude
     * @return the answer
     * @throws org.climbwright.quantity.OutsideModelException if the level is not on the climb
     */
    public Answer against(CabinReading reading) {
        ReadingCheck check = new ReadingCheck(expected, tolerances, warning, reading);
        check.alone();
        return check.answer();
    }

    /**
     * Returns what a reading says, and what it says against the one before.
     *
     * <p>Where neither time was read, those of the climb stand for them; where one was not, the
     * average rate is not known. What is asked:
     *
     * <ul>
     *   <li>whether the average rate is within its limit;
     *   <li>where the aeroplane climbed by more than two tolerances of altitude, whether the cabin
     *       climbed with it, and whether the differential builds; what two readings within
     *       tolerance can show is no finding;
     *   <li>where it stayed within one, whether the cabin rises or the differential falls, which
     *       nothing makes them do; by more than one tolerance.
     * </ul>
     *
     * <p>The differential is by the instrument where it was read both times, else by the altitudes.
     *
     * @param reading what was read, at a level of the climb
     * @param previous what was read before, not later and not above it by more than the tolerance
     *     of altitude
     * @return the answer
     * @throws org.climbwright.quantity.OutsideModelException if a level is not on the climb
     * @throws IllegalArgumentException if the previous reading is above this one, or not before it
     */
    public Answer against(CabinReading reading, CabinReading previous) {
        ReadingCheck check = new ReadingCheck(expected, tolerances, warning, reading);
        check.alone();
        new TrendCheck(check, previous).run();
        return check.answer();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof CabinCheck that
                && expected.equals(that.expected)
                && tolerances.equals(that.tolerances)
                && warning.equals(that.warning);
    }

    @Override
    public int hashCode() {
        return Objects.hash(expected, tolerances, warning);
    }
}
