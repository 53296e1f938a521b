package org.climbwright.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.math.BigDecimal;
import java.math.BigInteger;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

@Label("Text and units, for any number")
class UnitTextPropertyTest {
    /** Every finite double, each bit pattern as likely as any other, with the usual edge cases. */
    @Provide
    Arbitrary<Double> finite() {
        Arbitrary<Double> bits =
                Arbitraries.longs().map(Double::longBitsToDouble).filter(Double::isFinite);
        return Arbitraries.oneOf(bits, Arbitraries.doubles());
    }

    /** What people write: up to nine decimals, less than a million. */
    @Provide
    Arbitrary<Double> written() {
        return Arbitraries.bigIntegers()
                .between(new BigInteger("-999999999999999"), new BigInteger("999999999999999"))
                .map(digits -> new BigDecimal(digits, 9).doubleValue());
    }

    @Property
    @Label("a number is read back as the same double")
    void numberIsReadBack(@ForAll("finite") double number) {
        String text = UnitText.number(number);

        assertThat(Double.parseDouble(text)).isEqualTo(number + 0.0);
        assertThat(text).matches("-?[0-9]+(\\.[0-9]*[1-9])?");
    }

    @Property
    @Label("a number with a unit is read back as the same double in SI")
    void textIsReadBack(@ForAll("finite") double si, @ForAll UnitScale scale) {
        String text = UnitText.format(si, scale);

        assertThat(UnitText.parse("value", text, scale.kind())).isEqualTo(si + 0.0);
    }

    @Property
    @Label("what people write comes back by the unit it came in by")
    void comesBack(@ForAll("written") double number, @ForAll UnitScale scale) {
        assertThat(scale.fromSi(scale.toSi(number))).isEqualTo(number + 0.0);
    }

    @Property
    @Label("more in is never less in SI")
    void keepsOrder(
            @ForAll("finite") double a, @ForAll("finite") double b, @ForAll UnitScale scale) {
        Assume.that(a <= b);

        assertThat(scale.toSi(a) <= scale.toSi(b)).isTrue();
    }

    @Property
    @Label("no text makes anything but a number or the exception that says where the fault is")
    void anyText(@ForAll String text, @ForAll QuantityKind kind) {
        if (reads(text, kind)) {
            assertThat(text).matches("[+-]?[0-9]+(\\.[0-9]+)?([eE][+-]?[0-9]+)? \\S+");
        } else {
            assertThatExceptionOfType(UnitTextException.class)
                    .isThrownBy(() -> UnitText.parse("value", text, kind))
                    .satisfies(
                            refused -> assertThat(refused.position()).isBetween(0, text.length()));
        }
    }

    @Property
    @Label("a character added to a good text makes it one of another unit, or refused")
    void oneCharacterMore(@ForAll("written") double metres, @ForAll char added) {
        String text = UnitText.number(metres) + " m" + added;

        assertThat(reads(text, QuantityKind.LENGTH)).isFalse();
    }

    private static boolean reads(String text, QuantityKind kind) {
        try {
            UnitText.parse("value", text, kind);
            return true;
        } catch (UnitTextException refused) {
            return false;
        }
    }
}
