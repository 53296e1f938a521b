package org.climbwright.sounding;

import static org.assertj.core.api.Assertions.anyOf;
import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.closeTo;
import static org.climbwright.testing.Agreement.printedAs;

import org.climbwright.atmosphere.AirState;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.testing.Table;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("At a standard pressure level of a recorded sounding")
class PressureLevelTableTest {
    private static final LargestDifferences DIFFERENCES = new LargestDifferences();

    @AfterAll
    static void print() {
        DIFFERENCES.print();
    }

    @ParameterizedTest(name = "{0} at {1}: {2}, {3}, {4}")
    @CsvFileSource(resources = "/sounding/pressure-levels.csv", useHeadersInDisplayName = true)
    @DisplayName("altitudes and ISA deviation are those of the table")
    void agreesWithTheTable(
            String sounding,
            double pressureHpa,
            String geopotentialMinusPressureAltitudeFt,
            String isaDeviationK,
            String geometricAltitudeFt) {
        AirState air =
                Soundings.profile(sounding)
                        .atmosphere()
                        .at(StaticPressure.ofHectopascals(pressureHpa));
        double geopotentialM = air.geopotentialAltitude().orElseThrow().inMetres();
        double pressureAltitudeM = air.pressureAltitude().inMetres();
        double higherFt = UnitScale.FOOT.fromSi(geopotentialM - pressureAltitudeM);
        assertThat(higherFt).is(printedAs(geopotentialMinusPressureAltitudeFt, 6));
        DIFFERENCES.note(
                "geopotential less pressure altitude",
                "ft",
                sounding,
                higherFt,
                geopotentialMinusPressureAltitudeFt);
        // One row prints -2.84217e-14, which is an ulp of its temperature and not a deviation.
        assertThat(air.isaDeviation().inKelvins())
                .is(anyOf(printedAs(isaDeviationK, 6), closeTo(isaDeviationK, 1e-13)));
        DIFFERENCES.note(
                "ISA deviation", "K", sounding, air.isaDeviation().inKelvins(), isaDeviationK);
        if (geometricAltitudeFt != null) {
            double geometricFt = air.geometricAltitude().orElseThrow().inFeet();
            assertThat(geometricFt).is(printedAs(geometricAltitudeFt, 6));
            DIFFERENCES.note(
                    "geometric altitude", "ft", sounding, geometricFt, geometricAltitudeFt);
        }
    }

    @Test
    @DisplayName("they are compared in 92 rows, 24 of them with a geometric altitude")
    void rows() {
        assertThat(Table.rows("/sounding/pressure-levels.csv"))
                .hasSize(92)
                .filteredOn(row -> row.split(",", -1)[4].matches("[0-9.]+"))
                .hasSize(24);
    }
}
