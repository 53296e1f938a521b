package org.climbwright.airspeed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Two climbs that measured each quantity by a sensor or computer of its own. How far the relations
 * between the recorded quantities scatter was evaluated over the whole flights, of which the climbs
 * are a part: so the median of a climb is held to the middle nine tenths of its flight. That says
 * that the relations are those of the recorder; the rest is the sensors.
 */
@DisplayName("A recorded climb")
class RecordedClimbTest {
    private static final double KNOT = 1852.0 / 3600.0;

    /** The evaluation left the ground out: only rows of more than 60 m/s. */
    private static final double FLYING_MPS = 60.0;

    @ParameterizedTest(name = "{0}, {1}")
    @CsvFileSource(resources = "/airspeed/recorded-scatter.csv", useHeadersInDisplayName = true)
    @DisplayName("obeys the relations, to the scatter of its sensors over the whole flight")
    void obeysTheRelation(
            String climb, String quantity, int samples, double p5, double median, double p95) {
        double[] differences =
                rows(climb).stream()
                        .filter(row -> row.get("tas_mps") > FLYING_MPS)
                        .mapToDouble(difference(quantity))
                        .sorted()
                        .toArray();

        assertThat(differences).hasSizeBetween(150, samples);
        assertThat(median(differences)).isBetween(p5, p95);
    }

    @Test
    @DisplayName("of the four-engine turboprop has its true airspeed in the median within 0.05 kn")
    void trueAirspeedOfTheFourEngineTurboprop() {
        double[] differences =
                rows("four-engine-turboprop").stream()
                        .filter(row -> row.get("tas_mps") > FLYING_MPS)
                        .mapToDouble(difference("tas_from_ias_p_sat_minus_tas_kt"))
                        .sorted()
                        .toArray();

        assertThat(differences).hasSize(290);
        assertThat(Math.abs(median(differences))).isLessThan(0.05);
    }

    /** The difference as the evaluation of the whole flight took it. */
    private static ToDoubleFunction<Map<String, Double>> difference(String quantity) {
        return switch (quantity) {
            case "tas_over_a_minus_mach" ->
                    row ->
                            AirspeedConversion.machFromTas(
                                            row.get("tas_mps"), row.get("static_air_temp_k"))
                                    - row.get("mach");
            case "mach_from_ias_minus_mach" -> row -> machFromIas(row) - row.get("mach");
            case "tas_from_ias_p_sat_minus_tas_kt" ->
                    row ->
                            (AirspeedConversion.tasFromMach(
                                                    machFromIas(row), row.get("static_air_temp_k"))
                                            - row.get("tas_mps"))
                                    / KNOT;
            case "tat_over_1p02M2_minus_sat_K" ->
                    row ->
                            row.get("total_air_temp_k")
                                            * 273.15
                                            / TotalTemperature.fromMach(
                                                    row.get("mach"), 273.15, 1.0)
                                    - row.get("static_air_temp_k");
            case "altp_minus_isa_m" ->
                    row ->
                            row.get("pressure_altitude_m")
                                    - StandardAir.altitudeFromPressure(pressurePa(row));
            default -> throw new AssertionError(quantity);
        };
    }

    /** The indicated airspeed is taken as the calibrated one. */
    private static double machFromIas(Map<String, Double> row) {
        return AirspeedConversion.machFromCas(row.get("ias_mps"), pressurePa(row));
    }

    private static double pressurePa(Map<String, Double> row) {
        return row.get("static_pressure_hpa") * 100.0;
    }

    @Test
    @DisplayName("is one of 162 rows of a twin turboprop, or of 298 of a four-engine turboprop")
    void rows() {
        assertThat(rows("twin-turboprop")).hasSize(162);
        assertThat(rows("four-engine-turboprop")).hasSize(298);
        assertThat(Table.rows("/airspeed/recorded-scatter.csv")).hasSize(8);
    }

    private static List<Map<String, Double>> rows(String climb) {
        String resource = "/airspeed/recorded-climb-" + climb + ".csv";
        String[] head = Table.head(resource).split(",", -1);
        return Table.rows(resource).stream()
                .map(
                        line -> {
                            String[] fields = line.split(",", -1);
                            Map<String, Double> row = new TreeMap<>();
                            for (int i = 0; i < head.length - 1; i++) { // the last is the source
                                row.put(head[i], Double.valueOf(fields[i]));
                            }
                            return row;
                        })
                .toList();
    }

    private static double median(double[] sorted) {
        int half = sorted.length / 2;
        return sorted.length % 2 == 1
                ? sorted[half]
                : Arrays.stream(sorted, half - 1, half + 1).average().orElseThrow();
    }
}
