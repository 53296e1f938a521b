package org.climbwright.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.atmosphere.IcaoConstants.GRAVITY_MPS2;
import static org.climbwright.profile.ProfileScene.BOTTOM;
import static org.climbwright.profile.ProfileScene.LEVEL;

import java.util.stream.DoubleStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.atmosphere.wind.Wind;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.numeric.Quadrature;
import org.climbwright.path.ClimbState;
import org.climbwright.path.Side;
import org.climbwright.performance.Aeroplane;
import org.climbwright.performance.ClimbBalance;
import org.climbwright.performance.EngineUse;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.path.Mass;

@Label("Any climb by thrust and drag")
class ClimbProfilePropertyTest {
    private static final EngineUse CLIMB = EngineUse.climb(2);

    @Property(tries = 1000)
    @Label("is the same by the library's own integration and by one of eighth order")
    void bothIntegratorsAgree(@ForAll long seed) {
        AeroplaneClimb climb = new RandomClimbs(seed).climb();
        ClimbProfile own = climb.between(BOTTOM, LEVEL);
        ClimbProfile other = climb.betweenByDormandPrince(BOTTOM, LEVEL);
        assertThat(own.endsBecause()).isEqualTo(other.endsBecause());
        assertThat(own.top().inMetres()).isCloseTo(other.top().inMetres(), within(1e-3));
        assertThat(own.timeS()).isCloseTo(other.timeS(), within(0.01));
        assertThat(metres(own)).isCloseTo(metres(other), within(0.1));
        assertThat(own.fuel().inKilograms()).isCloseTo(other.fuel().inKilograms(), within(1e-3));
        assertThat(own.events())
                .extracting(ProfileEvent::kind, ProfileEvent::text)
                .isEqualTo(other.events().stream().map(e -> tuple(e.kind(), e.text())).toList());
        for (int i = 0; i < own.events().size(); i++) {
            ClimbState one = own.events().get(i).arriving();
            ClimbState two = other.events().get(i).arriving();
            // 0.1 ft and 0.01 s
            assertThat(one.pressureAltitude().inFeet())
                    .isCloseTo(two.pressureAltitude().inFeet(), within(0.1));
            assertThat(one.timeS()).isCloseTo(two.timeS(), within(0.01));
        }
    }

    @Property(tries = 200)
    @Label("changes by less than 0.01 s and 0.1 m when its steps are a tenth as long, everywhere")
    void finerSteps(@ForAll long seed) {
        AeroplaneClimb climb = new RandomClimbs(seed).climb();
        ClimbProfile own = climb.between(BOTTOM, LEVEL);
        ClimbProfile fine = climb.between(BOTTOM, LEVEL, new RungeKuttaStepper(), 20.0);
        double top = Math.min(own.top().inMetres(), fine.top().inMetres());
        for (int i = 0; i <= 50; i++) {
            PressureAltitude level =
                    PressureAltitude.ofMetres(
                            Math.min(top, BOTTOM.inMetres() + (top - BOTTOM.inMetres()) * i / 50));
            ClimbState one = own.at(level, Side.BELOW);
            ClimbState two = fine.at(level, Side.BELOW);
            assertThat(one.timeS()).isCloseTo(two.timeS(), within(0.01));
            assertThat(metres(one)).isCloseTo(metres(two), within(0.1));
            assertThat(one.mass().inKilograms()).isCloseTo(two.mass().inKilograms(), within(1e-3));
        }
    }

    @Property(tries = 200)
    @Label("has parts that add up in time, distance and fuel")
    void partsAddUp(@ForAll long seed, @ForAll @DoubleRange(min = 3000, max = 7900) double feet) {
        RandomClimbs random = new RandomClimbs(seed);
        AeroplaneClimb climb =
                new AeroplaneClimb(
                        random.aeroplane(),
                        Mass.ofKilograms(56000),
                        ClimbProgramme.of(random.speeds(), 0.3),
                        random.air());
        PressureAltitude middle = PressureAltitude.ofFeet(feet);
        ClimbProfile whole = climb.between(BOTTOM, LEVEL);
        ClimbProfile first = climb.between(BOTTOM, middle);
        ClimbState there = first.at(first.top());
        ClimbProfile second =
                new AeroplaneClimb(climb.aeroplane(), there.mass(), climb.programme(), climb.air())
                        .between(middle, LEVEL);
        assertThat(first.timeS() + second.timeS()).isCloseTo(whole.timeS(), within(1e-3));
        assertThat(metres(first) + metres(second)).isCloseTo(metres(whole), within(0.05));
        assertThat(first.fuel().inKilograms() + second.fuel().inKilograms())
                .isCloseTo(whole.fuel().inKilograms(), within(1e-3));
    }

