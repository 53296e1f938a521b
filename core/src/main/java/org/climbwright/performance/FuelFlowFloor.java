package org.climbwright.performance;

import static org.climbwright.atmosphere.IcaoConstants.SEA_LEVEL_PRESSURE_PA;

import java.io.Serializable;
import org.climbwright.quantity.ModelRange;

/** What a fuel flow is besides that of its thrust: bleed on top, and idle below. */
record FuelFlowFloor(double idleKgPerS, BleedShares bleed) implements Serializable {
    private static final ModelRange IDLE =
            new ModelRange("idle fuel flow", 0.0, 10.0, "kg/s", "it is that of one engine");

    private static final ModelRange PRESSURE =
            new ModelRange("static pressure", 0.1, 2e5, "Pa", "no air that engines run in");

    static final FuelFlowFloor NONE = new FuelFlowFloor(0.0, BleedShares.NONE);

    FuelFlowFloor {
        IDLE.check(idleKgPerS);
    }

    FuelFlowFloor withIdle(double kgPerS) {
        return new FuelFlowFloor(kgPerS, bleed);
    }

    FuelFlowFloor with(BleedShares shares) {
        return new FuelFlowFloor(idleKgPerS, shares);
    }

    /** The fourth root of the sum of fourth powers: smooth, and near the larger of the two. */
    double flow(double ofThrust, double pressurePa, EngineUse use) {
        PRESSURE.check(pressurePa);
        double flow = ofThrust * (1.0 + bleed.of(use.bleed()));
        if (idleKgPerS == 0.0) {
            return flow;
        }
        double idle = idleKgPerS * use.operating() * (pressurePa / SEA_LEVEL_PRESSURE_PA);
        double square = flow * flow;
        double idleSquare = idle * idle;
        return Math.sqrt(Math.sqrt(Math.fma(square, square, idleSquare * idleSquare)));
    }
}
