package org.climbwright.atmosphere;

import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.unit.UnitScale;

/** The refusal of an altitude that some air does not reach: in metres, and in feet beside them. */
final class AltitudeRefusal {
    private AltitudeRefusal() {}

    /** That of a pressure altitude, by the range of pressure that the air has. */
    static OutsideModelException ofPressureAltitude(double altitudeM, ModelRange pressure) {
        return of(
                "pressure altitude",
                altitudeM,
                altitude(pressure.highest()),
                altitude(pressure.lowest()),
                pressure.reason());
    }

    static OutsideModelException of(
            String term, double altitudeM, double lowestM, double highestM, String reason) {
        String reasonInFeet =
                new StringBuilder(reason)
                        .append(" (in feet from ")
                        .append(feet(lowestM))
                        .append(" to ")
                        .append(feet(highestM))
                        .append(", but was ")
                        .append(feet(altitudeM))
                        .append(')')
                        .toString();
        return new OutsideModelException(term, altitudeM, lowestM, highestM, "m", reasonInFeet);
    }

    /** Some air may have pressures that standard air does not have. */
    private static double altitude(double pressurePa) {
        ModelRange standard = StandardAir.pressureRange();
        return StandardAir.altitudeFromPressure(
                Math.max(standard.lowest(), Math.min(standard.highest(), pressurePa)));
    }

    /** To a tenth, which is enough to see where the air begins and ends. */
    private static double feet(double metres) {
        return Math.rint(UnitScale.FOOT.fromSi(metres) * 10.0) / 10.0;
    }
}
