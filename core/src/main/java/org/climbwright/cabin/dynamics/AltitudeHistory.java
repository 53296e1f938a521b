package org.climbwright.cabin.dynamics;

import java.io.Serializable;
import java.time.Duration;
import java.util.Arrays;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.Side;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.PressureAltitudeRate;

/**
 * Where an aeroplane is at each time: a climb, a recording, and what comes after. Straight between
 * its points, and immutable.
 *
 * <pre>{@code
 * PressureAltitudeRate rate = PressureAltitudeRate.ofFeetPerMinute(2000);
 * AltitudeHistory flight =
 *         AltitudeHistory.at(PressureAltitude.ofFeet(0))
 *                 .to(PressureAltitude.ofFlightLevel(350), rate)
 *                 .hold(Duration.ofMinutes(10));
 * flight.lengthS()                                  // 1650.0
 * flight.pressureAltitudeM(600.0) / 0.3048          // 20000.0
 * }</pre>
 */
public final class AltitudeHistory implements Serializable {
    private static final long serialVersionUID = 1L;

    /** How far apart a climb is asked at most [m]. */
    private static final double CLIMB_STEP_M = 30.48;

    private static final ModelRange ALTITUDE =
            new ModelRange("pressure altitude", -5000.0, 80000.0, "m", "standard air ends there");

    private static final ModelRange TIME =
            new ModelRange("time", 0.0, 1e7, "s", "a flight begins at 0 s");

    private final double[] timeS;
    private final double[] altitudeM;

    private AltitudeHistory(double[] timeS, double[] altitudeM) {
        this.timeS = timeS;
        this.altitudeM = altitudeM;
    }

    /**
     * Returns a history of points in SI, of which it keeps copies.
     *
     * @param timeS times [s], the first 0, each later than the one before
     * @param pressureAltitudeM pressure altitudes [m], -5000 to 80000, as many
     * @return the history
     * @throws IllegalArgumentException if there is no point, the arrays are not of one length, or
     *     the times do not rise from 0
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     */
    public static AltitudeHistory ofSi(double[] timeS, double[] pressureAltitudeM) {
        double[] times = timeS.clone();
        double[] altitudes = pressureAltitudeM.clone();
        if (times.length == 0 || times.length != altitudes.length || times[0] != 0.0) {
            throw new IllegalArgumentException(
                    "a history of altitudes needs as many times as altitudes, the first at 0 s, but"
                            + " had "
                            + times.length
                            + " times and "
                            + altitudes.length
                            + " altitudes");
        }
        for (int i = 0; i < times.length; i++) {
            TIME.check(times[i]);
            ALTITUDE.check(altitudes[i]);
            if (i > 0 && !(times[i] > times[i - 1])) {
                throw new IllegalArgumentException(
                        "times of a history must rise, but "
                                + times[i]
                                + " s came after "
                                + times[i - 1]
                                + " s");
            }
        }
        return new AltitudeHistory(times, altitudes);
    }

    /**
     * Returns a history that begins, and has come no further yet.
     *
     * @param level pressure altitude at 0 s
     * @return the history
     * @throws org.climbwright.quantity.OutsideModelException if the altitude is out of range
     */
    public static AltitudeHistory at(PressureAltitude level) {
        return ofSi(new double[] {0.0}, new double[] {level.inMetres()});
    }

