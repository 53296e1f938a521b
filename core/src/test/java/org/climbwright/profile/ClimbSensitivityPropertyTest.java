package org.climbwright.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.profile.ProfileScene.BOTTOM;
import static org.climbwright.profile.ProfileScene.LEVEL;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.climbwright.performance.Bleed;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.speed.AirspeedDifference;
import org.climbwright.quantity.speed.AlongTrackWind;
import org.climbwright.quantity.temperature.TemperatureDifference;

@Label("Any climb with one thing changed")
class ClimbSensitivityPropertyTest {
    /** One change of each kind, so far in its own unit, up or down. */
    private static List<ClimbChange> changes(double way) {
        double share = Math.max(-0.15, Math.min(0.2, 0.2 * way));
        return List.of(
                mass(3000 * way),
                ClimbChange.warmerBy(TemperatureDifference.ofKelvins(10 * way)),
                ClimbChange.windBy(AlongTrackWind.ofKnots(25 * way)),
                ClimbChange.calibratedAirspeedBy(AirspeedDifference.ofKnots(8 * way)),
                ClimbChange.machBy(0.01 * way),
                ClimbChange.accelerationShareBy(share));
    }

    private static ClimbChange mass(double moreKg) {
        return moreKg < 0.0
                ? ClimbChange.lighterBy(Mass.ofKilograms(-moreKg))
                : ClimbChange.heavierBy(Mass.ofKilograms(moreKg));
    }

    /** Without held levels and rates, which give time back or take it. */
    private static AeroplaneClimb free(long seed) {
        RandomClimbs random = new RandomClimbs(seed);
        return new AeroplaneClimb(
                random.aeroplane(),
                Mass.ofKilograms(56000),
                ClimbProgramme.of(random.speeds(), 0.3),
                random.air());
    }

    @Property(tries = 50)
    @Label("is the same to the last bit when nothing is changed")
    void nothing(@ForAll long seed) {
        AeroplaneClimb climb = new RandomClimbs(seed).climb();
        ClimbSensitivity sensitivity = ClimbSensitivity.of(climb, BOTTOM, LEVEL);
        for (ClimbChange nothing : changes(0.0)) {
            ClimbDifference same = sensitivity.to(nothing);
            assertThat(same.moreTimeS()).as(nothing.text()).isZero();
            assertThat(same.moreFuelKg()).as(nothing.text()).isZero();
            assertThat(same.moreDistanceM()).as(nothing.text()).isZero();
        }
    }

    @Property(tries = 50)
    @Label("differs by as much the other way, when it is changed back")
    void thereAndBack(@ForAll long seed, @ForAll @DoubleRange(min = -1, max = 1) double way) {
        AeroplaneClimb climb = free(seed);
        List<ClimbChange> there = changes(way);
        List<ClimbChange> back = changes(-way);
        for (int i = 0; i < there.size(); i++) {
            if (there.get(i).text().contains("excess power") && Math.abs(way) > 0.7) {
                continue; // the share itself is cut there
            }
            ClimbDifference one = ClimbSensitivity.of(climb, BOTTOM, LEVEL).to(there.get(i));
            AeroplaneClimb changed = there.get(i).of(climb, BOTTOM);
            ClimbDifference two = ClimbSensitivity.of(changed, BOTTOM, LEVEL).to(back.get(i));
            String text = there.get(i).text();
            // near a ceiling the time to it grows without bound with the last bits of all else
            assertThat(two.moreTimeS()).as(text).isCloseTo(-one.moreTimeS(), within(1e-3));
            assertThat(two.moreFuelKg()).as(text).isCloseTo(-one.moreFuelKg(), within(1e-3));
            assertThat(two.moreDistanceM()).as(text).isCloseTo(-one.moreDistanceM(), within(0.1));
        }
    }

    @Property(tries = 100)
    @Label("takes longer and more fuel with more mass, and ends no higher")
    void heavier(@ForAll long seed, @ForAll @DoubleRange(min = 100, max = 9000) double moreKg) {
        ClimbDifference heavier =
                ClimbSensitivity.of(free(seed), BOTTOM, LEVEL)
                        .to(ClimbChange.heavierBy(Mass.ofKilograms(moreKg)));
        assertThat(heavier.moreTimeS()).isPositive();
        assertThat(heavier.moreFuelKg()).isPositive();
        assertThat(heavier.higherTop().inMetres()).isNotPositive();
    }

    @Property(tries = 100)
    @Label("takes longer with bleed all the way, and ends no higher")
    void bleed(@ForAll long seed) {
        ClimbDifference bled =
                ClimbSensitivity.of(free(seed), BOTTOM, LEVEL)
                        .to(ClimbChange.bleedAllTheWay(Bleed.ENGINE));
        assertThat(bled.moreTimeS()).isPositive();
        assertThat(bled.higherTop().inMetres()).isNotPositive();
    }

    @Property(tries = 100)
    @Label("keeps time and fuel in more headwind, and is shorter by what the wind carries it back")
    void headwind(@ForAll long seed, @ForAll @DoubleRange(min = 1, max = 40) double knots) {
        ClimbDifference windy =
                ClimbSensitivity.of(free(seed), BOTTOM, LEVEL)
                        .to(ClimbChange.windBy(AlongTrackWind.ofKnots(-knots)));
        double timeS = windy.before().timeS();
        assertThat(windy.moreTimeS()).isCloseTo(0.0, within(1e-6));
        assertThat(windy.moreFuelKg()).isCloseTo(0.0, within(1e-6));
        double back = knots * 1852.0 / 3600.0 * timeS;
        // over the surface of the earth, which is up to 0.2 % shorter than the way in the air
        assertThat(windy.moreDistanceM()).isBetween(-back, -0.998 * back);
    }

    @Property(tries = 100)
    @Label("takes longer on a warmer day, since thrust falls with temperature here")
    void warmer(@ForAll long seed, @ForAll @DoubleRange(min = 1, max = 20) double kelvins) {
        ClimbDifference warmer =
                ClimbSensitivity.of(free(seed), BOTTOM, LEVEL)
                        .to(ClimbChange.warmerBy(TemperatureDifference.ofKelvins(kelvins)));
        assertThat(warmer.moreTimeS()).isPositive();
    }
}
