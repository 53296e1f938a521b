package org.climbwright.cabin.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.testing.Agreement.printedAs;
import static org.climbwright.testing.Agreement.relativelyCloseTo;

import org.climbwright.atmosphere.StandardAir;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("The flow through an opening")
class OrificeFlowTableTest {
    @ParameterizedTest(name = "{0} Pa, ratio {2}: {6} kg/s")
    @CsvFileSource(resources = "/cabin/orifice-flow.csv", useHeadersInDisplayName = true)
    @DisplayName("is that of the table, choked or not, near equal pressures too")
    void agreesWithTheTable(
            double upstreamPa,
            double upstreamK,
            double ratio,
            String choked,
            double areaM2,
            double discharge,
            String flow,
            String incompressible) {
        double downstreamPa = upstreamPa * ratio;
        double ours = OrificeFlow.massFlow(areaM2 * discharge, upstreamPa, downstreamPa, upstreamK);
        assertThat(ours).is(printedAs(flow, 10));
        assertThat(OrificeFlow.isChoked(upstreamPa, downstreamPa)).isEqualTo(choked.equals("yes"));
        assertThat(OrificeFlow.area(ours, upstreamPa, downstreamPa, upstreamK))
                .is(relativelyCloseTo(Double.toString(areaM2 * discharge), 1e-15));

        // the table's note: what sqrt(2 rho dp) makes of it
        double density = upstreamPa / (287.05287 * upstreamK);
        double plain = areaM2 * discharge * Math.sqrt(2.0 * density * (upstreamPa - downstreamPa));
        assertThat(plain / ours).is(printedAs(incompressible, 6));
    }

    @ParameterizedTest(name = "{0} kg/s out of {2} ft at {3} ft: {5} m²")
    @CsvFileSource(resources = "/cabin/outflow-valve-area.csv", useHeadersInDisplayName = true)
    @DisplayName("tells the valve's area that a steady inflow needs")
    void valveArea(
            double flow,
            double cabinK,
            double cabinFeet,
            double feet,
            String ratio,
            String areaM2) {
        double inside = StandardAir.pressureFromAltitude(cabinFeet * 0.3048);
        double outside = StandardAir.pressureFromAltitude(feet * 0.3048);
        assertThat(outside / inside).is(printedAs(ratio, 7));
        assertThat(OrificeFlow.area(flow, inside, outside, cabinK)).is(printedAs(areaM2, 9));
    }

    @Test
    @DisplayName("chokes at 0.528282 and carries 0.0404147 s·√K/m times area and pressure then")
    void constants() {
        assertThat(OrificeFlow.CHOKED_COEFFICIENT).isCloseTo(0.0404147, within(0.5e-7));
        assertThat(OrificeFlow.CRITICAL_PRESSURE_RATIO)
                .isCloseTo(StrictMath.pow(2.0 / 2.4, 3.5), within(1e-15));
    }

    @Test
    @DisplayName("has no area at equal pressures, and says so")
    void noFlow() {
        assertThat(OrificeFlow.massFlow(0.01, 1e5, 1e5, 288.15)).isZero();
        assertThatThrownBy(() -> OrificeFlow.area(1.0, 1e5, 1e5, 288.15))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageContaining("100000.0 Pa")
                .hasMessageContaining("nothing flows");
        assertThatThrownBy(() -> OrificeFlow.massFlow(0.01, 1e5, 1.1e5, 288.15))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageContaining("exchange the two");
    }

    @Test
    @DisplayName("is compared in 14 and 4 rows")
    void rows() {
        assertThat(Table.rows("/cabin/orifice-flow.csv")).hasSize(14);
        assertThat(Table.rows("/cabin/outflow-valve-area.csv")).hasSize(4);
    }
}
