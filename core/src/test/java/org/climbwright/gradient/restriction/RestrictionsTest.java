package org.climbwright.gradient.restriction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.gradient.restriction.ClimbRequirement.Heights;
import org.climbwright.gradient.restriction.RestrictionOutcome.Verdict;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.ClimbState;
import org.climbwright.path.Scene;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.temperature.IsaDeviation;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Restrictions along a climb")
class RestrictionsTest {
    private static final AltimeterSetting STANDARD = AltimeterSetting.standard();

    /** 1,500 ft/min from 1,000 ft to FL350, 250 kn to FL100, calm standard air. */
    private final ClimbPath path = Scene.calmStandardClimb();

    private static Level level(double flightLevel) {
        return Level.of(PressureAltitude.ofFlightLevel(flightLevel));
    }

    private static Restriction atOrAbove(String name, double miles, Level level) {
        return Restriction.of(
                name, GroundDistance.ofNauticalMiles(miles), AltitudeRestriction.atOrAbove(level));
    }

    private static Restriction atOrBelow(String name, double miles, Level level) {
        return Restriction.of(
                name, GroundDistance.ofNauticalMiles(miles), AltitudeRestriction.atOrBelow(level));
    }

    private double milesAt(double flightLevel) {
        return path.at(PressureAltitude.ofFlightLevel(flightLevel))
                .distance()
                .orElseThrow()
                .inNauticalMiles();
    }

    private static RestrictionOutcome outcome(
            ClimbPath path, AltimeterSetting qnh, Restriction restriction) {
        return Restrictions.along(path, qnh, List.of(restriction)).outcomes().get(0);
    }

    @Test
    @DisplayName("are met by feet in hand, and missed by feet and gradient that are missing")
    void margins() {
        RestrictionOutcome met = outcome(path, STANDARD, atOrAbove("A", milesAt(80), level(75)));
        assertThat(met.verdict()).isEqualTo(Verdict.MET);
        // 1e-5 ft: the search on the path is to 1e-6 m
        assertThat(met.altitudeMargin().orElseThrow().inFeet()).isCloseTo(500.0, within(1e-5));
        assertThat(met.gradientShortfall()).isEmpty();
        RestrictionOutcome missed = outcome(path, STANDARD, atOrAbove("A", milesAt(80), level(90)));
        assertThat(missed.verdict()).isEqualTo(Verdict.MISSED);
        assertThat(missed.altitudeMargin().orElseThrow().inFeet()).isCloseTo(-1000.0, within(1e-5));
        // standard air: 1,000 ft are 304.8 m of geopotential, and 0.03 % to 0.1 % more in height
        double way = missed.restriction().distance().inMetres();
        assertThat(missed.gradientShortfall().orElseThrow().inMetresPerMetre() * way / 304.8)
                .isBetween(1.0003, 1.0012);
        assertThat(missed.reasons()).hasSize(2);
        assertThat(missed.reasons().get(0)).contains("FL080").contains("1000 ft too low");
        assertThat(missed.reasons().get(1)).contains("falls short by");
    }

    @Test
    @DisplayName("tell the reading on the altimeter of the restriction")
    void reading() {
        AltimeterSetting qnh = AltimeterSetting.ofHectopascals(1003);
        Restriction onQnh = atOrAbove("A", milesAt(100), Level.of(AltitudeOnQnh.ofFeet(10000)));
        RestrictionOutcome missed = outcome(path, qnh, onQnh);
        assertThat(missed.verdict()).isEqualTo(Verdict.MISSED);
        Level read = missed.reading().orElseThrow();
        assertThat(read.reference()).isEqualTo(Level.Reference.QNH);
        assertThat(read.inFeet() - 10000.0)
                .isCloseTo(missed.altitudeMargin().orElseThrow().inFeet(), within(1e-6));
        assertThat(missed.predicted().orElseThrow().inFeet()).isCloseTo(10000, within(1e-5));
        assertThat(outcome(path, STANDARD, onQnh).altitudeMargin().orElseThrow().inFeet())
                .isCloseTo(0.0, within(1e-5));
    }

