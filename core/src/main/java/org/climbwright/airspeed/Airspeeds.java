package org.climbwright.airspeed;

import static org.climbwright.airspeed.AirspeedConversion.casFromMach;
import static org.climbwright.airspeed.AirspeedConversion.compressibilityCorrectionFromMach;
import static org.climbwright.airspeed.AirspeedConversion.compressibilityFactorFromMach;
import static org.climbwright.airspeed.AirspeedConversion.dynamicPressureFromMach;
import static org.climbwright.airspeed.AirspeedConversion.easFromMach;
import static org.climbwright.airspeed.AirspeedConversion.hasCas;
import static org.climbwright.airspeed.AirspeedConversion.impactPressureFromMach;
import static org.climbwright.airspeed.AirspeedConversion.machFromCas;
import static org.climbwright.airspeed.AirspeedConversion.machFromEas;
import static org.climbwright.airspeed.AirspeedConversion.machFromImpactPressure;
import static org.climbwright.airspeed.AirspeedConversion.machFromTas;
import static org.climbwright.airspeed.AirspeedConversion.tasFromMach;
import static org.climbwright.airspeed.AirspeedConversion.totalPressureFromMach;

import java.io.Serializable;
import java.util.Locale;
import org.climbwright.atmosphere.AirState;
import org.climbwright.quantity.pressure.DynamicPressure;
import org.climbwright.quantity.pressure.ImpactPressure;
import org.climbwright.quantity.pressure.TotalPressure;
import org.climbwright.quantity.speed.AirspeedDifference;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.EquivalentAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.speed.TrueAirspeed;
import org.climbwright.quantity.temperature.TotalAirTemperature;

/**
 * One speed through some air, told in every way: from any one of them, all the others.
 *
 * <pre>{@code
 * AirState air = Atmosphere.standard().at(PressureAltitude.ofFlightLevel(300));
 * Airspeeds speeds = Airspeeds.from(CalibratedAirspeed.ofKnots(300), air);
 * speeds.mach()           // M0.7906383566816955
 * speeds.trueAirspeed()   // 239.70065396470912 m/s (465.940796043711 kn)
 * }</pre>
 *
 * <p>Limits of use: see {@link AirspeedConversion}, of which every method here is one line.
 */
public final class Airspeeds implements Serializable {
    private static final long serialVersionUID = 1L;

    private final double mach;
    private final double pressurePa;
    private final double temperatureK;

    private Airspeeds(double mach, AirState air) {
        this.mach = mach;
        this.pressurePa = air.pressurePa();
        this.temperatureK = air.temperatureK();
    }

    /**
     * Returns all speeds of a calibrated airspeed.
     *
     * @param speed calibrated airspeed, up to that of Mach 5 in the air
     * @param air the air flown through
     * @return the speeds
     * @throws org.climbwright.quantity.OutsideModelException if the speed is beyond Mach 5
     */
    public static Airspeeds from(CalibratedAirspeed speed, AirState air) {
        return new Airspeeds(machFromCas(speed.inMetresPerSecond(), air.pressurePa()), air);
    }

    /**
     * Returns all speeds of an equivalent airspeed.
     *
     * @param speed equivalent airspeed, up to that of Mach 5 in the air
     * @param air the air flown through
     * @return the speeds
     * @throws org.climbwright.quantity.OutsideModelException if the speed is beyond Mach 5
     */
    public static Airspeeds from(EquivalentAirspeed speed, AirState air) {
        return new Airspeeds(machFromEas(speed.inMetresPerSecond(), air.pressurePa()), air);
    }

    /**
     * Returns all speeds of a true airspeed.
     *
     * @param speed true airspeed, up to that of Mach 5 in the air
     * @param air the air flown through
     * @return the speeds
     * @throws org.climbwright.quantity.OutsideModelException if the speed is beyond Mach 5
     */
    public static Airspeeds from(TrueAirspeed speed, AirState air) {
        return new Airspeeds(machFromTas(speed.inMetresPerSecond(), air.temperatureK()), air);
    }

    /**
     * Returns all speeds of a Mach number.
     *
     * @param mach Mach number, up to 5
     * @param air the air flown through
     * @return the speeds
     * @throws org.climbwright.quantity.OutsideModelException if the speed is beyond Mach 5
     */
    public static Airspeeds from(Mach mach, AirState air) {
        return new Airspeeds(AirspeedConversion.MACH.check(mach.number()), air);
    }

    /**
     * Returns all speeds of an impact pressure.
     *
     * @param impactPressure total less static pressure, up to that of Mach 5 in the air
     * @param air the air flown through
     * @return the speeds
     * @throws org.climbwright.quantity.OutsideModelException if the speed is beyond Mach 5
     */
    public static Airspeeds from(ImpactPressure impactPressure, AirState air) {
        return new Airspeeds(
                machFromImpactPressure(impactPressure.inPascals(), air.pressurePa()), air);
    }

