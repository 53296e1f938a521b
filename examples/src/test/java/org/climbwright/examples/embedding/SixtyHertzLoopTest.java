package org.climbwright.examples.embedding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.lang.management.ManagementFactory;
import org.climbwright.atmosphere.StandardAir;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A loop of 60 Hz")
class SixtyHertzLoopTest {
    private static final int FIVE_MINUTES = 5 * 60 * 60;

    @Test
    @DisplayName("makes no object, refused samples included")
    void noGarbage() {
        com.sun.management.ThreadMXBean thread =
                (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        SixtyHertzLoop loop = new SixtyHertzLoop();
        flyAndRefuse(loop);
        long id = Thread.currentThread().getId();
        long before = thread.getThreadAllocatedBytes(id);
        flyAndRefuse(loop);
        long made = thread.getThreadAllocatedBytes(id) - before;
        assertThat(loop.refused()).isEqualTo(2 * FIVE_MINUTES);
        assertThat(made).isLessThan(10_000); // an object in each frame would be 500,000
    }

    private static void flyAndRefuse(SixtyHertzLoop loop) {
        loop.fly(FIVE_MINUTES);
        for (int i = 0; i < FIVE_MINUTES; i++) {
            loop.frame(i % 2 == 0 ? Double.NaN : 50000.0, 250.0, -1.0);
        }
    }

    @Test
    @DisplayName("meets its level by the rule: within 1,000 ft no more than 1,500 ft/min")
    void meetsTheLevel() {
        SixtyHertzLoop loop = new SixtyHertzLoop();
        for (int i = 0; i < FIVE_MINUTES; i++) {
            loop.fly(1);
            assertThat(loop.altitudeM()).isLessThanOrEqualTo(3048.0 + 1e-6);
            if (loop.altitudeM() > 3048.0 - 304.8) {
                assertThat(loop.commandMps()).isLessThanOrEqualTo(7.62 + 1e-9);
            }
        }
        assertThat(loop.altitudeM()).isCloseTo(3048.0, within(1e-6)); // nanometres a frame add up
    }

    @Test
    @DisplayName("keeps what it had where no model covers a sample")
    void keeps() {
        SixtyHertzLoop loop = new SixtyHertzLoop();
        loop.fly(60);
        double altitude = loop.altitudeM();
        for (double[] sample :
                new double[][] {
                    {Double.NaN, 250, 120}, {0.0, 250, 120}, {9e4, 20, 120}, {9e4, 250, -1}
                }) {
            assertThat(loop.frame(sample[0], sample[1], sample[2])).isFalse();
        }
        assertThat(loop.altitudeM()).isEqualTo(altitude);
        assertThat(loop.frame(StandardAir.pressureFromAltitude(altitude), 290, 120)).isTrue();
    }

    @Test
    @DisplayName("has no rate of its first sample, and leaps neither there nor behind a gap")
    void startsAnywhere() {
        SixtyHertzLoop loop = new SixtyHertzLoop();
        double stepM = 10.0 / 60.0; // of 10 m/s, from a field at 1,500 m
        for (int frame = 0; frame < 10; frame++) {
            double altitudeM = 1500.0 + frame * stepM;
            double pressurePa =
                    frame == 5 ? Double.NaN : StandardAir.pressureFromAltitude(altitudeM);
            loop.frame(pressurePa, 280.0, 120.0);
            if (frame == 0) {
                assertThat(loop.rateMps()).isNaN();
            } else {
                assertThat(loop.rateMps()).isCloseTo(10.0, within(1e-6));
            }
        }
        assertThat(loop.refused()).isEqualTo(1);
    }

    @Test
    @DisplayName("prints a climb to 10,000 ft")
    void prints() throws ReflectiveOperationException {
        assertThat(Printed.by(SixtyHertzLoop.class))
                .isEqualTo(
                        """
                         1912 ft  2400 ft/min  M0.391  TAS 261.3 kn  TAT 30.2 °C  9.4 % through the air  cabin 370 ft, 0.79 psi
                         4312 ft  2400 ft/min  M0.408  TAS 270.5 kn  TAT 26.1 °C  9.1 % through the air  cabin 852 ft, 1.70 psi
                         6712 ft  2400 ft/min  M0.426  TAS 280.1 kn  TAT 22.0 °C  8.8 % through the air  cabin 1326 ft, 2.54 psi
                         9027 ft  1500 ft/min  M0.444  TAS 289.8 kn  TAT 18.2 °C  5.3 % through the air  cabin 1783 ft, 3.28 psi
                        10000 ft     0 ft/min  M0.452  TAS 294.0 kn  TAT 16.6 °C  0.0 % through the air  cabin 1976 ft, 3.57 psi
                        NaN is not taken
                        """);
    }
}
