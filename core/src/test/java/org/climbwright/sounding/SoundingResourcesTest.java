package org.climbwright.sounding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What the tests of soundings compare with")
class SoundingResourcesTest {
    @Test
    @DisplayName("leaves 134 rows of the answers out, each with its reason")
    void rowsLeftOut() {
        List<String> rows = Table.rows("/sounding/rows-left-out.csv");
        assertThat(rows).hasSize(134);
        assertThat(rows).filteredOn(r -> r.contains("lifted parcels are not")).hasSize(59);
        assertThat(rows).filteredOn(r -> r.contains("a recorded climb")).hasSize(46);
        assertThat(rows).filteredOn(r -> r.contains("reports of an aeroplane")).hasSize(27);
        assertThat(rows).filteredOn(r -> r.contains("and holds none")).hasSize(2);
    }

    @Test
    @DisplayName("is 17 recorded files, and ORIGIN.csv says of each whose it is")
    void origins() {
        List<String> rows = Table.rows("/sounding/ORIGIN.csv");
        assertThat(rows.stream().map(row -> row.substring(0, row.indexOf(','))))
                .containsExactlyInAnyOrderElementsOf(Soundings.files())
                .hasSize(17);
    }
}
