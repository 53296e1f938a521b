package org.climbwright.briefing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.briefing.BriefingScene.AIR;
import static org.climbwright.briefing.BriefingScene.NONE;
import static org.climbwright.briefing.BriefingScene.cabin;
import static org.climbwright.briefing.BriefingScene.level;
import static org.climbwright.briefing.BriefingScene.plan;
import static org.climbwright.briefing.BriefingScene.protection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.atmosphere.altimetry.Altimetry;
import org.climbwright.briefing.ClimbEvent.Kind;
import org.climbwright.briefing.plan.Aerodrome;
import org.climbwright.briefing.plan.ClimbPlan;
import org.climbwright.briefing.plan.PlannedCloud;
import org.climbwright.briefing.plan.PlannedLevelOff;
import org.climbwright.cabin.CabinState;
import org.climbwright.gradient.cloudtop.CloudAhead;
import org.climbwright.gradient.cloudtop.CloudTop;
import org.climbwright.gradient.leveling.LevelOffLead;
import org.climbwright.gradient.leveling.LevelOffPlan;
import org.climbwright.gradient.leveling.LevelOffRule;
import org.climbwright.gradient.restriction.AltitudeRestriction;
import org.climbwright.gradient.restriction.Level;
import org.climbwright.gradient.restriction.Restriction;
import org.climbwright.gradient.restriction.RestrictionOutcome;
import org.climbwright.icing.IcingAnswer;
import org.climbwright.icing.IcingSpan;
import org.climbwright.icing.ProtectionAdvice;
import org.climbwright.path.ClimbState;
import org.climbwright.path.Side;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.altitude.GeometricAltitude;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.speed.GeometricRate;
import org.climbwright.sounding.Sounding;
import org.climbwright.sounding.SoundingLevel;
import org.climbwright.sounding.UnobservedWind;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

@DisplayName("A climb briefing")
class ClimbBriefingTest {
    private final ClimbBriefing briefing = ClimbBriefing.of(plan(30000), AIR);

    @Test
    @DisplayName("has the cabin at each check and at the top, from the field's pressure altitude")
    void cabinChecks() {
        assertThat(briefing.cabin()).isEmpty();
        ClimbBriefing pressurised = ClimbBriefing.of(plan(30000).withCabin(cabin(8.0)), AIR);
        CabinBriefing cabin = pressurised.cabin().orElseThrow();
        assertThat(cabin.checks())
                .extracting(state -> Math.rint(state.aeroplane().inFeet()))
                .containsExactly(10000.0, 20000.0, 30000.0);
        assertThat(cabin.expected().plan().departure()).isEqualTo(pressurised.path().bottom());
        CabinState top = cabin.checks().get(2);
        assertThat(top.time().toNanos() / 1e9)
                .isCloseTo(pressurised.path().at(pressurised.path().top()).timeS(), within(1e-6));
        CabinBriefing.Margin margin = cabin.margin(top);
        assertThat(margin.toRelief().inPascals() - margin.toScheduled().inPascals())
                .isCloseTo(0.5 * 6894.757293168361, within(1e-6));
        assertThat(margin.toWarning().inFeet())
                .isCloseTo(10000.0 - top.cabin().inFeet(), within(1e-9));
        assertThat(pressurised.levels().get(pressurised.levels().size() - 1).events())
                .extracting(ClimbEvent::kind)
                .contains(Kind.CABIN);
    }

    @Test
    @DisplayName("holds a restriction on QNH against the reading on QNH, not the pressure altitude")
    void restrictionOnQnh() {
        ClimbBriefing first = ClimbBriefing.of(plan(30000), AIR);
        ClimbState there = first.path().at(PressureAltitude.ofFeet(6000));
        double reading = Altimetry.altitudeOnQnh(there.pressureAltitude(), first.qnh()).inFeet();
        assertThat(reading).isNotCloseTo(6000.0, within(5.0));
        Restriction atReading =
                Restriction.of(
                        "invented",
                        there.distance().orElseThrow(),
                        AltitudeRestriction.atOrAbove(Level.of(AltitudeOnQnh.ofFeet(reading - 1))));
        ClimbBriefing restricted =
                ClimbBriefing.of(plan(30000).withRestrictions(List.of(atReading)), AIR);
        RestrictionOutcome outcome = restricted.restrictions().outcomes().get(0);
        assertThat(outcome.altitudeMargin().orElseThrow().inFeet()).isCloseTo(1.0, within(1e-3));
        assertThat(restricted.levels().stream().flatMap(level -> level.events().stream()))
                .extracting(ClimbEvent::text)
                .contains("invented: met");
    }

