package org.climbwright.turbulence.convection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.Serializable;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.turbulence.Answer;
import org.climbwright.turbulence.EddyDissipationRate;
import org.climbwright.turbulence.EddyDissipationRate.Edition;
import org.climbwright.turbulence.TurbulenceIntensity;
import org.climbwright.turbulence.convection.SeatBeltAdvice.Conclusion;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Advice on seat belts")
class SeatBeltAdviceTest {
    private static final SeatBeltAdvice NOTHING_YET =
            SeatBeltAdvice.between(PressureAltitude.ofFeet(5000), PressureAltitude.ofFeet(20000));
    private static final InventedAir AIR = new InventedAir(14.0, 0.75);
    private static final Answer<ParcelAscent> ASCENT =
            Parcels.surface(AIR).then(parcel -> ParcelAscent.of(AIR, parcel));
    private static final Answer<EddyDissipationRate> SMOOTH =
            Answer.known(EddyDissipationRate.ofSi(0.05));

    @Test
    @DisplayName("is not known without any evidence")
    void withoutEvidence() {
        assertThat(NOTHING_YET.conclusion()).isEqualTo(Conclusion.NOT_KNOWN);
        assertThat(NOTHING_YET.inWords()).contains("not known").contains("Limits of use");
    }

    @Test
    @DisplayName("has a reason as soon as one threshold of the caller's is reached, and lists all")
    void reached() {
        double energy = ASCENT.orElseThrow().energyJPerKg();
        SeatBeltAdvice advice =
                withSmoothAir(NOTHING_YET)
                        .withEnergy(ASCENT, energy)
                        .withCloud(ASCENT.then(ParcelAscent::cloud))
                        .withShear(unknown("no wind was observed"), 6.0);
        assertThat(advice.conclusion()).isEqualTo(Conclusion.REASON_TO_FASTEN);
        assertThat(advice.evidence())
                .extracting(Evidence::outcome)
                .containsExactly(
                        Evidence.Outcome.NOT_REACHED,
                        Evidence.Outcome.REACHED,
                        Evidence.Outcome.REACHED,
                        Evidence.Outcome.NOT_KNOWN);
        assertThat(advice.inWords())
                .startsWith(
                        "Between 5000 and 20000 ft pressure altitude: there is reason to keep seat"
                                + " belts fastened. Evidence: eddy dissipation rate: 0.05"
                                + " m^(2/3)/s, nil (threshold light by the table as quoted in"
                                + " 2025: not reached); energy of a lifted parcel, CAPE: ")
                .contains("vertical wind shear: not known, no wind was observed")
                .endsWith("the crew and the operator's procedures decide.");
        assertThat(NOTHING_YET.withCloud(unknown("no ascent")).evidence().get(0).inWords())
                .isEqualTo(
                        "convective cloud: not known, no ascent (threshold, any of the levels in"
                                + " the cloud: not known whether it is reached)");
        assertThat(NOTHING_YET.evidence()).isEmpty();
    }

    @Test
    @DisplayName("never says more than that no threshold was reached")
    void notReached() {
        SeatBeltAdvice advice =
                withSmoothAir(NOTHING_YET)
                        .withEnergy(ASCENT, 20000.0)
                        .withCloud(
                                Answer.known(
                                        new CloudSpan(
                                                PressureAltitude.ofFeet(20001),
                                                PressureAltitude.ofFeet(30000),
                                                "a report")));
        assertThat(advice.conclusion()).isEqualTo(Conclusion.NO_REASON_FOUND);
        assertThat(advice.inWords())
                .contains("no threshold is reached, which is no reason to unfasten seat belts")
                .contains("20001 ft to 30000 ft, a report")
                .contains("Limits of use");
    }

    @Test
    @DisplayName("is not known where a figure is missing, or only a lower bound of it known")
    void missing() {
        SeatBeltAdvice advice = withSmoothAir(NOTHING_YET).withShear(unknown("no wind"), 6.0);
        assertThat(advice.conclusion()).isEqualTo(Conclusion.NOT_KNOWN);
        InventedAir cut = new InventedAir(14.0, 0.75, 0.0, 50000.0);
        Answer<ParcelAscent> ascent =
                Parcels.surface(cut).then(parcel -> ParcelAscent.of(cut, parcel));
        assertThat(ascent.orElseThrow().isEnergyComplete()).isFalse();
        assertThat(NOTHING_YET.withEnergy(ascent, 20000.0).conclusion())
                .isEqualTo(Conclusion.NOT_KNOWN);
        assertThat(NOTHING_YET.withEnergy(ascent, 1.0).conclusion())
                .isEqualTo(Conclusion.REASON_TO_FASTEN);
    }

    @Test
    @DisplayName("refuses thresholds and levels that cannot be")
    void refuses() {
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> NOTHING_YET.withEnergy(ASCENT, -1.0));
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> NOTHING_YET.withShear(unknown("no wind"), Double.NaN));
        assertThatExceptionOfType(IllegalArgumentException.class)
                .isThrownBy(
                        () ->
                                SeatBeltAdvice.between(
                                        PressureAltitude.ofFeet(2), PressureAltitude.ofFeet(1)));
        assertThatExceptionOfType(IllegalArgumentException.class)
                .isThrownBy(
                        () ->
                                new CloudSpan(
                                        PressureAltitude.ofFeet(2),
                                        PressureAltitude.ofFeet(1),
                                        "upside down"));
        assertThatExceptionOfType(IllegalArgumentException.class)
                .isThrownBy(() -> Answer.notKnown(" "));
    }

    private static SeatBeltAdvice withSmoothAir(SeatBeltAdvice advice) {
        return advice.withEddyDissipationRate(
                SMOOTH, Edition.AS_QUOTED_IN_2025, TurbulenceIntensity.LIGHT);
    }

    private static <T extends Serializable> Answer<T> unknown(String reason) {
        return Answer.notKnown(reason);
    }

    @Test
    @DisplayName("takes no threshold of a rate that no table reaches")
    void extreme() {
        SeatBeltAdvice advice =
                SeatBeltAdvice.between(PressureAltitude.ofFeet(0), PressureAltitude.ofFeet(1000));
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                advice.withEddyDissipationRate(
                                        Answer.notKnown("for the test"),
                                        EddyDissipationRate.Edition.AS_QUOTED_IN_2025,
                                        TurbulenceIntensity.EXTREME))
                .withMessageContaining("no table calls a rate extreme");
    }
}
