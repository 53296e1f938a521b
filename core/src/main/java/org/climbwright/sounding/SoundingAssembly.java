package org.climbwright.sounding;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * Makes an ascent of the levels of a file: holds each against its neighbours, and says what fell.
 */
final class SoundingAssembly {
    private final String pressureField;
    private final String heightField;
    private final List<RawLevel> raws = new ArrayList<>();

    SoundingAssembly(String pressureField, String heightField) {
        this.pressureField = pressureField;
        this.heightField = heightField;
    }

    /** Takes the next level of the file; one without a place is dropped. */
    void add(SourceLine line, LevelFields fields) {
        if (fields.hasPlace()) {
            raws.add(new RawLevel(line, fields.level()));
        } else {
            line.unusable(
                    "line",
                    line.isFlawed()
                            ? "no pressure and no height left; level dropped"
                            : "neither pressure nor height; level dropped");
        }
    }

    /** The ascent when the file has the order of the flight: pressure must fall in it. */
    Sounding inOrderOfFlight(String station, String launch) {
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

    /** The ascent when the file has any order. */
    Sounding inAnyOrder() {
        raws.sort(
                Comparator.comparingDouble((RawLevel raw) -> -raw.level().pressurePa())
                        .thenComparingDouble(SoundingAssembly::heightWithoutPressure));
        return inOrderOfFlight("", "");
    }

    private static double heightWithoutPressure(RawLevel raw) {
        boolean byPressure = !Double.isNaN(raw.level().pressurePa());
        return byPressure ? 0.0 : raw.level().geopotentialAltitudeM();
    }

    private List<RawLevel> withFallingPressure(List<RawLevel> byPressure) {
        double[] depth =
                byPressure.stream().mapToDouble(raw -> -raw.level().lnPressure()).toArray();
        BitSet kept = Longest.rising(depth, LevelOrder.LEAST_STEP);
        List<RawLevel> good = new ArrayList<>();
        for (int i = 0; i < depth.length; i++) {
            RawLevel raw = byPressure.get(i);
            int before = kept.previousSetBit(i);
            if (kept.get(i)) {
                good.add(raw);
            } else if (before >= 0 && Math.abs(depth[i] - depth[before]) <= LevelOrder.LEAST_STEP) {
                raw.line()
                        .unusable(
                                pressureField,
                                "repeats the pressure of a level before; level dropped");
            } else {
                raw.line()
                        .unusable(
                                pressureField,
                                "does not fall with the levels around; level dropped");
            }
        }
        return good;
    }

    private List<SoundingLevel> withRisingHeights(List<RawLevel> byPressure) {
        double[] height =
                byPressure.stream()
                        .mapToDouble(raw -> raw.level().geopotentialAltitudeM())
                        .toArray();
        BitSet kept = Longest.rising(height, 0.0);
        List<SoundingLevel> levels = new ArrayList<>();
        for (int i = 0; i < height.length; i++) {
            RawLevel raw = byPressure.get(i);
            boolean wrong = !kept.get(i) && !Double.isNaN(height[i]);
            if (wrong) {
                raw.line()
                        .unusable(
                                heightField,
                                "does not rise with the levels around; height dropped");
            }
            levels.add(wrong ? raw.level().withoutAltitude() : raw.level());
        }
        return levels;
    }
}