    @Test
    @DisplayName("notes by how much a least altitude on QNH is lower than it reads in cold air")
    void coldAir() {
        // -40 °C at every level: true heights by the hypsometric equation of one temperature
        double kelvins = 233.15;
        double perLog = 287.05287 * kelvins / 9.80665;
        Sounding cold =
                Sounding.of(
                        "invented",
                        "",
                        Stream.of(1000.0, 700.0, 500.0, 300.0, 200.0)
                                .map(
                                        hpa ->
                                                level(
                                                        hpa,
                                                        100.0 + perLog * Math.log(1000.0 / hpa),
                                                        kelvins - 273.15,
                                                        NONE,
                                                        5.0))
                                .toList());
        Restriction least =
                Restriction.of(
                        "invented",
                        GroundDistance.ofNauticalMiles(5),
                        AltitudeRestriction.atOrAbove(Level.of(AltitudeOnQnh.ofFeet(5000))));
        ClimbBriefing briefed =
                ClimbBriefing.of(plan(30000).withRestrictions(List.of(least)), cold);
        double pressurePa =
                StandardAir.pressureFromAltitude(
                        Altimetry.pressureAltitude(AltitudeOnQnh.ofFeet(5000), briefed.qnh())
                                .inMetres());
        double geopotentialM = 100.0 + perLog * Math.log(100000.0 / pressurePa);
        double trueFt = 6356766.0 * geopotentialM / (6356766.0 - geopotentialM) / 0.3048;
        assertThat(5000.0 - trueFt).isBetween(700.0, 900.0);
        assertThat(briefed.notes())
                .anyMatch(
                        note ->
                                note.startsWith(
                                        String.format(
                                                "The least altitude of invented is in this air"
                                                        + " %.0f ft lower",
                                                5000.0 - trueFt)));
        assertThat(ClimbBriefing.of(plan(30000).withRestrictions(List.of(least)), AIR).notes())
                .noneMatch(note -> note.startsWith("The least altitude"));
    }

    @Test
    @DisplayName("notes a restriction on QNH above the transition altitude")
    void restrictionAboveTransition() {
        Restriction high =
                Restriction.of(
                        "invented",
                        GroundDistance.ofNauticalMiles(10),
                        AltitudeRestriction.atOrBelow(Level.of(AltitudeOnQnh.ofFeet(9000))));
        Restriction low =
                Restriction.of(
                        "lower",
                        GroundDistance.ofNauticalMiles(5),
                        AltitudeRestriction.atOrAbove(Level.of(AltitudeOnQnh.ofFeet(3000))));
        ClimbBriefing restricted =
                ClimbBriefing.of(plan(30000).withRestrictions(List.of(high, low)), AIR);
        assertThat(restricted.notes())
                .filteredOn(note -> note.contains("above the transition altitude of 5000 ft"))
                .hasSize(1)
                .allMatch(note -> note.startsWith("The restriction at invented is on QNH"));
    }

    @Test
    @DisplayName("plans the level-off where the climb gets to its level, and only there")
    void levelOff() {
        PlannedLevelOff planned =
                new PlannedLevelOff(LevelOffRule.tradeFigure(), LevelOffLead.tenPercent());
        ClimbBriefing reached = ClimbBriefing.of(plan(10000).withLevelOff(planned), AIR);
        LevelOffPlan plan = reached.levelOff().orElseThrow();
        assertThat(plan.isReducedForRule()).isTrue();
        assertThat(plan.rateInForce().inFeetPerMinute()).isCloseTo(1500.0, within(1e-6));
        assertThat(plan.beginsReducing().inFeet()).isGreaterThan(1000.0);
        ClimbBriefing tooHigh = ClimbBriefing.of(plan(41000).withLevelOff(planned), AIR);
        assertThat(tooHigh.levelOff()).isEmpty();
    }

    @Test
    @DisplayName(
            "answers for a cloud with margins, and with no verdict where nobody gave a clearance")
    void cloud() {
        CloudAhead cloud =
                new CloudAhead(
                        GeometricAltitude.ofFeet(3000),
                        GeometricAltitude.ofFeet(6000),
                        GroundDistance.ofNauticalMiles(20),
                        GroundDistance.ofNauticalMiles(22),
                        GeometricRate.ofFeetPerMinute(0),
                        GroundDistance.ofNauticalMiles(1));
        ClimbBriefing asked =
                ClimbBriefing.of(
                        plan(30000).withCloud(new PlannedCloud(cloud, Optional.empty())), AIR);
        assertThat(asked.cloudTop().orElseThrow().answer())
                .isIn(CloudTop.Answer.NO_VERDICT, CloudTop.Answer.CANNOT_BE_TOLD);
        assertThat(briefing.cloudTop()).isEmpty();
    }

