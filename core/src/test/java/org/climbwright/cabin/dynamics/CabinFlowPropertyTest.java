package org.climbwright.cabin.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.climbwright.testing.FiftyDigits.DIGITS;

import ch.obermuhlner.math.big.BigDecimalMath;
import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.climbwright.testing.Agreement;

@Label("Flow through an opening, over its whole range")
class CabinFlowPropertyTest {
    @Property(tries = 300)
    @Label("is that of the formula in 50 digits within 2e-15, next to equal pressures too")
    void inFiftyDigits(
            @ForAll @DoubleRange(min = 1e3, max = 2e5) double upstreamPa,
            @ForAll @DoubleRange(min = 0.0, max = 15.0) @Scale(4) double nearness,
            @ForAll @DoubleRange(min = 200.0, max = 350.0) double kelvins) {
        double downstreamPa = upstreamPa * (1.0 - StrictMath.pow(10.0, -nearness));
        if (!(downstreamPa >= 1.0 && downstreamPa < upstreamPa)) {
            return;
        }
        double ours = OrificeFlow.massFlow(0.01, upstreamPa, downstreamPa, kelvins);
        BigDecimal exact = inFiftyDigits(0.01, upstreamPa, downstreamPa, kelvins);
        assertThat(Agreement.relativeError(ours, exact)).isLessThan(2e-15);
    }

    @Property
    @Label("never falls as the pressure behind falls, and stays once choked")
    void moreWithLessBehind(
            @ForAll @DoubleRange(min = 1e3, max = 2e5) double upstreamPa,
            @ForAll @DoubleRange(min = 0.0, max = 1.0) double ratio,
            @ForAll @DoubleRange(min = 0.0, max = 1.0) double lessThanThat) {
        double behind = upstreamPa * ratio;
        double less = behind * lessThanThat;
        double flow = OrificeFlow.massFlow(0.01, upstreamPa, behind, 290.0);
        double more = OrificeFlow.massFlow(0.01, upstreamPa, less, 290.0);
        assertThat(more).isGreaterThanOrEqualTo(flow * (1.0 - 1e-15));
        if (OrificeFlow.isChoked(upstreamPa, behind)) {
            assertThat(more).isEqualTo(flow);
        }
    }

    @Property
    @Label("is continuous in value and slope where it chokes")
    void choke(@ForAll @DoubleRange(min = 1e3, max = 2e5) double upstreamPa) {
        double knee = upstreamPa * OrificeFlow.CRITICAL_PRESSURE_RATIO;
        double atKnee = OrificeFlow.massFlow(0.01, upstreamPa, knee, 290.0);
        double choked = OrificeFlow.massFlow(0.01, upstreamPa, 0.0, 290.0);
        assertThat(atKnee).isCloseTo(choked, withinPercentage(1e-13));
        double h = 1e-4;
        double above = OrificeFlow.massFlow(0.01, upstreamPa, knee * (1.0 + h), 290.0);
        // with a slope of 0 on both sides the flow differs by the square of h
        assertThat((choked - above) / choked).isBetween(0.0, 2.0 * h * h);
    }

    @Property
    @Label("the area that it needs is the area that it went through")
    void thereAndBack(
            @ForAll @DoubleRange(min = 1e-6, max = 10.0) @Scale(6) double areaM2,
            @ForAll @DoubleRange(min = 1e3, max = 2e5) double upstreamPa,
            @ForAll @DoubleRange(min = 0.0, max = 0.999999) @Scale(6) double ratio) {
        double flow = OrificeFlow.massFlow(areaM2, upstreamPa, upstreamPa * ratio, 290.0);
        assertThat(OrificeFlow.area(flow, upstreamPa, upstreamPa * ratio, 290.0))
                .isCloseTo(areaM2, withinPercentage(1e-13));
    }

