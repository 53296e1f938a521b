package org.climbwright.cabin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.climbwright.testing.Agreement.printedAs;

import org.climbwright.atmosphere.StandardAir;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.DifferentialPressure;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("Cabin altitude, differential and the aeroplane's altitude")
class CabinPressureTableTest {
    private static final double FEET = 0.3048;

    @ParameterizedTest(name = "{0} psi at {1} ft: cabin at {3} ft")
    @CsvFileSource(
            resources = "/cabin/cabin-altitude-from-differential.csv",
            useHeadersInDisplayName = true)
    @DisplayName("follow from each other as in the table")
    void eachFromTheOthers(double psi, double feet, String cabinPa, String cabinFeet) {
        DifferentialPressure differential = DifferentialPressure.ofPoundsPerSquareInch(psi);
        PressureAltitude aeroplane = PressureAltitude.ofFeet(feet);
        CabinAltitude cabin = CabinPressure.cabinAltitude(differential, aeroplane);

        assertThat(cabin.inFeet()).is(printedAs(cabinFeet, 9));
        assertThat(StandardAir.pressureFromAltitude(cabin.inMetres())).is(printedAs(cabinPa, 10));
        assertThat(CabinPressure.differential(cabin, aeroplane).inPoundsPerSquareInch())
                .isCloseTo(psi, within(1e-12));
        assertThat(CabinPressure.pressureAltitude(cabin, differential).inFeet())
                .isCloseTo(feet, within(1e-7));
    }

    @ParameterizedTest(name = "{0} ft/min at {1} ft: {2} hPa/min, {3} hPa lost in a minute")
    @CsvFileSource(resources = "/cabin/cabin-rate-pressure.csv", useHeadersInDisplayName = true)
    @DisplayName("a rate of cabin altitude is a rate of pressure, and a minute loses less")
    void rates(double feetPerMinute, double cabinFeet, String perMinute, String inAMinute) {
        double rate = feetPerMinute * FEET / 60.0;
        double cabin = cabinFeet * FEET;

        double pressureRate = CabinPressure.pressureRate(rate, cabin);
        assertThat(-pressureRate * 60.0 / 100.0).is(printedAs(perMinute, 9));
        assertThat(CabinPressure.cabinRate(pressureRate, cabin))
                .isCloseTo(rate, withinPercentage(1e-13));
        assertThat(CabinPressure.pressureLost(rate * 60.0, cabin) / 100.0)
                .is(printedAs(inAMinute, 9));
    }

    @Test
    @DisplayName("500 ft/min is 18.31 hPa/min at sea level and loses 18.17 hPa in a minute")
    void twoNames() {
        double rate = 500.0 * FEET / 60.0;
        double high = 8000.0 * FEET;
        assertThat(-CabinPressure.pressureRate(rate, 0.0) * 0.6).isCloseTo(18.31, within(0.005));
        assertThat(-CabinPressure.pressureRate(rate, high) * 0.6).isCloseTo(14.39, within(0.005));
        assertThat(CabinPressure.pressureLost(rate * 60.0, 0.0) / 100.0)
                .isCloseTo(18.17, within(0.005));
        assertThat(CabinPressure.pressureLost(rate * 60.0, high) / 100.0)
                .isCloseTo(14.28, within(0.005));
    }

    @Test
    @DisplayName(
            "8 psi at FL350 is a cabin of 6,727 ft; 2,000 ft and 8.000 psi meet at 24,127.5 ft")
    void knee() {
        DifferentialPressure eight = DifferentialPressure.ofPoundsPerSquareInch(8.0);
        assertThat(CabinPressure.cabinAltitude(eight, PressureAltitude.ofFlightLevel(350)).inFeet())
                .isCloseTo(6727.0, within(0.5));
        assertThat(CabinPressure.pressureAltitude(CabinAltitude.ofFeet(2000), eight).inFeet())
                .isCloseTo(24127.5, within(0.05));
    }

    @Test
    @DisplayName("are compared in 22 and 14 rows")
    void rows() {
        assertThat(Table.rows("/cabin/cabin-altitude-from-differential.csv")).hasSize(22);
        assertThat(Table.rows("/cabin/cabin-rate-pressure.csv")).hasSize(14);
    }
}
