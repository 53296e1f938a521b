package org.climbwright.examples.benchmark;

import static org.climbwright.atmosphere.IcaoConstants.EARTH_RADIUS_M;
import static org.climbwright.atmosphere.IcaoConstants.GAS_CONSTANT_J_PER_KG_K;
import static org.climbwright.atmosphere.IcaoConstants.GRAVITY_MPS2;
import static org.climbwright.atmosphere.IcaoConstants.SEA_LEVEL_DENSITY_KG_PER_M3;
import static org.climbwright.atmosphere.IcaoConstants.SEA_LEVEL_PRESSURE_PA;
import static org.climbwright.atmosphere.IcaoConstants.SEA_LEVEL_SPEED_OF_SOUND_MPS;
import static org.climbwright.atmosphere.IcaoConstants.SEA_LEVEL_TEMPERATURE_K;

/**
 * {@link ByHand} word for word, with {@link StrictMath}: what it costs by hand to have the same
 * figures on every machine.
 */
final class ByHandStrictly {
    private static final double LAPSE = 0.0065;
    private static final double TROPOPAUSE_M = 11000.0;
    private static final double TROPOPAUSE_K = 216.65;

    /** 5.25588. */
    private static final double POWER = GRAVITY_MPS2 / (GAS_CONSTANT_J_PER_KG_K * LAPSE);

    private static final double SCALE_HEIGHT_M =
            GAS_CONSTANT_J_PER_KG_K * TROPOPAUSE_K / GRAVITY_MPS2;

    private static final double TROPOPAUSE_PA =
            SEA_LEVEL_PRESSURE_PA * StrictMath.pow(TROPOPAUSE_K / SEA_LEVEL_TEMPERATURE_K, POWER);

    private static final double TROPOPAUSE_KG_PER_M3 =
            TROPOPAUSE_PA / (GAS_CONSTANT_J_PER_KG_K * TROPOPAUSE_K);

    /** 0.88128485, to the last digit. */
    private static final double PITOT =
            1.0 / StrictMath.sqrt(StrictMath.pow(1.2, 3.5) * StrictMath.pow(6.0 / 7.0, 2.5));

    private ByHandStrictly() {}

    static double temperature(double altitude) {
        return altitude < TROPOPAUSE_M ? SEA_LEVEL_TEMPERATURE_K - LAPSE * altitude : TROPOPAUSE_K;
    }

    static double pressure(double altitude) {
        return altitude < TROPOPAUSE_M
                ? SEA_LEVEL_PRESSURE_PA
                        * StrictMath.pow(1.0 - LAPSE * altitude / SEA_LEVEL_TEMPERATURE_K, POWER)
                : TROPOPAUSE_PA * StrictMath.exp(-(altitude - TROPOPAUSE_M) / SCALE_HEIGHT_M);
    }

    static double density(double pressure, double temperature) {
        return pressure / (GAS_CONSTANT_J_PER_KG_K * temperature);
    }

    static double speedOfSound(double temperature) {
        return StrictMath.sqrt(1.4 * GAS_CONSTANT_J_PER_KG_K * temperature);
    }

    static double altitudeOfPressure(double pressure) {
        return pressure > TROPOPAUSE_PA
                ? SEA_LEVEL_TEMPERATURE_K
                        / LAPSE
                        * (1.0 - StrictMath.pow(pressure / SEA_LEVEL_PRESSURE_PA, 1.0 / POWER))
                : TROPOPAUSE_M - SCALE_HEIGHT_M * StrictMath.log(pressure / TROPOPAUSE_PA);
    }

    static double altitudeOfDensity(double density) {
        return density > TROPOPAUSE_KG_PER_M3
                ? SEA_LEVEL_TEMPERATURE_K
                        / LAPSE
                        * (1.0
                                - StrictMath.pow(
                                        density / SEA_LEVEL_DENSITY_KG_PER_M3, 1.0 / (POWER - 1.0)))
                : TROPOPAUSE_M - SCALE_HEIGHT_M * StrictMath.log(density / TROPOPAUSE_KG_PER_M3);
    }

    static double machOfCas(double cas, double pressure) {
        double square = cas / SEA_LEVEL_SPEED_OF_SOUND_MPS * (cas / SEA_LEVEL_SPEED_OF_SOUND_MPS);
        double impact = StrictMath.pow(1.0 + 0.2 * square, 3.5) - 1.0;
        double ratio = SEA_LEVEL_PRESSURE_PA / pressure * impact + 1.0;
        return StrictMath.sqrt(5.0 * (StrictMath.pow(ratio, 2.0 / 7.0) - 1.0));
    }

    static double casOfMach(double mach, double pressure) {
        double impact = StrictMath.pow(1.0 + 0.2 * mach * mach, 3.5) - 1.0;
        double ratio = pressure / SEA_LEVEL_PRESSURE_PA * impact + 1.0;
        return SEA_LEVEL_SPEED_OF_SOUND_MPS
                * StrictMath.sqrt(5.0 * (StrictMath.pow(ratio, 2.0 / 7.0) - 1.0));
    }

    static double easOfMach(double mach, double pressure) {
        return mach
                * SEA_LEVEL_SPEED_OF_SOUND_MPS
                * StrictMath.sqrt(pressure / SEA_LEVEL_PRESSURE_PA);
    }

    static double tasOfMach(double mach, double temperature) {
        return mach * speedOfSound(temperature);
    }

    static double totalTemperature(double mach, double temperature) {
        return temperature * (1.0 + 0.2 * mach * mach);
    }

    /** Dry air, the pressure altitude taken for the altitude. */
    static double geometricRate(double rate, double altitude, double temperature) {
        double geometric = EARTH_RADIUS_M * altitude / (EARTH_RADIUS_M - altitude);
        double stretch = (EARTH_RADIUS_M + geometric) / EARTH_RADIUS_M;
        return rate * temperature / temperature(altitude) * stretch * stretch;
    }

    static double gradient(double tas, double geometricRate) {
        return geometricRate / StrictMath.sqrt(tas * tas - geometricRate * geometricRate);
    }

    /** Beyond Mach 1: Rayleigh's formula, solved by putting each answer in again. */
    static double machOfPitot(double impactPressure, double pressure) {
        double total = impactPressure / pressure + 1.0;
        double mach = 1.5;
        double change = 1.0;
        while (change >= 1e-12) {
            double next =
                    PITOT
                            * StrictMath.sqrt(
                                    total * StrictMath.pow(1.0 - 1.0 / (7.0 * mach * mach), 2.5));
            change = Math.abs(next - mach);
            mach = next;
        }
        return mach;
    }
}