    @Test
    @DisplayName("behind the level-off meet the aeroplane at its top")
    void levelOff() {
        RestrictionOutcome below = outcome(path, STANDARD, atOrAbove("A", 900, level(350)));
        assertThat(below.verdict()).isEqualTo(Verdict.MET);
        assertThat(below.altitudeMargin().orElseThrow().inFeet()).isZero();
        RestrictionOutcome above = outcome(path, STANDARD, atOrAbove("A", 900, level(360)));
        assertThat(above.verdict()).isEqualTo(Verdict.MISSED);
        assertThat(above.altitudeMargin().orElseThrow().inFeet()).isCloseTo(-1000, within(1e-6));
        assertThat(above.reasons().get(0)).contains("levelled off");
        assertThat(above.required().orElseThrow().heights()).isEqualTo(Heights.TEMPERATURE);
    }

    @Test
    @DisplayName("are not known behind the end of the table of rates, nor where no wind is known")
    void notKnown() {
        ClimbPath shortTable =
                Scene.path(
                        Scene.rates(Scene.row(0, 1500), Scene.row(20000, 1500)),
                        Atmosphere.standard(),
                        Winds.calm());
        RestrictionOutcome beyond = outcome(shortTable, STANDARD, atOrAbove("A", 900, level(100)));
        assertThat(beyond.verdict()).isEqualTo(Verdict.NOT_KNOWN);
        assertThat(beyond.reasons().get(0)).contains("the table of rates ends");
        ClimbPath windTo = Scene.path(Scene.constantRate(1500), Atmosphere.standard(), toFl200());
        RestrictionOutcome known =
                outcome(windTo, STANDARD, atOrAbove("A", milesAt(80), level(75)));
        assertThat(known.verdict()).isEqualTo(Verdict.MET);
        assertThat(known.altitudeMargin().orElseThrow().inFeet()).isCloseTo(500, within(1e-5));
        assertThat(known.toString()).startsWith("A at ").contains(" NM met: ");
        Restrictions far =
                Restrictions.along(
                        windTo, STANDARD, List.of(atOrAbove("A", milesAt(210), level(100))));
        assertThat(far.verdict()).isEqualTo(Verdict.NOT_KNOWN);
        assertThat(far.firstMissed()).isEmpty();
        assertThat(far.outcomes().get(0).reasons().get(0)).contains("wind is not known");
        ClimbRequirements fromTop = far.from(windTo.at(windTo.top()));
        assertThat(fromTop.isKnown()).isFalse();
        assertThat(fromTop.governing()).isEmpty();
        assertThat(fromTop.notKnownBecause()).contains("wind");
    }

    private static Winds toFl200() {
        double end = StandardAir.pressureFromAltitude(PressureAltitude.ofFeet(20000).inMetres());
        return new Winds() {
            @Override
            public double eastward(double pressurePa) {
                return covers(pressurePa) ? 0.0 : Double.NaN;
            }

            @Override
            public double northward(double pressurePa) {
                return covers(pressurePa) ? 0.0 : Double.NaN;
            }

            @Override
            public boolean covers(double pressurePa) {
                return pressurePa >= end;
            }

            @Override
            public double[] bendsPa() {
                return new double[] {end};
            }
        };
    }

    @Test
    @DisplayName("take a gradient and a rate: 6,000 ft in 20 NM at 280 kn of ground, 1,400 ft/min")
    void required() {
        // 6,000 ft x 280 NM/h / 20 NM / 60 min
        double rate =
                ClimbRequirement.instrumentRate(
                        4000 * 0.3048, 10000 * 0.3048, 20 * 1852.0, 280 * 1852.0 / 3600.0);
        assertThat(rate / 0.3048 * 60.0).isCloseTo(1400.0, within(1e-9));
        assertThat(ClimbRequirement.gradient(0, 1000, 0.93, 20000)).isEqualTo(0.0465);
        ClimbState start = path.at(path.bottom());
        ClimbRequirement here =
                Restrictions.along(path, STANDARD, List.of(atOrAbove("A", 20, level(70))))
                        .fromTheBeginning()
                        .governing()
                        .orElseThrow();
        assertThat(here.heights()).isEqualTo(Heights.TRUE_ALTITUDES);
        // the altimeter's feet over the time that the climb takes to the point
        double minutes =
                (path.at(GroundDistance.ofNauticalMiles(20)).timeS() - start.timeS()) / 60.0;
        assertThat(here.instrumentRate().orElseThrow().inFeetPerMinute())
                .isCloseTo((7000.0 - start.pressureAltitude().inFeet()) / minutes, within(1e-6));
        assertThat(here.heightToGain().inFeet()).isCloseTo(6000, within(6.0));
    }

