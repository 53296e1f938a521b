package org.climbwright.icing.accretion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The freezing fraction")
class FreezingFractionTableTest {
    private static final String MESSINGER = "/icing/accretion/freezing-fraction-messinger.csv";
    private static final String SPEEDS = "/icing/accretion/freezing-fraction-speeds.csv";
    private static final String AEDC = "/icing/accretion/freezing-fraction-aedc.csv";
    private static final String HANDBOOK = "/icing/accretion/freezing-fraction-handbook.csv";
    private static final String ASYMPTOTE = "/icing/accretion/freezing-fraction-asymptote.csv";

    private static final double MPH = 1609.344 / 3600.0;
    private static final double KNOT = 1852.0 / 3600.0;

    @ParameterizedTest(name = "{0} is {6}")
    @CsvFileSource(resources = MESSINGER, useHeadersInDisplayName = true)
    @DisplayName("of the wind-tunnel and mountain runs is met from their own heat factor")
    void messinger(
            String run,
            double mph,
            double grams,
            double micrometres,
            double totalFahrenheit,
            double heatFactor,
            double fraction,
            String source) {
        double v = mph * MPH;
        double total = kelvin(totalFahrenheit);
        double t = total - v * v / (2.0 * KineticHeating.SPECIFIC_HEAT_J_PER_KG_K);
        // the pressure is not printed: 80 kPa for a mountain of 1900 m; the recovery that its
        // author took, 0.875
        double ours =
                HeatBalance.freezingFraction(
                        HeatBalance.dropEnergyTransfer(t, v),
                        HeatBalance.airEnergyTransfer(t, v, 80_000.0, 0.875),
                        heatFactor);
        assertThat(ours).isCloseTo(fraction, within(0.12));
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = SPEEDS, useHeadersInDisplayName = true)
    @DisplayName("leaves 1 and reaches 0 at the speeds of the figure")
    void speeds(
            double heatFactor,
            double fahrenheit,
            double feet,
            double knotsAt1,
            double knotsAt0,
            String source) {
        double pressure = StandardAir.pressureFromAltitude(feet * 0.3048);
        double t = kelvin(fahrenheit);
        assertThat(balance(t, knotsAt1 * KNOT, pressure, heatFactor)).isCloseTo(1.0, within(0.03));
        assertThat(balance(t, knotsAt0 * KNOT, pressure, heatFactor)).isCloseTo(0.0, within(0.03));
    }

    private static double balance(double t, double v, double pressure, double heatFactor) {
        return HeatBalance.balance(
                HeatBalance.dropEnergyTransfer(t, v),
                HeatBalance.airEnergyTransfer(t, v, pressure, KineticHeating.LAMINAR_RECOVERY),
                heatFactor);
    }

    @ParameterizedTest(name = "{0} is {7}")
    @CsvFileSource(resources = AEDC, useHeadersInDisplayName = true)
    @DisplayName("of the scaled cylinders follows from the three numbers printed with it")
    void scaled(
            String run,
            double feetPerSecond,
            double fahrenheit,
            double psia,
            double heatFactor,
            double phi,
            double theta,
            double fraction,
            String source) {
        double ours = HeatBalance.balance(phi / 1.8, theta / 1.8, heatFactor);
        // the printed numbers have two and three digits; theirs are 6 % apart at most
        assertThat(ours).isCloseTo(fraction, within(0.06 * fraction));
        assertThat(HeatBalance.dropEnergyTransfer(kelvin(fahrenheit), feetPerSecond * 0.3048))
                .isCloseTo(phi / 1.8, within(0.1));
    }

