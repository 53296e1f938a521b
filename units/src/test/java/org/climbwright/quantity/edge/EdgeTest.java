package org.climbwright.quantity.edge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.math.BigDecimal;
import java.math.BigInteger;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import org.climbwright.quantity.altitude.GeometricAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.ClimbAngle;
import org.climbwright.quantity.path.GroundGradient;
import org.climbwright.quantity.path.TrueDirection;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.temperature.IsaDeviation;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.quantity.temperature.TemperatureDifference;
import org.climbwright.unit.AviationUnits;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tech.units.indriya.function.MultiplyConverter;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.TransformedUnit;
import tech.units.indriya.unit.Units;

@DisplayName("A value meets javax.measure:")
class EdgeTest {
    // A foreign unit goes through converters that round two or three times on their own.
    private static double fewUlps(double number) {
        return 4.0 * Math.ulp(number);
    }

    @Nested
    @DisplayName("a unit that is not ours but means the same")
    class ForeignUnits {
        private final Unit<Length> theirFoot =
                new TransformedUnit<>(
                        "foot", Units.METRE, Units.METRE, MultiplyConverter.ofRational(381, 1250));
        private final Unit<Length> multipliedFoot = Units.METRE.multiply(0.3048);
        private final Unit<Speed> metrePerSecond =
                Units.METRE.divide(Units.SECOND).asType(Speed.class);

        @ParameterizedTest
        @ValueSource(doubles = {-1000.0, 1.0, 7000.0, 31000.0, 41000.5})
        @DisplayName("is right for an altitude: a foot that somebody else built, in feet")
        void theirFeet(double feet) {
            double ours = PressureAltitude.ofFeet(feet).inMetres();

            assertThat(AviationUnits.FOOT).isNotSameAs(theirFoot).isNotSameAs(multipliedFoot);
            assertEquals(ours, PressureAltitude.of(feet, theirFoot).inMetres(), fewUlps(ours));
            assertEquals(ours, PressureAltitude.of(feet, multipliedFoot).inMetres(), fewUlps(ours));
            assertEquals(feet, PressureAltitude.ofFeet(feet).valueIn(theirFoot), fewUlps(feet));
            assertEquals(
                    feet,
                    PressureAltitude.ofFeet(feet)
                            .toQuantity(multipliedFoot)
                            .getValue()
                            .doubleValue(),
                    fewUlps(feet));
        }

        @Test
        @DisplayName("is right for an airspeed: a quotient of metre and second")
        void aQuotient() {
            assertThat(metrePerSecond).isNotSameAs(AviationUnits.METRE_PER_SECOND);
            assertThat(CalibratedAirspeed.of(128.6, metrePerSecond))
                    .isEqualTo(CalibratedAirspeed.ofMetresPerSecond(128.6));
            assertThat(CalibratedAirspeed.ofMetresPerSecond(128.6).valueIn(metrePerSecond))
                    .isEqualTo(128.6);
            assertEquals(
                    10.0,
                    CalibratedAirspeed.of(36.0, Units.KILOMETRE_PER_HOUR).inMetresPerSecond(),
                    fewUlps(10.0));
        }

        @Test
        @DisplayName("is right for a pressure: a prefixed pascal")
        void aPrefix() {
            Unit<Pressure> hectopascal = MetricPrefix.HECTO(Units.PASCAL);

            assertThat(hectopascal).isNotSameAs(AviationUnits.HECTOPASCAL);
            assertEquals(
                    101325.0,
                    StaticPressure.of(1013.25, hectopascal).inPascals(),
                    fewUlps(101325.0));
        }

        @Test
        @DisplayName("is right for an angle: a degree made of radians")
        void anAngle() {
            Unit<Angle> degree = Units.RADIAN.multiply(Math.PI).divide(180.0);

            assertEquals(
                    Math.toRadians(3.0), ClimbAngle.of(3.0, degree).inRadians(), fewUlps(0.05));
            assertEquals(90.0, TrueDirection.ofDegrees(90.0).valueIn(degree), fewUlps(90.0));
        }

        @Test
        @DisplayName("is right for a temperature: a shifted kelvin")
        void aShiftedKelvin() {
            Unit<Temperature> theirCelsius = Units.KELVIN.shift(273.15);

            assertThat(theirCelsius).isNotSameAs(AviationUnits.CELSIUS);
            assertEquals(
                    288.15,
                    StaticAirTemperature.of(15.0, theirCelsius).inKelvins(),
                    fewUlps(288.15));
            assertEquals(
                    15.0,
                    StaticAirTemperature.ofKelvins(288.15).valueIn(theirCelsius),
                    fewUlps(288.15));
        }

        @Test
        @DisplayName("is right for a temperature difference: a thousandth of a kelvin")
        void aPartOfAKelvin() {
            Unit<Temperature> millikelvin = MetricPrefix.MILLI(Units.KELVIN);

            assertEquals(
                    1.5, TemperatureDifference.of(1500.0, millikelvin).inKelvins(), fewUlps(1.5));
        }
    }

