package org.climbwright.performance;

import java.io.Serializable;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.climbwright.airspeed.AirspeedConversion;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.numeric.GoldenSection;
import org.climbwright.path.Side;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.jspecify.annotations.Nullable;

/**
 * The best speed of a climb at a level: for the rate, for the angle through the air, or for the
 * gradient over the ground in the wind of the day.
 *
 * <p>It is searched for between the least speed that the caller names and the maximum operating
 * speed or Mach number, whichever is slower, or Mach 1 where neither is known. Each speed is one
 * that is held, with the acceleration factor it has.
 *
 * <p>A function of speed may have several maxima. 97 speeds, evenly spaced in Mach number, decide
 * which is the highest; the golden section finds it between its two neighbours. A maximum narrower
 * than that spacing can be missed.
 *
 * <p>Over the ground a climb is steepest slower against the wind than in calm air, and faster with
 * it: the slower it goes on, the longer it climbs over each mile. (A glide has it the other way.)
 *
 * <p>Limits of use: the speeds of the flight manual and the operator are those to fly; these show
 * what an aeroplane of the caller's figures would do. The least speed must keep the margin to the
 * stall that the rules ask for: nothing here knows the stall.
 *
 * @accuracy of the speed 1e-6 where the function is smooth there; what it is the best of is then
 *     good to 1e-12
 * @source golden section search, as in any textbook of numerical methods
 */
public final class BestClimb implements Serializable {
    private static final long serialVersionUID = 1L;

    /** What ends the speeds from which the best is taken. */
    public enum Bound {
        /** The least speed of the caller. */
        LEAST_SPEED,
        /** The aeroplane's maximum operating speed. */
        MAXIMUM_OPERATING_SPEED,
        /** The aeroplane's maximum operating Mach number. */
        MAXIMUM_OPERATING_MACH,
        /** Mach 1, where what is told here ends; the aeroplane's own limits are not known. */
        END_OF_THE_MODEL
    }

    private static final int CELLS = 96;
    private static final double CLOSE = 1e-8;

    private final ClimbSpeed speed;
    private final ClimbPoint point;
    private final @Nullable Bound bound;

    private BestClimb(ClimbSpeed speed, ClimbPoint point, @Nullable Bound bound) {
        this.speed = speed;
        this.point = point;
        this.bound = bound;
    }

    /**
     * Returns the speed at which the pressure altitude grows fastest.
     *
     * @param conditions aeroplane, air and engines
     * @param level pressure altitude, inside the air
     * @param side from which side, where air or wind bends there
     * @param held which speed is held
     * @param least the least speed, above 0
     * @return the best speed
     * @throws org.climbwright.quantity.OutsideModelException if the air does not reach there
     * @throws IllegalArgumentException if no speed is left, or the forces balance at none
     */
    public static BestClimb rate(
            ClimbConditions conditions,
            PressureAltitude level,
            Side side,
            HeldSpeed held,
            CalibratedAirspeed least) {
        return balanced(
                new Search(conditions, level, side, held, least)
                        .best(ClimbPoint::pressureAltitudeRateMps));
    }

    /**
     * Returns the speed of the steepest climb through the air.
     *
     * @param conditions aeroplane, air and engines
     * @param level pressure altitude, inside the air
     * @param side from which side, where air or wind bends there
     * @param held which speed is held
     * @param least the least speed, above 0
     * @return the best speed
     * @throws org.climbwright.quantity.OutsideModelException if the air does not reach there
     * @throws IllegalArgumentException if no speed is left, or the forces balance at none
     */
    public static BestClimb angle(
            ClimbConditions conditions,
            PressureAltitude level,
            Side side,
            HeldSpeed held,
            CalibratedAirspeed least) {
        return balanced(new Search(conditions, level, side, held, least).best(ClimbPoint::sine));
    }

    /**
     * Returns the speed of the steepest climb over the ground.
     *
     * @param conditions aeroplane, air, winds and engines
     * @param level pressure altitude, inside the air
     * @param side from which side, where air or wind bends there
     * @param held which speed is held
     * @param least the least speed, above 0
     * @return the best speed; empty where the wind is not known, or lets the track be kept at no
     *     speed
     * @throws org.climbwright.quantity.OutsideModelException if the air does not reach there
     * @throws IllegalArgumentException if no speed is left
     */
    public static Optional<BestClimb> overGround(
            ClimbConditions conditions,
            PressureAltitude level,
            Side side,
            HeldSpeed held,
            CalibratedAirspeed least) {
        return new Search(conditions, level, side, held, least)
                .best(ClimbPoint::groundGradientOrNaN);
    }

