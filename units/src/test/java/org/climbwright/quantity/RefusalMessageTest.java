package org.climbwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Map;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.GeometricAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.humidity.MixingRatio;
import org.climbwright.quantity.humidity.RelativeHumidity;
import org.climbwright.quantity.path.AirGradient;
import org.climbwright.quantity.path.ClimbAngle;
import org.climbwright.quantity.path.FuelFlow;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.path.GroundGradient;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.path.TrueDirection;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.quantity.pressure.VapourPressure;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.speed.TrueAirspeed;
import org.climbwright.quantity.temperature.FrostPoint;
import org.climbwright.quantity.temperature.IsaDeviation;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.quantity.temperature.TemperatureDifference;
import org.climbwright.unit.AviationUnits;
import org.climbwright.unit.UnitTextException;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

@DisplayName("A mistake of the cockpit is refused and told in one sentence:")
class RefusalMessageTest {
    private static String refusal(ThrowingCallable mistake) {
        return assertThatIllegalArgumentException().isThrownBy(mistake).actual().getMessage();
    }

    private static void assertRefused(ThrowingCallable mistake, String message) {
        assertThatIllegalArgumentException().isThrownBy(mistake).withMessage(message);
    }

    @Nested
    @DisplayName("a value that cannot be, such as")
    class CannotBe {
        @Test
        @DisplayName("an altimeter set to 29.92 hPa")
        void inchesTakenForHectopascals() {
            assertRefused(
                    () -> AltimeterSetting.ofHectopascals(29.92),
                    "altimeter setting must be from 850.0 to 1100.0 hPa, but was 29.92 hPa:"
                            + " as inHg it would be 1013.2074811900274 hPa, check the unit");
        }

        @Test
        @DisplayName("an altimeter set to 996 inHg")
        void hectopascalsTakenForInches() {
            // 85000 / 3386.388640341 and 110000 / 3386.388640341, each to the last digit.
            assertRefused(
                    () -> AltimeterSetting.ofInchesOfMercury(996.0),
                    "altimeter setting must be from 25.100485805858575 to 32.4829816311111 inHg,"
                            + " but was 996.0 inHg:"
                            + " as hPa it would be 29.41186336780605 inHg, check the unit");
        }

        @Test
        @DisplayName("a setting read or handed over as 29.92 hPa or 996 inHg: the same words")
        void aSettingRead() {
            String inches = refusal(() -> AltimeterSetting.ofHectopascals(29.92));
            String hectopascals = refusal(() -> AltimeterSetting.ofInchesOfMercury(996.0));

            assertRefused(() -> AltimeterSetting.parse("29.92 hPa"), inches);
            assertRefused(() -> AltimeterSetting.of(29.92, AviationUnits.HECTOPASCAL), inches);
            assertRefused(
                    () ->
                            AltimeterSetting.of(
                                    Quantities.getQuantity(29.92, AviationUnits.HECTOPASCAL)),
                    inches);
            assertRefused(() -> AltimeterSetting.parse("996 inHg"), hectopascals);
            assertRefused(
                    () -> AltimeterSetting.of(996.0, AviationUnits.INCH_OF_MERCURY), hectopascals);
        }

        @Test
        @DisplayName("a setting in kilopascals or pascals taken for hectopascals")
        void aSettingInAnyUnit() {
            assertRefused(
                    () -> AltimeterSetting.ofHectopascals(101.325),
                    "altimeter setting must be from 850.0 to 1100.0 hPa, but was 101.325 hPa:"
                            + " as kPa it would be 1013.25 hPa, check the unit");
            assertRefused(
                    () -> AltimeterSetting.parse("1013.25 Pa"),
                    "altimeter setting must be from 85000.0 to 110000.0 Pa, but was 1013.25 Pa:"
                            + " as hPa it would be 101325.0 Pa, check the unit");
        }

        @Test
        @DisplayName("a setting that is none in any unit, without advice on units")
        void aSettingInNoUnit() {
            assertRefused(
                    () -> AltimeterSetting.ofHectopascals(500.0),
                    "altimeter setting must be from 850.0 to 1100.0 hPa, but was 500.0 hPa");
            assertRefused(
                    () -> AltimeterSetting.ofHectopascals(25.1),
                    "altimeter setting must be from 850.0 to 1100.0 hPa, but was 25.1 hPa");
        }

