package org.climbwright.path;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.climbwright.atmosphere.AltitudeDatum;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.atmosphere.TemperatureProfile;
import org.climbwright.atmosphere.wind.Wind;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.path.TrueDirection;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.speed.WindSpeed;
import org.climbwright.quantity.temperature.IsaDeviation;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

@DisplayName("A climb by a table of rates")
class ClimbPathTest {
    /** Nominal radius, ICAO Doc 7488/3, section 2.3. */
    private static final double EARTH_RADIUS_M = 6356766.0;

    private static final AltitudeDatum STANDARD_SEA =
            AltitudeDatum.onQnh(AltimeterSetting.standard());

    @Test
    @DisplayName(
            "at a constant rate takes height over rate: 34,000 ft at 1,500 ft/min, 22 min 40 s")
    void constantRate() {
        ClimbPath path = Scene.calmStandardClimb();
        assertThat(path.at(path.top()).timeS()).isCloseTo(34000.0 / 1500.0 * 60.0, within(1e-9));
        assertThat(path.at(path.top()).time()).isEqualTo(Duration.ofSeconds(22 * 60 + 40));
        assertThat(path.endsBecause()).isEqualTo("level reached");
    }

    @Test
    @DisplayName("at a rate that falls linearly takes the time of the closed form, H/R ln(R/r)")
    void linearRate() {
        ClimbRates rates = Scene.rates(Scene.row(0, 3000), Scene.row(40000, 1000));
        ClimbPath path = Scene.path(rates, Atmosphere.standard(), Winds.calm());
        double low = 3000 - 1000 / 20.0;
        double high = 3000 - 35000 / 20.0;
        double minutes = 20.0 * Math.log(low / high);
        assertThat(path.at(path.top()).timeS()).isCloseTo(60.0 * minutes, within(1e-8));
    }

    @Test
    @DisplayName("covers the distance that an adaptive integration of ground speed over time gives")
    void distanceByAnotherIntegrator() {
        Winds winds = Winds.uniform(Wind.from(TrueDirection.ofDegrees(140), WindSpeed.ofKnots(45)));
        ClimbRates rates = Scene.rates(Scene.row(0, 3000), Scene.row(40000, 1000));
        ClimbPath path = Scene.path(rates, Atmosphere.standard(), winds);
        double expected = 0.0;
        double below = path.bottom().inMetres();
        double[] bends = path.bendsM();
        for (int i = 0; i <= bends.length; i++) {
            double above = i < bends.length ? bends[i] : path.top().inMetres();
            double inset = 1e-9 * (above - below);
            expected +=
                    new IterativeLegendreGaussIntegrator(16, 1e-12, 1e-12)
                            .integrate(
                                    100000,
                                    h -> {
                                        ClimbState state = path.at(PressureAltitude.ofMetres(h));
                                        return surfaceSpeed(state)
                                                / state.pressureAltitudeRate().inMetresPerSecond();
                                    },
                                    below + inset,
                                    above - inset);
            below = above;
        }
        assertThat(path.at(path.top()).distance().orElseThrow().inMetres())
                .isCloseTo(expected, within(1e-3));
    }

    /** Distances count along the surface of the earth, which is nearer to its centre. */
    private static double surfaceSpeed(ClimbState state) {
        double heightM = state.air().geometricAltitude().orElseThrow().inMetres();
        return state.groundSpeed().orElseThrow().inMetresPerSecond()
                * EARTH_RADIUS_M
                / (EARTH_RADIUS_M + heightM);
    }

    @Test
    @DisplayName("starts at no time and no distance")
    void start() {
        ClimbPath path = Scene.calmStandardClimb();
        ClimbState start = path.at(path.bottom());
        assertThat(start.timeS()).isZero();
        assertThat(start.distance()).contains(GroundDistance.ofMetres(0));
        assertThat(start.pressureAltitude()).isEqualTo(PressureAltitude.ofFeet(1000));
    }

    @Test
    @DisplayName("is found again by its time and by its distance")
    void byTimeAndDistance() {
        ClimbPath path = Scene.calmStandardClimb();
        ClimbState half = path.at(PressureAltitude.ofFeet(18765));
        assertThat(path.at(half.time()).pressureAltitude().inFeet()).isCloseTo(18765, within(1e-4));
        assertThat(path.at(half.distance().orElseThrow()).pressureAltitude().inFeet())
                .isCloseTo(18765, within(1e-4));
    }

