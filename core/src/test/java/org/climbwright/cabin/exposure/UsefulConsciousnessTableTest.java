package org.climbwright.cabin.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import org.climbwright.cabin.exposure.UsefulConsciousness.Circumstance;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.testing.Streams;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("A published time of useful consciousness")
class UsefulConsciousnessTableTest {
    private static UsefulConsciousnessTable table(int index) {
        return UsefulConsciousnessTable.published().get(index);
    }

    @ParameterizedTest(name = "{0}: {3} to {4} s")
    @CsvFileSource(
            resources = "/cabin/time-of-useful-consciousness.csv",
            useHeadersInDisplayName = true)
    @DisplayName("is the one that was printed, under its source and circumstance:")
    void asPrinted(
            String id,
            double feet,
            String circumstance,
            long low,
            Long high,
            String unit,
            String source,
            String seen) {
        assertThat(unit).isEqualTo("s");
        boolean remembered = seen.equals("from memory");
        CabinAltitude cabin = CabinAltitude.ofFeet(feet);
        List<UsefulConsciousness> rows =
                UsefulConsciousnessTable.published().stream()
                        .filter(table -> remembered == table.source().startsWith("FAA AC 61-107B"))
                        .filter(table -> remembered || sameSource(table.source(), source))
                        .filter(table -> circumstance.startsWith(table.circumstance().words()))
                        .filter(table -> exactly(table.circumstance(), circumstance, remembered))
                        .flatMap(table -> table.at(cabin).stream())
                        .toList();
        assertThat(rows).hasSize(1);
        UsefulConsciousness row = rows.get(0);
        assertThat(row.low()).isEqualTo(Duration.ofSeconds(low));
        assertThat(row.high().map(Duration::toSeconds).orElse(null)).isEqualTo(high);
        assertThat(row.evidence()).isEqualTo(remembered ? Evidence.FROM_MEMORY : Evidence.SEEN);
        assertThat(row.toString().contains("from memory")).isEqualTo(remembered);
        assertThat(row).asString().contains(row.source()).contains(circumstance(row));
    }

    private static String circumstance(UsefulConsciousness row) {
        return row.circumstance().words();
    }

    private static boolean sameSource(String ours, String printed) {
        return ours.replace("p. ", "p.").equals(printed.replace("p. ", "p."));
    }

    private static boolean exactly(Circumstance ours, String printed, boolean remembered) {
        return remembered || ours.words().equals(printed);
    }

    @Test
    @DisplayName("is one of 35 rows in six tables, none blended with another")
    void counted() {
        List<UsefulConsciousnessTable> tables = UsefulConsciousnessTable.published();
        assertThat(tables).hasSize(6);
        assertThat(tables.stream().mapToInt(table -> table.rows().size()).sum()).isEqualTo(35);
    }

    @ParameterizedTest(name = "at {0} ft: rows {1}")
    @CsvSource({
        "17999, ''",
        "18000, 18000",
        "18001, 18000 22000",
        "21999, 18000 22000",
        "22000, 22000",
        "42999, 40000 43000",
        "45000, 43000 50000",
        "50000, 50000",
        "50001, ''",
        "60000, ''",
        "8000, ''"
    })
    @DisplayName(
            "is told for its own altitude alone, else for those beside it, beyond the ends not at"
                    + " all:")
    void around(double feet, String rows) {
        CabinAltitude cabin = CabinAltitude.ofFeet(feet);
        List<String> told =
                table(0).around(cabin).stream()
                        .map(row -> String.valueOf((int) row.altitude().inFeet()))
                        .toList();
        assertThat(String.join(" ", told)).isEqualTo(rows);
    }

    @Test
    @DisplayName("is found at 5486.4 m, which is 18,000 ft, and not a thousandth of a foot beside")
    void inMetres() {
        assertThat(table(0).at(CabinAltitude.ofMetres(5486.4))).isPresent();
        assertThat(table(0).at(CabinAltitude.ofMetres(5486.4 + 9e-7))).isPresent();
        assertThat(table(0).at(CabinAltitude.ofFeet(18_000.001))).isEmpty();
        assertThat(table(0).at(CabinAltitude.ofFeet(17_999.999))).isEmpty();
        assertThat(table(0).nextBelow(CabinAltitude.ofMetres(5486.4))).isEmpty();
        assertThat(table(0).nextBelow(CabinAltitude.ofFeet(18_000.001))).isPresent();
    }

