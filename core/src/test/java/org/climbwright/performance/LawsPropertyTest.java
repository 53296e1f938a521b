package org.climbwright.performance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.atmosphere.IcaoConstants.SEA_LEVEL_DENSITY_KG_PER_M3;

import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.climbwright.atmosphere.DryAir;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.quantity.altitude.PressureAltitude;

@Label("The laws of an aeroplane, for any figures")
class LawsPropertyTest {
    private static final EngineUse ONE = EngineUse.climb(1);
    private static final EngineUse TWO = EngineUse.climb(2);

    @Property
    @Label("at a lift, drag is least where lift over drag is largest")
    void leastDrag(
            @ForAll @DoubleRange(min = 0.005, max = 0.1) @Scale(6) double zeroLift,
            @ForAll @DoubleRange(min = 0.01, max = 0.2) @Scale(6) double induced,
            @ForAll @DoubleRange(min = 0.3, max = 3.0) @Scale(6) double share) {
        ParabolicPolar polar = ParabolicPolar.ofSi(100.0, zeroLift, induced);
        double coefficient = ParabolicClimb.liftCoefficientOfLeastDrag(zeroLift, induced);
        double q = 5e5 / (100.0 * coefficient);
        double least = polar.drag(5e5, 0.5, q, ONE);
        assertThat(5e5 / least)
                .isCloseTo(polar.maximumLiftToDrag(), within(1e-13 * polar.maximumLiftToDrag()));
        assertThat(polar.drag(5e5, 0.5, share * q, ONE))
                .isGreaterThanOrEqualTo(least * (1.0 - 1e-15));
    }

    @Property
    @Label("more lift, a higher Mach number and an engine that stands still never make less drag")
    void moreDrag(
            @ForAll @DoubleRange(min = 0.0, max = 2e6) @Scale(3) double lift,
            @ForAll @DoubleRange(min = 0.0, max = 1e6) @Scale(3) double more,
            @ForAll @DoubleRange(min = 0.2, max = 0.95) @Scale(6) double mach,
            @ForAll @DoubleRange(min = 0.0, max = 0.1) @Scale(6) double faster,
            @ForAll @DoubleRange(min = 1000.0, max = 3e4) @Scale(3) double q) {
        ParabolicPolar polar =
                ParabolicPolar.ofSi(120.0, 0.018, 0.043)
                        .withSweptWingRise(0.9, 0.12, 0.4)
                        .withEngineOutDrag(2, 0.6);
        double drag = polar.drag(lift, mach, q, TWO);
        assertThat(drag).isPositive();
        assertThat(polar.drag(lift + more, mach, q, TWO)).isGreaterThanOrEqualTo(drag);
        assertThat(polar.drag(lift, mach + faster, q, TWO)).isGreaterThanOrEqualTo(drag);
        assertThat(polar.drag(lift, mach, q, ONE) - drag)
                .isCloseTo(0.6 * q, within(1e-14 * (drag + q)));
    }

    @Property
    @Label("the rise of drag begins smoothly: a hundredth of a Mach number beyond, it is 2e-7")
    void rise(@ForAll @DoubleRange(min = 0.0, max = 0.8) @Scale(6) double liftCoefficient) {
        double q = 1e4;
        double lift = liftCoefficient * q * 100.0;
        ParabolicPolar plain = ParabolicPolar.ofSi(100.0, 0.02, 0.05);
        ParabolicPolar rising = plain.withCompressibilityRise(0.82, 0.12);
        double critical = 0.82 - 0.12 * liftCoefficient;
        assertThat(rising.drag(lift, critical - 1e-6, q, ONE))
                .isEqualTo(plain.drag(lift, critical - 1e-6, q, ONE));
        double rise =
                rising.drag(lift, critical + 0.01, q, ONE)
                        - plain.drag(lift, critical + 0.01, q, ONE);
        assertThat(rise / (q * 100.0)).isCloseTo(2e-7, within(1e-13));
    }

