package org.climbwright.profile;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import org.climbwright.performance.Aeroplane;
import org.climbwright.performance.ClimbAir;
import org.climbwright.performance.EngineUse;
import org.climbwright.performance.ReducedThrust;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The steps of a climb")
class StepGarbageTest {
    private static final double STEP_M = 10.0;
    private static final int ROUNDS = 200;
    private static final int STEPS = 50;

    private final Aeroplane jet = ProfileScene.jet();
    private final ClimbAir air = ProfileScene.calm();
    private final Leg leg =
            new Leg(
                    Leg.Law.SPEED,
                    false,
                    150.0,
                    Double.NaN,
                    1.0,
                    EngineUse.climb(2),
                    ReducedThrust.none());
    private final Motion motion = new Motion(jet, air);
    private final RungeKuttaStepper stepper = new RungeKuttaStepper();
    private final double[] from = new double[Stepper.SIZE];
    private final double[] to = new double[Stepper.SIZE];
    private final double[] slopes = new double[Stepper.SIZE];

    @Test
    @DisplayName("make no objects: what a climb leaves behind is its path alone")
    void noGarbage() {
        com.sun.management.ThreadMXBean thread =
                (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        double sum = rounds();
        long id = Thread.currentThread().getId();
        long before = thread.getThreadAllocatedBytes(id);
        sum += rounds();
        long made = thread.getThreadAllocatedBytes(id) - before;
        assertThat(sum).isPositive();
        assertThat(made).isLessThan(10_000); // an object in each step would be 160,000
    }

    /** Time of many short climbs, all in the stretch above 5,000 m. */
    private double rounds() {
        double sum = 0.0;
        int stretch = air.stretch(5000.0, true);
        double bottom = air.edgeM(stretch);
        for (int round = 0; round < ROUNDS; round++) {
            motion.begin(leg);
            from[Stepper.TIME] = 0.0;
            from[Stepper.DISTANCE] = 0.0;
            from[Stepper.MASS] = 58000.0;
            for (int step = 0; step < STEPS; step++) {
                double level = bottom + step * STEP_M;
                motion.at(stretch, level, from[Stepper.MASS], 0.0);
                Stepper.slopes(motion, slopes);
                stepper.step(motion, stretch, level, level + STEP_M, from, slopes, to);
                System.arraycopy(to, 0, from, 0, Stepper.SIZE);
            }
            sum += from[Stepper.TIME];
        }
        return sum;
    }
}
