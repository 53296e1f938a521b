package org.climbwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.quantity.temperature.TemperatureDifference;
import org.climbwright.unit.UnitText;

@Label("Values, over all the numbers they can hold")
class ValuePropertyTest {
    @Provide
    Arbitrary<ValueType<?>> types() {
        return Arbitraries.of(ValueCatalogue.all().toList());
    }

    /** A number from the lowest to the highest that a type holds, told in SI. */
    @Provide
    Arbitrary<Double> finite() {
        return Arbitraries.oneOf(
                Arbitraries.doubles(),
                Arbitraries.longs().map(Double::longBitsToDouble).filter(Double::isFinite));
    }

    @Property
    @Label("each reads its own text as the same value")
    void textIsReadBack(@ForAll("types") ValueType<?> type, @ForAll("finite") double number) {
        readsItsText(type, number);
    }

    private static <T extends Scalar<T>> void readsItsText(ValueType<T> type, double number) {
        double si = inRangeOf(type, number);
        T value =
                type.doors().get(0).scale() == null
                        ? type.doors().get(0).in().apply(si)
                        : type.parse().apply(UnitText.number(si) + " " + siLabel(type));

        assertThat(value.si()).isEqualTo(si + 0.0);
        assertThat(type.parse().apply(value.text())).isEqualTo(value);
    }

    private static String siLabel(ValueType<?> type) {
        // An altimeter setting has no door in pascals; its text has.
        return type.term().equals("altimeter setting") ? "Pa" : type.doors().get(0).scale().label();
    }

    private static double inRangeOf(ValueType<?> type, double number) {
        if (type.hasFloor() && type.hasCeiling()) {
            double width = type.highestSi() - type.lowestSi();
            double inside = type.lowestSi() + Math.abs(number % width);
            return Math.min(inside, type.highestSi());
        }
        return type.hasFloor() ? Math.abs(number) : number;
    }

    @Property
    @Label("order is the order of the numbers, and equality goes with it")
    void order(@ForAll("finite") double a, @ForAll("finite") double b) {
        PressureAltitude one = PressureAltitude.ofMetres(a);
        PressureAltitude other = PressureAltitude.ofMetres(b);

        assertThat(Integer.signum(one.compareTo(other)))
                .isEqualTo(a < b ? -1 : a > b ? 1 : 0)
                .isEqualTo(-Integer.signum(other.compareTo(one)));
        assertThat(one.equals(other)).isEqualTo(a == b);
        assertThat(one.equals(other)).isEqualTo(one.compareTo(other) == 0);
        assertThat(!one.equals(other) || one.hashCode() == other.hashCode()).isTrue();
    }

    @Property
    @Label("a climb and the same descent end at the level left, to the last bits")
    void upAndDown(
            @ForAll @DoubleRange(min = -2000, max = 25000) double from,
            @ForAll @DoubleRange(min = -25000, max = 25000) double by) {
        PressureAltitude start = PressureAltitude.ofMetres(from);
        AltitudeChange climb = AltitudeChange.ofMetres(by);

        // Two sums below 65536 m, each rounded to half an ulp.
        double twoRoundings = Math.ulp(50000.0);
        assertEquals(from, start.plus(climb).minus(climb).inMetres(), twoRoundings);
        assertEquals(by, start.plus(climb).minus(start).inMetres(), twoRoundings);
        assertThat(start.plus(climb).isCloseTo(start, AltitudeChange.ofMetres(Math.abs(by) + 1.0)))
                .isTrue();
    }

    @Property
    @Label("warmer and the same amount colder is the same temperature, to the last bits")
    void warmerAndColder(
            @ForAll @DoubleRange(min = 150, max = 350) double kelvins,
            @ForAll @DoubleRange(min = -100, max = 100) double by) {
        StaticAirTemperature air = StaticAirTemperature.ofKelvins(kelvins);
        TemperatureDifference warmer = TemperatureDifference.ofKelvins(by);

        // Two sums below 512 K, each rounded to half an ulp.
        assertEquals(kelvins, air.plus(warmer).minus(warmer).inKelvins(), Math.ulp(450.0));
        assertEquals(by, air.plus(warmer).minus(air).inKelvins(), Math.ulp(450.0));
    }

    @Property
    @Label("a Mach number is the number itself")
    void mach(@ForAll @DoubleRange(min = 0, max = 1e300) double number) {
        assertThat(Mach.of(number).number()).isEqualTo(number);
        assertThat(Mach.parse("M" + UnitText.number(number))).isEqualTo(Mach.of(number));
    }
}
