package org.climbwright.sounding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.IcaoConstants;
import org.climbwright.atmosphere.MoistAir;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.pressure.StaticPressure;

@Label("The air of a sounding")
class SoundingAtmospherePropertyTest {
    private static final double METRES_PER_KELVIN =
            IcaoConstants.GAS_CONSTANT_J_PER_KG_K / IcaoConstants.GRAVITY_MPS2;

    @Property(tries = 300)
    @Label("meets each observed temperature, dew point and height to the last bit")
    void meetsTheLevels(@ForAll("soundings") Sounding sounding) {
        Atmosphere air = sounding.atmosphere();
        for (SoundingLevel level : sounding.levels()) {
            double pressure = level.pressurePa();
            assertThat(air.temperature(pressure)).isEqualTo(level.temperatureK());
            if (Double.isNaN(level.dewPointK())) {
                assertThat(air.vapourPressure(pressure)).isNaN();
            } else {
                assertThat(air.vapourPressure(pressure))
                        .isEqualTo(MoistAir.saturationVapourPressure(level.dewPointK()));
            }
            if (level.geopotentialAltitude().isPresent()) {
                assertThat(air.geopotentialAltitude(pressure))
                        .isEqualTo(level.geopotentialAltitudeM());
            }
        }
    }

    @Property(tries = 300)
    @Label("is straight in ln p between two levels, in temperature and in dew point")
    void isLinear(
            @ForAll("soundings") Sounding sounding,
            @ForAll
                    @DoubleRange(min = 0.0, max = 1.0, minIncluded = false, maxIncluded = false)
                    @Scale(6)
                    double share) {
        Atmosphere air = sounding.atmosphere();
        List<SoundingLevel> levels = sounding.levels();
        for (int i = 1; i < levels.size(); i++) {
            SoundingLevel low = levels.get(i - 1);
            SoundingLevel high = levels.get(i);
            double pressure = between(low, high, share);
            if (pressure >= low.pressurePa() || pressure <= high.pressurePa()) {
                continue; // the share was so near to an end that no double lies between
            }
            // 1e-9 K: an ulp of ln p, 2e-15, over the least step of 5e-4, times 140 K
            assertThat(air.temperature(pressure))
                    .isEqualTo(mix(low.temperatureK(), high.temperatureK(), share), within(1e-9));
            double dewPoint = mix(low.dewPointK(), high.dewPointK(), share);
            double vapour = air.vapourPressure(pressure);
            if (Double.isNaN(dewPoint)) {
                assertThat(vapour).isNaN();
            } else {
                double expected = MoistAir.saturationVapourPressure(dewPoint);
                if (expected < 0.999 * pressure) {
                    assertThat(vapour / expected).isEqualTo(1.0, within(1e-9));
                }
            }
        }
    }

    @Property(tries = 300)
    @Label("gets higher as pressure falls, from level to level and in between")
    void rises(@ForAll("soundings") Sounding sounding) {
        Atmosphere air = sounding.atmosphere();
        if (Double.isNaN(air.geopotentialAltitude(air.range().lowest()))) {
            return;
        }
        double before = Double.NEGATIVE_INFINITY;
        for (double pressure = air.range().highest();
                pressure >= air.range().lowest();
                pressure *= 0.9997) {
            double altitude = air.geopotentialAltitude(pressure);
            assertThat(altitude).isGreaterThan(before);
            before = altitude;
        }
        assertThat(air.geopotentialAltitude(air.range().lowest())).isGreaterThanOrEqualTo(before);
    }

    @Property(tries = 300)
    @Label("knows its altitudes as soon as one height is reported, and else nowhere")
    void altitudesKnown(@ForAll("soundings") Sounding sounding) {
        boolean reported =
                sounding.levels().stream().anyMatch(l -> l.geopotentialAltitude().isPresent());
        Atmosphere air = sounding.atmosphere();
        for (double pressure : air.bendsPa()) {
            assertThat(!Double.isNaN(air.geopotentialAltitude(pressure))).isEqualTo(reported);
        }
    }

    @Property(tries = 300)
    @Label("with one height has the thickness of its mean virtual temperature between levels")
    void isHypsometric(@ForAll("soundings") Sounding sounding) {
        List<SoundingLevel> levels = withOneHeight(sounding);
        Atmosphere air = Sounding.of("", "", levels).atmosphere();
        double altitude = air.geopotentialAltitude(levels.get(0).pressurePa());
        for (int i = 1; i < levels.size(); i++) {
            SoundingLevel low = levels.get(i - 1);
            SoundingLevel high = levels.get(i);
            altitude +=
                    METRES_PER_KELVIN
                            * 0.5
                            * (virtualTemperature(low) + virtualTemperature(high))
                            * Math.log(low.pressurePa() / high.pressurePa());
            assertThat(air.geopotentialAltitude(high.pressurePa()))
                    .isEqualTo(altitude, within(1e-8)); // some ulps of each of 20 sums
        }
    }

    @Property(tries = 300)
    @Label("between two reported heights stretches the hypsometric thickness by one factor")
    void isStretched(
            @ForAll("soundings") Sounding sounding,
            @ForAll @DoubleRange(min = 0.0, max = 1.0) @Scale(6) double share) {
        Atmosphere air = sounding.atmosphere();
        Atmosphere pure = Sounding.of("", "", withOneHeight(sounding)).atmosphere();
        List<SoundingLevel> reported =
                sounding.levels().stream()
                        .filter(level -> level.geopotentialAltitude().isPresent())
                        .toList();
        for (int i = 1; i < reported.size(); i++) {
            SoundingLevel low = reported.get(i - 1);
            SoundingLevel high = reported.get(i);
            double pressure =
                    Math.max(
                            high.pressurePa(),
                            Math.min(low.pressurePa(), between(low, high, share)));
            double ofPure =
                    (pure.geopotentialAltitude(pressure)
                                    - pure.geopotentialAltitude(low.pressurePa()))
                            / (pure.geopotentialAltitude(high.pressurePa())
                                    - pure.geopotentialAltitude(low.pressurePa()));
            assertThat(air.geopotentialAltitude(pressure))
                    .isEqualTo(
                            mix(low.geopotentialAltitudeM(), high.geopotentialAltitudeM(), ofPure),
                            within(1e-6)); // ulps of a difference of 20 km over one of metres
        }
    }

