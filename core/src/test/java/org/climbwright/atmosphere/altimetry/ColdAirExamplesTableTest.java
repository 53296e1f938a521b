package org.climbwright.atmosphere.altimetry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.printedAs;

import java.util.stream.DoubleStream;
import org.climbwright.testing.Table;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("A worked example of the manual, for an aerodrome at 3,206 ft and -12 °C")
class ColdAirExamplesTableTest {
    private static final double ELEVATION = UnitScale.FOOT.toSi(3206.0);

    /** The lines of the printed table. */
    private static final double[] HEIGHTS = {
        200, 300, 400, 500, 600, 700, 800, 900, 1000, 1500, 2000, 3000, 4000, 5000
    };

    @ParameterizedTest(name = "{0}, {2}: {4}, {5}, {6}, and {3}")
    @CsvFileSource(resources = "/atmosphere/cold-air-examples.csv", useHeadersInDisplayName = true)
    @DisplayName("has these corrections, of which the printed one is on the safe side")
    void agreesWithTheTable(
            String example,
            double heightFeet,
            double celsius,
            double publishedFeet,
            String interpolatedFeet,
            String formulaFeet,
            String exactFeet) {
        double t = UnitScale.CELSIUS.toSi(celsius);
        double h = UnitScale.FOOT.toSi(heightFeet);
        double exact = UnitScale.FOOT.fromSi(ColdAir.exactCorrection(h, t, ELEVATION));
        assertThat(UnitScale.FOOT.fromSi(ColdAir.aerodromeCorrection(h, t, ELEVATION)))
                .is(printedAs(formulaFeet));
        assertThat(exact).is(printedAs(exactFeet));
        assertThat(interpolated(heightFeet, celsius)).is(printedAs(interpolatedFeet));
        // The example rounds by eye, from a table that is made for an aerodrome at sea level and
        // therefore adds more: no figure to compare, but never less than needed.
        assertThat(publishedFeet).isGreaterThan(exact);
    }

    /** The table read by straight lines between its entries, which the library does not offer. */
    private static double interpolated(double feet, double celsius) {
        double low = DoubleStream.of(HEIGHTS).filter(x -> x <= feet).max().orElseThrow();
        double high = DoubleStream.of(HEIGHTS).filter(x -> x >= feet).min().orElseThrow();
        double warm = 10.0 * Math.ceil(celsius / 10.0);
        double between = high > low ? (feet - low) / (high - low) : 0.0;
        double colder = (warm - celsius) / 10.0;
        return (1 - colder) * ((1 - between) * entry(low, warm) + between * entry(high, warm))
                + colder
                        * ((1 - between) * entry(low, warm - 10)
                                + between * entry(high, warm - 10));
    }

    private static double entry(double feet, double celsius) {
        return UnitScale.FOOT.fromSi(
                ColdAir.tableCorrection(
                        UnitScale.FOOT.toSi(feet), UnitScale.CELSIUS.toSi(celsius)));
    }

    @Test
    @DisplayName("is compared in 3 rows")
    void rows() {
        assertThat(Table.rows("/atmosphere/cold-air-examples.csv")).hasSize(3);
    }
}
