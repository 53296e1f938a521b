package org.climbwright.atmosphere.altimetry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import org.climbwright.atmosphere.altimetry.TransitionLevel.MinimumLayer;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.testing.Streams;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A wrong setting")
class AltimeterErrorTest {
    private static final AltimeterSetting HECTOPASCALS = AltimeterSetting.ofHectopascals(996);
    private static final AltimeterSetting INCHES = AltimeterSetting.ofInchesOfMercury(29.96);

    @Test
    @DisplayName("of 29.96 inHg where 996 hPa was meant makes the altimeter read 510 ft too high")
    void hectopascalsTakenForInches() {
        AltimeterError error = Altimetry.missetting(INCHES, HECTOPASCALS);

        assertThat(error.readsTooHighBy().inFeet()).isCloseTo(510.0, within(0.5));
        assertThat(error.isLowerThanShown()).isTrue();
        assertThat(error.inWords())
                .isEqualTo(
                        "The altimeter reads 510 ft too high: the aeroplane is 510 ft lower than it"
                                + " shows, because the subscale is on 1014.56 hPa (29.96 inHg)"
                                + " where 996.00 hPa (29.41 inHg) is right.");
    }

    @Test
    @DisplayName("that is too low makes it read too low, which is the safe way")
    void theOtherWay() {
        AltimeterError error = Altimetry.missetting(HECTOPASCALS, INCHES);

        assertThat(error.isLowerThanShown()).isFalse();
        assertThat(error.inWords())
                .startsWith(
                        "The altimeter reads 510 ft too low: the aeroplane is 510 ft higher than it"
                                + " shows, because ");
    }

    @Test
    @DisplayName("that is right to the foot is told so")
    void none() {
        AltimeterError error = new AltimeterError(AltitudeChange.ofFeet(0.4), "nothing is wrong");
        assertThat(error.inWords()).isEqualTo("The altimeter reads right to the foot.");
    }

    @Test
    @DisplayName("of more than a thousand feet is told with a comma, in every country")
    void thousands() {
        AltimeterError error = new AltimeterError(AltitudeChange.ofFeet(1147.6), "it is cold");
        assertThat(error.inWords()).startsWith("The altimeter reads 1,148 ft too high: ");
    }

    @Test
    @DisplayName("comes out of a stream as it went in, and so do correction and transition level")
    void serialization() throws IOException {
        AltimeterError error = Altimetry.missetting(INCHES, HECTOPASCALS);
        ColdAirCorrection correction =
                new ColdAirCorrection(AltitudeChange.ofFeet(150), "height of 500 ft", "table");
        TransitionLevel level =
                TransitionLevel.above(AltitudeOnQnh.ofFeet(5000), HECTOPASCALS, MinimumLayer.NONE);
        assertThat(Streams.roundTrip(error)).isEqualTo(error);
        assertThat(Streams.roundTrip(correction)).isEqualTo(correction);
        assertThat(Streams.roundTrip(level)).isEqualTo(level);
    }
}
