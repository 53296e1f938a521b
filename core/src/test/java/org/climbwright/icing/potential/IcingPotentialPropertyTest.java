package org.climbwright.icing.potential;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.climbwright.icing.potential.FreezingLevel.Trend;
import org.climbwright.icing.potential.SeverityMatrix.CloudGroup;

@Label("Icing potential")
class IcingPotentialPropertyTest {
    /** Temperatures at levels a kilometre apart, and dew point depressions of zero and more. */
    @Provide
    Arbitrary<List<double[]>> levels() {
        return Combinators.combine(
                        Arbitraries.doubles().between(-60, 25).ofScale(2),
                        Arbitraries.doubles().between(0, 10).ofScale(2))
                .as((celsius, depression) -> new double[] {celsius, celsius - depression})
                .list()
                .ofMinSize(2)
                .ofMaxSize(8);
    }

    @Property(tries = 300)
    @Label("passages of 0 °C are those that the levels tell, ordered and by turns")
    void passages(@ForAll("levels") List<double[]> levels) {
        FreezingLevels found = FreezingLevels.in(air(levels));
        int expected = 0;
        double before = 0.0;
        for (double[] level : levels) {
            if (level[0] != 0.0) {
                expected += before * level[0] < 0.0 ? 1 : 0;
                before = level[0];
            }
        }
        assertThat(found.all()).hasSize(expected);
        for (int i = 0; i < expected; i++) {
            FreezingLevel level = found.all().get(i);
            assertThat(level.air().temperatureK()).isCloseTo(273.15, within(1e-7));
            if (i > 0) {
                FreezingLevel below = found.all().get(i - 1);
                assertThat(level.air().pressurePa()).isLessThan(below.air().pressurePa());
                assertThat(level.trend()).isNotEqualTo(below.trend());
            }
        }
        assertThat(WarmNose.in(air(levels)))
                .hasSize(
                        (int)
                                found.all().stream()
                                        .filter(level -> level.trend() == Trend.RISING)
                                        .count());
    }

    @Property(tries = 200)
    @Label("layers beyond the -8D line are those in which the rule is met at a point")
    void layersBeyondTheLine(
            @ForAll("levels") List<double[]> levels, @ForAll @DoubleRange(max = 1.0) double share) {
        ProfileAir air = air(levels);
        double pressurePa =
                air.range().highest() + share * (air.range().lowest() - air.range().highest());
        pressurePa = Math.max(air.range().lowest(), pressurePa);
        double altitudeM = ProfileAir.altitude(pressurePa);
        int i = Math.min(levels.size() - 2, (int) (altitudeM / 1000.0));
        double part = altitudeM / 1000.0 - i;
        double celsius = levels.get(i)[0] * (1.0 - part) + levels.get(i + 1)[0] * part;
        double dewPoint = levels.get(i)[1] * (1.0 - part) + levels.get(i + 1)[1] * part;
        double excess = celsius + 8.0 * (celsius - dewPoint);
        if (Math.abs(excess) < 1e-3) {
            return; // on an edge, where saturation's rounding decides
        }
        double at = pressurePa;
        boolean isInside =
                MinusEightD.spansIn(air).stream()
                        .anyMatch(
                                span ->
                                        span.bottom().pressurePa() >= at
                                                && span.top().pressurePa() <= at);
        assertThat(isInside).isEqualTo(excess < 0.0);
    }

    private static ProfileAir air(List<double[]> levels) {
        ProfileAir air = new ProfileAir();
        for (int i = 0; i < levels.size(); i++) {
            air.with(1000.0 * i, levels.get(i)[0], levels.get(i)[1]);
        }
        return air;
    }

    @Property
    @Label("the excess over the line takes the temperature once and the depression eight times")
    void monotonic(
            @ForAll @DoubleRange(min = 200, max = 300) double temperatureK,
            @ForAll @DoubleRange(max = 20) double depressionK) {
        double excess = MinusEightD.excess(temperatureK, temperatureK - depressionK);
        assertThat(MinusEightD.excess(temperatureK, temperatureK - depressionK - 1.0))
                .isCloseTo(excess + 8.0, within(1e-9));
        assertThat(MinusEightD.excess(temperatureK - 1.0, temperatureK - 1.0 - depressionK))
                .isCloseTo(excess - 1.0, within(1e-9));
    }

