package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.testing.Agreement.printedAs;

import org.climbwright.atmosphere.altimetry.VerticalRates;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.GeometricRate;
import org.climbwright.quantity.speed.PressureAltitudeRate;
import org.climbwright.quantity.temperature.IsaDeviation;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("A rate on the instrument in air that is warmer or colder than standard")
class AltitudePerPressureAltitudeTableTest {
    @ParameterizedTest(name = "{0}, {1}: {2}")
    @CsvFileSource(
            resources = "/atmosphere/altitude-per-pressure-altitude.csv",
            useHeadersInDisplayName = true)
    @DisplayName("is the rate in the air times the ratio of the table")
    void agreesWithTheTable(double feet, double deviation, String ratio, String per1000) {
        AirState air =
                Atmosphere.withDeviationAtEachPressure(IsaDeviation.ofKelvins(deviation))
                        .at(PressureAltitude.ofFeet(feet));
        assertThat(VerticalRates.geopotentialPerPressureAltitude(air)).is(printedAs(ratio, 9));
        assertThat(1000.0 * VerticalRates.geopotentialPerPressureAltitude(air))
                .is(printedAs(per1000, 8));

        PressureAltitudeRate shown = PressureAltitudeRate.ofFeetPerMinute(1000.0);
        GeometricRate truly = VerticalRates.geometricRate(shown, air);
        double altitudeM = air.geopotentialAltitude().orElseThrow().inMetres();
        double geometric =
                Geopotential.geometricPerGeopotential(
                        Geopotential.geometricFromGeopotential(altitudeM));
        assertThat(truly.inFeetPerMinute() / geometric).is(printedAs(per1000, 8));
        // there and back: 2 ulp
        assertThat(VerticalRates.pressureAltitudeRate(truly, air).inFeetPerMinute())
                .isCloseTo(1000.0, within(2 * Math.ulp(1000.0)));
        // the rate that the instrument must show for 1,000 ft/min in true height
        assertThat(
                        VerticalRates.pressureAltitudeRate(
                                        GeometricRate.ofFeetPerMinute(1000.0), air)
                                .inFeetPerMinute())
                .isCloseTo(1e6 / truly.inFeetPerMinute(), within(1e-9));
    }

    @Test
    @DisplayName("is compared in 11 rows")
    void rows() {
        assertThat(Table.rows("/atmosphere/altitude-per-pressure-altitude.csv")).hasSize(11);
    }
}
