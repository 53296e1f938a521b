package org.climbwright.gradient.leveling;

import java.io.Serializable;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.climbwright.atmosphere.AirState;
import org.climbwright.path.ClimbPath;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.PressureAltitudeRate;

/**
 * The end of a climb or a descent, from where the rate must be reduced until level: heights to go,
 * rates, times, and what keeping the rule costs.
 *
 * <pre>{@code
 * LevelOffPlan plan =
 *         LevelOffPlan.of(
 *                 PressureAltitudeRate.ofFeetPerMinute(3000),
 *                 LevelOffRule.tradeFigure(),
 *                 LevelOffLead.tenPercent());
 * plan.beginsReducing().inFeet()              // 1225.0
 * plan.rateInForce().inFeetPerMinute()        // 1500.0
 * plan.beginsLevelling().inFeet()             // 150.0
 * plan.rule().leastTime().toSeconds()         // 40, the last 1,000 ft at 1,500 ft/min
 * plan.timeInForce().toSeconds()              // 46, with the level-off in it
 * plan.cost().toMillis() / 1000.0             // 21.5, s more than without the rule
 * }</pre>
 *
 * <p>The rate is reduced by the lead's deceleration at the rate flown, so that the rule's largest
 * rate is met at its edge and not after; it is kept from there, and then taken to nothing. A rate
 * that is small enough is left as it is, and so is one that the level-off itself brings down by the
 * edge.
 *
 * <p>Heights and rates are the altimeter's. A deceleration that is chosen in true measure is
 * converted by the air: in warm air a foot of the altimeter is more than a foot.
 *
 * <p>Limits of use: for study and simulation. No time to respond is in it, of a pilot or of a
 * control system, and no gust. The clearance, the flight manual, the operator's procedures, local
 * regulations and licensed practice decide; a rate that keeps a rule does not mean that no other
 * aeroplane is there.
 */
public final class LevelOffPlan implements Serializable {
    private static final long serialVersionUID = 1L;

    static final ModelRange ARRIVAL =
            new ModelRange("rate of arrival", 1e-6, 500.0, "m/s", "a level-off needs a rate");

    /** What is done in a stretch of the plan. */
    public enum Action {
        /** The rate is reduced to that of the rule. */
        REDUCING("reducing to the rate of the rule"),
        /** The rate is kept. */
        KEEPING("keeping the rate"),
        /** The rate is taken to nothing. */
        LEVELLING("levelling off");

        private final String words;

        Action(String words) {
            this.words = words;
        }

        /**
         * Returns the action in words.
         *
         * @return a few words
         */
        public String words() {
            return words;
        }
    }

    /**
     * A stretch in which one thing is done.
     *
     * @param action what is done
     * @param from height to go where it begins, 0 or more
     * @param to height to go where it ends
     * @param rateBefore rate where it begins, positive up
     * @param rateAfter rate where it ends
     * @param time how long it takes
     */
    public record Stretch(
            Action action,
            AltitudeChange from,
            AltitudeChange to,
            PressureAltitudeRate rateBefore,
            PressureAltitudeRate rateAfter,
            Duration time)
            implements Serializable {
        /**
         * Makes a stretch.
         *
         * @param action what is done
         * @param from height to go where it begins
         * @param to height to go where it ends
         * @param rateBefore rate where it begins
         * @param rateAfter rate where it ends
         * @param time how long it takes
         */
        public Stretch {
            Objects.requireNonNull(action, "action");
            Objects.requireNonNull(from, "from");
            Objects.requireNonNull(to, "to");
            Objects.requireNonNull(rateBefore, "rateBefore");
            Objects.requireNonNull(rateAfter, "rateAfter");
            Objects.requireNonNull(time, "time");
        }
    }

    private final PressureAltitudeRate arrival;
    private final LevelOffRule rule;
    private final LevelOffLead lead;
    private final double truePerAltimeter;
    private final LevelOffFigures figures;
    private final double levelM;

    /** Height to go at most: that of the path, or from a level held; infinite where none is. */
    private final double mostM;

    private final String[] remarks; // a list would not say that it can be written out

