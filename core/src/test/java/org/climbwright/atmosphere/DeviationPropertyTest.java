package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.climbwright.atmosphere.altimetry.Altimetry;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.quantity.temperature.IsaDeviation;
import org.climbwright.quantity.temperature.IsaDeviationAtAltitude;

@Label("Air that deviates from standard, whatever its deviation and its datum")
class DeviationPropertyTest {
    private static final double R_OVER_G = 287.05287 / 9.80665;

    @Property
    @Label("is known at both ends of its range by every way in")
    void ends(@ForAll("deviations") double deviationK, @ForAll("settings") double qnhPa) {
        AltitudeDatum datum = AltitudeDatum.onQnh(AltimeterSetting.ofPascals(qnhPa));
        for (Atmosphere air :
                List.of(
                        Atmosphere.withDeviationAtEachPressure(
                                IsaDeviation.ofKelvins(deviationK), datum),
                        Atmosphere.withDeviationAtEachAltitude(
                                IsaDeviationAtAltitude.ofKelvins(deviationK), datum))) {
            for (double end : new double[] {air.range().lowest(), air.range().highest()}) {
                AirState there = air.at(StaticPressure.ofPascals(end));
                GeopotentialAltitude altitude = there.geopotentialAltitude().orElseThrow();
                assertThat(air.at(altitude).pressurePa()).isCloseTo(end, within(1e-12 * end));
                assertThat(DryAir.coversTemperature(there.temperatureK())).isTrue();
            }
        }
    }

    private static Atmosphere atEachPressure(double deviationK) {
        return Atmosphere.withDeviationAtEachPressure(IsaDeviation.ofKelvins(deviationK));
    }

    private static Atmosphere atEachAltitude(double deviationK) {
        return Atmosphere.withDeviationAtEachAltitude(IsaDeviationAtAltitude.ofKelvins(deviationK));
    }

    /** Air that is known only from 1050 to 200 hPa, some of it moist. */
    private static Atmosphere sounded(double deviationK) {
        return Atmosphere.of(
                new TemperatureProfile() {
                    @Override
                    public double temperature(double pressurePa) {
                        return StandardAir.temperatureFromPressure(pressurePa)
                                + deviationK * Math.sin(pressurePa / 2e4);
                    }

                    @Override
                    public double vapourPressure(double pressurePa) {
                        return 1e-4;
                    }

                    @Override
                    public double[] bendsPa() {
                        return new double[] {50000.0};
                    }

                    @Override
                    public ModelRange range() {
                        return new ModelRange(
                                "static pressure", 20000.0, 105000.0, "Pa", "no data beyond");
                    }
                },
                AltitudeDatum.standard());
    }

    @Provide
    Arbitrary<Double> deviations() {
        return Arbitraries.doubles().between(-90.0, 75.0).ofScale(6);
    }

    @Provide
    Arbitrary<Double> settings() {
        return Arbitraries.doubles().between(85000.0, 110000.0).ofScale(6);
    }

    @Provide
    Arbitrary<Double> mildDeviations() {
        return Arbitraries.doubles().between(-40.0, 40.0).ofScale(6);
    }

    @Provide
    Arbitrary<Double> pressures() {
        return Arbitraries.doubles().between(20001.0, 104999.0).ofScale(6);
    }

    /** From the bottom to the top of the standard atmosphere. */
    @Provide
    Arbitrary<Double> altitudes() {
        return Arbitraries.doubles().between(-5000.0, 80000.0).ofScale(6);
    }

    @Property(tries = 300)
    @Label("is as thick as its two halves together")
    void thicknessAddsUp(
            @ForAll("mildDeviations") double deviation,
            @ForAll("pressures") double one,
            @ForAll("pressures") double two,
            @ForAll("pressures") double three) {
        for (Atmosphere air : all(deviation)) {
            double whole = thickness(air, one, three);
            assertThat(thickness(air, one, two) + thickness(air, two, three))
                    .isCloseTo(whole, within(1e-10));
        }
        assertThat(
                        StandardAir.thicknessWithDeviation(one, two, deviation)
                                + StandardAir.thicknessWithDeviation(two, three, deviation))
                .isCloseTo(
                        StandardAir.thicknessWithDeviation(one, three, deviation), within(1e-10));
        assertThat(StandardAir.thicknessWithDeviation(one, two, deviation))
                .isCloseTo(-StandardAir.thicknessWithDeviation(two, one, deviation), within(1e-10));
    }

    private static List<Atmosphere> all(double deviation) {
        return List.of(
                Atmosphere.standard(),
                atEachPressure(deviation),
                atEachAltitude(deviation),
                sounded(deviation),
                sounded(deviation).withDeviationCarriedOnAboveTop());
    }

    private static double thickness(Atmosphere air, double lowerPa, double upperPa) {
        return air.geopotentialAltitude(upperPa) - air.geopotentialAltitude(lowerPa);
    }

