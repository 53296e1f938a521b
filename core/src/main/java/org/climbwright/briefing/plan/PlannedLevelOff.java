package org.climbwright.briefing.plan;

import java.util.Objects;
import org.climbwright.gradient.leveling.LevelOffLead;
import org.climbwright.gradient.leveling.LevelOffRule;

/**
 * How the level is to be captured at the end of a climb.
 *
 * @param rule the largest rate on the last feet
 * @param lead how early the level-off begins
 */
public record PlannedLevelOff(LevelOffRule rule, LevelOffLead lead) {
    /**
     * Makes it of parts that are both there.
     *
     * @param rule the largest rate on the last feet
     * @param lead how early the level-off begins
     */
    public PlannedLevelOff {
        Objects.requireNonNull(rule, "rule");
        Objects.requireNonNull(lead, "lead");
    }
}
