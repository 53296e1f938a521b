package org.climbwright.working;

import org.climbwright.atmosphere.altimetry.VerticalRates;
import org.climbwright.gradient.ClimbGradient;
import org.climbwright.gradient.RoundedUp;
import org.climbwright.gradient.restriction.ClimbRequirement;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.speed.GroundSpeed;
import org.climbwright.quantity.speed.PressureAltitudeRate;
import org.climbwright.quantity.temperature.StaticAirTemperature;

/** The lines of a restriction: what it takes, and what a rate gives. */
final class RestrictionLines {
    private static final String GEOMETRY = "height over distance, both over one time";
    private static final String ALTIMETERS = "the altimeter's own height; no temperature enters";

    /** What is asked. */
    record Question(
            PressureAltitude from,
            PressureAltitude level,
            GroundDistance distance,
            GroundSpeed groundSpeed,
            PressureAltitudeRate rate,
            StaticAirTemperature halfWay) {
        double halfWayM() {
            return from.plus(level.minus(from).times(0.5)).inMetres();
        }
    }

    private RestrictionLines() {}

    static Working working(Question asked) {
        double fromM = asked.from().inMetres();
        double levelM =
                new ModelRange(
                                "level to be at",
                                Math.nextUp(fromM),
                                20000.0,
                                "m",
                                "a climb to it is asked for, up to where workings are written out")
                        .check(asked.level().inMetres());
        Sheet sheet =
                new Sheet(
                        "Is "
                                + Reading.feetPerMinute(asked.rate().inMetresPerSecond())
                                + " enough to be at "
                                + Reading.feet(levelM)
                                + " in "
                                + Reading.nauticalMiles(asked.distance().inMetres())
                                + "?");
        given(sheet, asked);
        takes(sheet, asked);
        double atM = gives(sheet, asked);
        sheet.limit(
                "Ground speed and rate are taken as constant on the way. It is no statement about"
                        + " obstacles, and a margin by these figures is no clearance of anything.");
        answer(sheet, asked, atM);
        return sheet.working();
    }

    private static void given(Sheet sheet, Question asked) {
        level(sheet, "pressure altitude now", "H1", asked.from());
        level(sheet, "pressure altitude to be at over the point", "H2", asked.level());
        double distanceM = asked.distance().inMetres();
        sheet.given(
                "distance to the point",
                "d",
                distanceM,
                "m",
                Reading.nauticalMiles(distanceM),
                "over the ground, from here");
        double groundMps = asked.groundSpeed().inMetresPerSecond();
        sheet.given(
                "ground speed",
                "GS",
                groundMps,
                "m/s",
                Reading.knots(groundMps),
                "the mean on the way");
        double rateMps = asked.rate().inMetresPerSecond();
        sheet.given(
                "rate of climb",
                "R",
                rateMps,
                "m/s",
                Reading.feetPerMinute(rateMps),
                "on the instrument, the mean on the way");
        double kelvins = asked.halfWay().inKelvins();
        sheet.given(
                "static air temperature half-way up",
                "T",
                kelvins,
                "K",
                Reading.celsius(kelvins),
                "for true height");
    }

    private static void level(Sheet sheet, String name, String symbol, PressureAltitude level) {
        double metres = level.inMetres();
        sheet.given(name, symbol, metres, "m", Reading.feet(metres), "the 1013.25 hPa level");
    }

    private static void takes(Sheet sheet, Question asked) {
        double fromM = asked.from().inMetres();
        double levelM = asked.level().inMetres();
        double distanceM = asked.distance().inMetres();
        double requiredMps =
                ClimbRequirement.instrumentRate(
                        fromM, levelM, distanceM, asked.groundSpeed().inMetresPerSecond());
        sheet.step(
                "Rate that the instrument must show on the mean",
                "Rreq",
                "(H2 - H1) · GS / d",
                requiredMps,
                "m/s",
                Reading.feetPerMinute(requiredMps),
                ALTIMETERS);
        double halfWayM = asked.halfWayM();
        double ratio =
                VerticalRates.geometricPerPressureAltitude(halfWayM, asked.halfWay().inKelvins());
        String half = "(H1 + H2) / 2";
        sheet.step(
                "True height of a foot of the altimeter: temperature over the standard one, and"
                        + " geometric over geopotential",
                "k",
                "T / "
                        + StandardAirLines.temperature(half, halfWayM)
                        + " · (6356766 / (6356766 - "
                        + half
                        + "))^2",
                ratio,
                "",
                Reading.number(ratio),
                "hydrostatic equation; " + StandardAirLines.SOURCE);
        double gradient = ClimbRequirement.gradient(fromM, levelM, ratio, distanceM);
        sheet.step(
                "Gradient over the ground that this is, in true height",
                "G",
                "(H2 - H1) · k / d",
                gradient,
                "m/m",
                Reading.percent(gradient),
                GEOMETRY);
    }

    /** Writes what the rate gives, and returns the altitude over the point. */
    private static double gives(Sheet sheet, Question asked) {
        double distanceM = asked.distance().inMetres();
        double slope =
                ClimbGradient.gradient(
                        asked.rate().inMetresPerSecond(), asked.groundSpeed().inMetresPerSecond());
        sheet.step(
                "What the rate gives: height on the altimeter per distance",
                "Gr",
                "R / GS",
                slope,
                "m/m",
                Reading.percent(slope),
                GEOMETRY);
        double neededM =
                ClimbGradient.distanceFor(asked.level().minus(asked.from()).inMetres(), slope);
        sheet.step(
                "Distance in which it reaches the level",
                "dneed",
                "(H2 - H1) / Gr",
                neededM,
                "m",
                Reading.nauticalMiles(neededM),
                GEOMETRY);
        PressureAltitude over =
                asked.from()
                        .plus(
                                AltitudeChange.ofMetres(
                                        ClimbGradient.heightGained(slope, distanceM)));
        sheet.step(
                "Pressure altitude over the point at that rate",
                "Hat",
                "H1 + Gr · d",
                over.inMetres(),
                "m",
                Reading.feet(over.inMetres()),
                GEOMETRY);
        double spareM = over.minus(asked.level()).inMetres();
        sheet.step(
                "Above the level by then",
                "dH",
                "Hat - H2",
                spareM,
                "m",
                Reading.feet(spareM),
                "difference; negative is short of it");
        return over.inMetres();
    }

    private static void answer(Sheet sheet, Question asked, double atM) {
        double levelM = asked.level().inMetres();
        boolean isReached = atM >= levelM;
        PressureAltitudeRate required =
                PressureAltitudeRate.ofMetresPerSecond(
                        ClimbRequirement.instrumentRate(
                                asked.from().inMetres(),
                                levelM,
                                asked.distance().inMetres(),
                                asked.groundSpeed().inMetresPerSecond()));
        PressureAltitudeRate read =
                RoundedUp.of(required, PressureAltitudeRate.ofFeetPerMinute(50));
        sheet.answer(
                "It takes "
                        + Reading.feetPerMinute(read.inMetresPerSecond())
                        + " on the mean, rounded up to 50 ft/min.");
        sheet.answer(
                "By these figures the altimeter shows "
                        + Reading.feet(atM)
                        + " over the point, "
                        + Reading.feet(Math.abs(atM - levelM))
                        + (isReached ? " above the level." : " short of the level."));
        if (!isReached) {
            sheet.answer(
                    "By these figures the restriction is not met; who cannot comply tells the"
                            + " controller (common practice, no source).");
        }
    }
}
