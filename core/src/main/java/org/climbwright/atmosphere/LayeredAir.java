package org.climbwright.atmosphere;

import static org.climbwright.atmosphere.IcaoConstants.GAS_CONSTANT_J_PER_KG_K;
import static org.climbwright.atmosphere.IcaoConstants.GRAVITY_MPS2;
import static org.climbwright.atmosphere.IcaoConstants.SEA_LEVEL_PRESSURE_PA;
import static org.climbwright.atmosphere.IcaoConstants.SEA_LEVEL_TEMPERATURE_K;

import java.util.Arrays;
import org.climbwright.quantity.ModelRange;

/**
 * Air with the layers of the standard atmosphere: in each the temperature is linear in geopotential
 * altitude. The standard atmosphere itself, or one that is warmer by the same amount at every
 * altitude.
 *
 * <p>Checks nothing: whoever asks keeps altitudes from -5 to 80 km.
 */
final class LayeredAir {
    static final double LOWEST_M = -5000.0;
    static final double HIGHEST_M = 80000.0;

    static final ModelRange ALTITUDE =
            new ModelRange(
                    "geopotential altitude",
                    LOWEST_M,
                    HIGHEST_M,
                    "m",
                    "the layers of the standard atmosphere are defined no further here");

    /** Base altitude of each layer [m]; the lowest layer also goes down to -5 km. */
    private static final double[] BASE_M = {0, 11000, 20000, 32000, 47000, 51000, 71000};

    /** Lapse of each layer [K/m], positive where it warms upwards. */
    private static final double[] LAPSE_K_PER_M = {-0.0065, 0, 0.001, 0.0028, 0, -0.0028, -0.002};

    private static final int TOP_LAYER = BASE_M.length - 1;

    private final double[] baseTemperatureK = new double[BASE_M.length];
    private final double[] basePressurePa = new double[BASE_M.length];
    private final double[] baseDensity = new double[BASE_M.length];

    private LayeredAir(double deviationK, double seaLevelPressurePa) {
        baseTemperatureK[0] = SEA_LEVEL_TEMPERATURE_K + deviationK;
        basePressurePa[0] = seaLevelPressurePa;
        baseDensity[0] = density(0, 0.0);
        for (int layer = 1; layer <= TOP_LAYER; layer++) {
            // each base from the layer below, so that layers join to the last bit
            baseTemperatureK[layer] = temperature(layer - 1, BASE_M[layer]);
            basePressurePa[layer] = pressure(layer - 1, BASE_M[layer]);
            baseDensity[layer] = density(layer - 1, BASE_M[layer]);
        }
    }

    /** Air that is so much warmer at every altitude, and has a pressure at some altitude. */
    static LayeredAir warmerBy(double deviationK, double pressurePa, double altitudeM) {
        LayeredAir unscaled = new LayeredAir(deviationK, SEA_LEVEL_PRESSURE_PA);
        // pressures of the same temperatures are proportional
        double scale = pressurePa / unscaled.pressure(altitudeM);
        return new LayeredAir(deviationK, SEA_LEVEL_PRESSURE_PA * scale);
    }

    double temperature(double altitudeM) {
        return temperature(layerOfAltitude(altitudeM), altitudeM);
    }

    double pressure(double altitudeM) {
        return pressure(layerOfAltitude(altitudeM), altitudeM);
    }

    double density(double altitudeM) {
        return density(layerOfAltitude(altitudeM), altitudeM);
    }

    double altitudeFromPressure(double pressurePa) {
        int layer = TOP_LAYER;
        while (layer > 0 && pressurePa > basePressurePa[layer]) {
            layer--;
        }
        double power = -GAS_CONSTANT_J_PER_KG_K * LAPSE_K_PER_M[layer] / GRAVITY_MPS2;
        return altitude(layer, pressurePa / basePressurePa[layer], power);
    }

    double altitudeFromDensity(double densityKgPerM3) {
        int layer = TOP_LAYER;
        while (layer > 0 && densityKgPerM3 > baseDensity[layer]) {
            layer--;
        }
        double lapse = LAPSE_K_PER_M[layer];
        double power =
                -GAS_CONSTANT_J_PER_KG_K * lapse / (GRAVITY_MPS2 + GAS_CONSTANT_J_PER_KG_K * lapse);
        return altitude(layer, densityKgPerM3 / baseDensity[layer], power);
    }

    /** The pressures at which the temperature profile bends [Pa], the highest first. */
    double[] bendsPa() {
        return Arrays.copyOfRange(basePressurePa, 1, basePressurePa.length);
    }

    private static int layerOfAltitude(double altitudeM) {
        int layer = TOP_LAYER;
        while (layer > 0 && altitudeM < BASE_M[layer]) {
            layer--;
        }
        return layer;
    }

    private double temperature(int layer, double altitudeM) {
        return baseTemperatureK[layer] + LAPSE_K_PER_M[layer] * (altitudeM - BASE_M[layer]);
    }

    private double pressure(int layer, double altitudeM) {
        double lapse = LAPSE_K_PER_M[layer];
        double above = altitudeM - BASE_M[layer];
        double base = baseTemperatureK[layer];
        if (lapse == 0.0) {
            double scaleHeight = GAS_CONSTANT_J_PER_KG_K * base / GRAVITY_MPS2;
            return basePressurePa[layer] * StrictMath.exp(-above / scaleHeight);
        }
        double power = -GRAVITY_MPS2 / (GAS_CONSTANT_J_PER_KG_K * lapse);
        return basePressurePa[layer] * StrictMath.pow(1.0 + lapse * above / base, power);
    }

    private double density(int layer, double altitudeM) {
        return pressure(layer, altitudeM)
                / (GAS_CONSTANT_J_PER_KG_K * temperature(layer, altitudeM));
    }

    /** The altitude in a layer where pressure or density is a ratio of its value at the base. */
    private double altitude(int layer, double ratio, double power) {
        double base = baseTemperatureK[layer];
        double logarithm = StrictMath.log(ratio);
        double lapse = LAPSE_K_PER_M[layer];
        if (lapse == 0.0) {
            return BASE_M[layer] - GAS_CONSTANT_J_PER_KG_K * base / GRAVITY_MPS2 * logarithm;
        }
        return BASE_M[layer] + base / lapse * StrictMath.expm1(power * logarithm);
    }
}
