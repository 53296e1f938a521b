package org.climbwright.cabin;

import org.climbwright.atmosphere.StandardAir;
import org.climbwright.quantity.altitude.CabinAltitude;

/** The schedule of one cabin altitude. */
record HeldAltitude(CabinAltitude cabin) implements CabinSchedule {
    private static final long serialVersionUID = 1L;

    HeldAltitude {
        CabinPressure.pressureLost(0.0, cabin.inMetres()); // asked for its checks
    }

    @Override
    public double cabinAltitudeM(double pressureAltitudeM) {
        ScheduleRows.LEVEL.check(pressureAltitudeM);
        return cabin.inMetres();
    }

    @Override
    public boolean covers(double pressureAltitudeM) {
        return StandardAir.coversAltitude(pressureAltitudeM);
    }

    @Override
    public String inWords() {
        return "isobaric at " + InFeet.of(cabin.inMetres());
    }
}