    @Test
    @DisplayName("notes where the cabin cannot keep its rate because of its differential")
    void cabinGivesWay() {
        ClimbBriefing weak = ClimbBriefing.of(plan(30000).withCabin(cabin(3.0)), AIR);
        assertThat(weak.notes())
                .anyMatch(
                        note ->
                                note.startsWith("On this climb the cabin cannot keep")
                                        && note.contains("the scheduled differential is kept"));
    }

    @Test
    @DisplayName("begins where an altimeter on its QNH shows the aerodrome's elevation")
    void beginsAtTheElevation() {
        BriefingLevel first = briefing.levels().get(0);
        assertThat(first.altitudeOnQnh().orElseThrow().inMetres()).isCloseTo(150, within(1e-8));
        assertThat(first.state().air().geopotentialAltitude().orElseThrow().inMetres())
                .isCloseTo(150, within(1e-8));
        assertThat(first.state().timeS()).isZero();
    }

    @Test
    @DisplayName("takes a QNH that the plan states, and leaves the air as it is")
    void statedQnh() {
        ClimbPlan stated =
                plan(30000)
                        .withAerodrome(
                                new Aerodrome(
                                        "invented",
                                        GeopotentialAltitude.ofMetres(150),
                                        AltitudeOnQnh.ofFeet(5000),
                                        Optional.of(AltimeterSetting.ofHectopascals(990))));
        ClimbBriefing other = ClimbBriefing.of(stated, AIR);
        assertThat(other.qnh()).isEqualTo(AltimeterSetting.ofHectopascals(990));
        assertThat(other.path().bottom()).isEqualTo(briefing.path().bottom());
    }

    @Test
    @DisplayName("has a line each 2,000 ft of pressure altitude")
    void every2000Feet() {
        List<Double> feet =
                briefing.levels().stream()
                        .map(level -> level.state().pressureAltitude().inFeet())
                        .toList();
        for (double each = 2000; each <= 30000; each += 2000) {
            assertThat(feet).contains(each);
        }
        assertThat(feet).isSorted();
    }

    @Test
    @DisplayName("tells every kind of event of this climb, in the order of the climb")
    void events() {
        List<Kind> kinds = new ArrayList<>();
        briefing.levels().forEach(l -> l.events().forEach(event -> kinds.add(event.kind())));
        assertThat(kinds)
                .containsExactly(
                        Kind.BOTTOM,
                        Kind.ICE_PROTECTION_ON,
                        Kind.ICING_ENTRY,
                        Kind.ZERO_CELSIUS,
                        Kind.INVERSION_BASE,
                        Kind.ZERO_CELSIUS,
                        Kind.ICING_EXIT,
                        Kind.INVERSION_TOP,
                        Kind.TRANSITION_ALTITUDE,
                        Kind.ZERO_CELSIUS,
                        Kind.CHECK,
                        Kind.CHANGE_OF_SPEED,
                        Kind.ICING_NOT_KNOWN_ENTRY,
                        Kind.CHECK,
                        Kind.CROSSOVER,
                        Kind.ICING_NOT_KNOWN_EXIT,
                        Kind.CHECK,
                        Kind.TOP);
    }

    @Test
    @DisplayName("puts the speed limit at its altitude on QNH and not at a pressure altitude")
    void speedLimitOnQnh() {
        BriefingLevel change = only(Kind.CHANGE_OF_SPEED);
        double expected =
                PressureAltitude.ofFeet(10000).inMetres()
                        + StandardAir.altitudeFromPressure(briefing.qnh().inPascals());
        assertThat(change.state().pressureAltitude().inMetres()).isCloseTo(expected, within(1e-9));
        assertThat(Math.abs(change.state().pressureAltitude().inFeet() - 10000))
                .isGreaterThan(30.0);
        assertThat(change.side()).isEqualTo(Side.BELOW);
        BriefingLevel after = briefing.levels().get(briefing.levels().indexOf(change) + 1);
        assertThat(after.side()).isEqualTo(Side.ABOVE);
        assertThat(after.state().pressureAltitude()).isEqualTo(change.state().pressureAltitude());
        assertThat(after.state().calibratedAirspeed().inKnots()).isEqualTo(290);
    }

