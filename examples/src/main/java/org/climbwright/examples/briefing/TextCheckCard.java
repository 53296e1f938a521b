package org.climbwright.examples.briefing;

import java.util.List;
import java.util.function.Function;
import org.climbwright.briefing.CheckPoint;
import org.climbwright.briefing.ClimbBriefing;
import org.climbwright.cabin.CabinState;
import org.climbwright.quantity.path.Mass;

/** What figures should read at some points, with room to write down what they do. */
final class TextCheckCard {
    private static final int NAME = 24;

    private TextCheckCard() {}

    static void write(TextPage page, ClimbBriefing briefing) {
        List<CheckPoint> points = briefing.checkCard();
        UnitSet units = page.units();
        FigureUnit altitude = units.altitude();
        FigureUnit rate = units.verticalRate();
        FigureUnit differential = units.differential();
        page.line("CHECK CARD, what should be read, and room for what is seen");
        new TextTable<CheckPoint>()
                .column(-NAME, "", "point", point -> TextPage.cut(point.name(), NAME - 1))
                .column(
                        12,
                        "on the",
                        "altimeter",
                        point -> page.onAltimeter(point.state().pressureAltitude()))
                .column(7, "", "min:s", point -> TextPage.minutes(point.state().timeS()))
                .column(6, "±", "min:s", TextCheckCard::tolerance)
                .column(
                        8,
                        "cabin",
                        altitude.label(),
                        cabin(state -> altitude.number(state.cabin().inMetres())))
                .column(
                        8,
                        "cabin",
                        rate.label(),
                        cabin(state -> rate.signed(state.rate().inMetresPerSecond())))
                .column(
                        11,
                        "differ-",
                        "ential " + differential.label(),
                        cabin(state -> differential.number(state.differential().inPascals())))
                .column(
                        7,
                        "fuel",
                        units.mass().label(),
                        point ->
                                TextPage.known(
                                        point.fuel()
                                                .map(Mass::inKilograms)
                                                .map(units.mass()::number)))
                .column(17, "", "seen           ", point -> "_______________")
                .write(page, points);
        if (points.stream().anyMatch(point -> point.toleranceS().isPresent())) {
            page.line(
                    "  ± min:s: by how much the time differs with 1,000 kg more, air 10 K warmer"
                            + " or");
            page.line("  20 kn more on the nose, each alone, the most of them.");
        }
        page.blank();
    }

    private static String tolerance(CheckPoint point) {
        return point.toleranceS().isPresent()
                ? "±" + TextPage.minutes(point.toleranceS().getAsDouble())
                : TextPage.DASH;
    }

    private static Function<CheckPoint, String> cabin(Function<CabinState, String> figure) {
        return point -> TextPage.known(point.cabin().map(figure));
    }
}