    @Property(tries = 100)
    @Label("between any two pressures is as thick as its mean temperature makes it")
    void hypsometric(
            @ForAll("mildDeviations") double deviation,
            @ForAll("pressures") double lower,
            @ForAll("pressures") double upper) {
        // dH = -(R T / g0) d(ln p): the thickness lies between that of the coldest and the warmest
        for (Atmosphere air : all(deviation)) {
            double coldest = Double.POSITIVE_INFINITY;
            double warmest = 0.0;
            for (int i = 0; i <= 200; i++) {
                double t = air.temperature(lower * Math.pow(upper / lower, i / 200.0));
                coldest = Math.min(coldest, t);
                warmest = Math.max(warmest, t);
            }
            double ln = Math.abs(Math.log(lower / upper));
            // between two of the 201 places, some 60 m apart, the temperature may reach beyond
            assertThat(Math.abs(thickness(air, lower, upper)))
                    .isBetween(
                            R_OVER_G * (coldest - 0.5) * ln - 1e-6,
                            R_OVER_G * (warmest + 0.5) * ln + 1e-6);
        }
    }

    @Property
    @Label("by nothing is standard air to the last bit, but for its humidity, which is not known")
    void noDeviation(@ForAll("altitudes") double altitude) {
        Atmosphere standard = Atmosphere.standard();
        double pascal = StandardAir.pressureFromAltitude(altitude);
        for (Atmosphere air : List.of(atEachPressure(0.0), atEachAltitude(0.0))) {
            assertThat(air.range().lowest()).isEqualTo(standard.range().lowest());
            assertThat(air.range().highest()).isEqualTo(standard.range().highest());
            assertThat(air.bendsPa()).isEqualTo(standard.bendsPa());
            assertThat(air.temperature(pascal)).isEqualTo(standard.temperature(pascal));
            assertThat(air.geopotentialAltitude(pascal))
                    .isEqualTo(standard.geopotentialAltitude(pascal));
            assertThat(air.pressureFromGeopotentialAltitude(altitude)).isEqualTo(pascal);
            AirState here = air.at(StaticPressure.ofPascals(pascal));
            assertThat(here.densityKgPerM3())
                    .isEqualTo(standard.at(StaticPressure.ofPascals(pascal)).densityKgPerM3());
            assertThat(here.isHumidityKnown()).isFalse();
            assertThat(here.withoutVapour())
                    .isEqualTo(standard.at(StaticPressure.ofPascals(pascal)));
            assertThat(air.vapourPressure(pascal)).isNaN();
        }
    }

    @Property
    @Label("has its deviation, at the pressure or at the altitude that its name says")
    void deviation(@ForAll("deviations") double deviation, @ForAll("altitudes") double altitude) {
        double pascal = StandardAir.pressureFromAltitude(altitude);
        AirState a = atEachPressure(deviation).at(StaticPressure.ofPascals(pascal));
        assertThat(a.isaDeviation().inKelvins()).isCloseTo(deviation, within(1e-12));

        Atmosphere other = atEachAltitude(deviation);
        double there = other.pressureFromGeopotentialAltitude(altitude);
        AirState b = other.at(StaticPressure.ofPascals(there));
        double back = b.geopotentialAltitude().orElseThrow().inMetres();
        assertThat(back).isCloseTo(altitude, within(1e-9));
        if (StandardAir.coversAltitude(back)) { // rounding may step over an end
            assertThat(b.isaDeviationAtAltitude().orElseThrow().inKelvins())
                    .isCloseTo(deviation, within(1e-12));
        }
    }

    @Property
    @Label("has the same air at 1013.25 hPa and sea level, whichever its deviation means")
    void bothMeaningsAtTheDatum(@ForAll("deviations") double deviation) {
        AirState a = atEachPressure(deviation).at(StaticPressure.ofPascals(101325.0));
        AirState b = atEachAltitude(deviation).at(StaticPressure.ofPascals(101325.0));
        assertThat(a).isEqualTo(b);
        assertThat(a.temperatureK()).isEqualTo(288.15 + deviation);
        assertThat(a.geopotentialAltitude()).contains(GeopotentialAltitude.ofMetres(0.0));
    }

    @Property
    @Label(
            "warm at each pressure is the warmer and higher one aloft, cold the colder and lower"
                    + " one")
    void theMeaningsPart(
            @ForAll("mildDeviations") double deviation, @ForAll("pressures") double pascal) {
        double apart = Math.abs(101325.0 - pascal);
        if (Math.abs(deviation) > 0.1 && apart > 1000.0) {
            Atmosphere a = atEachPressure(deviation);
            Atmosphere b = atEachAltitude(deviation);
            // below sea level the warm air of each altitude is the warmer, and there it is lower
            double sign = Math.signum(deviation);
            double above = Math.signum(101325.0 - pascal);
            if (pascal > 30000.0) { // in the stratosphere both are isothermal, and alike
                assertThat(sign * above * (a.temperature(pascal) - b.temperature(pascal)))
                        .isPositive();
            }
            assertThat(sign * (a.geopotentialAltitude(pascal) - b.geopotentialAltitude(pascal)))
                    .isPositive();
        }
    }