    LevelOffPlan(
            PressureAltitudeRate arrival,
            LevelOffRule rule,
            LevelOffLead lead,
            double truePerAltimeter,
            double levelM,
            double mostM,
            List<String> remarks) {
        this.arrival = arrival;
        this.rule = Objects.requireNonNull(rule, "rule");
        this.lead = Objects.requireNonNull(lead, "lead");
        this.truePerAltimeter = truePerAltimeter;
        this.levelM = levelM;
        this.mostM = mostM;
        this.remarks = remarks.toArray(new String[0]);
        this.figures =
                LevelOffFigures.of(
                        ARRIVAL.check(Math.abs(arrival.inMetresPerSecond())),
                        rule,
                        lead,
                        truePerAltimeter,
                        mostM);
    }

    /**
     * Returns the plan where a foot of the altimeter is a foot, as it nearly is in standard air.
     *
     * @param arrival the rate at which the level is approached, positive in a climb; 1e-6 to 500
     *     m/s up or down
     * @param rule the rule to keep
     * @param lead how early to level off
     * @return the plan
     * @throws org.climbwright.quantity.OutsideModelException if the rate is out of range
     * @accuracy 1e-14 relative
     */
    public static LevelOffPlan of(
            PressureAltitudeRate arrival, LevelOffRule rule, LevelOffLead lead) {
        return new LevelOffPlan(
                arrival, rule, lead, 1.0, Double.NaN, Double.POSITIVE_INFINITY, List.of());
    }

    /**
     * Returns the plan in some air.
     *
     * @param arrival the rate at which the level is approached, positive in a climb; 1e-6 to 500
     *     m/s up or down
     * @param rule the rule to keep
     * @param lead how early to level off
     * @param air the air at the level
     * @return the plan
     * @throws org.climbwright.quantity.OutsideModelException if the rate is out of range
     * @accuracy of {@link
     *     org.climbwright.atmosphere.altimetry.VerticalRates#geometricPerPressureAltitude(AirState)}
     */
    public static LevelOffPlan of(
            PressureAltitudeRate arrival, LevelOffRule rule, LevelOffLead lead, AirState air) {
        return new LevelOffPlan(
                arrival,
                rule,
                lead,
                LevelOffSearch.truePerAltimeter(air),
                Double.NaN,
                Double.POSITIVE_INFINITY,
                List.of());
    }

    /**
     * Returns the plan for a level on a climb, of the rate that the climb has where the reduction
     * must begin.
     *
     * <p>That rate is taken as kept from there. {@link #remarks} say where the climb itself is
     * slower before the level, where its rate rises within the edge of the rule (and is held to the
     * rule), and where the climb begins, or becomes fast, too near to the level. Where a level is
     * held on the way for at least as long as levelling off there takes, the climb begins anew from
     * it, and nothing is to be reduced below.
     *
     * @param path the climb
     * @param level the level to stop at, above the path's bottom and not above its top
     * @param rule the rule to keep
     * @param lead how early to level off
     * @return the plan
     * @throws org.climbwright.quantity.OutsideModelException if the level is not on the path, or
     *     the climb has no rate there
     * @throws IllegalArgumentException if the climb is of no length
     * @accuracy 1e-6 m in where it begins; the air is that at the level
     */
    public static LevelOffPlan along(
            ClimbPath path, PressureAltitude level, LevelOffRule rule, LevelOffLead lead) {
        return new LevelOffSearch(path, level, rule, lead).plan();
    }

    /**
     * Returns the rate at which the level is approached.
     *
     * @return the rate, positive in a climb
     */
    public PressureAltitudeRate arrival() {
        return arrival;
    }

    /**
     * Returns the rule that is kept.
     *
     * @return the rule
     */
    public LevelOffRule rule() {
        return rule;
    }

    /**
     * Returns how early the level-off begins.
     *
     * @return the lead
     */
    public LevelOffLead lead() {
        return lead;
    }

    /**
     * Tells whether the rule asks for something: whether it would be broken without a reduction.
     *
     * @return false where the rate is within it, or is by the edge as the level-off goes
     */
    public boolean isReducedForRule() {
        return figures.isReduced();
    }

    /**
     * Returns where the rate must begin to be reduced, for the rule or, where that asks nothing,
     * for the level.
     *
     * @return height to go, 0 or more
     */
    public AltitudeChange beginsReducing() {
        return AltitudeChange.ofMetres(figures.beginsReducingM());
    }

