package org.climbwright.performance;

import java.io.Serializable;
import java.util.Objects;
import org.climbwright.atmosphere.kernel.DryAirKernel;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.OutsideModelException;

/**
 * The fuel flow of engines that turn propellers: {@code c P}, never less than at idle, with the
 * shaft power {@code P = T V / eta} that the thrust takes.
 *
 * <p>Below the speed at which the propeller gives its thrust at rest, the power is that of this
 * speed: there the efficiency falls, and not the power.
 *
 * <pre>{@code
 * PropellerThrust engine = PropellerThrust.ofSi(134e3, 0.8, 2600);
 * PowerSpecificFuel fuel = PowerSpecificFuel.ofSi(engine, 8.0e-8);      // kg/(W s), kg/J
 * fuel.fuelFlow(1500, 0.2, 90000, 281.65, EngineUse.climb(1))           // 0.01009…, kg/s
 * }</pre>
 *
 * <p>Limits of use: a law of textbooks with the caller's figures; plan fuel by the operator's
 * procedures and the flight manual.
 *
 * @source J. D. Anderson, Aircraft Performance and Design, chapter 3, for a specific consumption by
 *     power that does not change (from memory); that idle falls with the pressure is common
 *     practice, no source
 */
public final class PowerSpecificFuel implements FuelFlowLaw, Serializable {
    private static final long serialVersionUID = 1L;

    private static final ModelRange SPECIFIC =
            new ModelRange("specific fuel", 1e-9, 1e-5, "kg/(W s)", "it is some 8e-8");
    private static final ModelRange THRUST =
            new ModelRange("thrust", 0.0, 1e9, "N", "an engine gives no drag here");
    private static final ModelRange MACH =
            new ModelRange("Mach number", 0.0, 1.0, "", "propellers fly no faster");

    private final PropellerThrust propeller;
    private final double kgPerWs;
    private final FuelFlowFloor floor;

    private PowerSpecificFuel(PropellerThrust propeller, double kgPerWs, FuelFlowFloor floor) {
        this.propeller = Objects.requireNonNull(propeller, "propeller");
        this.kgPerWs = SPECIFIC.check(kgPerWs);
        this.floor = floor;
    }

    /**
     * Returns a fuel flow by power, without a flow at idle.
     *
     * @param propeller the engine and propeller whose thrust it is
     * @param kgPerWs fuel per shaft power and time [kg/(W s)], 1e-9 to 1e-5
     * @return the law
     * @throws OutsideModelException if the figure is out of range
     */
    public static PowerSpecificFuel ofSi(PropellerThrust propeller, double kgPerWs) {
        return new PowerSpecificFuel(propeller, kgPerWs, FuelFlowFloor.NONE);
    }

    /**
     * Returns this law with a flow at idle.
     *
     * @param kgPerS flow of one engine at sea level in standard air [kg/s], 0 to 10
     * @return a copy that differs in it
     * @throws OutsideModelException if it is out of range
     */
    public PowerSpecificFuel withIdle(double kgPerS) {
        return new PowerSpecificFuel(propeller, kgPerWs, floor.withIdle(kgPerS));
    }

    /**
     * Returns this law with fuel that ice protection takes at the same thrust.
     *
     * @param engineShare share added for the engines, 0 to 0.45
     * @param airframeShare share added for the airframe, 0 to 0.45
     * @return a copy that differs in it
     * @throws OutsideModelException if a share is out of range
     */
    public PowerSpecificFuel withBleed(double engineShare, double airframeShare) {
        return new PowerSpecificFuel(
                propeller, kgPerWs, floor.with(new BleedShares(engineShare, airframeShare)));
    }

    /**
     * Returns the fuel flow of all engines that run.
     *
     * @param thrustN thrust of all of them [N], 0 to 1e9
     * @param mach Mach number, 0 to 1
     * @param pressurePa static pressure [Pa], 0.1 to 200,000
     * @param temperatureK static air temperature [K]
     * @param use how the engines are used
     * @return mass of fuel per time [kg/s], 0 or more
     * @throws OutsideModelException if a value is out of range
     * @accuracy 1e-14 for the figures given
     * @source see the class comment
     */
    @Override
    public double fuelFlow(
            double thrustN, double mach, double pressurePa, double temperatureK, EngineUse use) {
        double speed = MACH.check(mach) * DryAirKernel.speedOfSound(temperatureK);
        double atPower = Math.max(speed, propeller.slowestAtFullPower(pressurePa, temperatureK));
        double shaftW = THRUST.check(thrustN) * atPower / propeller.efficiency();
        return floor.flow(shaftW * kgPerWs, pressurePa, use);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof PowerSpecificFuel that
                && propeller.equals(that.propeller)
                && Double.compare(kgPerWs, that.kgPerWs) == 0
                && floor.equals(that.floor);
    }

    @Override
    public int hashCode() {
        return Objects.hash(propeller, kgPerWs, floor);
    }

    /**
     * Returns the law for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return kgPerWs + " kg/(W s) of " + propeller + ", idle " + floor.idleKgPerS();
    }

    private Object readResolve() {
        return new PowerSpecificFuel(propeller, kgPerWs, floor);
    }
}
