package org.climbwright.path;

import java.io.Serializable;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.temperature.IsaDeviation;

/**
 * A table of rates of climb by pressure altitude and mass: an aeroplane as a chart has it.
 *
 * <p>Between the entries the rate is linear in altitude and in mass; outside them nothing is known.
 * An altitude may stand twice: the rate jumps there, as where the speed changes.
 *
 * <p>A table holds for one ISA deviation and says which. In other air the rates are another
 * aeroplane's: nothing here corrects them, and whoever shows them says how far the air was off.
 */
public final class ClimbRates implements Serializable {
    private static final long serialVersionUID = 1L;

    private static final String END = "the table of rates ends there";

    /** Which rate the numbers of a table are. */
    public enum Kind {
        /** Pressure altitude per time, as the instrument shows. */
        PRESSURE_ALTITUDE,
        /** True height per time. */
        GEOMETRIC
    }

    private final Kind kind;
    private final IsaDeviation isaDeviation;
    private final double[] massKg;
    private final double[] altitudeM;
    private final double[][] rateMps;
    private final ModelRange altitudeRange;
    private final ModelRange massRange;

    private ClimbRates(Kind kind, IsaDeviation isaDeviation, List<Mass> masses, List<Row> rows) {
        this.kind = kind;
        this.isaDeviation = isaDeviation;
        this.massKg = masses.stream().mapToDouble(Mass::inKilograms).toArray();
        this.altitudeM = rows.stream().mapToDouble(r -> r.altitude().inMetres()).toArray();
        this.rateMps =
                rows.stream()
                        .map(r -> r.ratesMps().stream().mapToDouble(Double::doubleValue).toArray())
                        .toArray(double[][]::new);
        this.altitudeRange =
                new ModelRange("pressure altitude", altitudeM[0], last(altitudeM), "m", END);
        this.massRange = new ModelRange("mass", massKg[0], last(massKg), "kg", END);
    }

    /**
     * One line of a table: the rates at an altitude, one for each mass.
     *
     * @param altitude pressure altitude
     * @param ratesMps rates of climb [m/s], above 0, in the order of the masses
     */
    public record Row(PressureAltitude altitude, List<Double> ratesMps) implements Serializable {
        /**
         * Makes a line that nobody can change.
         *
         * @param altitude pressure altitude
         * @param ratesMps rates of climb [m/s]
         */
        public Row {
            ratesMps = List.copyOf(ratesMps);
        }
    }