    @Test
    @DisplayName("is never said without its altitude, and not known is said beyond the ends")
    void inWords() {
        assertThat(table(0).inWords(CabinAltitude.ofFeet(8000)))
                .startsWith("8000 ft: not known, the table is from 18000 ft to 50000 ft, slow")
                .doesNotContain(" s ");
        assertThat(table(0).inWords(CabinAltitude.ofFeet(60_000)))
                .startsWith("60000 ft: not known");
        assertThat(table(0).inWords(CabinAltitude.ofFeet(22_000)))
                .startsWith("22000 ft, slow ascent: 600 s (");
        assertThat(table(0).inWords(CabinAltitude.ofFeet(20_000)))
                .startsWith("20000 ft: not tabulated, below it 18000 ft, slow ascent: 1200 s to")
                .contains("above it 22000 ft, slow ascent: 600 s (");
    }

    @Test
    @DisplayName("is not carried on beyond the ends of its table")
    void ends() {
        CabinAltitude low = CabinAltitude.ofFeet(18_000);
        CabinAltitude high = CabinAltitude.ofFeet(50_000);
        assertThat(table(0).nextBelow(low)).isEmpty();
        assertThat(table(0).nextAbove(high)).isEmpty();
        assertThat(table(0).nextAbove(low).orElseThrow().altitude())
                .isEqualTo(CabinAltitude.ofFeet(22_000));
        assertThat(table(0).nextBelow(high).orElseThrow().altitude())
                .isEqualTo(CabinAltitude.ofFeet(43_000));
        assertThat(table(0).at(CabinAltitude.ofFeet(50_001))).isEmpty();
    }

    @Test
    @DisplayName("is the same at 43,000 and 50,000 ft in the table of the circular")
    void plateau() {
        for (int index = 0; index < 2; index++) {
            UsefulConsciousness lower = table(index).at(CabinAltitude.ofFeet(43_000)).orElseThrow();
            UsefulConsciousness higher =
                    table(index).at(CabinAltitude.ofFeet(50_000)).orElseThrow();
            assertThat(higher.low()).isEqualTo(lower.low());
            assertThat(higher.high()).isEqualTo(lower.high());
        }
    }

    @Test
    @DisplayName("never grows with altitude within a table")
    void fallsWithAltitude() {
        for (UsefulConsciousnessTable table : UsefulConsciousnessTable.published()) {
            for (int i = 1; i < table.rows().size(); i++) {
                UsefulConsciousness below = table.rows().get(i - 1);
                UsefulConsciousness above = table.rows().get(i);
                assertThat(above.low()).isLessThanOrEqualTo(below.low());
                assertThat(above.high().orElseThrow())
                        .isGreaterThanOrEqualTo(above.low())
                        .isLessThanOrEqualTo(below.high().orElse(Duration.ofDays(1)));
            }
        }
    }

    @Test
    @DisplayName("is read aloud with its range, its circumstance and its source")
    void text() {
        assertThat(table(1).at(CabinAltitude.ofFeet(25_000)).orElseThrow())
                .asString()
                .startsWith("25000 ft, after rapid decompression: 90 s to 210 s (Table 1-1");
        assertThat(table(0).at(CabinAltitude.ofFeet(22_000)).orElseThrow())
                .asString()
                .startsWith("22000 ft, slow ascent: 600 s (");
        assertThat(table(2).rows().get(0))
                .asString()
                .startsWith("15000 ft, average, at rest: 1800 s or more (");
        assertThat(table(2).rows().get(0).high()).isEmpty();
    }

    @Test
    @DisplayName("travels as bytes and arrives equal")
    void travels() throws IOException {
        for (UsefulConsciousnessTable table : UsefulConsciousnessTable.published()) {
            assertThat(Streams.roundTrip(table)).isEqualTo(table).hasSameHashCodeAs(table);
        }
        assertThat(table(0).rows().get(0))
                .isNotEqualTo(table(1).rows().get(0))
                .isNotEqualTo("another");
    }

    @Test
    @DisplayName("stands in a table of its own source and in order, or is refused")
    void refuses() {
        UsefulConsciousness low = table(0).rows().get(0);
        UsefulConsciousness high = table(0).rows().get(1);
        UsefulConsciousness other = table(1).rows().get(1);
        for (List<UsefulConsciousness> rows :
                List.of(
                        List.<UsefulConsciousness>of(),
                        List.of(high, low),
                        List.of(low, low),
                        List.of(low, other))) {
            assertThatIllegalArgumentException()
                    .isThrownBy(
                            () ->
                                    new UsefulConsciousnessTable(
                                            low.source(), low.circumstance(), rows));
        }
    }
}
