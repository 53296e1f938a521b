package org.climbwright.cabin.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import org.climbwright.cabin.exposure.TrachealOxygenPressure.Required;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.testing.Streams;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The tracheal oxygen pressure")
class TrachealOxygenPressureTest {
    @ParameterizedTest(name = "{0} and air at {1} ft")
    @CsvSource({
        // 14 CFR 25.1443(a)-(c); the altitudes are derived, not of the rule
        "CREW_CONTINUOUS_FLOW, 0",
        "CREW_DEMAND, 5000",
        "PASSENGERS_TO_18500_FT, 10000",
        "PASSENGERS_TO_40000_FT, 14000",
    })
    @DisplayName("that a rule requires is that of air lower down, within 0.7 mmHg:")
    void requiredIsThatOfAirLowerDown(Required required, double feet) {
        double air =
                TrachealOxygenPressure.at(CabinAltitude.ofFeet(feet), TrachealOxygenPressure.AIR)
                        .inMillimetresOfMercury();
        // The rule's figures are whole millimetres but one; the largest difference is 0.63 mmHg.
        assertThat(air).isCloseTo(required.inMillimetresOfMercury(), within(0.7));
    }

    @ParameterizedTest(name = "{0} mmHg are {1} hPa")
    @CsvSource({"149, 198.65", "122, 162.65", "100, 133.32", "83.8, 111.72"})
    @DisplayName("of the rules is so many hectopascals, to two decimals:")
    void inHectopascals(double millimetresOfMercury, double hectopascals) {
        // second-regulatory-limits.csv, rows S19, S20, S22 and S23, column check
        Required required =
                java.util.Arrays.stream(Required.values())
                        .filter(any -> any.inMillimetresOfMercury() == millimetresOfMercury)
                        .findFirst()
                        .orElseThrow();
        assertThat(required.pressure().inPascals() / 100.0).isCloseTo(hectopascals, within(0.005));
    }

    @Test
    @DisplayName("of air at sea level is 20.95 % of 713 mmHg")
    void seaLevel() {
        // 760 - 47; 101325 Pa are 760 mmHg to 1e-6.
        assertThat(TrachealOxygenPressure.at(CabinAltitude.ofFeet(0), 0.2095))
                .extracting(TrachealOxygenPressure::inMillimetresOfMercury)
                .satisfies(value -> assertThat(value).isCloseTo(0.2095 * 713.0, within(1e-4)));
    }

    @ParameterizedTest(name = "{0} m, {1}: {2}")
    @CsvSource({
        "-5000, 0.2095, true",
        "-5000.001, 0.2095, false",
        "19000, 1, true",
        "19000.001, 1, false",
        "0, 0, true",
        "0, -0.001, false",
        "0, 1.001, false",
        "NaN, 0.2, false",
        "0, NaN, false"
    })
    @DisplayName("is refused where there is none, edges included:")
    void range(double metres, double fraction, boolean covered) {
        assertThat(TrachealOxygenPressure.coversTrachealOxygenPressure(metres, fraction))
                .isEqualTo(covered);
        if (covered) {
            assertThat(TrachealOxygenPressure.trachealOxygenPressure(metres, fraction))
                    .isNotNegative();
        } else {
            assertThatThrownBy(
                            () -> TrachealOxygenPressure.trachealOxygenPressure(metres, fraction))
                    .isInstanceOf(OutsideModelException.class);
        }
    }

    @Test
    @DisplayName("is a value: it has an order, travels as bytes, and reads in both units")
    void value() throws IOException {
        TrachealOxygenPressure low = Required.PASSENGERS_TO_18500_FT.pressure();
        TrachealOxygenPressure high = Required.CREW_DEMAND.pressure();
        assertThat(low).isLessThan(high).isNotEqualTo(high).isNotEqualTo("another");
        assertThat(Streams.roundTrip(low)).isEqualTo(low).hasSameHashCodeAs(low);
        assertThat(low).asString().startsWith("13332.2387415").endsWith(" Pa (100.0 mmHg)");
    }
}
