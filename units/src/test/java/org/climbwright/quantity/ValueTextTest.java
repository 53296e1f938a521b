package org.climbwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("The text of a value")
class ValueTextTest {
    @ParameterizedTest(name = "{0} {1}")
    @CsvFileSource(resources = "/quantity/texts.csv", useHeadersInDisplayName = true)
    @DisplayName("is in the unit of the trade, and its description in SI as well:")
    void isInTheUnitOfTheTrade(String term, String read, String written, String described) {
        ValueType<?> type =
                ValueCatalogue.all()
                        .filter(candidate -> candidate.term().equals(term))
                        .findAny()
                        .orElseThrow(() -> new AssertionError(term));

        Scalar<?> value = type.parse().apply(read);

        assertThat(value.text()).isEqualTo(written);
        assertThat(value.toString()).endsWith(described);
        if (described.startsWith("(")) {
            assertThat(value.toString()).contains(siLabel(value) + " (");
        }
    }

    private static String siLabel(Scalar<?> value) {
        String label =
                Arrays.stream(UnitScale.values())
                        .filter(scale -> scale.kind() == value.term().kind())
                        .findFirst()
                        .orElseThrow()
                        .label();
        return label.equals("1") ? "" : " " + label; // "0.63 1" would read as two numbers
    }

    @Test
    @DisplayName("is asked of every value there is")
    void asksEveryType() throws Exception {
        try (var table = getClass().getResourceAsStream("/quantity/texts.csv")) {
            Set<String> asked =
                    new String(table.readAllBytes(), StandardCharsets.UTF_8)
                            .lines()
                            .filter(line -> !line.startsWith("#") && !line.startsWith("term,"))
                            .map(line -> line.substring(0, line.indexOf(',')))
                            .collect(Collectors.toSet());

            assertThat(asked)
                    .containsExactlyInAnyOrderElementsOf(
                            ValueCatalogue.all().map(ValueType::term).toList());
        }
    }
}
