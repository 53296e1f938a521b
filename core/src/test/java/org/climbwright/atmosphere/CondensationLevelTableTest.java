package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.closeTo;
import static org.climbwright.testing.Agreement.printedAs;
import static org.climbwright.testing.Agreement.relativelyCloseTo;

import org.climbwright.testing.Table;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("Moist air and its condensation level, against a table in 50-digit arithmetic")
class CondensationLevelTableTest {
    /** Gas constant of dry air over that of water vapour; the table rounds it to 0.622. */
    private static final double MOLAR_MASS_RATIO = 287.05287 / 461.523;

    @ParameterizedTest(name = "{0}, {1}, {2}")
    @CsvFileSource(resources = "/atmosphere/condensation-level.csv", useHeadersInDisplayName = true)
    @DisplayName("has the humidity of the table")
    void humidity(
            double hectopascal,
            double celsius,
            double dewPointCelsius,
            String vapour,
            String humidityPercent,
            String gramsPerKilogram,
            String virtualKelvin) {
        double t = UnitScale.CELSIUS.toSi(celsius);
        double dewPoint = UnitScale.CELSIUS.toSi(dewPointCelsius);
        double p = 100.0 * hectopascal;
        double e = OtherSaturation.bolton(dewPoint);
        assertThat(e / 100.0).is(printedAs(vapour, 12));
        assertThat(100.0 * e / OtherSaturation.bolton(t)).is(printedAs(humidityPercent, 10));
        // Bolton states 0.1 %, Murphy and Koop 0.05 %; half of it goes out in the ratio
        double ours = MoistAir.relativeHumidity(MoistAir.saturationVapourPressure(dewPoint), t);
        assertThat(100.0 * ours).is(relativelyCloseTo(humidityPercent, 1.5e-3));

        double ratio = MoistAir.mixingRatio(e, p);
        assertThat(1000.0 * ratio * 0.622 / MOLAR_MASS_RATIO).is(printedAs(gramsPerKilogram, 12));
        assertThat(1000.0 * ratio).is(relativelyCloseTo(gramsPerKilogram, 5.1e-5));

        // Less vapour by the ratio of the two makes ours the table's, and shows the formula; the
        // rest is the rounding of 0.622, 2e-6 at most.
        double asRounded = e * (1.0 - 0.622) / (1.0 - MOLAR_MASS_RATIO);
        assertThat(MoistAir.virtualTemperature(t, asRounded, p)).is(printedAs(virtualKelvin, 12));
        assertThat(MoistAir.virtualTemperature(t, e, p)).is(relativelyCloseTo(virtualKelvin, 2e-6));
    }

    @ParameterizedTest(name = "{0}, {1}, {2}: {10}, {11}, {12}")
    @CsvFileSource(resources = "/atmosphere/condensation-level.csv", useHeadersInDisplayName = true)
    @DisplayName("has the condensation level of the table, and ours is near it")
    void level(
            double hectopascal,
            double celsius,
            double dewPointCelsius,
            String vapour,
            String humidityPercent,
            String gramsPerKilogram,
            String virtualKelvin,
            String equation15,
            String equation21,
            String equation22,
            String levelKelvin,
            String levelHectopascal,
            String heightRomps,
            String rule125,
            String rule400) {
        double t = UnitScale.CELSIUS.toSi(celsius);
        double dewPoint = UnitScale.CELSIUS.toSi(dewPointCelsius);
        double p = 100.0 * hectopascal;
        assertThat(OtherSaturation.boltonLevel(t, dewPoint)).is(printedAs(levelKelvin, 12));
        assertThat(OtherSaturation.boltonLevelPressure(t, dewPoint, p) / 100.0)
                .is(printedAs(levelHectopascal, 12));
        double rompsVapour = OtherSaturation.Romps.overWater(dewPoint);
        assertThat(OtherSaturation.Romps.height(t, rompsVapour, p, false))
                .is(printedAs(heightRomps, 10));
        assertThat(UnitScale.FOOT.fromSi(LiftedAir.heightByRule(t, dewPoint)))
                .is(closeTo(rule400, 1e-9));

        double e = MoistAir.saturationVapourPressure(dewPoint);
        assertThat(LiftedAir.condensationTemperature(t, e, p)).is(closeTo(levelKelvin, 0.02));
        assertThat(LiftedAir.condensationPressure(t, e, p) / 100.0)
                .is(
                        relativelyCloseTo(
                                levelHectopascal, OtherSaturation.pressureBound(t, dewPoint, p)));
        assertThat(LiftedAir.heightToCondensation(t, e, p))
                .is(relativelyCloseTo(heightRomps, 3e-3));
    }

    @Test
    @DisplayName("is compared in 8 rows")
    void rows() {
        assertThat(Table.rows("/atmosphere/condensation-level.csv")).hasSize(8);
    }
}