    @Test
    @DisplayName("are met by a climb at the rate that they take, and missed by one a tenth slower")
    void theRateIsEnough() {
        ClimbRequirement need =
                Restrictions.along(path, STANDARD, List.of(atOrAbove("A", 60, level(230))))
                        .fromTheBeginning()
                        .governing()
                        .orElseThrow();
        double rate = need.instrumentRate().orElseThrow().inFeetPerMinute();
        // the time to the point is that of the climb as predicted: another rate has another one
        assertThat(margin(1.1 * rate)).isPositive();
        assertThat(margin(0.9 * rate)).isNegative();
        assertThat(Math.abs(margin(rate))).isLessThan(1000.0);
    }

    private double margin(double feetPerMinute) {
        ClimbPath climb =
                Scene.path(Scene.constantRate(feetPerMinute), Atmosphere.standard(), Winds.calm());
        return Restrictions.along(climb, STANDARD, List.of(atOrAbove("A", 60, level(230))))
                .outcomes()
                .get(0)
                .altitudeMargin()
                .orElseThrow()
                .inFeet();
    }

    @Test
    @DisplayName("on a cold day take the same rate on the instrument, and less height and gradient")
    void coldDay() {
        ClimbPath cold =
                Scene.climb(
                                Scene.constantRate(1500),
                                Atmosphere.withDeviationAtEachPressure(IsaDeviation.ofKelvins(-20)),
                                Winds.calm())
                        .between(PressureAltitude.ofFeet(0), PressureAltitude.ofFeet(35000));
        Restrictions restrictions =
                Restrictions.along(cold, STANDARD, List.of(atOrAbove("A", 5, level(10))));
        ClimbRequirement known = restrictions.fromTheBeginning().governing().orElseThrow();
        // a row of the pitfalls, "ISA-20 at sea level: 1000 ft indicated = 931 ft true", computed
        // from the ratio at sea level alone; half a foot less in the middle of the 1,000 ft
        assertThat(known.heightToGain().inFeet()).isCloseTo(931.0, within(1.0));
        ClimbState here = cold.at(cold.bottom());
        double minutes = cold.at(GroundDistance.ofNauticalMiles(5)).timeS() / 60.0;
        assertThat(known.instrumentRate().orElseThrow().inFeetPerMinute())
                .isCloseTo(1000.0 / minutes, within(1e-6));
        // without a true altitude the temperatures of the path make the same height
        ClimbState noAltitude =
                ClimbState.ofSi(
                        AirState.of(here.air().staticPressure(), here.air().staticAirTemperature()),
                        0.0,
                        here.calibratedAirspeed().inMetresPerSecond(),
                        here.mach().number(),
                        here.pressureAltitudeRate().inMetresPerSecond(),
                        here.mass().inKilograms(),
                        0.0,
                        0.0,
                        0.0,
                        0.0);
        for (double flightLevel : new double[] {10, 200, 350}) {
            Restrictions to =
                    Restrictions.along(
                            cold, STANDARD, List.of(atOrAbove("A", 5, level(flightLevel))));
            ClimbRequirement byTemperature = to.from(noAltitude).governing().orElseThrow();
            assertThat(byTemperature.heights()).isEqualTo(Heights.TEMPERATURE);
            // 1e-6 m: quadrature of a smooth ratio, against the closed form of the air
            assertThat(byTemperature.heightToGain().inMetres())
                    .isCloseTo(
                            to.fromTheBeginning()
                                    .governing()
                                    .orElseThrow()
                                    .heightToGain()
                                    .inMetres(),
                            within(1e-6));
        }
    }

