package org.climbwright.testing;

import org.climbwright.atmosphere.Geopotential;
import org.climbwright.atmosphere.StandardAir;

/**
 * Our standard air told with the gas constant of the US Standard Atmosphere 1976, whose layers are
 * the same: in {@code ln(p / p0) = -g0 / R × integral of dH / T} only R differs, so that {@code p /
 * p0} becomes its own power of R / R'. A table printed with the other constant can then be held to
 * its last digit, without an allowance.
 *
 * <p>Source of the constant: 8314.32 J/(kmol·K) over 28.9644 kg/kmol, NASA-TM-X-74335, tables 2 to
 * 4.
 */
public final class Us76 {
    /** R of ICAO Doc 7488/3 over R of the US Standard Atmosphere 1976. */
    private static final double ICAO_OVER_US = 287.05287 / (8314.32 / 28.9644);

    private static final double P0 = 101325.0;

    private Us76() {}

    /** The pressure [Pa] at a geopotential altitude [m]. */
    public static double pressure(double altitudeM) {
        return P0 * Math.pow(StandardAir.pressureFromAltitude(altitudeM) / P0, ICAO_OVER_US);
    }

    /** The density [kg/m³] at a geopotential altitude [m]. */
    public static double density(double altitudeM) {
        return StandardAir.densityFromAltitude(altitudeM)
                * (pressure(altitudeM) / StandardAir.pressureFromAltitude(altitudeM))
                * ICAO_OVER_US;
    }

    /** The speed of sound [m/s] where ours is another by its gas constant alone. */
    public static double speedOfSound(double icaoMps) {
        return icaoMps / Math.sqrt(ICAO_OVER_US);
    }

    /** The geopotential altitude [m] of a geometric one [m]: the same in both. */
    public static double geopotential(double geometricM) {
        return Geopotential.geopotentialFromGeometric(geometricM);
    }
}
