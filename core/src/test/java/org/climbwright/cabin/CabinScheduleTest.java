package org.climbwright.cabin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.cabin.CabinSchedule.Row;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.DifferentialPressure;
import org.climbwright.testing.Streams;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A schedule of cabin altitudes")
class CabinScheduleTest {
    private static final double PSI = 6894.757293168361;

    private static PressureAltitude aeroplane(double feet) {
        return PressureAltitude.ofFeet(feet);
    }

    private static CabinAltitude cabin(double feet) {
        return CabinAltitude.ofFeet(feet);
    }

    private static DifferentialPressure psi(double psi) {
        return DifferentialPressure.ofPoundsPerSquareInch(psi);
    }

    private static double at(CabinSchedule schedule, double feet) {
        return schedule.cabinAltitude(aeroplane(feet)).inFeet();
    }

    private static final CabinSchedule TABLE =
            CabinSchedule.table(
                    List.of(
                            new Row(aeroplane(0), cabin(0)),
                            new Row(aeroplane(10000), cabin(1000)),
                            new Row(aeroplane(40000), cabin(7000))));

    @ParameterizedTest(name = "{0}: {3} is printed for {4}")
    @CsvFileSource(resources = "/cabin/schedule-points.csv", useHeadersInDisplayName = true)
    @DisplayName("held at a published cabin altitude has the pressures printed for it")
    void publishedPoints(
            String id,
            double feet,
            double cabinFeet,
            double printed,
            String what,
            double tolerance) {
        double cabinM = CabinSchedule.isobaric(cabin(cabinFeet)).cabinAltitudeM(feet * 0.3048);
        double cabinPa = StandardAir.pressureFromAltitude(cabinM);
        double computed =
                switch (what) {
                    case "differential_psi" ->
                            CabinPressure.differential(cabinM, feet * 0.3048) / PSI;
                    case "cabin_psi" -> cabinPa / PSI;
                    case "cabin_kpa" -> cabinPa / 1000.0;
                    case "ratio_to_sea_level" -> cabinPa / 101325.0;
                    default -> throw new AssertionError(id + what);
                };
        assertThat(computed).isCloseTo(printed, within(tolerance));
    }

    @Test
    @DisplayName("is compared in six published points")
    void rows() {
        assertThat(Table.rows("/cabin/schedule-points.csv")).hasSize(6);
    }

    @Test
    @DisplayName("holds an altitude at every level")
    void isobaric() {
        CabinSchedule schedule = CabinSchedule.isobaric(cabin(2000));
        assertThat(at(schedule, -1000)).isEqualTo(2000);
        assertThat(at(schedule, 41000)).isEqualTo(2000);
        assertThat(schedule.inWords()).isEqualTo("isobaric at 2,000 ft");
        assertThat(schedule.bendsM()).isEmpty();
    }

    @Test
    @DisplayName("holds a differential, which is some altitude at each level")
    void constantDifferential() {
        CabinSchedule schedule = CabinSchedule.constantDifferential(psi(8.0));
        assertThat(at(schedule, 35000)).isCloseTo(6727, within(0.5));
        assertThat(at(CabinSchedule.constantDifferential(psi(0)), 12345))
                .isCloseTo(12345, within(1e-9));
        assertThat(schedule.inWords()).isEqualTo("constant differential of 8.00 psi");
    }

    @Test
    @DisplayName("in proportion is straight in altitudes and held outside its pairs")
    void proportional() {
        CabinSchedule schedule =
                CabinSchedule.proportional(
                        aeroplane(1000), cabin(1000), aeroplane(35000), cabin(6000));
        assertThat(at(schedule, 18000)).isCloseTo(3500, within(1e-9));
        assertThat(at(schedule, 0)).isEqualTo(1000);
        assertThat(at(schedule, 41000)).isEqualTo(6000);
        assertThat(schedule.inWords())
                .isEqualTo("in proportion from 1,000 ft at 1,000 ft to 6,000 ft at 35,000 ft");
    }

    @Test
    @DisplayName("by a table is its rows and straight between them")
    void table() {
        assertThat(at(TABLE, 0)).isEqualTo(0);
        assertThat(at(TABLE, 10000)).isEqualTo(1000);
        assertThat(at(TABLE, 40000)).isEqualTo(7000);
        assertThat(at(TABLE, 5000)).isCloseTo(500, within(1e-9));
        assertThat(at(TABLE, 25000)).isCloseTo(4000, within(1e-9));
        assertThat(TABLE.bendsM()).hasSize(3);
        assertThat(TABLE.inWords())
                .isEqualTo("by a table of 3 rows from 0 ft at 0 ft to 7,000 ft at 40,000 ft");
    }

