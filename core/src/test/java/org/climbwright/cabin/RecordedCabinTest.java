package org.climbwright.cabin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.cabin.CabinSchedule.Row;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.DifferentialPressure;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/**
 * Two climbs that recorded the pressure in the cabin. What schedule they were set to nobody wrote
 * down: a schedule of few figures is fitted to each here, by least squares in cabin altitude, and
 * how far the record scatters about it is what is stated. That shows that schedules of these kinds
 * describe a cabin that was flown, not that the controller had this one.
 */
@DisplayName("A recorded cabin")
class RecordedCabinTest {
    private static final double FOOT = 0.3048;

    /** A sample: level and cabin altitude [ft], static and cabin pressure [hPa], time [s]. */
    private record Sample(double utc, double feet, double hpa, double cabinHpa) {
        double cabinFeet() {
            return StandardAir.altitudeFromPressure(cabinHpa * 100.0) / FOOT;
        }

        double differentialHpa() {
            return cabinHpa - hpa;
        }
    }

    private static List<Sample> samples(String climb) {
        return Table.rows("/cabin/recorded-cabin-" + climb + ".csv").stream()
                .map(line -> line.split(",", -1))
                .map(
                        field ->
                                new Sample(
                                        Double.parseDouble(field[0]),
                                        Double.parseDouble(field[1]) / FOOT,
                                        Double.parseDouble(field[2]),
                                        Double.parseDouble(field[3])))
                .toList();
    }

    /** How far samples are from a schedule: root mean square and largest, in feet and in hPa. */
    private record Scatter(double feet, double mostFeet, double hpa, double mostHpa) {
        static Scatter of(CabinSchedule schedule, List<Sample> samples) {
            return new Scatter(
                    rms(samples, schedule, Scatter::offFeet),
                    most(samples, schedule, Scatter::offFeet),
                    rms(samples, schedule, Scatter::offHpa),
                    most(samples, schedule, Scatter::offHpa));
        }

        private interface Off {
            double of(CabinSchedule schedule, Sample sample);
        }

        private static double offFeet(CabinSchedule schedule, Sample sample) {
            return schedule.cabinAltitudeM(sample.feet() * FOOT) / FOOT - sample.cabinFeet();
        }

        private static double offHpa(CabinSchedule schedule, Sample sample) {
            double cabinM = schedule.cabinAltitudeM(sample.feet() * FOOT);
            return StandardAir.pressureFromAltitude(cabinM) / 100.0 - sample.cabinHpa();
        }

        private static double rms(List<Sample> samples, CabinSchedule schedule, Off off) {
            return Math.sqrt(
                    samples.stream()
                            .mapToDouble(sample -> off.of(schedule, sample))
                            .map(value -> value * value)
                            .average()
                            .orElseThrow());
        }

        private static double most(List<Sample> samples, CabinSchedule schedule, Off off) {
            return samples.stream()
                    .mapToDouble(sample -> Math.abs(off.of(schedule, sample)))
                    .max()
                    .orElseThrow();
        }
    }

    /** The table with rows at given levels that is nearest to the samples. */
    private static CabinSchedule fitted(List<Sample> samples, double... levelsFeet) {
        List<DoubleUnaryOperator> hats = new ArrayList<>();
        for (int hat = 0; hat < levelsFeet.length; hat++) {
            double[] unit = new double[levelsFeet.length];
            unit[hat] = 1.0;
            CabinSchedule schedule = table(levelsFeet, unit);
            hats.add(feet -> schedule.cabinAltitudeM(feet * FOOT) / FOOT);
        }
        double[][] normal = new double[levelsFeet.length][levelsFeet.length + 1];
        for (Sample sample : samples) {
            for (int i = 0; i < normal.length; i++) {
                double weight = hats.get(i).applyAsDouble(sample.feet());
                for (int j = 0; j < normal.length; j++) {
                    normal[i][j] += weight * hats.get(j).applyAsDouble(sample.feet());
                }
                normal[i][normal.length] += weight * sample.cabinFeet();
            }
        }
        return table(levelsFeet, solved(normal));
    }

