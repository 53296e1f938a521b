package org.climbwright.examples.briefing;

import java.util.function.Function;
import org.climbwright.briefing.CabinBriefing;
import org.climbwright.cabin.CabinPlan;
import org.climbwright.cabin.CabinState;
import org.climbwright.quantity.pressure.DifferentialPressure;

/** The cabin at each check, and what is left to its limits. */
final class TextCabin {
    private TextCabin() {}

    static void write(TextPage page, CabinBriefing cabin) {
        UnitSet units = page.units();
        CabinPlan plan = cabin.expected().plan();
        page.line("CABIN CHECKS, %s", plan.schedule().inWords());
        page.paragraph(
                "  ",
                TextPage.format(
                        "from %s pressure altitude with %s on the ground, landing field at %s"
                                + " pressure altitude",
                        page.altitude(plan.departure()),
                        stated(units, plan.prePressurisation()),
                        page.altitude(plan.landing())));
        table(units, cabin).write(page, cabin.checks());
        CabinState settled = cabin.expected().settled();
        page.paragraph(
                "  ",
                TextPage.format(
                        "Settled at %s cabin altitude, %s, %s after the climb began.",
                        units.altitude().text(settled.cabin().inMetres()),
                        units.differential().text(settled.differential().inPascals()),
                        TextPage.minutes(settled.time())));
        page.paragraph(
                "  ",
                TextPage.format(
                        "Limits: scheduled %s, relief %s, negative relief %s; cabin rate %s up, %s"
                                + " down, the %s kept first; warning at %s by %s.",
                        stated(units, plan.limits().scheduled()),
                        stated(units, plan.limits().relief()),
                        stated(units, plan.limits().negativeRelief()),
                        units.verticalRate().stated(plan.rates().up().inMetresPerSecond()),
                        units.verticalRate().stated(plan.rates().down().inMetresPerSecond()),
                        plan.precedence() == CabinPlan.Precedence.DIFFERENTIAL_FIRST
                                ? "differential"
                                : "rate",
                        units.altitude().text(cabin.rule().warning().inMetres()),
                        cabin.rule().name()));
        page.blank();
    }

    private static TextTable<CabinState> table(UnitSet units, CabinBriefing cabin) {
        FigureUnit altitude = units.altitude();
        FigureUnit differential = units.differential();
        String psi = differential.label();
        return new TextTable<CabinState>()
                .column(
                        8,
                        "press.",
                        "alt " + altitude.label(),
                        state -> altitude.number(state.aeroplane().inMetres()))
                .column(7, "", "min:s", state -> TextPage.minutes(state.time()))
                .column(
                        8,
                        "cabin",
                        "alt " + altitude.label(),
                        state -> altitude.number(state.cabin().inMetres()))
                .column(
                        8,
                        "cabin",
                        units.verticalRate().label(),
                        state -> units.verticalRate().signed(state.rate().inMetresPerSecond()))
                .column(
                        12,
                        "differ-",
                        "ential " + psi,
                        state -> differential.number(state.differential().inPascals()))
                .column(
                        13,
                        psi + " left to",
                        "scheduled",
                        margin(cabin, left -> differential.number(left.toScheduled().inPascals())))
                .column(
                        11,
                        psi + " left",
                        "to relief",
                        margin(cabin, left -> differential.number(left.toRelief().inPascals())))
                .column(
                        12,
                        altitude.label() + " left to",
                        "warning",
                        margin(cabin, left -> altitude.number(left.toWarning().inMetres())))
                .column(2, "", "", state -> "")
                .column(-12, "held by", "", state -> words(state.boundBy()));
    }

    private static Function<CabinState, String> margin(
            CabinBriefing cabin, Function<CabinBriefing.Margin, String> cell) {
        return state -> cell.apply(cabin.margin(state));
    }

    private static String stated(UnitSet units, DifferentialPressure differential) {
        return units.differential().stated(differential.inPascals());
    }

    private static String words(CabinState.BoundBy boundBy) {
        return switch (boundBy) {
            case SCHEDULE -> "schedule";
            case SCHEDULED_DIFFERENTIAL -> "differential";
            case AEROPLANE -> "aeroplane";
            case RATE_LIMIT -> "rate limit";
            case RELIEF_SETTING -> "relief";
        };
    }
}