    private static BestClimb balanced(Optional<BestClimb> found) {
        return found.orElseThrow(
                () -> new IllegalArgumentException("the forces balance at none of the speeds"));
    }

    /**
     * Returns the best speed.
     *
     * @return the speed that is held
     */
    public ClimbSpeed speed() {
        return speed;
    }

    /**
     * Returns the climb at that speed.
     *
     * @return the point
     */
    public ClimbPoint point() {
        return point;
    }

    /**
     * Returns what keeps a better speed away.
     *
     * @return the bound that the best speed lies at; empty where it lies between
     */
    public Optional<Bound> bound() {
        return Optional.ofNullable(bound);
    }

    /**
     * Returns the best speed for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return speed + ": " + point + bound().map(b -> ", at " + b).orElse("");
    }

    /** A search over Mach numbers at one level. */
    private static final class Search {
        private final ClimbConditions conditions;
        private final double altitude;
        private final Side side;
        private final HeldSpeed held;
        private final double pressurePa;
        private final double temperatureK;
        private final double lowest;
        private double highest = 1.0;
        private Bound upper = Bound.END_OF_THE_MODEL;

        Search(
                ClimbConditions conditions,
                PressureAltitude level,
                Side side,
                HeldSpeed held,
                CalibratedAirspeed least) {
            this.conditions = conditions;
            this.altitude = level.inMetres();
            this.side = side;
            this.held = held;
            ClimbAir air = conditions.air();
            temperatureK = air.temperature(air.stretch(altitude, side == Side.ABOVE), altitude);
            pressurePa = StandardAir.pressureFromAltitude(altitude);
            lowest = AirspeedConversion.machFromCas(least.inMetresPerSecond(), pressurePa);
            AeroplaneLimits limits = conditions.aeroplane().limits();
            limits.maximumOperatingMach()
                    .ifPresent(mach -> lower(mach.number(), Bound.MAXIMUM_OPERATING_MACH));
            limits.maximumOperatingSpeed()
                    .map(CalibratedAirspeed::inMetresPerSecond)
                    .filter(cas -> AirspeedConversion.coversCas(cas, pressurePa))
                    .map(cas -> AirspeedConversion.machFromCas(cas, pressurePa))
                    .ifPresent(mach -> lower(mach, Bound.MAXIMUM_OPERATING_SPEED));
            if (!(lowest > 0.0 && lowest < highest)) {
                throw new IllegalArgumentException(
                        "the least speed must be above 0 and below "
                                + Mach.of(highest).text()
                                + ", the fastest at "
                                + level.text()
                                + ", but was "
                                + least.text());
            }
        }

        private void lower(double mach, Bound bound) {
            if (mach < highest) {
                highest = mach;
                upper = bound;
            }
        }

        private ClimbSpeed speed(double mach) {
            return ClimbSpeed.of(held, held.fromMach(mach, pressurePa, temperatureK));
        }

        private double value(double mach, ToDoubleFunction<ClimbPoint> aim) {
            // the way there and back may end an ulp above Mach 1
            double inside = Math.min(mach, 1.0 - 1e-15);
            double value =
                    aim.applyAsDouble(ClimbPoint.of(conditions, altitude, side, speed(inside)));
            return Double.isNaN(value) ? Double.NEGATIVE_INFINITY : value;
        }

        private double at(int cell) {
            // each end as it is, to the last bit
            return cell == CELLS ? highest : lowest + (highest - lowest) * cell / CELLS;
        }

        Optional<BestClimb> best(ToDoubleFunction<ClimbPoint> aim) {
            int first = 0;
            double most = Double.NEGATIVE_INFINITY;
            for (int cell = 0; cell <= CELLS; cell++) {
                double value = value(at(cell), aim);
                if (value > most) {
                    most = value;
                    first = cell;
                }
            }
            if (most == Double.NEGATIVE_INFINITY) {
                return Optional.empty();
            }
            double inner =
                    GoldenSection.highest(
                            mach -> value(mach, aim),
                            at(Math.max(0, first - 1)),
                            at(Math.min(CELLS, first + 1)),
                            CLOSE);
            if (value(inner, aim) > most) {
                return Optional.of(found(inner, null));
            }
            // no better than the best of the scan: that one, be it a bound
            return Optional.of(
                    found(
                            at(first),
                            first == 0 ? Bound.LEAST_SPEED : first == CELLS ? upper : null));
        }

        private BestClimb found(double mach, @Nullable Bound bound) {
            ClimbSpeed best = speed(Math.min(mach, 1.0 - 1e-15));
            return new BestClimb(
                    best, ClimbPoint.of(conditions, altitude, side, best).checked(), bound);
        }
    }
}