    @Property
    @Label("a cabin empties in a time that goes with volume over area, and adiabatic in less")
    void scales(
            @ForAll @DoubleRange(min = 10.0, max = 1000.0) double volume,
            @ForAll @DoubleRange(min = 1e-4, max = 1.0) @Scale(4) double area,
            @ForAll @DoubleRange(min = 1e3, max = 7e4) double outsidePa,
            @ForAll @DoubleRange(min = 0.01, max = 0.99) double left) {
        double from = 8e4;
        double to = outsidePa + left * (from - outsidePa);
        double held = BlowDown.timeS(volume, area, from, to, outsidePa, 297.0, CabinAir.ISOTHERMAL);
        double ofOne = BlowDown.timeS(1.0, 1.0, from, to, outsidePa, 297.0, CabinAir.ISOTHERMAL);
        double free = BlowDown.timeS(volume, area, from, to, outsidePa, 297.0, CabinAir.ADIABATIC);
        assertThat(held).isCloseTo(ofOne * volume / area, withinPercentage(1e-12));
        assertThat(held / free).isBetween(1.0, 1.4 + 1e-12);
    }

    @Property
    @Label("two parts of an emptying take as long as the whole, the choke between them or not")
    void partsAddUp(
            @ForAll @DoubleRange(min = 1e3, max = 7e4) double outsidePa,
            @ForAll @DoubleRange(min = 0.01, max = 0.98) double last,
            @ForAll @DoubleRange(min = 0.01, max = 0.99) double between) {
        double from = 8e4;
        double to = outsidePa + last * (from - outsidePa);
        double middle = to + between * (from - to);
        double whole = BlowDown.timeS(100.0, 0.01, from, to, outsidePa, 297.0, CabinAir.ISOTHERMAL);
        double first =
                BlowDown.timeS(100.0, 0.01, from, middle, outsidePa, 297.0, CabinAir.ISOTHERMAL);
        double second =
                BlowDown.timeS(100.0, 0.01, middle, to, outsidePa, 297.0, CabinAir.ISOTHERMAL);
        assertThat(first + second).isCloseTo(whole, within(1e-10 * whole));
    }

    @Property
    @Label("the leak that a test on the ground tells lets the differential halve in that time")
    void leakTest(
            @ForAll @DoubleRange(min = 1e3, max = 6e4) double differentialPa,
            @ForAll @DoubleRange(min = 5.0, max = 1e4) double seconds) {
        double area = BlowDown.leakArea(130.0, 295.0, differentialPa, 1e5, seconds);
        assertThat(
                        BlowDown.timeS(
                                130.0,
                                area,
                                1e5 + differentialPa,
                                1e5 + 0.5 * differentialPa,
                                1e5,
                                295.0,
                                CabinAir.ISOTHERMAL))
                .isCloseTo(seconds, withinPercentage(1e-11));
    }

    /** The textbook form, choked or {@code A pu sqrt(7 / (R T) (r^(10/7) - r^(12/7)))}. */
    private static BigDecimal inFiftyDigits(double area, double up, double down, double kelvins) {
        BigDecimal ratio = new BigDecimal(down).divide(new BigDecimal(up), DIGITS);
        BigDecimal critical =
                BigDecimalMath.pow(
                        new BigDecimal(2).divide(new BigDecimal("2.4"), DIGITS),
                        new BigDecimal("3.5"),
                        DIGITS);
        BigDecimal r = ratio.max(critical);
        BigDecimal seventh = BigDecimalMath.root(r, new BigDecimal(7), DIGITS);
        BigDecimal bracket = seventh.pow(10, DIGITS).subtract(seventh.pow(12, DIGITS));
        BigDecimal rt = new BigDecimal("287.05287").multiply(new BigDecimal(kelvins));
        return new BigDecimal(7)
                .multiply(bracket)
                .divide(rt, DIGITS)
                .sqrt(DIGITS)
                .multiply(new BigDecimal(area))
                .multiply(new BigDecimal(up));
    }
}
