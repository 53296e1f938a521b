package org.climbwright.gradient.leveling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

@Label("The rate to capture a level, in a loop of any step")
class CaptureLawPropertyTest {
    /** Rounding of a way of kilometres, summed over some ten thousand steps. */
    private static final double ROUNDING = 1e-8;

    private static final int MANY_STEPS = 200_000;

    /** Where a loop begins, and how it flies. */
    record Loop(
            double toGoM,
            double rateMps,
            double wantedMps,
            double limitMps,
            double edgeM,
            double decelerationMps2,
            double stepS,
            long seed) {
        double next(double toGo, double rate, double step) {
            return CaptureLaw.captureRate(
                    toGo, rate, wantedMps, limitMps, edgeM, decelerationMps2, step);
        }

        /** The way, with that of turning round, at the slowest rate kept, and time to brake. */
        int mostSteps() {
            double turning = rateMps * rateMps / (2.0 * decelerationMps2);
            double slowest = Math.min(wantedMps, edgeM > 0.0 ? limitMps : wantedMps);
            double seconds =
                    (Math.abs(toGoM) + turning) / slowest
                            + 2.0 * (Math.abs(rateMps) + wantedMps) / decelerationMps2
                            + 5.0 * stepS;
            return (int) Math.ceil(seconds / stepS);
        }

        boolean canFollow() {
            return CaptureLaw.canFollow(toGoM, rateMps, limitMps, edgeM, decelerationMps2, stepS);
        }
    }

    @Provide
    Arbitrary<Loop> loops() {
        return Combinators.combine(
                        Arbitraries.doubles().between(-2000, 2000),
                        Arbitraries.doubles().between(-30, 30),
                        Arbitraries.doubles().between(2, 50),
                        Arbitraries.doubles().between(2, 15),
                        Arbitraries.oneOf(
                                Arbitraries.just(0.0),
                                Arbitraries.just(304.8),
                                Arbitraries.doubles().between(0.0, 500)),
                        Arbitraries.doubles().between(0.1, 5),
                        Arbitraries.oneOf(
                                Arbitraries.of(1.0 / 120, 1.0 / 60, 0.02, 0.1, 0.25, 1.0),
                                Arbitraries.doubles().between(0.01, 1.0).ofScale(6)),
                        Arbitraries.longs())
                .as(Loop::new);
    }

    @Property(tries = 2000)
    @Label("never passes the level, and comes to it in a finite time, from any height and rate")
    void comesToTheLevel(@ForAll("loops") Loop loop) {
        double toGo = loop.toGoM();
        double rate = loop.rateMps();
        double side = toGo < 0.0 ? -1.0 : 1.0;
        int steps = 0;
        int most = loop.mostSteps();
        while (Math.abs(toGo) > ROUNDING && steps <= most) {
            rate = loop.next(toGo, rate, loop.stepS());
            toGo -= rate * loop.stepS();
            steps++;
            assertThat(side * toGo).isGreaterThanOrEqualTo(-ROUNDING);
        }
        assertThat(steps).isLessThanOrEqualTo(most);
        assertThat(Math.abs(loop.next(toGo, rate, loop.stepS())))
                .isLessThanOrEqualTo(2.0 * ROUNDING / loop.stepS());
    }

    @Property(tries = 2000)
    @Label("flies no part of a step within the edge faster than the limit")
    void keepsTheLimit(@ForAll("loops") Loop loop) {
        double toGo = loop.toGoM();
        double rate = loop.rateMps();
        for (int i = 0; i < MANY_STEPS && Math.abs(toGo) > ROUNDING; i++) {
            rate = loop.next(toGo, rate, loop.stepS());
            double after = toGo - rate * loop.stepS();
            boolean isWithin =
                    loop.edgeM() > 0.0
                            && (Math.abs(toGo) <= loop.edgeM()
                                    || Math.abs(after) < loop.edgeM() - ROUNDING);
            boolean leaves = Math.abs(after) > Math.abs(toGo);
            if (isWithin && !(leaves && Math.abs(toGo) > loop.edgeM())) {
                assertThat(Math.abs(rate)).isLessThanOrEqualTo(loop.limitMps() + 1e-12);
            }
            toGo = after;
        }
    }

