package org.climbwright.atmosphere;

import static org.climbwright.atmosphere.StandardAirKernel.altitude;
import static org.climbwright.atmosphere.StandardAirKernel.gained;
import static org.climbwright.atmosphere.StandardAirKernel.isothermalAltitude;
import static org.climbwright.atmosphere.StandardAirKernel.offset;
import static org.climbwright.atmosphere.StandardAirPolynomials.*;

/**
 * Standard air from 20 to 80 km, where no loop needs to be fast: {@link StandardAirKernel} for the
 * layers above its own.
 *
 * @source ICAO Doc 7488/3, the formulas of {@link StandardAir}
 */
final class UpperAirKernel {
    private UpperAirKernel() {}

    static double temperature(double altitudeM) {
        if (altitudeM <= 32000.0) {
            return Math.fma(-0.001, 32000.0 - altitudeM, 228.65);
        }
        if (altitudeM <= 47000.0) {
            return Math.fma(-0.0028, 47000.0 - altitudeM, 270.65);
        }
        if (altitudeM <= 51000.0) {
            return 270.65;
        }
        return altitudeM <= 71000.0
                ? Math.fma(0.0028, 71000.0 - altitudeM, 214.65)
                : Math.fma(0.002, 80000.0 - altitudeM, 196.65);
    }

    static double pressure(double altitudeM) {
        if (altitudeM <= 32000.0) {
            double depth = 32000.0 - altitudeM;
            return gained(
                    LOWER_STRATOSPHERE_TOP_PA,
                    depth,
                    LOWER_STRATOSPHERE_GAIN_HEAD,
                    lowerStratosphereGain(depth - LOWER_STRATOSPHERE_GAIN_CENTRE));
        }
        if (altitudeM <= 47000.0) {
            double depth = 47000.0 - altitudeM;
            return gained(
                    UPPER_STRATOSPHERE_TOP_PA,
                    depth,
                    UPPER_STRATOSPHERE_GAIN_HEAD,
                    upperStratosphereGain(depth - UPPER_STRATOSPHERE_GAIN_CENTRE));
        }
        if (altitudeM <= 51000.0) {
            double depth = 51000.0 - altitudeM;
            return gained(
                    STRATOPAUSE_TOP_PA,
                    depth,
                    STRATOPAUSE_GAIN_HEAD,
                    stratopauseGain(depth - STRATOPAUSE_GAIN_CENTRE));
        }
        if (altitudeM <= 71000.0) {
            double depth = 71000.0 - altitudeM;
            return gained(
                    LOWER_MESOSPHERE_TOP_PA,
                    depth,
                    LOWER_MESOSPHERE_GAIN_HEAD,
                    lowerMesosphereGain(depth - LOWER_MESOSPHERE_GAIN_CENTRE));
        }
        double depth = 80000.0 - altitudeM;
        return gained(
                UPPER_MESOSPHERE_TOP_PA,
                depth,
                UPPER_MESOSPHERE_GAIN_HEAD,
                upperMesosphereGain(depth - UPPER_MESOSPHERE_GAIN_CENTRE));
    }

