package org.climbwright.examples.briefing;

import java.util.List;
import java.util.Locale;
import org.climbwright.briefing.ClimbBriefing;
import org.climbwright.briefing.ClimbEvent;
import org.climbwright.briefing.plan.ClimbPlan;
import org.climbwright.cabin.CabinPlan;
import org.climbwright.cabin.CabinState;
import org.climbwright.gradient.cloudtop.CloudTop;
import org.climbwright.gradient.leveling.LevelOffPlan;
import org.climbwright.gradient.restriction.ClimbRequirement;
import org.climbwright.gradient.restriction.Level;
import org.climbwright.gradient.restriction.Restriction;
import org.climbwright.gradient.restriction.RestrictionOutcome;
import org.climbwright.gradient.restriction.Restrictions;
import org.climbwright.icing.IcingAnswer;
import org.climbwright.icing.IcingRule;
import org.climbwright.icing.IcingSpan;
import org.climbwright.icing.ProtectionAdvice;
import org.climbwright.icing.ProtectionMethod;
import org.climbwright.icing.ProtectionPeriod;
import org.climbwright.icing.ProtectionPlan;
import org.climbwright.path.ClimbState;
import org.climbwright.performance.ClimbEffects;
import org.climbwright.performance.ClimbPoint;
import org.climbwright.profile.ClimbDifference;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.altitude.GeometricAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.path.GroundGradient;
import org.climbwright.quantity.speed.AlongTrackWind;
import org.climbwright.quantity.speed.GeometricRate;
import org.climbwright.quantity.speed.GroundSpeed;
import org.climbwright.quantity.speed.PressureAltitudeRate;
import org.climbwright.sounding.IsothermCrossing;

/** A briefing as text: a chapter each, what a pilot needs first before the rest. */
final class TextReport {
    private TextReport() {}

    static String of(String title, String air, ClimbBriefing briefing, UnitSet units) {
        TextPage page = new TextPage(units);
        TextHeading.write(page, title, air, briefing);
        TextWhatByWhen.write(page, briefing);
        TextCheckCard.write(page, briefing);
        sentences(page, "Notes", briefing.notes());
        TextRestrictions.write(page, briefing);
        briefing.levelOff().ifPresent(plan -> TextLevelOff.write(page, plan));
        briefing.cloudTop().ifPresent(top -> TextCloudTop.write(page, top));
        TextFreezingLevels.write(page, briefing);
        TextIcing.write(page, briefing);
        briefing.turbulence().ifPresent(found -> TextTurbulence.write(page, found));
        briefing.cabin().ifPresent(cabin -> TextCabin.write(page, cabin));
        TextClimb.write(page, briefing);
        TextPower.write(page, briefing);
        TextChanges.write(page, briefing);
        sentences(page, "Sources", briefing.sources());
        sentences(page, "Limits of this briefing", briefing.limits());
        return page.text();
    }

    private static void sentences(TextPage page, String heading, List<String> sentences) {
        if (sentences.isEmpty()) {
            return;
        }
        page.line("%s", heading.toUpperCase(Locale.ROOT));
        sentences.forEach(sentence -> page.paragraph("  ", sentence));
        page.blank();
    }
}
