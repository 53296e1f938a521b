package org.climbwright.working;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.climbwright.airspeed.AirspeedConversion;
import org.climbwright.airspeed.TotalTemperature;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.atmosphere.altimetry.ColdAir;
import org.climbwright.cabin.CabinPressure;
import org.climbwright.icing.IcingRule;
import org.climbwright.icing.VisibleMoisture;
import org.climbwright.path.ClimbState;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.humidity.RelativeHumidity;
import org.climbwright.quantity.pressure.DifferentialPressure;
import org.climbwright.quantity.speed.EquivalentAirspeed;
import org.climbwright.quantity.temperature.IsaDeviation;
import org.climbwright.quantity.temperature.IsaDeviationAtAltitude;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.quantity.temperature.TemperatureDifference;
import org.climbwright.turbulence.GustLoad;
import org.climbwright.turbulence.GustVelocity;

@Label("Any working of air, ice, cabin or gust")
class AirWorkingPropertyTest {
    @Property(tries = 300)
    @Label("of a cold day has the library's figures to the last bit, and true formulas")
    void coldDay(
            @ForAll @DoubleRange(min = 50.0, max = 4000.0) double heightM,
            @ForAll @DoubleRange(min = -400.0, max = 4000.0) double elevationM,
            @ForAll @DoubleRange(min = 190.0, max = 320.0) double temperatureK) {
        GeopotentialAltitude elevation = GeopotentialAltitude.ofMetres(elevationM);
        GeopotentialAltitude published = GeopotentialAltitude.ofMetres(elevationM + heightM);
        Assume.that(published.inMetres() >= 0.0);

        Working working =
                AtmosphereWorking.coldDay(
                        published, elevation, StaticAirTemperature.ofKelvins(temperatureK));

        double above = working.value("h");
        assertThat(above).isEqualTo(published.minus(elevation).inMetres());
        assertThat(working.value("C"))
                .isEqualTo(ColdAir.aerodromeCorrection(above, temperatureK, elevationM));
        assertThat(working.value("Csea"))
                .isEqualTo(ColdAir.aerodromeCorrection(published.inMetres(), temperatureK, 0.0));
        assertThat(working.value("e"))
                .isEqualTo(ColdAir.errorAtIndicatedHeight(above, temperatureK, elevationM));
        WorkingCheck.holds(working);
    }

    @Property(tries = 300)
    @Label("of two meanings of a deviation has the figures of both atmospheres, and true formulas")
    void twoMeaningsOfDeviation(
            @ForAll @DoubleRange(min = -60.0, max = 40.0) double deviationK,
            @ForAll @DoubleRange(min = -4000.0, max = 11000.0) double levelM) {
        PressureAltitude level = PressureAltitude.ofMetres(levelM);
        AirState byAltitude =
                Atmosphere.withDeviationAtEachAltitude(IsaDeviationAtAltitude.ofKelvins(deviationK))
                        .at(level);
        AirState byPressure =
                Atmosphere.withDeviationAtEachPressure(IsaDeviation.ofKelvins(deviationK))
                        .at(level);
        double altitudeM = byAltitude.geopotentialAltitude().orElseThrow().inMetres();
        Assume.that(altitudeM <= 11000.0);

        Working working =
                AtmosphereWorking.twoMeaningsOfDeviation(
                        TemperatureDifference.ofKelvins(deviationK), level);

        assertThat(working.value("Ta")).isEqualTo(byPressure.temperatureK());
        assertThat(working.value("Ha"))
                .isEqualTo(byPressure.geopotentialAltitude().orElseThrow().inMetres());
        assertThat(working.value("Tb")).isEqualTo(byAltitude.temperatureK());
        assertThat(working.value("Hb")).isEqualTo(altitudeM);
        WorkingCheck.holds(working);
    }

    @Property(tries = 300)
    @Label("of a cabin has the library's figures to the last bit, and true formulas")
    void cabin(
            @ForAll @DoubleRange(min = -2000.0, max = 65000.0) double differentialPa,
            @ForAll @DoubleRange(min = 0.0, max = 20000.0) double levelM) {
        Assume.that(
                StandardAir.pressureFromAltitude(levelM) + differentialPa
                        > StandardAir.pressureFromAltitude(20000.0));
        Working working =
                CabinWorking.altitudeFromDifferential(
                        DifferentialPressure.ofPascals(differentialPa),
                        PressureAltitude.ofMetres(levelM));

        double cabinM = CabinPressure.cabinAltitude(differentialPa, levelM);
        assertThat(working.value("Hc")).isEqualTo(cabinM);
        assertThat(working.value("p")).isEqualTo(StandardAir.pressureFromAltitude(levelM));
        assertThat(working.value("pc")).isEqualTo(StandardAir.pressureFromAltitude(cabinM));
        WorkingCheck.holds(working);
    }

