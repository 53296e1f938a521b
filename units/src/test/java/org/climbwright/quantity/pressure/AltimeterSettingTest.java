package org.climbwright.quantity.pressure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Equal is equal to the last bit: no tolerance. */
@DisplayName("An altimeter setting as a weather report gives it")
class AltimeterSettingTest {
    @ParameterizedTest(name = "{0} is {1}")
    @CsvFileSource(
            resources = "/quantity/altimeter-settings-reported.csv",
            useHeadersInDisplayName = true)
    @DisplayName("is rounded down as published:")
    void isRoundedDownAsPublished(String exact, String reported, String source) {
        AltimeterSetting setting = AltimeterSetting.parse(exact);
        double number = Double.parseDouble(reported.replace("Q", ""));

        if (exact.endsWith(" hPa")) {
            assertThat(setting.roundedDownToHectopascal())
                    .isEqualTo(AltimeterSetting.ofHectopascals(number));
        } else {
            assertThat(setting.roundedDownToHundredthOfInch())
                    .isEqualTo(AltimeterSetting.ofInchesOfMercury(number));
        }
    }

    @ParameterizedTest(name = "{1} hPa at {0} ft is {2} hPa and {4} inHg")
    @CsvFileSource(resources = "/quantity/qnh-computed.csv", useHeadersInDisplayName = true)
    @DisplayName("is rounded down as computed in 50 digits:")
    void isRoundedDownAsComputed(
            double elevationFt,
            double qnhHpa,
            double reportedHpa,
            double qnhInhg,
            double reportedInhg,
            String source) {
        AltimeterSetting setting = AltimeterSetting.ofHectopascals(qnhHpa);
        AltimeterSetting hectopascals = AltimeterSetting.ofHectopascals(reportedHpa);
        AltimeterSetting hundredths = AltimeterSetting.ofInchesOfMercury(reportedInhg);

        assertThat(setting.roundedDownToHectopascal()).isEqualTo(hectopascals);
        assertThat(setting.roundedDownToHundredthOfInch()).isEqualTo(hundredths);
        // The same setting in inches is printed to ten digits, which is 1e-8 inHg, 3e-7 hPa.
        AltimeterSetting inInches = AltimeterSetting.ofInchesOfMercury(qnhInhg);
        assertThat(inInches.roundedDownToHectopascal()).isEqualTo(hectopascals);
        assertThat(inInches.roundedDownToHundredthOfInch()).isEqualTo(hundredths);
    }

    @Test
    @DisplayName("is compared with every row there is: 7 published and 66 computed")
    void countsTheRows() throws IOException {
        assertThat(rows("/quantity/altimeter-settings-reported.csv")).isEqualTo(7);
        assertThat(rows("/quantity/qnh-computed.csv")).isEqualTo(66);
    }

    private long rows(String table) throws IOException {
        try (var lines = getClass().getResourceAsStream(table)) {
            return new String(lines.readAllBytes(), StandardCharsets.UTF_8)
                            .lines()
                            .filter(line -> !line.startsWith("#"))
                            .count()
                    - 1;
        }
    }

    @ParameterizedTest(name = "{0} hPa is {1} hPa")
    @CsvSource({
        "999.9999999999, 1000", // 1000 that arithmetic has left short
        "999.9999991, 1000",
        "999.9999989, 999",
        "999.99, 999",
        "1000.0000000001, 1000",
        "1000, 1000",
        "1013.25, 1013",
        "850, 850",
        "850.9999, 850",
        "1100, 1100"
    })
    @DisplayName("is the whole hectopascal that it is less than 1e-6 hPa short of:")
    void hectopascalsShortOfWhole(double exact, double whole) {
        assertThat(AltimeterSetting.ofHectopascals(exact).roundedDownToHectopascal())
                .isEqualTo(AltimeterSetting.ofHectopascals(whole));
    }

    @ParameterizedTest(name = "{0} inHg is {1} inHg")
    @CsvSource({
        "29.9199999999, 29.92", // 1e-10 inHg is 3e-9 hPa
        "29.91999998, 29.92", // 2e-8 inHg is 7e-7 hPa
        "29.91999996, 29.91", // 4e-8 inHg is 1.4e-6 hPa
        "29.929, 29.92",
        "29.92, 29.92",
        "32.48, 32.48",
        "25.11, 25.11"
    })
    @DisplayName("is the whole hundredth of an inch that it is less than 1e-6 hPa short of:")
    void hundredthsShortOfWhole(double exact, double whole) {
        assertThat(AltimeterSetting.ofInchesOfMercury(exact).roundedDownToHundredthOfInch())
                .isEqualTo(AltimeterSetting.ofInchesOfMercury(whole));
    }

    @Test
    @DisplayName("is the standard setting as 1013 hPa or 29.92 inHg")
    void standard() {
        assertThat(AltimeterSetting.standard().roundedDownToHectopascal())
                .isEqualTo(AltimeterSetting.ofHectopascals(1013.0));
        assertThat(AltimeterSetting.standard().roundedDownToHundredthOfInch())
                .isEqualTo(AltimeterSetting.ofInchesOfMercury(29.92));
    }

    @Test
    @DisplayName("stays itself to the last bit where it is whole: every hectopascal and hundredth")
    void wholeStaysItself() {
        for (int hectopascals = 850; hectopascals <= 1100; hectopascals++) {
            AltimeterSetting whole = AltimeterSetting.ofHectopascals(hectopascals);
            assertThat(whole.roundedDownToHectopascal()).isEqualTo(whole);
        }
        for (int hundredths = 2511; hundredths <= 3248; hundredths++) {
            AltimeterSetting whole = AltimeterSetting.ofInchesOfMercury(hundredths / 100.0);
            assertThat(whole.roundedDownToHundredthOfInch()).isEqualTo(whole);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {850.0, 850.3})
    @DisplayName("is refused where the hundredth below is no setting any more: 25.10 inHg")
    void noHundredthBelow(double hectopascals) {
        AltimeterSetting lowest = AltimeterSetting.ofHectopascals(hectopascals);

        assertThatIllegalArgumentException()
                .isThrownBy(lowest::roundedDownToHundredthOfInch)
                .withMessageEndingWith("but was 25.1 inHg");
    }
}
