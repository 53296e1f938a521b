package org.climbwright.icing.potential;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.MoistAir;
import org.climbwright.quantity.ModelRange;

/**
 * Air of a few levels, temperature and dew point straight between them in altitude and in ln p
 * alike: pressure falls by e every 8,000 m. A dew point of NaN is not known, one of -273.15 °C is
 * dry air.
 */
final class ProfileAir implements Atmosphere {
    private static final double SEA_LEVEL_PA = 101325.0;
    private static final double SCALE_M = 8000.0;

    private final List<Double> altitudesM = new ArrayList<>();
    private final List<Double> celsius = new ArrayList<>();
    private final List<Double> dewPointsC = new ArrayList<>();

    /** Air of unknown humidity. */
    ProfileAir with(double altitudeM, double temperatureC) {
        return with(altitudeM, temperatureC, Double.NaN);
    }

    ProfileAir with(double altitudeM, double temperatureC, double dewPointC) {
        altitudesM.add(altitudeM);
        celsius.add(temperatureC);
        dewPointsC.add(dewPointC);
        return this;
    }

    static double altitude(double pressurePa) {
        return -SCALE_M * StrictMath.log(pressurePa / SEA_LEVEL_PA);
    }

    static double pressure(double altitudeM) {
        return SEA_LEVEL_PA * StrictMath.exp(-altitudeM / SCALE_M);
    }

    @Override
    public ModelRange range() {
        return new ModelRange(
                "static pressure",
                pressure(Collections.max(altitudesM)),
                pressure(Collections.min(altitudesM)),
                "Pa",
                "the scene ends there");
    }

    @Override
    public double temperature(double pressurePa) {
        return 273.15 + straight(celsius, altitude(pressurePa));
    }

    @Override
    public double geopotentialAltitude(double pressurePa) {
        return altitude(pressurePa);
    }

    @Override
    public double vapourPressure(double pressurePa) {
        double dewPointC = straight(dewPointsC, altitude(pressurePa));
        if (dewPointC <= -150.0) {
            return 0.0;
        }
        return Double.isNaN(dewPointC)
                ? Double.NaN
                : MoistAir.saturationVapourPressure(273.15 + dewPointC);
    }

    @Override
    public double[] bendsPa() {
        return altitudesM.stream().mapToDouble(ProfileAir::pressure).toArray();
    }

    private double straight(List<Double> values, double altitudeM) {
        int i = 0;
        while (i < altitudesM.size() - 2 && altitudeM > altitudesM.get(i + 1)) {
            i++;
        }
        double from = altitudesM.get(i);
        double share = (altitudeM - from) / (altitudesM.get(i + 1) - from);
        share = Math.max(0.0, Math.min(1.0, share));
        return share * values.get(i + 1) + (1.0 - share) * values.get(i);
    }
}
