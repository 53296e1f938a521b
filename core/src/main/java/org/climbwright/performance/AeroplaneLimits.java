package org.climbwright.performance;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.StringJoiner;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.DifferentialPressure;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.jspecify.annotations.Nullable;

/**
 * What limits an aeroplane: as many limits as are known, each empty until it is given.
 *
 * <pre>{@code
 * AeroplaneLimits limits = AeroplaneLimits.none()
 *         .withCertifiedCeiling(PressureAltitude.ofFlightLevel(410))
 *         .withMaximumOperatingMach(Mach.of(0.82));
 * limits.maximumOperatingSpeed()                   // Optional.empty
 * }</pre>
 *
 * <p>Limits of use: the flight manual has the limits; these are what somebody took from it.
 */
public final class AeroplaneLimits {
    private static final ModelRange LOAD_FACTOR =
            new ModelRange("load factor", 1.0, 12.0, "", "less is no flight, and more no climb");
    private static final ModelRange LIFT_SLOPE =
            new ModelRange("lift slope", 0.1, 10.0, "per rad", "a wing has some 2 pi at most");
    private static final ModelRange WING_AREA =
            new ModelRange("wing area", 0.1, 5000.0, "m²", "no aeroplane has such a wing");
    private static final ModelRange OPERATING_MACH =
            new ModelRange("maximum operating Mach", 0.01, 5.0, "", "an aeroplane must move");
    private static final ModelRange OPERATING_SPEED =
            new ModelRange("maximum operating speed", 1.0, 1700.0, "m/s", "an aeroplane must move");
    private static final ModelRange DIFFERENTIAL =
            new ModelRange(
                    "maximum differential pressure", 0.0, 1e5, "Pa", "it is what a cabin bears");

    // places of the limits that are numbers; 0 while not known, which no limit is
    private static final int CEILING = 0;
    private static final int SPEED = 1;
    private static final int MACH = 2;
    private static final int FACTOR = 3;
    private static final int AREA = 4;
    private static final int CABIN = 5;
    private static final int SLOPE = 6;
    private static final AeroplaneLimits NONE = new AeroplaneLimits(new double[7], null);

    private final double[] numbers;
    private final @Nullable BuffetOnset buffetOnset;

    private AeroplaneLimits(double[] numbers, @Nullable BuffetOnset buffetOnset) {
        this.numbers = numbers;
        this.buffetOnset = buffetOnset;
    }

    /**
     * Returns limits of which none is known.
     *
     * @return no limits
     */
    public static AeroplaneLimits none() {
        return NONE;
    }

    private AeroplaneLimits with(int which, double value) {
        double[] copy = numbers.clone();
        copy[which] = value;
        return new AeroplaneLimits(copy, buffetOnset);
    }

