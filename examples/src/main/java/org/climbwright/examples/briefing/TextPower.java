package org.climbwright.examples.briefing;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.climbwright.briefing.ClimbBriefing;
import org.climbwright.performance.ClimbEffects;
import org.climbwright.performance.ClimbPoint;
import org.climbwright.quantity.speed.PressureAltitudeRate;

/** Where the excess power goes, as rates of climb. */
final class TextPower {
    private TextPower() {}

    static void write(TextPage page, ClimbBriefing briefing) {
        if (briefing.power().isEmpty()) {
            return;
        }
        UnitSet units = page.units();
        FigureUnit rate = units.verticalRate();
        double startKg = briefing.plan().mass().inKilograms();
        page.line(
                "WHERE THE EXCESS POWER GOES, at round levels with a held speed and the thrust"
                        + " set");
        new TextTable<ClimbEffects>()
                .column(
                        8,
                        "press.",
                        "alt " + units.altitude().label(),
                        point(at -> units.altitude().number(at.pressureAltitude().inMetres())))
                .column(
                        8,
                        "mass",
                        units.mass().label(),
                        point(at -> units.mass().number(at.mass().inKilograms())))
                .column(
                        7,
                        "fuel",
                        units.mass().label(),
                        point(at -> units.mass().number(startKg - at.mass().inKilograms())))
                .column(
                        11,
                        "fuel",
                        "flow " + units.fuelFlow().label(),
                        point(at -> units.fuelFlow().number(at.fuelFlow().inKilogramsPerSecond())))
                .column(9, "excess", rate.label(), of(rate, ClimbPoint::specificExcessPowerMps))
                .column(9, "into", "height", of(rate, ClimbPoint::powerOfClimbMps))
                .column(8, "into", "speed", of(rate, ClimbPoint::powerOfAccelerationMps))
                .column(
                        8,
                        "into",
                        "wind",
                        point(at -> TextPage.known(number(rate, at.powerOfWindChangeMps()))))
                .column(9, "bleed", "takes", effects -> rate.number(effects.powerTakenByBleedMps()))
                .column(
                        9,
                        "rate",
                        rate.label(),
                        point(at -> rate.number(at.pressureAltitudeRate().inMetresPerSecond())))
                .column(
                        9,
                        "of it",
                        "by wind",
                        point(
                                at ->
                                        TextPage.known(
                                                at.worthOfWindGradient()
                                                        .map(
                                                                PressureAltitudeRate
                                                                        ::inMetresPerSecond)
                                                        .map(rate::signed))))
                .write(page, briefing.power());
        page.line(
                "Excess: thrust over drag times airspeed per weight, in true height; it goes into"
                        + " height, into");
        page.line(
                "airspeed and into the wind that change upwards. Bleed: what the anti-ice takes of"
                        + " it beforehand.");
        page.line(
                "Rate: of the instrument, and what of it is due to the wind's change: a headwind"
                        + " that grows");
        page.line("upwards lifts.");
        page.blank();
    }

    private static Function<ClimbEffects, String> point(Function<ClimbPoint, String> cell) {
        return effects -> cell.apply(effects.asItIs());
    }

    private static Function<ClimbEffects, String> of(
            FigureUnit unit, ToDoubleFunction<ClimbPoint> figure) {
        return effects -> unit.number(figure.applyAsDouble(effects.asItIs()));
    }

    private static Optional<String> number(FigureUnit unit, OptionalDouble si) {
        return si.isPresent() ? Optional.of(unit.number(si.getAsDouble())) : Optional.empty();
    }
}
