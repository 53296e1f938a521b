package org.climbwright.gradient.restriction;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.Side;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.speed.AirspeedDifference;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.jspecify.annotations.Nullable;

/**
 * A speed not to exceed, at a point or below an altitude.
 *
 * <pre>{@code
 * SpeedRestriction limit =
 *         SpeedRestriction.below(AltitudeOnQnh.ofFeet(10000), CalibratedAirspeed.ofKnots(250));
 * AltimeterSetting qnh = AltimeterSetting.ofHectopascals(1003);
 * limit.appliesAt(PressureAltitude.ofFlightLevel(102), qnh)                     // true
 * limit.margin(CalibratedAirspeed.ofKnots(265)).inKnots()                       // -15.0…
 * }</pre>
 *
 * <p>Such limits are told in indicated airspeed. Here the calibrated airspeed stands for it: what
 * the position error and the instrument make of it is not in the margin.
 *
 * <p>Limits of use: for study and simulation, not for use in flight. The clearance, the published
 * procedure, local regulations and the flight manual decide.
 */
public final class SpeedRestriction implements Serializable {
    private static final long serialVersionUID = 1L;
    private static final double STEP_M = 100.0;
    private static final ModelRange CAS =
            new ModelRange("calibrated airspeed", 0.0, 1701.5, "m/s", "no limit is of such speed");

    private final double highestCasMps;
    private final @Nullable Level level;
    private final boolean isLevelIncluded;

    private SpeedRestriction(double highestCasMps, @Nullable Level level, boolean isLevelIncluded) {
        this.highestCasMps = CAS.check(highestCasMps);
        this.level = level;
        this.isLevelIncluded = isLevelIncluded;
    }

    /**
     * Returns a limit that holds at any altitude, for a point.
     *
     * @param highest highest calibrated airspeed, to 1701.5 m/s
     * @return the restriction
     * @throws org.climbwright.quantity.OutsideModelException if the speed is out of range
     */
    public static SpeedRestriction notAbove(CalibratedAirspeed highest) {
        return new SpeedRestriction(highest.inMetresPerSecond(), null, false);
    }

    /**
     * Returns a limit that holds below an altitude, and not at it.
     *
     * @param altitude altitude on QNH from which it does not hold any more
     * @param highest highest calibrated airspeed, to 1701.5 m/s
     * @return the restriction
     * @throws org.climbwright.quantity.OutsideModelException if the speed is out of range
     */
    public static SpeedRestriction below(AltitudeOnQnh altitude, CalibratedAirspeed highest) {
        return new SpeedRestriction(highest.inMetresPerSecond(), Level.of(altitude), false);
    }

    /**
     * Returns a limit that holds at and below an altitude.
     *
     * @param altitude highest altitude on QNH at which it holds
     * @param highest highest calibrated airspeed, to 1701.5 m/s
     * @return the restriction
     * @throws org.climbwright.quantity.OutsideModelException if the speed is out of range
     */
    public static SpeedRestriction atOrBelow(AltitudeOnQnh altitude, CalibratedAirspeed highest) {
        return new SpeedRestriction(highest.inMetresPerSecond(), Level.of(altitude), true);
    }

    /**
     * Returns this restriction for an aeroplane whose minimum safe airspeed may be higher.
     *
     * @param minimumSafe minimum safe airspeed of the operation, to 1701.5 m/s
     * @return this restriction, not lower than that speed
     * @throws org.climbwright.quantity.OutsideModelException if the speed is out of range
     * @source 14 CFR 91.117(d)
     */
    public SpeedRestriction orMinimumSafe(CalibratedAirspeed minimumSafe) {
        return new SpeedRestriction(
                Math.max(highestCasMps, minimumSafe.inMetresPerSecond()), level, isLevelIncluded);
    }

    /**
     * Returns the speed not to exceed.
     *
     * @return highest calibrated airspeed
     */
    public CalibratedAirspeed highest() {
        return CalibratedAirspeed.ofMetresPerSecond(highestCasMps);
    }

    /**
     * Returns the level below which it holds.
     *
     * @return the level; empty where it holds at any
     */
    public Optional<Level> level() {
        return Optional.ofNullable(level);
    }

    /**
     * Tells whether it holds at a level of a day.
     *
     * @param pressureAltitudeM pressure altitude [m]
     * @param qnhPa altimeter setting [Pa], 0.886 to 177687
     * @return true where the speed is limited
     * @throws org.climbwright.quantity.OutsideModelException if the setting is out of range
     */
    public boolean appliesAt(double pressureAltitudeM, double qnhPa) {
        if (level == null) {
            return true;
        }
        double below = Figures.withoutRounding(level.pressureAltitude(qnhPa) - pressureAltitudeM);
        return isLevelIncluded ? below >= 0.0 : below > 0.0;
    }

