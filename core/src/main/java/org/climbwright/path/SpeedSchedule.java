package org.climbwright.path;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import org.climbwright.airspeed.AirspeedConversion;
import org.climbwright.airspeed.Crossover;
import org.climbwright.atmosphere.IcaoConstants;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;

/**
 * The speeds of a climb: a calibrated airspeed, a Mach number from the crossover up, and often a
 * lower calibrated airspeed below some level.
 *
 * <p>At each level the slower of the two counts, the Mach number or the calibrated airspeed; where
 * they are the same speed is the crossover. A change of speed is taken as immediate.
 *
 * <pre>{@code
 * SpeedSchedule schedule =
 *         SpeedSchedule.of(CalibratedAirspeed.ofKnots(290), Mach.of(0.76))
 *                 .withLimit(CalibratedAirspeed.ofKnots(250), PressureAltitude.ofFeet(10000));
 * }</pre>
 *
 * <p>Limits of use: the flight manual, the operator and the controller decide the speeds.
 */
public final class SpeedSchedule implements Serializable {
    private static final long serialVersionUID = 1L;

    private final double casMps;
    private final double mach;
    private final double limitCasMps;
    private final double limitTopM;

    private SpeedSchedule(double casMps, double mach, double limitCasMps, double limitTopM) {
        this.casMps = casMps;
        this.mach = mach;
        this.limitCasMps = limitCasMps;
        this.limitTopM = limitTopM;
    }

    /**
     * Returns a schedule of a calibrated airspeed and a Mach number.
     *
     * @param calibratedAirspeed the speed below the crossover, from 1 to 1701.47 m/s
     * @param mach the speed above the crossover, from 0.01 to 5
     * @return the schedule, without a limit
     * @throws org.climbwright.quantity.OutsideModelException if a speed is out of range
     * @throws IllegalArgumentException if a speed is 0
     */
    public static SpeedSchedule of(CalibratedAirspeed calibratedAirspeed, Mach mach) {
        double casMps = calibratedAirspeed.inMetresPerSecond();
        if (casMps == 0.0 || mach.number() == 0.0) {
            throw new IllegalArgumentException(
                    "a schedule needs speeds above 0, but had "
                            + calibratedAirspeed.text()
                            + " and "
                            + mach.text());
        }
        AirspeedConversion.crossoverPressure(casMps, mach.number()); // asked for its checks
        return new SpeedSchedule(casMps, mach.number(), Double.NaN, Double.NEGATIVE_INFINITY);
    }

    /**
     * Returns this schedule with a lower speed up to a level.
     *
     * @param limit the highest calibrated airspeed below the level, from 1 m/s
     * @param below the level; for a limit on QNH, the pressure altitude that it has that day
     * @return a copy with that limit
     * @throws org.climbwright.quantity.OutsideModelException if the limit is out of range
     */
    public SpeedSchedule withLimit(CalibratedAirspeed limit, PressureAltitude below) {
        AirspeedConversion.crossoverPressure(limit.inMetresPerSecond(), mach); // for its checks
        return new SpeedSchedule(
                casMps, mach, Math.min(limit.inMetresPerSecond(), casMps), below.inMetres());
    }

    /**
     * Returns the calibrated airspeed flown at a level.
     *
     * @param pressureAltitudeM pressure altitude [m], in the range of the standard atmosphere
     * @param side from which side, where the speed changes at that level
     * @return calibrated airspeed [m/s]
     * @throws org.climbwright.quantity.OutsideModelException if the level is out of range
     * @accuracy the schedule's own number below the crossover, 1e-12 relative above it
     * @source {@link AirspeedConversion}
     */
    public double calibratedAirspeed(double pressureAltitudeM, Side side) {
        double scheduled = scheduledCas(pressureAltitudeM, side);
        return isMach(pressureAltitudeM, side)
                ? AirspeedConversion.casFromMach(
                        mach, StandardAir.pressureFromAltitude(pressureAltitudeM))
                : scheduled;
    }

