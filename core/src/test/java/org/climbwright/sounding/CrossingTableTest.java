package org.climbwright.sounding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.closeTo;
import static org.climbwright.testing.Agreement.printedAs;

import java.util.List;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.MoistAir;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The air of a recorded sounding passes a temperature")
class CrossingTableTest {
    private static final LargestDifferences DIFFERENCES = new LargestDifferences();

    @AfterAll
    static void print() {
        DIFFERENCES.print();
    }

    @ParameterizedTest(name = "{0}: {1}, {2}, {3} at {4}, {5}, {6}")
    @CsvFileSource(resources = "/sounding/crossings.csv", useHeadersInDisplayName = true)
    @DisplayName("where the table has it: pressure, altitudes and trend")
    void agreesWithTheTable(
            String sounding,
            double celsius,
            int crossing,
            IsothermCrossing.Trend trend,
            String pressureHpa,
            String geopotentialM,
            String pressureAltitudeFt) {
        IsothermCrossing ours = crossings(sounding, celsius).get(crossing - 1);
        assertThat(ours.trend()).isEqualTo(trend);
        double hpa = ours.air().staticPressure().inHectopascals();
        assertThat(hpa).is(printedAs(pressureHpa, 6));
        double feet = ours.pressureAltitude().inFeet();
        assertThat(feet).is(printedAs(pressureAltitudeFt, 6));
        double metres = ours.air().geopotentialAltitude().orElseThrow().inMetres();
        double straight = metres - bend(Soundings.profile(sounding), ours.air().pressurePa());
        assertThat(straight).is(printedAs(geopotentialM, 6));
        String isotherm = " of %.0f °C".formatted(celsius);
        DIFFERENCES.note("pressure" + isotherm, "hPa", sounding, hpa, pressureHpa);
        DIFFERENCES.note("pressure altitude" + isotherm, "ft", sounding, feet, pressureAltitudeFt);
        DIFFERENCES.note("geopotential altitude" + isotherm, "m", sounding, metres, geopotentialM);
        DIFFERENCES.note(
                "geopotential altitude" + isotherm + ", the bend aside",
                "m",
                sounding,
                straight,
                geopotentialM);
        assertThat(ours.air().staticAirTemperature().inCelsius())
                .is(closeTo(Double.toString(celsius), 1e-9));
    }

    /**
     * The table goes straight in ln p from height to height, the air by the hypsometric equation,
     * which is right. Where levels are near the two are the same to 1 m.
     */
    @ParameterizedTest(name = "{0}: {1} °C, crossing {2}")
    @CsvFileSource(resources = "/sounding/crossings.csv", useHeadersInDisplayName = true)
    @DisplayName("within 1 m of the table as it stands, or is listed with who is right")
    void asItStands(
            String sounding,
            String celsius,
            String crossing,
            IsothermCrossing.Trend trend,
            String pressureHpa,
            String geopotentialM) {
        IsothermCrossing found =
                crossings(sounding, Double.parseDouble(celsius))
                        .get(Integer.parseInt(crossing) - 1);
        double ours = found.air().geopotentialAltitude().orElseThrow().inMetres();
        String row = String.join(",", sounding, celsius, crossing, geopotentialM) + ",";
        List<String> listed =
                Table.rows("/sounding/rows-that-disagree.csv").stream()
                        .filter(line -> line.startsWith(row))
                        .toList();
        boolean farther = Math.abs(ours - Double.parseDouble(geopotentialM)) > 1.0;
        assertThat(listed).hasSize(farther ? 1 : 0);
        for (String line : listed) {
            assertThat(ours).is(printedAs(line.split(",", -1)[4]));
        }
        assertThat(found.trend()).isEqualTo(trend);
        assertThat(found.air().staticPressure().inHectopascals()).is(closeTo(pressureHpa, 0.001));
    }

    /**
     * How much higher the hypsometric equation is than the table, which goes straight in ln p from
     * one reported height to the next. Where virtual temperature is linear in ln p from {@code T0}
     * to {@code T1}, at a share {@code s} of a thickness {@code h}, it is {@code h s (1 - s) (T0 -
     * T1) / (T0 + T1)}: metres in the middle of a thick layer, nothing at its ends.
     */
    static double bend(Sounding sounding, double pressurePa) {
        List<SoundingLevel> levels = Soundings.levelsOfAir(sounding);
        int above = 1;
        while (levels.get(above).pressurePa() > pressurePa) {
            above++;
        }
        SoundingLevel low = levels.get(above - 1);
        SoundingLevel high = levels.get(above);
        double share =
                Math.log(low.pressurePa() / pressurePa)
                        / Math.log(low.pressurePa() / high.pressurePa());
        double t0 = virtualTemperature(low);
        double t1 = virtualTemperature(high);
        return (high.geopotentialAltitudeM() - low.geopotentialAltitudeM())
                * share
                * (1.0 - share)
                * ((t0 - t1) / (t0 + t1));
    }