    @Property
    @Label("interests and potentials are from 0 to 1, and what is known of more only raises them")
    void zeroToOne(
            @ForAll @DoubleRange(min = 200, max = 300) double temperatureK,
            @ForAll @DoubleRange(max = 1) double humidity,
            @ForAll @DoubleRange(min = 200, max = 300) double cloudTopK,
            @ForAll @DoubleRange(min = -2, max = 2) double verticalVelocity,
            @ForAll @DoubleRange(max = 1) double cloudWaterGPerKg) {
        double initial = IcingInterest.initialPotential(temperatureK, humidity, cloudTopK);
        double potential =
                IcingInterest.potential(
                        initial, verticalVelocity, cloudWaterGPerKg / 1000.0, cloudTopK);
        assertThat(initial).isBetween(0.0, 1.0);
        assertThat(potential).isBetween(initial, 1.0);
        assertThat(IcingInterest.severityDamping(temperatureK)).isBetween(0.0, 1.0);
        assertThat(IcingInterest.ofTemperatureInConvection(temperatureK)).isBetween(0.0, 1.0);
    }

    @Property
    @Label("the powers of the interests agree with those of the library")
    void powers(
            @ForAll @DoubleRange(min = 248.2, max = 263.1) double coldK,
            @ForAll @DoubleRange(min = 268.2, max = 273.1) double warmK,
            @ForAll @DoubleRange(min = 0.5, max = 0.95) double humidity) {
        assertThat(IcingInterest.ofTemperature(coldK))
                .isCloseTo(Math.pow((coldK - 248.15) / 15.0, 1.5), within(1e-12));
        assertThat(IcingInterest.ofTemperature(warmK))
                .isCloseTo(Math.pow((273.15 - warmK) / 5.0, 0.75), within(1e-12));
        // the source writes the slope as 20/9
        assertThat(IcingInterest.ofRelativeHumidity(humidity))
                .isCloseTo(Math.pow(20.0 / 9.0 * (humidity - 0.5), 3.0), within(1e-12));
    }

    @Property
    @Label("the interest of temperature has no steps")
    void continuous(@ForAll @DoubleRange(min = 240, max = 280) double temperatureK) {
        // steepest at 273.15 K, like a power of 3/4
        double next = IcingInterest.ofTemperature(temperatureK + 1e-8);
        assertThat(next).isCloseTo(IcingInterest.ofTemperature(temperatureK), within(1e-6));
    }

    @Property
    @Label("the energy of convection speaks more the more there is, and never above 1 when mended")
    void energy(@ForAll @DoubleRange(max = 10000) double energyJPerKg) {
        double interest = IcingInterest.ofConvectiveEnergy(energyJPerKg);
        assertThat(interest).isBetween(0.0, 1.0);
        assertThat(IcingInterest.ofConvectiveEnergy(energyJPerKg + 10.0))
                .isGreaterThanOrEqualTo(interest);
    }

    @Property
    @Label("more water is never less severe, and both groups have one category")
    void moreWater(
            @ForAll @DoubleRange(max = 2) double waterGPerM3,
            @ForAll @DoubleRange(min = 220, max = 280) double temperatureK) {
        double waterKgPerM3 = waterGPerM3 / 1000.0;
        int index = SeverityMatrix.index(waterKgPerM3, temperatureK, CloudGroup.CONTINUOUS);
        int more = SeverityMatrix.index(2.0 * waterKgPerM3, temperatureK, CloudGroup.CONTINUOUS);
        int other = SeverityMatrix.index(waterKgPerM3, temperatureK, CloudGroup.INTERMITTENT);
        assertThat(more).isGreaterThanOrEqualTo(index);
        assertThat(SeverityMatrix.category(other)).isEqualTo(SeverityMatrix.category(index));
    }
}
