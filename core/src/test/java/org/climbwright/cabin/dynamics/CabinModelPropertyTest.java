package org.climbwright.cabin.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.cabin.CabinPlan;

@Label("A cabin that steps in time, whatever fails and wherever the aeroplane goes")
class CabinModelPropertyTest {
    /** Up to 10,000 ft/min either way, for a while, and what fails then. */
    record Leg(double rateMps, double stepS, int steps, CabinFailure failure) {}

    @Provide
    Arbitrary<List<Leg>> legs() {
        Arbitrary<CabinFailure> failures =
                Arbitraries.oneOf(
                        Arbitraries.doubles().between(0.0, 1.0).map(CabinFailure.InflowLost::new),
                        Arbitraries.doubles()
                                .between(0.0, 0.03)
                                .ofScale(4)
                                .map(CabinFailure.ValveStuck::new),
                        Arbitraries.doubles()
                                .between(0.0, 0.01)
                                .ofScale(5)
                                .map(CabinFailure.ExcessLeak::new),
                        Arbitraries.doubles()
                                .between(0.0, 3.0)
                                .ofScale(3)
                                .map(CabinFailure.Hole::new),
                        Arbitraries.just(new CabinFailure.ControllerStopped()));
        return Combinators.combine(
                        Arbitraries.doubles().between(-50.0, 50.0),
                        Arbitraries.doubles().between(0.005, 1.0).ofScale(3),
                        Arbitraries.integers().between(1, 300),
                        failures)
                .as(Leg::new)
                .list()
                .ofMinSize(1)
                .ofMaxSize(5);
    }

    @Property(tries = 300)
    @Label("stays between its relief settings, keeps its mass, and is not above the aeroplane else")
    void staysWithinItsLimits(
            @ForAll("legs") @Size(max = 5) List<Leg> legs,
            @ForAll CabinAir air,
            @ForAll @DoubleRange(min = 210.0, max = 310.0) double outsideK) {
        CabinPlan plan = Flights.plan();
        CabinHull hull = Flights.hull(air);
        CabinModel cabin = CabinModel.onGround(hull, plan);
        double atFirst = cabin.airMassKg();
        double most = plan.limits().relief().inPascals();
        double least = plan.limits().negativeRelief().inPascals();
        double level = plan.departure().inMetres();
        for (Leg leg : legs) {
            for (int i = 0; i < leg.steps(); i++) {
                level += leg.rateMps() * leg.stepS();
                level = Math.max(-300.0, Math.min(13_000.0, level));
                cabin.step(leg.stepS(), level, outsideK);
                assertThat(cabin.differentialPa()).isBetween(least - 1e-9, most + 1e-9);
                double outside = StandardAir.pressureFromAltitude(level);
                assertThat(cabin.cabinPressurePa()).isGreaterThanOrEqualTo(outside + least - 1e-9);
                assertThat(cabin.cabinTemperatureK()).isBetween(100.0, 500.0);
                assertThat(cabin.airMassKg() - atFirst)
                        .isCloseTo(cabin.massInKg() - cabin.massOutKg(), within(1e-9 * atFirst));
            }
            cabin.fail(leg.failure());
        }
    }

    @Property(tries = 200)
    @Label(
            "never climbs faster than its limit while the controller works and the differential"
                    + " allows")
    void keepsItsRate(
            @ForAll @DoubleRange(min = 500.0, max = 3000.0) double feetPerMinute,
            @ForAll @DoubleRange(min = 0.01, max = 1.0) double stepS) {
        CabinPlan plan = Flights.plan();
        CabinModel cabin = CabinModel.onGround(Flights.hull(CabinAir.ISOTHERMAL), plan);
        double up = plan.rates().up().inMetresPerSecond();
        double down = plan.rates().down().inMetresPerSecond();
        double scheduled = plan.limits().scheduled().inPascals();
        double level = plan.departure().inMetres();
        for (int i = 0; i < 1500; i++) {
            level = Math.min(10_668.0, level + feetPerMinute * 0.3048 / 60.0 * stepS);
            cabin.step(stepS, level, 250.0);
            assertThat(cabin.differentialPa()).isLessThanOrEqualTo(scheduled + 1e-6);
            boolean pressed = cabin.differentialPa() > scheduled - 1.0;
            if (!pressed) {
                assertThat(cabin.cabinRateMps()).isBetween(-down - 1e-6, up + 1e-6);
            }
        }
    }
}
