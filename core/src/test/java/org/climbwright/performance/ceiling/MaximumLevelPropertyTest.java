package org.climbwright.performance.ceiling;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.climbwright.path.SpeedSchedule;
import org.climbwright.performance.ClimbConditions;
import org.climbwright.performance.ClimbSpeeds;
import org.climbwright.performance.InventedAeroplanes;
import org.climbwright.performance.ceiling.LevelLimit.Kind;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.speed.PressureAltitudeRate;

@Label("The maximum level of any mass")
class MaximumLevelPropertyTest {
    private static final ClimbSpeeds SPEEDS =
            ClimbSpeeds.of(SpeedSchedule.of(CalibratedAirspeed.ofKnots(270), Mach.of(0.74)));

    @Provide
    Arbitrary<Double> masses() {
        return Arbitraries.doubles().between(45000.0, 80000.0).ofScale(1);
    }

    @Provide
    Arbitrary<Double> loadFactors() {
        return Arbitraries.doubles().between(1.0, 1.8).ofScale(3);
    }

    private static MaximumLevel of(double kg, double feetPerMinute, double loadFactor) {
        ClimbConditions conditions =
                InventedAeroplanes.conditions(InventedAeroplanes.CALM)
                        .withMass(Mass.ofKilograms(kg));
        return MaximumLevel.of(
                conditions,
                SPEEDS,
                PressureAltitude.ofFeet(2000),
                PressureAltitudeRate.ofFeetPerMinute(feetPerMinute),
                loadFactor);
    }

    private static double metres(MaximumLevel maximum, Kind kind) {
        return maximum.part(kind).level().orElseThrow().inMetres();
    }

    @Property(tries = 25)
    @Label("is the least of its parts, lower with mass, residual rate and load factor")
    void least(@ForAll("masses") double kg, @ForAll("loadFactors") double loadFactor) {
        MaximumLevel one = of(kg, 300.0, loadFactor);
        OptionalDouble least =
                one.parts().stream()
                        .flatMap(part -> part.level().stream())
                        .mapToDouble(PressureAltitude::inMetres)
                        .min();
        assertThat(one.level().orElseThrow().inMetres()).isEqualTo(least.orElseThrow());
        assertThat(metres(of(kg, 300.0, loadFactor + 0.1), Kind.BUFFET))
                .isLessThan(metres(one, Kind.BUFFET));
        MaximumLevel heavier = of(kg * 1.02, 300.0, loadFactor);
        assertThat(metres(heavier, Kind.BUFFET)).isLessThan(metres(one, Kind.BUFFET));
        assertThat(metres(heavier, Kind.THRUST)).isLessThan(metres(one, Kind.THRUST));
        assertThat(metres(of(kg, 500.0, loadFactor), Kind.THRUST))
                .isLessThan(metres(one, Kind.THRUST));
    }
}
