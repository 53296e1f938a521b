package org.climbwright.working;

import org.climbwright.atmosphere.StandardAir;
import org.climbwright.cabin.CabinPressure;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.DifferentialPressure;

/**
 * Workings of cabin pressure.
 *
 * <p>Limits of use: for study. What a cabin is to be, the flight manual and its schedule say; an
 * unexpected cabin altitude is a matter for the checklist.
 */
public final class CabinWorking {
    private CabinWorking() {}

    /**
     * Shows which cabin altitude a differential pressure makes.
     *
     * <p>Symbols: dp, Hp given; p, Hc, pc found.
     *
     * @param differential differential pressure, positive where the cabin has more
     * @param aeroplane pressure altitude of the aeroplane, -5,000 to 20,000 m
     * @return the working
     * @throws org.climbwright.quantity.OutsideModelException if an altitude is outside -5,000 to
     *     20,000 m
     */
    public static Working altitudeFromDifferential(
            DifferentialPressure differential, PressureAltitude aeroplane) {
        double differentialPa = differential.inPascals();
        double altitudeM = aeroplane.inMetres();
        double cabinM = CabinPressure.cabinAltitude(differentialPa, altitudeM);
        Sheet sheet =
                new Sheet(
                        "Which cabin altitude does "
                                + Reading.poundsPerSquareInch(differentialPa)
                                + " make at "
                                + Reading.feet(altitudeM)
                                + "?");
        sheet.given(
                "differential pressure",
                "dp",
                differentialPa,
                "Pa",
                Reading.poundsPerSquareInch(differentialPa),
                "cabin less outside");
        sheet.given(
                "pressure altitude of the aeroplane",
                "Hp",
                altitudeM,
                "m",
                Reading.feet(altitudeM),
                "the 1013.25 hPa level");
        StandardAirLines.pressure(sheet, "Static pressure outside", "p", "Hp", altitudeM);
        StandardAirLines.altitude(
                sheet,
                "Cabin altitude: where standard air has the pressure outside and the differential"
                        + " together",
                "Hc",
                "(p + dp)",
                cabinM);
        StandardAirLines.pressure(
                sheet,
                "And back: the pressure in the cabin, to compare with p + dp",
                "pc",
                "Hc",
                cabinM);
        sheet.answer(
                "The cabin is at "
                        + Reading.feet(cabinM)
                        + ", with "
                        + Reading.hectopascals(StandardAir.pressureFromAltitude(cabinM))
                        + " in it and "
                        + Reading.hectopascals(StandardAir.pressureFromAltitude(altitudeM))
                        + " outside.");
        sheet.limit(
                "Both altitudes count from the 1013.25 hPa level, and standard air is meant for"
                        + " both.");
        return sheet.working();
    }
}
