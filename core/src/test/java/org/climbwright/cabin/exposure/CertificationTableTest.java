package org.climbwright.cabin.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import org.climbwright.cabin.exposure.CabinAltitudeRule.Circumstance;
import org.climbwright.cabin.exposure.TrachealOxygenPressure.Required;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Each row that is not left out has its case below: a row without one fails. */
@DisplayName("A figure of the rules of certification")
class CertificationTableTest {
    private static final CabinAltitudeRule TRANSPORT = CabinAltitudeRule.transport();
    private static final CabinAltitudeRule SMALL = CabinAltitudeRule.small();
    private static final double HALF_A_DIGIT = 0.05;

    /**
     * The derived rows take a millimetre of mercury of 133.322 Pa instead of 133.322387415: at
     * 10,000 ft that makes 99.6501 of 99.6498, which is printed as 99.7. Ours is the definition.
     */
    private static final double COARSER_MERCURY = 4e-4;

    private static final double SPLIT_M = PressureAltitude.ofFeet(45_000).inMetres();

    @ParameterizedTest(name = "{0} {1}: {2} {3}")
    @CsvFileSource(resources = "/cabin/regulatory-limits.csv", useHeadersInDisplayName = true)
    @DisplayName("is the one of the first reading:")
    void first(
            String id,
            String rule,
            String quantity,
            String value,
            String unit,
            String condition,
            String source,
            String seen) {
        if (LeftOut.rows("regulatory-limits.csv").contains(id)) {
            return;
        }
        switch (id) {
            case "R01" -> is(TRANSPORT, Circumstance.NORMAL_OPERATION, rule, value, "0");
            case "R02" -> is(TRANSPORT, Circumstance.PROBABLE_FAILURE, rule, value, "0");
            case "R03" -> is(TRANSPORT, Circumstance.DECOMPRESSION, rule, "25000", "120");
            case "R04" -> is(TRANSPORT, Circumstance.DECOMPRESSION, rule, value, "0");
            case "R05" -> {
                assertThat(TRANSPORT.warning().inFeet()).isEqualTo(number(value));
                assertThat(seen).contains("paragraph no. from memory");
                assertThat(TRANSPORT.warningBasis()).contains(rule).contains("from memory");
            }
            case "R06" -> {
                assertThat(number(value)).isEqualTo(2000.0);
                is(high(9000), Circumstance.NORMAL_OPERATION, rule, "11000", "0");
                assertThat(seen).isEqualTo("partly seen");
                assertThat(high(9000).limits().get(0).evidence()).isEqualTo(Evidence.PARTLY_SEEN);
                assertThat(high(9000).limits().get(1).evidence()).isEqualTo(Evidence.SEEN);
            }
            case "R07" -> {
                assertThat(value).isEqualTo("max(15000, elevation+2000)");
                is(high(12_999), Circumstance.PROBABLE_FAILURE, rule, "15000", "0");
                is(high(13_000), Circumstance.PROBABLE_FAILURE, rule, "15000", "0");
                is(high(13_001), Circumstance.PROBABLE_FAILURE, rule, "15001", "0");
            }
            case "R08" -> {
                assertThat(value).isEqualTo("max(15000, max take-off/landing altitude+2000)");
                assertThat(high(7999, 14_000).highestWarning().inFeet()).isEqualTo(10_000.0);
                assertThat(high(8000, 8000).highestWarning().inFeet()).isEqualTo(15_000.0);
                assertThat(high(8000, 13_000).highestWarning().inFeet()).isEqualTo(15_000.0);
                assertThat(high(8000, 14_000).highestWarning().inFeet()).isEqualTo(16_000.0);
                assertThat(high(8000, 14_000).warning().inFeet()).isEqualTo(10_000.0);
            }
            case "R09" -> is(SMALL, Circumstance.NORMAL_OPERATION, "23.841(d)", value, "0");
            case "R10" ->
                    assertThat(StructuralDifferential.transportFactor(SPLIT_M))
                            .isEqualTo(number(value));
            case "R11" ->
                    assertThat(StructuralDifferential.transportFactor(SPLIT_M + 3e-4))
                            .isEqualTo(number(value));
            case "R14" -> {
                assertThat(value).isEqualTo("10000-18500 and 18500-40000");
                assertThat(passengers(10_000)).isNull();
                assertThat(passengers(10_000.001)).isEqualTo(Required.PASSENGERS_TO_18500_FT);
                assertThat(passengers(18_500)).isEqualTo(Required.PASSENGERS_TO_18500_FT);
                assertThat(passengers(18_500.001)).isEqualTo(Required.PASSENGERS_TO_40000_FT);
                assertThat(passengers(40_000)).isEqualTo(Required.PASSENGERS_TO_40000_FT);
                assertThat(passengers(40_000.001)).isNull();
            }
            default -> throw new AssertionError(id + " is not compared");
        }
    }

