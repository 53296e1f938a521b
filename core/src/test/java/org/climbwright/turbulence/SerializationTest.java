package org.climbwright.turbulence;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Serializable;
import java.util.stream.Stream;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.sounding.Soundings;
import org.climbwright.testing.Streams;
import org.climbwright.turbulence.convection.ParcelAscent;
import org.climbwright.turbulence.convection.Parcels;
import org.climbwright.turbulence.convection.SeatBeltAdvice;
import org.climbwright.turbulence.convection.UpdraftBound;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("A value of turbulence")
class SerializationTest {
    static Stream<Serializable> values() {
        Atmosphere air = Soundings.profile("w72357_oun_20110522_capped").atmosphere();
        Answer<ParcelAscent> ascent =
                Parcels.surface(air).then(parcel -> ParcelAscent.of(air, parcel));
        Answer<WindShear> shear =
                WindShear.between(
                        air,
                        Winds.calm(),
                        StaticPressure.ofHectopascals(900),
                        StaticPressure.ofHectopascals(800));
        return Stream.of(
                GustLoad.ofSi(5000.0, 4.0, 5.5),
                GustVelocity.ofCallerInMetresPerSecond(10.0),
                EddyDissipationRate.ofSi(0.2),
                new RoughAirSpeed(true, false, true),
                UpdraftBound.ofEnergy(1000.0),
                Answer.notKnown("nobody looked"),
                ascent,
                ascent.then(ParcelAscent::cloud),
                shear,
                SeatBeltAdvice.between(PressureAltitude.ofFeet(0), PressureAltitude.ofFeet(1))
                        .withEnergy(ascent, 500.0)
                        .withShear(shear, 6.0));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("values")
    @DisplayName("travels as bytes and arrives equal, with the same hash and text")
    void travels(Serializable value) throws IOException {
        Object arrived = Streams.roundTrip(value);
        assertThat(arrived).isEqualTo(value).isNotSameAs(value);
        assertThat(arrived.hashCode()).isEqualTo(value.hashCode());
        assertThat(arrived).hasToString(value.toString());
        assertThat(value).isNotEqualTo("another");
    }
}