    @Property(tries = 300)
    @Label("of a gust has the library's figures to the last bit, and true formulas")
    void gust(
            @ForAll @DoubleRange(min = 500.0, max = 9000.0) double loadingPa,
            @ForAll @DoubleRange(min = 1.0, max = 12.0) double chordM,
            @ForAll @DoubleRange(min = 3.0, max = 7.0) double slope,
            @ForAll @DoubleRange(min = 0.0, max = 25.0) double gustMps,
            @ForAll @DoubleRange(min = 50.0, max = 200.0) double slowMps,
            @ForAll @DoubleRange(min = 50.0, max = 200.0) double fastMps,
            @ForAll @DoubleRange(min = 0.0, max = 13000.0) double levelM) {
        GustLoad wing = GustLoad.ofSi(loadingPa, chordM, slope);
        GustVelocity gust = GustVelocity.ofCallerInMetresPerSecond(gustMps);
        AirState air = Atmosphere.standard().at(PressureAltitude.ofMetres(levelM));
        EquivalentAirspeed slow = EquivalentAirspeed.ofMetresPerSecond(slowMps);
        EquivalentAirspeed fast = EquivalentAirspeed.ofMetresPerSecond(fastMps);

        Working working = GustWorking.atTwoSpeeds(wing, gust, air, slow, fast);

        assertThat(working.value("mu"))
                .isEqualTo(GustLoad.massRatio(loadingPa, air.densityKgPerM3(), chordM, slope));
        assertThat(working.value("Kg")).isEqualTo(wing.alleviationFactor(air));
        assertThat(working.value("dn1")).isEqualTo(wing.increment(gust, slow, air));
        assertThat(working.value("dn2")).isEqualTo(wing.increment(gust, fast, air));
        WorkingCheck.holds(working);
    }

    @Property(tries = 300)
    @Label("of icing conditions has the library's figures to the last bit, and true formulas")
    void totalOnStaticOff(
            @ForAll @DoubleRange(min = 0.0, max = 14000.0) double levelM,
            @ForAll @DoubleRange(min = 0.2, max = 0.9) double mach,
            @ForAll @DoubleRange(min = -40.0, max = 40.0) double deviationK) {
        AirState air =
                Atmosphere.withDeviationAtEachPressure(IsaDeviation.ofKelvins(deviationK))
                        .at(PressureAltitude.ofMetres(levelM));
        double casMps = AirspeedConversion.casFromMach(mach, air.pressurePa());
        ClimbState point =
                ClimbState.ofSi(
                        air, levelM, casMps, mach, 5.0, 6e4, Double.NaN, Double.NaN, 0.0, 0.0);
        IcingRule rule =
                IcingRule.engine(
                        VisibleMoisture.ofRelativeHumidity(RelativeHumidity.ofPercent(80)));

        Working working = IcingWorking.totalOnStaticOff(rule, List.of(point));

        assertThat(working.value("TAT1"))
                .isEqualTo(TotalTemperature.fromMach(mach, air.temperatureK(), 1.0));
        assertThat(working.value("SATon1"))
                .isEqualTo(TotalTemperature.staticFromMach(283.15, mach, 1.0));
        Working regulation =
                IcingWorking.totalOnStaticOff(
                        IcingRule.airframe(
                                VisibleMoisture.ofRelativeHumidity(RelativeHumidity.ofPercent(80))),
                        List.of(point));
        assertThat(regulation.value("SATon")).isEqualTo(278.15);
        assertThat(regulation.answer().get(0).endsWith("moisture is not known."))
                .isEqualTo(working.value("TAT1") <= 283.15 || air.temperatureK() <= 278.15);
        // humidity is not known in this air, so that cold air has no answer
        assertThat(working.answer().get(0))
                .endsWith(
                        working.value("TAT1") <= 283.15
                                ? "whether there is moisture is not known."
                                : "the rule is not met.");
        WorkingCheck.holds(working);
    }
}
