package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.closeTo;
import static org.climbwright.testing.Agreement.computedAs;
import static org.climbwright.testing.Agreement.printedAs;

import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.testing.Table;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("A flight level in standard air")
class FlightLevelTableTest {
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/atmosphere/flight-levels.csv", useHeadersInDisplayName = true)
    @DisplayName("has the pressure, temperature and speed of sound of the table")
    void agreesWithTheTable(
            String flightLevel,
            String metres,
            String hectopascal,
            String inchesOfMercury,
            String celsius,
            String soundKnots) {
        PressureAltitude level = PressureAltitude.parse(flightLevel);
        AirState air = Atmosphere.standard().at(level);
        assertThat(level.inMetres()).is(closeTo(metres, 1e-9));
        assertThat(air.staticPressure().inHectopascals()).is(computedAs(hectopascal, 10));
        assertThat(UnitScale.INCH_OF_MERCURY.fromSi(air.pressurePa()))
                .is(computedAs(inchesOfMercury, 9));
        // exact in the table; 1e-12 of the 200 to 288 K that it is in our air
        assertThat(air.staticAirTemperature().inCelsius()).is(closeTo(celsius, 3e-10));
        assertThat(UnitScale.KNOT.fromSi(air.speedOfSoundMps())).is(printedAs(soundKnots, 9));
    }

    @Test
    @DisplayName("is compared in 33 rows")
    void rows() {
        assertThat(Table.rows("/atmosphere/flight-levels.csv")).hasSize(33);
    }
}