    private record Printed(
            double celsius, double mps, double micrometres, double grams, double fraction) {
        /** The balance of a cylinder of 20 cm at sea level; the source says neither. */
        double ours() {
            AirState air = AirState.ofSi(101_325.0, celsius + 273.15, Double.NaN, Double.NaN);
            double k = inertia(air);
            double beta = DropImpingement.stagnationEfficiency(k);
            double h =
                    HeatBalance.stagnationHeatTransfer(
                            mps,
                            0.2,
                            air.densityKgPerM3(),
                            air.dynamicViscosityPaS(),
                            air.thermalConductivityWPerMK());
            double b =
                    HeatBalance.relativeHeatFactor(IceGrowth.waterCatch(grams / 1e3, mps, beta), h);
            return balance(air.temperatureK(), mps, 101_325.0, b);
        }

        private double inertia(AirState air) {
            double d = micrometres / 1e6;
            double viscosity = air.dynamicViscosityPaS();
            return DropImpingement.langmuirModifiedInertia(
                    DropImpingement.inertiaParameter(d, mps, viscosity, 0.1),
                    DropImpingement.rangeRatioByFit(
                            DropImpingement.dropReynoldsNumber(
                                    d, mps, air.densityKgPerM3(), viscosity)));
        }
    }

    private static List<Printed> family(String name) {
        List<Printed> rows = new ArrayList<>();
        for (String line : Table.rows(HANDBOOK)) {
            String[] cells = line.split(",", 7);
            if (cells[0].equals(name)) {
                rows.add(
                        new Printed(
                                Double.parseDouble(cells[1]),
                                Double.parseDouble(cells[2]),
                                Double.parseDouble(cells[3]),
                                Double.parseDouble(cells[4]),
                                Double.parseDouble(cells[5])));
            }
        }
        return rows;
    }

    @ParameterizedTest(name = "table {0}, {1} rows")
    @CsvSource({
        "2-5-a, 5",
        "2-5-b, 3",
        "2-6-a, 7",
        "2-6-b, 9",
        "2-7-a, 3",
        "2-7-b, 3",
        "2-8-a, 6",
        "2-8-b, 6"
    })
    @DisplayName("of the handbook falls as there: in warmer air, more water, larger drops, faster")
    void trend(String name, int size) {
        // pressure, catch and heat transfer are not printed: the trend is compared, not the number
        List<Printed> rows = family(name);
        assertThat(rows).hasSize(size);
        for (int i = 1; i < size; i++) {
            assertThat(rows.get(i).fraction()).isLessThanOrEqualTo(rows.get(i - 1).fraction());
            assertThat(rows.get(i).ours()).isLessThan(rows.get(i - 1).ours());
        }
    }

    @ParameterizedTest(name = "table {0}, about {3}")
    @CsvFileSource(resources = ASYMPTOTE, useHeadersInDisplayName = true)
    @DisplayName("in very much water is what the drops themselves can take up")
    void asymptote(String name, double celsius, double mps, double printed, String source) {
        double ours =
                HeatBalance.balance(HeatBalance.dropEnergyTransfer(celsius + 273.15, mps), 0.0, 1);
        // a line of n against 1/LWC through the printed rows, where 1/LWC is 0; they have two
        // digits
        assertThat(ours).isCloseTo(intercept(family(name)), within(0.025));
        assertThat(ours).isCloseTo(printed, within(0.1));
    }

    /** By least squares. */
    private static double intercept(List<Printed> rows) {
        double n = rows.size();
        double x = rows.stream().mapToDouble(row -> 1.0 / row.grams()).sum();
        double y = rows.stream().mapToDouble(Printed::fraction).sum();
        double xx = rows.stream().mapToDouble(row -> 1.0 / (row.grams() * row.grams())).sum();
        double xy = rows.stream().mapToDouble(row -> row.fraction() / row.grams()).sum();
        return (y * xx - x * xy) / (n * xx - x * x);
    }

    private static double kelvin(double fahrenheit) {
        return (fahrenheit + 459.67) * 5.0 / 9.0;
    }

    @Test
    @DisplayName("is compared in 42 rows for its trend, and in 18, 6, 2 and 2")
    void rows() {
        assertThat(Table.rows(HANDBOOK)).hasSize(42);
        assertThat(Table.rows(MESSINGER)).hasSize(18);
        assertThat(Table.rows(AEDC)).hasSize(6);
        assertThat(Table.rows(SPEEDS)).hasSize(2);
        assertThat(Table.rows(ASYMPTOTE)).hasSize(2);
    }
}
