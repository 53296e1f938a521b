package org.climbwright.airspeed;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import org.climbwright.atmosphere.AirState;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.AirspeedDifference;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;

/**
 * A band of speeds, limited by a calibrated airspeed and a Mach number at each end.
 *
 * <p>Each limit holds by itself: at some pressure the highest speed is the slower of the two upper
 * limits and the lowest the faster of the two lower ones. High up the two ends can meet and pass
 * each other; then no speed is inside, which is an answer and no error.
 *
 * <pre>{@code
 * SpeedLimits limits = SpeedLimits.upTo(CalibratedAirspeed.ofKnots(340), Mach.of(0.82));
 * AirState air = Atmosphere.standard().at(PressureAltitude.ofFlightLevel(350));
 * limits.highestLimit(air.pressurePa())                 // MACH
 * limits.highestCrossover().get().inFeet()              // 25968.1…, from there up
 * Airspeeds climb = Airspeeds.from(Mach.of(0.78), air);
 * limits.marginToHighest(climb).inKnots()               // 15.06…, kn of calibrated airspeed
 * }</pre>
 *
 * <p>Limits of use: the limits of an aeroplane stand in its flight manual, may change with mass,
 * altitude and configuration, and are told in indicated airspeed; a margin here has neither gusts
 * nor the errors of instruments in it. For study and simulation.
 */
public final class SpeedLimits implements Serializable {
    private static final long serialVersionUID = 1L;

    /** Which of two limits counts. */
    public enum Limit {
        /** The calibrated airspeed. */
        CALIBRATED_AIRSPEED,
        /** The Mach number. */
        MACH
    }

    private final double lowestCasMps;
    private final double highestCasMps;
    private final double lowestMach;
    private final double highestMach;

    private SpeedLimits(
            double lowestCasMps, double highestCasMps, double lowestMach, double highestMach) {
        this.lowestCasMps = lowestCasMps;
        this.highestCasMps = highestCasMps;
        this.lowestMach = lowestMach;
        this.highestMach = highestMach;
    }

    /**
     * Returns a band that is limited at both ends.
     *
     * @param lowestCas lowest calibrated airspeed; 0 where there is no such limit
     * @param highestCas highest calibrated airspeed, above the lowest, 1 to 1701.47 m/s
     * @param lowestMach lowest Mach number; 0 where there is no such limit
     * @param highestMach highest Mach number, above the lowest, 0.01 to 5
     * @return the band
     * @throws IllegalArgumentException if a lowest speed is not below the highest of its kind
     * @throws org.climbwright.quantity.OutsideModelException if a highest speed is out of range
     */
    public static SpeedLimits of(
            CalibratedAirspeed lowestCas,
            CalibratedAirspeed highestCas,
            Mach lowestMach,
            Mach highestMach) {
        Crossover.of(highestCas, highestMach); // asked for its checks
        if (lowestCas.compareTo(highestCas) >= 0) {
            throw reversed(lowestCas.text(), highestCas.text());
        }
        if (lowestMach.compareTo(highestMach) >= 0) {
            throw reversed(lowestMach.text(), highestMach.text());
        }
        return new SpeedLimits(
                lowestCas.inMetresPerSecond(),
                highestCas.inMetresPerSecond(),
                lowestMach.number(),
                highestMach.number());
    }

    /**
     * Returns a band that is limited at its upper end alone.
     *
     * @param highestCas highest calibrated airspeed, 1 to 1701.47 m/s
     * @param highestMach highest Mach number, 0.01 to 5
     * @return the band from rest
     * @throws org.climbwright.quantity.OutsideModelException if a speed is out of range
     */
    public static SpeedLimits upTo(CalibratedAirspeed highestCas, Mach highestMach) {
        return of(CalibratedAirspeed.ofMetresPerSecond(0.0), highestCas, Mach.of(0.0), highestMach);
    }

    private static IllegalArgumentException reversed(String lowest, String highest) {
        return new IllegalArgumentException(
                "the lowest speed of a band must be below the highest, but they were "
                        + lowest
                        + " and "
                        + highest);
    }