    @Test
    @DisplayName(
            "keeps both sides of the change of speed when it falls next to a line of the table")
    void changeOfSpeedBesideALine() {
        ClimbPlan beside =
                plan(30000)
                        .withAerodrome(
                                new Aerodrome(
                                        "invented",
                                        GeopotentialAltitude.ofMetres(150),
                                        AltitudeOnQnh.ofFeet(5000),
                                        Optional.of(AltimeterSetting.ofHectopascals(1013.2506))));
        List<BriefingLevel> levels = ClimbBriefing.of(beside, AIR).levels();
        List<Double> speeds =
                levels.stream()
                        .filter(l -> Math.abs(l.state().pressureAltitude().inFeet() - 10000) < 1)
                        .map(l -> l.state().calibratedAirspeed().inKnots())
                        .toList();
        assertThat(speeds).containsExactly(250.0, 290.0);
    }

    @Test
    @DisplayName("remarks a stated QNH that is not the one of the air, with both altitudes")
    void foreignQnh() {
        ClimbPlan foreign =
                plan(30000)
                        .withAerodrome(
                                new Aerodrome(
                                        "invented",
                                        GeopotentialAltitude.ofMetres(150),
                                        AltitudeOnQnh.ofFeet(5000),
                                        Optional.of(AltimeterSetting.ofHectopascals(1040))));
        assertThat(ClimbBriefing.of(foreign, AIR).notes())
                .anyMatch(
                        note ->
                                note.matches(
                                        "On the QNH stated the altimeter shows \\d+ ft at the"
                                                + " aerodrome of 492 ft: .*"));
        assertThat(briefing.notes()).noneMatch(note -> note.startsWith("On the QNH stated"));
    }

    @Test
    @DisplayName("has a note where humidity is not known, beside the spans")
    void notesUnknownHumidity() {
        assertThat(briefing.notes()).anyMatch(note -> note.startsWith("Humidity is not known"));
    }

    @Test
    @DisplayName("finds a thin icing layer between the levels of a coarse sounding")
    void thinLayer() {
        Sounding coarse =
                Sounding.of(
                        "",
                        "",
                        List.of(
                                level(900, 1000, 9, 8.5, 5),
                                level(700, NONE, -7, -13, 5),
                                level(200, NONE, -55, -75, 5)));
        ClimbPlan high =
                plan(30000)
                        .withAerodrome(
                                plan(30000)
                                        .aerodrome()
                                        .withElevation(GeopotentialAltitude.ofMetres(1000)));
        ClimbPlan rule = high.withIceProtection(protection(75));
        List<IcingSpan> spans =
                ClimbBriefing.of(rule, coarse).iceProtection().get(0).spans(IcingAnswer.CONDITIONS);
        assertThat(spans).hasSize(1);
        // cold begins and moist ends between the same two samples; by a scan foot by foot
        assertThat(spans.get(0).bottom().inFeet()).isCloseTo(7025.2, within(0.5));
        assertThat(spans.get(0).top().inFeet()).isCloseTo(7348.3, within(0.5));
    }

    @Test
    @DisplayName("says where a wind is taken that nobody observed")
    void takenWind() {
        ClimbPlan calm = plan(30000).withUnobservedWind(UnobservedWind.CALM);
        List<SoundingLevel> noLowWind = new ArrayList<>(AIR.levels());
        noLowWind.set(0, level(1000, 100, 2, 1, NONE));
        assertThat(ClimbBriefing.of(calm, Sounding.of("", "", noLowWind)).notes())
                .contains("Where no wind was observed a calm is taken.");
        assertThat(briefing.notes()).noneMatch(note -> note.contains("calm is taken"));
    }

    @Test
    @DisplayName("tells how far the altimeter jumps at the transition altitude, and no QNH above")
    void transitionAltitude() {
        BriefingLevel transition = only(Kind.TRANSITION_ALTITUDE);
        double feet = transition.state().pressureAltitude().inFeet();
        assertThat(transition.altitudeOnQnh().orElseThrow().inFeet()).isCloseTo(5000, within(1e-9));
        assertThat(transition.events().get(0).text())
                .isEqualTo(
                        String.format(
                                "transition altitude: altimeter from 5000 to %.0f ft (%+.0f)",
                                feet, feet - 5000));
        briefing.levels().stream()
                .filter(level -> level.state().pressureAltitude().inFeet() > feet + 1)
                .forEach(level -> assertThat(level.altitudeOnQnh()).isEmpty());
    }

    @Test
    @DisplayName("has the 0 °C levels of the sounding with their direction")
    void freezingLevels() {
        assertThat(briefing.freezingLevels()).hasSize(3);
        assertThat(briefing.freezingLevels().stream().map(c -> c.trend().name()))
                .containsExactly("FALLING", "RISING", "FALLING");
    }

