package org.climbwright.gradient.cloudtop;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.Scene;

@Label("The worst margin over any cloud")
class CloudTopPropertyTest {
    private static final double ROUNDING = 1e-4;

    private static final ClimbPath PATH =
            Scene.path(
                    Scene.rates(
                            Scene.row(0, 3500),
                            Scene.row(10000, 2000),
                            Scene.row(10000, 3000),
                            Scene.row(45000, 300)),
                    Atmosphere.standard(),
                    Winds.calm());

    @Property(tries = 150)
    @Label("is never better for a higher top, faster growth, a larger error or a nearer near edge")
    void isNeverBetter(
            @ForAll @DoubleRange(min = 5, max = 40) double near,
            @ForAll @DoubleRange(min = 0, max = 30) double width,
            @ForAll @DoubleRange(min = 5000, max = 35000) double top,
            @ForAll @DoubleRange(min = 0, max = 3000) double growth,
            @ForAll @DoubleRange(min = 0, max = 5) double error,
            @ForAll @DoubleRange(min = 0, max = 5) double more) {
        double worst = worst(top, near, near + width, growth, error);
        assertThat(worst(top + 100 * more, near, near + width, growth, error))
                .isLessThanOrEqualTo(worst + ROUNDING);
        assertThat(worst(top, near, near + width, growth + 100 * more, error))
                .isLessThanOrEqualTo(worst + ROUNDING);
        assertThat(worst(top, near, near + width, growth, error + more))
                .isLessThanOrEqualTo(worst + ROUNDING);
        assertThat(worst(top, near - more, near + width, growth, error))
                .isLessThanOrEqualTo(worst + ROUNDING);
    }

    @Property(tries = 100)
    @Label("is never better for a cloud that is nearer as a whole, unless it outgrows the climb")
    void nearer(
            @ForAll @DoubleRange(min = 5, max = 40) double near,
            @ForAll @DoubleRange(min = 0, max = 30) double width,
            @ForAll @DoubleRange(min = 0, max = 300) double growth,
            @ForAll @DoubleRange(min = 0, max = 5) double more) {
        assertThat(worst(20000, near - more, near - more + width, growth, 1.0))
                .isLessThanOrEqualTo(worst(20000, near, near + width, growth, 1.0) + ROUNDING);
    }

    @Property(tries = 100)
    @Label("is that of the worst of many points, sought one by one")
    void isTheWorstOfManyPoints(
            @ForAll @DoubleRange(min = 5, max = 40) double near,
            @ForAll @DoubleRange(min = 0, max = 30) double width,
            @ForAll @DoubleRange(min = 0, max = 3000) double growth) {
        double worst = worst(20000, near, near + width, growth, 0.0);
        double sought = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= 100; i++) {
            double mile = near + width * i / 100;
            sought = Math.min(sought, CloudTopTest.marginByHand(PATH, 20000, growth, mile));
        }
        assertThat(worst).isBetween(sought - 30.0, sought + ROUNDING); // between the points
    }

    private static double worst(double top, double near, double far, double growth, double error) {
        return CloudTop.along(PATH, CloudTopTest.cloud(3000, top, near, far, growth, error))
                .overCloud()
                .orElseThrow()
                .least()
                .inMetres();
    }
}