    private OptionalDouble number(int which) {
        double value = numbers[which];
        return value == 0.0 ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /**
     * Returns these limits with the highest level at which the aeroplane may fly.
     *
     * @param ceiling the certified ceiling, above 0
     * @return a copy that differs in it
     * @throws IllegalArgumentException if it is not above 0
     */
    public AeroplaneLimits withCertifiedCeiling(PressureAltitude ceiling) {
        if (!(ceiling.inMetres() > 0.0)) {
            throw new IllegalArgumentException(
                    "a certified ceiling must be above 0 ft, but was " + ceiling.text());
        }
        return with(CEILING, ceiling.inMetres());
    }

    /**
     * Returns these limits with the highest calibrated airspeed at which the aeroplane may fly.
     *
     * @param speed the maximum operating speed, 1 to 1700 m/s
     * @return a copy that differs in it
     * @throws org.climbwright.quantity.OutsideModelException if it is out of range
     */
    public AeroplaneLimits withMaximumOperatingSpeed(CalibratedAirspeed speed) {
        return with(SPEED, OPERATING_SPEED.check(speed.inMetresPerSecond()));
    }

    /**
     * Returns these limits with the highest Mach number at which the aeroplane may fly.
     *
     * @param mach the maximum operating Mach number, 0.01 to 5
     * @return a copy that differs in it
     * @throws org.climbwright.quantity.OutsideModelException if it is out of range
     */
    public AeroplaneLimits withMaximumOperatingMach(Mach mach) {
        return with(MACH, OPERATING_MACH.check(mach.number()));
    }

    /**
     * Returns these limits with the largest load factor that the aeroplane may bear.
     *
     * @param loadFactor lift over weight, 1 to 12
     * @return a copy that differs in it
     * @throws org.climbwright.quantity.OutsideModelException if it is out of range
     */
    public AeroplaneLimits withLoadFactor(double loadFactor) {
        return with(FACTOR, LOAD_FACTOR.check(loadFactor));
    }

    /**
     * Returns these limits with the beginning of buffet.
     *
     * @param wingAreaM2 the area that the lift coefficient refers to [m²], 0.1 to 5000
     * @param onset the lift coefficient at which buffet begins, by Mach number
     * @return a copy that differs in it
     * @throws org.climbwright.quantity.OutsideModelException if the area is out of range
     */
    public AeroplaneLimits withBuffetOnset(double wingAreaM2, BuffetOnset onset) {
        double[] copy = numbers.clone();
        copy[AREA] = WING_AREA.check(wingAreaM2);
        return new AeroplaneLimits(copy, Objects.requireNonNull(onset, "onset"));
    }

    /**
     * Returns these limits with the largest differential pressure of the cabin.
     *
     * @param differential what the cabin bears, 0 to 100 kPa
     * @return a copy that differs in it
     * @throws org.climbwright.quantity.OutsideModelException if it is out of range
     */
    public AeroplaneLimits withMaximumDifferential(DifferentialPressure differential) {
        return with(CABIN, DIFFERENTIAL.check(differential.inPascals()));
    }

    /**
     * Returns these limits with the slope of the lift, which tells what a gust does.
     *
     * @param liftSlopePerRad lift coefficient per angle of attack [1/rad], 0.1 to 10
     * @return a copy that differs in it
     * @throws org.climbwright.quantity.OutsideModelException if it is out of range
     */
    public AeroplaneLimits withLiftSlope(double liftSlopePerRad) {
        return with(SLOPE, LIFT_SLOPE.check(liftSlopePerRad));
    }

    /**
     * Returns the highest level at which the aeroplane may fly.
     *
     * @return pressure altitude; empty when not known
     */
    public Optional<PressureAltitude> certifiedCeiling() {
        OptionalDouble metres = number(CEILING);
        return metres.isPresent()
                ? Optional.of(PressureAltitude.ofMetres(metres.getAsDouble()))
                : Optional.empty();
    }

    /**
     * Returns the highest calibrated airspeed at which the aeroplane may fly.
     *
     * @return calibrated airspeed; empty when not known
     */
    public Optional<CalibratedAirspeed> maximumOperatingSpeed() {
        OptionalDouble speed = number(SPEED);
        return speed.isPresent()
                ? Optional.of(CalibratedAirspeed.ofMetresPerSecond(speed.getAsDouble()))
                : Optional.empty();
    }

    /**
     * Returns the highest Mach number at which the aeroplane may fly.
     *
     * @return Mach number; empty when not known
     */
    public Optional<Mach> maximumOperatingMach() {
        OptionalDouble mach = number(MACH);
        return mach.isPresent() ? Optional.of(Mach.of(mach.getAsDouble())) : Optional.empty();
    }

    /**
     * Returns the largest load factor that the aeroplane may bear.
     *
     * @return lift over weight; empty when not known
     */
    public OptionalDouble loadFactor() {
        return number(FACTOR);
    }

    /**
     * Returns the area that the lift coefficient of {@link #buffetOnset} refers to.
     *
     * @return area [m²]; empty when not known
     */
    public OptionalDouble wingAreaM2() {
        return number(AREA);
    }

    /**
     * Returns where buffet begins.
     *
     * @return lift coefficient by Mach number; empty when not known
     */
    public Optional<BuffetOnset> buffetOnset() {
        return Optional.ofNullable(buffetOnset);
    }

    /**
     * Returns the largest differential pressure of the cabin.
     *
     * @return differential pressure; empty when not known
     */
    public Optional<DifferentialPressure> maximumDifferential() {
        OptionalDouble pascals = number(CABIN);
        return pascals.isPresent()
                ? Optional.of(DifferentialPressure.ofPascals(pascals.getAsDouble()))
                : Optional.empty();
    }

    /**
     * Returns how the lift coefficient grows with the angle of attack.
     *
     * @return lift slope [1/rad]; empty when not known
     */
    public OptionalDouble liftSlopePerRad() {
        return number(SLOPE);
    }

    /**
     * Returns the limits for reading: those that are known.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        StringJoiner known = new StringJoiner(", ");
        known.setEmptyValue("no limit known");
        certifiedCeiling().ifPresent(level -> known.add("certified ceiling " + level.text()));
        maximumOperatingSpeed()
                .ifPresent(speed -> known.add("maximum operating speed " + speed.text()));
        maximumOperatingMach()
                .ifPresent(mach -> known.add("maximum operating Mach " + mach.number()));
        loadFactor().ifPresent(factor -> known.add("load factor " + factor));
        wingAreaM2()
                .ifPresent(area -> known.add("beginning of buffet by a wing of " + area + " m²"));
        maximumDifferential()
                .ifPresent(most -> known.add("maximum differential pressure " + most.text()));
        liftSlopePerRad().ifPresent(slope -> known.add("lift slope " + slope + " per rad"));
        return known.toString();
    }
}
