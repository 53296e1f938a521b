package org.climbwright.performance;

import java.util.Arrays;
import java.util.SortedSet;
import java.util.TreeSet;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.Geopotential;
import org.climbwright.atmosphere.MoistAir;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.atmosphere.wind.Wind;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.path.TrueDirection;

/**
 * The air and the winds along a track as a climb feels them: how they are at a pressure altitude
 * and how they change with it, fast enough to be asked at every step.
 *
 * <p>Between two bends of air or wind, and over at most 500 m, each quantity is a polynomial of
 * degree four in pressure altitude through five points of the plugs; the changes are its
 * derivative. It is made once for a day and a track, and serves every climb through it.
 *
 * <p>At a bend the changes jump: a stretch is named by its number, and each answers on its own
 * side.
 *
 * <p>Winds are reported to a knot and some degrees. Between two reports 6 m apart that alone makes
 * a shear in which no airspeed can be held; so a report less than 60 m above the last is passed
 * over, and the wind goes straight in ln p to the next. Where a wind begins or ends to be known
 * counts.
 *
 * @accuracy of air and winds that are straight lines in ln p between their bends: 1e-10 K and,
 *     where no report is passed over, 1e-10 m/s (else up to 3.5 m/s), their changes 1e-11 of the
 *     unit per metre in stretches of 10 m and more; of moist soundings 1e-7 of the virtual
 *     temperature. All of it up to 20 km over twelve recorded soundings. Air of one's own that
 *     varies within less than 500 m without telling its bends is smoothed
 * @source interpolation at the zeros of the Chebyshev polynomial of degree five
 */
public final class ClimbAir {
    private static final double LONGEST_M = 500.0;
    private static final double SHALLOWEST_WIND_M = 60.0;
    private static final int DEGREE = 4;
    private static final int POINTS = DEGREE + 1;

    /** Quantities of a stretch, in this order in the array of coefficients. */
    private static final int TEMPERATURE = 0;

    private static final int GEOPOTENTIAL = 1;
    private static final int GEOMETRIC = 2;
    private static final int ALONG = 3;
    private static final int ACROSS = 4;
    private static final int QUANTITIES = 5;

    /** Zeros of the Chebyshev polynomial, cos((2 k + 1) pi / 10). */
    private static final double OUTER = Math.sqrt((5.0 + Math.sqrt(5.0)) / 8.0);

    private static final double INNER = Math.sqrt((5.0 - Math.sqrt(5.0)) / 8.0);

    private static final double[] ZEROS = {-OUTER, -INNER, 0.0, INNER, OUTER};

    private final Atmosphere air;
    private final Winds winds;
    private final TrueDirection track;
    private final ModelRange range;
    private final WindReports reports;
    private final double[] edgesM;
    private final double[] bendsM;
    private final double[] coefficients;

    /** The middle of each stretch, and one over half its depth: no division at every question. */
    private final double[] middleM;

    private final double[] perHalfM;

    private ClimbAir(Atmosphere air, Winds winds, TrueDirection track) {
        this.air = air;
        this.winds = winds;
        this.track = track;
        // air of a cold day may reach to pressures that no pressure altitude has
        ModelRange told = Atmosphere.standard().range();
        double lowest =
                StandardAir.altitudeFromPressure(Math.min(air.range().highest(), told.highest()));
        double highest =
                StandardAir.altitudeFromPressure(Math.max(air.range().lowest(), told.lowest()));
        this.range =
                new ModelRange(
                        "pressure altitude", lowest, highest, "m", "the air is not known outside");
        SortedSet<Double> windBends = inside(winds.bendsPa(), lowest, highest);
        this.reports = WindReports.of(winds, windBends, SHALLOWEST_WIND_M);
        this.bendsM = bends(lowest, highest);
        this.edgesM = edges(lowest, highest);
        this.coefficients = new double[(edgesM.length - 1) * QUANTITIES * POINTS];
        this.middleM = new double[edgesM.length - 1];
        this.perHalfM = new double[edgesM.length - 1];
        for (int stretch = 0; stretch < edgesM.length - 1; stretch++) {
            sample(stretch);
        }
    }

    /**
     * Returns the air and the winds along a track.
     *
     * @param air the air of the day
     * @param winds the winds of the day
     * @param track the track, kept all the way
     * @return both, over the whole range of the air
     * @throws IllegalArgumentException if the air has no range
     */
    public static ClimbAir of(Atmosphere air, Winds winds, TrueDirection track) {
        return new ClimbAir(air, winds, track);
    }

    /**
     * Returns an air of this kind along the same track.
     *
     * @param other other air
     * @return a copy that differs in the air
     */
    public ClimbAir withAir(Atmosphere other) {
        return new ClimbAir(other, winds, track);
    }

    /**
     * Returns this air with other winds.
     *
     * @param other other winds
     * @return a copy that differs in the winds
     */
    public ClimbAir withWinds(Winds other) {
        return new ClimbAir(air, other, track);
    }

