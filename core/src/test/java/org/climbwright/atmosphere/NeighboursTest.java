package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Neighbouring doubles, anywhere and to both sides of the bounds of the layers: who searches or
 * differentiates a figure by its neighbours must not meet one that goes back.
 */
@DisplayName("In standard air, of 100,000 pairs of neighbouring doubles,")
class NeighboursTest {
    private static final int PAIRS = 100_000;
    private static final double[] BOUNDS_M = {0, 11000, 20000, 32000, 47000, 51000, 71000};

    @Test
    @DisplayName("the higher has no more pressure and no more density")
    void byAltitude() {
        fallsWith(StandardAir::pressureFromAltitude, BOUNDS_M, -5000.0, 80000.0);
        fallsWith(StandardAir::densityFromAltitude, BOUNDS_M, -5000.0, 80000.0);
    }

    @Test
    @DisplayName("the greater pressure or density is no higher, in the troposphere and up to 20 km")
    void byPressureAndDensity() {
        fallsWith(
                StandardAir::altitudeFromPressure,
                of(StandardAir::pressureFromAltitude),
                StandardAir.pressureFromAltitude(20000.0),
                StandardAir.pressureFromAltitude(-5000.0));
        fallsWith(
                StandardAir::altitudeFromDensity,
                of(StandardAir::densityFromAltitude),
                StandardAir.densityFromAltitude(20000.0),
                StandardAir.densityFromAltitude(-5000.0));
    }

    @Test
    @DisplayName("and above 20 km too")
    void above() {
        fallsWith(
                StandardAir::altitudeFromPressure,
                of(StandardAir::pressureFromAltitude),
                StandardAir.pressureFromAltitude(80000.0),
                StandardAir.pressureFromAltitude(20000.0));
        fallsWith(
                StandardAir::altitudeFromDensity,
                of(StandardAir::densityFromAltitude),
                StandardAir.densityFromAltitude(80000.0),
                StandardAir.densityFromAltitude(20000.0));
    }

    private static double[] of(DoubleUnaryOperator byAltitude) {
        return Arrays.stream(BOUNDS_M).map(byAltitude).toArray();
    }

    private static void fallsWith(
            DoubleUnaryOperator function, double[] marks, double lowest, double highest) {
        Random random = new Random(20_261_125);
        for (int i = 0; i < PAIRS; i++) {
            double x = lowest + (highest - lowest) * random.nextDouble();
            if (i % 4 == 0) { // some ulp around a mark
                double mark = marks[random.nextInt(marks.length)];
                x = mark + (random.nextInt(2001) - 1000) * Math.ulp(mark);
                x = Math.max(lowest, Math.min(highest, x));
            }
            double next = Math.nextUp(x);
            if (next <= highest) {
                double here = function.applyAsDouble(x);
                double there = function.applyAsDouble(next);
                if (!(there <= here)) {
                    assertThat(there).as("above %s", x).isLessThanOrEqualTo(here);
                }
            }
        }
    }
}