        @Test
        @DisplayName("an airspeed below zero")
        void aNegativeAirspeed() {
            assertRefused(
                    () -> CalibratedAirspeed.ofKnots(-1.0),
                    "calibrated airspeed must be a finite number, at least 0.0 kn,"
                            + " but was -1.0 kn");
            assertRefused(
                    () -> TrueAirspeed.parse("-0.5 km/h"),
                    "true airspeed must be a finite number, at least 0.0 km/h, but was -0.5 km/h");
            assertRefused(
                    () -> Mach.of(-0.78),
                    "Mach number must be a finite number, at least 0.0, but was -0.78");
            assertRefused(
                    () -> Mach.parse("M-0.78"),
                    "Mach number must be a finite number, at least 0.0, but was -0.78");
        }

        @Test
        @DisplayName("a temperature below absolute zero")
        void colderThanAbsoluteZero() {
            assertRefused(
                    () -> StaticAirTemperature.ofCelsius(-300.0),
                    "static air temperature must be a finite number, at least -273.15 °C,"
                            + " but was -300.0 °C");
            assertRefused(
                    () -> StaticAirTemperature.ofKelvins(-0.01),
                    "static air temperature must be a finite number, at least 0.0 K,"
                            + " but was -0.01 K");
            assertRefused(
                    () ->
                            StaticAirTemperature.ofCelsius(-50.0)
                                    .minus(TemperatureDifference.ofKelvins(300.0)),
                    "static air temperature must be a finite number, at least 0.0 K,"
                            + " but was -76.85000000000002 K");
        }

        @Test
        @DisplayName("a pressure, a mass, a fuel flow or a distance below zero")
        void lessThanNothing() {
            assertRefused(
                    () -> StaticPressure.ofHectopascals(-1.0),
                    "static pressure must be a finite number, at least 0.0 hPa, but was -1.0 hPa");
            assertRefused(
                    () -> Mass.of(-1.0, AviationUnits.POUND),
                    "mass must be a finite number, at least 0.0 lb, but was -1.0 lb");
            assertRefused(
                    () -> FuelFlow.ofKilogramsPerHour(-2400.0),
                    "fuel flow must be a finite number, at least 0.0 kg/h, but was -2400.0 kg/h");
            assertRefused(
                    () -> GroundDistance.ofNauticalMiles(-3.0),
                    "distance over the ground must be a finite number, at least 0.0 NM,"
                            + " but was -3.0 NM");
        }

        @Test
        @DisplayName("a direction of 361 degrees, or a path steeper than the vertical")
        void anglesOutOfTheirCircle() {
            assertRefused(
                    () -> TrueDirection.ofDegrees(361.0),
                    "direction must be from 0.0 to 360.0 deg, but was 361.0 deg");
            assertRefused(
                    () -> ClimbAngle.ofDegrees(-90.5),
                    "climb angle must be from -90.0 to 90.0 deg, but was -90.5 deg");
        }

        @Test
        @DisplayName("a frost point above the triple point, where there is no ice")
        void warmIce() {
            // 273.16 - 273.15 in doubles: 0.01 °C and the rounding of the two.
            assertRefused(
                    () -> FrostPoint.ofCelsius(0.5),
                    "frost point must be from -273.15 to 0.010000000000047748 °C,"
                            + " but was 0.5 °C");
            assertRefused(
                    () -> FrostPoint.ofKelvins(273.0).plus(TemperatureDifference.ofKelvins(1.0)),
                    "frost point must be from 0.0 to 273.16 K, but was 274.0 K");
            assertThat(FrostPoint.ofKelvins(273.16).inKelvins()).isEqualTo(273.16);
        }

        @Test
        @DisplayName("air more than saturated, percent taken for a ratio, less vapour than none")
        void humidities() {
            assertRefused(
                    () -> RelativeHumidity.ofPercent(101.0),
                    "relative humidity must be from 0.0 to 100.0 %, but was 101.0 %");
            assertRefused(
                    () -> RelativeHumidity.ofRatio(63.0),
                    "relative humidity must be from 0.0 to 1.0, but was 63.0");
            assertRefused(
                    () -> MixingRatio.parse("-1 g/kg"),
                    "mixing ratio must be a finite number, at least 0.0 g/kg, but was -1.0 g/kg");
            assertRefused(
                    () -> VapourPressure.ofHectopascals(-0.1),
                    "vapour pressure must be a finite number, at least 0.0 hPa, but was -0.1 hPa");
        }