    /** The pressure of the air flown through [Pa]. */
    double pressurePa() {
        return pressurePa;
    }

    /**
     * Returns the Mach number.
     *
     * @return true airspeed over the speed of sound
     */
    public Mach mach() {
        return Mach.of(mach);
    }

    /**
     * Returns the calibrated airspeed.
     *
     * @return see {@link AirspeedConversion#casFromMach}
     * @throws org.climbwright.quantity.OutsideModelException below the sea near Mach 5, where it
     *     would be more than that of Mach 5 at sea level
     */
    public CalibratedAirspeed calibratedAirspeed() {
        return CalibratedAirspeed.ofMetresPerSecond(casFromMach(mach, pressurePa));
    }

    /**
     * Returns the equivalent airspeed.
     *
     * @return see {@link AirspeedConversion#easFromMach}
     */
    public EquivalentAirspeed equivalentAirspeed() {
        return EquivalentAirspeed.ofMetresPerSecond(easFromMach(mach, pressurePa));
    }

    /**
     * Returns the true airspeed.
     *
     * @return see {@link AirspeedConversion#tasFromMach}
     */
    public TrueAirspeed trueAirspeed() {
        return TrueAirspeed.ofMetresPerSecond(tasFromMach(mach, temperatureK));
    }

    /**
     * Returns the impact pressure.
     *
     * @return see {@link AirspeedConversion#impactPressureFromMach}
     */
    public ImpactPressure impactPressure() {
        return ImpactPressure.ofPascals(impactPressureFromMach(mach, pressurePa));
    }

    /**
     * Returns the dynamic pressure.
     *
     * @return see {@link AirspeedConversion#dynamicPressureFromMach}
     */
    public DynamicPressure dynamicPressure() {
        return DynamicPressure.ofPascals(dynamicPressureFromMach(mach, pressurePa));
    }

    /**
     * Returns the total pressure.
     *
     * @return see {@link AirspeedConversion#totalPressureFromMach}
     */
    public TotalPressure totalPressure() {
        return TotalPressure.ofPascals(totalPressureFromMach(mach, pressurePa));
    }

    /**
     * Returns the total air temperature, as a probe of full recovery feels it.
     *
     * @return see {@link TotalTemperature#fromMach}
     */
    public TotalAirTemperature totalAirTemperature() {
        return TotalAirTemperature.ofKelvins(TotalTemperature.fromMach(mach, temperatureK, 1.0));
    }

    /**
     * Returns the compressibility correction: equivalent less calibrated airspeed.
     *
     * @return see {@link AirspeedConversion#compressibilityCorrectionFromMach}
     * @throws org.climbwright.quantity.OutsideModelException as {@link #calibratedAirspeed}
     */
    public AirspeedDifference compressibilityCorrection() {
        return AirspeedDifference.ofMetresPerSecond(
                compressibilityCorrectionFromMach(mach, pressurePa));
    }

    /**
     * Returns the compressibility factor: equivalent over calibrated airspeed.
     *
     * @return see {@link AirspeedConversion#compressibilityFactorFromMach}
     * @throws org.climbwright.quantity.OutsideModelException as {@link #calibratedAirspeed}
     */
    public double compressibilityFactor() {
        return compressibilityFactorFromMach(mach, pressurePa);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Airspeeds that
                && Double.compare(mach, that.mach) == 0
                && Double.compare(pressurePa, that.pressurePa) == 0
                && Double.compare(temperatureK, that.temperatureK) == 0;
    }

    @Override
    public int hashCode() {
        int hash = Double.hashCode(mach);
        hash = 31 * hash + Double.hashCode(pressurePa);
        return 31 * hash + Double.hashCode(temperatureK);
    }

    /**
     * Returns the speeds that a pilot talks of, for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        // Below the sea a speed near Mach 5 has a calibrated airspeed beyond the relations.
        String cas =
                hasCas(mach, pressurePa) ? knots(calibratedAirspeed().inKnots()) : "beyond Mach 5";
        return String.format(
                Locale.ROOT, "M%.4f, CAS %s, TAS %s", mach, cas, knots(trueAirspeed().inKnots()));
    }

    private static String knots(double knots) {
        return String.format(Locale.ROOT, "%.1f kn", knots);
    }

    private Object readResolve() {
        AirState air = AirState.ofSi(pressurePa, temperatureK, 0.0, Double.NaN);
        dynamicPressureFromMach(mach, pressurePa); // asked for its check of the Mach number
        return new Airspeeds(mach, air);
    }
}
