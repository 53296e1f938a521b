package org.climbwright.sounding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.closeTo;

import java.util.ArrayList;
import java.util.List;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.testing.Table;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * The pressure altitudes and temperatures of a climb with its levels flown: each stretch from one
 * report to the next, if it climbed, is a small ascent, its altitudes from 0.
 */
@DisplayName("The air that an aeroplane reported in its climb")
class AircraftClimbTest {
    private static final LargestDifferences DIFFERENCES = new LargestDifferences();

    /** Files print 0.01 K and 10 m, the second computation as many digits. */
    private static final double UNIT_CONVERSION = 1e-9;

    /**
     * Half a unit of the last digit, and 0.006 m: above 11 km that much depends on the pressure
     * there, 22632.040 Pa by the equation of Doc 7488 and 22632.06 Pa as older tables round it. One
     * row needs it, 11100.5 m: ours, and a third computation by the equation, is 11100.553 m.
     */
    private static final double THICKNESS_M = 0.05 + 0.006;

    /**
     * Half of 0.1 ft where five digits stand before it, and the next term of the bend, 0.005 ft.
     */
    private static final double BENT_FT = 0.05 + 0.005;

    @AfterAll
    static void print() {
        DIFFERENCES.print();
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/sounding/aircraft-climbs.csv", useHeadersInDisplayName = true)
    @DisplayName("has the ISA deviations, the thickness and the 0 °C level of the table")
    void agreesWithTheTable(
            String climb,
            int reports,
            String lowestDeviationK,
            String highestDeviationK,
            String thicknessM,
            String gainM,
            int freezingLevels,
            String freezingLevelFt) {
        List<String> rows = Table.rows("/sounding/" + climb + ".csv");
        assertThat(rows).hasSize(reports);
        List<Sounding> stretches = stretches(rows);
        AirState lowest = stretches.get(0).airAtLevels().get(0);
        // The last report may be one more of the level before.
        AirState highest = air(rows.get(rows.size() - 1));
        agrees("ISA deviation", "K", climb, lowest.isaDeviation().inKelvins(), lowestDeviationK);
        agrees("ISA deviation", "K", climb, highest.isaDeviation().inKelvins(), highestDeviationK);
        double gain = highest.pressureAltitude().minus(lowest.pressureAltitude()).inMetres();
        agrees("gain of pressure altitude", "m", climb, gain, gainM);

        double thickness =
                stretches.stream()
                        .map(stretch -> stretch.airAtLevels().get(1))
                        .mapToDouble(top -> top.geopotentialAltitude().orElseThrow().inMetres())
                        .sum();
        assertThat(thickness).is(closeTo(thicknessM, THICKNESS_M));
        DIFFERENCES.note("thickness of a reported climb", "m", climb, thickness, thicknessM);

        List<Sounding> freezing =
                stretches.stream().filter(s -> !s.freezingLevels().isEmpty()).toList();
        assertThat(freezing).hasSize(freezingLevels);
        for (Sounding stretch : freezing) {
            double feet = stretch.freezingLevels().get(0).pressureAltitude().inFeet();
            DIFFERENCES.note("0 °C of a reported climb", "ft", climb, feet, freezingLevelFt);
            assertThat(feet - UnitScale.FOOT.fromSi(bend(stretch)))
                    .is(closeTo(freezingLevelFt, BENT_FT));
        }
    }

    private static void agrees(
            String quantity, String unit, String climb, double ours, String theirs) {
        assertThat(ours).as(quantity).is(closeTo(theirs, UNIT_CONVERSION));
        DIFFERENCES.note(quantity + " of a reported climb", unit, climb, ours, theirs);
    }

    /**
     * How much higher 0 °C is than in the table, which goes straight in pressure altitude from
     * report to report; straight in ln p is the bend of standard air higher, as in
     * CrossingTableTest.
     */
    private static double bend(Sounding stretch) {
        AirState low = stretch.airAtLevels().get(0);
        AirState high = stretch.airAtLevels().get(1);
        double share = (low.temperatureK() - 273.15) / (low.temperatureK() - high.temperatureK());
        double t0 = StandardAir.temperatureFromPressure(low.pressurePa());
        double t1 = StandardAir.temperatureFromPressure(high.pressurePa());
        double thickness = high.pressureAltitude().minus(low.pressureAltitude()).inMetres();
        return thickness * share * (1.0 - share) * ((t0 - t1) / (t0 + t1));
    }

    @Test
    @DisplayName("is compared in 4 climbs, 3 of which pass 0 °C")
    void rows() {
        assertThat(Table.rows("/sounding/aircraft-climbs.csv"))
                .hasSize(4)
                .filteredOn(row -> row.contains(",1,"))
                .hasSize(3);
    }

    private static List<Sounding> stretches(List<String> rows) {
        List<Sounding> stretches = new ArrayList<>();
        for (int i = 1; i < rows.size(); i++) {
            SoundingLevel low = level(rows.get(i - 1), 0.0);
            SoundingLevel high = level(rows.get(i), Double.NaN);
            assertThat(high.pressurePa()).isLessThanOrEqualTo(low.pressurePa());
            if (high.pressurePa() < low.pressurePa()) {
                stretches.add(Sounding.of("", "", List.of(low, high)));
            }
        }
        return stretches;
    }

    private static AirState air(String row) {
        SoundingLevel level = level(row, Double.NaN);
        return AirState.of(
                level.staticPressure().orElseThrow(), level.staticAirTemperature().orElseThrow());
    }

    private static SoundingLevel level(String row, double geopotentialAltitudeM) {
        String[] cells = row.split(",", -1);
        return SoundingLevel.ofSi(
                StandardAir.pressureFromAltitude(Double.parseDouble(cells[3])),
                geopotentialAltitudeM,
                UnitScale.CELSIUS.toSi(Double.parseDouble(cells[4])),
                Double.NaN,
                Double.NaN,
                Double.NaN);
    }
}
