package org.climbwright.atmosphere;

import static org.climbwright.atmosphere.IcaoConstants.GAS_CONSTANT_J_PER_KG_K;
import static org.climbwright.atmosphere.StandardAirPolynomials.*;

/**
 * Standard air from -5 to 20 km, of {@code + - * /} and {@code fma} alone: the same to the last bit
 * on every Java. Higher up {@link UpperAirKernel} goes on.
 *
 * <p>A layer is measured from its top downwards: there the pressure is the least, so that all that
 * is added to it is positive and nothing cancels. The altitude of a pressure {@code p} goes by
 * {@code z = (p - c) / (p + c)}, with c a pressure in the middle of the layer: the temperature
 * follows the power a of the pressure, and that of {@code (1 + z) / (1 - z)} is {@code (1 + g) / (1
 * - g)} with {@code g = tanh(a atanh z)}, which is odd in z and needs few terms. The altitude of a
 * density goes the same way.
 *
 * <p>The forms without a branch are for loops over arrays, up to 20 km: they make the same
 * operations, and so give the same bits. Checks nothing.
 *
 * @source ICAO Doc 7488/3, the formulas of {@link StandardAir}
 */
final class StandardAirKernel {
    static final double TROPOPAUSE_M = 11000.0;
    static final double HIGHEST_M = 20000.0;

    /** Depth of the isothermal layer. */
    private static final double DEPTH_M = HIGHEST_M - TROPOPAUSE_M;

    private static final double TROPOPAUSE_K = 216.65;
    private static final double LAPSE_K_PER_M = 0.0065;

    /** As the layer above the tropopause has it: some ulp from the constant. */
    private static final double TROPOPAUSE_PA = pressureBelowTop(DEPTH_M);

    /** The altitude of the tropopause as each layer has it, some ulp from 11000 m. */
    private static final double FROM_PRESSURE_BELOW_M = troposphereFromPressure(TROPOSPHERE_TOP_PA);

    private static final double FROM_PRESSURE_ABOVE_M = tropopauseFromPressure(TROPOSPHERE_TOP_PA);
    private static final double FROM_DENSITY_BELOW_M =
            troposphereFromDensity(TROPOSPHERE_TOP_DENSITY);
    private static final double FROM_DENSITY_ABOVE_M =
            tropopauseFromDensity(TROPOSPHERE_TOP_DENSITY);

    private StandardAirKernel() {}

    static double temperature(double altitudeM) {
        if (altitudeM <= TROPOPAUSE_M) {
            return Math.fma(LAPSE_K_PER_M, TROPOPAUSE_M - altitudeM, TROPOPAUSE_K);
        }
        return altitudeM <= HIGHEST_M ? TROPOPAUSE_K : UpperAirKernel.temperature(altitudeM);
    }

    static double pressure(double altitudeM) {
        if (altitudeM <= TROPOPAUSE_M) {
            return tropospherePressure(altitudeM);
        }
        return altitudeM <= HIGHEST_M
                ? pressureBelowTop(HIGHEST_M - altitudeM)
                : UpperAirKernel.pressure(altitudeM);
    }

    static double density(double altitudeM) {
        if (altitudeM <= TROPOPAUSE_M) {
            return troposphereDensity(altitudeM);
        }
        return pressure(altitudeM) / (GAS_CONSTANT_J_PER_KG_K * temperature(altitudeM));
    }

    static double altitudeFromPressure(double pressurePa) {
        if (pressurePa >= TROPOSPHERE_TOP_PA) {
            return troposphereFromPressure(pressurePa);
        }
        return pressurePa >= TROPOPAUSE_TOP_PA
                ? FROM_PRESSURE_BELOW_M
                        + (tropopauseFromPressure(pressurePa) - FROM_PRESSURE_ABOVE_M)
                : UpperAirKernel.altitudeFromPressure(pressurePa);
    }

