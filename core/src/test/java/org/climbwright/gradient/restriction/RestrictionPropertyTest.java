package org.climbwright.gradient.restriction;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.climbwright.gradient.restriction.RestrictionOutcome.Verdict;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.Scene;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.pressure.AltimeterSetting;

@Label("Any restriction of an altitude")
class RestrictionPropertyTest {
    private final ClimbPath path = Scene.calmStandardClimb();

    private static Restriction atOrAbove(double miles, Level level) {
        return Restriction.of(
                "P", GroundDistance.ofNauticalMiles(miles), AltitudeRestriction.atOrAbove(level));
    }

    private RestrictionOutcome outcome(double qnh, Restriction restriction) {
        return Restrictions.along(path, AltimeterSetting.ofHectopascals(qnh), List.of(restriction))
                .outcomes()
                .get(0);
    }

    @Property(tries = 100)
    @Label("is met exactly where its margin is not below zero; raised it is never easier")
    void raised(
            @ForAll @DoubleRange(min = 1, max = 200) double miles,
            @ForAll @DoubleRange(min = 1500, max = 30000) double feet,
            @ForAll @DoubleRange(min = 0.1, max = 9000) double more,
            @ForAll @DoubleRange(min = 960, max = 1050) double qnh) {
        RestrictionOutcome low =
                outcome(qnh, atOrAbove(miles, Level.of(AltitudeOnQnh.ofFeet(feet))));
        RestrictionOutcome high =
                outcome(qnh, atOrAbove(miles, Level.of(AltitudeOnQnh.ofFeet(feet + more))));
        assertThat(low.verdict() == Verdict.MET)
                .isEqualTo(low.altitudeMargin().orElseThrow().inMetres() >= 0.0);
        assertThat(high.altitudeMargin().orElseThrow())
                .isLessThan(low.altitudeMargin().orElseThrow());
        assertThat(high.required().orElseThrow().gradient())
                .isGreaterThan(low.required().orElseThrow().gradient());
        assertThat(high.required().orElseThrow().instrumentRate().orElseThrow())
                .isGreaterThan(low.required().orElseThrow().instrumentRate().orElseThrow());
    }

    @Property(tries = 100)
    @Label("takes no more gradient the farther its point is, where its level is above")
    void farther(
            @ForAll @DoubleRange(min = 1, max = 200) double miles,
            @ForAll @DoubleRange(min = 0, max = 100) double more,
            @ForAll @DoubleRange(min = 1000, max = 45000) double feet) {
        Level level = Level.of(PressureAltitude.ofFeet(feet));
        assertThat(
                        outcome(1013.25, atOrAbove(miles + more, level))
                                .required()
                                .orElseThrow()
                                .gradient())
                .isLessThanOrEqualTo(
                        outcome(1013.25, atOrAbove(miles, level))
                                .required()
                                .orElseThrow()
                                .gradient());
    }

    @Property(tries = 100)
    @Label("on QNH and as a flight level is the same on QNH 1013.25")
    void references(
            @ForAll @DoubleRange(min = 1, max = 200) double miles,
            @ForAll @DoubleRange(min = 1500, max = 30000) double feet) {
        RestrictionOutcome onQnh =
                outcome(1013.25, atOrAbove(miles, Level.of(AltitudeOnQnh.ofFeet(feet))));
        RestrictionOutcome standard =
                outcome(1013.25, atOrAbove(miles, Level.of(PressureAltitude.ofFeet(feet))));
        assertThat(onQnh.verdict()).isEqualTo(standard.verdict());
        assertThat(onQnh.altitudeMargin()).isEqualTo(standard.altitudeMargin());
        assertThat(onQnh.reading().orElseThrow().inFeet())
                .isEqualTo(standard.reading().orElseThrow().inFeet());
    }

    @Property(tries = 50)
    @Label("of several is governed by the most demanding: no other takes more")
    void governing(
            @ForAll @Size(min = 1, max = 5) List<@DoubleRange(min = 1, max = 150) Double> miles,
            @ForAll @Size(5) List<@DoubleRange(min = 1500, max = 40000) Double> feet) {
        List<Restriction> list =
                java.util.stream.IntStream.range(0, miles.size())
                        .mapToObj(
                                i ->
                                        atOrAbove(
                                                miles.get(i),
                                                Level.of(PressureAltitude.ofFeet(feet.get(i)))))
                        .toList();
        ClimbRequirements from =
                Restrictions.along(path, AltimeterSetting.standard(), list).fromTheBeginning();
        assertThat(from.required()).hasSameSizeAs(list);
        assertThat(from.required())
                .allSatisfy(
                        each ->
                                assertThat(each.gradient())
                                        .isLessThanOrEqualTo(
                                                from.governing().orElseThrow().gradient()));
    }
}
