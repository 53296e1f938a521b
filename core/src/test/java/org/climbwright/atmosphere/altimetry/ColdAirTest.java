package org.climbwright.atmosphere.altimetry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.altitude.Height;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.temperature.IsaDeviation;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Cold air")
class ColdAirTest {
    private static final Height FIVE_THOUSAND = Height.ofFeet(5000);
    private static final StaticAirTemperature MINUS_50 = StaticAirTemperature.ofCelsius(-50);
    private static final GeopotentialAltitude SEA_LEVEL = GeopotentialAltitude.ofMetres(0);
    private static final AltimeterSetting STANDARD = AltimeterSetting.standard();

    // 1500, 1490, 1500 and 1148 ft stand in the table, cold-air-table.csv

    @Test
    @DisplayName("of -50 °C asks for 1,500 ft more than 5,000 ft published, by the table")
    void byTable() {
        ColdAirCorrection correction = ColdAir.tableCorrection(FIVE_THOUSAND, MINUS_50);

        assertThat(correction.difference().inFeet()).isEqualTo(1500.0);
        assertThat(correction.applies()).isTrue();
        assertThat(correction.inWords())
                .isEqualTo(
                        "Add 1,500 ft to the published height of 5,000 ft, by the formula of the"
                                + " published table, for an aerodrome at sea level, rounded up to"
                                + " 10 ft: without it the aeroplane would be lower than published."
                                + " The operator's procedures decide whether and to what it is"
                                + " applied.");
    }

    @Test
    @DisplayName("of -50 °C asks for 1,490 ft by the formula, which is told rounded up to the foot")
    void byFormula() {
        ColdAirCorrection correction =
                ColdAir.aerodromeCorrection(FIVE_THOUSAND, MINUS_50, SEA_LEVEL);

        assertThat(correction.difference().inFeet()).isCloseTo(1490.0, within(0.5));
        assertThat(correction.inWords())
                .startsWith(
                        "Add 1,490 ft to the published height of 5,000 ft, by the formula of ICAO"
                                + " Doc 8168 with the elevation of the aerodrome: ");
    }

    @Test
    @DisplayName("of -50 °C makes the altimeter read 1,148 ft too high at 5,000 ft indicated")
    void error() {
        AltimeterError error = ColdAir.errorAtIndicatedHeight(FIVE_THOUSAND, MINUS_50, SEA_LEVEL);

        assertThat(error.readsTooHighBy().inFeet()).isCloseTo(1148.0, within(0.5));
        assertThat(error.isLowerThanShown()).isTrue();
        assertThat(error.inWords())
                .isEqualTo(
                        "The altimeter reads 1,148 ft too high: the aeroplane is 1,148 ft lower"
                                + " than it shows, because the air below is colder than standard"
                                + " (to a published height of as much, more must be added).");
    }

    @Test
    @DisplayName("when it is warm instead takes nothing off")
    void warm() {
        StaticAirTemperature hot = StaticAirTemperature.ofCelsius(35);
        ColdAirCorrection correction = ColdAir.exactCorrection(FIVE_THOUSAND, hot, SEA_LEVEL);
        assertThat(correction.difference().inFeet()).isNegative();
        assertThat(correction.applies()).isFalse();
        assertThat(correction.inWords())
                .isEqualTo(
                        "Add nothing to the published height of 5,000 ft, by a constant deviation"
                                + " from standard at every pressure: the altimeter shows no more"
                                + " than the height that there is, and nothing is taken off.");

        AltimeterError error = ColdAir.errorAtIndicatedHeight(FIVE_THOUSAND, hot, SEA_LEVEL);
        assertThat(error.isLowerThanShown()).isFalse();
        assertThat(error.inWords())
                .startsWith("The altimeter reads ")
                .contains(" ft too low: the aeroplane is ")
                .endsWith(
                        " ft higher than it shows, because the air below is warmer than standard.");
    }

    @ParameterizedTest
    @ValueSource(doubles = {200, 500, 1500, 3000, 10000})
    @DisplayName("when it is standard instead asks for nothing, rounding or not")
    void standardAir(double feet) {
        StaticAirTemperature fifteen = StaticAirTemperature.ofCelsius(15);
        Height height = Height.ofFeet(feet);
        ColdAirCorrection correction = ColdAir.exactCorrection(height, fifteen, SEA_LEVEL);
        assertThat(correction.applies()).isFalse();
        assertThat(correction.inWords()).startsWith("Add nothing to the published height of ");
        assertThat(ColdAir.errorAtIndicatedHeight(height, fifteen, SEA_LEVEL).inWords())
                .isEqualTo("The altimeter reads right to the foot.");
    }

    @Test
    @DisplayName("needs no correction at the aerodrome itself")
    void atTheAerodrome() {
        assertThat(ColdAir.exactCorrection(0.0, 223.15, 500.0)).isZero();
        assertThat(ColdAir.aerodromeCorrection(0.0, 223.15, 500.0)).isZero();
        assertThat(ColdAir.errorAtIndicatedHeight(0.0, 223.15, 500.0)).isZero();
    }