    private static double virtualTemperature(SoundingLevel level) {
        return MoistAir.virtualTemperature(
                level.temperatureK(),
                MoistAir.saturationVapourPressure(level.dewPointK()),
                level.pressurePa());
    }

    @ParameterizedTest(name = "{0} °C")
    @ValueSource(ints = {0, -10, -20, -40})
    @DisplayName("nowhere else up to 200 hPa, where the table ends: every crossing has its row")
    void everyCrossingHasItsRow(int celsius) {
        List<String> rows = Table.rows("/sounding/crossings.csv");
        for (String name : Soundings.PROFILES) {
            long expected =
                    rows.stream().filter(row -> row.startsWith(name + "," + celsius + ",")).count();
            assertThat(crossings(name, celsius))
                    .as(name)
                    .filteredOn(crossing -> crossing.air().pressurePa() >= 20000.0)
                    .hasSize((int) expected);
        }
    }

    @ParameterizedTest(name = "{0} between {1} and {2} hPa")
    @CsvSource({"i70026_barrow_20100601, 20.0, 13.8", "v91408_koror_tropical, 8.5, 8.0"})
    @DisplayName("once more in the stratosphere, and the levels of the file show it")
    void aboveTheTable(String sounding, double belowHpa, double aboveHpa) {
        List<IsothermCrossing> crossings = crossings(sounding, -40);
        IsothermCrossing last = crossings.get(crossings.size() - 1);
        assertThat(crossings).hasSize(2);
        assertThat(last.trend()).isEqualTo(IsothermCrossing.Trend.RISING);
        assertThat(last.air().staticPressure().inHectopascals()).isBetween(aboveHpa, belowHpa);
        assertThat(temperatureAt(sounding, belowHpa)).isLessThan(-40.0);
        assertThat(temperatureAt(sounding, aboveHpa)).isGreaterThan(-40.0);
    }

    private static double temperatureAt(String sounding, double hpa) {
        return Soundings.levelsOfAir(Soundings.profile(sounding)).stream()
                .filter(level -> Math.abs(level.pressurePa() - 100.0 * hpa) < 1e-6)
                .findFirst()
                .flatMap(SoundingLevel::staticAirTemperature)
                .orElseThrow()
                .inCelsius();
    }

    private static List<IsothermCrossing> crossings(String sounding, double celsius) {
        return Soundings.profile(sounding)
                .isothermCrossings(StaticAirTemperature.ofCelsius(celsius));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvFileSource(
            resources = "/sounding/freezing-level-counts.csv",
            useHeadersInDisplayName = true)
    @DisplayName("as often as the table counts, if it is 0 °C")
    void freezingLevels(String sounding, int crossings) {
        assertThat(Soundings.profile(sounding).freezingLevels()).hasSize(crossings);
        DIFFERENCES.note(
                "number of 0 °C levels",
                "1",
                sounding,
                Soundings.profile(sounding).freezingLevels().size(),
                crossings);
    }

    @ParameterizedTest(name = "{0}: crossing {1}, {2}, {3}")
    @CsvFileSource(resources = "/sounding/second-crossings.csv", useHeadersInDisplayName = true)
    @DisplayName("where a second computation has 0 °C, which finds one crossing of several")
    void agreesWithTheSecondComputation(
            String sounding, int crossing, String pressureHpa, String geopotentialM) {
        AirState ours = crossings(sounding, 0.0).get(crossing - 1).air();
        double hpa = ours.staticPressure().inHectopascals();
        assertThat(hpa).is(printedAs(pressureHpa, 6));
        double metres = ours.geopotentialAltitude().orElseThrow().inMetres();
        double straight = metres - bend(Soundings.profile(sounding), ours.pressurePa());
        assertThat(straight).is(printedAs(geopotentialM, 6));
        DIFFERENCES.note("pressure of 0 °C, second source", "hPa", sounding, hpa, pressureHpa);
        DIFFERENCES.note(
                "geopotential altitude of 0 °C, second source, the bend aside",
                "m",
                sounding,
                straight,
                geopotentialM);
    }

    @Test
    @DisplayName(
            "in 52 rows, 17 of them for 0 °C, 12 rows of counts and 7 by a second source; 15 are"
                    + " listed")
    void rows() {
        assertThat(Table.rows("/sounding/crossings.csv"))
                .hasSize(52)
                .filteredOn(row -> row.matches("\\w+,0,.*"))
                .hasSize(17);
        assertThat(Table.rows("/sounding/freezing-level-counts.csv")).hasSize(12);
        assertThat(Table.rows("/sounding/second-crossings.csv")).hasSize(7);
        assertThat(Table.rows("/sounding/rows-that-disagree.csv")).hasSize(15);
    }
}