    @Test
    @DisplayName("is found again by the time and the distance of its top, rounded as they are")
    void byTimeAndDistanceOfTheTop() {
        for (double rate = 700; rate < 900; rate += 7) {
            ClimbPath path =
                    Scene.path(Scene.constantRate(rate), Atmosphere.standard(), Winds.calm());
            ClimbState top = path.at(path.top());
            assertThat(path.at(top.time()).pressureAltitude().inFeet())
                    .isCloseTo(35000, within(1e-3));
            assertThat(path.at(top.distance().orElseThrow()).pressureAltitude().inFeet())
                    .isCloseTo(35000, within(1e-3));
        }
    }

    @Test
    @DisplayName("has both sides where the speed jumps, and one time")
    void bothSides() {
        ClimbPath path = Scene.calmStandardClimb();
        PressureAltitude change = PressureAltitude.ofFeet(10000);
        ClimbState arriving = path.at(change, Side.BELOW);
        ClimbState leaving = path.at(change, Side.ABOVE);
        assertThat(arriving.calibratedAirspeed().inKnots()).isEqualTo(250);
        assertThat(leaving.calibratedAirspeed().inKnots()).isEqualTo(290);
        assertThat(leaving.timeS()).isEqualTo(arriving.timeS());
    }

    @Test
    @DisplayName("in calm air is over the ground what it is through the air")
    void calm() {
        ClimbState state = Scene.calmStandardClimb().at(PressureAltitude.ofFeet(20000));
        assertThat(state.groundGradient().orElseThrow().inPercent())
                .isEqualTo(state.airGradient().inPercent());
    }

    @Test
    @DisplayName("in a uniform tailwind gains wind times time, and loses nothing through the air")
    void uniformTailwind() {
        ClimbPath calm = Scene.calmStandardClimb();
        Winds south = Winds.uniform(Wind.from(TrueDirection.ofDegrees(180), WindSpeed.ofKnots(60)));
        ClimbPath windy = Scene.path(Scene.constantRate(1500), Atmosphere.standard(), south);
        ClimbState calmTop = calm.at(calm.top());
        ClimbState windyTop = windy.at(windy.top());
        double gain =
                windyTop.distance().orElseThrow().inMetres()
                        - calmTop.distance().orElseThrow().inMetres();
        double wind = WindSpeed.ofKnots(60).inMetresPerSecond();
        double topM = windyTop.air().geometricAltitude().orElseThrow().inMetres();
        // at a constant rate of pressure altitude the mean height is that in the middle
        double middleM = 0.5 * (calm.bottom().inMetres() + topM);
        double nearer = EARTH_RADIUS_M / (EARTH_RADIUS_M + middleM);
        assertThat(gain / (wind * windyTop.timeS())).isCloseTo(nearer, within(1e-5));
        assertThat(windyTop.airGradient()).isEqualTo(calmTop.airGradient());
        assertThat(windyTop.alongTrackWind().orElseThrow().inKnots()).isCloseTo(60, within(1e-9));
    }

    @Test
    @DisplayName("in warm air gains more true height than the instrument shows, T over T standard")
    void warmAir() {
        Atmosphere warm =
                Atmosphere.of(p -> StandardAir.temperatureFromPressure(p) + 20.0, STANDARD_SEA);
        ClimbState state =
                Scene.path(Scene.constantRate(1500), warm, Winds.calm())
                        .at(PressureAltitude.ofFeet(20000));
        double standard =
                StandardAir.temperatureFromAltitude(PressureAltitude.ofFeet(20000).inMetres());
        double z = state.air().geometricAltitude().orElseThrow().inMetres();
        double gravityRatio = Math.pow(1.0 + z / 6356766.0, 2);
        assertThat(state.geometricRate().inFeetPerMinute())
                .isCloseTo(1500.0 * (standard + 20.0) / standard * gravityRatio, within(1e-8));
        assertThat(state.pressureAltitudeRate().inFeetPerMinute()).isEqualTo(1500);
    }

