package org.climbwright.path;

import java.time.Duration;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundDistance;

/**
 * A climb: where the aeroplane is, how fast and in what air, at every level on the way.
 *
 * <p>It does not matter what made it: a table of rates, an integration of thrust and drag, a
 * recording. Whoever asks a question of the climb takes a path and knows nothing else.
 *
 * <p>Level is the coordinate, so that every level between bottom and top is passed once, upwards.
 * It is not passed in no time, though, where a level is held on the way, or speed is gathered in
 * level flight: there time, distance and mass jump at one level, from {@link Side#BELOW}, the
 * aeroplane as it arrives, to {@link Side#ABOVE}, as it leaves upwards. So they may at the ends: at
 * the bottom {@code BELOW} is where the climb begins, at the top {@code ABOVE} is where it ends,
 * and elsewhere at the ends both sides are one. A time or a distance in between has the aeroplane
 * at that level, where its rate is 0. A climb may also be of no length, with its bottom at its top.
 *
 * <p>Whoever adds something up by level takes {@link #heldLevelsM()} apart from the stretches
 * between, or it is spread over a stretch that knew nothing of it.
 */
public interface ClimbPath {
    /**
     * Returns where the climb begins.
     *
     * @return pressure altitude of the lowest point
     */
    PressureAltitude bottom();

    /**
     * Returns where the climb ends.
     *
     * @return pressure altitude of the highest point
     */
    PressureAltitude top();

    /**
     * Returns why the climb ends at its top.
     *
     * @return the reason in a few words, such as {@code "level reached"}
     */
    String endsBecause();

    /**
     * Tells whether the climb ends at the level that it was meant to reach, and so may be taken to
     * go on there.
     *
     * @return false where something else ended it, such as its ceiling or the end of what is known
     */
    boolean reachesItsLevel();

    /**
     * Returns the aeroplane at a level.
     *
     * @param altitude pressure altitude from bottom to top
     * @param side from which side, where speed, rate or time jumps at that level
     * @return the state
     * @throws org.climbwright.quantity.OutsideModelException if the level is not on the path
     */
    ClimbState at(PressureAltitude altitude, Side side);

    /**
     * Returns where speed, rate, air or wind bends or jumps.
     *
     * <p>Whoever searches along the path takes the stretches between one by one.
     *
     * @return pressure altitudes [m] strictly between bottom and top, rising
     */
    double[] bendsM();

    /**
     * Returns where time jumps: levels that are held, or in which speed is gathered.
     *
     * @return pressure altitudes [m] from bottom to top, rising, these included; each of them
     *     between the two is a bend
     */
    default double[] heldLevelsM() {
        return DoubleStream.concat(
                        DoubleStream.of(bottom().inMetres(), top().inMetres()),
                        DoubleStream.of(bendsM()))
                .sorted()
                .distinct()
                .filter(level -> PathSearch.isHeld(this, level))
                .toArray();
    }

    /**
     * Returns the aeroplane at a level, as it leaves it upwards.
     *
     * @param altitude pressure altitude from bottom to top
     * @return the state
     * @throws org.climbwright.quantity.OutsideModelException if the level is not on the path
     */
    default ClimbState at(PressureAltitude altitude) {
        return at(altitude, Side.ABOVE);
    }

    /**
     * Returns the aeroplane at a time; where a level is held then, at that level.
     *
     * <p>This method knows of a held level no more than how it is reached and left, and answers
     * with what lies between in the share of the time. A path that knows more answers itself.
     *
     * @param time time since the climb began, to that at the top
     * @return the state
     * @throws org.climbwright.quantity.OutsideModelException if the climb is over by then
     * @accuracy 1e-6 m in level
     */
    default ClimbState at(Duration time) {
        return PathSearch.at(
                this,
                "time of the climb",
                time.getSeconds() + time.getNano() / 1e9,
                "s",
                1e-9,
                ClimbState::timeS);
    }

    /**
     * Returns the aeroplane at a distance; where a level is held there, at that level, in the
     * manner of {@link #at(Duration)}.
     *
     * @param distance distance over the ground since the climb began, to that at the top
     * @return the state
     * @throws org.climbwright.quantity.OutsideModelException if the climb is over by then
     * @throws IllegalStateException if the wind is not known all the way, and so no distance is
     * @accuracy 1e-6 m in level
     */
    default ClimbState at(GroundDistance distance) {
        if (at(top(), Side.ABOVE).distance().isEmpty()) {
            throw new IllegalStateException(
                    "the climb has no distances: the wind is not known all the way");
        }
        return PathSearch.at(
                this,
                "distance of the climb",
                distance.inMetres(),
                "m",
                0.0,
                state -> state.distance().orElseThrow().inMetres());
    }

    /**
     * Returns the aeroplane at a distance, as far as distances are known.
     *
     * @param distance distance over the ground since the climb began, 0 or more
     * @return the state; empty where the climb is over by then, or the wind is not known all the
     *     way to there
     * @accuracy 1e-6 m in level
     */
    default Optional<ClimbState> over(GroundDistance distance) {
        return PathSearch.over(this, distance);
    }

    /**
     * Returns the aeroplane some time before a point of this climb.
     *
     * @param state a point of this climb
     * @param lead how long before, 0 or more
     * @return the state; empty where that is before the climb begins
     * @accuracy 1e-6 m in level
     */
    default Optional<ClimbState> before(ClimbState state, Duration lead) {
        Duration time = state.time().minus(lead);
        return time.isNegative() ? Optional.empty() : Optional.of(at(time));
    }
}
