package org.climbwright.path;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.wind.Wind;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.quantity.altitude.PressureAltitude;

@Label("Any climb by a table of rates")
class ClimbPathPropertyTest {

    @Property(tries = 200)
    @Label("has parts that add up to the whole")
    void partsAddUp(
            @ForAll @DoubleRange(min = 1001, max = 34999) double feet,
            @ForAll @DoubleRange(min = 800, max = 4000) double low,
            @ForAll @DoubleRange(min = 300, max = 800) double high,
            @ForAll @DoubleRange(min = -30, max = 30) double east,
            @ForAll @DoubleRange(min = -30, max = 30) double north) {
        ClimbRates rates = Scene.rates(Scene.row(0, low), Scene.row(40000, high));
        Winds winds = Winds.uniform(Wind.ofComponents(east, north));
        Climb climb = Scene.climb(rates, Atmosphere.standard(), winds);
        PressureAltitude bottom = PressureAltitude.ofFeet(1000);
        PressureAltitude middle = PressureAltitude.ofFeet(feet);
        PressureAltitude top = PressureAltitude.ofFeet(35000);
        ClimbState whole = end(climb.between(bottom, top));
        ClimbState first = end(climb.between(bottom, middle));
        ClimbState second = end(climb.between(middle, top));
        // 1e-9: what the integration claims
        assertThat(first.timeS() + second.timeS())
                .isCloseTo(whole.timeS(), within(1e-9 * whole.timeS()));
        assertThat(metres(first) + metres(second))
                .isCloseTo(metres(whole), within(1e-9 * metres(whole)));
    }

    @Property(tries = 200)
    @Label(
            "takes longer and goes farther the higher it is, and remembers the level it was asked"
                    + " at")
    void grows(
            @ForAll @DoubleRange(min = 1000, max = 35000) double one,
            @ForAll @DoubleRange(min = 1000, max = 35000) double other) {
        ClimbPath path = Scene.calmStandardClimb();
        ClimbState lower = path.at(PressureAltitude.ofFeet(Math.min(one, other)));
        ClimbState higher = path.at(PressureAltitude.ofFeet(Math.max(one, other)));
        assertThat(higher.timeS()).isGreaterThanOrEqualTo(lower.timeS());
        assertThat(metres(higher)).isGreaterThanOrEqualTo(metres(lower));
        assertThat(lower.pressureAltitude().inFeet()).isEqualTo(Math.min(one, other));
    }

    private static ClimbState end(ClimbPath path) {
        return path.at(path.top(), Side.BELOW);
    }

    private static double metres(ClimbState state) {
        return state.distance().orElseThrow().inMetres();
    }
}
