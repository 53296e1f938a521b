package org.climbwright.working;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.climbwright.airspeed.AirspeedConversion;
import org.climbwright.airspeed.Airspeeds;
import org.climbwright.airspeed.Crossover;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.temperature.IsaDeviation;

@Label("Any working of airspeeds")
class AirspeedWorkingPropertyTest {
    private static Atmosphere day(double deviationK) {
        return Atmosphere.withDeviationAtEachPressure(IsaDeviation.ofKelvins(deviationK));
    }

    @Property(tries = 300)
    @Label("from calibrated airspeed has the library's figures to the last bit, and true formulas")
    void casToMachAndTas(
            @ForAll @DoubleRange(min = 30.0, max = 200.0) double casMps,
            @ForAll @DoubleRange(min = -5000.0, max = 20000.0) double altitudeM,
            @ForAll @DoubleRange(min = -40.0, max = 40.0) double deviationK) {
        CalibratedAirspeed cas = CalibratedAirspeed.ofMetresPerSecond(casMps);
        PressureAltitude level = PressureAltitude.ofMetres(altitudeM);
        Atmosphere air = day(deviationK);
        double pressurePa = StandardAir.pressureFromAltitude(altitudeM);
        Assume.that(AirspeedConversion.machFromCas(casMps, pressurePa) <= 1.0);

        Working working = AirspeedWorking.casToMachAndTas(cas, level, air);

        Airspeeds speeds = Airspeeds.from(cas, air.at(level));
        assertThat(working.value("CAS")).isEqualTo(casMps);
        assertThat(working.value("Hp")).isEqualTo(altitudeM);
        assertThat(working.value("T")).isEqualTo(air.at(level).temperatureK());
        assertThat(working.value("p")).isEqualTo(air.at(level).pressurePa());
        assertThat(working.value("qc")).isEqualTo(AirspeedConversion.impactPressureFromCas(casMps));
        assertThat(working.value("M")).isEqualTo(speeds.mach().number());
        assertThat(working.value("TAS")).isEqualTo(speeds.trueAirspeed().inMetresPerSecond());
        WorkingCheck.holds(working);
    }

    @Property(tries = 300)
    @Label("of a crossover has the library's figures to the last bit, and true formulas")
    void crossover(
            @ForAll @DoubleRange(min = 100.0, max = 200.0) double casMps,
            @ForAll @DoubleRange(min = 0.5, max = 0.95) double number,
            @ForAll @DoubleRange(min = -40.0, max = 40.0) double oneK,
            @ForAll @DoubleRange(min = -40.0, max = 40.0) double anotherK) {
        Assume.that(Crossover.hasAltitude(casMps, number));
        Crossover crossover =
                Crossover.of(CalibratedAirspeed.ofMetresPerSecond(casMps), Mach.of(number));
        double altitudeM = crossover.pressureAltitude().inMetres();
        Assume.that(altitudeM >= -5000.0 && altitudeM <= 20000.0);

        Working working =
                AirspeedWorking.crossover(
                        crossover.calibratedAirspeed(), crossover.mach(), day(oneK), day(anotherK));

        assertThat(working.value("px")).isEqualTo(crossover.staticPressure().inPascals());
        assertThat(working.value("Hx")).isEqualTo(altitudeM);
        assertThat(working.value("TAS1"))
                .isEqualTo(crossover.trueAirspeed(day(oneK)).inMetresPerSecond());
        assertThat(working.value("TAS2"))
                .isEqualTo(crossover.trueAirspeed(day(anotherK)).inMetresPerSecond());
        WorkingCheck.holds(working);
    }

    @Property(tries = 300)
    @Label("of a climb at two speeds has at each level the slower of both, as the library has it")
    void constantCasThenMach(
            @ForAll @DoubleRange(min = 120.0, max = 180.0) double casMps,
            @ForAll @DoubleRange(min = 0.6, max = 0.9) double number,
            @ForAll @DoubleRange(min = 0.0, max = 20000.0) double levelM,
            @ForAll @DoubleRange(min = -30.0, max = 30.0) double deviationK) {
        CalibratedAirspeed cas = CalibratedAirspeed.ofMetresPerSecond(casMps);
        Mach mach = Mach.of(number);
        PressureAltitude level = PressureAltitude.ofMetres(levelM);
        Assume.that(Crossover.altitude(casMps, number) >= -5000.0);
        Atmosphere air = day(deviationK);

        Working working =
                AirspeedWorking.constantCasThenMach(cas, mach, air, List.of(level, level));

        double crossoverM = Crossover.altitude(casMps, number);
        String index = levelM < crossoverM ? "1" : "2";
        String other = levelM < crossoverM ? "2" : "1";
        Airspeeds atCas = Airspeeds.from(cas, air.at(level));
        Airspeeds atMach = Airspeeds.from(mach, air.at(level));
        double slowerMps =
                Math.min(
                        atCas.trueAirspeed().inMetresPerSecond(),
                        atMach.trueAirspeed().inMetresPerSecond());
        assertThat(working.value("TAS" + index)).isEqualTo(slowerMps);
        assertThat(working.value("TAS" + other))
                .isEqualTo(Crossover.of(cas, mach).trueAirspeed(air).inMetresPerSecond());
        assertThat(working.value("Hx")).isEqualTo(crossoverM);
        WorkingCheck.holds(working);
    }
}
