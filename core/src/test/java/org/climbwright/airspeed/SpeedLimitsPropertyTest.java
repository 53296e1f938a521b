package org.climbwright.airspeed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;

/** The limits are invented. */
@Label("A band of speeds, at any level")
class SpeedLimitsPropertyTest {
    private static final double LOWEST_CAS = 100.0;
    private static final double HIGHEST_CAS = 175.0;
    private static final double LOWEST_MACH = 0.5;
    private static final double HIGHEST_MACH = 0.85;
    private static final SpeedLimits LIMITS =
            SpeedLimits.of(
                    CalibratedAirspeed.ofMetresPerSecond(LOWEST_CAS),
                    CalibratedAirspeed.ofMetresPerSecond(HIGHEST_CAS),
                    Mach.of(LOWEST_MACH),
                    Mach.of(HIGHEST_MACH));

    @Provide
    Arbitrary<Double> levels() {
        return Arbitraries.doubles().between(-1000.0, 20000.0).ofScale(6);
    }

    @Property
    @Label("keeps every limit at its ends, and one of them is reached")
    void ends(@ForAll("levels") double altitudeM) {
        double p = StandardAir.pressureFromAltitude(altitudeM);
        double highest = LIMITS.highestCas(p);
        double most = AirspeedConversion.casFromMach(HIGHEST_MACH, p);
        assertThat(highest).isCloseTo(Math.min(HIGHEST_CAS, most), within(1e-12));
        double lowest = LIMITS.lowestCas(p);
        double least = AirspeedConversion.casFromMach(LOWEST_MACH, p);
        assertThat(lowest).isCloseTo(Math.max(LOWEST_CAS, least), within(1e-12));
        assertThat(LIMITS.marginToHighest(highest, p)).isZero();
        assertThat(LIMITS.marginToLowest(lowest, p)).isZero();
    }

    @Property
    @Label("has its upper end no higher and its lower end no higher at a higher level")
    void withAltitude(@ForAll("levels") double altitudeM) {
        double p = StandardAir.pressureFromAltitude(altitudeM);
        double above = 0.9 * p;
        assertThat(LIMITS.highestCas(above)).isLessThanOrEqualTo(LIMITS.highestCas(p));
        assertThat(LIMITS.lowestCas(above)).isLessThanOrEqualTo(LIMITS.lowestCas(p));
    }
}
