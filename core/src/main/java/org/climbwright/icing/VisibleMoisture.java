package org.climbwright.icing;

import java.io.Serializable;
import java.util.List;
import org.climbwright.path.ClimbState;
import org.climbwright.quantity.humidity.RelativeHumidity;

/**
 * What counts as visible moisture along a climb: a relative humidity, stated bands, either of two,
 * or a way of your own.
 *
 * <p>Limits of use: humidity is a stand-in for cloud. A balloon passes beside the cloud that a
 * climb meets; a threshold is a judgement, the caller's.
 */
public interface VisibleMoisture extends Serializable {
    /** Whether there is visible moisture. */
    enum Answer {
        /** There is. */
        PRESENT,
        /** There is none by this way of telling. */
        ABSENT,
        /** It cannot be told. */
        NOT_KNOWN
    }

    /**
     * Tells whether there is visible moisture at a point.
     *
     * @param state a point of a climb
     * @return the answer
     */
    Answer at(ClimbState state);

    /**
     * Returns what was found along a stretch of one answer, against the threshold, in words.
     *
     * @param states points of the stretch, not none
     * @return a part of a sentence
     */
    String found(List<ClimbState> states);

    /**
     * Returns the levels at which the answer may jump, so that no search steps over them.
     *
     * @return pressure altitudes [m], in any order; none where the answer follows the air
     */
    default double[] edgesM() {
        return new double[0];
    }

    /**
     * Returns why it cannot be told along a stretch, in words.
     *
     * @param states points of the stretch, not none
     * @return a part of a sentence
     */
    default String notKnown(List<ClimbState> states) {
        return "humidity is not known, and so moisture is not";
    }

    /**
     * Moisture by relative humidity over water, as radiosondes and reports give it.
     *
     * @param least the lowest that counts, itself included, above 0. Air saturated over ice has 82,
     *     75 and 68 % at -20, -30 and -40 °C: a threshold of 80 % misses ice cloud
     * @return the way of telling
     * @throws IllegalArgumentException if it is 0, which all air has
     */
    static VisibleMoisture ofRelativeHumidity(RelativeHumidity least) {
        return new MoistureByHumidity(least, MoistureByHumidity.Phase.WATER);
    }

    /**
     * Moisture by relative humidity over ice where it freezes, over water where it is warmer.
     *
     * @param least the lowest that counts, itself included, above 0
     * @return the way of telling
     * @throws IllegalArgumentException if it is 0, which all air has
     */
    static VisibleMoisture ofRelativeHumidityOverIce(RelativeHumidity least) {
        return new MoistureByHumidity(least, MoistureByHumidity.Phase.ICE);
    }

    /**
     * Moisture in stated bands; outside of them is none.
     *
     * @param bands all the bands there are, in any order
     * @return the way of telling
     */
    static VisibleMoisture inBands(List<MoistureBand> bands) {
        return new MoistureInBands(bands);
    }

    /**
     * Returns moisture that either tells: present by one is present, and absent only by both.
     *
     * @param other another way of telling
     * @return both together
     */
    default VisibleMoisture or(VisibleMoisture other) {
        return new EitherMoisture(this, other);
    }
}
