package org.climbwright.sounding;

import org.climbwright.atmosphere.MoistAir;

/** What a level can hold, whatever format it came in; a number that cannot be becomes NaN. */
final class LevelCheck {
    private static final double KELVIN_AT_ZERO_CELSIUS = 273.15;
    private static final double HIGHEST_PRESSURE_PA = 120000.0;
    private static final double HIGHEST_WIND_MPS = 200.0;

    private final Refusal refusal;

    LevelCheck(Refusal refusal) {
        this.refusal = refusal;
    }

    /** Takes note of a number that was refused. */
    interface Refusal {
        void note(String field, double value, String reason);
    }

    double pressure(String field, double pressurePa) {
        return inRange(field, pressurePa, Double.MIN_VALUE, HIGHEST_PRESSURE_PA, "pressure [Pa]");
    }

    double height(String field, double heightM) {
        return inRange(field, heightM, -1000.0, 80000.0, "height [m]");
    }

    double temperature(String field, double celsius) {
        double kelvin = celsius + KELVIN_AT_ZERO_CELSIUS;
        if (Double.isNaN(kelvin) || MoistAir.coversTemperature(kelvin)) {
            return kelvin;
        }
        refusal.note(field, celsius, "no temperature of the free air [°C]");
        return Double.NaN;
    }

    double dewPoint(String field, double dewPointK, double temperatureK) {
        if (dewPointK > temperatureK) {
            refusal.note(
                    field,
                    dewPointK - KELVIN_AT_ZERO_CELSIUS,
                    "a dew point above the temperature [°C]");
            return Double.NaN;
        }
        if (!Double.isNaN(dewPointK) && !MoistAir.coversTemperature(dewPointK)) {
            refusal.note(field, dewPointK - KELVIN_AT_ZERO_CELSIUS, "no dew point of air [°C]");
            return Double.NaN;
        }
        return dewPointK;
    }

    double direction(String field, double degrees) {
        return inRange(field, degrees, 0.0, 360.0, "direction [deg]");
    }

    double speed(String field, double mps) {
        return inRange(field, mps, 0.0, HIGHEST_WIND_MPS, "wind speed [m/s]");
    }

    private double inRange(String field, double value, double lowest, double highest, String term) {
        if (Double.isNaN(value) || (value >= lowest && value <= highest)) {
            return value;
        }
        refusal.note(field, value, "not a possible " + term);
        return Double.NaN;
    }
}