    /**
     * Returns the Mach number flown at a level.
     *
     * @param pressureAltitudeM pressure altitude [m], in the range of the standard atmosphere
     * @param side from which side, where the speed changes at that level
     * @return Mach number
     * @throws org.climbwright.quantity.OutsideModelException if the level is out of range
     * @accuracy the schedule's own number above the crossover, 1e-12 relative below it
     * @source {@link AirspeedConversion}
     */
    public double mach(double pressureAltitudeM, Side side) {
        return isMach(pressureAltitudeM, side)
                ? mach
                : AirspeedConversion.machFromCas(
                        scheduledCas(pressureAltitudeM, side),
                        StandardAir.pressureFromAltitude(pressureAltitudeM));
    }

    /**
     * Returns the level up to which the lower speed counts.
     *
     * @return the level; empty without a limit, when the limit is no lower than the schedule, or
     *     when the Mach number counts already below it
     */
    public Optional<PressureAltitude> changeOfSpeed() {
        return limitCasMps < casMps && crossoverM(limitCasMps) > limitTopM
                ? Optional.of(PressureAltitude.ofMetres(limitTopM))
                : Optional.empty();
    }

    /**
     * Returns the level from which the Mach number counts.
     *
     * @return where Mach number and calibrated airspeed are the same speed, be it that of the limit
     *     below its top; the top of the limit if the crossover lies below that; empty when the Mach
     *     number counts at every level of the standard atmosphere, or at none
     */
    public Optional<PressureAltitude> crossover() {
        double crossing = crossoverM(casMps);
        if (limitCasMps < casMps) {
            double ofLimit = crossoverM(limitCasMps);
            crossing = ofLimit <= limitTopM ? ofLimit : Math.max(crossing, limitTopM);
        }
        return Double.isInfinite(crossing)
                ? Optional.empty()
                : Optional.of(PressureAltitude.ofMetres(crossing));
    }

    private boolean isMach(double pressureAltitudeM, Side side) {
        double crossing = crossoverM(scheduledCas(pressureAltitudeM, side));
        return pressureAltitudeM > crossing
                || (pressureAltitudeM == crossing && side == Side.ABOVE);
    }

    private double scheduledCas(double pressureAltitudeM, Side side) {
        boolean limited =
                pressureAltitudeM < limitTopM
                        || (pressureAltitudeM == limitTopM && side == Side.BELOW);
        return limited ? limitCasMps : casMps;
    }

    /** The crossover [m]; infinite, down or up, when it lies beyond the standard atmosphere. */
    private double crossoverM(double cas) {
        if (Crossover.hasAltitude(cas, mach)) {
            return Crossover.altitude(cas, mach);
        }
        return AirspeedConversion.crossoverPressure(cas, mach) > IcaoConstants.SEA_LEVEL_PRESSURE_PA
                ? Double.NEGATIVE_INFINITY
                : Double.POSITIVE_INFINITY;
    }

    /**
     * Returns the speeds for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        String speeds =
                CalibratedAirspeed.ofMetresPerSecond(casMps).text()
                        + ", then "
                        + Mach.of(mach).text();
        return changeOfSpeed()
                .map(
                        level ->
                                CalibratedAirspeed.ofMetresPerSecond(limitCasMps).text()
                                        + " to "
                                        + level.text()
                                        + ", then "
                                        + speeds)
                .orElse(speeds);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SpeedSchedule that
                && Double.compare(casMps, that.casMps) == 0
                && Double.compare(mach, that.mach) == 0
                && Double.compare(limitCasMps, that.limitCasMps) == 0
                && Double.compare(limitTopM, that.limitTopM) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(casMps, mach, limitCasMps, limitTopM);
    }

    private Object readResolve() {
        SpeedSchedule plain = of(CalibratedAirspeed.ofMetresPerSecond(casMps), Mach.of(mach));
        return Double.isNaN(limitCasMps)
                ? plain
                : plain.withLimit(
                        CalibratedAirspeed.ofMetresPerSecond(limitCasMps),
                        PressureAltitude.ofMetres(limitTopM));
    }
}