    /**
     * Tells whether the band is known at a pressure.
     *
     * @param pressurePa static pressure [Pa]
     * @return true from 0.1 to 1e6 Pa, but deep below the sea only as far as the lowest Mach number
     *     has a calibrated airspeed
     */
    public boolean covers(double pressurePa) {
        return AirspeedConversion.hasCas(lowestMach, pressurePa);
    }

    /**
     * Returns which limit is the upper end of the band at a pressure.
     *
     * @param pressurePa static pressure [Pa], 0.1 to 1e6
     * @return the slower one; the calibrated airspeed at the crossover itself
     * @throws org.climbwright.quantity.OutsideModelException if the pressure is out of range
     */
    public Limit highestLimit(double pressurePa) {
        return isSlower(highestMach, highestCasMps, pressurePa)
                ? Limit.MACH
                : Limit.CALIBRATED_AIRSPEED;
    }

    /**
     * Returns which limit is the lower end of the band at a pressure.
     *
     * @param pressurePa static pressure [Pa], 0.1 to 1e6
     * @return the faster one; the Mach number at the crossover itself
     * @throws org.climbwright.quantity.OutsideModelException if the pressure is out of range
     */
    public Limit lowestLimit(double pressurePa) {
        return isSlower(lowestMach, lowestCasMps, pressurePa)
                ? Limit.CALIBRATED_AIRSPEED
                : Limit.MACH;
    }

    /**
     * Returns the upper end of the band at a pressure.
     *
     * @param pressurePa static pressure [Pa], 0.1 to 1e6
     * @return calibrated airspeed [m/s]
     * @throws org.climbwright.quantity.OutsideModelException if the pressure is out of range
     * @accuracy the limit's own number, or 1e-15 relative where the Mach number counts
     * @source {@link AirspeedConversion#casFromMach}
     */
    public double highestCas(double pressurePa) {
        return highestLimit(pressurePa) == Limit.MACH
                ? AirspeedConversion.casFromMach(highestMach, pressurePa)
                : highestCasMps;
    }

    /**
     * Returns the lower end of the band at a pressure.
     *
     * @param pressurePa static pressure [Pa], where the band {@link #covers} it
     * @return calibrated airspeed [m/s]
     * @throws org.climbwright.quantity.OutsideModelException if the pressure is out of range
     * @accuracy the limit's own number, or 1e-15 relative where the Mach number counts
     * @source {@link AirspeedConversion#casFromMach}
     */
    public double lowestCas(double pressurePa) {
        return lowestLimit(pressurePa) == Limit.MACH
                ? AirspeedConversion.casFromMach(lowestMach, pressurePa)
                : lowestCasMps;
    }

    /**
     * Returns how far below the upper end of the band a speed is.
     *
     * @param casMps calibrated airspeed [m/s]
     * @param pressurePa static pressure [Pa], 0.1 to 1e6
     * @return the margin in calibrated airspeed [m/s]; below zero where the speed is beyond the end
     * @throws org.climbwright.quantity.OutsideModelException if the pressure or speed is out of
     *     range
     * @accuracy 1e-15 of the end
     */
    public double marginToHighest(double casMps, double pressurePa) {
        return highestCas(pressurePa) - AirspeedConversion.CAS.check(casMps);
    }

    /**
     * Returns how far above the lower end of the band a speed is.
     *
     * @param casMps calibrated airspeed [m/s]
     * @param pressurePa static pressure [Pa], where the band {@link #covers} it
     * @return the margin in calibrated airspeed [m/s]; below zero where the speed is beyond the end
     * @throws org.climbwright.quantity.OutsideModelException if the pressure or speed is out of
     *     range
     * @accuracy 1e-15 of the end
     */
    public double marginToLowest(double casMps, double pressurePa) {
        return AirspeedConversion.CAS.check(casMps) - lowestCas(pressurePa);
    }

    /**
     * Returns the upper end of the band in some air.
     *
     * @param air the air flown through
     * @return see {@link #highestCas}
     * @throws org.climbwright.quantity.OutsideModelException if its pressure is out of range
     */
    public CalibratedAirspeed highest(AirState air) {
        return CalibratedAirspeed.ofMetresPerSecond(highestCas(air.pressurePa()));
    }

