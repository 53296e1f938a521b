package org.climbwright.cabin.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Map;
import java.util.stream.Collectors;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Each row of decompression-published.csv, named by its id; the text of a row has its inputs. */
@DisplayName("What was published of cabins that empty")
class PublishedBlowDownTest {
    private static final double GAS_CONSTANT = 287.05287;
    private static final double INCH = 0.0254;
    private static final double PSI = 6894.757293168361;
    private static final double NOTHING_OUTSIDE = 0.0;

    private static final Map<String, String> ROWS =
            Table.rows("/cabin/decompression-published.csv").stream()
                    .collect(Collectors.toMap(row -> row.substring(0, 3), row -> row));

    private static double circle(double diameter) {
        return Math.PI / 4.0 * diameter * diameter;
    }

    private static String row(String id, String... said) {
        assertThat(ROWS.get(id)).contains(said);
        return ROWS.get(id);
    }

    @Test
    @DisplayName("D01: the choked coefficient is 0.04042, or 0.0404147 with the ICAO gas constant")
    void chokedCoefficient() {
        row("D01", "0.04042,", "0.04041842", "0.040414698");
        assertThat(OrificeFlow.CHOKED_COEFFICIENT).isCloseTo(0.040414698, within(0.5e-9));
        double withTheirs = OrificeFlow.CHOKED_COEFFICIENT * Math.sqrt(GAS_CONSTANT / 287.0);
        assertThat(withTheirs).isCloseTo(0.04041842, within(0.5e-8));
        assertThat(withTheirs).isCloseTo(0.04042, withinPercentage(0.01));
    }

    @Test
    @DisplayName("D02: it is 0.532 in pounds, inches and degrees Rankine (from memory)")
    void inPounds() {
        row("D02", "0.532,", "0.5317362", "from memory");
        double pounds = OrificeFlow.CHOKED_COEFFICIENT / 0.45359237 * INCH * INCH * PSI;
        double perRootRankine = pounds * Math.sqrt(1.8);
        assertThat(perRootRankine).isCloseTo(0.5317, within(1e-4));
        assertThat(perRootRankine).isCloseTo(0.532, withinPercentage(0.1));
    }

    @Test
    @DisplayName("D03: air chokes at 0.528 of the pressure upstream")
    void criticalRatio() {
        row("D03", "0.528,", "0.5282817877");
        assertThat(OrificeFlow.CRITICAL_PRESSURE_RATIO).isCloseTo(0.5282817877, within(0.5e-10));
        assertThat(OrificeFlow.CRITICAL_PRESSURE_RATIO).isCloseTo(0.528, withinPercentage(0.1));
    }

    @Test
    @DisplayName("D05: effusion of molecules, 4 V / (A v), is wrong: it takes 1.716 times as long")
    void effusionIsWrong() {
        row("D05", "v=446.88", "NEGATIVE");
        double v = 446.88;
        double kelvins = v * v * Math.PI / 8.0 / GAS_CONSTANT;
        double byEffusion = 4.0 / v; // time in which the pressure falls by e, for V = A
        double ours =
                BlowDown.timeS(
                        1.0, 1.0, 1e5, 1e5 / Math.E, NOTHING_OUTSIDE, kelvins, CabinAir.ISOTHERMAL);
        assertThat(byEffusion / ours).isCloseTo(1.716, within(0.001));
    }

    @Test
    @DisplayName("D06: 2703 ft³ through a hole of a third of an inch lose 0.129, not 0.1 psi/min")
    void stationHole() {
        row("D06", "2703 ft3", "0.129017", "+-30 %");
        double volume = 2703.0 * 0.3048 * 0.3048 * 0.3048;
        // 14.7 psi stands for a standard atmosphere, as the last digits tell
        double flow = OrificeFlow.massFlow(circle(INCH / 3.0), 101325.0, NOTHING_OUTSIDE, 294.0);
        double psiPerMinute = MassBalance.isothermalPressureRate(flow, volume, 294.0) / PSI * 60.0;
        assertThat(psiPerMinute).isCloseTo(0.129017, within(0.5e-6));
        assertThat(psiPerMinute).isCloseTo(0.1, withinPercentage(30.0));
    }