    private static CabinSchedule table(double[] levelsFeet, double[] cabinFeet) {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < levelsFeet.length; i++) {
            rows.add(
                    new Row(
                            PressureAltitude.ofFeet(levelsFeet[i]),
                            CabinAltitude.ofFeet(cabinFeet[i])));
        }
        return CabinSchedule.table(rows);
    }

    /** Elimination without pivoting: the matrix is symmetric and positive definite. */
    private static double[] solved(double[][] matrix) {
        int size = matrix.length;
        for (int i = 0; i < size; i++) {
            for (int row = i + 1; row < size; row++) {
                double factor = matrix[row][i] / matrix[i][i];
                for (int column = i; column <= size; column++) {
                    matrix[row][column] -= factor * matrix[i][column];
                }
            }
        }
        double[] solution = new double[size];
        for (int i = size - 1; i >= 0; i--) {
            double sum = matrix[i][size];
            for (int column = i + 1; column < size; column++) {
                sum -= matrix[i][column] * solution[column];
            }
            solution[i] = sum / matrix[i][i];
        }
        return solution;
    }

    /**
     * From 296 to 16,354 ft, airborne and pressurised from the first row. The cabin leaves the
     * ground at some 500 ft/min and slows with the aeroplane: its climb is a third of the
     * aeroplane's, more below 8,000 ft than above.
     */
    @Nested
    @DisplayName("of a twin turboprop")
    class Twin {
        private final List<Sample> samples = samples("twin-turboprop");

        @Test
        @DisplayName("is in proportion to the aeroplane within 187 ft or 6.3 hPa, root mean square")
        void inProportion() {
            Scatter scatter = Scatter.of(fitted(samples, 200, 16500), samples);
            assertThat(scatter.feet()).isCloseTo(187.0, within(0.5));
            assertThat(scatter.hpa()).isCloseTo(6.3, within(0.05));
        }

        @Test
        @DisplayName("is by a table of three rows within 61 ft or 2.0 hPa, 125 ft at most")
        void byATable() {
            CabinSchedule schedule = fitted(samples, 200, 8000, 16500);
            Scatter scatter = Scatter.of(schedule, samples);
            assertThat(scatter.feet()).isCloseTo(61.0, within(0.5));
            assertThat(scatter.hpa()).isCloseTo(2.0, within(0.05));
            assertThat(scatter.mostFeet()).isCloseTo(124.5, within(0.5));
            assertThat(scatter.mostHpa()).isCloseTo(3.9, within(0.05));
        }

        @Test
        @DisplayName("fits in a plan: below the aeroplane and its differential rising all the way")
        void inAPlan() {
            CabinPlan plan = Cabins.plan(fitted(samples, 200, 8000, 16500));
            double before = 0.0;
            for (double feet = 1000; feet <= 16000; feet += 1000) {
                CabinPlan.Target target = plan.target(PressureAltitude.ofFeet(feet));
                assertThat(target.boundBy()).isEqualTo(CabinState.BoundBy.SCHEDULE);
                assertThat(target.differential().inPascals()).isGreaterThan(before);
                before = target.differential().inPascals();
            }
            assertThat(samples).allMatch(sample -> sample.differentialHpa() > 9.0);
        }
    }

    /**
     * From the runway at -312 ft to 21,000 ft. For 150 s, the take-off and the first 1,500 ft, the
     * cabin reads 3 to 21 hPa below the air outside, which no hull does that is open: the two
     * sensors are not set to each other, and the cabin is not pressurised yet. Then it goes down to
     * 990 ft, up to 2,540, down to 1,070 and up again: no schedule of the level tells that,
     * somebody turned a knob or the inflow changed. From 19,000 ft its differential stands.
     */
    @Nested
    @DisplayName("of a four-engine turboprop")
    class FourEngine {
        private final List<Sample> samples = samples("four-engine-turboprop");

        @Test
        @DisplayName("reads above the aeroplane until it is pressurised, which its target never is")
        void notYet() {
            List<Sample> first =
                    samples.stream()
                            .filter(sample -> sample.utc() <= samples.get(0).utc() + 150)
                            .toList();
            assertThat(first).hasSize(11);
            assertThat(first)
                    .extracting(Sample::differentialHpa)
                    .allMatch(differential -> differential < -3.0 && differential > -21.5);
            assertThat(samples.subList(11, samples.size()))
                    .allMatch(sample -> sample.differentialHpa() > 15.0);
            CabinPlan plan = Cabins.plan(CabinSchedule.isobaric(Cabins.cabin(1652)));
            assertThat(plan.target(PressureAltitude.ofFeet(1500)).cabinAltitude().inFeet())
                    .isEqualTo(1500);
        }

        @Test
        @DisplayName("is by no schedule of the level: 516 ft or 17.8 hPa about the best proportion")
        void noSchedule() {
            List<Sample> pressurised =
                    samples.stream().filter(sample -> sample.feet() > 2000).toList();
            Scatter scatter = Scatter.of(fitted(pressurised, 2000, 21100), pressurised);
            assertThat(scatter.feet()).isCloseTo(516.0, within(0.5));
            assertThat(scatter.hpa()).isCloseTo(17.8, within(0.05));
        }

        @Test
        @DisplayName("holds 424.6 hPa from 19,000 ft within 3.0 hPa or 92 ft, 242 ft at most")
        void heldDifferential() {
            List<Sample> high = samples.stream().filter(sample -> sample.feet() > 19000).toList();
            assertThat(high).hasSize(18);
            double mean =
                    high.stream().mapToDouble(Sample::differentialHpa).average().orElseThrow();
            assertThat(mean).isCloseTo(424.6, within(0.05));
            CabinSchedule held =
                    CabinSchedule.constantDifferential(DifferentialPressure.ofHectopascals(mean));
            Scatter scatter = Scatter.of(held, high);
            assertThat(scatter.hpa()).isCloseTo(3.0, within(0.5));
            assertThat(scatter.feet()).isCloseTo(92.0, within(15.0));
            assertThat(scatter.mostFeet()).isLessThan(260.0);
        }
    }

    @Test
    @DisplayName("is 54 rows of a twin turboprop and 100 of a four-engine one")
    void rows() {
        assertThat(samples("twin-turboprop")).hasSize(54);
        assertThat(samples("four-engine-turboprop")).hasSize(100);
    }
}
