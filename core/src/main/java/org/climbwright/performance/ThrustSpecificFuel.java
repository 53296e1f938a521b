package org.climbwright.performance;

import static org.climbwright.atmosphere.IcaoConstants.SEA_LEVEL_TEMPERATURE_K;

import java.io.Serializable;
import java.util.Objects;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.OutsideModelException;

/**
 * The fuel flow of jet engines: {@code T (c0 + c1 M) sqrt(theta)}, never less than at idle.
 *
 * <pre>{@code
 * ThrustSpecificFuel fuel = ThrustSpecificFuel.ofSi(1.0e-5, 0.9e-5)     // kg/(N s)
 *         .withIdle(0.12)                                               // kg/s of each engine
 *         .withBleed(0.01, 0.02);
 * fuel.fuelFlow(120e3, 0.5, 70000, 270, EngineUse.climb(2))             // 1.684…, kg/s
 * }</pre>
 *
 * <p>{@code theta} is the temperature over that of standard air at sea level. The passage to idle
 * is smooth, the fourth root of the sum of the fourth powers of both: where the flow is three times
 * that of idle, it adds 0.3 %. Idle falls with the pressure.
 *
 * <p>Limits of use: a law of textbooks with the caller's figures; plan fuel by the operator's
 * procedures and the flight manual.
 *
 * @source J. D. Anderson, Aircraft Performance and Design, chapter 3, for a specific consumption
 *     that is linear in the Mach number (from memory); the square root of temperature is similarity
 *     of engines (from memory); that idle falls with the pressure is common practice, no source
 */
public final class ThrustSpecificFuel implements FuelFlowLaw, Serializable {
    private static final long serialVersionUID = 1L;

    private static final ModelRange SPECIFIC =
            new ModelRange("specific fuel", 1e-7, 1e-3, "kg/(N s)", "it is some 1e-5 to 3e-5");
    private static final ModelRange PER_MACH =
            new ModelRange("specific fuel per Mach", 0.0, 1e-3, "kg/(N s)", "it is some 1e-5");
    private static final ModelRange THRUST =
            new ModelRange("thrust", 0.0, 1e9, "N", "an engine gives no drag here");
    private static final ModelRange MACH =
            new ModelRange("Mach number", 0.0, 5.0, "", "it is a speed");
    private static final ModelRange TEMPERATURE =
            new ModelRange("static air temperature", 100.0, 400.0, "K", "no air is outside");

    private final double kgPerNs;
    private final double kgPerNsPerMach;
    private final FuelFlowFloor floor;

    private ThrustSpecificFuel(double kgPerNs, double kgPerNsPerMach, FuelFlowFloor floor) {
        this.kgPerNs = SPECIFIC.check(kgPerNs);
        this.kgPerNsPerMach = PER_MACH.check(kgPerNsPerMach);
        this.floor = floor;
    }

    /**
     * Returns a fuel flow by thrust, without a flow at idle.
     *
     * @param kgPerNs fuel per thrust and time at rest and 288.15 K, {@code c0} [kg/(N s)], 1e-7 to
     *     1e-3
     * @param kgPerNsPerMach what a Mach number of 1 adds, {@code c1} [kg/(N s)], 0 to 1e-3
     * @return the law
     * @throws OutsideModelException if a value is out of range
     */
    public static ThrustSpecificFuel ofSi(double kgPerNs, double kgPerNsPerMach) {
        return new ThrustSpecificFuel(kgPerNs, kgPerNsPerMach, FuelFlowFloor.NONE);
    }

    /**
     * Returns this law with a flow at idle.
     *
     * @param kgPerS flow of one engine at sea level in standard air [kg/s], 0 to 10
     * @return a copy that differs in it
     * @throws OutsideModelException if it is out of range
     */
    public ThrustSpecificFuel withIdle(double kgPerS) {
        return new ThrustSpecificFuel(kgPerNs, kgPerNsPerMach, floor.withIdle(kgPerS));
    }

    /**
     * Returns this law with fuel that ice protection takes at the same thrust.
     *
     * @param engineShare share added for the engines, 0 to 0.45
     * @param airframeShare share added for the airframe, 0 to 0.45
     * @return a copy that differs in it
     * @throws OutsideModelException if a share is out of range
     */
    public ThrustSpecificFuel withBleed(double engineShare, double airframeShare) {
        return new ThrustSpecificFuel(
                kgPerNs, kgPerNsPerMach, floor.with(new BleedShares(engineShare, airframeShare)));
    }

    /**
     * Returns the fuel flow of all engines that run.
     *
     * @param thrustN thrust of all of them [N], 0 to 1e9
     * @param mach Mach number, 0 to 5
     * @param pressurePa static pressure [Pa], 0.1 to 200,000
     * @param temperatureK static air temperature [K], 100 to 400
     * @param use how the engines are used
     * @return mass of fuel per time [kg/s], 0 or more
     * @throws OutsideModelException if a value is out of range
     * @accuracy 10 ulp for the figures given
     * @source see the class comment
     */
    @Override
    public double fuelFlow(
            double thrustN, double mach, double pressurePa, double temperatureK, EngineUse use) {
        double theta = TEMPERATURE.check(temperatureK) / SEA_LEVEL_TEMPERATURE_K;
        double specific = Math.fma(kgPerNsPerMach, MACH.check(mach), kgPerNs) * Math.sqrt(theta);
        return floor.flow(THRUST.check(thrustN) * specific, pressurePa, use);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ThrustSpecificFuel that
                && Double.compare(kgPerNs, that.kgPerNs) == 0
                && Double.compare(kgPerNsPerMach, that.kgPerNsPerMach) == 0
                && floor.equals(that.floor);
    }

    @Override
    public int hashCode() {
        return Objects.hash(kgPerNs, kgPerNsPerMach, floor);
    }

    /**
     * Returns the law for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return kgPerNs + " + " + kgPerNsPerMach + " M kg/(N s), idle " + floor.idleKgPerS();
    }

    private Object readResolve() {
        return new ThrustSpecificFuel(kgPerNs, kgPerNsPerMach, floor);
    }
}