    /**
     * In the moving air all the work of thrust over drag is height and speed, and what the wind's
     * change takes: {@code d(g0 H + V²/2) + V cos g dW = V (T - D) / m dt}.
     */
    @Property(tries = 200)
    @Label("gains the energy that thrust has over drag, less what the wind takes")
    void energy(@ForAll long seed, @ForAll @DoubleRange(min = -6, max = 6) double perKilometre) {
        RandomClimbs random = new RandomClimbs(seed);
        Aeroplane aeroplane = random.aeroplane();
        Atmosphere air = random.atmosphere();
        ProfileScene.ShearedWind wind = new ProfileScene.ShearedWind(5.0, perKilometre, 12.0);
        AeroplaneClimb climb =
                new AeroplaneClimb(
                        aeroplane,
                        Mass.ofKilograms(55000),
                        ClimbProgramme.of(random.speeds(), 0.4),
                        ProfileScene.air(air, wind));
        ClimbProfile profile = climb.between(BOTTOM, LEVEL);
        double work = 0.0;
        double gained = 0.0;
        double from = profile.bottom().inMetres();
        double[] bends = profile.bendsM();
        for (int i = 0; i <= bends.length; i++) {
            double to = i < bends.length ? bends[i] : profile.top().inMetres();
            int parts = (int) Math.ceil((to - from) / 50.0);
            for (int part = 0; part < parts; part++) {
                work +=
                        Quadrature.integrate(
                                h -> workPerMetre(profile, aeroplane, wind, h),
                                from + (to - from) * part / parts,
                                from + (to - from) * (part + 1) / parts);
            }
            gained += energy(profile, to, Side.BELOW) - energy(profile, from, Side.ABOVE);
            from = to;
        }
        assertThat(work / gained).isCloseTo(1.0, within(1e-9));
    }

    /** Energy per mass, in the moving air [J/kg]. */
    private static double energy(ClimbProfile profile, double levelM, Side side) {
        ClimbState state = profile.at(PressureAltitude.ofMetres(levelM), side);
        double tas = state.trueAirspeed().inMetresPerSecond();
        double height = state.air().geopotentialAltitude().orElseThrow().inMetres();
        return GRAVITY_MPS2 * height + 0.5 * tas * tas;
    }

    private static double workPerMetre(
            ClimbProfile profile, Aeroplane aeroplane, ProfileScene.ShearedWind wind, double h) {
        ClimbState state = profile.at(PressureAltitude.ofMetres(h));
        double pressure = state.air().pressurePa();
        double temperature = state.air().temperatureK();
        double mach = state.mach().number();
        double tas = state.trueAirspeed().inMetresPerSecond();
        double rate = state.pressureAltitudeRate().inMetresPerSecond();
        double mass = state.mass().inKilograms();
        double perMetre = temperature / StandardAir.temperatureFromPressure(pressure);
        double sine = rate * perMetre / tas;
        double drag =
                ClimbBalance.drag(
                        aeroplane, CLIMB, mass, mach, 0.7 * pressure * mach * mach, 1.0, sine);
        double thrust = aeroplane.thrust(mach, pressure, temperature, CLIMB);
        // the wind's own slope: along = a + b ln(p0 / p), and d(ln p) = -g0 / (R T_ISA) dHp
        double windPerMetre =
                wind.perKilometreMps()
                        / 1000.0
                        * 8000.0
                        * GRAVITY_MPS2
                        / (287.05287 * StandardAir.temperatureFromPressure(pressure));
        double cosine = Math.sqrt(1.0 - sine * sine);
        return tas * (thrust - drag) / mass / rate - tas * cosine * windPerMetre;
    }

    @Property(tries = 100)
    @Label("is never steeper for a heavier aeroplane")
    void heavier(@ForAll long seed, @ForAll @DoubleRange(min = 100, max = 9000) double moreKg) {
        RandomClimbs random = new RandomClimbs(seed);
        Aeroplane aeroplane = random.aeroplane();
        ClimbProgramme programme = ClimbProgramme.of(random.speeds(), 0.3);
        var air = random.air();
        ClimbProfile light =
                new AeroplaneClimb(aeroplane, Mass.ofKilograms(50000), programme, air)
                        .between(BOTTOM, LEVEL);
        ClimbProfile heavy =
                new AeroplaneClimb(aeroplane, Mass.ofKilograms(50000 + moreKg), programme, air)
                        .between(BOTTOM, LEVEL);
        assertThat(heavy.top()).isLessThanOrEqualTo(light.top());
        for (int i = 0; i <= 40; i++) {
            PressureAltitude level =
                    PressureAltitude.ofMetres(
                            BOTTOM.inMetres()
                                    + (heavy.top().inMetres() - BOTTOM.inMetres()) * i / 40);
            ClimbState one = light.at(level, Side.BELOW);
            ClimbState two = heavy.at(level, Side.BELOW);
            boolean isSameSpeed =
                    one.mach().equals(two.mach())
                            && one.calibratedAirspeed().equals(two.calibratedAirspeed());
            if (isSameSpeed) {
                assertThat(two.airGradient().inPercent()).isLessThan(one.airGradient().inPercent());
            }
        }
    }

