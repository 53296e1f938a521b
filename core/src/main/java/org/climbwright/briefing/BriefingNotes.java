package org.climbwright.briefing;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.climbwright.atmosphere.altimetry.Altimetry;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.briefing.plan.ClimbMeans;
import org.climbwright.cabin.CabinState;
import org.climbwright.cabin.ExpectedCabin;
import org.climbwright.gradient.restriction.AltitudeRestriction;
import org.climbwright.gradient.restriction.Level;
import org.climbwright.gradient.restriction.Restriction;
import org.climbwright.gradient.restriction.RestrictionOutcome;
import org.climbwright.icing.IcingAnswer;
import org.climbwright.path.ClimbRates;
import org.climbwright.path.ClimbState;
import org.climbwright.path.Side;
import org.climbwright.performance.ReducedThrust;
import org.climbwright.profile.ClimbProgramme;
import org.climbwright.profile.HeldLevel;
import org.climbwright.sounding.UnobservedWind;
import org.climbwright.unit.UnitText;

/** What is special about a briefing, in sentences. */
final class BriefingNotes {
    /** A report rounds QNH down to a whole hectopascal, worth up to 28 ft: more is remarked. */
    private static final double QNH_REMARK_FT = 30.0;

    /** Levels nearer than this are one. */
    private static final double SAME_M = 0.01;

    /** How much lower than read is remarked: our own choice. */
    private static final double LOWER_REMARK_FT = 100.0;

    /** A settled differential below this is remarked. */
    private static final double LITTLE_PSI = 0.5;

    private final ClimbBriefing briefing;

    BriefingNotes(ClimbBriefing briefing) {
        this.briefing = briefing;
    }

    List<String> sentences() {
        List<String> found = new ArrayList<>();
        if (!briefing.path().top().equals(briefing.plan().level())) {
            found.add(
                    String.format(
                            Locale.ROOT,
                            "The climb ends at %.0f ft and not at %.0f ft: %s.",
                            briefing.path().top().inFeet(),
                            briefing.plan().level().inFeet(),
                            briefing.path().endsBecause()));
        }
        briefing.levels().stream()
                .map(BriefingLevel::state)
                .filter(state -> state.alongTrackWind().isEmpty())
                .findFirst()
                .ifPresent(
                        state ->
                                found.add(
                                        String.format(
                                                Locale.ROOT,
                                                "No wind was observed at %.0f ft and other levels:"
                                                    + " ground speed and gradient over the ground"
                                                    + " are absent there, distance from there on.",
                                                state.pressureAltitude().inFeet())));
        noteStatedQnh(found);
        noteTakenWinds(found);
        if (briefing.iceProtection().stream()
                .anyMatch(advice -> !advice.spans(IcingAnswer.NOT_KNOWN).isEmpty())) {
            found.add(
                    "Humidity is not known on a part of the climb that is cold enough for icing"
                            + " conditions: whether they hold there cannot be told.");
        }
        briefing.cabin().ifPresent(briefed -> noteCabin(found, briefed));
        noteRestrictions(found);
        noteWhatIsNotFlown(found);
        noteTrueAltitudes(found);
        if (briefing.plan().means() instanceof ClimbMeans.Rates rates) {
            noteTable(found, rates.table());
        }
        if (briefing.sounding().tropopause().isEmpty()) {
            found.add("The sounding shows no tropopause, or ends before it can be told.");
        }
        return List.copyOf(found);
    }

    private void noteTable(List<String> found, ClimbRates table) {
        DoubleSummaryStatistics deviations =
                briefing.levels().stream()
                        .mapToDouble(level -> level.state().air().isaDeviation().inKelvins())
                        .summaryStatistics();
        found.add(
                String.format(
                        Locale.ROOT,
                        "The table of rates is for ISA%s K, the air at the levels told here is"
                                + " ISA%+.1f to %+.1f K: the rates are not corrected for it.",
                        signed(table.isaDeviation().inKelvins()),
                        deviations.getMin(),
                        deviations.getMax()));
    }

    private static String signed(double kelvins) {
        return (kelvins < 0.0 ? "" : "+") + UnitText.number(kelvins);
    }

    /** Above the transition altitude nobody's altimeter is on QNH. */
    private void noteRestrictions(List<String> found) {
        double transitionFt = briefing.plan().aerodrome().transitionAltitude().inFeet();
        for (Restriction restriction : briefing.plan().restrictions()) {
            boolean isHigh =
                    restriction.altitude().stream()
                            .flatMap(
                                    altitude ->
                                            Stream.concat(
                                                    altitude.lower().stream(),
                                                    altitude.upper().stream()))
                            .anyMatch(
                                    level ->
                                            level.reference() == Level.Reference.QNH
                                                    && level.inFeet() > transitionFt);
            if (isHigh) {
                found.add(
                        String.format(
                                Locale.ROOT,
                                "The restriction at %s is on QNH, above the transition altitude of"
                                        + " %.0f ft where altimeters are on the standard setting:"
                                        + " it is held against the reading on QNH all the same.",
                                restriction.name(),
                                transitionFt));
            }
        }
    }

