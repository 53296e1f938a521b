package org.climbwright.profile;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import org.climbwright.gradient.restriction.Restriction;
import org.climbwright.icing.ProtectionPlan;
import org.climbwright.path.SpeedSchedule;
import org.climbwright.performance.EngineUse;
import org.climbwright.performance.ReducedThrust;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.speed.PressureAltitudeRate;

/**
 * How a climb is flown: speeds, how they change, what is held on the way and what has to be kept.
 *
 * <pre>{@code
 * SpeedSchedule speeds = SpeedSchedule.of(CalibratedAirspeed.ofKnots(290), Mach.of(0.76))
 *         .withLimit(CalibratedAirspeed.ofKnots(250), PressureAltitude.ofFeet(10000));
 * ClimbProgramme programme = ClimbProgramme.of(speeds, 0.4)
 *         .withHeldLevels(List.of(
 *                 HeldLevel.during(PressureAltitude.ofFlightLevel(120), Duration.ofMinutes(2))));
 * }</pre>
 *
 * <p>Limits of use: for study and simulation; the flight manual, the operator and the controller
 * say how a climb is flown.
 */
public final class ClimbProgramme {
    private static final ModelRange SHARE =
            new ModelRange(
                    "share of the excess power that climbs while the speed changes",
                    0.0,
                    0.95,
                    "",
                    "the rest must be enough to accelerate");

    private static final PressureAltitudeRate LEAST = PressureAltitudeRate.ofFeetPerMinute(100);
    private static final PressureAltitudeRate LOW = PressureAltitudeRate.ofFeetPerMinute(500);

    private final Parts parts;

    private ClimbProgramme(Parts parts) {
        this.parts = parts;
    }

    /** What it is made of; never changed once it is in a programme. */
    private static final class Parts {
        private SpeedSchedule speeds;
        private double share;
        private Optional<EngineUse> engines = Optional.empty();
        private ReducedThrust reducedThrust = ReducedThrust.none();
        private List<HeldRate> heldRates = List.of();
        private List<HeldLevel> heldLevels = List.of();
        private List<NamedPoint> points = List.of();
        private List<LevelMark> marks = List.of();
        private List<Restriction> restrictions = List.of();
        private Optional<AltimeterSetting> qnh = Optional.empty();
        private List<ProtectionPlan> iceProtection = List.of();
        private PressureAltitudeRate leastRate = LEAST;
        private PressureAltitudeRate lowRate = LOW;

        Parts(SpeedSchedule speeds, double share) {
            this.speeds = speeds;
            this.share = share;
        }

        Parts(Parts other) {
            this(other.speeds, other.share);
            engines = other.engines;
            reducedThrust = other.reducedThrust;
            heldRates = other.heldRates;
            heldLevels = other.heldLevels;
            points = other.points;
            marks = other.marks;
            restrictions = other.restrictions;
            qnh = other.qnh;
            iceProtection = other.iceProtection;
            leastRate = other.leastRate;
            lowRate = other.lowRate;
        }
    }

    /**
     * Returns a programme of speeds alone, with all engines, that ends where the rate has fallen to
     * 100 ft/min and reports one below 500 ft/min.
     *
     * @param speeds the speeds
     * @param accelerationShare the part of the excess power that goes into the climb while the
     *     aeroplane accelerates, 0 to 0.95; with 0 it accelerates in level flight. While it slows
     *     down the climb has the whole of it and half of what is left of the share more, {@code 1 +
     *     (1 - share) / 2}
     * @return the programme
     * @throws org.climbwright.quantity.OutsideModelException if the share is out of range
     */
    public static ClimbProgramme of(SpeedSchedule speeds, double accelerationShare) {
        return new ClimbProgramme(
                new Parts(
                        Objects.requireNonNull(speeds, "speeds"), SHARE.check(accelerationShare)));
    }

    /**
     * Tells whether a share of the excess power can be while the aeroplane accelerates.
     *
     * @param share the share
     * @return true from 0 to 0.95
     */
    public static boolean coversAccelerationShare(double share) {
        return SHARE.covers(share);
    }

    private ClimbProgramme with(Consumer<Parts> change) {
        Parts copy = new Parts(parts);
        change.accept(copy);
        return new ClimbProgramme(copy);
    }

