package org.climbwright.icing.accretion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("The collection efficiency of a cylinder")
class CylinderImpingementTableTest {
    private static final String TABLE = "/icing/accretion/cylinder-impingement.csv";
    private static final String ON_DIAMETER = "/icing/accretion/cylinder-on-diameter.csv";

    @ParameterizedTest(name = "{0}, {1} is {2} and {3}")
    @CsvFileSource(resources = TABLE, useHeadersInDisplayName = true)
    @DisplayName("is that of the table, as a whole and at the stagnation line")
    void agreesWithTheTable(
            double phi,
            double inertia,
            double overall,
            double stagnation,
            double largestAngle,
            String source) {
        double reynolds = Math.sqrt(phi * inertia); // phi is Re² / K
        double k0 =
                DropImpingement.langmuirModifiedInertia(
                        inertia, DropImpingement.rangeRatioByFit(reynolds));
        // what the formulas are off in the table that they were fitted to
        assertThat(DropImpingement.stagnationEfficiency(k0)).isCloseTo(stagnation, within(0.05));
        assertThat(DropImpingement.overallEfficiency(k0)).isCloseTo(overall, within(0.05));
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvFileSource(resources = ON_DIAMETER, useHeadersInDisplayName = true)
    @DisplayName("is that of the handbook's figure if its abscissa is based on the diameter")
    void agreesWithTheFigure(double onDiameter, double stagnation, String source) {
        // twice as large on the radius; 0.01 of reading and 0.02 of the formula
        assertThat(DropImpingement.stagnationEfficiency(2.0 * onDiameter))
                .isCloseTo(stagnation, within(0.0301));
    }

    @Test
    @DisplayName("is compared in 50 rows, and 7 of the figure")
    void rows() {
        assertThat(Table.rows(TABLE)).hasSize(50);
        assertThat(Table.rows(ON_DIAMETER)).hasSize(7);
    }
}
