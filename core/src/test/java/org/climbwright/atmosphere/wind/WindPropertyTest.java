package org.climbwright.atmosphere.wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.climbwright.quantity.path.TrueDirection;
import org.climbwright.quantity.speed.WindSpeed;

@Label("A wind, from every direction")
class WindPropertyTest {
    @Provide
    Arbitrary<Double> degrees() {
        return Arbitraries.doubles().between(0.001, 359.999).ofScale(9);
    }

    @Provide
    Arbitrary<Double> components() {
        return Arbitraries.doubles().between(-120.0, 120.0).ofScale(6);
    }

    @Provide
    Arbitrary<Double> tracks() {
        return Arbitraries.doubles().between(0.0, 6.28).ofScale(9);
    }

    @Property
    @Label("comes back as reported: direction and speed")
    void reported(
            @ForAll("degrees") double degrees, @ForAll @IntRange(min = 1, max = 250) int knots) {
        Wind wind = Wind.from(TrueDirection.ofDegrees(degrees), WindSpeed.ofKnots(knots));
        // 4 ulp of a full turn and of the speed: sine, cosine, arc tangent and square root
        assertThat(wind.direction().inDegrees()).isCloseTo(degrees, within(4 * Math.ulp(360.0)));
        assertThat(wind.speed().inKnots()).isCloseTo(knots, within(4 * Math.ulp((double) knots)));
    }

    @Property
    @Label("splits along and across a track into its speed")
    void splits(
            @ForAll("components") double east,
            @ForAll("components") double north,
            @ForAll("tracks") double trackRad) {
        double along = Wind.alongTrack(east, north, trackRad);
        double across = Wind.acrossTrack(east, north, trackRad);
        double speed = Math.hypot(east, north);
        // 1e-15 of the speed is what both state
        assertThat(Math.hypot(along, across)).isCloseTo(speed, within(2e-15 * speed));
        assertThat(Math.abs(along)).isLessThanOrEqualTo(speed * (1.0 + 1e-15));
    }

    @Property
    @Label("is a headwind one way and as strong a tailwind the other")
    void theOtherWay(
            @ForAll("components") double east,
            @ForAll("components") double north,
            @ForAll("tracks") double trackRad) {
        // half a turn in a double is 1.2e-16 from half a turn, and the sum rounds by 4e-16
        double speed = Math.hypot(east, north);
        assertThat(Wind.alongTrack(east, north, trackRad + Math.PI))
                .isCloseTo(-Wind.alongTrack(east, north, trackRad), within(3e-15 * speed));
    }
}