    @Nested
    @DisplayName("a temperature")
    class Temperatures {
        @Test
        @DisplayName("is a point with the zero of its scale")
        void isAPoint() {
            assertThat(StaticAirTemperature.of(15.0, AviationUnits.CELSIUS).inKelvins())
                    .isEqualTo(288.15);
            // 59 °F is 15 °C; the product and the sum of °F are rounded once each.
            assertEquals(
                    15.0,
                    StaticAirTemperature.of(59.0, AviationUnits.FAHRENHEIT).inCelsius(),
                    fewUlps(288.15));
            assertEquals(
                    -40.0,
                    StaticAirTemperature.ofCelsius(-40.0).valueIn(AviationUnits.FAHRENHEIT),
                    fewUlps(459.67));
        }

        @Test
        @DisplayName("difference is an interval, without that zero")
        void differenceIsAnInterval() {
            assertThat(TemperatureDifference.of(10.0, AviationUnits.CELSIUS).inKelvins())
                    .isEqualTo(10.0);
            assertThat(IsaDeviation.of(18.0, AviationUnits.FAHRENHEIT).inKelvins()).isEqualTo(10.0);
            assertThat(IsaDeviation.ofKelvins(-15.0).valueIn(AviationUnits.FAHRENHEIT))
                    .isEqualTo(-27.0);
        }

        @Test
        @DisplayName("goes out on the scale it is of: absolute as a point, relative as an interval")
        void goesOutOnItsScale() {
            Quantity<Temperature> point =
                    StaticAirTemperature.ofCelsius(15.0).toQuantity(AviationUnits.CELSIUS);
            Quantity<Temperature> interval =
                    IsaDeviation.ofKelvins(10.0).toQuantity(AviationUnits.CELSIUS);

            assertThat(point.getScale()).isEqualTo(Quantity.Scale.ABSOLUTE);
            assertThat(interval.getScale()).isEqualTo(Quantity.Scale.RELATIVE);
            // What this distinction is for: the sum of both in javax.measure.
            assertEquals(
                    298.15,
                    point.add(interval).to(AviationUnits.KELVIN).getValue().doubleValue(),
                    fewUlps(298.15));
        }
    }

    @Test
    @DisplayName("a number of any type goes in, and a double comes out")
    void anyNumberType() {
        PressureAltitude level = PressureAltitude.ofFeet(35000.0);

        assertThat(
                        new Number[] {
                            35000,
                            35000L,
                            35000.0f,
                            new BigDecimal("35000"),
                            BigInteger.valueOf(35000)
                        })
                .allSatisfy(
                        number ->
                                assertThat(
                                                PressureAltitude.of(
                                                        Quantities.getQuantity(
                                                                number, AviationUnits.FOOT)))
                                        .isEqualTo(level));
        Quantity<Length> out = level.toQuantity(AviationUnits.FOOT);
        assertThat(out.getValue().doubleValue()).isEqualTo(35000.0);
        assertThat(out.getUnit()).isSameAs(AviationUnits.FOOT);
        assertThat(level.toQuantity(AviationUnits.NAUTICAL_MILE).getValue().doubleValue())
                .isEqualTo(10668.0 / 1852.0);
    }

    @Test
    @DisplayName("a gradient comes in and goes out by its own three units")
    void gradients() {
        assertThat(GroundGradient.of(3.3, AviationUnits.PERCENT_GRADIENT))
                .isEqualTo(GroundGradient.ofPercent(3.3))
                .isEqualTo(GroundGradient.of(0.033, AviationUnits.METRE_PER_METRE));
        // 3.3 % of 1852 m is 61.116 m, which is 200.511811 ft: worked by hand.
        assertEquals(200.511811, GroundGradient.ofPercent(3.3).inFeetPerNauticalMile(), 5e-7);
        assertEquals(
                200.0,
                GroundGradient.ofFeetPerNauticalMile(200.0)
                        .toQuantity(AviationUnits.PERCENT_GRADIENT)
                        .to(AviationUnits.FOOT_PER_NAUTICAL_MILE)
                        .getValue()
                        .doubleValue(),
                fewUlps(200.0));
    }

    @Test
    @DisplayName("a quantity computed elsewhere is taken in the unit it is in")
    void computedElsewhere() {
        Quantity<Length> sum =
                Quantities.getQuantity(1000.0, AviationUnits.FOOT)
                        .add(Quantities.getQuantity(304.8, AviationUnits.METRE));

        assertEquals(2000.0, GeometricAltitude.of(sum).inFeet(), fewUlps(2000.0));
    }

    @Test
    @DisplayName("a quantity in a unit of ours is taken by its factor, not by a general converter")
    void asksNoConverter() {
        Quantity<Speed> speed = Quantities.getQuantity(290.0, AviationUnits.KNOT);
        Quantity<Length> altitude = Quantities.getQuantity(31000.0, AviationUnits.FOOT);
        ThreadMXBean thread = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        CalibratedAirspeed.of(speed);
        PressureAltitude.of(altitude);

        long before = thread.getCurrentThreadAllocatedBytes();
        for (int i = 0; i < 1000; i++) {
            CalibratedAirspeed.of(speed);
            PressureAltitude.of(altitude);
        }
        long bytesPerCall = (thread.getCurrentThreadAllocatedBytes() - before) / 2000;

        // the value itself is 24 bytes at most; a converter makes more than 100
        assertThat(bytesPerCall).isLessThanOrEqualTo(32);
    }
}
