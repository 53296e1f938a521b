package org.climbwright.sounding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.closeTo;
import static org.climbwright.testing.Agreement.printedAs;

import java.util.List;
import org.climbwright.atmosphere.MoistAir;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The air of a recorded sounding passes a temperature")
class CrossingTableTest {
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
        assertThat(ours.air().staticPressure().inHectopascals()).is(printedAs(pressureHpa, 6));
        assertThat(ours.pressureAltitude().inFeet()).is(printedAs(pressureAltitudeFt, 6));
        double geopotential = ours.air().geopotentialAltitude().orElseThrow().inMetres();
        assertThat(geopotential - bend(Soundings.profile(sounding), ours.air().pressurePa()))
                .is(printedAs(geopotentialM, 6));
        assertThat(ours.air().staticAirTemperature().inCelsius())
                .is(closeTo(Double.toString(celsius), 1e-9));
    }

    /**
     * The table goes straight in ln p from height to height, the air by the hypsometric equation,
     * which is right. Where levels are near the two are the same to 1 m.
     */
    @ParameterizedTest(name = "{0}: crossing {1}, {2}")
    @CsvFileSource(resources = "/sounding/crossings.csv", useHeadersInDisplayName = true)
    @DisplayName("at 0 °C within 1 m and 1 ft of the table as it stands, in all soundings but one")
    void zeroCelsiusAsItStands(
            String sounding,
            double celsius,
            int crossing,
            IsothermCrossing.Trend trend,
            String pressureHpa,
            double geopotentialM,
            double pressureAltitudeFt) {
        IsothermCrossing ours = crossings(sounding, celsius).get(crossing - 1);
        assertThat(Math.abs(ours.pressureAltitude().inFeet() - pressureAltitudeFt)).isLessThan(1.0);
        double apart = ours.air().geopotentialAltitude().orElseThrow().inMetres() - geopotentialM;
        if (celsius == 0.0 && !sounding.equals(IN_A_THICK_LAYER)) {
            assertThat(Math.abs(apart)).isLessThan(1.0);
        } else if (celsius == 0.0) {
            // 3.6 m, all of it the bend of a layer 1,120 m thick
            assertThat(apart).isBetween(3.0, 4.0);
        }
        assertThat(trend).isNotNull();
        assertThat(pressureHpa).isNotBlank();
    }

    private static final String IN_A_THICK_LAYER = "v40582_kuwait_desert";

    @Test
    @DisplayName("and the one that is farther is listed, with who is right")
    void theOneFarther() {
        List<String> rows = Table.rows("/sounding/rows-that-disagree.csv");
        assertThat(rows).hasSize(1);
        assertThat(rows.get(0)).startsWith(IN_A_THICK_LAYER + ",0,1,3600.3,3603.9,");
        double ours =
                crossings(IN_A_THICK_LAYER, 0.0)
                        .get(0)
                        .air()
                        .geopotentialAltitude()
                        .orElseThrow()
                        .inMetres();
        assertThat(ours).is(printedAs("3603.9", 5));
    }

    /**
     * How much higher the hypsometric equation is than the table, which goes straight in ln p from
     * one reported height to the next. Where virtual temperature is linear in ln p from {@code T0}
     * to {@code T1}, at a share {@code s} of a thickness {@code h}, it is {@code h s (1 - s) (T0 -
     * T1) / (T0 + T1)}: metres in the middle of a thick layer, nothing at its ends.
     */
    private static double bend(Sounding sounding, double pressurePa) {
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
    }

    @Test
    @DisplayName("in 52 rows, 17 of them for 0 °C, and 12 rows of counts")
    void rows() {
        assertThat(Table.rows("/sounding/crossings.csv"))
                .hasSize(52)
                .filteredOn(row -> row.matches("\\w+,0,.*"))
                .hasSize(17);
        assertThat(Table.rows("/sounding/freezing-level-counts.csv")).hasSize(12);
    }
}
