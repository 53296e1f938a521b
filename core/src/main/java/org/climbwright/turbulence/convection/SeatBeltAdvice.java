package org.climbwright.turbulence.convection;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.turbulence.Answer;
import org.climbwright.turbulence.EddyDissipationRate;
import org.climbwright.turbulence.TurbulenceIntensity;
import org.climbwright.turbulence.WindShear;
import org.climbwright.turbulence.convection.Evidence.Outcome;

/**
 * Evidence for keeping seat belts fastened between two levels of a climb, each figure with the
 * threshold that the caller gave.
 *
 * <p>Start at {@link #between} and add what there is. There is no threshold of ours, and no word
 * that belts may be unfastened: where nothing is found, what was looked at is told, and no more.
 *
 * <p>Limits of use: figures of one sounding or forecast against thresholds of the caller's.
 * Turbulence in clear air, over mountains, behind other aeroplanes and near storms that grow
 * elsewhere is not in them. The crew, the operator's procedures, reports and radar decide about the
 * sign.
 */
public final class SeatBeltAdvice implements Serializable {
    private static final long serialVersionUID = 1L;

    private static final String LIMITS =
            "Limits of use: turbulence in clear air, over mountains, in wakes and near other storms"
                    + " is not looked at; the crew and the operator's procedures decide.";

    private static final ModelRange ENERGY =
            new ModelRange("threshold of energy", 0.0, 2e4, "J/kg", "no air has more");

    private static final ModelRange SHEAR =
            new ModelRange("threshold of shear", 0.0, 1000.0, "kn/1000 ft", "no air has more");

    /** What the evidence comes to. */
    public enum Conclusion {
        /** A figure reaches its threshold: there is a reason to keep belts fastened. */
        REASON_TO_FASTEN,
        /** All figures are known and none reaches its threshold; not a reason to unfasten. */
        NO_REASON_FOUND,
        /** None reaches its threshold, but some figure is not known, or there is none at all. */
        NOT_KNOWN
    }

    private final PressureAltitude lowest;
    private final PressureAltitude highest;
    private final Evidence[] evidence; // a list would not say that it can be written out

    private SeatBeltAdvice(
            PressureAltitude lowest, PressureAltitude highest, List<Evidence> evidence) {
        this.lowest = lowest;
        this.highest = highest;
        this.evidence = evidence.toArray(new Evidence[0]);
    }

    /**
     * Returns advice for the levels between two, with no evidence yet.
     *
     * @param lowest the lower level
     * @param highest the upper level
     * @return the advice, not known so far
     * @throws IllegalArgumentException if the upper level is below the lower
     */
    public static SeatBeltAdvice between(PressureAltitude lowest, PressureAltitude highest) {
        if (highest.compareTo(lowest) < 0) {
            throw new IllegalArgumentException(
                    "the upper level must not be below the lower, "
                            + lowest
                            + ", but was "
                            + highest);
        }
        return new SeatBeltAdvice(lowest, highest, List.of());
    }

    /**
     * Returns which thresholds of energy may be given.
     *
     * @return the range [J/kg]
     */
    public static ModelRange energyThresholds() {
        return ENERGY;
    }

    /**
     * Returns which thresholds of shear may be given.
     *
     * @return the range [kn/1000 ft]
     */
    public static ModelRange shearThresholds() {
        return SHEAR;
    }

    /**
     * Adds the energy of a parcel.
     *
     * @param ascent the ascent of the parcel
     * @param leastJPerKg the energy, CAPE, from which on it counts [J/kg], 0 to 20,000
     * @return a copy with this evidence
     * @throws org.climbwright.quantity.OutsideModelException if the threshold is out of range
     */
    public SeatBeltAdvice withEnergy(Answer<ParcelAscent> ascent, double leastJPerKg) {
        String threshold = format("threshold %.0f J/kg", ENERGY.check(leastJPerKg));
        return with(
                "energy of a lifted parcel, CAPE",
                ascent,
                threshold,
                found -> {
                    boolean isReached = found.energyJPerKg() >= leastJPerKg;
                    return isReached || found.isEnergyComplete()
                            ? outcome(isReached)
                            : Outcome.NOT_KNOWN;
                },
                found ->
                        format(
                                found.isEnergyComplete() ? "%.0f J/kg" : "at least %.0f J/kg",
                                found.energyJPerKg()));
    }

    /**
     * Adds convective cloud: it counts where some of the levels lie in it.
     *
     * @param cloud the cloud
     * @return a copy with this evidence
     */
    public SeatBeltAdvice withCloud(Answer<CloudSpan> cloud) {
        return with(
                "convective cloud",
                cloud,
                "threshold, any of the levels in the cloud",
                found -> outcome(found.overlaps(lowest, highest)),
                found ->
                        format("%.0f ft", found.base().inFeet())
                                + format(" to %.0f ft, ", found.top().inFeet())
                                + found.basis());
    }

