package org.climbwright.airspeed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.testing.Agreement.printedAs;

import java.io.IOException;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.temperature.IsaDeviation;
import org.climbwright.testing.Streams;
import org.climbwright.testing.Table;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("A crossover")
class CrossoverTest {
    private static final String TABLE = "/airspeed/crossover-warm-day.csv";
    private static final Crossover CROSSOVER =
            Crossover.of(CalibratedAirspeed.ofKnots(300), Mach.of(0.78));

    @ParameterizedTest(name = "{0}, {1}")
    @CsvFileSource(resources = TABLE, useHeadersInDisplayName = true)
    @DisplayName("has the pressure, the altitude and on each day the true airspeed of the table")
    void agreesWithTheTable(
            double casKnots,
            double mach,
            String pascal,
            String feet,
            String tasKnots,
            String tasKnotsWarm) {
        Crossover crossover = Crossover.of(CalibratedAirspeed.ofKnots(casKnots), Mach.of(mach));
        assertThat(crossover.staticPressure().inPascals()).is(printedAs(pascal, 10));
        // 9 digits, and the 1e-9 m that the altitude of a pressure states are less
        assertThat(crossover.pressureAltitude().inFeet()).is(printedAs(feet, 9));
        Atmosphere standard = Atmosphere.standard();
        Atmosphere warm = Atmosphere.withDeviationAtEachPressure(IsaDeviation.ofKelvins(20.0));
        assertThat(knots(crossover, standard)).is(printedAs(tasKnots, 8));
        assertThat(knots(crossover, warm)).is(printedAs(tasKnotsWarm, 8));
    }

    private static double knots(Crossover crossover, Atmosphere atmosphere) {
        return UnitScale.KNOT.fromSi(crossover.trueAirspeed(atmosphere).inMetresPerSecond());
    }

    @Test
    @DisplayName("is compared in 8 rows")
    void rows() {
        assertThat(Table.rows(TABLE)).hasSize(8);
    }

    @Test
    @DisplayName("of 300 kn and Mach 0.78 is at 29,314 ft")
    void common() {
        assertThat(CROSSOVER.pressureAltitude().inFeet()).isCloseTo(29314.0, within(0.5));
        assertThat(CROSSOVER).hasToString("300 kn and M0.78");
        assertThat(CROSSOVER.calibratedAirspeed()).isEqualTo(CalibratedAirspeed.ofKnots(300));
        assertThat(CROSSOVER.mach()).isEqualTo(Mach.of(0.78));
    }

    @Test
    @DisplayName("of supersonic speeds is one too")
    void supersonic() {
        double p = AirspeedConversion.crossoverPressure(UnitScale.KNOT.toSi(530.0), 2.0);
        assertThat(AirspeedConversion.machFromCas(UnitScale.KNOT.toSi(530.0), p))
                .isCloseTo(2.0, within(1e-14));
    }

    @Test
    @DisplayName("may lie where the standard atmosphere does not reach, and is refused there")
    void outside() {
        Crossover deep = Crossover.of(CalibratedAirspeed.ofKnots(400), Mach.of(0.2));
        assertThat(deep.staticPressure().inPascals()).isGreaterThan(1e6);
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(deep::pressureAltitude)
                .withMessageStartingWith("static pressure must be from ");
        assertThat(Crossover.hasAltitude(UnitScale.KNOT.toSi(400), 0.2)).isFalse();
        assertThat(Crossover.hasAltitude(UnitScale.KNOT.toSi(300), 0.78)).isTrue();
        assertThat(Crossover.hasAltitude(Double.NaN, 0.78)).isFalse();
        assertThat(Crossover.hasAltitude(150.0, 5.1)).isFalse();
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> Crossover.of(CalibratedAirspeed.ofKnots(0), Mach.of(0.78)))
                .withMessageStartingWith("calibrated airspeed of a crossover must be from 1.0 to ");
    }

    @Test
    @DisplayName("comes out of a stream as it went in, and is refused when tampered with")
    void stream() throws IOException {
        assertThat(Streams.roundTrip(CROSSOVER)).isEqualTo(CROSSOVER).hasSameHashCodeAs(CROSSOVER);
        assertThat(CROSSOVER)
                .isNotEqualTo(Crossover.of(CalibratedAirspeed.ofKnots(300), Mach.of(0.79)));
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> Streams.tampered(CROSSOVER, 0.78, 78.0));
    }
}
