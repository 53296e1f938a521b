package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.quantity.temperature.IsaDeviation;
import org.climbwright.quantity.temperature.IsaDeviationAtAltitude;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A warm or cold day")
class DeviationTest {
    private static final PressureAltitude FL300 = PressureAltitude.ofFlightLevel(300);

    private static Atmosphere atEachPressure(double kelvins) {
        return Atmosphere.withDeviationAtEachPressure(IsaDeviation.ofKelvins(kelvins));
    }

    private static Atmosphere atEachAltitude(double kelvins) {
        return Atmosphere.withDeviationAtEachAltitude(IsaDeviationAtAltitude.ofKelvins(kelvins));
    }

    // 248.71 K at 32,332 ft and 244.59 K at 32,082 ft are rows of the table, off-standard.csv;
    // geometric altitude is geopotential altitude times r / (r - H), 50 ft more there

    @Test
    @DisplayName("\"ISA+20 at FL300\" is 248.71 K at 32,332 ft, or 32,382 ft of true height")
    void twentyAtEachPressure() {
        AirState air = atEachPressure(20.0).at(FL300);

        assertThat(air.temperatureK()).isCloseTo(248.71, within(0.005));
        assertThat(air.geopotentialAltitude().orElseThrow().inFeet())
                .isCloseTo(32332.0, within(0.5));
        assertThat(air.geometricAltitude().orElseThrow().inFeet()).isCloseTo(32382.0, within(0.5));
        assertThat(air.isaDeviation().inKelvins()).isCloseTo(20.0, within(1e-12));
        // at its true altitude standard air is 4.6 K colder than at its pressure altitude
        assertThat(air.isaDeviationAtAltitude().orElseThrow().inKelvins())
                .isCloseTo(24.62, within(0.005));
    }

    @Test
    @DisplayName("of 20 K at every altitude is 244.59 K at 32,082 ft, or 32,132 ft, at FL300")
    void twentyAtEachAltitude() {
        AirState air = atEachAltitude(20.0).at(FL300);

        assertThat(air.temperatureK()).isCloseTo(244.59, within(0.005));
        assertThat(air.geopotentialAltitude().orElseThrow().inFeet())
                .isCloseTo(32082.0, within(0.5));
        assertThat(air.geometricAltitude().orElseThrow().inFeet()).isCloseTo(32132.0, within(0.5));
        assertThat(air.isaDeviationAtAltitude().orElseThrow().inKelvins())
                .isCloseTo(20.0, within(1e-12));
        assertThat(air.isaDeviation().inKelvins()).isCloseTo(15.87, within(0.005));
    }

    @Test
    @DisplayName("keeps its tropopause at 226.3 hPa, or at 11 km, as its meaning says")
    void tropopause() {
        double[] atPressure = atEachPressure(20.0).bendsPa();
        double[] atAltitude = atEachAltitude(20.0).bendsPa();

        assertThat(atPressure).isEqualTo(StandardAir.bendsPa());
        assertThat(atEachPressure(20.0).geopotentialAltitude(atPressure[0])).isGreaterThan(11800.0);
        assertThat(atAltitude).hasSameSizeAs(atPressure);
        assertThat(atAltitude[0]).isGreaterThan(atPressure[0]);
        assertThat(atEachAltitude(20.0).geopotentialAltitude(atAltitude[0]))
                .isCloseTo(11000.0, within(1e-9));
        // the bends are those of the temperature: on both sides it is the same, and isothermal
        // above
        assertThat(atEachAltitude(20.0).temperature(atAltitude[0]))
                .isCloseTo(236.65, within(1e-12));
        assertThat(atEachAltitude(20.0).temperature(0.9 * atAltitude[0]))
                .isCloseTo(236.65, within(1e-12));
    }

    @Test
    @DisplayName("shows no bends that somebody could move")
    void bendsAreCopies() {
        Atmosphere air = atEachAltitude(20.0);
        air.bendsPa()[0] = 0.0;
        assertThat(air.bendsPa()[0]).isGreaterThan(20000.0);
    }

    @Test
    @DisplayName("reaches as high as standard air does, by pressure or by altitude")
    void range() {
        assertThat(atEachPressure(75.0).range()).isEqualTo(StandardAir.pressureRange());
        Atmosphere cold = atEachAltitude(-90.0);
        assertThat(cold.pressureFromGeopotentialAltitude(80000.0))
                .isEqualTo(cold.range().lowest())
                .isLessThan(0.1 * StandardAir.pressureRange().lowest());
        assertThat(cold.pressureFromGeopotentialAltitude(-5000.0))
                .isEqualTo(cold.range().highest());
    }

