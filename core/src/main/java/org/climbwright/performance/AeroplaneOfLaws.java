package org.climbwright.performance;

import java.util.Objects;

/** An aeroplane put together of its laws. */
record AeroplaneOfLaws(
        int engines,
        DragLaw dragLaw,
        ThrustLaw thrustLaw,
        FuelFlowLaw fuelFlowLaw,
        AeroplaneLimits limits)
        implements Aeroplane {
    AeroplaneOfLaws {
        if (engines < 1) {
            throw new IllegalArgumentException(
                    "an aeroplane that climbs needs an engine, but the number was " + engines);
        }
        Objects.requireNonNull(dragLaw, "drag");
        Objects.requireNonNull(thrustLaw, "thrust");
        Objects.requireNonNull(fuelFlowLaw, "fuel flow");
        Objects.requireNonNull(limits, "limits");
    }

    @Override
    public double drag(double liftN, double mach, double dynamicPressurePa, EngineUse use) {
        return dragLaw.drag(liftN, mach, dynamicPressurePa, use);
    }

    @Override
    public double thrust(double mach, double pressurePa, double temperatureK, EngineUse use) {
        return thrustLaw.thrust(mach, pressurePa, temperatureK, use);
    }

    @Override
    public double bend(double mach, double pressurePa, double temperatureK) {
        return thrustLaw.bend(mach, pressurePa, temperatureK);
    }

    @Override
    public double fuelFlow(
            double thrustN, double mach, double pressurePa, double temperatureK, EngineUse use) {
        return fuelFlowLaw.fuelFlow(thrustN, mach, pressurePa, temperatureK, use);
    }
}
