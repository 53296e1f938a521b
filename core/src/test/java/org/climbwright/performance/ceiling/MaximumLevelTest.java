package org.climbwright.performance.ceiling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.climbwright.airspeed.AirspeedConversion;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.path.Side;
import org.climbwright.path.SpeedSchedule;
import org.climbwright.performance.Aeroplane;
import org.climbwright.performance.AeroplaneLimits;
import org.climbwright.performance.ClimbConditions;
import org.climbwright.performance.ClimbSpeed;
import org.climbwright.performance.ClimbSpeeds;
import org.climbwright.performance.HeldSpeed;
import org.climbwright.performance.InventedAeroplanes;
import org.climbwright.performance.ceiling.LevelLimit.Kind;
import org.climbwright.performance.ceiling.LevelLimit.Standing;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.AirGradient;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.speed.PressureAltitudeRate;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The maximum level")
class MaximumLevelTest {
    private static final PressureAltitude FROM = PressureAltitude.ofFeet(3000);
    private static final PressureAltitudeRate RESIDUAL = PressureAltitudeRate.ofFeetPerMinute(300);
    private static final ClimbSpeeds SPEEDS =
            ClimbSpeeds.of(
                    SpeedSchedule.of(CalibratedAirspeed.ofKnots(280), Mach.of(0.75))
                            .withLimit(
                                    CalibratedAirspeed.ofKnots(250),
                                    PressureAltitude.ofFeet(10000)));
    private static final ClimbConditions TWIN =
            InventedAeroplanes.conditions(InventedAeroplanes.CALM);

    private static MaximumLevel of(ClimbConditions conditions) {
        return MaximumLevel.of(conditions, SPEEDS, FROM, RESIDUAL, 1.3);
    }

    private static double metres(LevelLimit limit) {
        return limit.level().orElseThrow().inMetres();
    }

    @Test
    @DisplayName("by thrust leaves the residual rate and no more")
    void thrust() {
        PressureAltitude level = of(TWIN).part(Kind.THRUST).level().orElseThrow();
        ClimbSpeed speed = SPEEDS.at(level.inMetres(), Side.BELOW);
        assertThat(TWIN.at(level, Side.BELOW, speed).pressureAltitudeRate().inFeetPerMinute())
                .isCloseTo(300.0, within(1e-5));
        PressureAltitude higher = PressureAltitude.ofMetres(level.inMetres() + 1.0);
        assertThat(TWIN.at(higher, speed).pressureAltitudeRate().inFeetPerMinute())
                .isLessThan(300.0);
        double at100 =
                metres(
                        MaximumLevel.of(
                                        TWIN,
                                        SPEEDS,
                                        FROM,
                                        PressureAltitudeRate.ofFeetPerMinute(100),
                                        1.3)
                                .part(Kind.THRUST));
        assertThat(at100).isGreaterThan(level.inMetres());
    }

    @Test
    @DisplayName("by buffet is where 1.3 g takes all of the lift, by hand")
    void buffet() {
        double level = metres(of(TWIN).part(Kind.BUFFET));
        // Mach 0.75 and its 0.85: p = n m g0 / (0.7 M² CL S)
        double pressure = 1.3 * 60000.0 * 9.80665 / (0.7 * 0.5625 * 0.85 * 120.0);
        assertThat(level).isCloseTo(StandardAir.altitudeFromPressure(pressure), within(2e-6));
    }

    @Test
    @DisplayName("is the lowest of its parts, and names it")
    void lowest() {
        MaximumLevel light = of(TWIN);
        assertThat(light.isComplete()).isTrue();
        assertThat(metres(light.part(Kind.CERTIFIED_CEILING))).isEqualTo(41000 * 0.3048);
        MaximumLevel heavy = of(TWIN.withMass(Mass.ofKilograms(75000)));
        for (MaximumLevel maximum : List.of(light, heavy)) {
            double least =
                    maximum.parts().stream()
                            .mapToDouble(MaximumLevelTest::metres)
                            .min()
                            .orElseThrow();
            assertThat(maximum.level().orElseThrow().inMetres()).isEqualTo(least);
            assertThat(metres(maximum.limiting().orElseThrow())).isEqualTo(least);
        }
        assertThat(heavy.level().orElseThrow()).isLessThan(light.level().orElseThrow());
        assertThat(light.parts()).hasSize(3);
        assertThat(light.parts().toString()).contains("certified ceiling 41000 ft: ");
        assertThat(light.toString())
                .matches("maximum level \\d{5} ft: certified ceiling 41000 ft: .*; thrust .*")
                .doesNotContain("_")
                .doesNotContain("[");
    }

