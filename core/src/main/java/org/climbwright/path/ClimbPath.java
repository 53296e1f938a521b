package org.climbwright.path;

import java.time.Duration;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundDistance;

/**
 * A climb: where the aeroplane is, how fast and in what air, at every level on the way.
 *
 * <p>It does not matter what made it: a table of rates, an integration of thrust and drag, a
 * recording. Whoever asks a question of the climb takes a path and knows nothing else.
 *
 * <p>Level is the coordinate, so that every level between bottom and top is passed once, upwards.
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
     * Returns the aeroplane at a level.
     *
     * @param altitude pressure altitude from bottom to top
     * @param side from which side, where speed or rate jumps at that level
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
     * Returns the aeroplane at a time.
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
     * Returns the aeroplane at a distance.
     *
     * @param distance distance over the ground since the climb began, to that at the top
     * @return the state
     * @throws org.climbwright.quantity.OutsideModelException if the climb is over by then
     * @throws IllegalStateException if the wind is not known all the way, and so no distance is
     * @accuracy 1e-6 m in level
     */
    default ClimbState at(GroundDistance distance) {
        if (at(top(), Side.BELOW).distance().isEmpty()) {
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
}
