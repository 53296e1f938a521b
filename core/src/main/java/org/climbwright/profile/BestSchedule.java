package org.climbwright.profile;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.climbwright.numeric.GoldenSection;
import org.climbwright.path.SpeedSchedule;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.CalibratedAirspeed;

/**
 * The calibrated airspeed with which a climb takes least fuel, or least time, to its level; Mach
 * number, limit and all else of its programme stay.
 *
 * <p>The whole climb is flown at 17 speeds, evenly spaced, of which those that do not reach the
 * level drop out; from the best the golden section goes on between its two neighbours. A best that
 * is narrower than that spacing can be missed.
 *
 * <p>Limits of use: this is to the top of the climb only and says nothing of the whole flight. A
 * slow climb takes little fuel to the level and ends near: what it saves may be lost again over the
 * distance that is left. The speeds of the flight manual and the operator are those to fly; the
 * slowest speed must keep the margins that the rules ask for, of which nothing is known here.
 *
 * @accuracy of the speed 0.1 kn where fuel or time is smooth there; of what it saves that of {@link
 *     AeroplaneClimb#between}
 * @source golden section search over climbs as they are flown
 */
public final class BestSchedule {
    private static final int CELLS = 16;
    private static final double CLOSE = 1e-5;

    private final CalibratedAirspeed speed;
    private final ClimbDifference difference;
    private final boolean isAtBound;

    private BestSchedule(CalibratedAirspeed speed, ClimbDifference difference, boolean isAtBound) {
        this.speed = speed;
        this.difference = difference;
        this.isAtBound = isAtBound;
    }

    /**
     * Returns the speed with which the climb takes least fuel.
     *
     * @param climb the climb as it is
     * @param bottom where it begins, inside the air
     * @param level where it ends, above the bottom
     * @param slowest the least calibrated airspeed, 1 m/s or more
     * @param fastest the highest, above that and up to the aeroplane's maximum operating speed
     * @return the best; empty where the climb reaches the level with none of the speeds
     * @throws org.climbwright.quantity.OutsideModelException if the bottom is outside the air or a
     *     speed is out of range
     * @throws IllegalArgumentException if the speeds or the levels are not one above the other, or
     *     the fastest is above the aeroplane's maximum operating speed
     */
    public static Optional<BestSchedule> ofLeastFuel(
            AeroplaneClimb climb,
            PressureAltitude bottom,
            PressureAltitude level,
            CalibratedAirspeed slowest,
            CalibratedAirspeed fastest) {
        return new Search(
                        climb,
                        bottom,
                        level,
                        slowest,
                        fastest,
                        profile -> profile.fuel().inKilograms())
                .best();
    }

    /**
     * Returns the speed with which the climb takes least time.
     *
     * @param climb the climb as it is
     * @param bottom where it begins, inside the air
     * @param level where it ends, above the bottom
     * @param slowest the least calibrated airspeed, 1 m/s or more
     * @param fastest the highest, above that and up to the aeroplane's maximum operating speed
     * @return the best; empty where the climb reaches the level with none of the speeds
     * @throws org.climbwright.quantity.OutsideModelException if the bottom is outside the air or a
     *     speed is out of range
     * @throws IllegalArgumentException if the speeds or the levels are not one above the other, or
     *     the fastest is above the aeroplane's maximum operating speed
     */
    public static Optional<BestSchedule> ofLeastTime(
            AeroplaneClimb climb,
            PressureAltitude bottom,
            PressureAltitude level,
            CalibratedAirspeed slowest,
            CalibratedAirspeed fastest) {
        return new Search(climb, bottom, level, slowest, fastest, ClimbProfile::timeS).best();
    }

    /**
     * Returns the best speed.
     *
     * @return calibrated airspeed below the crossover, above the limit
     */
    public CalibratedAirspeed calibratedAirspeed() {
        return speed;
    }

    /**
     * Returns the climb with that speed.
     *
     * @return its path
     */
    public ClimbProfile profile() {
        return difference.after();
    }