    @Test
    @DisplayName("answers plain doubles and values alike, to the last bit")
    void doorsAgree() {
        GeopotentialAltitude elevation = GeopotentialAltitude.ofMetres(977.2);
        double h = FIVE_THOUSAND.inMetres();
        double t = MINUS_50.inKelvins();
        assertThat(metres(ColdAir.tableCorrection(FIVE_THOUSAND, MINUS_50)))
                .isEqualTo(ColdAir.tableCorrection(h, t));
        assertThat(metres(ColdAir.aerodromeCorrection(FIVE_THOUSAND, MINUS_50, elevation)))
                .isEqualTo(ColdAir.aerodromeCorrection(h, t, 977.2));
        assertThat(metres(ColdAir.exactCorrection(FIVE_THOUSAND, MINUS_50, elevation)))
                .isEqualTo(ColdAir.exactCorrection(h, t, 977.2));
        assertThat(
                        ColdAir.errorAtIndicatedHeight(FIVE_THOUSAND, MINUS_50, elevation)
                                .readsTooHighBy()
                                .inMetres())
                .isEqualTo(ColdAir.errorAtIndicatedHeight(h, t, 977.2));
    }

    private static double metres(ColdAirCorrection correction) {
        return correction.difference().inMetres();
    }

    @ParameterizedTest
    @ValueSource(doubles = {-65, -30, -12, 0, 20})
    @DisplayName(
            "given as an atmosphere has the same correction and error as given by its deviation")
    void inAnAtmosphere(double deviation) {
        Atmosphere air = Atmosphere.withDeviationAtEachPressure(IsaDeviation.ofKelvins(deviation));
        StaticAirTemperature atSeaLevel = StaticAirTemperature.ofKelvins(288.15 + deviation);
        for (double feet : new double[] {200, 1500, 5000, 10000, 30000}) {
            GeopotentialAltitude published = GeopotentialAltitude.ofFeet(feet);
            ColdAirCorrection correction = ColdAir.correctionIn(air, published, STANDARD);
            assertThat(metres(correction))
                    .isCloseTo(
                            metres(
                                    ColdAir.exactCorrection(
                                            Height.ofFeet(feet), atSeaLevel, SEA_LEVEL)),
                            within(2e-8));
            assertThat(correction.basis()).isEqualTo("the air given on a QNH of 1013.25 hPa");
            AltimeterError error = ColdAir.errorIn(air, AltitudeOnQnh.ofFeet(feet), STANDARD);
            AltimeterError byDeviation =
                    ColdAir.errorAtIndicatedHeight(Height.ofFeet(feet), atSeaLevel, SEA_LEVEL);
            assertThat(error.readsTooHighBy().inMetres())
                    .isCloseTo(byDeviation.readsTooHighBy().inMetres(), within(2e-9));
            assertThat(error.reason())
                    .isEqualTo(
                            deviation == 0
                                    ? "the air given is there as standard air on this QNH is"
                                    : "the air given differs from standard air on this QNH");
        }
    }

    @Test
    @DisplayName("given as an atmosphere counts from the QNH, right or wrong")
    void onAnotherQnh() {
        Atmosphere air = Atmosphere.standard();
        AltimeterSetting low = AltimeterSetting.ofHectopascals(996);
        // standard air has 1013.25 hPa at sea level: on 996 hPa the altimeter reads too low by it
        AltitudeChange change = Altimetry.readingChange(STANDARD, low);
        assertThat(
                        ColdAir.errorIn(air, AltitudeOnQnh.ofFeet(5000), low)
                                .readsTooHighBy()
                                .inMetres())
                .isCloseTo(change.inMetres(), within(1e-9));
        assertThat(metres(ColdAir.correctionIn(air, GeopotentialAltitude.ofFeet(5000), low)))
                .isCloseTo(change.inMetres(), within(1e-9));
        // and the temperature is not blamed
        AltimeterSetting high = AltimeterSetting.ofHectopascals(1030);
        assertThat(ColdAir.errorIn(air, AltitudeOnQnh.ofFeet(5000), high).inWords())
                .endsWith(" because the air given differs from standard air on this QNH.");
        assertThat(ColdAir.correctionIn(air, GeopotentialAltitude.ofFeet(5000), high).inWords())
                .startsWith("Add 454 ft to the published altitude of 5,000 ft, by the air given on")
                .doesNotContain("cold");
    }