    @Test
    @DisplayName("by a table of geometric rates has just those as geometric rates")
    void geometricTable() {
        ClimbRates rates =
                ClimbRates.of(
                        ClimbRates.Kind.GEOMETRIC,
                        IsaDeviation.ofKelvins(0),
                        List.of(Mass.ofKilograms(50000)),
                        List.of(Scene.row(0, 2000), Scene.row(45000, 2000)));
        Atmosphere cold =
                Atmosphere.of(p -> StandardAir.temperatureFromPressure(p) - 20.0, STANDARD_SEA);
        ClimbState state = Scene.path(rates, cold, Winds.calm()).at(PressureAltitude.ofFeet(20000));
        assertThat(state.geometricRate().inFeetPerMinute()).isCloseTo(2000, within(1e-9));
        assertThat(state.pressureAltitudeRate().inFeetPerMinute()).isGreaterThan(2000);
    }

    @Nested
    @DisplayName("where something ends")
    class WhereSomethingEnds {
        @Test
        @DisplayName("ends with the known air, and says so")
        void airEnds() {
            double topPa = StandardAir.pressureFromAltitude(8000.0);
            ModelRange range = new ModelRange("static pressure", topPa, 101325.0, "Pa", "test");
            Atmosphere shallow = Atmosphere.of(profile(range), STANDARD_SEA);
            ClimbPath path = Scene.path(Scene.constantRate(1500), shallow, Winds.calm());
            assertThat(path.endsBecause()).isEqualTo("the known air ends");
            assertThat(path.top().inMetres()).isCloseTo(8000.0, within(1e-8));
            assertThat(path.at(path.top()).timeS()).isPositive();
        }

        @Test
        @DisplayName("ends with the table of rates, and says so")
        void tableEnds() {
            ClimbRates rates = Scene.rates(Scene.row(0, 1000), Scene.row(24000, 500));
            ClimbPath path = Scene.path(rates, Atmosphere.standard(), Winds.calm());
            assertThat(path.endsBecause()).isEqualTo("the table of rates ends");
            assertThat(path.top()).isEqualTo(PressureAltitude.ofFeet(24000));
        }

        @Test
        @DisplayName("refuses to begin outside air or table, or above its level")
        void refusals() {
            Climb climb =
                    Scene.climb(Scene.constantRate(1500), Atmosphere.standard(), Winds.calm());
            assertThatThrownBy(
                            () ->
                                    climb.between(
                                            PressureAltitude.ofFeet(-100),
                                            PressureAltitude.ofFeet(1000)))
                    .isInstanceOf(OutsideModelException.class)
                    .hasMessageContaining("the table of rates ends there");
            assertThatThrownBy(
                            () ->
                                    climb.between(
                                            PressureAltitude.ofFeet(2000),
                                            PressureAltitude.ofFeet(1000)))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage(
                            "a climb must end above its bottom of 2000 ft, but its level was 1000"
                                    + " ft");
        }

        @Test
        @DisplayName("has no state above its top, below its bottom or after its end")
        void offThePath() {
            ClimbPath path = Scene.calmStandardClimb();
            assertThatThrownBy(() -> path.at(PressureAltitude.ofFeet(35001)))
                    .isInstanceOf(OutsideModelException.class);
            assertThatThrownBy(() -> path.at(PressureAltitude.ofFeet(999)))
                    .isInstanceOf(OutsideModelException.class);
            assertThatThrownBy(() -> path.at(Duration.ofHours(1)))
                    .isInstanceOf(OutsideModelException.class)
                    .hasMessageMatching(
                            "time of the climb must be from 0\\.0 to 1360\\.0\\d* s, but was"
                                    + " 3600\\.0 s: the climb is over");
        }
    }

    @Nested
    @DisplayName("where the wind is not known")
    class WhereTheWindIsNotKnown {
        private final Winds above5000 =
                new Winds() {
                    private final double limitPa = StandardAir.pressureFromAltitude(5000.0);

                    @Override
                    public double eastward(double pressurePa) {
                        return covers(pressurePa) ? 10.0 : Double.NaN;
                    }

                    @Override
                    public double northward(double pressurePa) {
                        return covers(pressurePa) ? 10.0 : Double.NaN;
                    }

                    @Override
                    public boolean covers(double pressurePa) {
                        return pressurePa >= limitPa;
                    }

                    @Override
                    public double[] bendsPa() {
                        return new double[] {limitPa};
                    }
                };

