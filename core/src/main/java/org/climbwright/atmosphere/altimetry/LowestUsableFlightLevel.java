package org.climbwright.atmosphere.altimetry;

import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.AltimeterSetting;

/**
 * The lowest flight level that stays clear of 18,000 ft on QNH, by the two tables in use where that
 * is the lowest altitude of standard setting.
 *
 * <p>Both are right, and they differ: the regulation goes by bands of half an inch of mercury and
 * steps of 500 ft, the manual by whole inches and 1,000 ft. Between two hundredths of an inch, as
 * they are reported, a setting counts as the lower.
 *
 * <p>Limits of use: the levels in use are those that the air traffic service assigns.
 */
@SuppressWarnings("ImmutableEnumChecker") // ModelRange is immutable
public enum LowestUsableFlightLevel {
    /**
     * The table of the regulation, from 26.92 inHg up.
     *
     * @source 14 CFR 91.121(b)
     */
    REGULATION(50, 26.92),

    /**
     * The coarser table of the manual, from 27.92 inHg up.
     *
     * @source FAA Aeronautical Information Manual, table 7-2-1 (editions of 2023)
     */
    AERONAUTICAL_INFORMATION_MANUAL(100, 27.92);

    private static final double LOWEST_FT = 18000.0;
    private static final long STANDARD_HUNDREDTHS = 2992;

    private final int bandHundredths;
    private final ModelRange range;

    LowestUsableFlightLevel(int bandHundredths, double lowestInchesOfMercury) {
        this.bandHundredths = bandHundredths;
        this.range =
                new ModelRange(
                        "altimeter setting", // its range in the unit of the table, for the reader
                        lowestInchesOfMercury,
                        32.49,
                        "inHg",
                        "the table ends there");
    }

    /**
     * Returns the lowest usable flight level.
     *
     * @param setting current reported altimeter setting
     * @return FL180 on 29.92 inHg or more, higher on less
     * @throws org.climbwright.quantity.OutsideModelException if the setting is below the table
     */
    public PressureAltitude at(AltimeterSetting setting) {
        return PressureAltitude.ofFeet(LOWEST_FT + raisedByFeet(setting));
    }

    private double raisedByFeet(AltimeterSetting setting) {
        double inches = setting.inInchesOfMercury();
        if (inches > range.lowest() - 0.01) {
            // farther below, a setting may round down to one that there is not
            inches = setting.roundedDownToHundredthOfInch().inInchesOfMercury();
        }
        long hundredths = Math.round(100.0 * range.check(inches));
        long below = Math.max(0, STANDARD_HUNDREDTHS - hundredths);
        long bands = (below + bandHundredths - 1) / bandHundredths;
        return bands * bandHundredths * 10.0; // a band of half an inch is 500 ft
    }

    /**
     * Returns by how much the lowest usable flight level is raised.
     *
     * <p>Limits of use: minimum altitudes are those that the aeronautical information and the air
     * traffic service give; terrain and cold air are not in this figure.
     *
     * @param setting current reported altimeter setting
     * @return 0 on 29.92 inHg or more; the same is added to minimum altitudes from 18,000 ft up
     * @throws org.climbwright.quantity.OutsideModelException if the setting is below the table
     * @source FAA Order JO 7110.65, table 4-5-3, for the adjustment of minimum altitudes (as quoted
     *     publicly)
     */
    public AltitudeChange adjustment(AltimeterSetting setting) {
        return AltitudeChange.ofFeet(raisedByFeet(setting));
    }
}