    /**
     * Tells whether it holds at a level of a day.
     *
     * @param altitude pressure altitude of the aeroplane
     * @param qnh altimeter setting of the day
     * @return true where the speed is limited
     */
    public boolean appliesAt(PressureAltitude altitude, AltimeterSetting qnh) {
        return appliesAt(altitude.inMetres(), qnh.inPascals());
    }

    /**
     * Returns how far below the limit a speed is, where the limit holds.
     *
     * @param casMps calibrated airspeed [m/s], 0 to 1701.5
     * @return margin [m/s]; below zero where the speed is too high
     * @throws org.climbwright.quantity.OutsideModelException if the speed is out of range
     * @accuracy half an ulp
     */
    public double margin(double casMps) {
        return highestCasMps - CAS.check(casMps);
    }

    /**
     * Tells whether {@link #margin(double)} has an answer.
     *
     * @param casMps calibrated airspeed [m/s]
     * @return true from 0 to 1701.5
     */
    public static boolean coversMargin(double casMps) {
        return CAS.covers(casMps);
    }

    /**
     * Returns how far below the limit a speed is, where the limit holds.
     *
     * @param speed calibrated airspeed
     * @return the margin; below zero where the speed is too high
     * @throws org.climbwright.quantity.OutsideModelException if the speed is out of range
     */
    public AirspeedDifference margin(CalibratedAirspeed speed) {
        return AirspeedDifference.ofMetresPerSecond(margin(speed.inMetresPerSecond()));
    }

    /**
     * Returns the smallest margin of a climb, over all of it where the limit holds.
     *
     * @param path the climb
     * @param qnh altimeter setting of the day
     * @return the smallest margin, below zero where the climb is too fast somewhere; empty where
     *     the limit holds nowhere on the climb
     * @throws org.climbwright.quantity.OutsideModelException if the altitude is out of range
     * @accuracy exact where speed rises or falls between the bends of the path, as that of a
     *     schedule does; else as its points at most 100 m apart tell
     */
    public Optional<AirspeedDifference> leastMargin(ClimbPath path, AltimeterSetting qnh) {
        double bottom = path.bottom().inMetres();
        double end = path.top().inMetres();
        boolean isEndFlown = true;
        if (level != null && level.pressureAltitude(qnh.inPascals()) <= end) {
            end = level.pressureAltitude(qnh.inPascals());
            isEndFlown = isLevelIncluded;
        }
        if (!(end > bottom || (end == bottom && isEndFlown))) {
            return Optional.empty();
        }
        // from below the end counts in any case: speeds just below it come as close as one likes
        double least = Math.min(margin(path, bottom, Side.ABOVE), margin(path, end, Side.BELOW));
        least = Math.min(least, margin(path, bottom, Side.BELOW));
        if (isEndFlown) {
            least = Math.min(least, margin(path, end, Side.ABOVE));
        }
        double from = bottom;
        for (double bend : path.bendsM()) {
            if (bend >= end) {
                break;
            }
            least = Math.min(least, inside(path, from, bend));
            least = Math.min(least, margin(path, bend, Side.BELOW));
            least = Math.min(least, margin(path, bend, Side.ABOVE));
            from = bend;
        }
        return Optional.of(
                AirspeedDifference.ofMetresPerSecond(Math.min(least, inside(path, from, end))));
    }

    private double inside(ClimbPath path, double from, double to) {
        int steps = (int) Math.ceil((to - from) / STEP_M);
        double least = Double.POSITIVE_INFINITY;
        for (int step = 1; step < steps; step++) {
            least = Math.min(least, margin(path, from + (to - from) * step / steps, Side.ABOVE));
        }
        return least;
    }

    private double margin(ClimbPath path, double altitudeM, Side side) {
        return margin(
                path.at(PressureAltitude.ofMetres(altitudeM), side)
                        .calibratedAirspeed()
                        .inMetresPerSecond());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SpeedRestriction that
                && Double.compare(highestCasMps, that.highestCasMps) == 0
                && Objects.equals(level, that.level)
                && isLevelIncluded == that.isLevelIncluded;
    }

    @Override
    public int hashCode() {
        return Objects.hash(highestCasMps, level, isLevelIncluded);
    }

    /**
     * Returns the restriction in words.
     *
     * @return a text such as {@code "not above 250 kn below 10000 ft on QNH"}; may change between
     *     versions
     */
    @Override
    public String toString() {
        return "not above "
                + Figures.knots(highestCasMps)
                + (level == null ? "" : (isLevelIncluded ? " at or below " : " below ") + level);
    }

    private Object readResolve() {
        return new SpeedRestriction(highestCasMps, level, isLevelIncluded);
    }
}