    static double altitudeFromDensity(double density) {
        if (density >= TROPOSPHERE_TOP_DENSITY) {
            return troposphereFromDensity(density);
        }
        return density >= TROPOPAUSE_TOP_DENSITY
                ? FROM_DENSITY_BELOW_M + (tropopauseFromDensity(density) - FROM_DENSITY_ABOVE_M)
                : UpperAirKernel.altitudeFromDensity(density);
    }

    /** The pressures at which the temperature profile bends [Pa], the highest first. */
    static double[] bendsPa() {
        return new double[] {
            TROPOSPHERE_TOP_PA,
            TROPOPAUSE_TOP_PA,
            LOWER_STRATOSPHERE_TOP_PA,
            UPPER_STRATOSPHERE_TOP_PA,
            STRATOPAUSE_TOP_PA,
            LOWER_MESOSPHERE_TOP_PA
        };
    }

    /** {@link #temperature} up to 20 km without a branch. */
    static double lowTemperature(double altitudeM) {
        return Math.fma(LAPSE_K_PER_M, positive(TROPOPAUSE_M - altitudeM), TROPOPAUSE_K);
    }

    /** {@link #pressure} up to 11 km. */
    static double tropospherePressure(double altitudeM) {
        return pressureBelowTropopause(TROPOPAUSE_M - altitudeM, TROPOPAUSE_PA);
    }

    /** {@link #density} up to 11 km. */
    static double troposphereDensity(double altitudeM) {
        return densityBelowTropopause(TROPOPAUSE_M - altitudeM, TROPOPAUSE_PA);
    }

    /** Of {@link #pressure} up to 20 km: above the tropopause; below it the pressure there. */
    static double lowPressureAboveTropopause(double altitudeM) {
        return pressureBelowTop(DEPTH_M - positive(altitudeM - TROPOPAUSE_M));
    }

    /**
     * {@link #pressure} up to 20 km without a branch.
     *
     * @param abovePa {@link #lowPressureAboveTropopause}
     */
    static double lowPressure(double altitudeM, double abovePa) {
        return pressureBelowTropopause(positive(TROPOPAUSE_M - altitudeM), abovePa);
    }

    /**
     * {@link #density} up to 20 km without a branch.
     *
     * @param abovePa {@link #lowPressureAboveTropopause}
     */
    static double lowDensity(double altitudeM, double abovePa) {
        return densityBelowTropopause(positive(TROPOPAUSE_M - altitudeM), abovePa);
    }

    /** Of {@link #altitudeFromPressure} up to 20 km: what is above the tropopause, or 0. */
    static double lowAltitudeAboveTropopauseFromPressure(double pressurePa) {
        return tropopauseFromPressure(Math.min(pressurePa, TROPOSPHERE_TOP_PA))
                - FROM_PRESSURE_ABOVE_M;
    }

    /**
     * {@link #altitudeFromPressure} up to 20 km without a branch.
     *
     * @param aboveM {@link #lowAltitudeAboveTropopauseFromPressure}
     */
    static double lowAltitudeFromPressure(double pressurePa, double aboveM) {
        return troposphereFromPressure(Math.max(pressurePa, TROPOSPHERE_TOP_PA)) + aboveM;
    }

    /** Of {@link #altitudeFromDensity} up to 20 km: what is above the tropopause, or 0. */
    static double lowAltitudeAboveTropopauseFromDensity(double density) {
        return tropopauseFromDensity(Math.min(density, TROPOSPHERE_TOP_DENSITY))
                - FROM_DENSITY_ABOVE_M;
    }

    /**
     * {@link #altitudeFromDensity} up to 20 km without a branch.
     *
     * @param aboveM {@link #lowAltitudeAboveTropopauseFromDensity}
     */
    static double lowAltitudeFromDensity(double density, double aboveM) {
        return troposphereFromDensity(Math.max(density, TROPOSPHERE_TOP_DENSITY)) + aboveM;
    }

    private static double pressureBelowTropopause(double depthM, double tropopausePa) {
        return gained(
                tropopausePa,
                depthM,
                TROPOSPHERE_GAIN_HEAD,
                troposphereGain(depthM - TROPOSPHERE_GAIN_CENTRE));
    }