    /**
     * Returns what the best speed saves of the climb as it was.
     *
     * @return the difference to it; where that does not reach the level, to its top
     */
    public ClimbDifference difference() {
        return difference;
    }

    /**
     * Tells whether a bound of the caller keeps a better speed away, so that the best is only the
     * best of those allowed.
     *
     * @return true if the best is the slowest or the fastest
     */
    public boolean isAtBound() {
        return isAtBound;
    }

    /**
     * Returns the best speed for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return speed.text() + (isAtBound ? ", at the bound: " : ": ") + profile();
    }

    /** A search over calibrated airspeeds. */
    private static final class Search {
        private final AeroplaneClimb climb;
        private final PressureAltitude bottom;
        private final PressureAltitude level;
        private final double slowest;
        private final double fastest;
        private final ToDoubleFunction<ClimbProfile> cost;

        Search(
                AeroplaneClimb climb,
                PressureAltitude bottom,
                PressureAltitude level,
                CalibratedAirspeed slowest,
                CalibratedAirspeed fastest,
                ToDoubleFunction<ClimbProfile> cost) {
            this.climb = climb;
            this.bottom = bottom;
            this.level = level;
            this.slowest = slowest.inMetresPerSecond();
            this.fastest = fastest.inMetresPerSecond();
            this.cost = cost;
            if (slowest.compareTo(fastest) >= 0) {
                throw new IllegalArgumentException(
                        "the slowest speed must be below the fastest of "
                                + fastest.text()
                                + ", but was "
                                + slowest.text());
            }
            climb.aeroplane()
                    .limits()
                    .maximumOperatingSpeed()
                    .filter(most -> fastest.compareTo(most) > 0)
                    .ifPresent(
                            most -> {
                                throw new IllegalArgumentException(
                                        "the fastest speed must be up to the maximum operating"
                                                + " speed of "
                                                + most.text()
                                                + ", but was "
                                                + fastest.text());
                            });
        }

        private ClimbProfile flown(double casMps) {
            SpeedSchedule speeds = climb.programme().speeds();
            ClimbProgramme programme =
                    climb.programme()
                            .withSpeeds(
                                    speeds.withSpeeds(
                                            CalibratedAirspeed.ofMetresPerSecond(casMps),
                                            speeds.mach()));
            return new AeroplaneClimb(climb.aeroplane(), climb.mass(), programme, climb.air())
                    .between(bottom, level);
        }

        /** What is saved, the more the better; a climb that ends lower saves nothing. */
        private double saved(double casMps) {
            ClimbProfile profile = flown(casMps);
            return profile.top().compareTo(level) < 0
                    ? Double.NEGATIVE_INFINITY
                    : -cost.applyAsDouble(profile);
        }

        private double at(int cell) {
            // each end as it is, to the last bit
            return cell == CELLS ? fastest : slowest + (fastest - slowest) * cell / CELLS;
        }

        Optional<BestSchedule> best() {
            int first = 0;
            double most = Double.NEGATIVE_INFINITY;
            for (int cell = 0; cell <= CELLS; cell++) {
                double saved = saved(at(cell));
                if (saved > most) {
                    most = saved;
                    first = cell;
                }
            }
            if (most == Double.NEGATIVE_INFINITY) {
                return Optional.empty();
            }
            double inner =
                    GoldenSection.highest(
                            this::saved,
                            at(Math.max(0, first - 1)),
                            at(Math.min(CELLS, first + 1)),
                            CLOSE);
            // no better than the best of the 17: that one, be it a bound
            boolean isInner = saved(inner) > most;
            boolean isAtBound = !isInner && (first == 0 || first == CELLS);
            return Optional.of(found(isInner ? inner : at(first), isAtBound));
        }

        private BestSchedule found(double casMps, boolean isAtBound) {
            CalibratedAirspeed speed = CalibratedAirspeed.ofMetresPerSecond(casMps);
            ClimbProfile before = climb.between(bottom, level);
            ClimbProfile after = flown(casMps);
            ClimbChange change = ClimbChange.of(speed.text(), any -> after.climb());
            return new BestSchedule(speed, new ClimbDifference(change, before, after), isAtBound);
        }
    }
}