    @Property(tries = 300)
    @Label("comes back from an altitude to the pressure it came from")
    void thereAndBack(
            @ForAll("soundings") Sounding sounding,
            @ForAll @DoubleRange(min = 0.0, max = 1.0) @Scale(6) double share) {
        Atmosphere air = sounding.atmosphere();
        double lowest = air.geopotentialAltitude(air.range().highest());
        double highest = air.geopotentialAltitude(air.range().lowest());
        if (Double.isNaN(lowest)) {
            return;
        }
        double inside = Math.min(highest, mix(lowest, highest, share));
        for (double altitude : new double[] {inside, lowest, highest}) {
            // 1e-9 m is what pressureFromAltitude states
            assertThat(air.geopotentialAltitude(air.pressureFromGeopotentialAltitude(altitude)))
                    .isEqualTo(altitude, within(1e-9));
        }
        for (double altitude : new double[] {Math.nextDown(lowest), Math.nextUp(highest)}) {
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> air.pressureFromGeopotentialAltitude(altitude));
        }
    }

    @Property(tries = 300)
    @Label("goes on without a step at its levels")
    void isContinuous(@ForAll("soundings") Sounding sounding) {
        Atmosphere air = sounding.atmosphere();
        for (double level : air.bendsPa()) {
            for (double near : new double[] {level * (1.0 - 1e-12), level * (1.0 + 1e-12)}) {
                if (air.covers(near)) {
                    // 1e-12 of ln p over the least step of 5e-4, times 140 K
                    assertThat(air.temperature(near))
                            .isEqualTo(air.temperature(level), within(3e-7));
                    double altitude = air.geopotentialAltitude(level);
                    if (!Double.isNaN(altitude)) {
                        assertThat(air.geopotentialAltitude(near))
                                .isEqualTo(altitude, within(1e-7)); // 20 km per unit of ln p
                    }
                }
            }
        }
    }

    @Property(tries = 100)
    @Label("is unknown outside its lowest and highest level")
    void endsWithItsLevels(
            @ForAll("soundings") Sounding sounding,
            @ForAll @DoubleRange(min = 1e-3, max = 2.0) @Scale(6) double factor) {
        Atmosphere air = sounding.atmosphere();
        double highest = sounding.levels().get(0).pressurePa();
        double lowest = sounding.levels().get(sounding.levels().size() - 1).pressurePa();
        assertThat(air.range().highest()).isEqualTo(highest);
        assertThat(air.range().lowest()).isEqualTo(lowest);
        for (double pressure :
                new double[] {
                    Math.nextUp(highest),
                    highest * (1.0 + factor),
                    Math.nextDown(lowest),
                    lowest / (1.0 + factor)
                }) {
            assertThat(air.covers(pressure)).isFalse();
            refuses(() -> air.temperature(pressure));
            refuses(() -> air.geopotentialAltitude(pressure));
            refuses(() -> air.vapourPressure(pressure));
            refuses(() -> air.at(StaticPressure.ofPascals(pressure)));
        }
    }

    private static void refuses(ThrowingCallable question) {
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(question)
                .withMessageContaining("the sounding has no temperature outside");
    }

    @Property(tries = 200)
    @Label("bends at its levels of air, and at no others")
    void bends(@ForAll("mixed") Sounding sounding) {
        List<SoundingLevel> levels = Soundings.levelsOfAir(sounding);
        if (levels.size() < 2) {
            return;
        }
        assertThat(sounding.atmosphere().bendsPa())
                .containsExactly(levels.stream().mapToDouble(SoundingLevel::pressurePa).toArray());
    }

    @Property(tries = 300)
    @Label("answers every question that can be asked of it")
    void answers(@ForAll("mixed") Sounding sounding) {
        Questions.ask(sounding);
    }

    private static List<SoundingLevel> withOneHeight(Sounding sounding) {
        List<SoundingLevel> levels = new ArrayList<>();
        for (SoundingLevel level : sounding.levels()) {
            levels.add(
                    SoundingLevel.ofSi(
                            level.pressurePa(),
                            levels.isEmpty() ? 100.0 : Double.NaN,
                            level.temperatureK(),
                            level.dewPointK(),
                            Double.NaN,
                            Double.NaN));
        }
        return levels;
    }

    private static double virtualTemperature(SoundingLevel level) {
        return Double.isNaN(level.dewPointK())
                ? level.temperatureK()
                : MoistAir.virtualTemperature(
                        level.temperatureK(),
                        MoistAir.saturationVapourPressure(level.dewPointK()),
                        level.pressurePa());
    }

    private static double between(SoundingLevel low, SoundingLevel high, double share) {
        return Math.exp(mix(Math.log(low.pressurePa()), Math.log(high.pressurePa()), share));
    }

    private static double mix(double low, double high, double share) {
        return low + share * (high - low);
    }

    @Provide
    Arbitrary<Sounding> soundings() {
        return RandomSoundings.ofAir();
    }

    @Provide
    Arbitrary<Sounding> mixed() {
        return RandomSoundings.mixed();
    }
}
