package org.climbwright.icing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.Scene;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.humidity.RelativeHumidity;
import org.climbwright.quantity.temperature.TotalAirTemperature;
import org.climbwright.testing.Streams;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** A climb of 1,500 ft/min: 25 ft a second, so that times and levels are easily told apart. */
@DisplayName("Protection along a climb")
class ProtectionTest {
    private static final double METRES_PER_SECOND = 1500.0 * 0.3048 / 60.0;
    private static final IcingRule RULE =
            IcingRule.engine(VisibleMoisture.ofRelativeHumidity(RelativeHumidity.ofPercent(80)));

    /** Moist from 4000 to 4600 m, and from so many seconds above to 6000 m. */
    private static ClimbPath twoLayers(double gapSeconds) {
        double second = 4600.0 + gapSeconds * METRES_PER_SECOND;
        return Scene.path(
                Scene.constantRate(1500),
                new MoistStandardAir(
                        h -> h >= 4000 && h < 4600 || h >= second && h < 6000 ? 0.9 : 0.2,
                        List.of(4000.0, 4600.0, second, 6000.0)),
                Winds.calm());
    }

    private static ProtectionAdvice advice(ClimbPath path, long lead, long minimumOff) {
        return ProtectionAdvice.along(
                path,
                ProtectionPlan.antiIce(
                        RULE, Duration.ofSeconds(lead), Duration.ofSeconds(minimumOff)));
    }

    @Test
    @DisplayName("is on the lead before the entry, and off after the exit")
    void onAndOff() {
        ProtectionAdvice advice = advice(twoLayers(100), 30, 60);
        assertThat(advice.spans(IcingAnswer.CONDITIONS)).hasSize(2);
        assertThat(advice.periods()).hasSize(2);
        ProtectionPeriod first = advice.periods().get(0);
        assertThat(first.on().pressureAltitude().inMetres())
                .isCloseTo(4000.0 - 30.0 * METRES_PER_SECOND, within(5e-3));
        assertThat(first.leadAltitude().inFeet()).isCloseTo(750.0, within(0.02));
        assertThat(first.off().pressureAltitude().inMetres()).isCloseTo(4600.0, within(5e-3));
        assertThat(first.isOnBeforeClimb()).isFalse();
        assertThat(first.isOnAtTop()).isFalse();
        assertThat(first.duration().toMillis() / 1000.0)
                .isCloseTo(30.0 + 600.0 / METRES_PER_SECOND, within(0.01));
    }

    @Test
    @DisplayName("stays on between spans closer together than lead and minimum time off")
    void joined() {
        ProtectionAdvice advice = advice(twoLayers(89), 30, 60);
        assertThat(advice.periods()).hasSize(1);
        ProtectionPeriod period = advice.periods().get(0);
        assertThat(period.spans()).isEqualTo(advice.spans(IcingAnswer.CONDITIONS)).hasSize(2);
        assertThat(period.off().pressureAltitude().inMetres()).isCloseTo(6000.0, within(5e-3));
        assertThat(advice(twoLayers(91), 30, 60).periods()).hasSize(2);
        for (IcingSpan span : period.spans()) {
            assertThat(advice.period(span)).isEqualTo(period);
        }
    }

    @Test
    @DisplayName(
            "begins before a climb that begins in conditions, and ends not where it ends in them")
    void wholeClimb() {
        ClimbPath path =
                Scene.path(Scene.constantRate(1500), new MoistStandardAir(h -> 1.0), Winds.calm());
        IcingRule cold = RULE.withoutColdest().withWarmestTotal(TotalAirTemperature.ofCelsius(40));
        ProtectionPeriod period =
                ProtectionAdvice.along(
                                path,
                                ProtectionPlan.antiIce(cold, Duration.ofSeconds(1), Duration.ZERO))
                        .periods()
                        .get(0);
        assertThat(period.isOnBeforeClimb()).isTrue();
        assertThat(period.isOnAtTop()).isTrue();
        assertThat(period.on().timeS()).isZero();
    }

