package org.climbwright.examples.teaching;

import java.util.List;
import java.util.stream.Stream;
import org.climbwright.airspeed.Airspeeds;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.icing.IcingRule;
import org.climbwright.icing.MoistureBand;
import org.climbwright.icing.MoistureForm;
import org.climbwright.icing.VisibleMoisture;
import org.climbwright.path.ClimbState;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.working.IcingWorking;
import org.climbwright.working.Working;

/** Which temperature begins the protection of engines against ice, and which ends it? */
public final class Question04TotalOnStaticOff {
    /** An invented cloud, from 5,000 ft to 33,000 ft. */
    private static final MoistureBand CLOUD =
            new MoistureBand(
                    MoistureForm.CLOUD,
                    PressureAltitude.ofFlightLevel(50),
                    PressureAltitude.ofFlightLevel(330));

    private Question04TotalOnStaticOff() {}

    /**
     * Prints the answer and its working.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        IcingRule rule = IcingRule.engine(VisibleMoisture.inBands(List.of(CLOUD)));
        List<ClimbState> climb = Stream.of(80, 120, 200, 310).map(level -> at(level)).toList();
        climb.forEach(
                point ->
                        System.out.println(
                                point.pressureAltitude().text() + ": " + rule.at(point)));
        System.out.println();

        Working working = IcingWorking.totalOnStaticOff(rule, climb);
        System.out.print(working.toMarkdown());
    }

    /** A point of an invented climb at 280 kn, 1,500 ft/min and 60 t, in still standard air. */
    private static ClimbState at(int flightLevel) {
        PressureAltitude level = PressureAltitude.ofFlightLevel(flightLevel);
        AirState air = Atmosphere.standard().at(level);
        CalibratedAirspeed cas = CalibratedAirspeed.ofKnots(280);
        double mach = Airspeeds.from(cas, air).mach().number();
        double casMps = cas.inMetresPerSecond();
        return ClimbState.ofSi(air, level.inMetres(), casMps, mach, 7.62, 6e4, 0, 0, 0, 0);
    }
}