        @Test
        @DisplayName("an altitude that is no number, or has no end")
        void notANumber() {
            assertRefused(
                    () -> PressureAltitude.ofFeet(Double.NaN),
                    "pressure altitude must be a finite number, but was NaN ft");
            assertRefused(
                    () -> PressureAltitude.ofFlightLevel(Double.POSITIVE_INFINITY),
                    "pressure altitude must be a finite number, but was Infinity ft");
            assertRefused(
                    () -> PressureAltitude.of(1e306, AviationUnits.NAUTICAL_MILE),
                    "pressure altitude must be a finite number, but was 1.0E306 NM");
            assertRefused(
                    () ->
                            PressureAltitude.ofMetres(Double.MAX_VALUE)
                                    .plus(AltitudeChange.ofMetres(Double.MAX_VALUE)),
                    "pressure altitude must be a finite number, but was Infinity m");
        }
    }

    @Nested
    @DisplayName("a unit that does not fit, such as")
    @SuppressWarnings({"unchecked", "rawtypes"}) // raw types are the only way to hand these in
    class WrongUnit {
        @Test
        @DisplayName("a percent of anything for a gradient")
        void noRatioIsAGradient() {
            assertRefused(
                    () -> GroundGradient.of(5.0, (Unit) Units.PERCENT),
                    "gradient over the ground takes only its own units, but was in %");
            assertRefused(
                    () -> AirGradient.of(0.05, (Unit) AbstractUnit.ONE),
                    "gradient through the air takes only its own units, but was in one");
            assertRefused(
                    () -> GroundGradient.of(0.05, (Unit) AviationUnits.RADIAN),
                    "gradient over the ground takes only its own units, but was in rad");
            assertRefused(
                    () -> GroundGradient.of(5.0, (Unit) AviationUnits.PERCENT_RELATIVE_HUMIDITY),
                    "gradient over the ground takes only its own units, but was in %");
            assertRefused(
                    () -> GroundGradient.ofPercent(5.0).valueIn((Unit) Units.PERCENT),
                    "gradient over the ground takes only its own units, but was in %");
            assertRefused(
                    () -> GroundGradient.of((Quantity) Quantities.getQuantity(5, Units.PERCENT)),
                    "gradient over the ground takes only its own units, but was in %");
        }

        @Test
        @DisplayName("a percent of anything for a humidity, and one humidity for the other")
        void noRatioIsAHumidity() {
            assertRefused(
                    () -> RelativeHumidity.of(63.0, (Unit) Units.PERCENT),
                    "relative humidity takes only its own units, but was in %");
            assertRefused(
                    () -> RelativeHumidity.of(14.9, (Unit) AviationUnits.GRAM_PER_KILOGRAM),
                    "relative humidity takes only its own units, but was in g/kg");
            assertRefused(
                    () -> MixingRatio.of(63.0, (Unit) AviationUnits.PERCENT_RELATIVE_HUMIDITY),
                    "mixing ratio takes only its own units, but was in %");
            assertRefused(
                    () -> MixingRatio.of(0.01, (Unit) AbstractUnit.ONE),
                    "mixing ratio takes only its own units, but was in one");
            assertRefused(
                    () -> MixingRatio.ofGramsPerKilogram(5.0).valueIn((Unit) Units.PERCENT),
                    "mixing ratio takes only its own units, but was in %");
        }

        @Test
        @DisplayName("a percent gradient for anything else, an angle among it")
        void aGradientIsNothingElse() {
            Unit percent = AviationUnits.PERCENT_GRADIENT;
            assertRefused(
                    () -> PressureAltitude.of(5.0, percent),
                    "pressure altitude takes a unit of length, but was in %");
            assertRefused(
                    () -> ClimbAngle.of(5.0, percent),
                    "climb angle takes a unit of angle, but was in %");
            assertRefused(
                    () -> ClimbAngle.ofDegrees(3.0).valueIn(percent),
                    "climb angle takes a unit of angle, but was in %");
            assertRefused(
                    () -> TrueDirection.of(50.0, (Unit) Units.PERCENT),
                    "direction takes a unit of angle, but was in %");
        }

        @Test
        @DisplayName("knots for an altitude and feet for an airspeed")
        void anotherDimension() {
            assertRefused(
                    () -> PressureAltitude.of(250.0, (Unit) AviationUnits.KNOT),
                    "pressure altitude takes a unit of length, but was in kn");
            assertRefused(
                    () -> CalibratedAirspeed.of(250.0, (Unit) AviationUnits.FOOT),
                    "calibrated airspeed takes a unit of speed, but was in ft");
            assertRefused(
                    () -> GeometricAltitude.ofFeet(1.0).toQuantity((Unit) AviationUnits.KELVIN),
                    "geometric altitude takes a unit of length, but was in K");
        }

