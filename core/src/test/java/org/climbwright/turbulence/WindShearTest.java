package org.climbwright.turbulence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.wind.Wind;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.path.TrueDirection;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.quantity.speed.WindSpeed;
import org.climbwright.quantity.temperature.IsaDeviation;
import org.climbwright.sounding.Sounding;
import org.climbwright.sounding.Soundings;
import org.climbwright.sounding.UnobservedWind;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The shear of the wind between two levels")
class WindShearTest {
    private static final Atmosphere AIR = Atmosphere.standard();
    private static final StaticPressure LOW = StaticPressure.ofHectopascals(700);
    private static final StaticPressure HIGH = StaticPressure.ofHectopascals(600);

    /** From the south below 650 hPa, from the west above: it turns and does not get faster. */
    private record Turning(double bendPa) implements Winds {
        @Override
        public double eastward(double pressurePa) {
            return pressurePa < bendPa ? 10.0 : 0.0;
        }

        @Override
        public double northward(double pressurePa) {
            return pressurePa < bendPa ? 0.0 : 10.0;
        }

        @Override
        public boolean covers(double pressurePa) {
            return pressurePa > 20000.0;
        }

        @Override
        public double[] bendsPa() {
            return new double[] {bendPa};
        }
    }

    @Test
    @DisplayName("is that of the vector: a wind that only turns shears too")
    void turning() {
        WindShear shear = WindShear.between(AIR, new Turning(65000.0), LOW, HIGH).orElseThrow();
        double depth =
                AIR.geopotentialAltitude(HIGH.inPascals())
                        - AIR.geopotentialAltitude(LOW.inPascals());
        assertThat(shear.changeMps()).isCloseTo(Math.sqrt(200.0), within(1e-12));
        assertThat(shear.depth().inMetres()).isCloseTo(depth, within(1e-9));
        assertThat(shear.perSecond()).isCloseTo(Math.sqrt(200.0) / depth, within(1e-15));
    }

    /** 6 kn in 1,000 ft is 0.0101 1/s, by the table of the rule of thumb. */
    @Test
    @DisplayName("has the unit of the rule of thumb")
    void unit() {
        Winds winds = new Turning(65000.0);
        WindShear shear = WindShear.between(AIR, winds, LOW, HIGH).orElseThrow();
        assertThat(shear.inKnotsPer1000Ft() * 0.0101 / 6.0)
                .isCloseTo(shear.perSecond(), within(0.005 * shear.perSecond()));
    }

    @Test
    @DisplayName("is not known where wind or air is not, and says which")
    void notKnown() {
        StaticPressure thin = StaticPressure.ofHectopascals(150);
        assertThat(WindShear.between(AIR, new Turning(65000.0), LOW, thin).reason().orElseThrow())
                .isEqualTo("the wind is not known at 150.0 hPa");
        Atmosphere shallow = Soundings.profile("w72357_oun_20110522_capped").atmosphere();
        assertThat(
                        WindShear.between(
                                        shallow,
                                        Winds.calm(),
                                        StaticPressure.ofHectopascals(1200),
                                        HIGH)
                                .reason()
                                .orElseThrow())
                .isEqualTo("the air is not known at 1200.0 hPa");
        assertThatExceptionOfType(IllegalArgumentException.class)
                .isThrownBy(() -> WindShear.between(AIR, Winds.calm(), HIGH, LOW))
                .withMessageStartingWith("the upper level must have less pressure");
        assertThatExceptionOfType(IllegalArgumentException.class)
                .isThrownBy(() -> WindShear.inStretches(AIR, Winds.calm(), HIGH, HIGH));
    }

    @Test
    @DisplayName("has no Richardson number without shear, and only a dry one without humidity")
    void richardson() {
        WindShear calm = WindShear.between(AIR, Winds.calm(), LOW, HIGH).orElseThrow();
        assertThat(calm.richardsonNumber().isKnown()).isFalse();
        assertThat(calm.richardsonNumberOfDryAir().reason().orElseThrow())
                .matches(
                        "the wind changes by 0\\.00 m/s over \\d+\\.\\d m, which has no Richardson"
                                + " number");
        Atmosphere unknown = Atmosphere.withDeviationAtEachPressure(IsaDeviation.ofKelvins(5.0));
        WindShear shear = WindShear.between(unknown, new Turning(65000.0), LOW, HIGH).orElseThrow();
        assertThat(shear.richardsonNumber().reason().orElseThrow())
                .isEqualTo("the humidity is not known at both levels");
        // by hand: theta 300 and 303 K, 500 m, 10 m/s: 9.80665 / 301.5 * 3 * 500 / 100
        assertThat(WindShear.richardsonNumber(300.0, 303.0, 500.0, 10.0))
                .isCloseTo(0.487894, within(1e-6));
        assertThat(WindShear.richardsonNumber(303.0, 300.0, 500.0, 10.0)).isNegative();
        // 0.910315 by a computation of its own, from the lapse and the gas equation alone
        assertThat(shear.richardsonNumberOfDryAir().orElseThrow())
                .isCloseTo(0.910315, within(1e-6));
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> WindShear.richardsonNumber(300.0, 303.0, 500.0, 0.0));
        assertThat(WindShear.covers(300.0, 303.0, Double.NaN, 1.0)).isFalse();
    }

    @Test
    @DisplayName("goes from bend to bend of air and winds, and is there larger than over the whole")
    void stretches() {
        Sounding sounding = Soundings.profile("w72357_oun_20110522_capped");
        Atmosphere air = sounding.atmosphere();
        Winds winds = sounding.winds(UnobservedWind.NOT_KNOWN);
        StaticPressure low = StaticPressure.ofHectopascals(900);
        StaticPressure high = StaticPressure.ofHectopascals(500);
        List<Answer<WindShear>> stretches = WindShear.inStretches(air, winds, low, high);
        assertThat(stretches).hasSizeGreaterThan(5).allMatch(Answer::isKnown);
        WindShear whole = WindShear.between(air, winds, low, high).orElseThrow();
        double largest = 0.0;
        double depth = 0.0;
        StaticPressure below = low;
        for (Answer<WindShear> stretch : stretches) {
            WindShear shear = stretch.orElseThrow();
            assertThat(shear.lower().staticPressure()).isEqualTo(below);
            below = shear.upper().staticPressure();
            largest = Math.max(largest, shear.perSecond());
            depth += shear.depth().inMetres();
        }
        assertThat(below).isEqualTo(high);
        assertThat(depth).isCloseTo(whole.depth().inMetres(), within(1e-6));
        assertThat(largest).isGreaterThan(whole.perSecond());
        assertThat(whole.richardsonNumber().isKnown()).isTrue();
        // its humidity falls with height: the dry number is the larger one
        assertThat(whole.richardsonNumberOfDryAir().orElseThrow())
                .isGreaterThan(whole.richardsonNumber().orElseThrow());
    }

    @Test
    @DisplayName("is none in a uniform wind, however strong")
    void uniform() {
        Winds winds =
                Winds.uniform(Wind.from(TrueDirection.ofDegrees(270), WindSpeed.ofKnots(100)));
        assertThat(WindShear.between(AIR, winds, LOW, HIGH).orElseThrow().perSecond()).isZero();
    }
}
