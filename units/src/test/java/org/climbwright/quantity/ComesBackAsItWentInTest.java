package org.climbwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoublePredicate;
import java.util.stream.Stream;
import javax.measure.Unit;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.altitude.VerticalPosition;
import org.climbwright.quantity.humidity.MixingRatio;
import org.climbwright.quantity.humidity.RelativeHumidity;
import org.climbwright.quantity.path.ClimbAngle;
import org.climbwright.quantity.path.FuelFlow;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.path.TrueDirection;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.pressure.CabinPressureRate;
import org.climbwright.quantity.pressure.DifferentialPressure;
import org.climbwright.quantity.speed.AirspeedDifference;
import org.climbwright.quantity.speed.AlongTrackWind;
import org.climbwright.unit.AviationUnits;
import org.climbwright.unit.UnitScale;
import org.climbwright.unit.UnitText;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Equal here is equal to the last bit: no tolerance. What leaves is compared with what went in, so
 * the expected value is never one of our own.
 */
@DisplayName("A number of the cockpit comes back as it went in:")
class ComesBackAsItWentInTest {
    @ParameterizedTest(name = "{0}")
    @MethodSource("sweeps")
    @DisplayName("from the accessor of its unit,")
    <T extends Scalar<T>> void fromItsAccessor(Sweep<T> sweep) {
        Door<T> door = sweep.door();

        sweep.holdsForEach(number -> door.out().applyAsDouble(door.in().apply(number)) == number);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sweepsWithUnits")
    @DisplayName("from valueIn with the unit of the trade,")
    <T extends Scalar<T>> void fromValueIn(Sweep<T> sweep) {
        Unit<?> unit = AviationUnits.of(sweep.door().scale());
        UnitDoor<T, ?> units = sweep.type().units();

        sweep.holdsForEach(
                number -> {
                    T value = sweep.door().in().apply(number);
                    return units.of(number, unit).equals(value)
                            && units.valueIn(value, unit) == number;
                });
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sweepsWithUnits")
    @DisplayName("through a quantity of javax.measure,")
    <T extends Scalar<T>> void throughAQuantity(Sweep<T> sweep) {
        Unit<?> unit = AviationUnits.of(sweep.door().scale());
        UnitDoor<T, ?> units = sweep.type().units();

        sweep.holdsForEach(
                number -> {
                    T value = sweep.door().in().apply(number);
                    return units.thereAndBack(value, unit).equals(value);
                });
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sweeps")
    @DisplayName("and through text.")
    <T extends Scalar<T>> void throughText(Sweep<T> sweep) {
        Door<T> door = sweep.door();
        boolean isMach = door.scale() == null;

        sweep.holdsForEach(
                number -> {
                    T value = door.in().apply(number);
                    String written = UnitText.number(number);
                    T read =
                            sweep.type()
                                    .parse()
                                    .apply(
                                            isMach
                                                    ? "M" + written
                                                    : written + " " + door.scale().label());
                    return read.equals(value)
                            && sweep.type().parse().apply(value.text()).equals(value);
                });
    }

    @Test
    @DisplayName("Every flight level is a whole number of hundreds of feet, there and back")
    void flightLevels() {
        for (int level = -10; level <= 600; level++) {
            PressureAltitude altitude = PressureAltitude.ofFlightLevel(level);

            assertThat(altitude.inFlightLevels()).isEqualTo(level);
            assertThat(altitude.inFeet()).isEqualTo(level * 100);
            assertThat(altitude).isEqualTo(PressureAltitude.parse("FL" + level));
            assertThat(altitude).isEqualTo(PressureAltitude.parse(altitude.text()));
        }
    }

    @Test
    @DisplayName("Every value of the library is among those asked")
    void asksEveryType() {
        List<Object> asked = sweeps().<Object>map(Sweep::type).distinct().toList();

        assertThat(asked).containsExactlyInAnyOrderElementsOf(ValueCatalogue.all().toList());
    }

    static Stream<Sweep<?>> sweepsWithUnits() {
        return sweeps().filter(sweep -> sweep.type().units() != null);
    }

    static Stream<Sweep<?>> sweeps() {
        List<Sweep<?>> sweeps = new ArrayList<>();
        ValueCatalogue.all()
                .filter(type -> VerticalPosition.class.isAssignableFrom(type.type()))
                .forEach(type -> sweeps.add(every(type, "ofFeet", -1_000, 60_000, 1)));
        sweeps.add(every(AltitudeChange.class, "ofFeet", -1_000, 60_000, 1));
        ValueCatalogue.having("ofKnots")
                .forEach(type -> sweeps.add(every(type, "ofKnots", 0, 1_000, 1)));
        sweeps.add(every(AlongTrackWind.class, "ofKnots", -300, -1, 1));
        sweeps.add(every(AirspeedDifference.class, "ofKnots", -300, -1, 1));
        ValueCatalogue.having("ofFeetPerMinute")
                .forEach(type -> sweeps.add(every(type, "ofFeetPerMinute", -10_000, 10_000, 1)));
        ValueCatalogue.having("of").forEach(type -> sweeps.add(every(type, "of", 0, 3_000, 1_000)));
        ValueCatalogue.having("ofCelsius")
                .forEach(
                        type ->
                                // The triple point of water, the highest frost point, is 0.01 °C.
                                sweeps.add(
                                        every(
                                                type,
                                                "ofCelsius",
                                                -10_000,
                                                type.hasCeiling() ? 1 : 6_000,
                                                100)));
        ValueCatalogue.having("ofKelvins")
                .forEach(
                        type -> {
                            if (type.has("ofCelsius")) {
                                int highest = type.hasCeiling() ? 27_316 : 33_315;
                                sweeps.add(every(type, "ofKelvins", 17_315, highest, 100));
                            } else {
                                sweeps.add(every(type, "ofKelvins", -10_000, 6_000, 100));
                                sweeps.add(everyHundredthOfADegreeCelsius(type));
                            }
                        });
        sweeps.add(every(AltimeterSetting.class, "ofHectopascals", 85_000, 110_000, 100));
        // 850 hPa is 25.1005 inHg and 1100 hPa is 32.4830 inHg: the hundredths between them.
        sweeps.add(every(AltimeterSetting.class, "ofInchesOfMercury", 2_511, 3_248, 100));
        ValueCatalogue.having("ofHectopascals")
                .filter(type -> type.lowestSi() <= 0.0)
                .forEach(type -> sweeps.add(every(type, "ofHectopascals", 0, 110_000, 100)));
        sweeps.add(every(DifferentialPressure.class, "ofPoundsPerSquareInch", -100, 1_500, 100));
        sweeps.add(every(CabinPressureRate.class, "ofHectopascalsPerMinute", -9_000, 9_000, 10));
        sweeps.add(
                every(
                        CabinPressureRate.class,
                        "ofPoundsPerSquareInchPerMinute",
                        -1_500,
                        1_500,
                        100));
        // Half the way round the earth is 10,800 NM.
        sweeps.add(every(GroundDistance.class, "ofNauticalMiles", 0, 10_800, 1));
        sweeps.add(every(Mass.class, "ofKilograms", 0, 600_000, 1));
        sweeps.add(every(FuelFlow.class, "ofKilogramsPerHour", 0, 40_000, 1));
        ValueCatalogue.having("ofPercent")
                .filter(type -> !type.hasFloor())
                .forEach(type -> sweeps.add(every(type, "ofPercent", -1_000, 1_000, 10)));
        sweeps.add(every(RelativeHumidity.class, "ofPercent", 0, 1_000, 10));
        sweeps.add(every(RelativeHumidity.class, "ofRatio", 0, 1_000, 1_000));
        sweeps.add(every(MixingRatio.class, "ofGramsPerKilogram", 0, 10_000, 100));
        ValueCatalogue.having("ofFeetPerNauticalMile")
                .forEach(
                        type -> sweeps.add(every(type, "ofFeetPerNauticalMile", -3_000, 3_000, 1)));
        sweeps.add(every(TrueDirection.class, "ofDegrees", 0, 360, 1));
        sweeps.add(every(ClimbAngle.class, "ofDegrees", -90, 90, 1));
        return sweeps.stream();
    }

    private static <T extends Scalar<T>> Sweep<T> every(
            Class<T> type, String entrance, int from, int to, int parts) {
        return every(ValueCatalogue.of(type), entrance, from, to, parts);
    }

    private static <T extends Scalar<T>> Sweep<T> every(
            ValueType<T> type, String entrance, int from, int to, int parts) {
        return new Sweep<>(type, type.door(entrance), from, to, parts);
    }

    private static <T extends Scalar<T>> Sweep<T> everyHundredthOfADegreeCelsius(
            ValueType<T> type) {
        Unit<?> celsius = AviationUnits.CELSIUS;
        Door<T> door =
                new Door<>(
                        "of °C",
                        "in °C",
                        UnitScale.CELSIUS_DIFFERENCE,
                        number -> type.units().of(number, celsius),
                        value -> type.units().valueIn(value, celsius));
        return new Sweep<>(type, door, -10_000, 6_000, 100);
    }

    /** All the numbers from {@code from / parts} to {@code to / parts}, bounds included. */
    record Sweep<T extends Scalar<T>>(
            ValueType<T> type, Door<T> door, int from, int to, int parts) {

        void holdsForEach(DoublePredicate comesBack) {
            int lost = 0;
            double firstLost = Double.NaN;
            for (int i = from; i <= to; i++) {
                // Both are whole, so that 2992 / 100.0 is the double that 29.92 is.
                double number = i / (double) parts;
                if (!comesBack.test(number)) {
                    lost++;
                    firstLost = lost == 1 ? number : firstLost;
                }
            }
            assertThat(lost)
                    .as(
                            "how many of %d did not come back, the first of them %s",
                            to - from + 1, firstLost)
                    .isZero();
        }

        @Override
        public String toString() {
            return String.format(
                    "%s %s every %s%s from %s to %s",
                    type.term(),
                    door.entrance(),
                    UnitText.number(1.0 / parts),
                    door.unitBehind(),
                    UnitText.number(from / (double) parts),
                    UnitText.number(to / (double) parts));
        }
    }
}