    @Property(tries = 2000)
    @Label("changes the rate by no more than the deceleration at each step, where it says so")
    void keepsTheDeceleration(@ForAll("loops") Loop loop) {
        if (!loop.canFollow()) {
            return;
        }
        double toGo = loop.toGoM();
        double rate = loop.rateMps();
        double most = loop.decelerationMps2() * loop.stepS();
        // near the end the rate is a small height over the step, and rounding is divided by it
        double rounding = 1e-9 * (1.0 + 1.0 / loop.stepS());
        for (int i = 0; i < MANY_STEPS && Math.abs(toGo) > ROUNDING; i++) {
            assertThat(
                            CaptureLaw.canFollow(
                                    toGo,
                                    rate,
                                    loop.limitMps() + rounding,
                                    loop.edgeM(),
                                    loop.decelerationMps2() + rounding / loop.stepS(),
                                    loop.stepS()))
                    .isTrue();
            double next = loop.next(toGo, rate, loop.stepS());
            assertThat(Math.abs(next - rate)).isLessThanOrEqualTo(most + rounding);
            rate = next;
            toGo -= rate * loop.stepS();
        }
    }

    @Property(tries = 2000)
    @Label("never passes the level nor the limit when every step has another length")
    void staysWithStepsThatVary(@ForAll("loops") Loop loop) {
        Random lengths = new Random(loop.seed());
        double toGo = loop.toGoM();
        double rate = loop.rateMps();
        double side = toGo < 0.0 ? -1.0 : 1.0;
        int steps = 0;
        while (Math.abs(toGo) > ROUNDING && steps < MANY_STEPS) {
            double step = 1.0 / 120 + lengths.nextDouble() * (1.0 - 1.0 / 120);
            rate = loop.next(toGo, rate, step);
            if (loop.edgeM() > 0.0 && Math.abs(toGo) <= loop.edgeM()) {
                assertThat(Math.abs(rate)).isLessThanOrEqualTo(loop.limitMps() + 1e-12);
            }
            toGo -= rate * step;
            steps++;
            assertThat(side * toGo).isGreaterThanOrEqualTo(-ROUNDING);
        }
        assertThat(steps).isLessThan(MANY_STEPS);
    }

    @Property
    @Label("is the same downwards as upwards, to the last bit")
    void isEven(@ForAll("loops") Loop loop) {
        assertThat(loop.next(-loop.toGoM(), -loop.rateMps(), loop.stepS()))
                .isEqualTo(0.0 - loop.next(loop.toGoM(), loop.rateMps(), loop.stepS()));
    }

    @Property
    @Label("allows more, the further the level is")
    void allowsMoreFurtherAway(@ForAll("loops") Loop loop) {
        double near = most(loop, loop.toGoM(), loop.stepS());
        assertThat(most(loop, loop.toGoM() * 1.01, loop.stepS()))
                .isGreaterThanOrEqualTo(near * (1.0 - 1e-12));
    }

    @Property
    @Label("is the root of twice deceleration times height, as steps become short")
    void becomesTheRoot(@ForAll("loops") Loop loop) {
        double toGo = Math.abs(loop.toGoM());
        double a = loop.decelerationMps2();
        double step = 0.001;
        double level = Math.sqrt(2.0 * a * toGo);
        double edge =
                toGo > loop.edgeM()
                        ? Math.sqrt(
                                loop.limitMps() * loop.limitMps() + 2.0 * a * (toGo - loop.edgeM()))
                        : loop.limitMps();
        double root = loop.edgeM() > 0.0 ? Math.min(level, edge) : level;
        // a step's change for the level, and a step's way at the limit for the edge
        assertThat(most(loop, toGo, step))
                .isCloseTo(root, within(2.0 * a * step + 1e-9))
                .isLessThanOrEqualTo(root + 1e-9);
    }

    private static double most(Loop loop, double toGo, double step) {
        return CaptureLaw.largestRate(
                toGo, loop.limitMps(), loop.edgeM(), loop.decelerationMps2(), step);
    }
}
