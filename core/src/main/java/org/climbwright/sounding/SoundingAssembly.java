package org.climbwright.sounding;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * Makes an ascent of the levels of a file: holds each against its neighbours, and says what fell.
 */
final class SoundingAssembly {
    private final List<ReadingProblem> problems;
    private final String pressureField;
    private final String heightField;

    SoundingAssembly(List<ReadingProblem> problems, String pressureField, String heightField) {
        this.problems = problems;
        this.pressureField = pressureField;
        this.heightField = heightField;
    }

    /**
     * An ascent from levels in the order of the flight: pressure must fall from one to the next.
     */
    Sounding inOrderOfFlight(String station, String launch, List<RawLevel> levels) {
        return assemble(station, launch, levels);
    }

    /** An ascent from levels in any order. */
    Sounding inAnyOrder(String station, String launch, List<RawLevel> levels) {
        List<RawLevel> sorted = new ArrayList<>(levels);
        sorted.sort(Comparator.comparingDouble((RawLevel raw) -> -raw.level().pressurePa()));
        return assemble(station, launch, sorted);
    }

    private Sounding assemble(String station, String launch, List<RawLevel> raws) {
        List<RawLevel> byPressure = new ArrayList<>();
        List<SoundingLevel> byHeight = new ArrayList<>();
        for (RawLevel raw : raws) {
            if (Double.isNaN(raw.level().pressurePa())) {
                byHeight.add(raw.level());
            } else {
                byPressure.add(raw);
            }
        }
        List<SoundingLevel> levels = withRisingHeights(withFallingPressure(byPressure));
        levels.addAll(byHeight);
        return Sounding.of(station, launch, levels);
    }

    private List<RawLevel> withFallingPressure(List<RawLevel> raws) {
        double[] depth = raws.stream().mapToDouble(raw -> -raw.level().pressurePa()).toArray();
        BitSet kept = Longest.rising(depth);
        List<RawLevel> good = new ArrayList<>();
        for (int i = 0; i < raws.size(); i++) {
            RawLevel raw = raws.get(i);
            if (kept.get(i)) {
                good.add(raw);
            } else {
                int before = kept.previousSetBit(i);
                boolean repeated = before >= 0 && depth[before] == depth[i];
                problems.add(
                        new ReadingProblem(
                                raw.line(),
                                pressureField,
                                raw.text(),
                                repeated
                                        ? "repeats the pressure of a level before; level dropped"
                                        : "does not fall with the levels around; level dropped"));
            }
        }
        return good;
    }

    private List<SoundingLevel> withRisingHeights(List<RawLevel> raws) {
        double[] height =
                raws.stream().mapToDouble(raw -> raw.level().geopotentialAltitudeM()).toArray();
        BitSet kept = Longest.rising(height);
        List<SoundingLevel> levels = new ArrayList<>();
        for (int i = 0; i < raws.size(); i++) {
            RawLevel raw = raws.get(i);
            boolean wrong = !kept.get(i) && !Double.isNaN(height[i]);
            if (wrong) {
                problems.add(
                        new ReadingProblem(
                                raw.line(),
                                heightField,
                                raw.text(),
                                "does not rise with the levels around; height dropped"));
            }
            levels.add(wrong ? raw.level().withoutAltitude() : raw.level());
        }
        return levels;
    }
}
