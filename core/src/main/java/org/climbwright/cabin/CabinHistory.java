package org.climbwright.cabin;

import java.io.Serializable;
import java.time.Duration;
import java.util.Arrays;
import java.util.Optional;
import org.climbwright.quantity.altitude.CabinAltitude;

/**
 * What the cabin of a flight did: samples of time, of the aeroplane's pressure altitude and of the
 * cabin altitude. Both altitudes run straight from one sample to the next.
 *
 * <pre>{@code
 * double[] timeS = {0, 600, 1200};
 * double[] aeroplaneM = {0, 6000, 11000};
 * double[] cabinM = {0, 1200, 2400};
 * CabinHistory history = CabinHistory.ofSi(timeS, aeroplaneM, cabinM);
 * history.timeAbove(CabinAltitude.ofMetres(1800))        // PT5M
 * history.highest()                                      // 2400.0 m (7874.015748031496 ft)
 * }</pre>
 *
 * <p>Times are those of the recording's own clock, whatever its zero.
 *
 * <p>Limits of use: between samples nothing is known, so a peak that no sample saw is not here. For
 * study; checklists and memory items are the operator's, and the flight manual, local regulations
 * and licensed practice decide.
 */
public final class CabinHistory implements Serializable {
    private static final long serialVersionUID = 1L;

    private final double[] timeS;
    private final double[] pressureAltitudeM;
    private final double[] cabinAltitudeM;

    private CabinHistory(double[] timeS, double[] pressureAltitudeM, double[] cabinAltitudeM) {
        this.timeS = timeS.clone();
        this.pressureAltitudeM = pressureAltitudeM.clone();
        this.cabinAltitudeM = cabinAltitudeM.clone();
        // The copies: what is handed in may change in between.
        DifferentialRange.check(this.timeS, this.pressureAltitudeM, this.cabinAltitudeM);
    }

    /**
     * Returns the history of samples in SI, of which it keeps copies.
     *
     * @param timeS times [s], each later than the one before, -4e9 to 4e9
     * @param pressureAltitudeM pressure altitudes of the aeroplane [m], -5000 to 32000, as many
     * @param cabinAltitudeM cabin altitudes [m], -5000 to 32000, as many
     * @return the history
     * @throws IllegalArgumentException if there is no sample, the arrays are not of one length, or
     *     the times do not rise
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     */
    public static CabinHistory ofSi(
            double[] timeS, double[] pressureAltitudeM, double[] cabinAltitudeM) {
        return new CabinHistory(timeS, pressureAltitudeM, cabinAltitudeM);
    }

    /**
     * Tells whether samples make a history.
     *
     * @param timeS times [s]
     * @param pressureAltitudeM pressure altitudes of the aeroplane [m]
     * @param cabinAltitudeM cabin altitudes [m]
     * @return true if {@link #ofSi} takes them
     */
    public static boolean covers(
            double[] timeS, double[] pressureAltitudeM, double[] cabinAltitudeM) {
        return DifferentialRange.covers(timeS, pressureAltitudeM, cabinAltitudeM);
    }

    /**
     * Returns how many samples there are.
     *
     * @return the number, 1 or more
     */
    public int size() {
        return timeS.length;
    }

    /**
     * Returns the time of a sample.
     *
     * @param index of the sample, from 0
     * @return time [s]
     * @throws IndexOutOfBoundsException if there is no such sample
     */
    public double timeS(int index) {
        return timeS[index];
    }

    /**
     * Returns the pressure altitude of the aeroplane in a sample.
     *
     * @param index of the sample, from 0
     * @return pressure altitude [m]
     * @throws IndexOutOfBoundsException if there is no such sample
     */
    public double pressureAltitudeM(int index) {
        return pressureAltitudeM[index];
    }

    /**
     * Returns the cabin altitude in a sample.
     *
     * @param index of the sample, from 0
     * @return cabin altitude [m]
     * @throws IndexOutOfBoundsException if there is no such sample
     */
    public double cabinAltitudeM(int index) {
        return cabinAltitudeM[index];
    }

