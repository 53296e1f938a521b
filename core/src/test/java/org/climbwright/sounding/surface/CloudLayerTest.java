package org.climbwright.sounding.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import org.climbwright.quantity.altitude.Height;
import org.climbwright.testing.Streams;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A layer of cloud")
class CloudLayerTest {
    @ParameterizedTest(name = "{0} is {1} at {2} ft, {3}")
    @CsvSource({
        "FEW015, FEW, 1500, NONE_TOLD",
        "SCT000, SCATTERED, 0, NONE_TOLD",
        "BKN250, BROKEN, 25000, NONE_TOLD",
        "OVC002, OVERCAST, 200, NONE_TOLD",
        "FEW017CB, FEW, 1700, CUMULONIMBUS",
        "BKN040TCU, BROKEN, 4000, TOWERING_CUMULUS",
        "BKN033///, BROKEN, 3300, NOT_OBSERVED",
        "SCT///, SCATTERED, , NONE_TOLD",
        "SCT//////, SCATTERED, , NOT_OBSERVED",
        "OVC///CB, OVERCAST, , CUMULONIMBUS",
        "///015, NOT_OBSERVED, 1500, NONE_TOLD",
        "///015///, NOT_OBSERVED, 1500, NOT_OBSERVED",
        "///015TCU, NOT_OBSERVED, 1500, TOWERING_CUMULUS",
        "//////CB, NOT_OBSERVED, , CUMULONIMBUS",
        "//////TCU, NOT_OBSERVED, , TOWERING_CUMULUS",
        "///CB, NOT_OBSERVED, , CUMULONIMBUS"
    })
    @DisplayName("has amount, base and type, each known or said to be unknown")
    void reads(String text, CloudLayer.Amount amount, Double feet, CloudLayer.Type type) {
        CloudLayer layer = CloudLayer.parse(text);
        assertThat(layer.amount()).isEqualTo(amount);
        assertThat(layer.base().map(Height::inFeet).orElse(null)).isEqualTo(feet);
        assertThat(layer.type()).isEqualTo(type);
        assertThat(layer).hasToString(text);
        SurfaceReport report = Reports.reportOf("9999 " + text);
        assertThat(report.cloudLayers()).containsExactly(layer);
        assertThat(report.sky()).isEqualTo(Sky.LAYERS);
        assertThat(report.problems()).isEmpty();
    }

    @ParameterizedTest(name = "\"{0}\"")
    @ValueSource(strings = {"", "BKN", "BKN01", "BKN0100", "BKN010CU", "XXX010", "bkn010", "VV001"})
    @DisplayName("is refused in any other form")
    void refuses(String text) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CloudLayer.parse(text))
                .withMessage("not a layer of cloud: \"" + text + "\"");
    }

    @ParameterizedTest(name = "\"{0}\"")
    @ValueSource(strings = {"//////", "/////////"})
    @DisplayName("is refused when it is nothing but slashes")
    void blank(String text) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CloudLayer.parse(text))
                .withMessage("tells nothing of a layer: \"" + text + "\"");
    }

    @Test
    @DisplayName("is equal to another in the same words, also after a stream")
    void equality() throws IOException {
        CloudLayer layer = CloudLayer.parse("FEW017CB");
        assertThat(layer)
                .isEqualTo(CloudLayer.parse("FEW017CB"))
                .hasSameHashCodeAs(CloudLayer.parse("FEW017CB"))
                .isNotEqualTo(CloudLayer.parse("FEW017"))
                .isNotEqualTo("FEW017CB");
        CloudLayer back = Streams.roundTrip(layer);
        assertThat(back).isEqualTo(layer);
        assertThat(back.base()).isEqualTo(layer.base());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Streams.tampered(layer, "FEW017", "FEWx17"))
                .withMessageStartingWith("not a layer of cloud");
    }
}