    /**
     * Of a polynomial of its own: a quotient of two that fall does not keep neighbours in order.
     */
    private static double densityBelowTropopause(double depthM, double tropopausePa) {
        return gained(
                tropopausePa / (GAS_CONSTANT_J_PER_KG_K * TROPOPAUSE_K),
                depthM,
                TROPOSPHERE_DENSITY_GAIN_HEAD,
                troposphereDensityGain(depthM - TROPOSPHERE_DENSITY_GAIN_CENTRE));
    }

    private static double pressureBelowTop(double depthM) {
        return gained(
                TROPOPAUSE_TOP_PA,
                depthM,
                TROPOPAUSE_GAIN_HEAD,
                tropopauseGain(depthM - TROPOPAUSE_GAIN_CENTRE));
    }

    /** {@link #altitudeFromPressure} up to 11 km. */
    static double troposphereFromPressure(double pressurePa) {
        double z = offset(pressurePa, TROPOSPHERE_PRESSURE_CENTRE);
        return altitude(
                z,
                tropospherePressureBend(z * z),
                TROPOSPHERE_PRESSURE_POWER,
                TROPOSPHERE_PRESSURE_SPAN_M,
                TROPOSPHERE_PRESSURE_CENTRE_M);
    }

    private static double tropopauseFromPressure(double pressurePa) {
        double z = offset(pressurePa, TROPOPAUSE_PRESSURE_CENTRE);
        return isothermalAltitude(
                z, isothermalBend(z * z), TROPOPAUSE_PRESSURE_SPAN_M, TROPOPAUSE_PRESSURE_CENTRE_M);
    }

    /** {@link #altitudeFromDensity} up to 11 km. */
    static double troposphereFromDensity(double density) {
        double z = offset(density, TROPOSPHERE_DENSITY_CENTRE);
        return altitude(
                z,
                troposphereDensityBend(z * z),
                TROPOSPHERE_DENSITY_POWER,
                TROPOSPHERE_DENSITY_SPAN_M,
                TROPOSPHERE_DENSITY_CENTRE_M);
    }

    private static double tropopauseFromDensity(double density) {
        double z = offset(density, TROPOPAUSE_DENSITY_CENTRE);
        return isothermalAltitude(
                z, isothermalBend(z * z), TROPOPAUSE_DENSITY_SPAN_M, TROPOPAUSE_DENSITY_CENTRE_M);
    }

    /** What is above 0; not a max, whose rules for NaN and zeros cost a loop time. */
    private static double positive(double value) {
        return 0.5 * (value + Math.abs(value));
    }

    /**
     * What a pressure has grown to from that of the top: {@code topPa + depthM (head + rest)}, in
     * which the rounding error of the sum is carried on. So neighbouring altitudes stay in order.
     */
    static double gained(double topPa, double depthM, double head, double rest) {
        double gain = head + rest;
        double lost = (head - gain) + rest;
        return Math.fma(depthM, gain, Math.fma(depthM, lost, topPa));
    }

    /** {@code z = (value - centre) / (value + centre)}, of steps that keep order each by itself. */
    static double offset(double value, double centre) {
        return Math.fma(-2.0 * centre, 1.0 / (value + centre), 1.0);
    }

    /**
     * {@code centreM + spanM u / (1 - power u)} with {@code u = z + z³ bend}: first what is small,
     * so that neighbours stay in order.
     */
    static double altitude(double z, double bend, double power, double spanM, double centreM) {
        double cube = z * (z * z);
        double u = Math.fma(cube, bend, z);
        double g = power * u;
        double beyondLinear = Math.fma(cube, bend, g * u / (1.0 - g));
        return centreM + Math.fma(spanM, z, spanM * beyondLinear);
    }

    /** The same where the temperature does not follow the pressure: {@code centreM + spanM u}. */
    static double isothermalAltitude(double z, double bend, double spanM, double centreM) {
        return centreM + Math.fma(spanM, z, spanM * (z * (z * z) * bend));
    }
}
