package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.closeTo;
import static org.climbwright.testing.Agreement.computedAs;
import static org.climbwright.testing.Agreement.printedAs;

import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.testing.Table;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("Air that is as much warmer or colder than standard at every pressure")
class OffStandardTableTest {
    @ParameterizedTest(name = "{0}, {1}")
    @CsvFileSource(resources = "/atmosphere/off-standard.csv", useHeadersInDisplayName = true)
    @DisplayName("has the state of the table, in 50-digit arithmetic")
    void agreesWithTheTable(
            double pressureAltitudeFeet,
            double deviation,
            String pascal,
            String kelvin,
            String density,
            String soundKnots,
            String densityAltitude,
            String geopotential) {
        Atmosphere day =
                Atmosphere.of(
                        pressurePa -> StandardAir.temperatureFromPressure(pressurePa) + deviation,
                        AltitudeDatum.onQnh(AltimeterSetting.ofHectopascals(1013.25)));
        AirState air = day.at(PressureAltitude.ofFeet(pressureAltitudeFeet));
        assertThat(air.pressurePa()).is(computedAs(pascal, 12));
        assertThat(air.temperatureK()).is(computedAs(kelvin, 17));
        assertThat(air.densityKgPerM3()).is(computedAs(density, 12));
        assertThat(UnitScale.KNOT.fromSi(air.speedOfSoundMps())).is(printedAs(soundKnots, 10));
        assertThat(air.densityAltitude().inFeet()).is(printedAs(densityAltitude, 10));
        // what Atmosphere.of states: 1e-6 m, above the tropopause 0.01 m for the bend there; and
        // 10 digits of at most 45,000 ft
        double tolerance = pressureAltitudeFeet < 36089.0 ? 1e-6 : 0.01;
        assertThat(air.geopotentialAltitude().orElseThrow().inFeet())
                .is(closeTo(geopotential, tolerance / 0.3048 + 5e-6));
    }

    @Test
    @DisplayName("is compared in 50 rows")
    void rows() {
        assertThat(Table.rows("/atmosphere/off-standard.csv")).hasSize(50);
    }
}