    static double altitudeFromPressure(double pressurePa) {
        if (pressurePa >= LOWER_STRATOSPHERE_TOP_PA) {
            double z = offset(pressurePa, LOWER_STRATOSPHERE_PRESSURE_CENTRE);
            return altitude(
                    z,
                    lowerStratospherePressureBend(z * z),
                    LOWER_STRATOSPHERE_PRESSURE_POWER,
                    LOWER_STRATOSPHERE_PRESSURE_SPAN_M,
                    LOWER_STRATOSPHERE_PRESSURE_CENTRE_M);
        }
        if (pressurePa >= UPPER_STRATOSPHERE_TOP_PA) {
            double z = offset(pressurePa, UPPER_STRATOSPHERE_PRESSURE_CENTRE);
            return altitude(
                    z,
                    upperStratospherePressureBend(z * z),
                    UPPER_STRATOSPHERE_PRESSURE_POWER,
                    UPPER_STRATOSPHERE_PRESSURE_SPAN_M,
                    UPPER_STRATOSPHERE_PRESSURE_CENTRE_M);
        }
        if (pressurePa >= STRATOPAUSE_TOP_PA) {
            double z = offset(pressurePa, STRATOPAUSE_PRESSURE_CENTRE);
            return isothermalAltitude(
                    z,
                    isothermalBend(z * z),
                    STRATOPAUSE_PRESSURE_SPAN_M,
                    STRATOPAUSE_PRESSURE_CENTRE_M);
        }
        if (pressurePa >= LOWER_MESOSPHERE_TOP_PA) {
            double z = offset(pressurePa, LOWER_MESOSPHERE_PRESSURE_CENTRE);
            return altitude(
                    z,
                    lowerMesospherePressureBend(z * z),
                    LOWER_MESOSPHERE_PRESSURE_POWER,
                    LOWER_MESOSPHERE_PRESSURE_SPAN_M,
                    LOWER_MESOSPHERE_PRESSURE_CENTRE_M);
        }
        double z = offset(pressurePa, UPPER_MESOSPHERE_PRESSURE_CENTRE);
        return altitude(
                z,
                upperMesospherePressureBend(z * z),
                UPPER_MESOSPHERE_PRESSURE_POWER,
                UPPER_MESOSPHERE_PRESSURE_SPAN_M,
                UPPER_MESOSPHERE_PRESSURE_CENTRE_M);
    }

    static double altitudeFromDensity(double density) {
        if (density >= LOWER_STRATOSPHERE_TOP_DENSITY) {
            double z = offset(density, LOWER_STRATOSPHERE_DENSITY_CENTRE);
            return altitude(
                    z,
                    lowerStratosphereDensityBend(z * z),
                    LOWER_STRATOSPHERE_DENSITY_POWER,
                    LOWER_STRATOSPHERE_DENSITY_SPAN_M,
                    LOWER_STRATOSPHERE_DENSITY_CENTRE_M);
        }
        if (density >= UPPER_STRATOSPHERE_TOP_DENSITY) {
            double z = offset(density, UPPER_STRATOSPHERE_DENSITY_CENTRE);
            return altitude(
                    z,
                    upperStratosphereDensityBend(z * z),
                    UPPER_STRATOSPHERE_DENSITY_POWER,
                    UPPER_STRATOSPHERE_DENSITY_SPAN_M,
                    UPPER_STRATOSPHERE_DENSITY_CENTRE_M);
        }
        if (density >= STRATOPAUSE_TOP_DENSITY) {
            double z = offset(density, STRATOPAUSE_DENSITY_CENTRE);
            return isothermalAltitude(
                    z,
                    isothermalBend(z * z),
                    STRATOPAUSE_DENSITY_SPAN_M,
                    STRATOPAUSE_DENSITY_CENTRE_M);
        }
        if (density >= LOWER_MESOSPHERE_TOP_DENSITY) {
            double z = offset(density, LOWER_MESOSPHERE_DENSITY_CENTRE);
            return altitude(
                    z,
                    lowerMesosphereDensityBend(z * z),
                    LOWER_MESOSPHERE_DENSITY_POWER,
                    LOWER_MESOSPHERE_DENSITY_SPAN_M,
                    LOWER_MESOSPHERE_DENSITY_CENTRE_M);
        }
        double z = offset(density, UPPER_MESOSPHERE_DENSITY_CENTRE);
        return altitude(
                z,
                upperMesosphereDensityBend(z * z),
                UPPER_MESOSPHERE_DENSITY_POWER,
                UPPER_MESOSPHERE_DENSITY_SPAN_M,
                UPPER_MESOSPHERE_DENSITY_CENTRE_M);
    }
}
