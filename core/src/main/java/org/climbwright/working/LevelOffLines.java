package org.climbwright.working;

import static org.climbwright.atmosphere.IcaoConstants.GRAVITY_MPS2;

import org.climbwright.gradient.leveling.LevelOff;
import org.climbwright.gradient.leveling.LevelOffLead;
import org.climbwright.gradient.leveling.LevelOffPlan;
import org.climbwright.gradient.leveling.LevelOffRule;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.speed.GeometricRate;
import org.climbwright.quantity.speed.PressureAltitudeRate;

/** The lines of a level-off with a lead that is a share of the rate. */
final class LevelOffLines {
    private static final String THUMB =
            "Instrument Flying Handbook (FAA), lead of a level-off, 10 % of the rate";
    private static final String KINEMATICS = "constant deceleration";

    private LevelOffLines() {}

    static Working working(PressureAltitudeRate rate, LevelOffRule rule, double percent) {
        LevelOffLead lead = LevelOffLead.ofPercentOfRate(percent);
        LevelOffPlan plan = LevelOffPlan.of(rate, rule, lead);
        double edgeM = rule.heightToGo().inMetres();
        new ModelRange(
                        "height to go where the level-off begins",
                        0.0,
                        edgeM,
                        "m",
                        "the working is written out for a lead within the edge of the rule")
                .check(LevelOff.leadByPercent(plan.rateInForce().inMetresPerSecond(), percent));
        Sheet sheet =
                new Sheet(
                        "How does a climb at "
                                + Reading.feetPerMinute(rate.inMetresPerSecond())
                                + " end at its level, by the rule \""
                                + rule.name()
                                + "\"?");
        given(sheet, plan, percent);
        leadLines(sheet, plan, percent);
        if (plan.isReducedForRule()) {
            reducedLines(sheet, plan, percent);
        } else {
            sheet.answer("The rule leaves the rate as it is.");
        }
        timeLine(sheet, plan);
        answer(sheet, plan);
        sheet.limit(
                "No time to respond is in it, of a pilot or of a control system. A rate that keeps"
                        + " a rule does not mean that no other aeroplane is there. Condition of the"
                        + " rule: "
                        + rule.condition()
                        + ".");
        return sheet.working();
    }

    private static void given(Sheet sheet, LevelOffPlan plan, double percent) {
        double rateMps = plan.arrival().inMetresPerSecond();
        sheet.given(
                "rate of arrival",
                "R",
                rateMps,
                "m/s",
                Reading.feetPerMinute(rateMps),
                "on the instrument");
        double edgeM = plan.rule().heightToGo().inMetres();
        sheet.given(
                "edge of the rule",
                "E",
                edgeM,
                "m",
                Reading.feet(edgeM),
                "height to go to the level; " + plan.rule().source());
        double largestMps = plan.rule().largestAllowed().inMetresPerSecond();
        sheet.given(
                "largest rate from there on",
                "v",
                largestMps,
                "m/s",
                Reading.feetPerMinute(largestMps),
                plan.rule().source());
        sheet.given(
                "lead", "P", percent, "%", percent + " %", "share of what is climbed in a minute");
    }

    private static void leadLines(Sheet sheet, LevelOffPlan plan, double percent) {
        double rateMps = plan.arrival().inMetresPerSecond();
        height(
                sheet,
                "Lead at the rate of arrival: a share of what is climbed in a minute",
                "L",
                "R · P / 100 · 60",
                LevelOff.leadByPercent(rateMps, percent),
                THUMB);
        double deceleration = LevelOff.decelerationByPercent(rateMps, percent);
        sheet.step(
                "Deceleration that takes the rate to nothing in that lead",
                "dec",
                "R^2 / (2 · L)",
                deceleration,
                "m/s²",
                Reading.number(deceleration) + " m/s²",
                KINEMATICS);
        double felt = plan.lead().loadFactorChange(GeometricRate.ofMetresPerSecond(rateMps));
        sheet.step(
                "What that takes off the load factor",
                "dn",
                "dec / " + GRAVITY_MPS2,
                felt,
                "",
                Reading.loadFactor(felt),
                "deceleration over standard gravity");
    }

    private static void reducedLines(Sheet sheet, LevelOffPlan plan, double percent) {
        double rateMps = plan.arrival().inMetresPerSecond();
        double keptMps = plan.rateInForce().inMetresPerSecond();
        height(
                sheet,
                "Height in which that deceleration brings the rate down to the rule's",
                "red",
                "(R^2 - v^2) / (2 · dec)",
                LevelOff.heightToReduce(
                        rateMps, keptMps, LevelOff.decelerationByPercent(rateMps, percent)),
                KINEMATICS);
        height(
                sheet,
                "Height to go where the rate must begin to fall, to be the rule's at the edge",
                "B",
                "E + red",
                plan.beginsReducing().inMetres(),
                "sum");
    }

    private static void timeLine(Sheet sheet, LevelOffPlan plan) {
        String kept = plan.isReducedForRule() ? "v" : "R";
        height(
                sheet,
                "Height to go where the level-off begins, the lead at the rate then flown",
                "l",
                kept + " · P / 100 · 60",
                plan.beginsLevelling().inMetres(),
                THUMB);
        double seconds = plan.timeInForce().toNanos() / 1e9;
        sheet.step(
                "Time from the edge until level: the rate kept, and then the level-off at half of"
                        + " it on the mean",
                "t",
                "(E - l) / " + kept + " + 2 · l / " + kept,
                seconds,
                "s",
                Reading.seconds(seconds),
                KINEMATICS);
    }

    private static void answer(Sheet sheet, LevelOffPlan plan) {
        if (plan.isReducedForRule()) {
            sheet.answer(
                    "Begin to reduce the rate with "
                            + Reading.feet(plan.beginsReducing().inMetres())
                            + " to go.");
        }
        sheet.answer(
                "Begin to level off with "
                        + Reading.feet(plan.beginsLevelling().inMetres())
                        + " to go.");
        double seconds = plan.timeInForce().toNanos() / 1e9;
        sheet.answer(
                "From the edge of the rule until level it takes " + Reading.seconds(seconds) + ".");
    }

    private static void height(
            Sheet sheet, String what, String symbol, String formula, double metres, String source) {
        sheet.step(what, symbol, formula, metres, "m", Reading.feet(metres), source);
    }
}