    @Nested
    @DisplayName("refuses")
    class Refuses {
        @ParameterizedTest
        @ValueSource(doubles = {Double.NaN, -0.001, 10000.1, Double.POSITIVE_INFINITY})
        @DisplayName("a height for which the figures are not meant")
        void height(double metres) {
            String words =
                    "height above the aerodrome must be from 0.0 to 10000.0 m, but was "
                            + metres
                            + " m: corrections are for heights near an aerodrome";
            refused(words, () -> ColdAir.aerodromeCorrection(metres, 250.0, 0.0));
            refused(words, () -> ColdAir.exactCorrection(metres, 250.0, 0.0));
            refused(words, () -> ColdAir.errorAtIndicatedHeight(metres, 250.0, 0.0));
        }

        @ParameterizedTest
        @ValueSource(doubles = {Double.NaN, -500.1, 6000.1})
        @DisplayName("an elevation that no aerodrome has")
        void elevation(double metres) {
            String words =
                    "aerodrome elevation must be from -500.0 to 6000.0 m, but was "
                            + metres
                            + " m: no aerodrome is outside";
            refused(words, () -> ColdAir.aerodromeCorrection(1000.0, 250.0, metres));
            refused(words, () -> ColdAir.exactCorrection(1000.0, 250.0, metres));
            refused(words, () -> ColdAir.errorAtIndicatedHeight(1000.0, 250.0, metres));
        }

        @Test
        @DisplayName("a temperature that no aerodrome has, from -90 °C to 60 °C and not farther")
        void temperature() {
            for (double celsius : new double[] {-90.0, 60.0}) {
                double kelvin = UnitScale.CELSIUS.toSi(celsius);
                assertThat(ColdAir.aerodromeCorrection(1000.0, kelvin, 0.0)).isFinite();
                assertThat(ColdAir.exactCorrection(1000.0, kelvin, 0.0)).isFinite();
                assertThat(ColdAir.errorAtIndicatedHeight(1000.0, kelvin, 0.0)).isFinite();
            }
            for (double kelvin : new double[] {Double.NaN, 183.14, 333.16}) {
                assertThatExceptionOfType(OutsideModelException.class)
                        .isThrownBy(() -> ColdAir.exactCorrection(1000.0, kelvin, 0.0))
                        .withMessageStartingWith("aerodrome temperature must be from 183.1")
                        .withMessageEndingWith(
                                " to 333.15 K, but was " + kelvin + " K: no aerodrome is outside");
            }
        }

        @Test
        @DisplayName("what the table does not print, and takes its corners in degrees and feet")
        void table() {
            assertThat(ColdAir.tableCorrection(Height.ofFeet(200), MINUS_50).applies()).isTrue();
            StaticAirTemperature ten = StaticAirTemperature.ofCelsius(10);
            assertThat(ColdAir.tableCorrection(FIVE_THOUSAND, ten).applies()).isTrue();

            refused(
                    "height above the aerodrome must be from 60.96 to 1524.0 m, but was 60.9 m:"
                            + " the table is printed from 200 to 5000 ft",
                    () -> ColdAir.tableCorrection(60.9, 250.0));
            refused(
                    "height above the aerodrome must be from 60.96 to 1524.0 m, but was 1525.0 m:"
                            + " the table is printed from 200 to 5000 ft",
                    () -> ColdAir.tableCorrection(1525.0, 250.0));
            for (double kelvin : new double[] {Double.NaN, 223.1, 283.2}) {
                assertThatExceptionOfType(OutsideModelException.class)
                        .isThrownBy(() -> ColdAir.tableCorrection(1000.0, kelvin))
                        .withMessageStartingWith("aerodrome temperature must be from 223.1")
                        .withMessageEndingWith(
                                " to 283.15 K, but was "
                                        + kelvin
                                        + " K: the table is printed from -50 to 10 °C");
            }
        }

        @Test
        @DisplayName("air whose altitudes are not known, or that does not reach there")
        void unknownAltitudes() {
            Atmosphere unknown =
                    new Atmosphere() {
                        @Override
                        public ModelRange range() {
                            return new ModelRange("static pressure", 1e4, 1.1e5, "Pa", "no data");
                        }

                        @Override
                        public double temperature(double pressurePa) {
                            return 250.0;
                        }

                        @Override
                        public double geopotentialAltitude(double pressurePa) {
                            return Double.NaN;
                        }

                        @Override
                        public double vapourPressure(double pressurePa) {
                            return Double.NaN;
                        }
                    };
            assertThatIllegalStateException()
                    .isThrownBy(
                            () ->
                                    ColdAir.correctionIn(
                                            unknown, GeopotentialAltitude.ofFeet(1000), STANDARD))
                    .withMessage("the altitudes of this air are not known");
            assertThatIllegalStateException()
                    .isThrownBy(
                            () -> ColdAir.errorIn(unknown, AltitudeOnQnh.ofFeet(1000), STANDARD))
                    .withMessage("the altitudes of this air are not known");
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(
                            () ->
                                    ColdAir.errorIn(
                                            Atmosphere.standard(),
                                            AltitudeOnQnh.ofFeet(300000),
                                            STANDARD));
        }

        private void refused(String words, Runnable question) {
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(question::run)
                    .withMessage(words);
        }
    }
}
