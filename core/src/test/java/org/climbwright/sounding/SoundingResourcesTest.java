package org.climbwright.sounding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What the tests of soundings compare with")
class SoundingResourcesTest {
    @Test
    @DisplayName("leaves 85 rows of the answers out, each with its reason")
    void rowsLeftOut() {
        List<String> rows = Table.rows("/sounding/rows-left-out.csv");
        assertThat(rows).hasSize(85);
        assertThat(rows).filteredOn(r -> r.contains("energy of lifted parcels")).hasSize(26);
        assertThat(rows).filteredOn(r -> r.contains("a recorded climb")).hasSize(46);
        assertThat(rows).filteredOn(r -> r.contains("and holds none")).hasSize(5);
        assertThat(rows).filteredOn(r -> r.contains("returns a level beside")).hasSize(8);
    }

    @Test
    @DisplayName(
            "is 17 recorded files of soundings and 4 of climbs, and ORIGIN.csv says of each whose"
                    + " it is")
    void origins() {
        List<String> rows = Table.rows("/sounding/ORIGIN.csv");
        assertThat(rows.stream().map(row -> row.substring(0, row.indexOf(','))))
                .containsAll(Soundings.files())
                .hasSize(21)
                .filteredOn(file -> file.startsWith("amdar_"))
                .hasSize(4);
    }
}
