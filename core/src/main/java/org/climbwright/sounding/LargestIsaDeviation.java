package org.climbwright.sounding;

import static org.climbwright.atmosphere.IcaoConstants.GAS_CONSTANT_J_PER_KG_K;
import static org.climbwright.atmosphere.IcaoConstants.GRAVITY_MPS2;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.quantity.pressure.StaticPressure;

/**
 * The search for the place where the air is farthest from standard.
 *
 * <p>On a stretch between two bends, be they levels of the ascent or bends of standard air, {@code
 * T = a + b ln p}, while standard air has {@code dT/d(ln p) = k T} with {@code k = -L R / g0} for
 * its lapse {@code L}. The difference is concave in ln p: it is largest in size at an end, or where
 * standard air has {@code T = b / k}.
 */
final class LargestIsaDeviation {
    private LargestIsaDeviation() {}

    static AirState in(SoundingAtmosphere air) {
        double[] bends = bendsOfBoth(air);
        double found = bends[0];
        for (int i = 0; i < bends.length; i++) {
            found = farther(air, found, bends[i]);
            if (i > 0) {
                found = farther(air, found, whereParallel(air, bends[i - 1], bends[i]));
            }
        }
        return air.at(StaticPressure.ofPascals(found));
    }

    /** The highest pressure first. */
    private static double[] bendsOfBoth(SoundingAtmosphere air) {
        double[] rising =
                DoubleStream.concat(
                                Arrays.stream(air.bendsPa()),
                                Arrays.stream(Atmosphere.standard().bendsPa()).filter(air::covers))
                        .sorted()
                        .distinct()
                        .toArray();
        double[] falling = new double[rising.length];
        for (int i = 0; i < rising.length; i++) {
            falling[i] = rising[rising.length - 1 - i];
        }
        return falling;
    }

    private static double farther(SoundingAtmosphere air, double onePa, double otherPa) {
        return Math.abs(deviation(air, otherPa)) > Math.abs(deviation(air, onePa))
                ? otherPa
                : onePa;
    }

    private static double deviation(SoundingAtmosphere air, double pressurePa) {
        return air.temperature(pressurePa) - StandardAir.temperatureFromPressure(pressurePa);
    }

    /** Where both cool alike with ln p; an end of the stretch where they do so nowhere inside. */
    private static double whereParallel(SoundingAtmosphere air, double lowPa, double highPa) {
        double slope =
                (air.temperature(highPa) - air.temperature(lowPa))
                        / (StrictMath.log(highPa) - StrictMath.log(lowPa));
        double lowM = StandardAir.altitudeFromPressure(lowPa);
        double highM = StandardAir.altitudeFromPressure(highPa);
        double standardK = StandardAir.temperatureFromPressure(lowPa);
        double lapse = (StandardAir.temperatureFromPressure(highPa) - standardK) / (highM - lowM);
        double wantedK = -slope * GRAVITY_MPS2 / (lapse * GAS_CONSTANT_J_PER_KG_K);
        double altitudeM = lowM + (wantedK - standardK) / lapse;
        return altitudeM > lowM && altitudeM < highM
                ? Math.max(highPa, Math.min(lowPa, StandardAir.pressureFromAltitude(altitudeM)))
                : lowPa;
    }
}
