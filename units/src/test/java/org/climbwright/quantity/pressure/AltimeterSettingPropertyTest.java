package org.climbwright.quantity.pressure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

@Label("An altimeter setting, over its whole range")
class AltimeterSettingPropertyTest {
    // So much may a setting be short of a whole one and still be that, in Pa.
    private static final double SHORT_PA = 1e-4;
    private static final double HUNDREDTH_OF_INCH_PA = 33.86388640341;
    // A setting is a number of some 1e5 Pa: a few roundings on the way to a whole one and back.
    private static final double ROUNDINGS_PA = 4.0 * Math.ulp(110000.0);

    /** From 25.11 inHg up, and half of them near a whole hectopascal or hundredth. */
    @Provide
    Arbitrary<AltimeterSetting> settings() {
        Arbitrary<Double> anywhere = Arbitraries.doubles().between(85033.0, 109999.0).ofScale(9);
        Arbitrary<Double> off = Arbitraries.doubles().between(-3e-4, 3e-4).ofScale(15);
        Arbitrary<Double> hectopascal =
                Arbitraries.integers().between(851, 1099).map(n -> 100.0 * n);
        Arbitrary<Double> hundredth =
                Arbitraries.integers().between(2512, 3248).map(n -> HUNDREDTH_OF_INCH_PA * n);
        Arbitrary<Double> near =
                Arbitraries.oneOf(hectopascal, hundredth)
                        .flatMap(whole -> off.map(pascals -> whole + pascals));
        return Arbitraries.oneOf(anywhere, near)
                .map(pascals -> AltimeterSetting.ofHectopascals(pascals / 100.0));
    }

    @Property
    @Label(
            "rounded down to a hectopascal is whole, not above the exact one, and less than one"
                    + " below")
    void hectopascal(@ForAll("settings") AltimeterSetting exact) {
        AltimeterSetting whole = exact.roundedDownToHectopascal();

        assertThat(whole.inHectopascals()).isEqualTo(Math.rint(whole.inHectopascals()));
        isWithinOneUnitBelow(whole, exact, 100.0);
        assertThat(whole.roundedDownToHectopascal()).isEqualTo(whole);
    }

    @Property
    @Label("rounded down to a hundredth of an inch is whole, not above, and less than one below")
    void hundredthOfInch(@ForAll("settings") AltimeterSetting exact) {
        AltimeterSetting whole = exact.roundedDownToHundredthOfInch();

        double hundredths = Math.rint(whole.inInchesOfMercury() * 100.0);
        assertThat(whole.inInchesOfMercury()).isEqualTo(hundredths / 100.0);
        isWithinOneUnitBelow(whole, exact, HUNDREDTH_OF_INCH_PA);
        assertThat(whole.roundedDownToHundredthOfInch()).isEqualTo(whole);
    }

    private static void isWithinOneUnitBelow(
            AltimeterSetting whole, AltimeterSetting exact, double unitPa) {
        double below = exact.inPascals() - whole.inPascals();
        assertThat(below).isGreaterThanOrEqualTo(-SHORT_PA - ROUNDINGS_PA).isLessThan(unitPa);
    }

    @Property
    @Label("a lower setting is never rounded to a higher one")
    void keepsOrder(
            @ForAll("settings") AltimeterSetting one, @ForAll("settings") AltimeterSetting other) {
        AltimeterSetting low = one.compareTo(other) < 0 ? one : other;
        AltimeterSetting high = one.compareTo(other) < 0 ? other : one;

        assertThat(low.roundedDownToHectopascal())
                .isLessThanOrEqualTo(high.roundedDownToHectopascal());
        assertThat(low.roundedDownToHundredthOfInch())
                .isLessThanOrEqualTo(high.roundedDownToHundredthOfInch());
    }

    @Property
    @Label("a few last digits lost or won on a whole setting do not change what is reported")
    void lastDigits(
            @ForAll @IntRange(min = 851, max = 1099) int hectopascals,
            @ForAll @DoubleRange(min = -1e-9, max = 1e-9) @Scale(15) double off) {
        assertThat(AltimeterSetting.ofHectopascals(hectopascals + off).roundedDownToHectopascal())
                .isEqualTo(AltimeterSetting.ofHectopascals(hectopascals));
    }

    @Property
    @Label("a setting in inches taken for hectopascals, and the other way round, is told")
    void theUnitMeant(@ForAll("settings") AltimeterSetting setting) {
        double inches = setting.inInchesOfMercury();
        double hectopascals = setting.inHectopascals();

        assertThatIllegalArgumentException()
                .isThrownBy(() -> AltimeterSetting.ofHectopascals(inches))
                .withMessageContaining("but was " + inches + " hPa: as inHg it would be ")
                .withMessageEndingWith(" hPa, check the unit");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AltimeterSetting.ofInchesOfMercury(hectopascals))
                .withMessageContaining("but was " + hectopascals + " inHg: as hPa it would be ")
                .withMessageEndingWith(" inHg, check the unit");
    }
}