    @Test
    @DisplayName("are governed by the steepest ahead, and capped by the flattest upper bound")
    void governing() {
        List<Restriction> list =
                List.of(
                        atOrAbove("FAR", 60, level(150)),
                        atOrBelow("CAP", 30, level(110)),
                        atOrAbove("NEAR", 10, level(50)),
                        atOrBelow("HIGH", 12, level(90)));
        Restrictions restrictions = Restrictions.along(path, STANDARD, list);
        ClimbRequirements from = restrictions.fromTheBeginning();
        assertThat(from.governing().orElseThrow().restriction().name()).isEqualTo("NEAR");
        assertThat(from.capping().orElseThrow().restriction().name()).isEqualTo("CAP");
        assertThat(restrictions.outcomes())
                .extracting(each -> each.restriction().name())
                .containsExactly("NEAR", "HIGH", "CAP", "FAR");
        ClimbState later = path.at(GroundDistance.ofNauticalMiles(15));
        ClimbRequirements ahead = restrictions.from(later);
        assertThat(ahead.required()).hasSize(1);
        assertThat(ahead.governing().orElseThrow().restriction().name()).isEqualTo("FAR");
        assertThat(ahead.governing().orElseThrow().distance().inNauticalMiles())
                .isCloseTo(45.0, within(1e-6));
    }

    @Test
    @DisplayName("name the first that is missed")
    void firstMissed() {
        Restrictions restrictions =
                Restrictions.along(
                        path,
                        STANDARD,
                        List.of(
                                atOrAbove("LATE", milesAt(200), level(300)),
                                atOrAbove("FIRST", milesAt(100), level(120)),
                                atOrAbove("FINE", milesAt(50), level(40))));
        assertThat(restrictions.firstMissed().orElseThrow().restriction().name())
                .isEqualTo("FIRST");
        assertThat(restrictions.verdict()).isEqualTo(Verdict.MISSED);
    }

    @Test
    @DisplayName("of speed are judged at the point, where they apply there")
    void speeds() {
        Restriction low =
                Restriction.of(
                        "A",
                        GroundDistance.ofNauticalMiles(milesAt(60)),
                        SpeedRestriction.notAbove(CalibratedAirspeed.ofKnots(230)));
        RestrictionOutcome fast = outcome(path, STANDARD, low);
        assertThat(fast.verdict()).isEqualTo(Verdict.MISSED);
        assertThat(fast.altitudeVerdict()).isEqualTo(Verdict.MET);
        assertThat(fast.speedMargin().orElseThrow().inKnots()).isCloseTo(-20, within(1e-9));
        Restriction high =
                atOrAbove("B", milesAt(150), level(140))
                        .withSpeed(PublishedSpeedLimits.belowTenThousandFeet());
        RestrictionOutcome fine = outcome(path, STANDARD, high);
        assertThat(fine.verdict()).isEqualTo(Verdict.MET);
        assertThat(fine.speedMargin()).isEmpty();
        assertThat(fine.speed().orElseThrow().inKnots()).isCloseTo(290, within(1e-9));
    }

