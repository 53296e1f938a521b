package org.climbwright.gradient.procedure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Set;
import java.util.stream.Collectors;
import org.climbwright.gradient.ClimbAngles;
import org.climbwright.gradient.ClimbGradient;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.altitude.Height;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.path.GroundGradient;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Each row that is not left out has its case below: a row without one fails. */
@DisplayName("A figure of procedure design or certification")
class ProcedureTableTest {
    private static final DepartureCriteria US = DepartureCriteria.US;
    private static final DepartureCriteria PANS_OPS = DepartureCriteria.PANS_OPS;
    private static final GroundDistance MILE = GroundDistance.ofNauticalMiles(1);

    @ParameterizedTest(name = "{0} {1}: {2} {3}")
    @CsvFileSource(resources = "/gradient/procedure.csv", useHeadersInDisplayName = true)
    @DisplayName("is the one printed:")
    void procedure(
            String id,
            String quantity,
            String value,
            String unit,
            String condition,
            String check,
            String source) {
        if (leftOut("procedure.csv").contains(id)) {
            return;
        }
        switch (id) {
            case "G01" -> {
                is(US.leastGradient().inFeetPerNauticalMile(), value);
                assertThat(US.leastGradient().inPercent()).isCloseTo(3.291577, within(5e-7));
            }
            case "G02" -> is(US.start().first().inFeet(), value);
            case "G03" -> is(US.turnHeight().first().inFeet(), value);
            case "G04" -> {
                assertThat(value).isEqualTo("40:1");
                is(US.surfaceGradient().inPercent(), "2.5");
                assertThat(US.surfaceGradient().inFeetPerNauticalMile())
                        .isCloseTo(151.9029, within(5e-5));
            }
            case "G05" -> // of a surface of 152 ft/NM, which 40:1 is rounded to
                    assertThat(US.clearance(US.leastGradient(), MILE).inFeet())
                            .isCloseTo(number(value), within(1e-9));
            case "G06" -> {
                is(ObstacleClearance.US_SURFACE_SHARE, value);
                assertThat(US.surfaceBelow(feetPerMile(500)).inFeetPerNauticalMile())
                        .isCloseTo(380.0, within(1e-9));
                assertThat(US.clearance(feetPerMile(500), MILE).inFeet())
                        .isCloseTo(120.0, within(1e-9));
                assertThat(US.surfaceBelow(feetPerMile(200)).inFeetPerNauticalMile())
                        .isCloseTo(152.0, within(1e-9));
            }
            case "G07" -> {
                assertThat(check).isEqualTo("h=380 ft, d=1 NM -> CG = 500.0");
                Obstacle obstacle = new Obstacle(Height.ofFeet(35 + 380), MILE);
                assertThat(US.assess(obstacle).requiredGradient().inFeetPerNauticalMile())
                        .isCloseTo(500.0, within(1e-9));
            }
            case "G08" ->
                    assertThat(
                                    DepartureCriteria.usAltitudeDriven(
                                                    AltitudeChange.ofFeet(8000 - 1200),
                                                    GroundDistance.ofNauticalMiles(12))
                                            .inFeetPerNauticalMile())
                            .isEqualTo(580.0);
            case "G09" -> {
                is(PANS_OPS.leastGradient().inPercent(), value);
                assertThat(condition).contains("5 m (16 ft) above DER");
                assertThat(PANS_OPS.start())
                        .isEqualTo(PrintedHeight.of(Height.ofMetres(5), Height.ofFeet(16)));
            }
            case "G10" -> is(PANS_OPS.surfaceGradient().inPercent(), value);
            case "G11" -> {
                is(100.0 * ObstacleClearance.PANS_OPS_CLEARANCE, value);
                assertThat(PANS_OPS.surfaceBelow(PANS_OPS.leastGradient()).inPercent())
                        .isCloseTo(2.5, within(1e-12));
            }
            case "G12" -> {
                is(PANS_OPS.turnHeight().first().inMetres(), value);
                assertThat(PANS_OPS.turnHeight().second()).contains(Height.ofFeet(394));
            }
            case "G13" -> {
                PrintedHeight clearance = DepartureCriteria.pansOpsClearanceBeforeTurn();
                is(clearance.first().inMetres(), value);
                assertThat(clearance.second()).contains(Height.ofFeet(295));
            }
            case "G14" -> {
                GroundDistance distance =
                        ClimbGradient.distanceFor(
                                PANS_OPS.turnHeight().first().minus(PANS_OPS.start().first()),
                                PANS_OPS.leastGradient());
                assertThat(distance.inMetres()).isCloseTo(3484.848, within(5e-4));
                assertThat(distance.inMetres() / 1000.0)
                        .isCloseTo(number(value), within(0.05)); // printed to 0.1 km
            }
            case "G15" -> crossing(value, -100, 0, 4999.9);
            case "G16" -> crossing(value, 5000, 7000, 9999.9);
            case "G17" -> crossing(value, 10_000, 18_000, 40_000);
            case "G19" -> {
                assertThat(value).isEqualTo("1.5 / 2");
                assertThat(ClimbAngles.angle(US.surfaceGradient()).inDegrees())
                        .isCloseTo(1.4321, within(5e-5));
                assertThat(ClimbAngles.angle(US.leastGradient()).inDegrees())
                        .isCloseTo(1.8853, within(5e-5));
            }
            default -> throw new AssertionError(id + " is not compared");
        }
        assertThat(source).isNotBlank();
    }