    private double[] bends(double lowest, double highest) {
        SortedSet<Double> bends = inside(air.bendsPa(), lowest, highest);
        bends.addAll(inside(Atmosphere.standard().bendsPa(), lowest, highest));
        for (double report : reports.keptM()) {
            bends.add(report);
        }
        return bends.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static SortedSet<Double> inside(double[] pressures, double lowest, double highest) {
        SortedSet<Double> levels = new TreeSet<>();
        for (double pressure : pressures) {
            if (StandardAir.coversPressure(pressure)) {
                double altitude = StandardAir.altitudeFromPressure(pressure);
                if (altitude > lowest && altitude < highest) {
                    levels.add(altitude);
                }
            }
        }
        return levels;
    }

    private double[] edges(double lowest, double highest) {
        TreeSet<Double> edges = new TreeSet<>();
        double below = lowest;
        for (int i = 0; i <= bendsM.length; i++) {
            double above = i < bendsM.length ? bendsM[i] : highest;
            int parts = Math.max(1, (int) Math.ceil((above - below) / LONGEST_M));
            for (int part = 0; part < parts; part++) {
                edges.add(below + (above - below) * part / parts);
            }
            below = above;
        }
        edges.add(highest);
        return edges.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private void sample(int stretch) {
        double middle = 0.5 * (edgesM[stretch] + edgesM[stretch + 1]);
        double half = 0.5 * (edgesM[stretch + 1] - edgesM[stretch]);
        middleM[stretch] = middle;
        perHalfM[stretch] = 1.0 / half;
        double[][] sampled = new double[QUANTITIES][POINTS];
        for (int i = 0; i < POINTS; i++) {
            double altitude = middle + half * ZEROS[i];
            double pressure = StandardAir.pressureFromAltitude(altitude);
            double temperature = air.temperature(pressure);
            double vapour = air.vapourPressure(pressure);
            double virtual =
                    Double.isNaN(vapour)
                            ? temperature
                            : MoistAir.virtualTemperature(temperature, vapour, pressure);
            double geopotential = air.geopotentialAltitude(pressure);
            double east = reports.eastward(altitude, pressure);
            double north = reports.northward(altitude, pressure);
            sampled[TEMPERATURE][i] = temperature;
            sampled[GEOPOTENTIAL][i] = virtual / StandardAir.temperatureFromAltitude(altitude);
            sampled[GEOMETRIC][i] =
                    Geopotential.geometricPerGeopotentialAtGeopotential(
                            Double.isNaN(geopotential) ? altitude : geopotential);
            sampled[ALONG][i] = Wind.alongTrack(east, north, track.inRadians());
            sampled[ACROSS][i] = Wind.acrossTrack(east, north, track.inRadians());
        }
        for (int quantity = 0; quantity < QUANTITIES; quantity++) {
            fit(sampled[quantity], (stretch * QUANTITIES + quantity) * POINTS);
        }
    }

    /** Newton's divided differences over the zeros, then the same in powers of x. */
    private void fit(double[] values, int at) {
        double[] difference = values.clone();
        for (int order = 1; order < POINTS; order++) {
            for (int i = POINTS - 1; i >= order; i--) {
                difference[i] = (difference[i] - difference[i - 1]) / (ZEROS[i] - ZEROS[i - order]);
            }
        }
        double[] power = new double[POINTS];
        for (int i = POINTS - 1; i >= 0; i--) {
            for (int k = POINTS - 1; k > 0; k--) {
                power[k] = power[k - 1] - ZEROS[i] * power[k];
            }
            power[0] = difference[i] - ZEROS[i] * power[0];
        }
        System.arraycopy(power, 0, coefficients, at, POINTS);
    }

    /**
     * Returns the air.
     *
     * @return the plug that this is made of
     */
    public Atmosphere air() {
        return air;
    }

    /**
     * Returns the winds.
     *
     * @return the plug that this is made of
     */
    public Winds winds() {
        return winds;
    }

    /**
     * Returns the track.
     *
     * @return the track
     */
    public TrueDirection track() {
        return track;
    }

    /**
     * Returns the levels for which the air is known.
     *
     * @return range of pressure altitude [m]
     */
    public ModelRange range() {
        return range;
    }

    /**
     * Returns where air or wind bends, and so the rate of a climb jumps.
     *
     * @return pressure altitudes [m] inside the range, rising
     */
    public double[] bendsM() {
        return bendsM.clone();
    }

    /**
     * Tells whether air or wind bends where a stretch begins, which it need not.
     *
     * @param stretch its number, from 0
     * @return true at a bend
     */
    public boolean isBend(int stretch) {
        return Arrays.binarySearch(bendsM, edgesM[stretch]) >= 0;
    }

    /**
     * Returns how many stretches there are.
     *
     * @return the number
     */
    public int stretches() {
        return edgesM.length - 1;
    }

    /**
     * Returns where a stretch begins.
     *
     * @param stretch its number, from 0; the number of stretches stands for the end of the last
     * @return pressure altitude [m]
     */
    public double edgeM(int stretch) {
        return edgesM[stretch];
    }

    /**
     * Returns the stretch that a level lies in.
     *
     * @param pressureAltitudeM pressure altitude [m], inside {@link #range}
     * @param fromAbove whether an edge counts to the stretch above it
     * @return number of the stretch
     * @throws org.climbwright.quantity.OutsideModelException if the level is out of range
     */
    public int stretch(double pressureAltitudeM, boolean fromAbove) {
        int found = Arrays.binarySearch(edgesM, range.check(pressureAltitudeM));
        int stretch = found < 0 ? -found - 2 : fromAbove ? found : found - 1;
        return Math.max(0, Math.min(stretches() - 1, stretch));
    }

    /**
     * Returns the temperature.
     *
     * @param stretch number of the stretch
     * @param pressureAltitudeM pressure altitude in it [m]
     * @return static air temperature [K]
     * @accuracy see the class comment
     */
    public double temperature(int stretch, double pressureAltitudeM) {
        return value(stretch, TEMPERATURE, pressureAltitudeM);
    }

    /**
     * Returns how the temperature changes upwards.
     *
     * @param stretch number of the stretch
     * @param pressureAltitudeM pressure altitude in it [m]
     * @return change with pressure altitude [K/m]
     * @accuracy see the class comment
     */
    public double temperaturePerMetre(int stretch, double pressureAltitudeM) {
        return slope(stretch, TEMPERATURE, pressureAltitudeM);
    }

    /**
     * Returns how many metres of geopotential altitude one metre of pressure altitude is.
     *
     * @param stretch number of the stretch
     * @param pressureAltitudeM pressure altitude in it [m]
     * @return virtual temperature over that of the standard atmosphere; unknown humidity counts as
     *     none
     * @accuracy see the class comment
     */
    public double geopotentialPerPressureAltitude(int stretch, double pressureAltitudeM) {
        return value(stretch, GEOPOTENTIAL, pressureAltitudeM);
    }

    /**
     * Returns how many metres of true height one metre of geopotential altitude is.
     *
     * @param stretch number of the stretch
     * @param pressureAltitudeM pressure altitude in it [m]
     * @return the ratio, a little more than 1 above the sea
     * @accuracy see the class comment
     */
    public double geometricPerGeopotential(int stretch, double pressureAltitudeM) {
        return value(stretch, GEOMETRIC, pressureAltitudeM);
    }

    /**
     * Returns the wind along the track.
     *
     * @param stretch number of the stretch
     * @param pressureAltitudeM pressure altitude in it [m]
     * @return positive from behind [m/s]; NaN when not known
     * @accuracy see the class comment
     */
    public double alongTrack(int stretch, double pressureAltitudeM) {
        return value(stretch, ALONG, pressureAltitudeM);
    }

    /**
     * Returns how the wind along the track changes upwards.
     *
     * @param stretch number of the stretch
     * @param pressureAltitudeM pressure altitude in it [m]
     * @return change with pressure altitude [1/s]; NaN when not known
     * @accuracy see the class comment
     */
    public double alongTrackPerMetre(int stretch, double pressureAltitudeM) {
        return slope(stretch, ALONG, pressureAltitudeM);
    }

    /**
     * Returns the wind across the track.
     *
     * @param stretch number of the stretch
     * @param pressureAltitudeM pressure altitude in it [m]
     * @return positive towards the right [m/s]; NaN when not known
     * @accuracy see the class comment
     */
    public double acrossTrack(int stretch, double pressureAltitudeM) {
        return value(stretch, ACROSS, pressureAltitudeM);
    }

    private double value(int stretch, int quantity, double altitude) {
        int at = (stretch * QUANTITIES + quantity) * POINTS;
        double x = place(stretch, altitude);
        double[] c = coefficients;
        double high = Math.fma(c[at + 4], x, c[at + 3]);
        return Math.fma(Math.fma(Math.fma(high, x, c[at + 2]), x, c[at + 1]), x, c[at]);
    }

    private double slope(int stretch, int quantity, double altitude) {
        int at = (stretch * QUANTITIES + quantity) * POINTS;
        double x = place(stretch, altitude);
        double[] c = coefficients;
        double high = Math.fma(4.0 * c[at + 4], x, 3.0 * c[at + 3]);
        double perHalf = Math.fma(Math.fma(high, x, 2.0 * c[at + 2]), x, c[at + 1]);
        return perHalf * perHalfM[stretch];
    }

    /** Where a level lies in its stretch, from -1 to 1. */
    private double place(int stretch, double altitude) {
        return (altitude - middleM[stretch]) * perHalfM[stretch];
    }

    /**
     * Returns the air for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return "air and winds along " + track.text() + " in " + stretches() + " stretches";
    }
}
