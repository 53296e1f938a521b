package org.climbwright.performance.ceiling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.performance.AeroplaneLimits;
import org.climbwright.performance.InventedAeroplanes;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.speed.Mach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The margin to buffet")
class BuffetMarginTest {
    private static final PressureAltitude FL350 = PressureAltitude.ofFlightLevel(350);
    private static final Mass MASS = Mass.ofKilograms(60000);
    private static final AeroplaneLimits LIMITS = InventedAeroplanes.twin().limits();

    private static BuffetMargin at(double mach) {
        return BuffetMargin.of(LIMITS, MASS, FL350, Mach.of(mach)).orElseThrow();
    }

    @Test
    @DisplayName("is the lift coefficient of the table over that of level flight")
    void loadFactor() {
        BuffetMargin margin = at(0.75);
        double q = 0.7 * StandardAir.pressureFromAltitude(FL350.inMetres()) * 0.5625;
        double level = 60000.0 * 9.80665 / (q * 120.0);
        assertThat(margin.liftCoefficient()).isCloseTo(level, within(1e-14));
        assertThat(margin.buffetLiftCoefficient()).isEqualTo(0.85);
        assertThat(margin.loadFactor()).isCloseTo(0.85 / level, within(1e-13));
        // a level turn at bank b takes 1 / cos b
        assertThat(1.0 / StrictMath.cos(margin.bankRad().orElseThrow()))
                .isCloseTo(margin.loadFactor(), within(1e-13));
        double pressure = StandardAir.pressureFromAltitude(FL350.inMetres());
        assertThat(
                        BuffetMargin.liftCoefficient(
                                margin.loadFactor(), 0.75, pressure, 120.0, 60000.0))
                .isCloseTo(0.85, within(1e-14));
    }

    @Test
    @DisplayName("lies between low-speed and high-speed buffet, where the load factor is met")
    void range() {
        BuffetMargin.FreeOfBuffet free = at(0.75).freeOfBuffet(1.3).orElseThrow();
        double low = free.low().orElseThrow();
        double high = free.high().orElseThrow();
        assertThat(low).isLessThan(0.75);
        assertThat(high).isGreaterThan(0.75);
        assertThat(at(low).loadFactor()).isCloseTo(1.3, within(1e-10));
        assertThat(at(high).loadFactor()).isCloseTo(1.3, within(1e-10));
        BuffetMargin.FreeOfBuffet level = at(0.75).freeOfBuffet(1.0).orElseThrow();
        assertThat(level.low().orElseThrow()).isLessThan(low);
        assertThat(level.high().orElseThrow()).isGreaterThan(high);
        assertThat(at(0.75).freeOfBuffet(3.0)).isEmpty();
        assertThat(at(0.75).toString()).startsWith("buffet at a load factor of ");
    }

    @Test
    @DisplayName("has no end that the table does not have")
    void ends() {
        BuffetMargin low =
                BuffetMargin.of(
                                LIMITS,
                                Mass.ofKilograms(600),
                                PressureAltitude.ofFeet(0),
                                Mach.of(0.5))
                        .orElseThrow();
        BuffetMargin.FreeOfBuffet free = low.freeOfBuffet(1.0).orElseThrow();
        assertThat(free.low()).isEmpty();
        assertThat(free.high()).isEmpty();
    }

    @Test
    @DisplayName("has no bank where level flight buffets")
    void buffets() {
        BuffetMargin slow = at(0.3);
        assertThat(slow.loadFactor()).isLessThan(1.0);
        assertThat(slow.bankRad()).isEmpty();
        assertThat(slow.freeOfBuffet(1.0)).isEmpty();
    }

    @Test
    @DisplayName("is not known without a table, or outside of it")
    void unknown() {
        assertThat(BuffetMargin.of(AeroplaneLimits.none(), MASS, FL350, Mach.of(0.7))).isEmpty();
        assertThat(BuffetMargin.of(LIMITS, MASS, FL350, Mach.of(0.95))).isEmpty();
        assertThatThrownBy(() -> BuffetMargin.of(LIMITS, MASS, FL350, Mach.of(1.2)))
                .isInstanceOf(OutsideModelException.class);
        assertThatThrownBy(() -> BuffetMargin.of(LIMITS, Mass.ofKilograms(0), FL350, Mach.of(0.7)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> at(0.7).freeOfBuffet(0.5))
                .isInstanceOf(OutsideModelException.class);
    }

    @Test
    @DisplayName("of a table is exact at its rows, straight between, and unknown outside")
    void table() {
        BuffetTable table = InventedAeroplanes.buffet();
        double[] machs = {0.1, 0.6, 0.75, 0.82, 0.9};
        double[] lifts = {1.4, 1.1, 0.85, 0.6, 0.2};
        for (int i = 0; i < machs.length; i++) {
            assertThat(table.liftCoefficient(machs[i])).isEqualTo(lifts[i]);
        }
        assertThat(table.liftCoefficient(0.35)).isCloseTo(1.25, within(1e-15));
        for (double outside : new double[] {0.0999, 0.9001, Double.NaN}) {
            assertThat(table.liftCoefficient(outside)).isNaN();
            assertThat(table.range().covers(outside)).isFalse();
        }
        assertThat(table.range().covers(0.9)).isTrue();
        assertThat(table).isEqualTo(InventedAeroplanes.buffet());
        assertThatThrownBy(() -> BuffetTable.of(List.of(row(0.5, 1.0))))
                .hasMessage("a table of buffet needs at least two rows, but had 1");
        assertThatThrownBy(() -> BuffetTable.of(List.of(row(0.5, 1.0), row(0.5, 0.9))))
                .hasMessageContaining("0.5 follows 0.5");
        assertThatThrownBy(() -> BuffetTable.of(List.of(row(0.5, 1.0), row(0.6, Double.NaN))))
                .isInstanceOf(OutsideModelException.class);
    }

    private static BuffetTable.Row row(double mach, double lift) {
        return new BuffetTable.Row(Mach.of(mach), lift);
    }
}
