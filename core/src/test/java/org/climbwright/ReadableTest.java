package org.climbwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import org.climbwright.airspeed.Airspeeds;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.AltitudeDatum;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.TemperatureProfile;
import org.climbwright.atmosphere.altimetry.AltimeterError;
import org.climbwright.cabin.CabinRateLimits;
import org.climbwright.cabin.CabinState;
import org.climbwright.cabin.DifferentialLimits;
import org.climbwright.gradient.leveling.LevelOffLead;
import org.climbwright.gradient.leveling.LevelOffPlan;
import org.climbwright.gradient.leveling.LevelOffRule;
import org.climbwright.icing.IcingAnswer;
import org.climbwright.icing.IcingRule;
import org.climbwright.icing.IcingSpan;
import org.climbwright.icing.ProtectedPart;
import org.climbwright.icing.ProtectionAdvice;
import org.climbwright.icing.ProtectionPeriod;
import org.climbwright.icing.ProtectionPlan;
import org.climbwright.icing.VisibleMoisture;
import org.climbwright.icing.potential.FreezingLevels;
import org.climbwright.path.ClimbState;
import org.climbwright.profile.ProfileEvent;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.humidity.RelativeHumidity;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.pressure.DifferentialPressure;
import org.climbwright.quantity.speed.CabinAltitudeRate;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.speed.PressureAltitudeRate;
import org.climbwright.quantity.temperature.IsaDeviation;
import org.climbwright.quantity.temperature.IsaDeviationAtAltitude;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.quantity.temperature.TotalAirTemperature;
import org.climbwright.sounding.Inversion;
import org.climbwright.sounding.IsothermCrossing;
import org.climbwright.sounding.SoundingLevel;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** What is seen where somebody types the value and nothing else: in a shell, in a debugger. */
@DisplayName("For reading, on one line of rounded figures with their units,")
class ReadableTest {
    private static final double KNOT = 1852.0 / 3600.0;

    private static AirState standard(double flightLevel) {
        return Atmosphere.standard().at(PressureAltitude.ofFlightLevel(flightLevel));
    }

    /** 250 kn and 1,800 ft/min after so many seconds. */
    private static ClimbState state(double flightLevel, double timeS) {
        return ClimbState.ofSi(
                standard(flightLevel),
                flightLevel * 30.48,
                250.0 * KNOT,
                0.45251,
                9.144,
                58000.0,
                0.0,
                0.0,
                timeS,
                10.25 * 1852.0);
    }

    @Nested
    @DisplayName("air and speed:")
    class AirAndSpeed {
        @Test
        @DisplayName("air tells pressure, temperature, humidity and altitude")
        void air() {
            assertThat(standard(0))
                    .hasToString(
                            "air of 1013.25 hPa and 15.00 °C, vapour pressure 0.00 Pa, geopotential"
                                    + " altitude 0 ft");
            assertThat(AirState.ofSi(50000.0, 273.15, Double.NaN, Double.NaN))
                    .hasToString(
                            "air of 500.00 hPa and 0.00 °C, humidity not known, geopotential"
                                    + " altitude not known");
        }

        @Test
        @DisplayName("airspeeds tell Mach, CAS and TAS")
        void airspeeds() { // sound at 15 °C: 340.294 m/s, 661.48 kn
            assertThat(Airspeeds.from(Mach.of(0.5), standard(0)))
                    .hasToString("M0.5000, CAS 330.7 kn, TAS 330.7 kn");
        }

        @Test
        @DisplayName("atmospheres tell which they are")
        void atmospheres() {
            AltitudeDatum qnh = AltitudeDatum.onQnh(AltimeterSetting.parse("1013.25 hPa"));
            assertThat(Atmosphere.standard()).hasToString("ICAO standard atmosphere");
            assertThat(Atmosphere.withDeviationAtEachPressure(IsaDeviation.ofKelvins(10), qnh))
                    .hasToString("ICAO standard atmosphere +10.0 K at every pressure");
        }

        @Test
        @DisplayName("a wrong setting and the levels of 0 °C are told in their words")
        void inWords() {
            AltimeterError error = new AltimeterError(AltitudeChange.ofFeet(510), "so it is set");
            assertThat(error).hasToString(error.inWords());
            FreezingLevels levels = FreezingLevels.in(Atmosphere.standard());
            assertThat(levels).hasToString(levels.inWords());
        }