    @Test
    @DisplayName(
            "D07: at 0.1 psi/min at first, 14.7 to 8 psi takes 89 min; the 35 min of the same page"
                    + " are wrong")
    void inconsistent() {
        row("D07", "35,min", "89.4357", "do not use");
        double from = 14.7 * PSI;
        double flow = OrificeFlow.massFlow(1.0, from, NOTHING_OUTSIDE, 294.0);
        double rateOfOne = MassBalance.isothermalPressureRate(flow, 1.0, 294.0);
        double volumeOverArea = rateOfOne / (0.1 * PSI / 60.0);
        double seconds =
                BlowDown.timeS(
                        volumeOverArea * 0.01,
                        0.01,
                        from,
                        8.0 * PSI,
                        NOTHING_OUTSIDE,
                        294.0,
                        CabinAir.ISOTHERMAL);
        assertThat(seconds / 60.0).isCloseTo(89.4357, within(0.5e-4));
        double atTheInitialRate = (14.7 - 8.0) / 0.1;
        assertThat(atTheInitialRate).isCloseTo(67.0, within(0.5));
    }

    @Test
    @DisplayName("D08: 630 m³ through 1 cm from 1 to 0.3 atm: 10.62 h adiabatic, 13.62 isothermal")
    void competition() {
        row("D08", "10.25,h", "10.6172", "13.6224");
        assertThat(hours(0.01, CabinAir.ADIABATIC)).isCloseTo(10.6172, within(0.5e-4));
        assertThat(hours(0.01, CabinAir.ISOTHERMAL)).isCloseTo(13.6224, within(0.5e-4));
        assertThat(hours(0.01, CabinAir.ADIABATIC)).isCloseTo(10.25, withinPercentage(10.0));
    }

    @Test
    @DisplayName("D09: through 2 cm it is a quarter of that")
    void goesWithTheArea() {
        row("D09", "2.55,h", "615/153");
        double ratio = hours(0.01, CabinAir.ADIABATIC) / hours(0.02, CabinAir.ADIABATIC);
        assertThat(ratio).isCloseTo(4.0, within(1e-12));
        assertThat(615.0 / 153.0).isCloseTo(ratio, withinPercentage(1.0));
    }

    private static double hours(double diameter, CabinAir air) {
        return BlowDown.timeS(
                        630.0,
                        circle(diameter),
                        101325.0,
                        0.3 * 101325.0,
                        NOTHING_OUTSIDE,
                        288.15,
                        air)
                / 3600.0;
    }

    @Test
    @DisplayName("D10: 0.0028 s/m times V/A is the time down to 0.573 of the pressure")
    void ruleOfThumb() {
        row("D10", "2.8e-3", "0.00503447", "0.5734");
        double perE =
                BlowDown.timeS(
                        1.0, 1.0, 1e5, 1e5 / Math.E, NOTHING_OUTSIDE, 293.15, CabinAir.ISOTHERMAL);
        assertThat(perE).isCloseTo(0.00503447, within(0.5e-8));
        double there =
                BlowDown.timeS(
                        1.0, 1.0, 1e5, 0.5734e5, NOTHING_OUTSIDE, 293.15, CabinAir.ISOTHERMAL);
        assertThat(there).isCloseTo(2.8e-3, within(0.05e-5));
    }

    @Test
    @DisplayName(
            "D11: adiabatic air goes by 2 / (gamma - 1) tau ((p0 / p)^((gamma - 1) / 2 gamma) - 1)")
    void closedForm() {
        row("D11", "t = 2/(gamma-1)");
        double tau = 1.0 / (0.6847314563772704 * Math.sqrt(GAS_CONSTANT * 297.15));
        double formula = 2.0 / 0.4 * tau * (StrictMath.pow(3.0, 0.4 / 2.8) - 1.0);
        assertThat(BlowDown.timeS(1.0, 1.0, 9e4, 3e4, NOTHING_OUTSIDE, 297.15, CabinAir.ADIABATIC))
                .isCloseTo(formula, withinPercentage(1e-10));
    }

    @Test
    @DisplayName("is compared in 10 rows")
    void rows() {
        assertThat(ROWS).hasSize(10);
    }
}