    @Property
    @Label("has the same temperature in the lower stratosphere, whichever its deviation means")
    void bothMeaningsInTheStratosphere(
            @ForAll("mildDeviations") double deviation, @ForAll("pressures") double pascal) {
        double high = 0.06 * pascal + 9000.0; // 153 to 102 hPa, isothermal in both
        assertThat(atEachPressure(deviation).temperature(high))
                .isCloseTo(216.65 + deviation, within(1e-12));
        assertThat(atEachAltitude(deviation).temperature(high))
                .isCloseTo(216.65 + deviation, within(1e-12));
    }

    @Property
    @Label("has the known altitude at the known pressure")
    void datum(
            @ForAll("deviations") double deviation,
            @ForAll("pressures") double pascal,
            @ForAll("altitudes") double altitude) {
        AltitudeDatum datum =
                new AltitudeDatum(
                        StaticPressure.ofPascals(pascal), GeopotentialAltitude.ofMetres(altitude));
        Atmosphere a =
                Atmosphere.withDeviationAtEachPressure(IsaDeviation.ofKelvins(deviation), datum);
        assertThat(a.geopotentialAltitude(pascal)).isEqualTo(altitude);
        Atmosphere b =
                Atmosphere.withDeviationAtEachAltitude(
                        IsaDeviationAtAltitude.ofKelvins(deviation), datum);
        assertThat(b.pressureFromGeopotentialAltitude(altitude))
                .isCloseTo(pascal, within(1e-13 * pascal));
    }

    @Property(tries = 300)
    @Label("finds the pressure of an altitude, and the altitude of that pressure again")
    void roundTrip(@ForAll("mildDeviations") double deviation, @ForAll("pressures") double pascal) {
        for (Atmosphere air : all(deviation)) {
            double altitude = air.geopotentialAltitude(pascal);
            double back = air.pressureFromGeopotentialAltitude(altitude);
            assertThat(back).isCloseTo(pascal, within(1e-12 * pascal));
            assertThat(air.geopotentialAltitude(back)).isCloseTo(altitude, within(1e-9));
        }
    }

    @Property(tries = 300)
    @Label("carried on above its top is unchanged below, and continuous with that deviation above")
    void carriedOn(
            @ForAll("mildDeviations") double deviation,
            @ForAll("pressures") double below,
            @ForAll("altitudes") double altitude) {
        Atmosphere air = sounded(deviation);
        Atmosphere carriedOn = air.withDeviationCarriedOnAboveTop();
        double top = air.range().lowest();
        for (double pascal : new double[] {below, top, air.range().highest()}) {
            StaticPressure pressure = StaticPressure.ofPascals(pascal);
            assertThat(carriedOn.at(pressure)).isEqualTo(air.at(pressure));
        }

        double atTop = air.temperature(top) - StandardAir.temperatureFromPressure(top);
        double justAbove = Math.nextDown(top);
        assertThat(carriedOn.temperature(justAbove)).isCloseTo(air.temperature(top), within(1e-12));
        assertThat(carriedOn.geopotentialAltitude(justAbove))
                .isCloseTo(air.geopotentialAltitude(top), within(1e-9));

        double above = Math.min(justAbove, StandardAir.pressureFromAltitude(altitude));
        AirState there = carriedOn.at(StaticPressure.ofPascals(above));
        assertThat(there.isaDeviation().inKelvins()).isCloseTo(atTop, within(1e-12));
        assertThat(there.isHumidityKnown()).isFalse();
        assertThat(there.geopotentialAltitude().orElseThrow().inMetres())
                .isCloseTo(
                        air.geopotentialAltitude(top)
                                + StandardAir.thicknessWithDeviation(top, above, atTop),
                        within(1e-9));
        double back =
                carriedOn.pressureFromGeopotentialAltitude(
                        there.geopotentialAltitude().orElseThrow().inMetres());
        assertThat(back).isCloseTo(above, within(1e-12 * above));
        assertThat(carriedOn.range().highest()).isEqualTo(air.range().highest());
        assertThat(carriedOn.range().lowest()).isEqualTo(StandardAir.pressureRange().lowest());
    }

    @Property
    @Label("on a QNH shows the elevation at the pressure of the aerodrome, as its altimeter does")
    void onQnh(@ForAll("mildDeviations") double deviation) {
        AltimeterSetting qnh = AltimeterSetting.ofHectopascals(1013.25 + deviation);
        GeopotentialAltitude elevation = GeopotentialAltitude.ofMetres(1500.0);
        Atmosphere air =
                Atmosphere.withDeviationAtEachPressure(
                        IsaDeviation.ofKelvins(deviation), Altimetry.datum(qnh, elevation));
        AirState there = air.at(elevation);
        assertThat(
                        StandardAir.altitudeFromPressure(there.pressurePa())
                                - StandardAir.altitudeFromPressure(qnh.inPascals()))
                .isCloseTo(1500.0, within(1e-8));
    }
}
