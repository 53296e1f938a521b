package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.testing.Agreement.error;
import static org.climbwright.testing.Agreement.relativeError;

import java.math.BigDecimal;
import java.util.function.UnaryOperator;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.assertj.core.data.Offset;
import org.climbwright.testing.FiftyDigitHumidity;
import org.climbwright.testing.FiftyDigits;

/**
 * Holds the accuracy that {@link SaturationFormula} and {@link LiftedAir} state. They do better:
 * over some thousand random values the largest errors were 2e-14 of a vapour pressure, 3.4e-13 K of
 * a dew point, 1e-13 K of a frost point; 2.5e-12 K, 4.5e-14 and 2.6e-10 m of a condensation level.
 */
@Label("Saturation and condensation, against the same formulas in 50 digits")
class HumidityPrecisionTest {
    private static final Offset<Double> VAPOUR_PRESSURE = within(1e-13);
    private static final Offset<Double> DEW_POINT = within(1e-12);
    private static final Offset<Double> LEVEL_TEMPERATURE = within(1e-10);
    private static final Offset<Double> LEVEL_PRESSURE = within(1e-12);
    private static final Offset<Double> LEVEL_HEIGHT = within(1e-8);

    private static final SaturationFormula MURPHY_KOOP = SaturationFormula.MURPHY_KOOP;
    private static final SaturationFormula WMO = SaturationFormula.WMO;

    @Example
    @Label("have the vapour pressures of each formula from end to end, and the dew point back")
    void onAGrid() {
        for (int step = 0; step <= 200; step++) {
            overWater(MURPHY_KOOP, 123.0 + (332.0 - 123.0) * step / 200);
            overIce(MURPHY_KOOP, 110.0 + (273.16 - 110.0) * step / 200);
            overWater(WMO, 228.15 + (333.15 - 228.15) * step / 200);
            overIce(WMO, 208.15 + (273.15 - 208.15) * step / 200);
        }
    }

    private static void overWater(SaturationFormula formula, double kelvin) {
        UnaryOperator<BigDecimal> ln =
                formula == MURPHY_KOOP
                        ? FiftyDigitHumidity::lnMurphyKoopWater
                        : FiftyDigitHumidity::lnWmoWater;
        double e = formula.overWater(kelvin);
        assertThat(relativeError(e, exact(ln, kelvin)))
                .as("at " + kelvin + " K")
                .isCloseTo(0.0, VAPOUR_PRESSURE);
        pointOf(e, formula.dewPoint(e), ln);
    }

    private static void overIce(SaturationFormula formula, double kelvin) {
        UnaryOperator<BigDecimal> ln =
                formula == MURPHY_KOOP
                        ? FiftyDigitHumidity::lnMurphyKoopIce
                        : FiftyDigitHumidity::lnWmoIce;
        double e = formula.overIce(kelvin);
        assertThat(relativeError(e, exact(ln, kelvin)))
                .as("at " + kelvin + " K")
                .isCloseTo(0.0, VAPOUR_PRESSURE);
        pointOf(e, formula.frostPoint(e), ln);
    }

    private static BigDecimal exact(UnaryOperator<BigDecimal> ln, double kelvin) {
        return FiftyDigits.exp(ln.apply(new BigDecimal(kelvin)));
    }

    /** The error of a dew or frost point is that of its logarithm over the slope there. */
    private static void pointOf(double e, double point, UnaryOperator<BigDecimal> ln) {
        BigDecimal off =
                ln.apply(new BigDecimal(point)).subtract(FiftyDigits.log(new BigDecimal(e)));
        assertThat(off.doubleValue() / slope(ln, point))
                .as("the point of " + e + " Pa")
                .isCloseTo(0.0, DEW_POINT);
    }

    private static double slope(UnaryOperator<BigDecimal> ln, double kelvin) {
        BigDecimal step = new BigDecimal("1e-6");
        BigDecimal t = new BigDecimal(kelvin);
        return ln.apply(t.add(step)).subtract(ln.apply(t)).doubleValue() / 1e-6;
    }

    @Provide
    Arbitrary<Double> temperatures() {
        return Arbitraries.doubles().between(200.0, 331.0).ofScale(9);
    }

    @Provide
    Arbitrary<Double> humidities() {
        return Arbitraries.doubles().between(0.02, 1.0).ofScale(9);
    }

    @Provide
    Arbitrary<Double> pressures() {
        return Arbitraries.doubles().between(40000.0, 110000.0).ofScale(6);
    }

    @Property(tries = 300)
    @Label("have the condensation level of the equations, in temperature, pressure and height")
    void condensationLevel(
            @ForAll("temperatures") double kelvin,
            @ForAll("humidities") double humidity,
            @ForAll("pressures") double pascal) {
        double vapour = humidity * MoistAir.saturationVapourPressure(kelvin);
        double level = LiftedAir.condensationTemperature(kelvin, vapour, pascal);

        BigDecimal t = new BigDecimal(kelvin);
        BigDecimal e = new BigDecimal(vapour);
        BigDecimal p = new BigDecimal(pascal);
        BigDecimal ratio = FiftyDigitHumidity.mixingRatio(e, p);
        BigDecimal exponent = FiftyDigitHumidity.adiabaticExponent(ratio);
        UnaryOperator<BigDecimal> excess =
                at ->
                        FiftyDigitHumidity.lnMurphyKoopWater(at)
                                .subtract(FiftyDigits.log(e))
                                .subtract(
                                        FiftyDigits.log(at.divide(t, FiftyDigits.DIGITS))
                                                .divide(exponent, FiftyDigits.DIGITS));
        double off = excess.apply(new BigDecimal(level)).doubleValue() / slope(excess, level);
        assertThat(off).isCloseTo(0.0, LEVEL_TEMPERATURE);

        BigDecimal exactLevel = new BigDecimal(level).subtract(new BigDecimal(off));
        BigDecimal lifted = FiftyDigits.log(exactLevel.divide(t, FiftyDigits.DIGITS));
        BigDecimal exactPressure =
                p.multiply(FiftyDigits.exp(lifted.divide(exponent, FiftyDigits.DIGITS)));
        assertThat(
                        relativeError(
                                LiftedAir.condensationPressure(kelvin, vapour, pascal),
                                exactPressure))
                .isCloseTo(0.0, LEVEL_PRESSURE);

        BigDecimal exactHeight =
                FiftyDigitHumidity.heatCapacity(ratio)
                        .divide(new BigDecimal("9.80665"), FiftyDigits.DIGITS)
                        .multiply(t.subtract(exactLevel));
        assertThat(error(LiftedAir.heightToCondensation(kelvin, vapour, pascal), exactHeight))
                .isCloseTo(0.0, LEVEL_HEIGHT);
    }
}
