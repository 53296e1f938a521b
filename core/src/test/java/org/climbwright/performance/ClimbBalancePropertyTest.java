package org.climbwright.performance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.climbwright.quantity.path.Mass;

@Label("The balance of forces of any aeroplane")
class ClimbBalancePropertyTest {
    private static final double G0 = 9.80665;
    private static final EngineUse USE = EngineUse.climb(2);

    @Provide
    Arbitrary<Aeroplane> jets() {
        return InventedAeroplanes.jets();
    }

    @Provide
    Arbitrary<Double> loads() {
        return Arbitraries.doubles().between(2500.0, 7000.0).ofScale(6);
    }

    @Provide
    Arbitrary<Double> pressures() {
        return Arbitraries.doubles().between(20000.0, 101325.0).ofScale(6);
    }

    @Provide
    Arbitrary<Double> dynamics() {
        return Arbitraries.doubles().between(4000.0, 12000.0).ofScale(6);
    }

    @Provide
    Arbitrary<Double> factors() {
        return Arbitraries.doubles().between(-0.15, 0.4).ofScale(6);
    }

    @Provide
    Arbitrary<Double> winds() {
        return Arbitraries.doubles().between(-0.25, 0.25).ofScale(6);
    }

    @Property(tries = 500)
    @Label("is met by the sine that it gives, and by the thrust that this sine takes")
    void isMet(
            @ForAll("jets") Aeroplane jet,
            @ForAll("loads") double load,
            @ForAll("pressures") double pressure,
            @ForAll("dynamics") double dynamic,
            @ForAll("factors") double factor,
            @ForAll("winds") double wind) {
        double mass = InventedAeroplanes.mass(jet, load).inKilograms();
        double mach = Math.sqrt(dynamic / (0.7 * pressure));
        double thrust = jet.thrust(mach, pressure, 250.0, USE);
        double sine =
                ClimbBalance.sine(jet, USE, thrust, mass, mach, dynamic, 1.1, 1.0, factor, wind);
        double cosine = Math.sqrt(1.0 - sine * sine);
        double drag = ClimbBalance.drag(jet, USE, mass, mach, dynamic, 1.1, sine);
        assertThat(sine * (1.0 + factor + wind * cosine))
                .isCloseTo((thrust - drag) / (mass * G0), within(1e-13));
        assertThat(ClimbBalance.thrust(drag, mass, sine, factor, wind))
                .isCloseTo(thrust, within(1e-13 * mass * G0));
    }

    @Property(tries = 500)
    @Label("keeps energy: power goes into height, speed and the wind")
    void keepsEnergy(
            @ForAll("jets") Aeroplane jet,
            @ForAll("loads") double load,
            @ForAll("pressures") double pressure,
            @ForAll("dynamics") double dynamic,
            @ForAll("factors") double factor,
            @ForAll("winds") double wind) {
        Mass mass = InventedAeroplanes.mass(jet, load);
        double kg = mass.inKilograms();
        double tas = Math.sqrt(dynamic / (0.7 * pressure)) * 320.0;
        double mach = tas / 320.0;
        double thrust = jet.thrust(mach, pressure, 250.0, USE);
        double sine =
                ClimbBalance.sine(jet, USE, thrust, kg, mach, dynamic, 1.0, 1.0, factor, wind);
        double drag = ClimbBalance.drag(jet, USE, kg, mach, dynamic, 1.0, sine);
        double climbs = tas * sine; // dH/dt
        double accelerates = factor * G0 / tas * climbs; // dV/dt
        double windChanges = wind * G0 / tas * climbs; // dW/dt
        double cosine = Math.sqrt(1.0 - sine * sine);
        assertThat(tas * (thrust - drag) / kg)
                .isCloseTo(
                        G0 * climbs + tas * accelerates + tas * cosine * windChanges,
                        within(1e-10));
        assertThat(ClimbMotion.specificExcessPower(tas, thrust, drag, kg))
                .isCloseTo(tas * (thrust - drag) / kg / G0, within(1e-12));
    }

    @Property(tries = 300)
    @Label("counts an acceleration as thrust that is not there")
    void acceleration(
            @ForAll("jets") Aeroplane jet,
            @ForAll("loads") double load,
            @ForAll("dynamics") double dynamic) {
        double mass = InventedAeroplanes.mass(jet, load).inKilograms();
        double thrust = jet.thrust(0.5, 60000.0, 250.0, USE);
        double left = ClimbMotion.thrustLeft(thrust, mass, 0.3);
        double sine = ClimbBalance.sine(jet, USE, left, mass, 0.5, dynamic, 1.0, 1.0, 0.0, 0.0);
        double drag = ClimbBalance.drag(jet, USE, mass, 0.5, dynamic, 1.0, sine);
        assertThat(thrust - drag).isCloseTo(mass * (G0 * sine + 0.3), within(1e-12 * mass * G0));
    }
}
