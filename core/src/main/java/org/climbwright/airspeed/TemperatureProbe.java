package org.climbwright.airspeed;

import java.io.Serializable;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.speed.TrueAirspeed;
import org.climbwright.quantity.temperature.RecoveryTemperature;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.quantity.temperature.TotalAirTemperature;

/**
 * A probe in the air stream with its recovery factor: what it feels, and the air behind that.
 *
 * <pre>{@code
 * TemperatureProbe probe = TemperatureProbe.ofRecoveryFactor(0.98);
 * RecoveryTemperature felt = probe.felt(StaticAirTemperature.ofCelsius(-56.5), Mach.of(0.8));
 * felt.inCelsius()                                          // -29.32…, total would be -28.77
 * probe.staticAirTemperature(felt, Mach.of(0.8)).text()     // "-56.5 °C"
 * }</pre>
 *
 * <p>Limits of use: see {@link TotalTemperature}, of which every method here is one line.
 */
public final class TemperatureProbe implements Serializable {
    private static final long serialVersionUID = 1L;

    private final double recoveryFactor;

    private TemperatureProbe(double recoveryFactor) {
        this.recoveryFactor = recoveryFactor;
    }

    /**
     * Returns a probe.
     *
     * @param recoveryFactor share of the full rise that the probe feels, above 0, to 1; as its
     *     maker states it
     * @return the probe
     * @throws IllegalArgumentException if the factor is outside
     */
    public static TemperatureProbe ofRecoveryFactor(double recoveryFactor) {
        if (!(recoveryFactor > 0.0 && recoveryFactor <= 1.0)) {
            throw new IllegalArgumentException(
                    "recovery factor must be above 0.0, to 1.0, but was " + recoveryFactor);
        }
        return new TemperatureProbe(recoveryFactor);
    }

    /**
     * Returns the recovery factor.
     *
     * @return share of the full rise that the probe feels
     */
    public double recoveryFactor() {
        return recoveryFactor;
    }

    /**
     * Returns what the probe feels in some air.
     *
     * @param air static air temperature
     * @param mach Mach number
     * @return see {@link TotalTemperature#fromMach}
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     */
    public RecoveryTemperature felt(StaticAirTemperature air, Mach mach) {
        return RecoveryTemperature.ofKelvins(
                TotalTemperature.fromMach(mach.number(), air.inKelvins(), recoveryFactor));
    }

    /**
     * Returns what the probe feels where the total air temperature is known.
     *
     * @param total total air temperature
     * @param mach Mach number
     * @return see {@link TotalTemperature#recoveryFromTotal}
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     */
    public RecoveryTemperature felt(TotalAirTemperature total, Mach mach) {
        return RecoveryTemperature.ofKelvins(
                TotalTemperature.recoveryFromTotal(
                        total.inKelvins(), mach.number(), recoveryFactor));
    }

    /**
     * Returns the static air temperature behind what the probe feels at a Mach number.
     *
     * @param felt the temperature felt
     * @param mach Mach number
     * @return see {@link TotalTemperature#staticFromMach}
     * @throws org.climbwright.quantity.OutsideModelException if no air feels so
     */
    public StaticAirTemperature staticAirTemperature(RecoveryTemperature felt, Mach mach) {
        return StaticAirTemperature.ofKelvins(
                TotalTemperature.staticFromMach(felt.inKelvins(), mach.number(), recoveryFactor));
    }

    /**
     * Returns the static air temperature behind what the probe feels at a true airspeed.
     *
     * @param felt the temperature felt
     * @param speed true airspeed
     * @return see {@link TotalTemperature#staticFromTas}
     * @throws org.climbwright.quantity.OutsideModelException if no air feels so
     */
    public StaticAirTemperature staticAirTemperature(RecoveryTemperature felt, TrueAirspeed speed) {
        return StaticAirTemperature.ofKelvins(
                TotalTemperature.staticFromTas(
                        felt.inKelvins(), speed.inMetresPerSecond(), recoveryFactor));
    }

    /**
     * Returns the total air temperature behind what the probe feels.
     *
     * @param felt the temperature felt
     * @param mach Mach number
     * @return see {@link TotalTemperature#totalFromRecovery}
     * @throws org.climbwright.quantity.OutsideModelException if no air feels so
     */
    public TotalAirTemperature totalAirTemperature(RecoveryTemperature felt, Mach mach) {
        return TotalAirTemperature.ofKelvins(
                TotalTemperature.totalFromRecovery(
                        felt.inKelvins(), mach.number(), recoveryFactor));
    }

    /**
     * Returns the Mach number at which the probe feels a temperature in some air.
     *
     * @param felt the temperature felt
     * @param air static air temperature
     * @return see {@link TotalTemperature#machFromStatic}
     * @throws org.climbwright.quantity.OutsideModelException if no Mach number up to 5 does
     */
    public Mach mach(RecoveryTemperature felt, StaticAirTemperature air) {
        return Mach.of(
                TotalTemperature.machFromStatic(felt.inKelvins(), air.inKelvins(), recoveryFactor));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof TemperatureProbe that
                && Double.compare(recoveryFactor, that.recoveryFactor) == 0;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(recoveryFactor);
    }

    /**
     * Returns the probe for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return "probe of recovery factor " + recoveryFactor;
    }

    private Object readResolve() {
        return ofRecoveryFactor(recoveryFactor);
    }
}
