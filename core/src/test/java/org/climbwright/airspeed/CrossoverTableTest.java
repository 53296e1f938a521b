package org.climbwright.airspeed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.climbwright.testing.Agreement.closeTo;
import static org.climbwright.testing.Agreement.computedAs;
import static org.climbwright.testing.Agreement.printedAs;

import org.climbwright.atmosphere.StandardAir;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.testing.Table;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The crossover from a calibrated airspeed to a Mach number")
class CrossoverTableTest {
    @ParameterizedTest(name = "{0}, {1}")
    @CsvFileSource(resources = "/airspeed/crossover.csv", useHeadersInDisplayName = true)
    @DisplayName("is at the pressure and altitude of the table, in 50-digit arithmetic")
    void agreesWithTheTable(
            double casKnots,
            double mach,
            String delta,
            String metres,
            String feet,
            String tasKnots) {
        double cas = UnitScale.KNOT.toSi(casKnots);
        double p = AirspeedConversion.crossoverPressure(cas, mach);
        assertThat(p / 101325.0).is(computedAs(delta, 15));
        double altitude = StandardAir.altitudeFromPressure(p);
        // 13 digits of at most 14 km, and the 1e-9 m that the altitude of a pressure states
        assertThat(altitude).is(closeTo(metres, 1e-8));
        assertThat(UnitScale.FOOT.fromSi(altitude)).is(closeTo(feet, 1e-8 / 0.3048));
        double tas = AirspeedConversion.tasFromMach(mach, StandardAir.temperatureFromPressure(p));
        assertThat(UnitScale.KNOT.fromSi(tas)).is(printedAs(tasKnots, 10));
        assertThat(AirspeedConversion.casFromMach(mach, p))
                .is(computedAs(Double.toString(cas), 17));
    }

    @Test
    @DisplayName("is compared in 120 rows")
    void rows() {
        assertThat(Table.rows("/airspeed/crossover.csv")).hasSize(120);
    }

    @ParameterizedTest(name = "{0} m/s, Mach {1}")
    @CsvSource({
        "NaN, 0.8",
        "100, NaN",
        "-1, 0.8",
        "100, -0.1",
        "1702, 0.8",
        "100, 5.01", // beyond the relations
        "0, 0.8",
        "100, 0",
        "0, 0",
        "100, 1e-200" // at rest, where there is none
    })
    @DisplayName("is refused when one of them is no speed of these relations, or rest")
    void refused(double cas, double mach) {
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> AirspeedConversion.crossoverPressure(cas, mach))
                .withMessageContaining(" of a crossover must be from ")
                .withMessageEndingWith(
                        ": near rest there is no crossover, and beyond Mach 5 the relations do not"
                                + " hold");
    }
}
