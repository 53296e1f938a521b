package org.climbwright.cabin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.cabin.CabinState.BoundBy;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.pressure.DifferentialPressure;
import org.climbwright.testing.Streams;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

@DisplayName("A plan for the cabin")
class CabinPlanTest {
    private static final CabinPlan PLAN = Cabins.plan(CabinSchedule.isobaric(Cabins.cabin(2000)));

    private static CabinPlan.Target at(CabinPlan plan, double feet) {
        return plan.target(PressureAltitude.ofFeet(feet));
    }

    @Test
    @DisplayName("of 2,000 ft and 8.000 psi holds the altitude up to the knee at 24,127.5 ft")
    void knee() {
        double knee = CabinPressure.pressureAltitude(Cabins.cabin(2000), Cabins.psi(8.0)).inFeet();
        assertThat(knee).isCloseTo(24127.5, within(0.05));

        CabinPlan.Target below = at(PLAN, 24127.4);
        assertThat(below.boundBy()).isEqualTo(BoundBy.SCHEDULE);
        assertThat(below.cabinAltitude().inFeet()).isEqualTo(2000);
        assertThat(below.differential().inPoundsPerSquareInch()).isCloseTo(8.0, within(1e-4));

        CabinPlan.Target above = at(PLAN, 24127.6);
        assertThat(above.boundBy()).isEqualTo(BoundBy.SCHEDULED_DIFFERENTIAL);
        assertThat(above.cabinAltitude().inFeet()).isBetween(2000.0, 2000.1);
        assertThat(above.differential().inPoundsPerSquareInch()).isCloseTo(8.0, within(1e-12));
    }

    @Test
    @DisplayName("holds the differential above the knee: 6,727 ft at FL350")
    void aboveTheKnee() {
        assertThat(at(PLAN, 35000).cabinAltitude().inFeet()).isCloseTo(6727, within(0.5));
    }

    @Test
    @DisplayName("never has the higher pressure of the two, as a maximum would")
    void notTheMaximum() {
        assertThat(at(PLAN, 35000).differential().inPoundsPerSquareInch())
                .isCloseTo(8.0, within(1e-12));
        double wrong = CabinPressure.differential(2000 * 0.3048, 35000 * 0.3048);
        assertThat(wrong / 6894.757293168361).isGreaterThan(10.0);
    }

    @Test
    @DisplayName("never has the cabin above the aeroplane")
    void belowTheSchedule() {
        CabinPlan.Target target = at(PLAN, 500);
        assertThat(target.boundBy()).isEqualTo(BoundBy.AEROPLANE);
        assertThat(target.cabinAltitude().inFeet()).isEqualTo(500);
        assertThat(target.differential().inPascals()).isZero();
    }

    @Nested
    @DisplayName("lands the cabin at a pressure altitude")
    class Fields {
        private double fieldFeet(double elevationFeet, double hectopascals) {
            return CabinPlan.field(
                            GeopotentialAltitude.ofFeet(elevationFeet),
                            AltimeterSetting.ofHectopascals(hectopascals))
                    .inFeet();
        }

        @Test
        @DisplayName("which is the elevation only on a QNH of 1013.25 hPa")
        void onStandard() {
            assertThat(fieldFeet(1200, 1013.25)).isCloseTo(1200, within(1e-9));
        }

        @Test
        @DisplayName("and some 27.3 ft more for each hectopascal less (row P07)")
        void eachHectopascal() {
            assertThat(fieldFeet(1200, 1012.75) - fieldFeet(1200, 1013.75))
                    .isCloseTo(27.3104, within(0.00005));
            assertThat(fieldFeet(1200, 993.25)).isCloseTo(1200 + 20 * 27.31, within(5.0));
        }
    }