    /**
     * Returns the history of a climb.
     *
     * @param path the climb
     * @return its levels by time, a level that is held as long as it is
     * @accuracy the climb is asked each 100 ft and where it bends: 1 ft at common rates
     */
    public static AltitudeHistory along(ClimbPath path) {
        double bottom = path.bottom().inMetres();
        double top = path.top().inMetres();
        int pieces = (int) Math.max(1.0, Math.ceil((top - bottom) / CLIMB_STEP_M));
        double[] asked =
                IntStream.rangeClosed(0, pieces)
                        .mapToDouble(i -> i == pieces ? top : bottom + (top - bottom) / pieces * i)
                        .toArray();
        double[] levels =
                DoubleStream.concat(DoubleStream.of(path.bendsM()), DoubleStream.of(asked))
                        .sorted()
                        .toArray();
        double[] times = new double[2 * levels.length];
        double[] altitudes = new double[2 * levels.length];
        int size = 0;
        for (double level : levels) {
            // twice, since it may be held
            for (Side side : Side.values()) {
                double time = path.at(PressureAltitude.ofMetres(level), side).timeS();
                if (size == 0 || time > times[size - 1]) {
                    times[size] = time;
                    altitudes[size] = level;
                    size++;
                }
            }
        }
        return ofSi(Arrays.copyOf(times, size), Arrays.copyOf(altitudes, size));
    }

    /**
     * Returns this history, and then level flight.
     *
     * @param time how long, above 0
     * @return a longer history
     * @throws IllegalArgumentException if the time is not above 0
     */
    public AltitudeHistory hold(Duration time) {
        return then(seconds(time), altitudeM[altitudeM.length - 1]);
    }

    /**
     * Returns this history, and then a climb or a descent.
     *
     * @param level where to
     * @param rate how fast, told as a positive rate up and down
     * @return a longer history; this one where it is at that level already
     * @throws IllegalArgumentException if the rate is not above 0
     * @throws org.climbwright.quantity.OutsideModelException if the level is out of range
     */
    public AltitudeHistory to(PressureAltitude level, PressureAltitudeRate rate) {
        if (!(rate.inMetresPerSecond() > 0.0)) {
            throw new IllegalArgumentException(
                    "a rate to a level must be above 0 ft/min, up and down, but was "
                            + rate.text());
        }
        double way = Math.abs(level.inMetres() - altitudeM[altitudeM.length - 1]);
        if (way == 0.0) {
            return this;
        }
        return then(way / rate.inMetresPerSecond(), level.inMetres());
    }

    private AltitudeHistory then(double seconds, double level) {
        int size = timeS.length;
        double[] times = Arrays.copyOf(timeS, size + 1);
        double[] altitudes = Arrays.copyOf(altitudeM, size + 1);
        times[size] = times[size - 1] + seconds;
        altitudes[size] = level;
        return ofSi(times, altitudes);
    }

    static double seconds(Duration time) {
        return time.getSeconds() + time.getNano() / 1e9;
    }

    /**
     * Returns how long it is.
     *
     * @return time of the last point [s]
     */
    public double lengthS() {
        return timeS[timeS.length - 1];
    }

    /**
     * Returns where the aeroplane is at a time.
     *
     * @param atS time [s], 0 to the last
     * @return pressure altitude [m]
     * @throws org.climbwright.quantity.OutsideModelException if the history is over by then
     */
    public double pressureAltitudeM(double atS) {
        if (!(atS >= 0.0 && atS <= lengthS())) {
            new ModelRange("time", 0.0, lengthS(), "s", "the history ends there").check(atS);
        }
        int found = Arrays.binarySearch(timeS, atS);
        if (found >= 0) {
            return altitudeM[found];
        }
        int after = -found - 1;
        double share = (atS - timeS[after - 1]) / (timeS[after] - timeS[after - 1]);
        return Math.fma(altitudeM[after] - altitudeM[after - 1], share, altitudeM[after - 1]);
    }

    /**
     * Returns where the aeroplane is at a time.
     *
     * @param time time since the beginning
     * @return pressure altitude
     * @throws org.climbwright.quantity.OutsideModelException if the history is over by then
     */
    public PressureAltitude at(Duration time) {
        return PressureAltitude.ofMetres(pressureAltitudeM(seconds(time)));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof AltitudeHistory that
                && Arrays.equals(timeS, that.timeS)
                && Arrays.equals(altitudeM, that.altitudeM);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(timeS) + Arrays.hashCode(altitudeM);
    }

    /**
     * Returns the history for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return timeS.length + " points in " + lengthS() + " s";
    }

    private Object readResolve() {
        return ofSi(timeS, altitudeM);
    }
}