    @Property
    @Label("a jet's thrust has no step where its flat rating ends, and the bend changes its sign")
    void flatRating(
            @ForAll @DoubleRange(min = 0.1, max = 0.9) @Scale(6) double mach,
            @ForAll @DoubleRange(min = 0.0, max = 10500.0) @Scale(3) double altitude) {
        JetThrust jet =
                JetThrust.ofSi(1e5, 0.7).withMachLapse(0.6, 0.4).withFlatRating(15.0, 0.012);
        double pressure = StandardAir.pressureFromAltitude(altitude);
        double limit = StandardAir.temperatureFromPressure(pressure) + 15.0;
        DoubleUnaryOperator thrust = t -> jet.thrust(mach, pressure, t, TWO);
        double at = thrust.applyAsDouble(limit);
        assertThat(thrust.applyAsDouble(limit - 1e-6)).isCloseTo(at, within(1e-13 * at));
        assertThat(thrust.applyAsDouble(limit - 40.0)).isCloseTo(at, within(1e-13 * at));
        assertThat(thrust.applyAsDouble(limit + 1e-6)).isCloseTo(at, within(2e-8 * at));
        assertThat(thrust.applyAsDouble(limit + 10.0)).isCloseTo(0.88 * at, within(1e-12 * at));
        assertThat(jet.bend(mach, pressure, limit - 1e-6)).isPositive();
        assertThat(jet.bend(mach, pressure, limit + 1e-6)).isNegative();
    }

    @Property
    @Label("a propeller's thrust has no step where that at rest is reached, nor where power falls")
    void propeller(
            @ForAll @DoubleRange(min = 240.0, max = 310.0) @Scale(3) double temperature,
            @ForAll @DoubleRange(min = 500.0, max = 5000.0) @Scale(3) double altitude,
            @ForAll @DoubleRange(min = 0.06, max = 0.4) @Scale(6) double mach) {
        PropellerThrust plain = PropellerThrust.ofSi(134e3, 0.8, 2600.0);
        double pressure = StandardAir.pressureFromAltitude(altitude);
        double atRest =
                plain.slowestAtFullPower(pressure, temperature) / DryAir.speedOfSound(temperature);
        steps(m -> plain.thrust(m, pressure, temperature, ONE), atRest);
        assertThat(plain.bend(atRest * 0.999999, pressure, temperature)).isNegative();
        assertThat(plain.bend(atRest * 1.000001, pressure, temperature)).isPositive();

        PropellerThrust charged = plain.withSupercharger(PressureAltitude.ofMetres(altitude));
        double full =
                StandardAir.densityFromAltitude(altitude)
                        * DryAir.speedOfSound(temperature)
                        * DryAir.speedOfSound(temperature)
                        / 1.4;
        double faster = Math.max(mach, 0.15); // than at rest
        steps(p -> charged.thrust(faster, p, temperature, ONE), full);
        assertThat(charged.thrust(faster, 1.1 * full, temperature, ONE))
                .isCloseTo(charged.thrust(faster, full, temperature, ONE), within(1e-9));
        assertThat(charged.bend(faster, full * 1.000001, temperature)).isPositive();
        assertThat(charged.bend(faster, full * 0.999999, temperature)).isNegative();
    }

    private static void steps(DoubleUnaryOperator thrust, double at) {
        double value = thrust.applyAsDouble(at);
        assertThat(thrust.applyAsDouble(at * (1.0 - 1e-9))).isCloseTo(value, within(2e-9 * value));
        assertThat(thrust.applyAsDouble(at * (1.0 + 1e-9))).isCloseTo(value, within(2e-9 * value));
    }

    @Property
    @Label("a fuel flow is never below idle, nor below that of its thrust, and grows with it")
    void fuel(
            @ForAll @DoubleRange(min = 0.0, max = 2e5) @Scale(3) double thrust,
            @ForAll @DoubleRange(min = 1.0, max = 1e4) @Scale(3) double more) {
        ThrustSpecificFuel plain = ThrustSpecificFuel.ofSi(1.0e-5, 0.9e-5);
        ThrustSpecificFuel idling = plain.withIdle(0.12);
        double pressure = 5e4;
        double flow = idling.fuelFlow(thrust, 0.6, pressure, 260.0, TWO);
        double ofThrust = plain.fuelFlow(thrust, 0.6, pressure, 260.0, TWO);
        double idle = 2.0 * 0.12 * pressure / 101325.0;
        assertThat(flow)
                .isGreaterThanOrEqualTo(Math.max(idle, ofThrust) * (1.0 - 1e-15))
                .isLessThanOrEqualTo(1.19 * Math.max(idle, ofThrust));
        assertThat(idling.fuelFlow(thrust + more, 0.6, pressure, 260.0, TWO))
                .isGreaterThanOrEqualTo(flow);
    }