    /**
     * Returns this programme with other speeds.
     *
     * @param speeds the speeds
     * @return a copy that differs in them
     * @throws IllegalArgumentException see {@link #withHeldRates}
     */
    public ClimbProgramme withSpeeds(SpeedSchedule speeds) {
        requireMinimum(speeds, parts.heldRates);
        return with(copy -> copy.speeds = speeds);
    }

    /**
     * Returns this programme with another share of the excess power while it accelerates.
     *
     * @param share the part that goes into the climb, 0 to 0.95, see {@link #of}
     * @return a copy that differs in it
     * @throws org.climbwright.quantity.OutsideModelException if the share is out of range
     */
    public ClimbProgramme withAccelerationShare(double share) {
        SHARE.check(share);
        return with(copy -> copy.share = share);
    }

    /**
     * Returns this programme with other use of the engines.
     *
     * @param use how many run, at what rating, and what bleed there is all the way
     * @return a copy that differs in it
     */
    public ClimbProgramme withEngines(EngineUse use) {
        return with(copy -> copy.engines = Optional.of(use));
    }

    /**
     * Returns this programme with thrust that is reduced below some level.
     *
     * @param reduced how much, and where it is full again
     * @return a copy that differs in it
     */
    public ClimbProgramme withReducedThrust(ReducedThrust reduced) {
        return with(copy -> copy.reducedThrust = Objects.requireNonNull(reduced, "reduced"));
    }

    /**
     * Returns this programme with rates that are held.
     *
     * @param rates the rates, in any order; their levels do not overlap
     * @return a copy that differs in them
     * @throws IllegalArgumentException if levels overlap, or speed is to give and the schedule has
     *     no minimum speed
     */
    public ClimbProgramme withHeldRates(List<HeldRate> rates) {
        List<HeldRate> upwards =
                rates.stream().sorted((a, b) -> a.from().compareTo(b.from())).toList();
        for (int i = 1; i < upwards.size(); i++) {
            if (upwards.get(i).from().compareTo(upwards.get(i - 1).to()) < 0) {
                throw new IllegalArgumentException(
                        "one rate can be held at a level, but at "
                                + upwards.get(i).from().text()
                                + " there were "
                                + upwards.get(i - 1).rate().text()
                                + " and "
                                + upwards.get(i).rate().text());
            }
        }
        requireMinimum(parts.speeds, upwards);
        return with(copy -> copy.heldRates = upwards);
    }

    private static void requireMinimum(SpeedSchedule speeds, List<HeldRate> rates) {
        if (speeds.minimum().isEmpty()
                && rates.stream().anyMatch(rate -> rate.gives() == HeldRate.Gives.SPEED)) {
            throw new IllegalArgumentException(
                    "a rate for which speed gives needs a schedule with a minimum speed");
        }
    }

    /**
     * Returns this programme with levels that are held on the way.
     *
     * @param levels the levels, in any order
     * @return a copy that differs in them
     */
    public ClimbProgramme withHeldLevels(List<HeldLevel> levels) {
        List<HeldLevel> copied = List.copyOf(levels);
        return with(copy -> copy.heldLevels = copied);
    }

    /**
     * Returns this programme with points at which time and fuel are told.
     *
     * @param points the points, in any order
     * @return a copy that differs in them
     */
    public ClimbProgramme withPoints(List<NamedPoint> points) {
        List<NamedPoint> copied = List.copyOf(points);
        return with(copy -> copy.points = copied);
    }

    /**
     * Returns this programme with levels of the air or the altimeter to be told among the events.
     *
     * @param marks the levels, in any order
     * @return a copy that differs in them
     */
    public ClimbProgramme withMarks(List<LevelMark> marks) {
        List<LevelMark> copied = List.copyOf(marks);
        return with(copy -> copy.marks = copied);
    }

    /**
     * Returns this programme with restrictions: where one has a highest level, the climb stops
     * there until its point is passed. What it makes of the others is for {@link
     * org.climbwright.gradient.restriction.Restrictions} to tell of the path.
     *
     * @param restrictions the restrictions, in any order
     * @param qnh altimeter setting of the day, for levels on QNH
     * @return a copy that differs in them
     */
    public ClimbProgramme withRestrictions(List<Restriction> restrictions, AltimeterSetting qnh) {
        List<Restriction> copied = List.copyOf(restrictions);
        return with(
                copy -> {
                    copy.restrictions = copied;
                    copy.qnh = Optional.of(qnh);
                });
    }

