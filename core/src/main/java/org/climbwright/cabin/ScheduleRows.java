package org.climbwright.cabin;

import java.util.List;
import org.climbwright.quantity.ModelRange;

/** A schedule of points, straight between them; beyond them either held or refused. */
record ScheduleRows(List<Row> rows, boolean isHeldOutside) implements CabinSchedule {
    private static final long serialVersionUID = 1L;

    static final ModelRange LEVEL =
            new ModelRange(
                    "pressure altitude",
                    -5000.0,
                    80000.0,
                    "m",
                    "the standard atmosphere ends there");

    ScheduleRows {
        rows = List.copyOf(rows);
        if (rows.size() < 2) {
            throw new IllegalArgumentException(
                    "a schedule needs two rows or more, but had " + rows.size());
        }
        for (int i = 1; i < rows.size(); i++) {
            if (!(levelM(rows, i) > levelM(rows, i - 1))) {
                throw new IllegalArgumentException(
                        "the rows of a schedule must rise in the aeroplane's altitude, but "
                                + rows.get(i).aeroplane().text()
                                + " came after "
                                + rows.get(i - 1).aeroplane().text());
            }
        }
    }

    private static double levelM(List<Row> rows, int i) {
        return rows.get(i).aeroplane().inMetres();
    }

    private double cabinM(int i) {
        return rows.get(i).cabin().inMetres();
    }

    @Override
    public double cabinAltitudeM(double pressureAltitudeM) {
        int last = rows.size() - 1;
        if (!covers(pressureAltitudeM)) {
            range().check(pressureAltitudeM);
        }
        if (pressureAltitudeM <= levelM(rows, 0)) {
            return cabinM(0);
        }
        if (pressureAltitudeM >= levelM(rows, last)) {
            return cabinM(last);
        }
        int low = 0;
        int high = last;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (levelM(rows, middle) <= pressureAltitudeM) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double share =
                (pressureAltitudeM - levelM(rows, low)) / (levelM(rows, high) - levelM(rows, low));
        return cabinM(low) + share * (cabinM(high) - cabinM(low));
    }

    @Override
    public boolean covers(double pressureAltitudeM) {
        return isHeldOutside
                ? LEVEL.covers(pressureAltitudeM)
                : pressureAltitudeM >= levelM(rows, 0)
                        && pressureAltitudeM <= levelM(rows, rows.size() - 1);
    }

    private ModelRange range() {
        return isHeldOutside
                ? LEVEL
                : new ModelRange(
                        "pressure altitude",
                        levelM(rows, 0),
                        levelM(rows, rows.size() - 1),
                        "m",
                        "the table of the schedule ends there");
    }

    @Override
    public double[] bendsM() {
        return rows.stream().mapToDouble(row -> row.aeroplane().inMetres()).toArray();
    }

    @Override
    public String inWords() {
        Row first = rows.get(0);
        Row last = rows.get(rows.size() - 1);
        String how = isHeldOutside ? "in proportion" : "by a table of " + rows.size() + " rows";
        return how + " from " + inWords(first) + " to " + inWords(last);
    }

    private static String inWords(Row row) {
        return InFeet.of(row.cabin().inMetres()) + " at " + InFeet.of(row.aeroplane().inMetres());
    }
}
