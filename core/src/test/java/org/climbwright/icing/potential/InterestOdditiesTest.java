package org.climbwright.icing.potential;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.icing.potential.IcingInterest.Form;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Where the code of the scheme is odd")
class InterestOdditiesTest {
    private static final double HALF_LAST_PRINTED_DIGIT = 5e-5;

    @ParameterizedTest(name = "{0}, {1} {2}: {3} as coded, {4} mended")
    @CsvFileSource(resources = "/icing/interest-oddities.csv", useHeadersInDisplayName = true)
    @DisplayName("both forms are there, and the mended one is meant without a choice:")
    void bothForms(
            String map, double input, String unit, double asCoded, double mended, String source) {
        for (Form form : Form.values()) {
            double expected = form == Form.AS_CODED ? asCoded : mended;
            assertThat(interest(map, input, form))
                    .isCloseTo(expected, within(HALF_LAST_PRINTED_DIGIT));
        }
        assertThat(defaultInterest(map, input)).isEqualTo(interest(map, input, Form.MENDED));
    }

    @Test
    @DisplayName("9 rows are compared")
    void rows() {
        assertThat(Table.rows("/icing/interest-oddities.csv")).hasSize(9);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-9, -1e-9})
    @DisplayName("a hole is one exact figure: beside it both forms agree")
    void holes(double off) {
        for (Form form : Form.values()) {
            assertThat(IcingInterest.ofTemperature(268.15 + off, form)).isCloseTo(1, within(1e-9));
            assertThat(IcingInterest.ofCloudTop(223.0 + off, form)).isCloseTo(0.2, within(1e-9));
        }
    }

    private static double interest(String map, double input, Form form) {
        return switch (map) {
            case "temperature" -> IcingInterest.ofTemperature(input, form);
            case "cloud top" -> IcingInterest.ofCloudTop(input, form);
            case "convective energy" -> IcingInterest.ofConvectiveEnergy(input, form);
            case "severity damping" -> IcingInterest.severityDamping(input);
            default -> throw new IllegalArgumentException(map);
        };
    }

    private static double defaultInterest(String map, double input) {
        return switch (map) {
            case "temperature" -> IcingInterest.ofTemperature(input);
            case "cloud top" -> IcingInterest.ofCloudTop(input);
            case "convective energy" -> IcingInterest.ofConvectiveEnergy(input);
            default -> IcingInterest.severityDamping(input);
        };
    }
}
