package org.climbwright.quantity;

import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.unit.AviationUnits;

/** Makes one value with a unit of javax.measure; for a virtual machine of its own. */
public final class UnitsStackMain {
    private UnitsStackMain() {}

    public static void main(String[] none) {
        System.out.println(PressureAltitude.of(1.0, AviationUnits.FOOT));
    }
}