    /**
     * Adds a vertical wind shear.
     *
     * @param shear the shear
     * @param leastKnotsPer1000Ft the shear from which on it counts [kn/1000 ft], 0 to 1000
     * @return a copy with this evidence
     * @throws org.climbwright.quantity.OutsideModelException if the threshold is out of range
     */
    public SeatBeltAdvice withShear(Answer<WindShear> shear, double leastKnotsPer1000Ft) {
        return with(
                "vertical wind shear",
                shear,
                format("threshold %.1f kn/1000 ft", SHEAR.check(leastKnotsPer1000Ft)),
                found -> outcome(found.inKnotsPer1000Ft() >= leastKnotsPer1000Ft),
                found -> format("%.1f kn/1000 ft", found.inKnotsPer1000Ft()));
    }

    /**
     * Adds a reported or forecast eddy dissipation rate.
     *
     * @param rate the rate
     * @param edition the edition that puts words to rates
     * @param least the word from which on it counts
     * @return a copy with this evidence
     * @throws IllegalArgumentException if it is extreme, a word that no table gives to a rate
     */
    public SeatBeltAdvice withEddyDissipationRate(
            Answer<EddyDissipationRate> rate,
            EddyDissipationRate.Edition edition,
            TurbulenceIntensity least) {
        Objects.requireNonNull(edition, "edition");
        if (least == TurbulenceIntensity.EXTREME) {
            throw new IllegalArgumentException(
                    "the threshold of an eddy dissipation rate must be severe or less, since no"
                            + " table calls a rate extreme, but was extreme");
        }
        return with(
                "eddy dissipation rate",
                rate,
                "threshold " + word(least) + " by the table " + word(edition),
                found -> outcome(found.intensity(edition).compareTo(least) >= 0),
                found -> found + ", " + word(found.intensity(edition)));
    }

    /** How a figure is judged or told. */
    @FunctionalInterface
    private interface Judge<T, R> {
        R of(T figure);
    }

    private <T extends Serializable> SeatBeltAdvice with(
            String what,
            Answer<T> answer,
            String threshold,
            Judge<T, Outcome> outcome,
            Judge<T, String> figure) {
        List<Evidence> more = new ArrayList<>(evidence());
        more.add(
                answer.value()
                        .map(
                                found ->
                                        new Evidence(
                                                what,
                                                figure.of(found),
                                                threshold,
                                                outcome.of(found)))
                        .orElseGet(
                                () ->
                                        new Evidence(
                                                what,
                                                "not known, " + answer.reason().orElseThrow(),
                                                threshold,
                                                Outcome.NOT_KNOWN)));
        return new SeatBeltAdvice(lowest, highest, more);
    }

    private static Outcome outcome(boolean isReached) {
        return isReached ? Outcome.REACHED : Outcome.NOT_REACHED;
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static String format(String pattern, double figure) {
        return String.format(Locale.ROOT, pattern, figure);
    }

    /**
     * Returns what was looked at.
     *
     * @return the evidence in the order in which it was added
     */
    public List<Evidence> evidence() {
        return List.of(evidence);
    }

    /**
     * Returns what the evidence comes to; never tell it without {@link #inWords}.
     *
     * @return a reason to fasten, none found among what was looked at, or not known
     */
    public Conclusion conclusion() {
        if (has(Outcome.REACHED)) {
            return Conclusion.REASON_TO_FASTEN;
        }
        return evidence.length == 0 || has(Outcome.NOT_KNOWN)
                ? Conclusion.NOT_KNOWN
                : Conclusion.NO_REASON_FOUND;
    }

    private boolean has(Outcome outcome) {
        return Arrays.stream(evidence).anyMatch(e -> e.outcome() == outcome);
    }

    /**
     * Returns the advice with its evidence and its limits of use.
     *
     * @return some sentences; may change between versions
     */
    public String inWords() {
        String levels =
                format("Between %.0f", lowest.inFeet())
                        + format(" and %.0f ft pressure altitude: ", highest.inFeet());
        String advice =
                switch (conclusion()) {
                    case REASON_TO_FASTEN -> "there is reason to keep seat belts fastened.";
                    case NO_REASON_FOUND ->
                            "no threshold is reached, which is no reason to unfasten seat belts.";
                    case NOT_KNOWN ->
                            "not known, since something is missing; nothing speaks for unfastening"
                                    + " seat belts.";
                };
        return Arrays.stream(evidence)
                        .map(Evidence::inWords)
                        .collect(Collectors.joining("; ", levels + advice + " Evidence: ", ". "))
                + LIMITS;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SeatBeltAdvice that
                && lowest.equals(that.lowest)
                && highest.equals(that.highest)
                && Arrays.equals(evidence, that.evidence);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * lowest.hashCode() + highest.hashCode()) + Arrays.hashCode(evidence);
    }

    /**
     * Returns {@link #inWords}.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return inWords();
    }
}
