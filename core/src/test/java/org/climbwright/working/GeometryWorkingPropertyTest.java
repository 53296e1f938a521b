package org.climbwright.working;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.climbwright.gradient.ClimbGradient;
import org.climbwright.gradient.WindGradients;
import org.climbwright.gradient.leveling.LevelOff;
import org.climbwright.gradient.leveling.LevelOffLead;
import org.climbwright.gradient.leveling.LevelOffPlan;
import org.climbwright.gradient.leveling.LevelOffRule;
import org.climbwright.gradient.restriction.ClimbRequirement;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.path.GroundGradient;
import org.climbwright.quantity.speed.AlongTrackWind;
import org.climbwright.quantity.speed.GroundSpeed;
import org.climbwright.quantity.speed.PressureAltitudeRate;
import org.climbwright.quantity.speed.TrueAirspeed;
import org.climbwright.quantity.temperature.StaticAirTemperature;

@Label("Any working of the geometry of a climb")
class GeometryWorkingPropertyTest {
    @Property(tries = 300)
    @Label("of a gradient has the library's figures to the last bit, and true formulas")
    void rateForGradient(
            @ForAll @DoubleRange(min = 0.1, max = 50.0) double percent,
            @ForAll @DoubleRange(min = 40.0, max = 250.0) double tasMps,
            @ForAll @DoubleRange(min = -35.0, max = 35.0) double windMps) {
        GroundGradient mpm = GroundGradient.ofPercent(percent);
        TrueAirspeed tas = TrueAirspeed.ofMetresPerSecond(tasMps);
        AlongTrackWind wind = AlongTrackWind.ofMetresPerSecond(windMps);

        Working working = GradientWorking.rateForGradient(mpm, tas, wind);

        GroundSpeed ground = WindGradients.groundSpeed(mpm, tas, wind);
        assertThat(working.value("GS")).isEqualTo(ground.inMetresPerSecond());
        assertThat(working.value("ROC"))
                .isEqualTo(ClimbGradient.rate(mpm, ground).inMetresPerSecond());
        assertThat(working.value("Rf"))
                .isEqualTo(ClimbGradient.rate(mpm, ground).inFeetPerMinute());
        assertThat(working.value("Gf")).isEqualTo(mpm.inFeetPerNauticalMile());
        assertThat(working.value("Gair"))
                .isEqualTo(WindGradients.throughAir(mpm, tas, wind).inMetresPerMetre());
        WorkingCheck.holds(working);
    }

    @Property(tries = 300)
    @Label("of a restriction has the library's figures to the last bit, and true formulas")
    void restriction(
            @ForAll @DoubleRange(min = -1000.0, max = 15000.0) double fromM,
            @ForAll @DoubleRange(min = 10.0, max = 5000.0) double gainM,
            @ForAll @DoubleRange(min = 1000.0, max = 200000.0) double distanceM,
            @ForAll @DoubleRange(min = 40.0, max = 300.0) double groundMps,
            @ForAll @DoubleRange(min = 0.5, max = 30.0) double rateMps,
            @ForAll @DoubleRange(min = 200.0, max = 320.0) double temperatureK) {
        double levelM = fromM + gainM;
        Working working =
                GradientWorking.restriction(
                        PressureAltitude.ofMetres(fromM),
                        PressureAltitude.ofMetres(levelM),
                        GroundDistance.ofMetres(distanceM),
                        GroundSpeed.ofMetresPerSecond(groundMps),
                        PressureAltitudeRate.ofMetresPerSecond(rateMps),
                        StaticAirTemperature.ofKelvins(temperatureK));

        assertThat(working.value("Rreq"))
                .isEqualTo(ClimbRequirement.instrumentRate(fromM, levelM, distanceM, groundMps));
        assertThat(working.value("G"))
                .isEqualTo(ClimbRequirement.gradient(fromM, levelM, working.value("k"), distanceM));
        assertThat(working.value("dneed"))
                .isEqualTo(
                        ClimbGradient.distanceFor(
                                levelM - fromM, ClimbGradient.gradient(rateMps, groundMps)));
        boolean isEnough = working.value("Rreq") <= rateMps;
        if (Math.abs(working.value("dH")) > 1e-6) {
            assertThat(working.value("dH") > 0.0).isEqualTo(isEnough);
            assertThat(String.join(" ", working.answer()).contains("not met")).isEqualTo(!isEnough);
        }
        WorkingCheck.holds(working);
    }

    @Property(tries = 300)
    @Label("of a level-off has the figures of the plan to the last bit, and true formulas")
    void levelOff(
            @ForAll @DoubleRange(min = 1.0, max = 40.0) double rateMps,
            @ForAll @DoubleRange(min = 5.0, max = 30.0) double percent,
            @ForAll boolean inMetres) {
        LevelOffRule rule = inMetres ? LevelOffRule.icaoInMetres() : LevelOffRule.tradeFigure();
        PressureAltitudeRate rate = PressureAltitudeRate.ofMetresPerSecond(rateMps);
        LevelOffPlan plan = LevelOffPlan.of(rate, rule, LevelOffLead.ofPercentOfRate(percent));
        Assume.that(plan.beginsLevelling().inMetres() <= rule.heightToGo().inMetres());

        Working working = GradientWorking.levelOff(rate, rule, percent);

        assertThat(working.value("L")).isEqualTo(LevelOff.leadByPercent(rateMps, percent));
        assertThat(working.value("l")).isEqualTo(plan.beginsLevelling().inMetres());
        assertThat(working.value("t")).isEqualTo(plan.timeInForce().toNanos() / 1e9);
        assertThat(working.steps().stream().anyMatch(step -> step.symbol().equals("B")))
                .isEqualTo(plan.isReducedForRule());
        if (plan.isReducedForRule()) {
            assertThat(working.value("B")).isEqualTo(plan.beginsReducing().inMetres());
            assertThat(working.value("v")).isEqualTo(plan.rateInForce().inMetresPerSecond());
        }
        WorkingCheck.holds(working);
    }
}