    @Nested
    @DisplayName("for a cruise level")
    class ForCruise {
        private double cabinAtCruise(double landingFeet, double marginFeet) {
            CabinSchedule schedule =
                    CabinSchedule.forCruise(
                            aeroplane(500),
                            aeroplane(landingFeet),
                            aeroplane(35000),
                            psi(8.0),
                            AltitudeChange.ofFeet(marginFeet));
            assertThat(at(schedule, 500)).isCloseTo(500, within(1e-9));
            return at(schedule, 35000);
        }

        @Test
        @DisplayName("ends where the scheduled differential is, for a low field to land at")
        void lowLanding() {
            assertThat(cabinAtCruise(0, 0)).isCloseTo(6726.6, within(0.05));
        }

        @Test
        @DisplayName("ends at the field to land at, where that is higher")
        void highLanding() {
            assertThat(cabinAtCruise(7500, 500)).isCloseTo(7500, within(1e-9));
        }

        @Test
        @DisplayName("keeps 500 ft in hand: 0.0815 psi at FL350 (row V16)")
        void margin() {
            double cabinM = cabinAtCruise(0, 500) * 0.3048;
            double inHand = 8.0 - CabinPressure.differential(cabinM, 35000 * 0.3048) / PSI;
            assertThat(inHand).isCloseTo(0.08149, within(0.000005));
            assertThat(CabinPressure.differential(cabinM, 35500 * 0.3048) / PSI)
                    .isCloseTo(8.0, within(1e-9));
        }
    }

    @Nested
    @DisplayName("refuses")
    class Refuses {
        @ParameterizedTest
        @ValueSource(doubles = {Double.NaN, -5000.01, 80000.01})
        @DisplayName("a level outside the standard atmosphere, each kind the same")
        void aLevelOutside(double levelM) {
            List<CabinSchedule> schedules =
                    List.of(
                            CabinSchedule.isobaric(cabin(2000)),
                            CabinSchedule.constantDifferential(psi(8.0)),
                            CabinSchedule.proportional(
                                    aeroplane(0), cabin(0), aeroplane(1), cabin(1)),
                            TABLE);
            for (CabinSchedule schedule : schedules) {
                assertThat(schedule.covers(levelM)).isFalse();
                assertThatThrownBy(() -> schedule.cabinAltitudeM(levelM))
                        .isInstanceOf(OutsideModelException.class)
                        .hasMessageContaining("but was " + levelM + " m");
            }
        }

        @ParameterizedTest
        @ValueSource(doubles = {-0.001, 40000.001})
        @DisplayName("a level outside a table: nothing is carried on")
        void outsideTheTable(double feet) {
            assertThat(TABLE.covers(feet * 0.3048)).isFalse();
            assertThatThrownBy(() -> at(TABLE, feet))
                    .isInstanceOf(OutsideModelException.class)
                    .hasMessageContaining("the table of the schedule ends there");
        }

        @Test
        @DisplayName("rows that do not rise, too few, a differential or a margin below 0")
        void whatCannotBe() {
            Row row = new Row(aeroplane(10000), cabin(1000));
            assertThatThrownBy(() -> CabinSchedule.table(List.of(row)))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("two rows");
            assertThatThrownBy(() -> CabinSchedule.table(List.of(row, row)))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("must rise");
            assertThatThrownBy(() -> CabinSchedule.constantDifferential(psi(-0.1)))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("0 psi or more");
            assertThatThrownBy(
                            () ->
                                    CabinSchedule.forCruise(
                                            aeroplane(0),
                                            aeroplane(0),
                                            aeroplane(35000),
                                            psi(8),
                                            AltitudeChange.ofFeet(-1)))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("0 ft or more");
            assertThatThrownBy(() -> CabinSchedule.isobaric(CabinAltitude.ofMetres(-5001)))
                    .isInstanceOf(OutsideModelException.class);
        }
    }

    @Test
    @DisplayName("written to a stream of objects is read back the same")
    void streams() throws Exception {
        CabinSchedule proportional =
                CabinSchedule.proportional(aeroplane(0), cabin(0), aeroplane(35000), cabin(6000));
        for (CabinSchedule schedule :
                List.of(
                        TABLE,
                        proportional,
                        CabinSchedule.isobaric(cabin(2000)),
                        CabinSchedule.constantDifferential(psi(8)))) {
            assertThat(Streams.roundTrip(schedule)).isEqualTo(schedule).hasSameHashCodeAs(schedule);
        }
    }
}
