package org.climbwright.cabin.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.climbwright.testing.Agreement.printedAs;

import java.util.Locale;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.cabin.CabinPressure;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.testing.Agreement;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("A cabin that empties")
class BlowDownTableTest {
    @ParameterizedTest(name = "{0} m³, {1} m², {3} to {5} ft at {2} ft, {6}: {7} s")
    @CsvFileSource(resources = "/cabin/decompression-time.csv", useHeadersInDisplayName = true)
    @DisplayName("takes the time of the table, by quadrature and step by step")
    void time(
            double volume,
            double area,
            double feet,
            double fromFeet,
            double kelvins,
            double toFeet,
            String gas,
            String seconds) {
        CabinAir air = CabinAir.valueOf(gas.toUpperCase(Locale.ROOT));
        double from = StandardAir.pressureFromAltitude(fromFeet * 0.3048);
        double to = StandardAir.pressureFromAltitude(toFeet * 0.3048);
        double outside = StandardAir.pressureFromAltitude(feet * 0.3048);
        assertThat(BlowDown.timeS(volume, area, from, to, outside, kelvins, air))
                .is(printedAs(seconds, 9));

        double time = Double.parseDouble(seconds);
        CabinHull hull = new CabinHull(volume, kelvins, 0.0, kelvins, 0.0, 0.01, air);
        CabinGas gasInSteps = new CabinGas(hull, from);
        int steps = (int) Math.ceil(time * 60.0);
        for (int i = 0; i < steps; i++) {
            gasInSteps.step(time / steps, outside, outside, 220.0, 0.0, area);
        }
        // 1e-4 of the time: what that is in pressure
        double before =
                BlowDown.timeS(volume, area, from, gasInSteps.pressurePa(), outside, kelvins, air);
        assertThat(before).is(Agreement.relativelyCloseTo(seconds, 1e-4));
    }

    @ParameterizedTest(name = "{3} kg/s of {0} m³ at {2} ft: {5} ft/min")
    @CsvFileSource(
            resources = "/cabin/cabin-rate-from-mass-imbalance.csv",
            useHeadersInDisplayName = true)
    @DisplayName("climbs as the table says by what it loses")
    void rate(
            double volume,
            double kelvins,
            double feet,
            double net,
            String pascalsPerSecond,
            String feetPerMinute) {
        double rate = MassBalance.isothermalPressureRate(net, volume, kelvins);
        assertThat(rate).is(printedAs(pascalsPerSecond, 9));
        assertThat(CabinPressure.cabinRate(rate, feet * 0.3048) / 0.3048 * 60.0)
                .is(printedAs(feetPerMinute, 9));
    }

    @Test
    @DisplayName("is empty in a finite time at the pressure outside, and never below it")
    void toTheEnd() {
        CabinHull hull = Flights.hull(CabinAir.ISOTHERMAL);
        CabinAltitude from = CabinAltitude.ofFeet(8000);
        PressureAltitude level = PressureAltitude.ofFeet(25000);
        double nearly =
                BlowDown.time(hull, 0.01, from, CabinAltitude.ofFeet(24999.999), level)
                                .orElseThrow()
                                .toNanos()
                        / 1e9;
        double whole =
                BlowDown.time(hull, 0.01, from, CabinAltitude.ofFeet(25000), level)
                                .orElseThrow()
                                .toNanos()
                        / 1e9;
        assertThat(whole).isBetween(nearly, nearly + 0.05);
        assertThat(BlowDown.time(hull, 0.01, from, CabinAltitude.ofFeet(25001), level)).isEmpty();
        assertThatThrownBy(
                        () -> BlowDown.time(hull, -5.0, from, CabinAltitude.ofFeet(26000), level))
                .hasMessageContaining("area of the opening");
    }

    @Test
    @DisplayName("is compared in 10 and 4 rows")
    void rows() {
        assertThat(Table.rows("/cabin/decompression-time.csv")).hasSize(10);
        assertThat(Table.rows("/cabin/cabin-rate-from-mass-imbalance.csv")).hasSize(4);
    }
}
