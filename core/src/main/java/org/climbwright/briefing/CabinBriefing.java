package org.climbwright.briefing;

import java.util.List;
import java.util.stream.Collectors;
import org.climbwright.cabin.CabinPlan;
import org.climbwright.cabin.CabinState;
import org.climbwright.cabin.ExpectedCabin;
import org.climbwright.cabin.exposure.CabinAltitudeRule;
import org.climbwright.path.ClimbPath;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.DifferentialPressure;

/**
 * The cabin on a climb as a pilot is briefed on it: what to read at each check, and how far that is
 * from the limits.
 *
 * <p>Limits of use: what a controller without lag or fault does. Checklists and memory items are
 * the operator's; the flight manual and the operator's procedures decide.
 */
public final class CabinBriefing {
    private final ExpectedCabin expected;
    private final List<CabinState> checks;
    private final CabinAltitudeRule rule = CabinAltitudeRule.transport();

    CabinBriefing(ClimbPath path, CabinPlan plan, List<PressureAltitude> checkLevels) {
        this.expected = ExpectedCabin.along(path, plan);
        this.checks = checkLevels.stream().map(expected::at).toList();
    }

    /**
     * How far a cabin is from its limits; negative beyond them.
     *
     * @param toScheduled differential left up to the scheduled one
     * @param toRelief differential left up to the relief setting
     * @param toWarning what the cabin may still climb until the crew is warned, by the rule for
     *     transport aeroplanes
     */
    public record Margin(
            DifferentialPressure toScheduled,
            DifferentialPressure toRelief,
            AltitudeChange toWarning) {}

    /**
     * Returns the cabin all along the climb.
     *
     * @return the cabin, to be asked at any level or time
     */
    public ExpectedCabin expected() {
        return expected;
    }

    /**
     * Returns what to read at each check.
     *
     * @return the cabin at each round 10,000 ft (common practice, no source) and where the climb
     *     ends, upwards
     */
    public List<CabinState> checks() {
        return checks;
    }

    /** The highest cabin altitude of all checks [ft]. */
    double highestCheckFt() {
        return checks.stream().mapToDouble(check -> check.cabin().inFeet()).max().orElse(0.0);
    }

    /**
     * Returns how far a cabin is from its limits.
     *
     * @param cabin the cabin at some moment
     * @return the margins
     */
    public Margin margin(CabinState cabin) {
        double differentialPa = cabin.differential().inPascals();
        double scheduledPa = expected.plan().limits().scheduled().inPascals();
        double reliefPa = expected.plan().limits().relief().inPascals();
        return new Margin(
                DifferentialPressure.ofPascals(scheduledPa - differentialPa),
                DifferentialPressure.ofPascals(reliefPa - differentialPa),
                rule.warning().minus(cabin.cabin()));
    }

    /**
     * Returns the rule that the warning is from.
     *
     * @return that for transport aeroplanes
     */
    public CabinAltitudeRule rule() {
        return rule;
    }

    /**
     * Returns the checks for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return checks.stream()
                .map(CabinState::toString)
                .collect(Collectors.joining("; ", "checks of the cabin: ", ""));
    }
}
