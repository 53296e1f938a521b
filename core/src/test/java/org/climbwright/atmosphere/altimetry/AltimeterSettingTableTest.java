package org.climbwright.atmosphere.altimetry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.closeTo;
import static org.climbwright.testing.Agreement.printedAs;

import java.util.List;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.testing.Table;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("An altimeter setting, as printed")
class AltimeterSettingTableTest {
    @ParameterizedTest(name = "{0} {1}: {2} {3} {4}")
    @CsvFileSource(
            resources = "/atmosphere/altimeter-setting-printed.csv",
            useHeadersInDisplayName = true)
    @DisplayName(
            "moves the pointer, means a pressure at the aerodrome, and is reported rounded down")
    void agrees(
            String meaning,
            String argument,
            String quantity,
            String published,
            String unit,
            String pureIcaoHpa,
            String source) {
        String[] given = argument.split("; ");
        switch (quantity) {
            case "pointer change ft" -> pointerChange(argument, published);
            case "station pressure hPa" ->
                    stationPressure(meaning, given, Double.parseDouble(published), pureIcaoHpa);
            case "field pressure" -> {
                double ours = fieldPressure(setting(meaning, given[0]), feet(given[1]));
                // the equation of that weather service agrees with standard air within 1 Pa
                assertThat(ours).is(closeTo(published, 1.0)).is(printedAs(pureIcaoHpa));
            }
            case "reported" -> reported(argument, published, unit);
            default -> throw new AssertionError(quantity);
        }
    }

    private static void pointerChange(String inches, String published) {
        double ours =
                Altimetry.readingChange(
                                AltimeterSetting.standard(),
                                AltimeterSetting.ofInchesOfMercury(Double.parseDouble(inches)))
                        .inFeet();
        if (inches.equals("29.92")) {
            // the table counts from 1013.25 hPa, which is 29.92126 inHg: it should print -1
            assertThat(ours).isNot(closeTo(published, 0.5)).is(closeTo("-1.161226", 5e-7));
        } else {
            assertThat(ours).is(closeTo(published, 0.5));
        }
    }

    private static void stationPressure(
            String meaning, String[] given, double publishedHpa, String pureIcaoHpa) {
        double ours =
                fieldPressure(setting(meaning, given[0]), Double.parseDouble(given[1])) / 100.0;
        assertThat(ours).is(printedAs(pureIcaoHpa));
        // the Smithsonian form takes 0.3 hPa off the pressure, and 288 K
        assertThat(publishedHpa - ours).isBetween(0.19, 0.275);
    }

    private static AltimeterSetting setting(String meaning, String value) {
        double number = Double.parseDouble(value);
        return meaning.startsWith("QNH hPa")
                ? AltimeterSetting.ofHectopascals(number)
                : AltimeterSetting.ofInchesOfMercury(number);
    }

    private static double feet(String value) {
        return UnitScale.FOOT.toSi(Double.parseDouble(value));
    }

    private static double fieldPressure(AltimeterSetting setting, double elevationM) {
        return Altimetry.qfe(setting.inPascals(), elevationM);
    }

    private static void reported(String argument, String published, String unit) {
        double exact = Double.parseDouble(argument);
        double inReport = Double.parseDouble(published.replace("Q", ""));
        if (unit.equals("hPa")) {
            AltimeterSetting setting = AltimeterSetting.ofHectopascals(exact);
            assertThat(setting.roundedDownToHectopascal().inHectopascals()).isEqualTo(inReport);
        } else {
            AltimeterSetting setting = AltimeterSetting.ofInchesOfMercury(exact);
            assertThat(setting.roundedDownToHundredthOfInch().inInchesOfMercury())
                    .isEqualTo(inReport);
        }
    }

    @Test
    @DisplayName("is compared in 22 rows: pointer, two kinds of pressure, reports")
    void rows() {
        List<String> rows = Table.rows("/atmosphere/altimeter-setting-printed.csv");
        assertThat(rows).hasSize(22);
        assertThat(rows).filteredOn(row -> row.contains("pointer change")).hasSize(8);
        assertThat(rows).filteredOn(row -> row.contains("station pressure")).hasSize(5);
        assertThat(rows).filteredOn(row -> row.contains("field pressure")).hasSize(2);
        assertThat(rows).filteredOn(row -> row.contains("reported")).hasSize(7);
    }
}