    @Test
    @DisplayName("says where engine anti-ice is due, by when, and where nobody knows")
    void icing() {
        ProtectionAdvice engine = briefing.iceProtection().get(0);
        assertThat(engine.spans(IcingAnswer.CONDITIONS)).hasSize(1);
        assertThat(engine.periods()).hasSize(1);
        assertThat(engine.periods().get(0).isOnBeforeClimb()).isTrue();
        assertThat(engine.spans(IcingAnswer.NOT_KNOWN)).hasSize(1);
        // dew points end at 500 hPa
        assertThat(engine.spans(IcingAnswer.NOT_KNOWN).get(0).entry().air().pressurePa())
                .isCloseTo(50000.0, within(0.01));
    }

    @Test
    @DisplayName("does not call it an exit when the climb ends inside")
    void endsInside() {
        BriefingLevel top = briefing.levels().get(briefing.levels().size() - 1);
        assertThat(top.events().get(0).text())
                .isEqualTo("engine icing conditions not known, still where the climb ends");
    }

    @Test
    @DisplayName("says how far the air is from that of the table of rates")
    void notesTheAir() {
        assertThat(briefing.notes())
                .anyMatch(
                        note ->
                                note.startsWith(
                                        "The table of rates is for ISA+0 K, the air at the levels"
                                                + " told"));
    }

    @Test
    @DisplayName("always says what it is good for, and defers to those who decide")
    void limits() {
        assertThat(briefing.limits().get(0))
                .isEqualTo(
                        "For study and simulation, not for use in flight: the flight manual, the"
                                + " operator's procedures, local regulations and licensed practice"
                                + " decide.");
        assertThat(briefing.limits()).anyMatch(limit -> limit.contains("not \"no icing\""));
    }

    @Nested
    @DisplayName("of a climb that cannot be had in full")
    class NotInFull {
        @Test
        @DisplayName("ends where the sounding ends, and says so")
        void soundingEnds() {
            Sounding shallow = Sounding.of("", "", AIR.levels().subList(0, 6));
            ClimbBriefing shorter = ClimbBriefing.of(plan(30000), shallow);
            assertThat(shorter.path().endsBecause()).isEqualTo("the known air ends");
            assertThat(shorter.notes().get(0))
                    .isEqualTo(
                            "The climb ends at 18289 ft and not at 30000 ft: the known air ends.");
        }

        @Test
        @DisplayName("has no ground speed without a wind, and says why")
        void noWind() {
            List<SoundingLevel> calmless =
                    AIR.levels().stream()
                            .map(
                                    l ->
                                            SoundingLevel.ofSi(
                                                    l.staticPressure().orElseThrow().inPascals(),
                                                    l.geopotentialAltitude()
                                                            .orElseThrow()
                                                            .inMetres(),
                                                    l.staticAirTemperature()
                                                            .orElseThrow()
                                                            .inKelvins(),
                                                    NONE,
                                                    NONE,
                                                    NONE))
                            .toList();
            ClimbBriefing windless = ClimbBriefing.of(plan(30000), Sounding.of("", "", calmless));
            assertThat(windless.levels())
                    .allMatch(level -> level.state().groundSpeed().isEmpty())
                    .allMatch(level -> level.state().groundGradient().isEmpty());
            // nothing covered yet is known; everything after it is not
            assertThat(windless.levels().subList(1, windless.levels().size()))
                    .allMatch(level -> level.state().distance().isEmpty());
            assertThat(windless.notes()).anyMatch(note -> note.startsWith("No wind was observed"));
        }

        @Test
        @DisplayName("refuses an aerodrome below the lowest level of the sounding, with the range")
        void aerodromeBelow() {
            ClimbPlan low =
                    plan(30000)
                            .withAerodrome(
                                    plan(30000)
                                            .aerodrome()
                                            .withElevation(GeopotentialAltitude.ofMetres(99)));
            assertThatThrownBy(() -> ClimbBriefing.of(low, AIR))
                    .isInstanceOf(OutsideModelException.class)
                    .hasMessage(
                            "aerodrome elevation must be from 100.0 to 11750.0 m, but was 99.0 m:"
                                    + " the sounding has no air outside, choose an elevation within"
                                    + " it");
        }
    }

    private BriefingLevel only(Kind kind) {
        List<BriefingLevel> found =
                briefing.levels().stream()
                        .filter(l -> l.events().stream().anyMatch(event -> event.kind() == kind))
                        .toList();
        assertThat(found).hasSize(1);
        return found.get(0);
    }
}
