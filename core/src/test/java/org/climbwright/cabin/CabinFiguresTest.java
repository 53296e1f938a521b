package org.climbwright.cabin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.printedAs;

import java.util.Arrays;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.speed.CabinAltitudeRate;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("Figures of the trade about cabins")
class CabinFiguresTest {
    private static final double FOOT = 0.3048;
    private static final double PSI = Cabins.psi(1.0).inPascals();
    private static final String RATES = "/cabin/rates-and-pre-pressurisation.csv";
    private static final String PITFALLS = "/cabin/schedule-pitfalls.csv";
    private static final String LEFT_OUT = "/cabin/rows-left-out-schedule.csv";

    @ParameterizedTest(name = "{0}: {1} of {2} at {3} ft is {4}")
    @CsvFileSource(resources = RATES, useHeadersInDisplayName = true)
    @DisplayName("on rates and small differentials come to what is printed beside them")
    void figures(String id, String quantity, double figure, double feet, String printed) {
        double computed = computed(quantity, figure, feet);
        String[] ends = printed.split("-");
        if (ends.length == 2) {
            assertThat(computed)
                    .isBetween(Double.parseDouble(ends[0]), Double.parseDouble(ends[1]));
        } else {
            assertThat(computed).as(id).is(printedAs(printed));
        }
    }

    private static double computed(String quantity, double figure, double feet) {
        double cabinM = feet * FOOT;
        double perMinuteM = figure * FOOT;
        return switch (quantity) {
            case "minute_hectopascals" -> CabinPressure.pressureLost(perMinuteM, cabinM) / 100.0;
            case "minute_psi" -> CabinPressure.pressureLost(perMinuteM, cabinM) / PSI;
            case "hectopascals_per_minute" ->
                    -CabinPressure.pressureRate(perMinuteM / 60.0, cabinM) * 0.6;
            case "psi_per_minute" ->
                    -CabinPressure.pressureRate(perMinuteM / 60.0, cabinM) * 60.0 / PSI;
            case "minutes_for_7000_feet" -> minutesToSeaLevel(figure, feet);
            case "feet_for_psi_upwards" ->
                    CabinPressure.cabinAltitude(-figure * PSI, cabinM) / FOOT - feet;
            case "feet_for_psi_below" ->
                    feet - CabinPressure.cabinAltitude(figure * PSI, cabinM) / FOOT;
            case "psi_for_feet" -> CabinPressure.pressureLost(perMinuteM, cabinM) / PSI;
            case "psi_in_hand" -> CabinPressure.pressureLost(perMinuteM, cabinM) / PSI;
            case "kilopascals" -> figure * PSI / 1000.0;
            default -> throw new AssertionError(quantity);
        };
    }

    /** As long as it takes until the cabin is at sea level, by a step of a tenth of a minute. */
    private static double minutesToSeaLevel(double feetPerMinute, double feet) {
        int tenths = 0;
        CabinAltitudeRate down = CabinAltitudeRate.ofFeetPerMinute(-feetPerMinute);
        CabinAltitude cabin = CabinAltitude.ofFeet(feet);
        while (cabin.inFeet() > 1e-6) {
            double next = cabin.inMetres() + down.inMetresPerSecond() * 6.0;
            cabin = CabinAltitude.ofMetres(next);
            tenths++;
        }
        return tenths / 10.0;
    }

    @ParameterizedTest(name = "{0}: {1}, not {2}")
    @CsvFileSource(resources = PITFALLS, useHeadersInDisplayName = true)
    @DisplayName("that are wrong are not what is computed here:")
    void pitfalls(String id, String quantity, String wrong, String right) {
        double computed =
                switch (id) {
                    case "P01" ->
                            CabinPressure.differential(8000 * FOOT, 34000 * FOOT) / PSI * 144.0;
                    case "P03" -> CabinPressure.differential(6100 * FOOT, 30000 * FOOT) / PSI;
                    case "P04" -> -CabinPressure.pressureRate(500 * FOOT / 60.0, 8000 * FOOT) * 0.6;
                    case "P05" -> CabinPressure.differential(8000 * FOOT, 43100 * FOOT) / PSI;
                    case "P07" -> fieldFeet(1012.75) - fieldFeet(1013.75);
                    default -> throw new AssertionError(id + quantity);
                };
        assertThat(computed).is(printedAs(right)).isNot(printedAs(wrong));
    }

    private static double fieldFeet(double hectopascals) {
        return CabinPlan.field(
                        GeopotentialAltitude.ofFeet(0),
                        AltimeterSetting.ofHectopascals(hectopascals))
                .inFeet();
    }

    @ParameterizedTest(name = "{1}")
    @CsvFileSource(resources = LEFT_OUT, useHeadersInDisplayName = true)
    @DisplayName("that are not compared have one of a few reasons:")
    void leftOut(String table, String row, String reason, String source) {
        String[] reasons = {
            "an older habit of one operator, no relation to compute",
            "one weak source, no relation to compute",
            "a setting of one type, no relation to compute",
            "a crew alert of one type, no part of a schedule",
            "a leak, no part of a schedule",
            "a citation, no figure",
            "a decompression, no part of a schedule",
            "units, compared where units are tested",
            "oxygen and consciousness, no part of a schedule",
        };
        assertThat(Table.rows("/cabin/" + table)).isNotEmpty();
        assertThat(row).isNotBlank();
        assertThat(source).isNotBlank();
        assertThat(Arrays.stream(reasons).filter(reason::equals)).hasSize(1);
    }

    @Test
    @DisplayName("are 16 and 5 rows, and 16 are left out")
    void rows() {
        assertThat(Table.rows(RATES)).hasSize(16);
        assertThat(Table.rows(PITFALLS)).hasSize(5);
        assertThat(Table.rows(LEFT_OUT)).hasSize(16);
        assertThat(Table.rows(LEFT_OUT)).filteredOn(row -> row.matches(".*csv,\"?V.*")).hasSize(11);
    }
}
