package org.climbwright.airspeed;

import java.util.List;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.IndicatedAirspeed;

/**
 * What lies between an airspeed indicator and calibrated airspeed, both ways: a plug.
 *
 * <p>The static source does not feel the pressure of the free air, and by how much depends on the
 * aeroplane, its speed and its configuration. A curve of your own is four methods; a table of the
 * flight manual is {@link #table}.
 *
 * <pre>{@code
 * PositionError curve = PositionError.table(
 *         List.of(IndicatedAirspeed.ofKnots(100), IndicatedAirspeed.ofKnots(200)),
 *         List.of(CalibratedAirspeed.ofKnots(103), CalibratedAirspeed.ofKnots(201)));
 * curve.calibrated(IndicatedAirspeed.ofKnots(150)).text()     // "152 kn"
 * }</pre>
 *
 * <p>Limits of use: the figures are those of one aeroplane in one configuration, from its flight
 * manual; none are built in, and none are guessed.
 *
 * <p>An implementation is immutable, rises in both directions and gives back what came in.
 */
public interface PositionError {
    /**
     * Tells whether the curve reaches an indicated airspeed.
     *
     * @param iasMps indicated airspeed [m/s]
     * @return true if {@link #calibratedFromIndicated} answers
     */
    boolean coversIndicated(double iasMps);

    /**
     * Tells whether the curve reaches a calibrated airspeed.
     *
     * @param casMps calibrated airspeed [m/s]
     * @return true if {@link #indicatedFromCalibrated} answers
     */
    boolean coversCalibrated(double casMps);

    /**
     * Returns the calibrated airspeed of an indicated one.
     *
     * @param iasMps indicated airspeed [m/s], where the curve {@link #coversIndicated covers} it
     * @return calibrated airspeed [m/s]
     * @throws org.climbwright.quantity.OutsideModelException if the curve does not reach there
     */
    double calibratedFromIndicated(double iasMps);

    /**
     * Returns the indicated airspeed of a calibrated one, the inverse of {@link
     * #calibratedFromIndicated}.
     *
     * @param casMps calibrated airspeed [m/s], where the curve {@link #coversCalibrated covers} it
     * @return indicated airspeed [m/s]
     * @throws org.climbwright.quantity.OutsideModelException if the curve does not reach there
     */
    double indicatedFromCalibrated(double casMps);

    /**
     * Returns the calibrated airspeed of an indicated one.
     *
     * @param indicated what the indicator shows
     * @return see {@link #calibratedFromIndicated}
     * @throws org.climbwright.quantity.OutsideModelException if the curve does not reach there
     */
    default CalibratedAirspeed calibrated(IndicatedAirspeed indicated) {
        return CalibratedAirspeed.ofMetresPerSecond(
                calibratedFromIndicated(indicated.inMetresPerSecond()));
    }

    /**
     * Returns the indicated airspeed of a calibrated one.
     *
     * @param calibrated calibrated airspeed
     * @return see {@link #indicatedFromCalibrated}
     * @throws org.climbwright.quantity.OutsideModelException if the curve does not reach there
     */
    default IndicatedAirspeed indicated(CalibratedAirspeed calibrated) {
        return IndicatedAirspeed.ofMetresPerSecond(
                indicatedFromCalibrated(calibrated.inMetresPerSecond()));
    }

    /**
     * Returns the curve of an indicator without error.
     *
     * @return indicated and calibrated airspeed are the same number, from 0 to 1701.47 m/s
     */
    static PositionError none() {
        return PositionErrorTable.none();
    }

    /**
     * Returns a curve by a table, linear between its points and refused outside them.
     *
     * @param indicated indicated airspeeds, rising; at least two
     * @param calibrated the calibrated airspeed of each, rising too
     * @return the curve, which is serializable
     * @throws IllegalArgumentException if there are fewer than two points, the numbers of both
     *     differ, or one does not rise
     */
    static PositionError table(
            List<IndicatedAirspeed> indicated, List<CalibratedAirspeed> calibrated) {
        return PositionErrorTable.of(
                indicated.stream().mapToDouble(IndicatedAirspeed::inMetresPerSecond).toArray(),
                calibrated.stream().mapToDouble(CalibratedAirspeed::inMetresPerSecond).toArray());
    }
}