    @Test
    @DisplayName("conflict where a climb would have to go down, or two windows do not meet")
    void conflicts() {
        Restriction first = atOrAbove("A", 20, level(120));
        Restriction second = atOrBelow("B", 25, Level.of(AltitudeOnQnh.ofFeet(10000)));
        List<Conflict> found = Conflict.among(List.of(second, first), STANDARD);
        assertThat(found).hasSize(1);
        assertThat(found.get(0).earlier()).isEqualTo(first);
        assertThat(found.get(0).reason()).contains("2000 ft above").contains("farther on");
        assertThat(Restrictions.along(path, STANDARD, List.of(first, second)).conflicts())
                .isEqualTo(found);
        // the other way round a climb passes both
        assertThat(
                        Conflict.among(
                                List.of(
                                        atOrAbove("A", 25, level(120)),
                                        atOrBelow("B", 20, level(100))),
                                STANDARD))
                .isEmpty();
        List<Conflict> same =
                Conflict.among(
                        List.of(atOrBelow("B", 20, level(50)), atOrAbove("B", 20, level(60))),
                        STANDARD);
        assertThat(same).hasSize(1);
        assertThat(same.get(0).reason()).contains("same distance").contains("1000 ft above");
        // FL100 against 10,000 ft on QNH: a conflict on a high QNH alone, and met at the very bound
        List<Restriction> mixed =
                List.of(
                        atOrAbove("A", 20, level(100)),
                        atOrBelow("B", 25, Level.of(AltitudeOnQnh.ofFeet(10000))));
        assertThat(Conflict.among(mixed, AltimeterSetting.ofHectopascals(1030))).hasSize(1);
        assertThat(Conflict.among(mixed, STANDARD)).isEmpty();
        assertThat(Conflict.among(mixed, AltimeterSetting.ofHectopascals(1003))).isEmpty();
        Restriction window =
                Restriction.of(
                        "W",
                        GroundDistance.ofNauticalMiles(20),
                        AltitudeRestriction.between(
                                level(100), Level.of(AltitudeOnQnh.ofFeet(10000))));
        assertThat(Conflict.among(List.of(window), AltimeterSetting.ofHectopascals(1030)))
                .singleElement()
                .satisfies(each -> assertThat(each.reason()).contains("window is empty"));
    }

    @Test
    @DisplayName("at the beginning of the climb take no gradient, and are judged all the same")
    void atTheBeginning() {
        RestrictionOutcome here = outcome(path, STANDARD, atOrAbove("A", 0, level(20)));
        assertThat(here.verdict()).isEqualTo(Verdict.MISSED);
        assertThat(here.altitudeMargin().orElseThrow().inFeet()).isCloseTo(-1000, within(1e-6));
        assertThat(here.required()).isEmpty();
        assertThat(here.meanGradient()).isEmpty();
    }

    @Test
    @DisplayName("refuse in a loop what is out of range, as their predicates say")
    void refuses() {
        assertThat(ClimbRequirement.coversInstrumentRate(0, 1, 0, 100)).isFalse();
        assertThatThrownBy(() -> ClimbRequirement.instrumentRate(0, 1, 0, 100))
                .isInstanceOf(OutsideModelException.class);
        assertThat(ClimbRequirement.coversInstrumentRate(0, 1, 100, Double.NaN)).isFalse();
        assertThatThrownBy(() -> ClimbRequirement.instrumentRate(0, 1, 100, Double.NaN))
                .isInstanceOf(OutsideModelException.class);
        assertThat(ClimbRequirement.coversGradient(0, 1, 0.4, 100)).isFalse();
        assertThatThrownBy(() -> ClimbRequirement.gradient(0, 1, 0.4, 100))
                .isInstanceOf(OutsideModelException.class);
        assertThat(ClimbRequirement.coversGradient(0, 99000, 1.5, 100)).isFalse();
        assertThatThrownBy(() -> ClimbRequirement.gradient(0, 99000, 1.5, 100))
                .isInstanceOf(OutsideModelException.class);
        assertThat(ClimbRequirement.coversGradient(0, 1000, 1.0, 100)).isTrue();
        assertThat(ClimbRequirement.coversInstrumentRate(0, 1000, 100, 100)).isTrue();
    }

    @Test
    @DisplayName("travel: answers, requirements and conflicts come back equal")
    void serialization() throws Exception {
        List<Restriction> list =
                List.of(
                        atOrAbove("A", 20, level(120))
                                .withSpeed(PublishedSpeedLimits.belowTenThousandFeet()),
                        atOrBelow("B", 25, Level.of(AltitudeOnQnh.ofFeet(10000))));
        Restrictions restrictions = Restrictions.along(path, STANDARD, list);
        for (Object each :
                List.of(
                        restrictions.outcomes().get(0),
                        restrictions.outcomes().get(1),
                        restrictions.fromTheBeginning(),
                        restrictions.conflicts().get(0),
                        new Clearance(level(240), list))) {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
                out.writeObject(each);
            }
            try (ObjectInputStream in =
                    new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
                assertThat(in.readObject()).isEqualTo(each);
            }
        }
    }
}