    /**
     * Returns a table.
     *
     * @param kind which rate the numbers are
     * @param isaDeviation the air for which the table was made
     * @param masses the masses, rising; at least one
     * @param rows the lines, altitude rising; at least two, the same altitude at most twice
     * @return the table
     * @throws IllegalArgumentException if masses or altitudes do not rise, a line has another
     *     number of rates than there are masses, or a rate is not a finite number above 0
     */
    public static ClimbRates of(
            Kind kind, IsaDeviation isaDeviation, List<Mass> masses, List<Row> rows) {
        requireRising(masses);
        if (rows.size() < 2) {
            throw new IllegalArgumentException(
                    "a table of rates needs at least two altitudes, but had " + rows.size());
        }
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            if (row.ratesMps().size() != masses.size()) {
                throw new IllegalArgumentException(
                        "a line of rates needs one for each of "
                                + masses.size()
                                + " masses, but had "
                                + row.ratesMps().size()
                                + " at "
                                + row.altitude().text());
            }
            for (double rate : row.ratesMps()) {
                if (!(rate > 0.0 && rate <= Double.MAX_VALUE)) {
                    throw new IllegalArgumentException(
                            "a rate of climb in a table must be a finite number above 0.0 m/s, but"
                                    + " was "
                                    + rate
                                    + " m/s at "
                                    + row.altitude().text());
                }
            }
            requireHigher(rows, i);
        }
        requireDepth(rows.get(0), rows.get(1));
        requireDepth(rows.get(rows.size() - 2), rows.get(rows.size() - 1));
        return new ClimbRates(kind, isaDeviation, masses, rows);
    }

    /** A jump at an end of the table would have no rate on its outer side. */
    private static void requireDepth(Row lower, Row upper) {
        if (lower.altitude().equals(upper.altitude())) {
            throw new IllegalArgumentException(
                    "the lowest and the highest altitude of a table stand once, but "
                            + lower.altitude().text()
                            + " stands twice");
        }
    }

    private static void requireRising(List<Mass> masses) {
        if (masses.isEmpty()) {
            throw new IllegalArgumentException("a table of rates needs at least one mass");
        }
        for (int i = 1; i < masses.size(); i++) {
            if (masses.get(i).compareTo(masses.get(i - 1)) <= 0) {
                throw new IllegalArgumentException(
                        "masses must rise, but "
                                + masses.get(i).text()
                                + " follows "
                                + masses.get(i - 1).text());
            }
        }
    }

    private static void requireHigher(List<Row> rows, int i) {
        boolean falls = i > 0 && rows.get(i).altitude().compareTo(rows.get(i - 1).altitude()) < 0;
        boolean third = i > 1 && rows.get(i).altitude().equals(rows.get(i - 2).altitude());
        if (falls || third) {
            throw new IllegalArgumentException(
                    "altitudes must rise, the same at most twice, but "
                            + rows.get(i).altitude().text()
                            + " follows "
                            + rows.get(i - 1).altitude().text());
        }
    }

    /**
     * Returns which rate the numbers are.
     *
     * @return the kind
     */
    public Kind kind() {
        return kind;
    }

    /**
     * Returns the air for which the table was made.
     *
     * @return the deviation from standard air at the same pressure
     */
    public IsaDeviation isaDeviation() {
        return isaDeviation;
    }

    /**
     * Returns the lowest altitude of the table.
     *
     * @return pressure altitude
     */
    public PressureAltitude lowest() {
        return PressureAltitude.ofMetres(altitudeM[0]);
    }

    /**
     * Returns the highest altitude of the table.
     *
     * @return pressure altitude
     */
    public PressureAltitude highest() {
        return PressureAltitude.ofMetres(last(altitudeM));
    }

    /**
     * Tells whether the table has a rate.
     *
     * @param pressureAltitudeM pressure altitude [m]
     * @param aeroplaneMassKg mass [kg]
     * @return true inside the table
     */
    public boolean covers(double pressureAltitudeM, double aeroplaneMassKg) {
        return altitudeRange.covers(pressureAltitudeM) && massRange.covers(aeroplaneMassKg);
    }

    /**
     * Returns the rate at an altitude for a mass.
     *
     * @param pressureAltitudeM pressure altitude [m], inside the table
     * @param aeroplaneMassKg mass [kg], inside the table
     * @param side from which side, where the table jumps
     * @return rate of climb [m/s], above 0
     * @throws org.climbwright.quantity.OutsideModelException if altitude or mass is outside
     * @accuracy bilinear between the entries, exact at them
     * @source the table
     */
    public double rate(double pressureAltitudeM, double aeroplaneMassKg, Side side) {
        altitudeRange.check(pressureAltitudeM);
        massRange.check(aeroplaneMassKg);
        int row = rowBelow(pressureAltitudeM, side);
        double low = atMass(rateMps[row], aeroplaneMassKg);
        double high = atMass(rateMps[row + 1], aeroplaneMassKg);
        double depth = altitudeM[row + 1] - altitudeM[row];
        return low + (high - low) * ((pressureAltitudeM - altitudeM[row]) / depth);
    }

    /**
     * Returns the altitudes that stand twice in the table.
     *
     * @return pressure altitudes at which the rate jumps, rising
     */
    public List<PressureAltitude> jumps() {
        return IntStream.range(1, altitudeM.length)
                .filter(i -> altitudeM[i] == altitudeM[i - 1])
                .mapToObj(i -> PressureAltitude.ofMetres(altitudeM[i]))
                .toList();
    }

    /** The altitudes of the table [m], at which the rate bends or jumps. */
    double[] bendsM() {
        return altitudeM.clone();
    }

    private static double last(double[] values) {
        return values[values.length - 1];
    }

    private int rowBelow(double pressureAltitudeM, Side side) {
        int row = 0;
        for (int i = 0; i < altitudeM.length - 1; i++) {
            boolean under =
                    altitudeM[i] < pressureAltitudeM
                            || (altitudeM[i] == pressureAltitudeM && side == Side.ABOVE);
            // the last stretch also answers for its own top, the first for its own bottom
            if (under && altitudeM[i + 1] > altitudeM[i]) {
                row = i;
            }
        }
        return row;
    }

    private double atMass(double[] rates, double mass) {
        int i = 0;
        while (i < massKg.length - 2 && massKg[i + 1] < mass) {
            i++;
        }
        if (massKg.length == 1) {
            return rates[0];
        }
        double share = (mass - massKg[i]) / (massKg[i + 1] - massKg[i]);
        return rates[i] + (rates[i + 1] - rates[i]) * share;
    }

    /**
     * Returns what the table covers, for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return "rates of "
                + kind
                + " for ISA"
                + isaDeviation.text()
                + ", "
                + lowest().text()
                + " to "
                + highest().text()
                + ", masses "
                + Arrays.toString(massKg)
                + " kg";
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ClimbRates that
                && kind == that.kind
                && isaDeviation.equals(that.isaDeviation)
                && Arrays.equals(massKg, that.massKg)
                && Arrays.equals(altitudeM, that.altitudeM)
                && Arrays.deepEquals(rateMps, that.rateMps);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(altitudeM) + 31 * Arrays.deepHashCode(rateMps);
    }

    private Object readResolve() {
        return of(
                kind,
                isaDeviation,
                Arrays.stream(massKg).mapToObj(Mass::ofKilograms).toList(),
                IntStream.range(0, altitudeM.length)
                        .mapToObj(
                                i ->
                                        new Row(
                                                PressureAltitude.ofMetres(altitudeM[i]),
                                                Arrays.stream(rateMps[i]).boxed().toList()))
                        .toList());
    }
}