    @Property
    @Label("no other speed climbs better than the closed form's, nor steeper, nor sinks less")
    void bestSpeeds(
            @ForAll @DoubleRange(min = 0.005, max = 0.1) @Scale(6) double zeroLift,
            @ForAll @DoubleRange(min = 0.01, max = 0.2) @Scale(6) double induced,
            @ForAll @DoubleRange(min = 0.0, max = 0.5) @Scale(6) double thrustShare,
            @ForAll @DoubleRange(min = 10.0, max = 600.0) @Scale(3) double other) {
        double weight = 5e5;
        double rho = SEA_LEVEL_DENSITY_KG_PER_M3;
        double thrust = thrustShare * weight;
        DoubleUnaryOperator rate =
                v -> ParabolicClimb.rateOfClimb(weight, 100.0, zeroLift, induced, rho, thrust, v);
        double best =
                rate.applyAsDouble(
                        ParabolicClimb.speedOfBestClimb(
                                weight, 100.0, zeroLift, induced, rho, thrust));
        assertThat(rate.applyAsDouble(other)).isLessThanOrEqualTo(best + 1e-11);

        double sine = ParabolicClimb.steepestSine(weight, zeroLift, induced, thrust);
        double steep = ParabolicClimb.speedOfLeastDrag(weight, 100.0, zeroLift, induced, rho);
        assertThat(rate.applyAsDouble(steep) / steep).isCloseTo(sine, within(1e-14));
        assertThat(rate.applyAsDouble(other) / other).isLessThanOrEqualTo(sine + 1e-14);

        DoubleUnaryOperator glide =
                v -> -ParabolicClimb.rateOfClimb(weight, 100.0, zeroLift, induced, rho, 0.0, v);
        double least = ParabolicClimb.leastSink(weight, 100.0, zeroLift, induced, rho);
        double slow = ParabolicClimb.speedOfLeastPower(weight, 100.0, zeroLift, induced, rho);
        assertThat(glide.applyAsDouble(slow)).isCloseTo(least, within(1e-13 * least));
        assertThat(glide.applyAsDouble(other)).isGreaterThanOrEqualTo(least * (1.0 - 1e-13));
        assertThat(ParabolicClimb.speedOfBestClimb(weight, 100.0, zeroLift, induced, rho, 0.0))
                .isCloseTo(slow, within(1e-13 * slow));
    }

    @Property
    @Label("at constant power no other speed climbs steeper, nor better")
    void atPower(
            @ForAll @DoubleRange(min = 0.015, max = 0.1) @Scale(6) double zeroLift,
            @ForAll @DoubleRange(min = 0.03, max = 0.2) @Scale(6) double induced,
            @ForAll @DoubleRange(min = 0.0, max = 3e5) @Scale(3) double power,
            @ForAll @DoubleRange(min = 5.0, max = 100.0) @Scale(3) double other) {
        double weight = 13000.0;
        DoubleUnaryOperator sine =
                v ->
                        (power / v - ParabolicClimb.drag(weight, 16.0, zeroLift, induced, 1.2, v))
                                / weight;
        double steep =
                ParabolicClimb.speedOfSteepestClimbAtPower(
                        weight, 16.0, zeroLift, induced, 1.2, power);
        double best = ParabolicClimb.bestRateAtPower(weight, 16.0, zeroLift, induced, 1.2, power);
        assertThat(sine.applyAsDouble(other))
                .isLessThanOrEqualTo(sine.applyAsDouble(steep) + 1e-12);
        assertThat(other * sine.applyAsDouble(other)).isLessThanOrEqualTo(best + 1e-11);
        assertThat(steep)
                .isLessThanOrEqualTo(
                        ParabolicClimb.speedOfLeastDrag(weight, 16.0, zeroLift, induced, 1.2));
    }
}