        @Test
        @DisplayName(
                "has ground speed, gradient and distance below, and none of them from there on")
        void absent() {
            ClimbPath path = Scene.path(Scene.constantRate(1500), Atmosphere.standard(), above5000);
            ClimbState below = path.at(PressureAltitude.ofMetres(4900));
            assertThat(below.groundSpeed()).isPresent();
            assertThat(below.distance()).isPresent();
            ClimbState above = path.at(PressureAltitude.ofMetres(5100));
            assertThat(above.groundSpeed()).isEmpty();
            assertThat(above.alongTrackWind()).isEmpty();
            assertThat(above.groundGradient()).isEmpty();
            assertThat(above.distance()).isEmpty();
            assertThat(above.timeS()).isPositive();
            assertThat(above.airGradient().inPercent()).isPositive();
        }

        @Test
        @DisplayName("cannot be asked by distance")
        void noDistances() {
            ClimbPath path = Scene.path(Scene.constantRate(1500), Atmosphere.standard(), above5000);
            assertThatThrownBy(() -> path.at(GroundDistance.ofNauticalMiles(1)))
                    .isInstanceOf(IllegalStateException.class)
                    .hasMessage("the climb has no distances: the wind is not known all the way");
        }
    }

    @Test
    @DisplayName("refuses a time of centuries as one after its end")
    void centuries() {
        assertThatThrownBy(() -> Scene.calmStandardClimb().at(Duration.ofDays(300L * 365)))
                .isInstanceOf(OutsideModelException.class);
    }

    @Test
    @DisplayName("has points that anybody can make, and that cannot be made wrong")
    void points() {
        ClimbState state = Scene.calmStandardClimb().at(PressureAltitude.ofFeet(12000));
        double h = state.pressureAltitude().inMetres();
        ClimbState same = ClimbState.ofSi(state.air(), h, 150, 0.5, 5, 50000, 0, 0, 60, 9000);
        assertThat(same.timeS()).isEqualTo(60);
        for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, -1.0}) {
            refused(() -> ClimbState.ofSi(state.air(), h, bad, 0.5, 5, 50000, 0, 0, 60, 9000));
            refused(() -> ClimbState.ofSi(state.air(), h, 150, bad, 5, 50000, 0, 0, 60, 9000));
            refused(() -> ClimbState.ofSi(state.air(), h, 150, 0.5, bad, 50000, 0, 0, 60, 9000));
            refused(() -> ClimbState.ofSi(state.air(), h, 150, 0.5, 5, bad, 0, 0, 60, 9000));
            refused(() -> ClimbState.ofSi(state.air(), h, 150, 0.5, 5, 50000, 0, 0, bad, 9000));
        }
        refused(() -> ClimbState.ofSi(state.air(), Double.NaN, 150, 0.5, 5, 5, 0, 0, 60, 9000));
        refused(() -> ClimbState.ofSi(state.air(), h, 150, 0.5, 5, 5, 0, Double.NaN, 60, 9000));
        refused(() -> ClimbState.ofSi(state.air(), h, 150, 0.5, 5, 5, 0, 0, 60, -1));
    }

    private static void refused(ThrowingCallable point) {
        assertThatThrownBy(point)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith(
                        "a point of a climb needs a level, speeds and a mass above 0");
    }

    @Test
    @DisplayName("reads as one line")
    void reads() {
        assertThat(Scene.calmStandardClimb().at(PressureAltitude.ofFeet(1000)).toString())
                .startsWith("1000 ft, CAS 250.0 kn, M0.38")
                .endsWith(", 1500 ft/min, 0.0 s, 0.00 NM");
    }

    private static TemperatureProfile profile(ModelRange range) {
        return new TemperatureProfile() {
            @Override
            public double temperature(double pressurePa) {
                return StandardAir.temperatureFromPressure(pressurePa);
            }

            @Override
            public ModelRange range() {
                return range;
            }
        };
    }
}
