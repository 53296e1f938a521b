package org.climbwright.sounding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.closeTo;
import static org.climbwright.testing.Agreement.printedAs;

import org.climbwright.atmosphere.altimetry.Altimetry;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("The lowest level of a recorded sounding")
class SurfaceTableTest {
    private static final LargestDifferences DIFFERENCES = new LargestDifferences();

    @AfterAll
    static void print() {
        DIFFERENCES.print();
    }

    /** A number of the file went through a factor or an offset: some ulp, and nothing else. */
    private static final double UNIT_CONVERSION = 1e-9;

    @ParameterizedTest(name = "{0}: {1}, {2}, {3}, {4}")
    @CsvFileSource(resources = "/sounding/surface.csv", useHeadersInDisplayName = true)
    @DisplayName("has the pressure, temperature, dew point and height of the file")
    void isRead(
            String sounding, String pressureHpa, String celsius, String dewPointC, String heightM) {
        SoundingLevel lowest = Soundings.levelsOfAir(Soundings.profile(sounding)).get(0);
        isAsInTheFile(
                "pressure of the lowest level",
                "hPa",
                sounding,
                lowest.staticPressure().orElseThrow().inHectopascals(),
                pressureHpa);
        isAsInTheFile(
                "temperature of the lowest level",
                "K",
                sounding,
                lowest.staticAirTemperature().orElseThrow().inCelsius(),
                celsius);
        isAsInTheFile(
                "dew point of the lowest level",
                "K",
                sounding,
                lowest.dewPoint().orElseThrow().inCelsius(),
                dewPointC);
        isAsInTheFile(
                "altitude of the lowest level",
                "m",
                sounding,
                lowest.geopotentialAltitude().orElseThrow().inMetres(),
                heightM);
    }

    private static void isAsInTheFile(
            String quantity, String unit, String sounding, double ours, String written) {
        assertThat(ours).as(quantity).is(closeTo(written, UNIT_CONVERSION));
        DIFFERENCES.note(quantity, unit, sounding, ours, written);
    }

    @ParameterizedTest(name = "{0}: {1} and {2} make {3}, {4}")
    @CsvFileSource(resources = "/sounding/qnh.csv", useHeadersInDisplayName = true)
    @DisplayName("has the QNH and the pressure altitude of the table")
    void hasItsQnh(
            String sounding,
            String heightM,
            String pressureHpa,
            String qnhHpa,
            String pressureAltitudeFt) {
        SoundingLevel lowest = Soundings.levelsOfAir(Soundings.profile(sounding)).get(0);
        StaticPressure pressure = lowest.staticPressure().orElseThrow();
        GeopotentialAltitude height = lowest.geopotentialAltitude().orElseThrow();
        assertThat(pressure.inHectopascals()).is(closeTo(pressureHpa, UNIT_CONVERSION));
        assertThat(height.inMetres()).is(closeTo(heightM, UNIT_CONVERSION));
        double qnh = Altimetry.qnh(pressure, height).inHectopascals();
        assertThat(qnh).is(printedAs(qnhHpa, 6));
        DIFFERENCES.note("QNH of the lowest level", "hPa", sounding, qnh, qnhHpa);
        double altitude = Altimetry.pressureAltitude(pressure).inFeet();
        assertThat(altitude).is(printedAs(pressureAltitudeFt, 6));
        DIFFERENCES.note(
                "pressure altitude of the lowest level",
                "ft",
                sounding,
                altitude,
                pressureAltitudeFt);
    }

    @Test
    @DisplayName("is compared in 12 rows, and 12 rows of QNH")
    void rows() {
        assertThat(Table.rows("/sounding/surface.csv")).hasSize(12);
        assertThat(Table.rows("/sounding/qnh.csv")).hasSize(12);
    }
}
