package org.climbwright.briefing;

import java.time.Duration;
import org.climbwright.briefing.Expectation.Kind;
import org.climbwright.briefing.plan.ClimbMeans;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.ClimbState;
import org.climbwright.path.Side;

/** What to expect and what to do at the events of a climb, as they come. */
final class EventExpectations {
    /** In which time a change of speed shows whether it is to a faster one. */
    private static final Duration SHOWS = Duration.ofSeconds(5);

    private final ClimbBriefing briefing;
    private final ClimbPath path;
    private final ExpectationCollector found;

    EventExpectations(ClimbBriefing briefing, ExpectationCollector found) {
        this.briefing = briefing;
        this.path = briefing.path();
        this.found = found;
    }

    void gather() {
        for (BriefingEvents.Check check :
                BriefingEvents.checks(briefing.plan(), path, briefing.qnh())) {
            check("figures at " + check.inFeet(), path.at(check.level(), Side.BELOW));
        }
        for (BriefingLevel level : briefing.levels()) {
            level.events().forEach(event -> gather(event, level.state()));
        }
    }

    private void check(String what, ClimbState state) {
        found.add(
                Kind.CHECK,
                what,
                state,
                StateFigures.check(briefing, state),
                "every 10,000 ft, common practice, no source");
    }

    private void gather(ClimbEvent event, ClimbState state) {
        String text = event.text();
        String speed = StateFigures.speed(state);
        switch (event.kind()) {
            case BOTTOM ->
                    found.add(Kind.EXPECT, text, state, speed, "time and distance count from here");
            case CHANGE_OF_SPEED -> found.add(Kind.DO, text, state, speed, reasonOfChange(state));
            case SPEED_REACHED ->
                    found.add(Kind.EXPECT, text, state, speed, "all the excess power climbs again");
            case CROSSOVER ->
                    found.add(
                            Kind.DO,
                            "hold the Mach number: " + text,
                            state,
                            speed,
                            "the Mach number at this calibrated airspeed has come to the"
                                    + " schedule's");
            case TRANSITION_ALTITUDE ->
                    found.add(
                            Kind.DO,
                            "set the altimeter to 1013.25 hPa",
                            state,
                            text,
                            "flight levels count from here, and so do restrictions in them");
            case ZERO_CELSIUS ->
                    air(event, state, "water begins or ends to freeze; above it may warm again");
            case INVERSION_BASE, INVERSION_TOP ->
                    air(event, state, "warmer air takes thrust, and its edges may be rough");
            case TROPOPAUSE -> air(event, state, "the air stops cooling, and winds change");
            case NAMED_POINT ->
                    found.add(
                            Kind.CHECK,
                            "over " + text,
                            state,
                            StateFigures.check(briefing, state),
                            "time and fuel are held against the briefing");
            case HELD_RATE ->
                    found.add(Kind.DO, text, state, speed, "the programme asks for that rate");
            case LEVEL_HELD ->
                    found.add(
                            Kind.DO,
                            text,
                            state,
                            "arriving at " + StateFigures.rate(state),
                            "the programme or a restriction holds the climb here");
            case LEVEL_LEFT ->
                    found.add(Kind.DO, text, state, speed, "nothing holds the climb here longer");
            case NOT_KEPT ->
                    found.add(Kind.EXPECT, text, state, speed, "the programme cannot be kept here");
            case LOW_RATE ->
                    found.add(
                            Kind.EXPECT,
                            text,
                            state,
                            speed,
                            "the rate has fallen to the one that the programme wants told");
            case RATE_JUMP ->
                    found.add(Kind.EXPECT, text, state, speed, "two rates of the table meet here");
            case TOP ->
                    found.add(
                            Kind.CHECK,
                            text,
                            state,
                            StateFigures.check(briefing, state),
                            briefing.levelOff().isPresent()
                                    ? "the time is without the level-off, which takes longer"
                                    : "the climb is over");
            case CHECK,
                    BLEED,
                    CABIN,
                    ICE_PROTECTION_ON,
                    ICING_ENTRY,
                    ICING_EXIT,
                    ICING_NOT_KNOWN_ENTRY,
                    ICING_NOT_KNOWN_EXIT,
                    RESTRICTION,
                    LEVEL_OFF -> {
                // bleed goes with protection and the cabin with its check; others have a latest
                // point and are gathered from the answers
            }
        }
    }

    private void air(ClimbEvent event, ClimbState state, String reason) {
        found.add(Kind.EXPECT, event.text(), state, StateFigures.temperatures(state), reason);
    }

    private String reasonOfChange(ClimbState state) {
        if (briefing.plan().means() instanceof ClimbMeans.Rates) {
            return "immediate in a table of rates; in flight it takes time, and the rate changes";
        }
        Duration end = path.at(path.top(), Side.ABOVE).time();
        Duration soon = state.time().plus(SHOWS);
        ClimbState later = path.at(soon.compareTo(end) < 0 ? soon : end);
        return later.calibratedAirspeed().compareTo(state.calibratedAirspeed()) >= 0
                ? "a faster speed of the schedule, and the rate is less meanwhile"
                : "a slower speed of the schedule, and the rate is more meanwhile; for rough air"
                        + " begin early enough to have it there";
    }
}