    @Test
    @DisplayName("carried on above its top is itself, if it reaches as high as standard air")
    void nothingToCarryOn() {
        Atmosphere cold = atEachAltitude(-90.0);
        assertThat(cold.withDeviationCarriedOnAboveTop()).isSameAs(cold);
        Atmosphere warm = atEachPressure(20.0);
        assertThat(warm.withDeviationCarriedOnAboveTop()).isSameAs(warm);
        assertThat(Atmosphere.standard().withDeviationCarriedOnAboveTop())
                .isSameAs(Atmosphere.standard());
        // at 80 km this one has more pressure than standard air
        Atmosphere higher = atEachAltitude(20.0).withDeviationCarriedOnAboveTop();
        assertThat(higher.range().lowest()).isEqualTo(StandardAir.pressureRange().lowest());
        assertThat(higher.geopotentialAltitude(1.0)).isGreaterThan(80000.0);
    }

    @Test
    @DisplayName(
            "carried on bends at its own bends, at its top, and at those of standard air above")
    void bendsCarriedOn() {
        TemperatureProfile profile =
                new TemperatureProfile() {
                    @Override
                    public double temperature(double pressurePa) {
                        return 250.0;
                    }

                    @Override
                    public double[] bendsPa() {
                        return new double[] {70000.0};
                    }

                    @Override
                    public ModelRange range() {
                        return new ModelRange("static pressure", 3e4, 1e5, "Pa", "no data");
                    }
                };
        double[] bends =
                Atmosphere.of(
                                profile,
                                new AltitudeDatum(
                                        StaticPressure.ofPascals(5e4),
                                        GeopotentialAltitude.ofMetres(5500)))
                        .withDeviationCarriedOnAboveTop()
                        .bendsPa();
        assertThat(bends).startsWith(70000.0, 30000.0).endsWith(StandardAir.bendsPa());
        assertThat(bends).hasSize(8);
    }

    @Nested
    @DisplayName("refuses")
    class Refuses {
        @ParameterizedTest
        @ValueSource(doubles = {-90.001, 75.001, 1e6})
        @DisplayName("a deviation that no air of the earth has")
        void aDeviation(double kelvins) {
            String words =
                    "deviation from standard temperature must be from -90.0 to 75.0 K, but was "
                            + kelvins
                            + " K: the air of the earth is no farther from standard, and what"
                            + " follows from its temperature holds from 100 to 400 K";
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> atEachPressure(kelvins))
                    .withMessage(words);
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> atEachAltitude(kelvins))
                    .withMessage(words);
        }

        @Test
        @DisplayName("a datum outside the atmosphere")
        void aDatum() {
            AltitudeDatum thin =
                    new AltitudeDatum(
                            StaticPressure.ofPascals(0.5), GeopotentialAltitude.ofMetres(0));
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(
                            () ->
                                    Atmosphere.withDeviationAtEachPressure(
                                            IsaDeviation.ofKelvins(0), thin))
                    .withMessageStartingWith("static pressure must be from 0.88")
                    .withMessageContaining(", but was 0.5 Pa: ");
            AltitudeDatum high =
                    new AltitudeDatum(
                            StaticPressure.ofPascals(1.0), GeopotentialAltitude.ofMetres(80001));
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(
                            () ->
                                    Atmosphere.withDeviationAtEachAltitude(
                                            IsaDeviationAtAltitude.ofKelvins(0), high))
                    .withMessage(
                            "geopotential altitude must be from -5000.0 to 80000.0 m, but was"
                                    + " 80001.0 m: the layers of the standard atmosphere are"
                                    + " defined no further here");
        }

        @ParameterizedTest
        @ValueSource(doubles = {Double.NaN, 0.0, 0.001, 1e6})
        @DisplayName("a pressure outside, for every question")
        void aPressure(double pascal) {
            for (Atmosphere air :
                    new Atmosphere[] {
                        atEachPressure(10.0),
                        atEachAltitude(10.0),
                        atEachAltitude(10.0).withDeviationCarriedOnAboveTop()
                    }) {
                assertThat(air.covers(pascal)).isFalse();
                outside(() -> air.temperature(pascal));
                outside(() -> air.geopotentialAltitude(pascal));
                outside(() -> air.vapourPressure(pascal));
            }
        }

        @ParameterizedTest
        @ValueSource(doubles = {Double.NaN, -5500.0, 100000.0})
        @DisplayName("an altitude outside")
        void anAltitude(double metres) {
            outside(() -> atEachPressure(0.0).pressureFromGeopotentialAltitude(metres));
            outside(() -> atEachPressure(10.0).pressureFromGeopotentialAltitude(metres));
            outside(() -> atEachAltitude(10.0).pressureFromGeopotentialAltitude(metres));
        }

        private void outside(Runnable question) {
            assertThatExceptionOfType(OutsideModelException.class).isThrownBy(question::run);
        }
    }
}