    @Test
    @DisplayName("by de-icing is in use from the entry on")
    void deIcing() {
        ProtectionAdvice advice =
                ProtectionAdvice.along(
                        twoLayers(100), ProtectionPlan.deIce(RULE, Duration.ofSeconds(60)));
        ProtectionPeriod first = advice.periods().get(0);
        assertThat(first.on().pressureAltitude().inMetres()).isCloseTo(4000.0, within(5e-3));
        assertThat(first.leadAltitude().inMetres()).isCloseTo(0.0, within(1e-6));
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                new ProtectionPlan(
                                        RULE,
                                        ProtectionMethod.DE_ICE,
                                        Duration.ofSeconds(5),
                                        Duration.ZERO))
                .withMessage(
                        "de-icing removes ice that has formed and has no lead, but had one of 5.0"
                                + " s");
    }

    @Test
    @DisplayName(
            "is due for no span of which nobody can tell, and for none that is another climb's")
    void others() {
        ProtectionAdvice advice = advice(twoLayers(100), 30, 60);
        ClimbPath unknown =
                Scene.path(
                        Scene.constantRate(1500),
                        new MoistStandardAir(h -> Double.NaN),
                        Winds.calm());
        ProtectionAdvice cannotTell = advice(unknown, 30, 60);
        assertThat(cannotTell.spans()).isNotEmpty();
        assertThat(cannotTell.periods()).isEmpty();
        IcingSpan other = cannotTell.spans().get(0);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> advice.period(other))
                .withMessageStartingWith("no protection is due for the span from ");
    }

    @Test
    @DisplayName(
            "does not end because humidity is not known any more, or it gets colder than the rule")
    void notKnownIsNoReason() {
        ClimbPath ends =
                Scene.path(
                        Scene.constantRate(1500),
                        new MoistStandardAir(h -> h < 5000 ? 1.0 : Double.NaN, List.of(5000.0)),
                        Winds.calm());
        ProtectionPeriod period = advice(ends, 30, 60).periods().get(0);
        assertThat(period.isOnAtTop()).isTrue();
        assertThat(period.goesOnAboveConditions()).isTrue();
        ClimbPath cold =
                Scene.path(Scene.constantRate(1500), new MoistStandardAir(h -> 1.0), Winds.calm());
        ProtectionAdvice saturated = advice(cold, 30, 60);
        assertThat(saturated.spans(IcingAnswer.COLDER_THAN_THE_RULE)).hasSize(1);
        assertThat(saturated.periods()).hasSize(1);
        assertThat(saturated.periods().get(0).isOnAtTop()).isTrue();
    }

    @Test
    @DisplayName("meets every stated band, however thin, and the gap between two")
    void everyBand() {
        ClimbPath path = Scene.calmStandardClimb();
        for (double base = 11000; base < 30000; base += 700) {
            for (double depth : new double[] {1, 50, 1000}) {
                MoistureBand band =
                        new MoistureBand(
                                MoistureForm.CLOUD,
                                PressureAltitude.ofFeet(base),
                                PressureAltitude.ofFeet(base + depth));
                List<IcingSpan> spans =
                        IcingSpan.along(
                                path,
                                RULE.withoutColdest()
                                        .withMoisture(VisibleMoisture.inBands(List.of(band))));
                assertThat(spans).hasSize(1);
                assertThat(spans.get(0).bottom().inFeet()).isCloseTo(base, within(0.01));
                assertThat(spans.get(0).top().inFeet()).isCloseTo(base + depth, within(0.01));
            }
        }
    }

    @Test
    @DisplayName("is not planned backwards in time")
    void negative() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> advice(twoLayers(100), -1, 0))
                .withMessage("the lead of ice protection must be 0 s or more, but was -1.0 s");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> advice(twoLayers(100), 0, -1))
                .withMessage(
                        "the minimum time off of ice protection must be 0 s or more, but was -1.0"
                                + " s");
    }

    @Test
    @DisplayName("is read back the same")
    void readBack() throws Exception {
        ProtectionAdvice advice = advice(twoLayers(100), 30, 60);
        assertThat(Streams.roundTrip(advice)).isEqualTo(advice).hasSameHashCodeAs(advice);
    }
}
