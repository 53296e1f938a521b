package org.climbwright.cabin;

import java.util.Locale;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.quantity.pressure.DifferentialPressure;

/** The schedule of one differential pressure. */
record HeldDifferential(DifferentialPressure differential) implements CabinSchedule {
    private static final long serialVersionUID = 1L;

    HeldDifferential {
        if (!(differential.inPascals() >= 0.0)) {
            throw new IllegalArgumentException(
                    "a differential to hold must be 0 psi or more, but was " + differential.text());
        }
    }

    @Override
    public double cabinAltitudeM(double pressureAltitudeM) {
        return CabinPressure.cabinAltitude(differential.inPascals(), pressureAltitudeM);
    }

    @Override
    public boolean covers(double pressureAltitudeM) {
        return StandardAir.coversAltitude(pressureAltitudeM)
                && StandardAir.coversPressure(
                        StandardAir.pressureFromAltitude(pressureAltitudeM)
                                + differential.inPascals());
    }

    @Override
    public String inWords() {
        return String.format(
                Locale.ROOT,
                "constant differential of %.2f psi",
                differential.inPoundsPerSquareInch());
    }
}