    /**
     * The row V10 says 188.82 ft, counted upwards from sea level: a cabin at sea level on a field
     * of that altitude. Below a field at sea level the air is denser, and the same 0.1 psi is
     * 187.78 ft.
     */
    @Test
    @DisplayName("with 0.1 psi has the cabin 188.82 ft below a field there, 187.78 at sea level")
    void prePressurisation() {
        CabinPlan plan = PLAN.withPrePressurisation(Cabins.psi(0.1));
        assertThat(plan.cabinOnGround().inFeet()).isCloseTo(-187.782, within(0.0005));
        assertThat(PLAN.cabinOnGround().inFeet()).isCloseTo(0.0, within(1e-9));

        CabinPlan higher =
                CabinPlan.of(
                                PLAN.schedule(),
                                PLAN.limits(),
                                PLAN.rates(),
                                PressureAltitude.ofFeet(188.82),
                                PLAN.landing(),
                                PLAN.cruise())
                        .withPrePressurisation(Cabins.psi(0.1));
        assertThat(higher.cabinOnGround().inFeet()).isCloseTo(0.0, within(0.005));
    }

    @Test
    @DisplayName("for a cruise keeps the differential to what it leaves of the scheduled one")
    void forCruise() {
        CabinPlan plan =
                CabinPlan.forCruise(
                        Cabins.limits(),
                        CabinRateLimits.ofCommonPractice(),
                        PressureAltitude.ofFeet(0),
                        PressureAltitude.ofFeet(0),
                        PressureAltitude.ofFlightLevel(350),
                        AltitudeChange.ofFeet(500));
        assertThat(at(plan, 35000).boundBy()).isEqualTo(BoundBy.SCHEDULE);
        assertThat(at(plan, 35000).differential().inPoundsPerSquareInch())
                .isCloseTo(8.0 - 0.08149, within(0.000005));
        assertThat(at(plan, 35501).boundBy()).isEqualTo(BoundBy.SCHEDULED_DIFFERENTIAL);
    }

    @Test
    @DisplayName("puts the differential first, unless told to put the rate first")
    void precedence() {
        assertThat(PLAN.precedence()).isEqualTo(CabinPlan.Precedence.DIFFERENTIAL_FIRST);
        assertThat(PLAN.withPrecedence(CabinPlan.Precedence.RATE_FIRST).precedence())
                .isEqualTo(CabinPlan.Precedence.RATE_FIRST);
    }

    @Test
    @DisplayName("refuses a cruise below the departure and a differential that is none on ground")
    void refuses() {
        assertThatThrownBy(
                        () ->
                                CabinPlan.of(
                                        PLAN.schedule(),
                                        PLAN.limits(),
                                        PLAN.rates(),
                                        PressureAltitude.ofFeet(5000),
                                        PressureAltitude.ofFeet(0),
                                        PressureAltitude.ofFeet(4999)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("must not be below the departure");
        for (double psi : new double[] {-0.001, 8.001}) {
            assertThatThrownBy(() -> PLAN.withPrePressurisation(Cabins.psi(psi)))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("differential on the ground");
        }
    }

    @Test
    @DisplayName("never asks for air that is not: 12 psi wanted of a field below the sea")
    void strongHull() {
        DifferentialLimits strong =
                new DifferentialLimits(
                        Cabins.psi(12), Cabins.psi(12.5), DifferentialPressure.ofPascals(0));
        CabinPlan plan =
                CabinPlan.of(
                        CabinSchedule.isobaric(CabinAltitude.ofFeet(0)),
                        strong,
                        PLAN.rates(),
                        PressureAltitude.ofFeet(-1200),
                        PressureAltitude.ofFeet(0),
                        PressureAltitude.ofFeet(50000));
        assertThat(at(plan, -1200).boundBy()).isEqualTo(BoundBy.AEROPLANE);
        assertThat(at(plan, 40000).boundBy()).isEqualTo(BoundBy.SCHEDULE);
    }

    @Test
    @DisplayName("written to a stream of objects is read back the same, as is its target")
    void streams() throws Exception {
        assertThat(Streams.roundTrip(PLAN)).isEqualTo(PLAN).hasSameHashCodeAs(PLAN);
        assertThat(Streams.roundTrip(at(PLAN, 30000))).isEqualTo(at(PLAN, 30000));
    }
}