    /**
     * Returns this programme with ice protection, whose bleed costs thrust from when it is on until
     * it is off.
     *
     * @param plans what is protected, and by which rule
     * @return a copy that differs in them
     */
    public ClimbProgramme withIceProtection(List<ProtectionPlan> plans) {
        List<ProtectionPlan> copied = List.copyOf(plans);
        return with(copy -> copy.iceProtection = copied);
    }

    /**
     * Returns this programme that ends at another rate.
     *
     * @param rate the rate at which the ceiling is reached, above 0
     * @return a copy that differs in it
     * @throws IllegalArgumentException if it is not above 0: at no rate the time has no end
     */
    public ClimbProgramme withLeastRate(PressureAltitudeRate rate) {
        requireAbove0(rate);
        return with(copy -> copy.leastRate = rate);
    }

    /**
     * Returns this programme that reports another low rate.
     *
     * @param rate the rate below which it is reported, above 0
     * @return a copy that differs in it
     * @throws IllegalArgumentException if it is not above 0
     */
    public ClimbProgramme withLowRate(PressureAltitudeRate rate) {
        requireAbove0(rate);
        return with(copy -> copy.lowRate = rate);
    }

    private static void requireAbove0(PressureAltitudeRate rate) {
        if (!(rate.inMetresPerSecond() > 0.0)) {
            throw new IllegalArgumentException(
                    "a least or low rate of climb must be above 0 ft/min, but was " + rate.text());
        }
    }

    /**
     * Returns the speeds.
     *
     * @return the schedule
     */
    public SpeedSchedule speeds() {
        return parts.speeds;
    }

    /**
     * Returns the part of the excess power that goes into the climb while the aeroplane
     * accelerates.
     *
     * @return share, 0 to 0.95
     */
    public double accelerationShare() {
        return parts.share;
    }

    /**
     * Returns how the engines are used.
     *
     * @return the use; empty for all engines at the rating of the climb
     */
    public Optional<EngineUse> engines() {
        return parts.engines;
    }

    /**
     * Returns how thrust is reduced.
     *
     * @return the reduction, which may be none
     */
    public ReducedThrust reducedThrust() {
        return parts.reducedThrust;
    }

    /**
     * Returns the rates that are held.
     *
     * @return the rates, upwards
     */
    public List<HeldRate> heldRates() {
        return parts.heldRates;
    }

    /**
     * Returns the levels that are held.
     *
     * @return the levels, as they were given
     */
    public List<HeldLevel> heldLevels() {
        return parts.heldLevels;
    }

    /**
     * Returns the points at which time and fuel are told.
     *
     * @return the points, as they were given
     */
    public List<NamedPoint> points() {
        return parts.points;
    }

    /**
     * Returns the levels to be told among the events.
     *
     * @return the levels, as they were given
     */
    public List<LevelMark> marks() {
        return parts.marks;
    }

    /**
     * Returns the restrictions.
     *
     * @return the restrictions, as they were given
     */
    public List<Restriction> restrictions() {
        return parts.restrictions;
    }

    /**
     * Returns the altimeter setting of the restrictions.
     *
     * @return QNH; empty where there are no restrictions
     */
    public Optional<AltimeterSetting> qnh() {
        return parts.qnh;
    }

    /**
     * Returns what is protected from ice.
     *
     * @return the plans, as they were given
     */
    public List<ProtectionPlan> iceProtection() {
        return parts.iceProtection;
    }

    /**
     * Returns the rate at which the ceiling is reached.
     *
     * @return rate of pressure altitude
     */
    public PressureAltitudeRate leastRate() {
        return parts.leastRate;
    }

    /**
     * Returns the rate below which it is reported.
     *
     * @return rate of pressure altitude
     */
    public PressureAltitudeRate lowRate() {
        return parts.lowRate;
    }

    /**
     * Returns the programme for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return parts.speeds
                + ", "
                + Math.rint(parts.share * 1000.0) / 10.0
                + " % of the excess climbs while it accelerates, "
                + parts.heldRates.size()
                + " rates and "
                + parts.heldLevels.size()
                + " levels held, "
                + parts.restrictions.size()
                + " restrictions, "
                + parts.points.size()
                + " points";
    }
}