    @ParameterizedTest(name = "{0} {1}: {2} {3}")
    @CsvFileSource(
            resources = "/cabin/second-regulatory-limits.csv",
            useHeadersInDisplayName = true)
    @DisplayName("is the one of the second reading:")
    void second(
            String id,
            String rule,
            String quantity,
            String value,
            String unit,
            String condition,
            String source,
            String seen) {
        if (LeftOut.rows("second-regulatory-limits.csv").contains(id)) {
            return;
        }
        switch (id) {
            case "S01" -> is(TRANSPORT, Circumstance.DECOMPRESSION, rule, "25000", "120");
            case "S02" -> is(TRANSPORT, Circumstance.DECOMPRESSION, rule, value, "0");
            case "S04" ->
                    assertThat(StructuralDifferential.transportFactor(SPLIT_M))
                            .isEqualTo(number(value));
            case "S05" ->
                    assertThat(StructuralDifferential.transportFactor(SPLIT_M + 3e-4))
                            .isEqualTo(number(value));
            case "S06" -> assertThat(StructuralDifferential.smallFactor()).isEqualTo(number(value));
            case "S09" -> is(SMALL, Circumstance.PROBABLE_FAILURE, rule, value, "0");
            case "S10" -> is(SMALL, Circumstance.DECOMPRESSION, rule, "15000", value);
            case "S11" -> is(SMALL, Circumstance.DECOMPRESSION, rule, value, "0");
            case "S15" -> assertThat(SMALL.warning().inFeet()).isEqualTo(number(value));
            case "S16" -> assertThat(SMALL.highestWarning().inFeet()).isEqualTo(number(value));
            case "S19" -> is(Required.CREW_CONTINUOUS_FLOW, rule, value);
            case "S20" -> is(Required.CREW_DEMAND, rule, value);
            case "S22" -> is(Required.PASSENGERS_TO_18500_FT, rule, value);
            case "S23" -> is(Required.PASSENGERS_TO_40000_FT, rule, value);
            case "S24" ->
                    assertThat(value)
                            .isEqualTo(
                                    (int) Required.PASSENGERS_TO_18500_FT.inMillimetresOfMercury()
                                            + " / "
                                            + Required.PASSENGERS_TO_40000_FT
                                                    .inMillimetresOfMercury()
                                            + " / "
                                            + (int)
                                                    Required.CREW_CONTINUOUS_FLOW
                                                            .inMillimetresOfMercury());
            case "S27-0", "S27-5000", "S27-10000", "S27-14000" -> {
                CabinAltitude cabin = CabinAltitude.ofFeet(number(id.substring(4)));
                assertThat(
                                TrachealOxygenPressure.at(cabin, TrachealOxygenPressure.AIR)
                                        .inMillimetresOfMercury())
                        .isCloseTo(number(value), within(HALF_A_DIGIT + COARSER_MERCURY));
            }
            default -> throw new AssertionError(id + " is not compared");
        }
    }

    private static void is(Required required, String rule, String value) {
        assertThat(required.paragraph()).isEqualTo(rule);
        assertThat(required.inMillimetresOfMercury()).isEqualTo(number(value));
        assertThat(required.pressure().inMillimetresOfMercury()).isEqualTo(number(value));
    }

    private static void is(
            CabinAltitudeRule rule,
            Circumstance circumstance,
            String paragraph,
            String feet,
            String seconds) {
        CabinAltitude level = CabinAltitude.ofFeet(number(feet));
        Duration allowed = Duration.ofSeconds(Long.parseLong(seconds));
        assertThat(rule.limits())
                .filteredOn(limit -> limit.circumstance() == circumstance)
                .filteredOn(limit -> limit.paragraph().equals(paragraph))
                .filteredOn(limit -> limit.level().equals(level))
                .filteredOn(limit -> limit.allowedAbove().equals(allowed))
                .hasSize(1);
    }

    private static CabinAltitudeRule high(double elevationFt) {
        return high(elevationFt, 14_000);
    }

    private static CabinAltitudeRule high(double elevationFt, double mostFt) {
        return CabinAltitudeRule.transportAt(
                GeopotentialAltitude.ofFeet(elevationFt), PressureAltitude.ofFeet(mostFt));
    }

    private static Required passengers(double feet) {
        return Required.forPassengers(CabinAltitude.ofFeet(feet)).orElse(null);
    }

    private static double number(String text) {
        return Double.parseDouble(text);
    }
}