    @Property(tries = 100)
    @Label("keeps its time and its rate in a wind that is the same everywhere")
    void uniformWind(
            @ForAll long seed,
            @ForAll @DoubleRange(min = -40, max = 40) double east,
            @ForAll @DoubleRange(min = -40, max = 40) double north) {
        RandomClimbs random = new RandomClimbs(seed);
        Atmosphere air = random.atmosphere();
        ClimbProgramme programme = ClimbProgramme.of(random.speeds(), 0.3);
        ClimbProfile calm =
                ProfileScene.climb(56000, programme, ProfileScene.air(air, Winds.calm()))
                        .between(BOTTOM, LEVEL);
        ClimbProfile windy =
                ProfileScene.climb(
                                56000,
                                programme,
                                ProfileScene.air(
                                        air, Winds.uniform(Wind.ofComponents(east, north))))
                        .between(BOTTOM, LEVEL);
        assertThat(windy.timeS()).isCloseTo(calm.timeS(), within(1e-9 * calm.timeS()));
        ClimbState one = calm.at(PressureAltitude.ofFeet(20000));
        ClimbState two = windy.at(PressureAltitude.ofFeet(20000));
        assertThat(two.airGradient().inPercent())
                .isCloseTo(one.airGradient().inPercent(), within(1e-9));
        assertThat(
                        Math.signum(
                                two.groundGradient().orElseThrow().inPercent()
                                        - one.groundGradient().orElseThrow().inPercent()))
                .isEqualTo(
                        -Math.signum(
                                two.groundSpeed().orElseThrow().inKnots()
                                        - one.groundSpeed().orElseThrow().inKnots()));
    }

    @Property(tries = 100)
    @Label("is steeper in a headwind that rises with height than in one that does not")
    void risingHeadwind(
            @ForAll long seed, @ForAll @DoubleRange(min = 0.5, max = 6) double perKilometre) {
        RandomClimbs random = new RandomClimbs(seed);
        Atmosphere air = random.atmosphere();
        ClimbProgramme programme = ClimbProgramme.of(random.speeds(), 0.3);
        PressureAltitude level = PressureAltitude.ofFeet(7000);
        ClimbState steady =
                ProfileScene.climb(56000, programme, ProfileScene.air(air, Winds.calm()))
                        .between(BOTTOM, LEVEL)
                        .at(level);
        ClimbState rising =
                ProfileScene.climb(
                                56000,
                                programme,
                                ProfileScene.air(
                                        air, new ProfileScene.ShearedWind(0.0, -perKilometre, 0.0)))
                        .between(BOTTOM, LEVEL)
                        .at(level);
        assertThat(rising.airGradient()).isGreaterThan(steady.airGradient());
    }

    @Property(tries = 100)
    @Label("is found again at the time and the distance of any of its levels")
    void roundTrip(@ForAll long seed, @ForAll @DoubleRange(min = 0, max = 1) double share) {
        ClimbProfile profile = new RandomClimbs(seed).climb().between(BOTTOM, LEVEL);
        PressureAltitude level =
                PressureAltitude.ofMetres(
                        BOTTOM.inMetres() + share * (profile.top().inMetres() - BOTTOM.inMetres()));
        ClimbState state = profile.at(level, Side.BELOW);
        assertThat(profile.at(state.time()).pressureAltitude().inMetres())
                .isCloseTo(level.inMetres(), within(1e-5));
        ClimbState byDistance = profile.at(state.distance().orElseThrow());
        assertThat(byDistance.pressureAltitude().inMetres())
                .isCloseTo(level.inMetres(), within(1e-5));
        assertThat(byDistance.timeS()).isCloseTo(state.timeS(), within(1e-6));
    }

    @Property(tries = 100)
    @Label("rises with time at the rate that it tells, between its bends")
    void slopes(@ForAll long seed, @ForAll @DoubleRange(min = 0, max = 1) double share) {
        ClimbProfile profile = new RandomClimbs(seed).climb().between(BOTTOM, LEVEL);
        double[] bends =
                DoubleStream.concat(
                                DoubleStream.of(profile.bendsM()),
                                DoubleStream.of(
                                        profile.bottom().inMetres(), profile.top().inMetres()))
                        .sorted()
                        .toArray();
        int i = (int) (share * (bends.length - 2));
        double middle = 0.5 * (bends[i] + bends[i + 1]);
        double near = Math.min(20.0, 0.25 * (bends[i + 1] - bends[i]));
        ClimbState state = profile.at(PressureAltitude.ofMetres(middle));
        double time =
                profile.at(PressureAltitude.ofMetres(middle + near)).timeS()
                        - profile.at(PressureAltitude.ofMetres(middle - near)).timeS();
        double rate = state.pressureAltitudeRate().inMetresPerSecond();
        assertThat(2.0 * near / time / rate).isCloseTo(1.0, within(1e-3));
    }

    private static double metres(ClimbProfile profile) {
        return metres(profile.at(profile.top(), Side.BELOW));
    }

    private static double metres(ClimbState state) {
        return state.distance().map(GroundDistance::inMetres).orElseThrow();
    }
}