    private static void crossing(String value, double... feet) {
        for (double altitude : feet) {
            is(
                    CrossingGradient.at(AltitudeOnQnh.ofFeet(altitude))
                            .gradient()
                            .inFeetPerNauticalMile(),
                    value);
        }
    }

    @ParameterizedTest(name = "{0} {1} {2}, {3} engines: {4} {5}")
    @CsvFileSource(resources = "/gradient/certification.csv", useHeadersInDisplayName = true)
    @DisplayName("is the one of the rule:")
    void certification(
            String id,
            String rule,
            String segment,
            String engines,
            String value,
            String unit,
            String source) {
        if (!leftOut("certification.csv").contains(id)) {
            compare(id, rule, engines, value);
        }
        assertThat(source).isNotBlank();
    }

    @ParameterizedTest(name = "{0} {1} {2}, {3} engines: {4} {5}")
    @CsvFileSource(resources = "/gradient/second-certification.csv", useHeadersInDisplayName = true)
    @DisplayName("is the one of the second reading of the rule:")
    void secondCertification(
            String id,
            String rule,
            String segment,
            String engines,
            String value,
            String unit,
            String source) {
        if (!leftOut("second-certification.csv").contains(id)) {
            compare(id, rule, engines, value);
        }
        assertThat(source).isNotBlank();
    }

    private static void compare(String id, String rule, String engines, String value) {
        String section = rule.replace("CS ", "").replaceAll(" .*", "").replace("(d)(1)", "(d)");
        if (section.equals("25.115(a)")) {
            is(NetFlightPath.START.first().inFeet(), value);
            assertThat(NetFlightPath.START.second()).contains(Height.ofMetres(11));
            return;
        }
        int number = Integer.parseInt(engines);
        for (CertificationGradient requirement : CertificationGradient.values()) {
            if (requirement.rule().equals(section)) {
                is(requirement.least(number).inPercent(), value.replace("positive (>0)", "0"));
                return;
            }
        }
        for (NetReduction reduction : NetReduction.values()) {
            if (reduction.rule().equals(section)) {
                if (value.equals("not applicable")) {
                    assertThat(reduction.reduction(number)).isEmpty();
                } else {
                    is(reduction.reduction(number).orElseThrow().inPercent(), value);
                }
                return;
            }
        }
        throw new AssertionError(id + " is not compared");
    }

    @ParameterizedTest(name = "{0} {1}: {2}")
    @CsvFileSource(
            resources = "/gradient/rows-left-out-geometry.csv",
            useHeadersInDisplayName = true)
    @DisplayName("that is not compared is named with its table and a reason:")
    void hasAReason(String table, String row, String reason, String source) {
        assertThat(Table.rows("/gradient/" + table))
                .filteredOn(line -> line.startsWith(row + ","))
                .hasSize(1);
        assertThat(reason)
                .containsAnyOf(
                        "tested elsewhere",
                        "performance",
                        "no gradient",
                        "words",
                        "another class of aeroplane");
        assertThat(source).isNotBlank();
    }

    @Test
    @DisplayName("is one of 19, 31 and 18, of which 15 are left out, and 9 of 18 mistakes")
    void rows() {
        assertThat(Table.rows("/gradient/procedure.csv")).hasSize(19);
        assertThat(Table.rows("/gradient/certification.csv")).hasSize(31);
        assertThat(Table.rows("/gradient/second-certification.csv")).hasSize(18);
        assertThat(Table.rows("/gradient/pitfalls.csv")).hasSize(18);
        assertThat(leftOut("procedure.csv")).hasSize(1);
        assertThat(leftOut("certification.csv")).hasSize(3);
        assertThat(leftOut("second-certification.csv")).hasSize(11);
        assertThat(leftOut("pitfalls.csv")).hasSize(9);
        assertThat(Table.rows("/gradient/rows-left-out-geometry.csv")).hasSize(24);
    }

    static Set<String> leftOut(String table) {
        return Table.rows("/gradient/rows-left-out-geometry.csv").stream()
                .map(row -> row.split(","))
                .filter(row -> row[0].equals(table))
                .map(row -> row[1])
                .collect(Collectors.toSet());
    }

    private static GroundGradient feetPerMile(double feet) {
        return GroundGradient.ofFeetPerNauticalMile(feet);
    }

    private static void is(double ours, String value) {
        assertThat(ours).isEqualTo(number(value));
    }

    private static double number(String text) {
        return Double.parseDouble(text);
    }
}
