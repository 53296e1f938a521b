package org.climbwright.performance;

import org.climbwright.airspeed.AirspeedConversion;

/**
 * Which speed a climb holds, in SI doubles: what Mach number that is at a level, and what the true
 * airspeed that changes on the way takes of the climb.
 */
public enum HeldSpeed {
    /** A calibrated airspeed, as on the airspeed indicator. */
    CALIBRATED_AIRSPEED,
    /** An equivalent airspeed: the dynamic pressure stays the same. */
    EQUIVALENT_AIRSPEED,
    /** A Mach number. */
    MACH,
    /** A true airspeed, or one that changes at a stated acceleration. */
    TRUE_AIRSPEED;

    private static final double HIGHEST_MACH = 1.0;

    /**
     * Tells whether a speed is one of a climb in some air.
     *
     * @param speed the speed held [m/s], or Mach number
     * @param pressurePa static pressure [Pa]
     * @param temperatureK static air temperature [K]
     * @return true if it is above 0 and at most Mach 1
     */
    public boolean covers(double speed, double pressurePa, double temperatureK) {
        if (!(speed > 0.0) || !isConvertible(speed, pressurePa, temperatureK)) {
            return false;
        }
        double mach = mach(speed, pressurePa, temperatureK);
        return mach > 0.0 && mach <= HIGHEST_MACH;
    }

    private boolean isConvertible(double speed, double pressurePa, double temperatureK) {
        return switch (this) {
            case CALIBRATED_AIRSPEED -> AirspeedConversion.coversCas(speed, pressurePa);
            case EQUIVALENT_AIRSPEED -> AirspeedConversion.coversEas(speed, pressurePa);
            case MACH -> AirspeedConversion.coversMach(speed);
            case TRUE_AIRSPEED -> AirspeedConversion.coversTas(speed, temperatureK);
        };
    }

    /**
     * Returns the Mach number.
     *
     * @param speed the speed held [m/s], or Mach number
     * @param pressurePa static pressure [Pa]
     * @param temperatureK static air temperature [K]
     * @return Mach number, 0 to 5
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy that of the conversion
     * @source {@link AirspeedConversion}
     */
    public double mach(double speed, double pressurePa, double temperatureK) {
        return switch (this) {
            case CALIBRATED_AIRSPEED -> AirspeedConversion.machFromCas(speed, pressurePa);
            case EQUIVALENT_AIRSPEED -> AirspeedConversion.machFromEas(speed, pressurePa);
            case MACH -> speed;
            case TRUE_AIRSPEED -> AirspeedConversion.machFromTas(speed, temperatureK);
        };
    }

    /**
     * Returns the speed of this kind that is a Mach number.
     *
     * @param mach Mach number, 0 to 5
     * @param pressurePa static pressure [Pa]
     * @param temperatureK static air temperature [K]
     * @return the speed [m/s], or the Mach number
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy that of the conversion
     * @source {@link AirspeedConversion}
     */
    public double fromMach(double mach, double pressurePa, double temperatureK) {
        return switch (this) {
            case CALIBRATED_AIRSPEED -> AirspeedConversion.casFromMach(mach, pressurePa);
            case EQUIVALENT_AIRSPEED -> AirspeedConversion.easFromMach(mach, pressurePa);
            case MACH -> mach;
            case TRUE_AIRSPEED -> AirspeedConversion.tasFromMach(mach, temperatureK);
        };
    }

    /**
     * Returns the acceleration factor of a climb that holds the speed.
     *
     * @param mach Mach number, 0 to 1
     * @param temperaturePerMetre change of temperature with geopotential altitude [K/m], -10 to 10
     * @param staticPerVirtual static over virtual temperature, 0.5 to 1
     * @return {@code (V / g0) dV/dH}; 0 for a true airspeed, whose acceleration is stated and not
     *     one of the altitude
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy that of {@link AccelerationFactor}
     * @source {@link AccelerationFactor}
     */
    public double accelerationFactor(
            double mach, double temperaturePerMetre, double staticPerVirtual) {
        return switch (this) {
            case CALIBRATED_AIRSPEED ->
                    AccelerationFactor.atConstantCas(mach, temperaturePerMetre, staticPerVirtual);
            case EQUIVALENT_AIRSPEED ->
                    AccelerationFactor.atConstantEas(mach, temperaturePerMetre, staticPerVirtual);
            case MACH -> AccelerationFactor.atConstantMach(mach, temperaturePerMetre);
            case TRUE_AIRSPEED -> 0.0;
        };
    }
}
