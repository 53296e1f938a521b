package org.climbwright.icing.envelope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.icing.envelope.LimitMargin.Limit.LIQUID_WATER_CONTENT;

import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.temperature.StaticAirTemperature;

@Label("The design envelopes of icing")
class EnvelopePropertyTest {
    @Property
    @Label("have less water for larger drops, and for colder air")
    void monotone(
            @ForAll @Scale(6) @DoubleRange(min = 15.0, max = 40.0) double one,
            @ForAll @Scale(6) @DoubleRange(min = 15.0, max = 40.0) double other,
            @ForAll @DoubleRange(min = 243.15, max = 273.15) double cold,
            @ForAll @DoubleRange(min = 243.15, max = 273.15) double warm) {
        double small = Math.min(one, other) / 1e6;
        double large = Math.max(one, other) / 1e6;
        double low = Math.min(cold, warm);
        double high = Math.max(cold, warm);
        double most = ContinuousMaximum.liquidWaterContent(small, high);
        assertThat(ContinuousMaximum.liquidWaterContent(large, high)).isBetween(0.04e-3, most);
        assertThat(ContinuousMaximum.liquidWaterContent(small, low)).isBetween(0.04e-3, most);
        double cumulus = IntermittentMaximum.liquidWaterContent(small, high);
        assertThat(IntermittentMaximum.liquidWaterContent(large, high)).isBetween(0.05e-3, cumulus);
        assertThat(IntermittentMaximum.liquidWaterContent(small, low)).isBetween(0.05e-3, cumulus);
        assertThat(cumulus).as("cumulus holds more than layer cloud").isGreaterThan(most);
    }

    @Property
    @Label("are continuous: a step of a part in a billion is one of no more than so many")
    void continuous(
            @ForAll @Scale(6) @DoubleRange(min = 15.001, max = 39.999) double micrometres,
            @ForAll @DoubleRange(min = 243.2, max = 273.1) double temperature) {
        double diameter = micrometres / 1e6;
        double water = ContinuousMaximum.liquidWaterContent(diameter, temperature);
        assertThat(ContinuousMaximum.liquidWaterContent(diameter * (1.0 + 1e-9), temperature))
                .isCloseTo(water, within(1e-8 * water));
        assertThat(ContinuousMaximum.liquidWaterContent(diameter, temperature * (1.0 + 1e-9)))
                .isCloseTo(water, within(1e-7 * water));
    }

    @Property
    @Label("have less water over longer extents")
    void extent(
            @ForAll @DoubleRange(min = 9260.0, max = 574_120.0) double one,
            @ForAll @DoubleRange(min = 9260.0, max = 574_120.0) double other) {
        double shorter = ContinuousMaximum.extentFactor(Math.min(one, other));
        double longer = ContinuousMaximum.extentFactor(Math.max(one, other));
        assertThat(longer).isBetween(0.2, shorter);
        assertThat(shorter).isLessThanOrEqualTo(1.34);
    }

    @Property
    @Label("tell by how much there is too much water")
    void marginOfWater(
            @ForAll @Scale(6) @DoubleRange(min = 15.0, max = 40.0) double micrometres,
            @ForAll @DoubleRange(min = 243.15, max = 273.15) double temperature,
            @ForAll @DoubleRange(min = 5.0, max = 310.0) double nauticalMiles,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double grams) {
        double diameter = micrometres / 1e6;
        double water = grams / 1e3;
        GroundDistance extent = GroundDistance.ofNauticalMiles(nauticalMiles);
        LimitMargin margin =
                ContinuousMaximum.verdict(
                                PressureAltitude.ofFeet(5000),
                                StaticAirTemperature.ofKelvins(temperature),
                                diameter,
                                water,
                                extent)
                        .margin(LIQUID_WATER_CONTENT);
        double largest =
                ContinuousMaximum.liquidWaterContent(diameter, temperature)
                        * ContinuousMaximum.extentFactor(extent);
        assertThat(margin.margin().orElseThrow()).isCloseTo(largest - water, within(1e-15));
        assertThat(margin.isExceeded()).isEqualTo(margin.margin().orElseThrow() < 0.0);
    }

    @Property
    @Label("answer exactly where they say they do")
    void predicates(
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 60.0) double micrometres,
            @ForAll @DoubleRange(min = 200.0, max = 300.0) double temperature) {
        double diameter = micrometres / 1e6;
        boolean covers = ContinuousMaximum.coversLiquidWaterContent(diameter, temperature);
        assertThat(covers)
                .isEqualTo(
                        diameter >= 15e-6 * (1 - 1e-12)
                                && diameter <= 40e-6 * (1 + 1e-12)
                                && temperature >= 243.15 - 1e-9
                                && temperature <= 273.15 + 1e-9);
        try {
            ContinuousMaximum.liquidWaterContent(diameter, temperature);
            assertThat(covers).isTrue();
        } catch (IllegalArgumentException e) {
            assertThat(covers).isFalse();
        }
    }
}