    /**
     * Returns the level at which the rate must begin to be reduced.
     *
     * @return pressure altitude; empty for a plan that knows of no path
     */
    public Optional<PressureAltitude> levelWhereReducing() {
        return Double.isNaN(levelM)
                ? Optional.empty()
                : Optional.of(PressureAltitude.ofMetres(levelM - figures.beginsReducingM()));
    }

    /**
     * Returns the rate from the end of the reduction until the level-off begins.
     *
     * @return the rate, positive in a climb; that of the arrival where nothing is reduced
     */
    public PressureAltitudeRate rateInForce() {
        return rate(figures.keptMps());
    }

    /**
     * Returns where the level-off begins.
     *
     * @return height to go, 0 or more
     */
    public AltitudeChange beginsLevelling() {
        return AltitudeChange.ofMetres(figures.levellingM());
    }

    /**
     * Returns how long the aeroplane is within the edge of the rule until level.
     *
     * @return the time, with that of levelling off
     */
    public Duration timeInForce() {
        return Seconds.duration(figures.timeInForceS());
    }

    /**
     * Returns how much longer it takes to be level than without the rule.
     *
     * @return 0 or more; 0 where the rule asks nothing
     */
    public Duration cost() {
        return Seconds.duration(figures.costS());
    }

    /**
     * Returns what is done, in the order in which it is: from the reduction, or from the edge of
     * the rule where nothing is reduced for it.
     *
     * @return one to three stretches, to the level
     */
    public List<Stretch> stretches() {
        List<Stretch> stretches = new ArrayList<>();
        double from = Math.min(mostM, rule.heightToGo().inMetres());
        if (figures.isReduced()) {
            from = figures.reducedM();
            stretches.add(
                    stretch(
                            Action.REDUCING,
                            figures.beginsReducingM(),
                            from,
                            figures.arrivalMps(),
                            figures.keptMps(),
                            figures.reducingS()));
        }
        double levelling = Math.min(mostM, figures.levellingM());
        if (from > levelling) {
            double time = (from - levelling) / figures.keptMps();
            stretches.add(
                    stretch(
                            Action.KEEPING,
                            from,
                            levelling,
                            figures.keptMps(),
                            figures.keptMps(),
                            time));
        }
        stretches.add(
                stretch(
                        Action.LEVELLING,
                        levelling,
                        0.0,
                        figures.keptMps(),
                        0.0,
                        figures.levellingS()));
        return List.copyOf(stretches);
    }

    private Stretch stretch(
            Action action,
            double fromM,
            double toM,
            double beforeMps,
            double afterMps,
            double timeS) {
        return new Stretch(
                action,
                AltitudeChange.ofMetres(fromM),
                AltitudeChange.ofMetres(toM),
                rate(beforeMps),
                rate(afterMps),
                Seconds.duration(timeS));
    }

    private PressureAltitudeRate rate(double magnitudeMps) {
        return PressureAltitudeRate.ofMetresPerSecond(
                arrival.inMetresPerSecond() < 0.0 ? -magnitudeMps : magnitudeMps);
    }

    /**
     * Returns what to know of the climb that the plan is for.
     *
     * @return sentences; empty where there is nothing to say
     */
    public List<String> remarks() {
        return List.of(remarks);
    }

    /**
     * Returns the plan for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(rule.name()).append(", ").append(lead);
        for (Stretch stretch : stretches()) {
            text.append(
                    String.format(
                            Locale.ROOT,
                            "; %s from %.0f ft to go, %.0f ft/min, for %.1f s",
                            stretch.action().words(),
                            stretch.from().inFeet(),
                            stretch.rateBefore().inFeetPerMinute(),
                            stretch.time().toNanos() * 1e-9));
        }
        for (String remark : remarks) {
            text.append("; ").append(remark);
        }
        return text.toString();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof LevelOffPlan that
                && arrival.equals(that.arrival)
                && rule.equals(that.rule)
                && lead.equals(that.lead)
                && Double.compare(truePerAltimeter, that.truePerAltimeter) == 0
                && Double.compare(levelM, that.levelM) == 0
                && Arrays.equals(remarks, that.remarks);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * arrival.hashCode() + lead.hashCode()) + Double.hashCode(levelM);
    }

    private Object readResolve() {
        return new LevelOffPlan(arrival, rule, lead, truePerAltimeter, levelM, mostM, remarks());
    }
}