    /**
     * Returns the lower end of the band in some air.
     *
     * @param air the air flown through
     * @return see {@link #lowestCas}
     * @throws org.climbwright.quantity.OutsideModelException if its pressure is out of range
     */
    public CalibratedAirspeed lowest(AirState air) {
        return CalibratedAirspeed.ofMetresPerSecond(lowestCas(air.pressurePa()));
    }

    /**
     * Returns how far below the upper end of the band a speed is.
     *
     * @param speeds the speed in its air
     * @return see {@link #marginToHighest(double, double)}
     * @throws org.climbwright.quantity.OutsideModelException if the speed has no calibrated
     *     airspeed
     */
    public AirspeedDifference marginToHighest(Airspeeds speeds) {
        return AirspeedDifference.ofMetresPerSecond(
                marginToHighest(
                        speeds.calibratedAirspeed().inMetresPerSecond(), speeds.pressurePa()));
    }

    /**
     * Returns how far above the lower end of the band a speed is.
     *
     * @param speeds the speed in its air
     * @return see {@link #marginToLowest(double, double)}
     * @throws org.climbwright.quantity.OutsideModelException if the speed has no calibrated
     *     airspeed
     */
    public AirspeedDifference marginToLowest(Airspeeds speeds) {
        return AirspeedDifference.ofMetresPerSecond(
                marginToLowest(
                        speeds.calibratedAirspeed().inMetresPerSecond(), speeds.pressurePa()));
    }

    /**
     * Returns where the upper end changes from calibrated airspeed to Mach number.
     *
     * @return the pressure altitude; empty when one of the two counts at every level of the
     *     standard atmosphere
     */
    public Optional<PressureAltitude> highestCrossover() {
        return crossover(highestCasMps, highestMach);
    }

    /**
     * Returns where the lower end changes from Mach number to calibrated airspeed.
     *
     * @return the pressure altitude; empty when one of the two counts at every level of the
     *     standard atmosphere
     */
    public Optional<PressureAltitude> lowestCrossover() {
        return crossover(lowestCasMps, lowestMach);
    }

    /**
     * Returns where the lowest calibrated airspeed and the highest Mach number are the same speed:
     * above, no speed is inside the band.
     *
     * @return the pressure altitude; empty when it is outside the standard atmosphere
     */
    public Optional<PressureAltitude> top() {
        return crossover(lowestCasMps, highestMach);
    }

    private static Optional<PressureAltitude> crossover(double casMps, double mach) {
        return Crossover.hasAltitude(casMps, mach)
                ? Optional.of(PressureAltitude.ofMetres(Crossover.altitude(casMps, mach)))
                : Optional.empty();
    }

    /** By impact pressure: deep below the sea a Mach number may have no calibrated airspeed. */
    private static boolean isSlower(double mach, double casMps, double pressurePa) {
        return AirspeedConversion.impactPressureFromMach(mach, pressurePa)
                < AirspeedConversion.impactPressureFromCas(casMps);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SpeedLimits that
                && Double.compare(lowestCasMps, that.lowestCasMps) == 0
                && Double.compare(highestCasMps, that.highestCasMps) == 0
                && Double.compare(lowestMach, that.lowestMach) == 0
                && Double.compare(highestMach, that.highestMach) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(lowestCasMps, highestCasMps, lowestMach, highestMach);
    }

    /**
     * Returns the limits for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return CalibratedAirspeed.ofMetresPerSecond(lowestCasMps).text()
                + " and "
                + Mach.of(lowestMach).text()
                + " to "
                + CalibratedAirspeed.ofMetresPerSecond(highestCasMps).text()
                + " and "
                + Mach.of(highestMach).text();
    }

    private Object readResolve() {
        return of(
                CalibratedAirspeed.ofMetresPerSecond(lowestCasMps),
                CalibratedAirspeed.ofMetresPerSecond(highestCasMps),
                Mach.of(lowestMach),
                Mach.of(highestMach));
    }
}
