package org.climbwright.path;

import java.io.Serializable;
import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;
import org.climbwright.airspeed.AirspeedConversion;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;

/**
 * The speeds of a climb: a calibrated airspeed, a Mach number from the crossover up, and often a
 * lower calibrated airspeed below some level.
 *
 * <p>At each level the slower of the two counts, the Mach number or the calibrated airspeed; where
 * they are the same speed is the crossover. Between two levels a speed for rough air may stand in
 * for both, though never above the limit, and none is ever below the minimum.
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
    private final RoughAir roughAir;
    private final double minimumCasMps;
    private final SpeedSegments segments;

    /** Speeds between two levels; with its levels the wrong way round there is no rough air. */
    private record RoughAir(double casMps, double mach, double bottomM, double topM)
            implements Serializable {
        static final RoughAir NONE =
                new RoughAir(
                        Double.NaN, Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY);
    }

    private SpeedSchedule(
            double casMps,
            double mach,
            double limitCasMps,
            double limitTopM,
            RoughAir roughAir,
            double minimumCasMps) {
        this.casMps = casMps;
        this.mach = mach;
        this.limitCasMps = limitCasMps;
        this.limitTopM = limitTopM;
        this.roughAir = roughAir;
        this.minimumCasMps = minimumCasMps;
        this.segments = segments();
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
        requireSpeeds(calibratedAirspeed, mach);
        return new SpeedSchedule(
                casMps, mach.number(), Double.NaN, Double.NEGATIVE_INFINITY, RoughAir.NONE, 0.0);
    }

    private static void requireSpeeds(CalibratedAirspeed calibratedAirspeed, Mach mach) {
        double casMps = calibratedAirspeed.inMetresPerSecond();
        if (casMps == 0.0 || mach.number() == 0.0) {
            throw new IllegalArgumentException(
                    "a schedule needs speeds above 0, but had "
                            + calibratedAirspeed.text()
                            + " and "
                            + mach.text());
        }
        AirspeedConversion.crossoverPressure(casMps, mach.number()); // asked for its checks
    }

    /**
     * Returns this schedule with another calibrated airspeed and Mach number; its limit, rough air
     * and minimum stay as they were given.
     *
     * @param calibratedAirspeed the speed below the crossover, from 1 to 1701.47 m/s
     * @param otherMach the speed above the crossover, from 0.01 to 5
     * @return a copy that differs in the two
     * @throws org.climbwright.quantity.OutsideModelException if a speed is out of range
     * @throws IllegalArgumentException if a speed is 0
     */
    public SpeedSchedule withSpeeds(CalibratedAirspeed calibratedAirspeed, Mach otherMach) {
        SpeedSchedule other = of(calibratedAirspeed, otherMach);
        if (!Double.isNaN(limitCasMps)) {
            other =
                    other.withLimit(
                            CalibratedAirspeed.ofMetresPerSecond(limitCasMps),
                            PressureAltitude.ofMetres(limitTopM));
        }
        if (!roughAir.equals(RoughAir.NONE)) {
            other =
                    other.withRoughAir(
                            CalibratedAirspeed.ofMetresPerSecond(roughAir.casMps()),
                            Mach.of(roughAir.mach()),
                            PressureAltitude.ofMetres(roughAir.bottomM()),
                            PressureAltitude.ofMetres(roughAir.topM()));
        }
        return minimum().isPresent() ? other.withMinimum(minimum().orElseThrow()) : other;
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
                casMps,
                mach,
                limit.inMetresPerSecond(), // as given: another speed may come to be above it
                below.inMetres(),
                roughAir,
                minimumCasMps);
    }

    /**
     * Returns this schedule with the speeds for rough air between two levels.
     *
     * @param calibratedAirspeed the speed below its crossover, from 1 to 1701.47 m/s; the limit
     *     still holds below its level
     * @param roughMach the speed above its crossover, from 0.01 to 5
     * @param from where rough air begins
     * @param to where it ends, above that
     * @return a copy with that speed there
     * @throws org.climbwright.quantity.OutsideModelException if a speed is out of range
     * @throws IllegalArgumentException if a speed is 0, or the levels are not one above the other
     */
    public SpeedSchedule withRoughAir(
            CalibratedAirspeed calibratedAirspeed,
            Mach roughMach,
            PressureAltitude from,
            PressureAltitude to) {
        requireSpeeds(calibratedAirspeed, roughMach);
        if (from.compareTo(to) >= 0) {
            throw new IllegalArgumentException(
                    "rough air must end above where it begins, but was from "
                            + from.text()
                            + " to "
                            + to.text());
        }
        return new SpeedSchedule(
                casMps,
                mach,
                limitCasMps,
                limitTopM,
                new RoughAir(
                        calibratedAirspeed.inMetresPerSecond(),
                        roughMach.number(),
                        from.inMetres(),
                        to.inMetres()),
                minimumCasMps);
    }

    /**
     * Returns this schedule with a speed below which it never goes, be it for a limit.
     *
     * @param minimum the lowest calibrated airspeed, from 1 m/s
     * @return a copy with that minimum
     * @throws org.climbwright.quantity.OutsideModelException if the minimum is out of range
     */
    public SpeedSchedule withMinimum(CalibratedAirspeed minimum) {
        AirspeedConversion.crossoverPressure(minimum.inMetresPerSecond(), mach); // for its checks
        return new SpeedSchedule(
                casMps, mach, limitCasMps, limitTopM, roughAir, minimum.inMetresPerSecond());
    }

    private SpeedSegments segments() {
        SpeedSegments.Draft draft = new SpeedSegments.Draft();
        double[] edges = {
            Double.NEGATIVE_INFINITY,
            limitTopM,
            roughAir.bottomM(),
            roughAir.topM(),
            Double.POSITIVE_INFINITY
        };
        Arrays.sort(edges);
        for (int i = 1; i < edges.length; i++) {
            if (edges[i - 1] < edges[i]) {
                addTo(draft, edges[i - 1], edges[i]);
            }
        }
        return draft.segments();
    }

    /** Between two edges limit and rough air hold all the way, or not at all. */
    private void addTo(SpeedSegments.Draft draft, double fromM, double toM) {
        boolean isRough = roughAir.bottomM() <= fromM && toM <= roughAir.topM();
        double cas = isRough ? roughAir.casMps() : casMps;
        double limited = toM <= limitTopM ? Math.min(limitCasMps, cas) : cas;
        draft.add(
                fromM,
                toM,
                Math.max(minimumCasMps, limited),
                isRough ? roughAir.mach() : mach,
                minimumCasMps);
    }

    /**
     * Returns the calibrated airspeed of the schedule.
     *
     * @return the speed below the crossover, where neither limit nor rough air nor minimum counts
     */
    public CalibratedAirspeed calibratedAirspeed() {
        return CalibratedAirspeed.ofMetresPerSecond(casMps);
    }

    /**
     * Returns the Mach number of the schedule.
     *
     * @return the speed above the crossover, where neither rough air nor minimum counts
     */
    public Mach mach() {
        return Mach.of(mach);
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
        int segment = segments.at(pressureAltitudeM, side);
        return segments.isMach(segment)
                ? AirspeedConversion.casFromMach(
                        segments.speed(segment),
                        StandardAir.pressureFromAltitude(pressureAltitudeM))
                : segments.speed(segment);
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
        int segment = segments.at(pressureAltitudeM, side);
        return segments.isMach(segment)
                ? segments.speed(segment)
                : AirspeedConversion.machFromCas(
                        segments.speed(segment),
                        StandardAir.pressureFromAltitude(pressureAltitudeM));
    }

    /**
     * Tells which of the two is held at a level.
     *
     * @param pressureAltitudeM pressure altitude [m]
     * @param side from which side, where the speed changes at that level
     * @return true where the Mach number is held, false where the calibrated airspeed is
     */
    public boolean isMachHeld(double pressureAltitudeM, Side side) {
        return segments.isMach(segments.at(pressureAltitudeM, side));
    }

    /**
     * Returns the speed held at a level, as it was given.
     *
     * @param pressureAltitudeM pressure altitude [m]
     * @param side from which side, where the speed changes at that level
     * @return Mach number where {@link #isMachHeld} says so, else calibrated airspeed [m/s]
     */
    public double held(double pressureAltitudeM, Side side) {
        return segments.speed(segments.at(pressureAltitudeM, side));
    }

    /**
     * Returns where the speed held changes to another: jumps, or crosses over.
     *
     * @return pressure altitudes [m], rising
     */
    public double[] bendsM() {
        return segments.edgesM();
    }

    /**
     * Returns the level up to which the lower speed counts.
     *
     * @return the level; empty without a limit, when the limit is no lower than the schedule, or
     *     when the Mach number counts already below it
     */
    public Optional<PressureAltitude> changeOfSpeed() {
        boolean isFelt =
                limitCasMps < casMps
                        && segments.at(limitTopM, Side.BELOW) != segments.at(limitTopM, Side.ABOVE)
                        && !isMachHeld(limitTopM, Side.BELOW);
        return isFelt ? Optional.of(PressureAltitude.ofMetres(limitTopM)) : Optional.empty();
    }

    /**
     * Returns the lowest level from which the Mach number counts.
     *
     * @return where Mach number and calibrated airspeed are the same speed, be it that of the limit
     *     below its top; the top of the limit if the crossover lies below that; empty when the Mach
     *     number counts at every level of the standard atmosphere, or at none
     */
    public Optional<PressureAltitude> crossover() {
        for (double edge : segments.edgesM()) {
            if (!isMachHeld(edge, Side.BELOW) && isMachHeld(edge, Side.ABOVE)) {
                return Optional.of(PressureAltitude.ofMetres(edge));
            }
        }
        return Optional.empty();
    }

    /**
     * Returns the speed below which it never goes.
     *
     * @return calibrated airspeed; empty without a minimum
     */
    public Optional<CalibratedAirspeed> minimum() {
        return minimumCasMps > 0.0
                ? Optional.of(CalibratedAirspeed.ofMetresPerSecond(minimumCasMps))
                : Optional.empty();
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
        String limited =
                changeOfSpeed()
                        .map(
                                level ->
                                        CalibratedAirspeed.ofMetresPerSecond(limitCasMps).text()
                                                + " to "
                                                + level.text()
                                                + ", then "
                                                + speeds)
                        .orElse(speeds);
        return roughAir.equals(RoughAir.NONE)
                ? limited
                : limited
                        + "; "
                        + CalibratedAirspeed.ofMetresPerSecond(roughAir.casMps()).text()
                        + " or "
                        + Mach.of(roughAir.mach()).text()
                        + " from "
                        + PressureAltitude.ofMetres(roughAir.bottomM()).text()
                        + " to "
                        + PressureAltitude.ofMetres(roughAir.topM()).text();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SpeedSchedule that
                && Double.compare(casMps, that.casMps) == 0
                && Double.compare(mach, that.mach) == 0
                && Double.compare(limitCasMps, that.limitCasMps) == 0
                && Double.compare(limitTopM, that.limitTopM) == 0
                && roughAir.equals(that.roughAir)
                && Double.compare(minimumCasMps, that.minimumCasMps) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(casMps, mach, limitCasMps, limitTopM, roughAir, minimumCasMps);
    }

    private Object readResolve() {
        return withSpeeds(calibratedAirspeed(), mach()); // checks all that was read
    }
}
