package org.climbwright.gradient.leveling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.quantity.OutsideModelException;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The rate to capture a level")
class CaptureLawTest {
    private static final double WANTED = 15.0;
    private static final double LIMIT = 7.62;
    private static final double EDGE = 304.8;
    private static final double BRAKE = 0.5;

    private static double rate(double toGo, double rate, double step) {
        return CaptureLaw.captureRate(toGo, rate, WANTED, LIMIT, EDGE, BRAKE, step);
    }

    @Test
    @DisplayName("ends on the level to the last step: 3, 2 and 1 m/s on the way of 6 m in 1 s")
    void countsInSteps() {
        double braking = 1.0;
        double first = CaptureLaw.captureRate(6.0, 4.0, 20.0, 20.0, 0.0, braking, 1.0);
        double second = CaptureLaw.captureRate(3.0, first, 20.0, 20.0, 0.0, braking, 1.0);
        double third = CaptureLaw.captureRate(1.0, second, 20.0, 20.0, 0.0, braking, 1.0);
        double last = CaptureLaw.captureRate(0.0, third, 20.0, 20.0, 0.0, braking, 1.0);
        assertThat(new double[] {first, second, third, last}).containsExactly(3.0, 2.0, 1.0, 0.0);
    }

    @Test
    @DisplayName("is down to the limit at the edge: 6, 5 and then 4 m/s, 11 m before it")
    void isSlowAtTheEdge() {
        double before = CaptureLaw.captureRate(111.0, 7.0, 20.0, 4.0, 100.0, 1.0, 1.0);
        double last = CaptureLaw.captureRate(105.0, before, 20.0, 4.0, 100.0, 1.0, 1.0);
        double within = CaptureLaw.captureRate(100.0, last, 20.0, 4.0, 100.0, 1.0, 1.0);
        assertThat(new double[] {before, last, within}).containsExactly(6.0, 5.0, 4.0);
    }

    @Test
    @DisplayName("takes as long in a 60 Hz loop as the plan of the same rates says")
    void takesAsLongAsThePlan() {
        double toGo = 1000.0;
        double rate = WANTED;
        int steps = 0;
        while (toGo > 1e-6) {
            rate = rate(toGo, rate, 1.0 / 60.0);
            toGo -= rate / 60.0;
            steps++;
        }
        double reducing = (WANTED - LIMIT) / BRAKE;
        double reducingM = (WANTED * WANTED - LIMIT * LIMIT) / (2.0 * BRAKE);
        double levellingM = LIMIT * LIMIT / (2.0 * BRAKE);
        double planned =
                (1000.0 - EDGE - reducingM) / WANTED
                        + reducing
                        + (EDGE - levellingM) / LIMIT
                        + LIMIT / BRAKE;
        assertThat(steps / 60.0).isCloseTo(planned, within(3.0 / 60.0));
    }

    @Test
    @DisplayName("gathers way by the deceleration, and not beyond the rate wanted")
    void gathersWay() {
        assertThat(rate(2000.0, 0.0, 1.0)).isEqualTo(0.5);
        assertThat(rate(2000.0, 14.8, 1.0)).isEqualTo(15.0);
        assertThat(rate(2000.0, -3.0, 1.0)).isEqualTo(-2.5);
        assertThat(rate(-2000.0, 3.0, 1.0)).isEqualTo(2.5);
    }

    @Test
    @DisplayName("is given at once, and said to be more than the deceleration, when it is too late")
    void tooLate() {
        assertThat(CaptureLaw.canFollow(10.0, 15.0, LIMIT, EDGE, BRAKE, 0.1)).isFalse();
        assertThat(rate(10.0, 15.0, 0.1)).isBetween(2.0, Math.sqrt(2.0 * BRAKE * 10.0));
        assertThat(rate(0.0, 15.0, 0.1)).isZero();
        assertThat(CaptureLaw.canFollow(2000.0, 15.0, LIMIT, EDGE, BRAKE, 0.1)).isTrue();
        assertThat(CaptureLaw.canFollow(-100.0, 12.0, LIMIT, EDGE, BRAKE, 0.1)).isFalse();
        assertThat(rate(-100.0, 12.0, 0.1)).isEqualTo(LIMIT);
    }

    @Test
    @DisplayName("makes no objects")
    void makesNoObjects() {
        com.sun.management.ThreadMXBean thread =
                (com.sun.management.ThreadMXBean)
                        java.lang.management.ManagementFactory.getThreadMXBean();
        double sum = fly(20_000);
        long id = Thread.currentThread().getId();
        long before = thread.getThreadAllocatedBytes(id);
        sum += fly(1_000_000);
        long made = thread.getThreadAllocatedBytes(id) - before;
        assertThat(sum).isNotNaN();
        assertThat(made).isLessThan(1000); // a million objects would be 16 MB
    }

    private static double fly(int steps) {
        double toGo = 2000.0;
        double rate = 0.0;
        double sum = 0.0;
        for (int i = 0; i < steps; i++) {
            rate = rate(toGo, rate, 1.0 / 60.0);
            toGo -= rate / 60.0;
            sum += rate;
            if (Math.abs(toGo) < 1e-6) {
                toGo = 2000.0;
            }
        }
        return sum;
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, -1e6, 1e6})
    @DisplayName("is refused for each input that is out of range")
    void refuses(double wrong) {
        for (int i = 0; i < 7; i++) {
            double[] in = {500.0, 5.0, WANTED, LIMIT, EDGE, BRAKE, 0.1};
            in[i] = wrong;
            assertThat(covers(in)).isFalse();
            assertThatThrownBy(() -> capture(in)).isInstanceOf(OutsideModelException.class);
        }
        assertThat(covers(new double[] {500.0, 5.0, WANTED, LIMIT, EDGE, BRAKE, 0.1})).isTrue();
    }

    private static boolean covers(double[] in) {
        return CaptureLaw.coversCapture(in[0], in[1], in[2], in[3], in[4], in[5], in[6]);
    }

    private static double capture(double[] in) {
        return CaptureLaw.captureRate(in[0], in[1], in[2], in[3], in[4], in[5], in[6]);
    }
}
