package org.climbwright.examples.briefing;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.climbwright.briefing.ClimbBriefing;

/**
 * The bundled scenario, for those who want its figures and not its program: an invented aeroplane
 * out of an invented aerodrome, through an observed winter's air.
 *
 * <p>Limits of use: for study, not for use in flight. The flight manual, the operator's procedures,
 * local regulations and licensed practice decide.
 */
public final class BundledClimb {
    private BundledClimb() {}

    /**
     * Returns the climb, briefed.
     *
     * @return the briefing; each call computes it anew
     */
    public static ClimbBriefing briefing() {
        return briefing(scenario());
    }

    /**
     * Returns what the main program prints of it.
     *
     * @return text of at most 100 columns
     */
    public static String report() {
        ScenarioFile scenario = scenario();
        ClimbBriefing briefing = briefing(scenario);
        String air =
                String.join(
                        " ",
                        scenario.soundingTold(),
                        briefing.sounding().station(),
                        briefing.sounding().launch());
        return TextReport.of(scenario.title(), air.trim(), briefing, UnitSet.FEET_KNOTS);
    }

    private static ScenarioFile scenario() {
        try {
            return ScenarioFile.bundled();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static ClimbBriefing briefing(ScenarioFile scenario) {
        try {
            return ClimbBriefing.of(scenario.plan(), scenario.sounding().launchedAt(""));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
