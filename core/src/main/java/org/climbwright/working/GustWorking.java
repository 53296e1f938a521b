package org.climbwright.working;

import org.climbwright.atmosphere.AirState;
import org.climbwright.quantity.speed.EquivalentAirspeed;
import org.climbwright.turbulence.GustLoad;
import org.climbwright.turbulence.GustVelocity;

/**
 * Workings of gusts.
 *
 * <p>Limits of use: for study; a rigid aeroplane, a static gust, a first estimate only. The speed
 * for rough air is that of the flight manual.
 */
public final class GustWorking {
    private static final String RULE =
            "14 CFR 23.341(c), amendment 23-48, since removed, from memory";

    private GustWorking() {}

    /**
     * Shows which load factor one gust makes at two speeds.
     *
     * <p>Symbols: WS, c, a, rho, U, V1, V2 given; mu, Kg, dn1, dn2 found.
     *
     * @param wing wing loading, chord and lift slope
     * @param gust the gust
     * @param air the air at the level
     * @param oneSpeed an equivalent airspeed, 0 to 1,000 m/s
     * @param anotherSpeed another
     * @return the working
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @source {@link GustLoad}
     */
    public static Working atTwoSpeeds(
            GustLoad wing,
            GustVelocity gust,
            AirState air,
            EquivalentAirspeed oneSpeed,
            EquivalentAirspeed anotherSpeed) {
        Sheet sheet = new Sheet("What does one updraft do to the load factor at two speeds?");
        given(sheet, wing, gust, air);
        speed(sheet, "one", "V1", oneSpeed);
        speed(sheet, "another", "V2", anotherSpeed);
        double massRatio = wing.massRatio(air);
        sheet.step(
                "Mass ratio: the mass of the aeroplane over that of the air it works on",
                "mu",
                "2 · WS / (rho · c · a · 9.80665)",
                massRatio,
                "",
                Reading.number(massRatio),
                RULE);
        double alleviation = wing.alleviationFactor(air);
        sheet.step(
                "Alleviation: the share of a sharp gust that the aeroplane feels",
                "Kg",
                "0.88 · mu / (5.3 + mu)",
                alleviation,
                "",
                Reading.number(alleviation),
                RULE);
        double one = wing.increment(gust, oneSpeed, air);
        double another = wing.increment(gust, anotherSpeed, air);
        increment(sheet, "one", "dn1", "V1", one);
        increment(sheet, "the other", "dn2", "V2", another);
        answer(sheet, oneSpeed, one);
        answer(sheet, anotherSpeed, another);
        sheet.answer(
                "The increment grows in proportion to the equivalent airspeed, as its formula"
                        + " shows; a lighter aeroplane has less W/S and gets more.");
        sheet.limit(
                "A static gust on a rigid aeroplane; no limit of lift is in it: a slow aeroplane"
                        + " may stall instead. A speed from here is not a rough-air speed.");
        return sheet.working();
    }

    private static void given(Sheet sheet, GustLoad wing, GustVelocity gust, AirState air) {
        double loadingPa = wing.wingLoadingPa();
        sheet.given(
                "wing loading",
                "WS",
                loadingPa,
                "N/m²",
                FormulaText.rounded(loadingPa) + " N/m²",
                "weight over wing area");
        sheet.given(
                "mean geometric chord",
                "c",
                wing.chordM(),
                "m",
                FormulaText.rounded(wing.chordM()) + " m",
                "");
        double slope = wing.liftSlopePerRad();
        sheet.given("slope of the lift curve", "a", slope, "1/rad", slope + " per radian", "");
        double density = air.densityKgPerM3();
        sheet.given(
                "density of the air",
                "rho",
                density,
                "kg/m³",
                Reading.number(density) + " kg/m³",
                "the air given, at the level");
        double gustMps = gust.inMetresPerSecond();
        sheet.given(
                "gust velocity",
                "U",
                gustMps,
                "m/s",
                Reading.feetPerSecond(gustMps),
                "equivalent airspeed; " + gust.basis());
    }

    private static void speed(Sheet sheet, String which, String symbol, EquivalentAirspeed speed) {
        double easMps = speed.inMetresPerSecond();
        sheet.given(
                which + " equivalent airspeed", symbol, easMps, "m/s", Reading.knots(easMps), "");
    }

    private static void increment(
            Sheet sheet, String which, String symbol, String speed, double increment) {
        sheet.step(
                "What the gust adds to the load factor at "
                        + which
                        + " speed; the density is that at sea level, since speeds are equivalent",
                symbol,
                "Kg · 101325 / (287.05287 · 288.15) · " + speed + " · U · a / (2 · WS)",
                increment,
                "",
                Reading.loadFactor(increment),
                "NACA Report 1206 (1954), in SI");
    }

    private static void answer(Sheet sheet, EquivalentAirspeed speed, double increment) {
        sheet.answer(
                "At "
                        + Reading.knots(speed.inMetresPerSecond())
                        + " it adds "
                        + Reading.loadFactor(increment)
                        + " to the 1 g of level flight, and as a downdraft takes it off.");
    }
}
