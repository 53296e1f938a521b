package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.closeTo;
import static org.climbwright.testing.Agreement.printedAs;
import static org.climbwright.testing.Agreement.relativelyCloseTo;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.regex.Pattern;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.quantity.temperature.DewPoint;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.testing.Table;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("Moist air, against printed values of other formulas and of Romps 2017")
class HumidityPrintedTableTest {
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?");

    @ParameterizedTest(name = "{0}, {1}: {2} {3}")
    @CsvFileSource(resources = "/atmosphere/humidity-printed.csv", useHeadersInDisplayName = true)
    @DisplayName("agrees with each printed value as well as the two formulas promise")
    void agrees(String quantity, String text, String published, String unit) {
        double[] given =
                NUMBER.matcher(text)
                        .results()
                        .mapToDouble(found -> Double.parseDouble(found.group()))
                        .toArray();
        switch (quantity) {
            case "e_sat water, Bolton" -> saturationByBolton(given[0], text, published);
            case "e_sat ice, IAPWS R14-08" ->
                    // the formula says of itself 4e-5 at -5 °C and 6e-4 at -80 °C
                    assertThat(MoistAir.saturationVapourPressureOverIce(given[0]))
                            .is(relativelyCloseTo(published, 6e-4));
            case "e_sat water, IAPWS-95" ->
                    // the formula says of itself 1.2e-5 at 275 K
                    assertThat(MoistAir.saturationVapourPressure(given[0]))
                            .is(relativelyCloseTo(published, 1.25e-5));
            case "relative humidity" -> relativeHumidity(given, text, published);
            case "LCL temperature", "LCL pressure" -> condensationLevel(quantity, given, published);
            case "LCL height", "LDL height" -> heightByRomps(quantity, given, text, published);
            case "cloud base, spread rule" -> spreadRule(given, published);
            default -> throw new AssertionError(quantity);
        }
    }

    private static void saturationByBolton(double degrees, String text, String published) {
        double kelvin = scale(text).toSi(degrees);
        // one source computed in single precision
        double digits = published.equals("17.04077") ? 5e-5 : 0.0;
        assertThat(OtherSaturation.bolton(kelvin) / 100.0)
                .is(digits > 0 ? relativelyCloseTo(published, digits) : printedAs(published));
        // Bolton states 0.1 %, Murphy and Koop 0.05 %; half a unit of the printed digits besides
        double ours = MoistAir.saturationVapourPressure(kelvin) / 100.0;
        double halfUnit = 0.5 * new BigDecimal(published).ulp().doubleValue();
        assertThat(ours).is(closeTo(published, 1.5e-3 * ours + halfUnit));
    }

    private static void relativeHumidity(double[] given, String text, String published) {
        UnitScale scale = scale(text);
        double t = scale.toSi(given[0]);
        double dewPoint = scale.toSi(given[1]);
        assertThat(100.0 * OtherSaturation.bolton(dewPoint) / OtherSaturation.bolton(t))
                .is(printedAs(published));
        AirState ours =
                AirState.of(StaticPressure.ofHectopascals(1000), StaticAirTemperature.ofKelvins(t))
                        .withDewPoint(DewPoint.ofKelvins(dewPoint));
        // half of what is between formulas goes out in the ratio: Bolton's 0.1 % is left
        assertThat(ours.relativeHumidity().orElseThrow().inPercent())
                .is(relativelyCloseTo(published, 1e-3));
    }

    private static UnitScale scale(String text) {
        return text.contains("degF") ? UnitScale.FAHRENHEIT : UnitScale.CELSIUS;
    }

    private static void condensationLevel(String quantity, double[] given, String published) {
        double p = 100.0 * given[0];
        double t = given[1];
        double dewPoint = given[2];
        LiftingCondensationLevel ours =
                LiftingCondensationLevel.of(
                        AirState.of(StaticPressure.ofPascals(p), StaticAirTemperature.ofKelvins(t))
                                .withDewPoint(DewPoint.ofKelvins(dewPoint)));
        if (quantity.endsWith("temperature")) {
            double celsius = OtherSaturation.boltonLevel(t, dewPoint) - 273.15;
            // 17.676 was found by iteration and is 0.75 of its last digit off
            assertThat(celsius)
                    .is(
                            published.length() > 6
                                    ? closeTo(published, 2e-11)
                                    : closeTo(published, 1e-3));
            assertThat(ours.temperature().inCelsius()).is(closeTo(published, 0.02));
        } else {
            double hectopascal = OtherSaturation.boltonLevelPressure(t, dewPoint, p) / 100.0;
            assertThat(hectopascal)
                    .is(
                            published.length() > 7
                                    ? relativelyCloseTo(published, 1e-12)
                                    : printedAs(published));
            assertThat(ours.pressure().inHectopascals())
                    .is(
                            relativelyCloseTo(
                                    published, OtherSaturation.pressureBound(t, dewPoint, p)));
        }
    }

    private static void heightByRomps(
            String quantity, double[] given, String text, String published) {
        double t = given[1];
        DoubleUnaryOperator saturation =
                text.contains("over ice")
                        ? OtherSaturation.Romps::overIce
                        : OtherSaturation.Romps::overWater;
        double vapour = given[2] * saturation.applyAsDouble(t);
        boolean deposition = quantity.startsWith("LDL");
        assertThat(OtherSaturation.Romps.height(t, vapour, 1e5, deposition))
                .is(relativelyCloseTo(published, 1e-10));
        if (!deposition && t > 273.0) {
            // his gravity is 9.81, and the vapour pressures are 0.2 % apart
            assertThat(LiftedAir.heightToCondensation(t, vapour, 1e5))
                    .is(relativelyCloseTo(published, 3e-3));
        }
    }

    private static void spreadRule(double[] given, String published) {
        // that source divides by 2.4 °C for 1,000 ft, the rule here by 2.5 °C
        double metres =
                LiftedAir.heightByRule(
                        UnitScale.CELSIUS.toSi(given[0]), UnitScale.CELSIUS.toSi(given[1]));
        assertThat(UnitScale.FOOT.fromSi(metres) * 2.5 / given[2]).is(printedAs(published));
    }

    @Test
    @DisplayName("is compared in 20 rows")
    void rows() {
        List<String> rows = Table.rows("/atmosphere/humidity-printed.csv");
        assertThat(rows).hasSize(20);
        assertThat(rows).filteredOn(row -> row.startsWith("\"e_sat")).hasSize(8);
        assertThat(rows).filteredOn(row -> row.contains("Romps")).hasSize(5);
        assertThat(rows).filteredOn(row -> row.startsWith("LCL")).hasSize(6);
    }
}