        @Test
        @DisplayName("a temperature scale with a zero of its own for an interval")
        void aScaleWithAZeroOfItsOwn() {
            Unit<Temperature> shifted = Units.KELVIN.shift(100.0);

            assertRefused(
                    () -> TemperatureDifference.of(1.0, shifted),
                    "temperature difference takes K, °C or °F, but was in " + shifted);
            assertRefused(
                    () -> TemperatureDifference.ofKelvins(1.0).valueIn(shifted),
                    "temperature difference takes K, °C or °F, but was in " + shifted);
        }
    }

    @Nested
    @DisplayName("a point taken for an interval, such as")
    class PointsAndIntervals {
        @Test
        @DisplayName("20 °C on the thermometer for 20 degrees warmer")
        void aPointForAnInterval() {
            Quantity<Temperature> onTheThermometer =
                    Quantities.getQuantity(20, AviationUnits.CELSIUS);

            assertRefused(
                    () -> TemperatureDifference.of(onTheThermometer),
                    "temperature difference must be an interval on a RELATIVE scale,"
                            + " but 20 ℃ is a point on an ABSOLUTE scale: in ℃ the two differ");
            assertRefused(
                    () -> IsaDeviation.of(onTheThermometer),
                    "ISA deviation must be an interval on a RELATIVE scale,"
                            + " but 20 ℃ is a point on an ABSOLUTE scale: in ℃ the two differ");
        }

        @Test
        @DisplayName("20 degrees warmer for 20 °C on the thermometer")
        void anIntervalForAPoint() {
            Quantity<Temperature> warmer =
                    Quantities.getQuantity(20, AviationUnits.CELSIUS, Quantity.Scale.RELATIVE);

            assertRefused(
                    () -> StaticAirTemperature.of(warmer),
                    "static air temperature must be a point on an ABSOLUTE scale,"
                            + " but 20 ℃ is an interval on a RELATIVE scale: in ℃ the two differ");
        }

        @Test
        @DisplayName("while a kelvin is both, and each is taken on its own scale")
        void kelvinsAreBoth() {
            Quantity<Temperature> kelvins = Quantities.getQuantity(20.0, AviationUnits.KELVIN);
            Quantity<Temperature> warmer =
                    Quantities.getQuantity(9.0, AviationUnits.FAHRENHEIT, Quantity.Scale.RELATIVE);
            Quantity<Temperature> onTheThermometer =
                    Quantities.getQuantity(20.0, AviationUnits.CELSIUS);

            assertThat(
                            Map.of(
                                    "20 K",
                                    TemperatureDifference.of(kelvins).inKelvins(),
                                    "9 °F",
                                    TemperatureDifference.of(warmer).inKelvins(),
                                    "20 °C",
                                    StaticAirTemperature.of(onTheThermometer).inKelvins()))
                    .isEqualTo(Map.of("20 K", 20.0, "9 °F", 5.0, "20 °C", 293.15));
        }
    }

    @Nested
    @DisplayName("a text of another kind, such as")
    class WrongText {
        @Test
        @DisplayName("a flight level for any altitude but a pressure altitude")
        void aFlightLevelIsAPressureAltitude() {
            assertThatExceptionOfType(UnitTextException.class)
                    .isThrownBy(() -> GeometricAltitude.parse("FL350"))
                    .withMessage(
                            "cannot read \"FL350\" as geometric altitude:"
                                    + " expected a digit at character 1, but found 'F'");
        }

        @Test
        @DisplayName("a percentage, a gradient or a bare number for a Mach number")
        void noRatioIsAMachNumber() {
            for (String text : List.of("3.3 %", "200 ft/NM", "0.78")) {
                assertThatExceptionOfType(UnitTextException.class)
                        .isThrownBy(() -> Mach.parse(text))
                        .withMessage(
                                "cannot read \"%s\" as Mach number: expected M and a number"
                                        + " at character 1, but found '%s'",
                                text, text.charAt(0));
            }
        }

        @Test
        @DisplayName("a length for a speed")
        void aUnitOfAnotherKind() {
            assertThatExceptionOfType(UnitTextException.class)
                    .isThrownBy(() -> CalibratedAirspeed.parse("250 ft"))
                    .withMessage(
                            "cannot read \"250 ft\" as calibrated airspeed: expected a unit of"
                                + " speed (m/s, kn, ft/min, ft/s, km/h) at character 5, but found"
                                + " 'f'");
        }
    }

    @Test
    @DisplayName("and a quantity too large for a double in SI")
    void aQuantityOutOfRange() {
        Quantity<Length> huge = Quantities.getQuantity(1e306, AviationUnits.NAUTICAL_MILE);

        assertRefused(
                () -> PressureAltitude.of(huge),
                "pressure altitude must be a finite number, but was 1.0E306 NM");
    }
}
