package org.climbwright.ledger;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.lang.reflect.Method;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.climbwright.atmosphere.DryAir;
import org.climbwright.testing.FiftyDigits;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Whatever fails here after a change of a formula: ACCURACY.md says how to measure anew. */
@DisplayName("The accuracy ledger")
class AccuracyLedgerTest {
    /** So many steps at a time: a hundredth of the points, and all bounds and marks. */
    private static final int STRIDE = 100;

    /** Errors are differences of the 50-digit number: they agree to far more digits than these. */
    private static final double SAME = 1e-9;

    private static final List<Entry> RECORDED =
            Table.rows(AccuracyLedger.CSV).stream().map(Entry::parse).toList();

    @Test
    @DisplayName("has a row for every function of doubles")
    void isComplete() {
        assertThat(AccuracyLedger.rows().stream().map(Row::function).distinct().toList())
                .containsExactlyInAnyOrderElementsOf(AccuracyLedger.functions());
        assertThat(AccuracyLedger.functions()).extracting(Method::getName).contains("altitude");
    }

    @Test
    @DisplayName(
            "records no less than is found again, for the same inputs and against the same bar")
    void recordsTheLargestErrors() {
        List<Entry> found = AccuracyLedger.measure(STRIDE);
        assertThat(found)
                .extracting(Entry::key, Entry::ranges, Entry::bar)
                .containsExactlyElementsOf(
                        RECORDED.stream().map(e -> tuple(e.key(), e.ranges(), e.bar())).toList());
        List<String> worse = new ArrayList<>();
        for (int i = 0; i < found.size(); i++) {
            if (found.get(i).largest() > RECORDED.get(i).largest() * (1.0 + SAME)) {
                worse.add(found.get(i) + " and not " + RECORDED.get(i).largest());
            }
        }
        assertThat(worse).isEmpty();
    }

    @Test
    @DisplayName("records errors that are still there")
    void recordsWhatIsThere() {
        Map<String, Row> rows =
                AccuracyLedger.rows().stream()
                        .collect(Collectors.toMap(AccuracyLedgerTest::words, Function.identity()));
        List<String> gone = new ArrayList<>();
        for (Entry entry : RECORDED) {
            Row row = rows.get(entry.row());
            List<String> measures = row.measures().stream().map(Measure::name).toList();
            double[] errors = row.errors(Figures.inputs(entry.at()));
            double error = errors[measures.indexOf(entry.measure())];
            if (!(Math.abs(error - entry.largest()) <= SAME * entry.largest())) {
                gone.add(entry + " but is " + error);
            }
        }
        assertThat(gone).isEmpty();
    }

    @Test
    @DisplayName("has no error above its bar but those known to be, each with its reason")
    void keepsToTheBars() {
        List<String> known =
                Table.rows("/ledger/rows-above-the-bar.csv").stream()
                        .map(line -> line.split(",", 4))
                        .peek(field -> assertThat(field[3]).isNotBlank())
                        .map(field -> String.join(",", field[0], field[1], field[2]))
                        .toList();
        assertThat(RECORDED.stream().filter(Entry::isAboveBar))
                .map(entry -> String.join(",", entry.function(), entry.part(), entry.measure()))
                .containsExactlyInAnyOrderElementsOf(known);
    }

    @Test
    @DisplayName("is the page that people read")
    void isThePage() throws IOException {
        assertThat(Path.of(AccuracyLedger.PAGE))
                .content(UTF_8)
                .isEqualTo(LedgerPage.text(RECORDED));
    }

    @Test
    @DisplayName("would notice an error of 5 ulp, and a result that is no number")
    void wouldNotice() {
        Axis temperature = Axis.of("temperatureK", 100.0, 400.0);
        Row offByFive =
                Row.of(
                        DryAir.class,
                        "speedOfSound",
                        in ->
                                FiftyDigits.speedOfSound(new BigDecimal(in[0]))
                                        .multiply(new BigDecimal("1.000000000000001")),
                        temperature);
        assertThat(offByFive.measure(1000)).allMatch(Entry::isAboveBar);
        Row nothing = Row.of(NoNumber.class, "of", in -> BigDecimal.ONE, temperature);
        assertThat(nothing.measure(1000)).allMatch(e -> e.largest() == Double.POSITIVE_INFINITY);
    }

    /** A function as there is none in the rooms. */
    public static final class NoNumber {
        private NoNumber() {}

        /** No number for any. */
        public static double of(double any) {
            return Double.NaN;
        }
    }

    private static String words(Row row) {
        return row.name() + (row.part().isEmpty() ? "" : " (" + row.part() + ")");
    }
}