    /** Speeds that restrictions allow are checked and not kept, and a hold may come too late. */
    private void noteWhatIsNotFlown(List<String> found) {
        for (RestrictionOutcome outcome : briefing.restrictions().outcomes()) {
            if (outcome.speedVerdict() == RestrictionOutcome.Verdict.MISSED) {
                found.add(
                        "The climb is not slowed for "
                                + outcome.restriction().name()
                                + ": altitudes of restrictions are kept by levels on the way,"
                                + " speeds are those of the schedule.");
            }
        }
        briefing.profile()
                .map(flown -> flown.climb().programme())
                .ifPresent(programme -> noteProgramme(found, programme));
    }

    private void noteProgramme(List<String> found, ClimbProgramme programme) {
        double[] heldM = briefing.path().heldLevelsM();
        for (HeldLevel held : programme.heldLevels()) {
            boolean isFlown =
                    DoubleStream.of(heldM)
                            .anyMatch(level -> Math.abs(level - held.level().inMetres()) < SAME_M);
            if (!isFlown) {
                found.add(
                        String.format(
                                Locale.ROOT,
                                "The hold at %s is not flown: the climb is past its end when it"
                                        + " gets there, or does not get there.",
                                StateFigures.level(briefing.reading(held.level()))));
            }
        }
        if (!programme.reducedThrust().equals(ReducedThrust.none())) {
            found.add("Thrust is less than the whole: " + programme.reducedThrust() + ".");
        }
    }

    /** Where a lower bound on QNH is well below what it reads: known without the distance. */
    private void noteTrueAltitudes(List<String> found) {
        for (Restriction restriction : briefing.plan().restrictions()) {
            restriction
                    .altitude()
                    .flatMap(AltitudeRestriction::lower)
                    .filter(level -> level.reference() == Level.Reference.QNH)
                    .map(level -> level.pressureAltitude(briefing.qnh()))
                    .filter(level -> level.compareTo(briefing.path().bottom()) >= 0)
                    .filter(level -> level.compareTo(briefing.path().top()) <= 0)
                    .flatMap(level -> lowerThanRead(briefing.path().at(level, Side.BELOW)))
                    .ifPresent(lower -> found.add(lowerNote(restriction, lower)));
        }
    }

    private static String lowerNote(Restriction restriction, double lowerFt) {
        return String.format(
                Locale.ROOT,
                "The least altitude of %s is in this air %.0f ft lower than the altimeter on QNH"
                        + " reads there, for the air below is cold: corrections for cold are the"
                        + " operator's.",
                restriction.name(),
                lowerFt);
    }

    private Optional<Double> lowerThanRead(ClimbState state) {
        double readingFt =
                Altimetry.altitudeOnQnh(state.pressureAltitude(), briefing.qnh()).inFeet();
        return state.air()
                .geometricAltitude()
                .map(altitude -> readingFt - altitude.inFeet())
                .filter(lower -> lower >= LOWER_REMARK_FT);
    }

    private static void noteCabin(List<String> found, CabinBriefing briefed) {
        for (ExpectedCabin.GaveWay way : briefed.expected().gaveWay()) {
            found.add("On this climb the cabin cannot keep all its limits: " + way.inWords() + ".");
        }
        CabinState settled = briefed.expected().settled();
        double settledFt = settled.cabin().inFeet();
        double warningFt = briefed.rule().warning().inFeet();
        if (Math.max(settledFt, briefed.highestCheckFt()) > warningFt) {
            found.add(
                    String.format(
                            Locale.ROOT,
                            "The plan itself has the cabin above %.0f ft, where the crew is warned"
                                + " and oxygen rules begin to apply; it settles at %.0f ft. A high"
                                + " landing field is no reason for a high cabin in cruise.",
                            warningFt,
                            settledFt));
        }
        if (settled.differential().inPoundsPerSquareInch() < LITTLE_PSI) {
            found.add(
                    String.format(
                            Locale.ROOT,
                            "The cabin settles at %.0f ft with %.2f psi: it is all but without"
                                    + " pressurisation on this plan.",
                            settledFt,
                            settled.differential().inPoundsPerSquareInch()));
        }
    }

    /** A QNH that is not the one of this air puts every reading on it off by the same amount. */
    private void noteStatedQnh(List<String> found) {
        double reading = Altimetry.altitudeOnQnh(briefing.path().bottom(), briefing.qnh()).inFeet();
        double elevation = briefing.plan().aerodrome().elevation().inFeet();
        if (Math.abs(reading - elevation) > QNH_REMARK_FT) {
            found.add(
                    String.format(
                            Locale.ROOT,
                            "On the QNH stated the altimeter shows %.0f ft at the aerodrome of %.0f"
                                    + " ft: the air of the sounding has another QNH.",
                            reading,
                            elevation));
        }
    }

    /** A wind that nobody observed is told as what it is, where the plan's rule put one. */
    private void noteTakenWinds(List<String> found) {
        if (briefing.plan().unobservedWind() == UnobservedWind.NOT_KNOWN) {
            return;
        }
        Winds observed = briefing.sounding().winds(UnobservedWind.NOT_KNOWN);
        boolean taken =
                briefing.levels().stream()
                        .map(level -> level.state().pressureAltitude())
                        .anyMatch(altitude -> observed.at(altitude).isEmpty());
        if (taken) {
            found.add(
                    briefing.plan().unobservedWind() == UnobservedWind.CALM
                            ? "Where no wind was observed a calm is taken."
                            : "Below the lowest observed wind, that wind is taken.");
        }
    }
}
