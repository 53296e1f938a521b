package org.climbwright.working;

import org.climbwright.gradient.ClimbGradient;
import org.climbwright.gradient.RoundedUp;
import org.climbwright.gradient.WindGradients;
import org.climbwright.gradient.leveling.LevelOffRule;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.path.GroundGradient;
import org.climbwright.quantity.speed.AlongTrackWind;
import org.climbwright.quantity.speed.GeometricRate;
import org.climbwright.quantity.speed.GroundSpeed;
import org.climbwright.quantity.speed.PressureAltitudeRate;
import org.climbwright.quantity.speed.TrueAirspeed;
import org.climbwright.quantity.temperature.StaticAirTemperature;

/**
 * Workings of the geometry of a climb: a gradient as a rate, a restriction, a level-off.
 *
 * <p>Limits of use: for study, at constant speed, wind and rate; no statement about obstacles. The
 * clearance, the published procedure and the flight manual decide.
 */
public final class GradientWorking {
    private static final String GEOMETRY = "height over distance, both over one time";

    private GradientWorking() {}

    /**
     * Shows which rate a gradient over the ground takes in a wind.
     *
     * <p>Symbols: G, TAS, W given; Gf, GS, ROC, Rf, Gair found.
     *
     * @param gradient gradient over the ground
     * @param tas true airspeed
     * @param wind wind along the track, positive from behind
     * @return the working
     * @throws IllegalArgumentException if a value is out of range, or the airspeed is too little
     *     for that gradient in that wind
     */
    public static Working rateForGradient(
            GroundGradient gradient, TrueAirspeed tas, AlongTrackWind wind) {
        double mpm = gradient.inMetresPerMetre();
        double tasMps = tas.inMetresPerSecond();
        double windMps = wind.inMetresPerSecond();
        Sheet sheet =
                new Sheet(
                        "Which rate of climb does a gradient of "
                                + Reading.percent(mpm)
                                + " take in this wind?");
        sheet.given(
                "gradient to keep",
                "G",
                mpm,
                "m/m",
                Reading.percent(mpm),
                "true height over distance over the ground");
        sheet.given("true airspeed", "TAS", tasMps, "m/s", Reading.knots(tasMps), "along the path");
        sheet.given(
                "wind along the track",
                "W",
                windMps,
                "m/s",
                Reading.knots(windMps),
                "positive from behind, negative from ahead");
        double perMile = gradient.inFeetPerNauticalMile();
        sheet.step(
                "The gradient in feet per nautical mile",
                "Gf",
                "G · 1852 / 0.3048",
                perMile,
                "ft/NM",
                FormulaText.rounded(Math.rint(perMile * 10.0) / 10.0) + " ft/NM",
                "definitions of the foot and the nautical mile");
        double groundMps = WindGradients.groundSpeed(mpm, tasMps, windMps, 0.0);
        sheet.step(
                "Ground speed: the horizontal part of the airspeed, and the wind",
                "GS",
                "(W + √((1 + G^2) · TAS^2 - G^2 · W^2)) / (1 + G^2)",
                groundMps,
                "m/s",
                Reading.knots(groundMps),
                "triangle of airspeed, wind and path");
        GeometricRate rate = ClimbGradient.rate(gradient, GroundSpeed.ofMetresPerSecond(groundMps));
        rateLines(sheet, rate);
        double airGradient = WindGradients.throughAir(mpm, tasMps, windMps, 0.0);
        sheet.step(
                "The gradient through the air that this is, which thrust and drag must give",
                "Gair",
                "ROC / √(TAS^2 - ROC^2)",
                airGradient,
                "m/m",
                Reading.percent(airGradient),
                "triangle of airspeed and rate");
        sheet.answer(
                Reading.percent(mpm)
                        + " over the ground takes "
                        + Reading.feetPerMinute(rate.inMetresPerSecond())
                        + " at a ground speed of "
                        + Reading.knots(groundMps)
                        + ", and "
                        + Reading.percent(airGradient)
                        + " through the air.");
        GeometricRate read = RoundedUp.of(rate, GeometricRate.ofFeetPerMinute(50));
        sheet.answer(
                "Rounded up to 50 ft/min, as an instrument is read: "
                        + Reading.feetPerMinute(read.inMetresPerSecond())
                        + ".");
        sheet.answer(
                "Percent times knots of ground speed is 1.25 % too little for feet per minute, on"
                        + " the unsafe side.");
        sheet.limit(
                "The rate is one in true height; the instrument shows less in warm air and more in"
                        + " cold air.");
        return sheet.working();
    }

    private static void rateLines(Sheet sheet, GeometricRate rate) {
        double mps = rate.inMetresPerSecond();
        sheet.step(
                "Rate of climb, in true height",
                "ROC",
                "G · GS",
                mps,
                "m/s",
                Reading.feetPerMinute(mps),
                GEOMETRY);
        sheet.step(
                "The same in feet per minute",
                "Rf",
                "ROC · 60 / 0.3048",
                rate.inFeetPerMinute(),
                "ft/min",
                Reading.feetPerMinute(mps),
                "definition of the foot");
    }

    /**
     * Shows whether a rate brings the aeroplane to a level by a point.
     *
     * <p>Symbols: H1, H2, d, GS, R, T given; k, G, Rreq, Gr, dneed, Hat, dH found.
     *
     * @param from pressure altitude now
     * @param level pressure altitude to be at over the point, above it
     * @param distance distance over the ground to the point
     * @param groundSpeed ground speed on the way
     * @param rate rate of climb on the instrument on the way, above 0
     * @param halfWay static air temperature half-way between the two altitudes
     * @return the working
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     */
    public static Working restriction(
            PressureAltitude from,
            PressureAltitude level,
            GroundDistance distance,
            GroundSpeed groundSpeed,
            PressureAltitudeRate rate,
            StaticAirTemperature halfWay) {
        return RestrictionLines.working(
                new RestrictionLines.Question(from, level, distance, groundSpeed, rate, halfWay));
    }

    /**
     * Shows the last part of a climb to a level: when the rate must be reduced, when the level-off
     * begins, and how long the last stretch takes.
     *
     * <p>Symbols: R, E, v, P given; L, dec, dn found, and then, where the rule makes the rate be
     * reduced, red, B and l, and t. Standard air, in which a foot of the altimeter is a foot.
     *
     * @param rate rate of arrival on the instrument, above 0
     * @param rule the rule for the last stretch
     * @param percent the lead: percent of the rate per minute [%], 0.1 to 200; 10 is the rule of
     *     thumb
     * @return the working
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range, or the
     *     lead would begin before the edge of the rule
     */
    public static Working levelOff(PressureAltitudeRate rate, LevelOffRule rule, double percent) {
        return LevelOffLines.working(rate, rule, percent);
    }
}