    @Test
    @DisplayName("is only the lowest known where limits are not given")
    void unknown() {
        ClimbConditions bare =
                ClimbConditions.of(
                        TWIN.aeroplane().withLimits(AeroplaneLimits.none()),
                        TWIN.air(),
                        TWIN.mass());
        MaximumLevel maximum = of(bare);
        assertThat(maximum.isComplete()).isFalse();
        assertThat(maximum.part(Kind.BUFFET).standing()).isEqualTo(Standing.NOT_KNOWN);
        assertThat(maximum.part(Kind.BUFFET).level()).isEmpty();
        assertThat(maximum.part(Kind.CERTIFIED_CEILING).reason())
                .isEqualTo("no certified ceiling was given for the aeroplane");
        assertThat(maximum.toString())
                .contains(" ft by the limits that are known: certified ceiling not known: no");
        assertThat(maximum.limiting().orElseThrow().kind()).isEqualTo(Kind.THRUST);
        assertThatThrownBy(() -> maximum.part(Kind.NET_GRADIENT))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    @DisplayName("is none where not even the start is reached")
    void belowTheStart() {
        MaximumLevel maximum = of(TWIN.withMass(Mass.ofKilograms(300000)));
        LevelLimit thrust = maximum.part(Kind.THRUST);
        assertThat(thrust.standing()).isEqualTo(Standing.BELOW_THE_START);
        assertThat(maximum.toString())
                .startsWith("maximum level below the start")
                .contains("; thrust below the start: ");
        assertThat(thrust.reason())
                .startsWith("there is less than a rate of climb of 300 ft/min already at 3000 ft");
        assertThat(maximum.limiting()).contains(thrust);
        assertThat(maximum.level()).isEmpty();
    }

    @Test
    @DisplayName("is not limited by a thrust that lasts to the end of the air")
    void aboveTheEnd() {
        Aeroplane rocket =
                Aeroplane.of(
                        1,
                        (liftN, mach, q, use) -> 1000.0,
                        (mach, pressurePa, temperatureK, use) -> 20000.0,
                        (thrustN, mach, pressurePa, temperatureK, use) -> 1.0);
        ClimbConditions up =
                ClimbConditions.of(rocket, InventedAeroplanes.CALM, Mass.ofKilograms(20000));
        ClimbSpeeds mach = ClimbSpeeds.constant(ClimbSpeed.constant(Mach.of(0.7)));
        LevelLimit thrust = MaximumLevel.of(up, mach, FROM, RESIDUAL, 1.3).part(Kind.THRUST);
        assertThat(thrust.standing()).isEqualTo(Standing.ABOVE_THE_END);
        assertThat(thrust.reason()).contains("up to the end of the air at ");
        // at a constant calibrated airspeed Mach 1 comes first
        ClimbSpeeds cas =
                ClimbSpeeds.constant(ClimbSpeed.constant(CalibratedAirspeed.ofKnots(300)));
        LevelLimit ends = MaximumLevel.of(up, cas, FROM, RESIDUAL, 1.3).part(Kind.THRUST);
        assertThat(ends.standing()).isEqualTo(Standing.NOT_KNOWN);
        assertThat(ends.reason()).contains("from there it is not known");
    }

    private static LevelLimit buffet(BuffetTable table, ClimbSpeeds speeds) {
        AeroplaneLimits limits = AeroplaneLimits.none().withBuffetOnset(120.0, table);
        ClimbConditions conditions =
                ClimbConditions.of(TWIN.aeroplane().withLimits(limits), TWIN.air(), TWIN.mass());
        return MaximumLevel.of(conditions, speeds, FROM, RESIDUAL, 1.3).part(Kind.BUFFET);
    }

    private static BuffetTable.Row row(double mach, double liftCoefficient) {
        return new BuffetTable.Row(Mach.of(mach), liftCoefficient);
    }

    @Test
    @DisplayName("by buffet is found above a start that is slower than the table of buffet begins")
    void slowerThanTheTable() {
        // 250 kn at 3000 ft are less than Mach 0.45
        BuffetTable late = BuffetTable.of(List.of(row(0.45, 1.2), row(0.6, 1.1), row(0.75, 0.85)));
        LevelLimit limit = buffet(late, SPEEDS);
        double pressure = 1.3 * 60000.0 * 9.80665 / (0.7 * 0.5625 * 0.85 * 120.0);
        assertThat(metres(limit))
                .isCloseTo(StandardAir.altitudeFromPressure(pressure), within(2e-6));
        assertThat(limit.reason())
                .startsWith("there is a load factor of 1.3 to buffet and no more; below ")
                .endsWith(
                        " ft the Mach number is lower than any for which the beginning of buffet is"
                                + " given");
    }

    @Test
    @DisplayName("by buffet is below the start of what is known where it buffets already there")
    void buffetsWhereTheTableBegins() {
        LevelLimit limit = buffet(BuffetTable.of(List.of(row(0.45, 0.1), row(0.9, 0.1))), SPEEDS);
        assertThat(limit.standing()).isEqualTo(Standing.BELOW_THE_START);
        assertThat(limit.reason())
                .startsWith("there is less than a load factor of 1.3 to buffet already at ")
                .contains("; below ");
    }

    @Test
    @DisplayName("by buffet is not known beyond the table, and says up to where it is")
    void fasterThanTheTable() {
        ClimbSpeeds cas =
                ClimbSpeeds.constant(ClimbSpeed.constant(CalibratedAirspeed.ofKnots(280)));
        BuffetTable table = BuffetTable.of(List.of(row(0.45, 1.2), row(0.6, 1.1)));
        LevelLimit limit = buffet(table, cas);
        assertThat(limit.standing()).isEqualTo(Standing.NOT_KNOWN);
        // where 280 kn are Mach 0.6
        double bottom = 0.0;
        double top = 11000.0;
        for (int halving = 0; halving < 60; halving++) {
            double middle = 0.5 * (bottom + top);
            double mach =
                    AirspeedConversion.machFromCas(
                            280.0 * 1852.0 / 3600.0, StandardAir.pressureFromAltitude(middle));
            if (mach < 0.6) {
                bottom = middle;
            } else {
                top = middle;
            }
        }
        String told = limit.reason();
        String feet =
                told.substring(told.indexOf("up to ") + 6, told.indexOf(" ft, and from there"));
        assertThat(Double.parseDouble(feet) * 0.3048).isCloseTo(bottom, within(2e-6));
        assertThat(told)
                .contains("not known: the beginning of buffet is not given for that Mach number");
    }

    @Test
    @DisplayName("by buffet is found in the last metres before the table ends")
    void lastMetres() {
        ClimbSpeeds cas =
                ClimbSpeeds.constant(ClimbSpeed.constant(CalibratedAirspeed.ofKnots(280)));
        BuffetTable table =
                BuffetTable.of(
                        List.of(row(0.3, 1.4), row(0.5998, 1.2), row(0.5999, 0.1), row(0.6, 0.1)));
        PressureAltitude level = buffet(table, cas).level().orElseThrow();
        double mach =
                AirspeedConversion.machFromCas(
                        280.0 * 1852.0 / 3600.0,
                        StandardAir.pressureFromAltitude(level.inMetres()));
        assertThat(mach).isBetween(0.5998, 0.5999);
    }

    @Test
    @DisplayName("by buffet is not known where the start is faster than the table ends")
    void startsFasterThanTheTable() {
        ClimbSpeeds slowing =
                (altitude, side) -> ClimbSpeed.constant(Mach.of(0.8 - 2e-5 * altitude));
        LevelLimit limit = buffet(BuffetTable.of(List.of(row(0.3, 1.2), row(0.7, 1.0))), slowing);
        assertThat(limit.standing()).isEqualTo(Standing.NOT_KNOWN);
        assertThat(limit.reason())
                .isEqualTo(
                        "whether there is a load factor of 1.3 to buffet is not known at 3000 ft:"
                                + " the beginning of buffet is not given for that Mach number");
    }

    @Test
    @DisplayName("by the certificate is below a start that is above it")
    void startAboveTheCertificate() {
        PressureAltitude high = PressureAltitude.ofFeet(42000);
        MaximumLevel maximum = MaximumLevel.of(TWIN, SPEEDS, high, RESIDUAL, 1.3);
        LevelLimit certified = maximum.part(Kind.CERTIFIED_CEILING);
        assertThat(certified.standing()).isEqualTo(Standing.BELOW_THE_START);
        assertThat(certified.reason())
                .isEqualTo(
                        "the limit given for the aeroplane, 41000 ft, is below the start at 42000"
                                + " ft");
        assertThat(maximum.limiting()).contains(certified);
        assertThat(maximum.level()).isEmpty();
        PressureAltitude same = PressureAltitude.ofFeet(41000);
        assertThat(
                        MaximumLevel.of(TWIN, SPEEDS, same, RESIDUAL, 1.3)
                                .part(Kind.CERTIFIED_CEILING)
                                .level())
                .contains(same);
    }

    @Test
    @DisplayName("by thrust is not known where the forces balance at no angle of climb")
    void noBalance() {
        ClimbConditions feather = TWIN.withMass(Mass.ofKilograms(200));
        LevelLimit thrust = of(feather).part(Kind.THRUST);
        assertThat(thrust.standing()).isEqualTo(Standing.NOT_KNOWN);
        assertThat(thrust.reason())
                .isEqualTo(
                        "whether there is a rate of climb of 300 ft/min is not known at 3000 ft:"
                                + " the forces balance at no angle of climb");
        assertThat(of(feather).isComplete()).isFalse();
        ClimbSpeed speed = SPEEDS.at(FROM.inMetres(), Side.ABOVE);
        assertThat(feather.ifBalanced(FROM, Side.ABOVE, speed)).isEmpty();
        assertThat(TWIN.ifBalanced(FROM, Side.ABOVE, speed).orElseThrow().sine())
                .isEqualTo(TWIN.at(FROM, speed).sine());
        LevelLimit gross =
                EngineOut.of(feather, SPEEDS).grossCeiling(FROM, AirGradient.ofPercent(0));
        assertThat(gross.standing()).isEqualTo(Standing.NOT_KNOWN);
        assertThat(gross.reason()).endsWith("the forces balance at no angle of climb");
    }

    @Test
    @DisplayName("is found at a bend where the rate jumps over the residual one")
    void jump() {
        // a tailwind that begins to rise at 6 km takes a fifth of the rate at once
        Winds winds =
                new Winds() {
                    private final double bend = StandardAir.pressureFromAltitude(6000.0);

                    @Override
                    public double eastward(double pressurePa) {
                        return Math.max(
                                0.0,
                                0.02 * (StandardAir.altitudeFromPressure(pressurePa) - 6000.0));
                    }

                    @Override
                    public double northward(double pressurePa) {
                        return 0.0;
                    }

                    @Override
                    public boolean covers(double pressurePa) {
                        return true;
                    }

                    @Override
                    public double[] bendsPa() {
                        return new double[] {bend};
                    }
                };
        ClimbConditions sheared = TWIN.withAir(TWIN.air().withWinds(winds));
        PressureAltitude bend =
                Arrays.stream(sheared.air().bendsM())
                        .filter(level -> Math.abs(level - 6000.0) < 1e-6)
                        .mapToObj(PressureAltitude::ofMetres)
                        .findFirst()
                        .orElseThrow();
        ClimbSpeed speed = SPEEDS.at(6000.0, Side.BELOW);
        double below = rate(sheared, bend, Side.BELOW, speed);
        double above = rate(sheared, bend, Side.ABOVE, speed);
        assertThat(above).isLessThan(0.9 * below);
        LevelLimit limit =
                MaximumLevel.of(
                                sheared,
                                SPEEDS,
                                FROM,
                                PressureAltitudeRate.ofMetresPerSecond(0.95 * below),
                                1.3)
                        .part(Kind.THRUST);
        assertThat(metres(limit)).isCloseTo(6000.0, within(1e-6));
        assertThat(limit.reason()).startsWith("at a bend");
    }

    private static double rate(
            ClimbConditions conditions, PressureAltitude level, Side side, ClimbSpeed speed) {
        return conditions.at(level, side, speed).pressureAltitudeRate().inMetresPerSecond();
    }

    @Test
    @DisplayName("goes by the speeds of a schedule, each as the kind that is held")
    void speeds() {
        assertThat(SPEEDS.at(3000.0, Side.ABOVE).held()).isEqualTo(HeldSpeed.CALIBRATED_AIRSPEED);
        assertThat(SPEEDS.at(3000.0, Side.ABOVE))
                .isEqualTo(ClimbSpeed.constant(CalibratedAirspeed.ofKnots(250)));
        double change = PressureAltitude.ofFeet(10000).inMetres();
        assertThat(SPEEDS.at(change, Side.BELOW).speed())
                .isLessThan(SPEEDS.at(change, Side.ABOVE).speed());
        assertThat(SPEEDS.at(11000.0, Side.BELOW)).isEqualTo(ClimbSpeed.constant(Mach.of(0.75)));
        assertThat(SPEEDS.bendsM()).hasSize(2);
    }

    @Test
    @DisplayName("refuses a residual rate and a load factor that are none")
    void refuses() {
        assertThatThrownBy(
                        () ->
                                MaximumLevel.of(
                                        TWIN,
                                        SPEEDS,
                                        FROM,
                                        PressureAltitudeRate.ofFeetPerMinute(-1),
                                        1.3))
                .isInstanceOf(OutsideModelException.class);
        assertThatThrownBy(() -> MaximumLevel.of(TWIN, SPEEDS, FROM, RESIDUAL, 0.9))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageStartingWith("load factor must be from 1.0 to 12.0");
    }

    @Test
    @DisplayName("with an engine out is where the gross or the net gradient falls to a value")
    void engineOut() {
        ClimbSpeeds slow =
                ClimbSpeeds.constant(ClimbSpeed.constant(CalibratedAirspeed.ofKnots(220)));
        EngineOut out = EngineOut.of(TWIN, slow);
        AirGradient none = AirGradient.ofPercent(0);
        PressureAltitude gross = out.grossCeiling(FROM, none).level().orElseThrow();
        PressureAltitude net = out.netCeiling(FROM, none).level().orElseThrow();
        assertThat(out.grossGradient(gross, Side.BELOW).inPercent()).isCloseTo(0.0, within(1e-7));
        // 25.123(b): 1.1 % for two engines
        assertThat(out.grossGradient(net, Side.BELOW).inPercent()).isCloseTo(1.1, within(1e-7));
        assertThat(out.netGradient(net, Side.BELOW).orElseThrow().inPercent())
                .isCloseTo(0.0, within(1e-7));
        assertThat(net).isLessThan(gross);
        assertThat(out.netCeiling(FROM, AirGradient.ofPercent(0.5)).level().orElseThrow())
                .isLessThan(net);
        assertThat(gross)
                .isLessThan(
                        MaximumLevel.of(TWIN, slow, FROM, RESIDUAL, 1.3)
                                .part(Kind.THRUST)
                                .level()
                                .orElseThrow());
        // half of the thrust, and the drag of the one that stands still
        double pressure = StandardAir.pressureFromAltitude(FROM.inMetres());
        assertThat(out.at(FROM, Side.ABOVE).thrustN()).isCloseTo(pressure, within(1e-9));
    }

    @Test
    @DisplayName("with an engine out is not known net for five engines, and not asked of one")
    void otherNumbers() {
        Aeroplane five = InventedAeroplanes.jet(5, 120.0, 0.02, 0.045, 0.5);
        EngineOut out =
                EngineOut.of(
                        ClimbConditions.of(five, TWIN.air(), TWIN.mass()),
                        ClimbSpeeds.constant(ClimbSpeed.constant(CalibratedAirspeed.ofKnots(220))));
        assertThat(out.netGradient(FROM, Side.ABOVE)).isEmpty();
        LevelLimit net = out.netCeiling(FROM, AirGradient.ofPercent(0));
        assertThat(net.standing()).isEqualTo(Standing.NOT_KNOWN);
        assertThat(net.reason()).isEqualTo("the rule has no reduction for 5 engines");
        Aeroplane one = InventedAeroplanes.jet(1, 120.0, 0.02, 0.045, 2.0);
        ClimbConditions single = ClimbConditions.of(one, TWIN.air(), TWIN.mass());
        assertThatThrownBy(() -> EngineOut.of(single, SPEEDS))
                .hasMessage(
                        "an aeroplane that climbs with an engine out needs two or more, but had 1");
    }
}
