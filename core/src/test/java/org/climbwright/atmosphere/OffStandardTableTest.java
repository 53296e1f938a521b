package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.computedAs;
import static org.climbwright.testing.Agreement.printedAs;

import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.temperature.IsaDeviation;
import org.climbwright.quantity.temperature.IsaDeviationAtAltitude;
import org.climbwright.testing.Table;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("Air that is warmer or colder than standard by the same amount")
class OffStandardTableTest {
    @ParameterizedTest(name = "{0}, {1}")
    @CsvFileSource(resources = "/atmosphere/off-standard.csv", useHeadersInDisplayName = true)
    @DisplayName("at every pressure, and at every altitude, has the state of the table")
    void agreesWithTheTable(
            double pressureAltitudeFeet,
            double deviation,
            String pascal,
            String kelvinA,
            String densityA,
            String soundKnotsA,
            String densityAltitudeA,
            String geopotentialA,
            String kelvinB,
            String geopotentialB,
            String higherB,
            String warmerB) {
        PressureAltitude level = PressureAltitude.ofFeet(pressureAltitudeFeet);

        AirState a =
                Atmosphere.withDeviationAtEachPressure(IsaDeviation.ofKelvins(deviation)).at(level);
        assertThat(a.pressurePa()).is(computedAs(pascal, 12));
        assertThat(a.temperatureK()).is(computedAs(kelvinA, 17));
        assertThat(a.densityKgPerM3()).is(computedAs(densityA, 12));
        assertThat(UnitScale.KNOT.fromSi(a.speedOfSoundMps())).is(printedAs(soundKnotsA, 10));
        assertThat(a.densityAltitude().inFeet()).is(printedAs(densityAltitudeA, 10));
        assertThat(feet(a)).is(printedAs(geopotentialA, 10));

        AirState b =
                Atmosphere.withDeviationAtEachAltitude(IsaDeviationAtAltitude.ofKelvins(deviation))
                        .at(level);
        assertThat(b.temperatureK()).is(printedAs(kelvinB, 10));
        assertThat(feet(b)).is(printedAs(geopotentialB, 10));
        assertThat(feet(b) - feet(a)).is(printedAs(higherB, 6));
        assertThat(b.temperatureK() - a.temperatureK()).is(printedAs(warmerB, 6));
    }

    private static double feet(AirState air) {
        return air.geopotentialAltitude().orElseThrow().inFeet();
    }

    @Test
    @DisplayName("is compared in 50 rows")
    void rows() {
        assertThat(Table.rows("/atmosphere/off-standard.csv")).hasSize(50);
    }
}
