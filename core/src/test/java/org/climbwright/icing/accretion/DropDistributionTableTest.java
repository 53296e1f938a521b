package org.climbwright.icing.accretion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("A distribution of drops")
class DropDistributionTableTest {
    private static final String TABLE = "/icing/accretion/drop-distributions.csv";

    @Test
    @DisplayName("has the shares and the diameters of the table, in its order: 35 rows")
    void agreesWithTheTable() {
        assertThat(Table.rows(TABLE)).hasSize(35);
        int row = 0;
        for (String line : Table.rows(TABLE)) {
            String[] cells = line.split(",", 4);
            DropDistribution drops = DropDistribution.valueOf("LANGMUIR_" + cells[0]);
            assertThat(drops.waterShare(row % 7)).isEqualTo(Double.parseDouble(cells[1]));
            assertThat(drops.diameterRatio(row % 7)).isEqualTo(Double.parseDouble(cells[2]));
            row++;
        }
    }

    @ParameterizedTest
    @EnumSource(DropDistribution.class)
    @DisplayName("shares all of the water, about the median, in powers of the narrow one")
    void shares(DropDistribution drops) {
        assertThat(drops.classes()).isEqualTo(7);
        assertThat(drops.mean(20e-6, d -> 1.0)).isCloseTo(1.0, within(1e-15));
        double power = drops.ordinal() == 0 ? 0.0 : 0.5 * (drops.ordinal() + 1);
        for (int i = 0; i < 7; i++) {
            double narrow = DropDistribution.LANGMUIR_B.diameterRatio(i);
            // two decimals are printed
            assertThat(drops.diameterRatio(i))
                    .isCloseTo(StrictMath.pow(narrow, power), within(0.01));
        }
    }
}