    /**
     * Returns how long the record is.
     *
     * @return the time from the first sample to the last, to a nanosecond
     */
    public Duration length() {
        return duration(timeS[timeS.length - 1] - timeS[0]);
    }

    /**
     * Returns the highest cabin altitude.
     *
     * @return that of the highest sample
     */
    public CabinAltitude highest() {
        return CabinAltitude.ofMetres(cabinAltitudeM[indexOfHighest()]);
    }

    /**
     * Returns when the cabin was highest first.
     *
     * @return the time on the recording's clock, to a nanosecond
     */
    public Duration timeOfHighest() {
        return duration(timeS[indexOfHighest()]);
    }

    private int indexOfHighest() {
        int highest = 0;
        for (int i = 1; i < cabinAltitudeM.length; i++) {
            highest = cabinAltitudeM[i] > cabinAltitudeM[highest] ? i : highest;
        }
        return highest;
    }

    /**
     * Returns when the cabin was first at a level or above it.
     *
     * @param level the level, -5000 to 32000 m
     * @return the time on the recording's clock, to a nanosecond; empty if it never was
     * @throws org.climbwright.quantity.OutsideModelException if the level is out of range
     */
    public Optional<Duration> firstAtOrAbove(CabinAltitude level) {
        double first = TimeAtAltitude.firstAtOrAbove(timeS, cabinAltitudeM, level.inMetres());
        return Double.isNaN(first) ? Optional.empty() : Optional.of(duration(first));
    }

    /**
     * Returns how long the cabin was above a level, all excursions together.
     *
     * @param level the level, -5000 to 32000 m, not counted itself
     * @return the time, to a nanosecond
     * @throws org.climbwright.quantity.OutsideModelException if the level is out of range
     */
    public Duration timeAbove(CabinAltitude level) {
        return duration(TimeAtAltitude.above(timeS, cabinAltitudeM, level.inMetres()));
    }

    /**
     * Returns the longest time that the cabin was above a level without coming back to it.
     *
     * @param level the level, -5000 to 32000 m; to touch it ends an excursion
     * @return the time, to a nanosecond
     * @throws org.climbwright.quantity.OutsideModelException if the level is out of range
     */
    public Duration longestTimeAbove(CabinAltitude level) {
        return duration(TimeAtAltitude.longestAbove(timeS, cabinAltitudeM, level.inMetres()));
    }

    /**
     * Returns the cabin altitude at a time.
     *
     * @param time on the recording's clock, from the first sample to the last
     * @return the altitude, on the straight line between the samples beside it
     * @throws org.climbwright.quantity.OutsideModelException if the time lies outside the record
     */
    public CabinAltitude cabinAltitudeAt(Duration time) {
        double atS = time.getSeconds() + time.getNano() / 1e9;
        return CabinAltitude.ofMetres(TimeAtAltitude.altitudeAt(timeS, cabinAltitudeM, atS));
    }

    /**
     * Returns the smallest and the largest differential pressure, and when they were.
     *
     * @return see {@link DifferentialRange#ofSi}
     */
    public DifferentialRange differentialRange() {
        return DifferentialRange.ofSi(timeS, pressureAltitudeM, cabinAltitudeM);
    }

    static Duration duration(double seconds) {
        return Duration.ofNanos(Math.round(seconds * 1e9));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof CabinHistory that
                && Arrays.equals(timeS, that.timeS)
                && Arrays.equals(pressureAltitudeM, that.pressureAltitudeM)
                && Arrays.equals(cabinAltitudeM, that.cabinAltitudeM);
    }

    @Override
    public int hashCode() {
        int hash = Arrays.hashCode(timeS);
        hash = 31 * hash + Arrays.hashCode(pressureAltitudeM);
        return 31 * hash + Arrays.hashCode(cabinAltitudeM);
    }

    /**
     * Returns the history in a line, for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return "cabin of " + size() + " samples in " + length() + ", highest " + highest();
    }

    private Object readResolve() {
        return ofSi(timeS, pressureAltitudeM, cabinAltitudeM);
    }
}
