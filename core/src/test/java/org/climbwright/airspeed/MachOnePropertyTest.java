package org.climbwright.airspeed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.airspeed.AirspeedConversion.casFromMach;
import static org.climbwright.airspeed.AirspeedConversion.impactPressureFromMach;
import static org.climbwright.airspeed.AirspeedConversion.machFromCas;
import static org.climbwright.airspeed.AirspeedConversion.machFromImpactPressure;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.Example;
import net.jqwik.api.Label;

/**
 * The formula changes at Mach 1, and nothing must show it. Pressure 1 makes impact pressure and the
 * ratio the same number, so that no rounding of a product hides a step.
 */
@Label("Across Mach 1")
class MachOnePropertyTest {
    private static final int PAIRS = 100_000;
    private static final long SEED = 20_260_101;

    @Example
    @Label("100,000 neighbouring Mach numbers have impact pressures and airspeeds in order")
    void neighboursFromMach() {
        inOrder(mach -> impactPressureFromMach(mach, 1.0), 1.0);
        inOrder(mach -> casFromMach(mach, 101325.0), 1.0);
        inOrder(mach -> casFromMach(mach, 22632.0), 1.0);
    }

    @Example
    @Label("100,000 neighbouring impact pressures and airspeeds have Mach numbers in order")
    void neighboursToMach() {
        inOrder(impact -> machFromImpactPressure(impact, 1.0), impactPressureFromMach(1.0, 1.0));
        inOrder(cas -> machFromCas(cas, 101325.0), casFromMach(1.0, 101325.0));
        inOrder(cas -> machFromCas(cas, 22632.0), casFromMach(1.0, 22632.0));
    }

    /** Every double from 50,000 below a number to 50,000 above it. */
    private static void inOrder(DoubleUnaryOperator function, double middle) {
        double x = middle - PAIRS / 2 * Math.ulp(Math.nextDown(middle));
        double before = function.applyAsDouble(x);
        for (int i = 0; i < PAIRS; i++) {
            x = Math.nextUp(x);
            double value = function.applyAsDouble(x);
            assertThat(value).as("at %s", x).isGreaterThanOrEqualTo(before);
            before = value;
        }
    }

    @Example
    @Label("and anywhere to Mach 5, 100,000 pairs of neighbours are in order")
    void neighboursAnywhere() {
        Random random = new Random(SEED);
        for (int i = 0; i < PAIRS; i++) {
            // near Mach 1 as often as elsewhere
            double mach =
                    i % 2 == 0
                            ? 5.0 * random.nextDouble()
                            : 1.0 + (random.nextDouble() - 0.5) * StrictMath.pow(10.0, -i % 13);
            double impact = impactPressureFromMach(mach, 1.0);
            assertThat(impactPressureFromMach(Math.nextUp(mach), 1.0))
                    .as("above %s", mach)
                    .isGreaterThanOrEqualTo(impact);
            assertThat(machFromImpactPressure(Math.nextUp(impact), 1.0))
                    .as("above %s", impact)
                    .isGreaterThanOrEqualTo(machFromImpactPressure(impact, 1.0));
        }
    }

    @Example
    @Label("the next Mach number is no more than its own share and two ulp away, both ways")
    void noStep() {
        double at = impactPressureFromMach(1.0, 1.0);
        double slope = 7.0 / 6.0 * (at + 1.0); // of both formulas, derived by hand
        for (double mach : new double[] {Math.nextDown(1.0), Math.nextUp(1.0)}) {
            assertThat(impactPressureFromMach(mach, 1.0))
                    .isCloseTo(at + slope * (mach - 1.0), within(2 * Math.ulp(at)));
        }
        for (double impact : new double[] {Math.nextDown(at), at, Math.nextUp(at)}) {
            assertThat(machFromImpactPressure(impact, 1.0))
                    .isCloseTo(1.0 + (impact - at) / slope, within(2 * Math.ulp(1.0)));
        }
    }

    @Example
    @Label("slope and bend are those of the formula on the other side")
    void noKink() {
        double h = 1e-4;
        double below = impactPressureFromMach(1.0 - h, 1.0);
        double at = impactPressureFromMach(1.0, 1.0);
        double above = impactPressureFromMach(1.0 + h, 1.0);
        // first and second derivative of both formulas at Mach 1, derived by hand: 7/6 and 77/36
        // of the pressure ratio
        assertThat((above - below) / (2.0 * h)).isCloseTo(7.0 / 6.0 * (at + 1.0), within(1e-7));
        assertThat((above - 2.0 * at + below) / (h * h))
                .isCloseTo(77.0 / 36.0 * (at + 1.0), within(1e-3));
    }
}