        @Test
        @DisplayName("a level of 0 °C tells what is above, an inversion its ends")
        void levels() {
            assertThat(new IsothermCrossing(standard(100), IsothermCrossing.Trend.RISING))
                    .hasToString("10000 ft, warmer upwards (" + standard(100) + ")");
            assertThat(new Inversion(standard(100), standard(0)))
                    .hasToString("-4.8 °C at 10000 ft to 15.0 °C at 0 ft");
        }
    }

    @Nested
    @DisplayName("the climb:")
    class TheClimb {
        @Test
        @DisplayName("a point tells level, speeds, rate, time and distance")
        void point() {
            assertThat(state(100, 312.54))
                    .hasToString("10000 ft, CAS 250.0 kn, M0.4525, 1800 ft/min, 312.5 s, 10.25 NM");
        }

        @Test
        @DisplayName("an event tells how the aeroplane leaves, where that is another way")
        void event() {
            ClimbState before = state(100, 312.5);
            ClimbState after = state(100, 372.5);
            ProfileEvent.Kind kind = ProfileEvent.Kind.LEVEL_LEFT;
            assertThat(new ProfileEvent(kind, "level left", after, after))
                    .hasToString("level left: " + after);
            assertThat(new ProfileEvent(kind, "level left", before, after))
                    .hasToString("level left: " + before + "; leaving: " + after);
        }

        @Test
        @DisplayName("a level-off tells its stretches")
        void levelOff() {
            LevelOffPlan plan =
                    LevelOffPlan.of(
                            PressureAltitudeRate.ofFeetPerMinute(3000),
                            LevelOffRule.tradeFigure(),
                            LevelOffLead.tenPercent());
            assertThat(plan)
                    .hasToString(
                            "at most 1,500 ft/min in the last 1,000 ft, lead of 10.0 % of the rate;"
                                + " reducing to the rate of the rule from 1225 ft to go, 3000"
                                + " ft/min, for 6.0 s; keeping the rate from 1000 ft to go, 1500"
                                + " ft/min, for 34.0 s; levelling off from 150 ft to go, 1500"
                                + " ft/min, for 12.0 s");
            assertThat(plan.rule())
                    .hasToString(
                            "at most 1,500 ft/min in the last 1,000 ft (common practice, no"
                                    + " source)");
        }

        @Test
        @DisplayName("a cabin tells both altitudes, rate, differential and what bounds it")
        void cabin() {
            CabinState cabin =
                    new CabinState(
                            Duration.ofMillis(90500),
                            PressureAltitude.ofFeet(35000),
                            CabinAltitude.ofFeet(7382.4),
                            CabinAltitudeRate.ofFeetPerMinute(231.9),
                            DifferentialPressure.ofPoundsPerSquareInch(7.721),
                            CabinState.BoundBy.RELIEF_SETTING);
            assertThat(cabin)
                    .hasToString(
                            "90.5 s: aeroplane at 35,000 ft, cabin at 7,382 ft, 232 ft/min,"
                                    + " differential 7.72 psi, bound by relief setting");
        }
    }

    @Nested
    @DisplayName("icing:")
    class Icing {
        private final IcingSpan span =
                new IcingSpan(
                        ProtectedPart.ENGINE,
                        IcingAnswer.CONDITIONS,
                        state(100, 200.0),
                        state(120, 280.0),
                        TotalAirTemperature.ofCelsius(2),
                        StaticAirTemperature.ofCelsius(-6),
                        "cold and moist");
        private final ProtectionPeriod period =
                new ProtectionPeriod(
                        state(90, 170.0), false, state(120, 280.0), false, List.of(span));
        private final ProtectionPlan plan =
                ProtectionPlan.antiIce(
                        IcingRule.engine(
                                VisibleMoisture.ofRelativeHumidity(RelativeHumidity.ofPercent(80))),
                        Duration.ofSeconds(30),
                        Duration.ofMinutes(2));

        @Test
        @DisplayName("a span tells part, answer, levels, time and why")
        void span() {
            assertThat(span)
                    .hasToString(
                            "engine, icing conditions from 10000 to 12000 ft, 80.0 s: cold and"
                                    + " moist");
        }

        @Test
        @DisplayName("a period tells by when on, and before when never off")
        void period() {
            assertThat(period)
                    .hasToString(
                            "on by 9000 ft pressure altitude, by the rule off not before 12000 ft,"
                                    + " 110.0 s later");
            ClimbState off = state(120, 280.0);
            assertThat(new ProtectionPeriod(state(10, 0.0), true, off, true, List.of(span)))
                    .hasToString(
                            "on before the climb begins at 1000 ft pressure altitude, still on at"
                                    + " the top, 12000 ft, 280.0 s later");
        }

