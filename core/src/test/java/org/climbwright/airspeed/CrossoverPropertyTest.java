package org.climbwright.airspeed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.temperature.IsaDeviation;

@Label("The crossover of any two speeds")
class CrossoverPropertyTest {
    @Provide
    Arbitrary<Double> knots() {
        return Arbitraries.doubles().between(150.0, 450.0).ofScale(3);
    }

    @Provide
    Arbitrary<Double> machs() {
        return Arbitraries.doubles().between(0.7, 2.5).ofScale(4);
    }

    @Provide
    Arbitrary<Double> deviations() {
        return Arbitraries.doubles().between(-40.0, 40.0).ofScale(2);
    }

    @Property(tries = 200)
    @Label("stands at the same pressure altitude however warm the air is")
    void temperatureHasNoPart(
            @ForAll("knots") double knots,
            @ForAll("machs") double mach,
            @ForAll("deviations") double kelvins) {
        CalibratedAirspeed cas = CalibratedAirspeed.ofKnots(knots);
        Crossover crossover = Crossover.of(cas, Mach.of(mach));
        PressureAltitude altitude = crossover.pressureAltitude();
        Atmosphere air = Atmosphere.withDeviationAtEachPressure(IsaDeviation.ofKelvins(kelvins));
        AirState there = air.at(altitude);
        Airspeeds byCas = Airspeeds.from(cas, there);
        Airspeeds byMach = Airspeeds.from(Mach.of(mach), there);
        // the altitude is good to some ulps: 1e-13 of the pressure
        double tas = byMach.trueAirspeed().inMetresPerSecond();
        assertThat(byCas.trueAirspeed().inMetresPerSecond()).isCloseTo(tas, within(1e-12 * tas));
        assertThat(crossover.trueAirspeed(air).inMetresPerSecond())
                .isCloseTo(tas, within(1e-12 * tas));
    }

    @Property
    @Label("is higher for a higher Mach number and lower for a faster airspeed")
    void moves(@ForAll("knots") double knots, @ForAll("machs") double mach) {
        double cas = CalibratedAirspeed.ofKnots(knots).inMetresPerSecond();
        double altitude = Crossover.altitude(cas, mach);
        assertThat(Crossover.altitude(cas, mach * 1.0001)).isGreaterThan(altitude);
        assertThat(Crossover.altitude(cas * 1.0001, mach)).isLessThan(altitude);
    }
}
