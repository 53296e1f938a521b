package org.climbwright.performance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SortedSet;
import java.util.function.DoubleUnaryOperator;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.atmosphere.wind.Winds;

/**
 * Winds with the reports passed over that stand too near above another: across those the wind is a
 * straight line in ln p from the last report to the next.
 */
final class WindReports {
    private final Winds winds;
    private final double[] keptM;

    /** Whether reports were passed over between this one and the next. */
    private final boolean[] isChord;

    private WindReports(Winds winds, double[] keptM, boolean[] isChord) {
        this.winds = winds;
        this.keptM = keptM;
        this.isChord = isChord;
    }

    static WindReports of(Winds winds, SortedSet<Double> reportsM, double shallowestM) {
        List<Double> kept = new ArrayList<>();
        List<Boolean> chords = new ArrayList<>();
        for (double report : reportsM) {
            int last = kept.size() - 1;
            if (last < 0
                    || report - kept.get(last) >= shallowestM
                    || isEdge(winds, kept.get(last))
                    || isEdge(winds, report)) {
                kept.add(report);
                chords.add(false);
            } else {
                chords.set(last, true);
            }
        }
        // above the last report kept there may be ones passed over, but none to go to
        boolean isOpen = !kept.isEmpty() && chords.get(kept.size() - 1);
        if (isOpen) {
            kept.add(reportsM.last());
            chords.add(false);
        }
        double[] levels = kept.stream().mapToDouble(Double::doubleValue).toArray();
        boolean[] isChord = new boolean[levels.length];
        for (int i = 0; i < isChord.length; i++) {
            isChord[i] = chords.get(i);
        }
        return new WindReports(winds, levels, isChord);
    }

    /** Where a wind begins or ends to be known. */
    private static boolean isEdge(Winds winds, double levelM) {
        return winds.covers(StandardAir.pressureFromAltitude(levelM - 1e-3))
                != winds.covers(StandardAir.pressureFromAltitude(levelM + 1e-3));
    }

    double[] keptM() {
        return keptM.clone();
    }

    double eastward(double levelM, double pressurePa) {
        return component(winds::eastward, levelM, pressurePa);
    }

    double northward(double levelM, double pressurePa) {
        return component(winds::northward, levelM, pressurePa);
    }

    private double component(DoubleUnaryOperator of, double levelM, double pressurePa) {
        int found = Arrays.binarySearch(keptM, levelM);
        int report = found < 0 ? -found - 2 : found;
        if (report < 0 || report >= keptM.length - 1 || !isChord[report]) {
            return of.applyAsDouble(pressurePa);
        }
        double low = StandardAir.pressureFromAltitude(keptM[report]);
        double high = StandardAir.pressureFromAltitude(keptM[report + 1]);
        double share = StrictMath.log(low / pressurePa) / StrictMath.log(low / high);
        double atLow = of.applyAsDouble(low);
        return atLow + share * (of.applyAsDouble(high) - atLow);
    }
}