        @Test
        @DisplayName("advice tells its periods, and without one that this is not \"no icing\"")
        void advice() {
            assertThat(new ProtectionAdvice(plan, List.of(span), List.of(period, period)))
                    .hasToString("engine: " + period + "; " + period);
            assertThat(new ProtectionAdvice(plan, List.of(), List.of()))
                    .hasToString(
                            "engine: no icing conditions by its rule, which is not \"no icing\"");
            IcingSpan unknown =
                    new IcingSpan(
                            ProtectedPart.ENGINE,
                            IcingAnswer.NOT_KNOWN,
                            span.entry(),
                            span.exit(),
                            span.coldestTotal(),
                            span.coldestStatic(),
                            "humidity not observed");
            assertThat(new ProtectionAdvice(plan, List.of(unknown), List.of()))
                    .hasToString(
                            "engine: no icing conditions by its rule, which is not \"no icing\","
                                    + " and in part it cannot be told");
        }
    }

    @Nested
    @DisplayName("what is given:")
    class Given {
        @Test
        @DisplayName("a datum tells pressure and altitude")
        void datum() {
            assertThat(AltitudeDatum.standard())
                    .hasToString("1013.25 hPa at geopotential altitude 0 ft");
        }

        @Test
        @DisplayName("air tells what it was made of, and where it is a guess")
        void air() {
            AltitudeDatum sea = AltitudeDatum.standard();
            Atmosphere warm =
                    Atmosphere.withDeviationAtEachAltitude(
                            IsaDeviationAtAltitude.ofKelvins(10), sea);
            assertThat(warm)
                    .hasToString("ICAO standard atmosphere +10.0 K at every geopotential altitude");
            TemperatureProfile profile =
                    new TemperatureProfile() {
                        @Override
                        public double temperature(double pressurePa) {
                            return 273.15;
                        }

                        @Override
                        public ModelRange range() {
                            return new ModelRange("static pressure", 5e4, 102000, "Pa", "no more");
                        }
                    };
            String told =
                    "air of a temperature profile from 1020.00 to 500.00 hPa, 1013.25 hPa at"
                            + " geopotential altitude 0 ft";
            Atmosphere observed = Atmosphere.of(profile, sea);
            assertThat(observed).hasToString(told);
            // standard at 500 hPa: 252.0 K, by the table of the standard at 5,574 m
            assertThat(observed.withDeviationCarriedOnAboveTop())
                    .hasToString(
                            told
                                    + ", above 500.00 hPa carried on as the standard atmosphere"
                                    + " +21.2 K, a guess");
        }

        @Test
        @DisplayName("moisture tells its threshold or its bands")
        void moisture() {
            VisibleMoisture humid =
                    VisibleMoisture.ofRelativeHumidity(RelativeHumidity.ofPercent(80));
            VisibleMoisture icy =
                    VisibleMoisture.ofRelativeHumidityOverIce(RelativeHumidity.ofPercent(100));
            assertThat(humid).hasToString("relative humidity over water of 80 % or above");
            assertThat(IcingRule.engine(humid)).asString().endsWith(", " + humid);
            assertThat(humid.or(icy))
                    .hasToString(
                            humid
                                    + ", or relative humidity over ice, over water above 0 °C of"
                                    + " 100 % or above");
        }

        @Test
        @DisplayName("a level of an ascent tells what was reported, rounded")
        void level() {
            assertThat(SoundingLevel.ofSi(92500.0, 766.3, 276.54999999999995, 274.15, 5.0, -5.0))
                    .hasToString(
                            "level of 925.00 hPa, 766 m, 3.4 °C, dew point 1.0 °C, wind from 315°"
                                    + " true at 13.7 kn");
        }

        @Test
        @DisplayName("limits of a cabin tell both ways, and the three differentials")
        void cabin() {
            assertThat(CabinRateLimits.ofCommonPractice())
                    .hasToString("cabin at most 500 ft/min up, 300 ft/min down");
            assertThat(
                            new DifferentialLimits(
                                    DifferentialPressure.ofPoundsPerSquareInch(8.2),
                                    DifferentialPressure.ofPoundsPerSquareInch(8.6),
                                    DifferentialPressure.ofPoundsPerSquareInch(-0.5)))
                    .hasToString(
                            "differential scheduled up to 8.20 psi, relief at 8.60 psi, negative"
                                    + " relief at -0.50 psi");
        }
    }
}
