package org.climbwright.gradient.restriction;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What a loop asks of a restriction")
class RestrictionLoopTest {
    private static final int CALLS = 20_000;

    @Test
    @DisplayName("makes no garbage: margins, gradient and rate from here")
    void noGarbage() {
        AltitudeRestriction altitude =
                AltitudeRestriction.atOrAbove(Level.of(AltitudeOnQnh.ofFeet(10000)));
        SpeedRestriction speed = PublishedSpeedLimits.belowTenThousandFeet();
        ThreadMXBean thread = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        double sum = loop(altitude, speed);
        long before = thread.getCurrentThreadAllocatedBytes();
        sum += loop(altitude, speed);
        long bytes = thread.getCurrentThreadAllocatedBytes() - before;
        assertThat(sum).isFinite();
        assertThat((double) bytes / CALLS).isLessThan(1.0); // an object would be 16 or more
    }

    private static double loop(AltitudeRestriction altitude, SpeedRestriction speed) {
        double sum = 0.0;
        for (int i = 0; i < CALLS; i++) {
            double here = 1000.0 + 0.1 * i;
            double qnh = 100300.0 + 0.1 * i;
            double lowest = altitude.lowest(qnh);
            sum += AltitudeRestriction.margin(here, lowest, altitude.highest(qnh));
            sum += speed.appliesAt(here, qnh) ? speed.margin(130.0) : 0.0;
            sum += ClimbRequirement.gradient(here, lowest, 0.95, 40000.0 - i);
            sum += ClimbRequirement.instrumentRate(here, lowest, 40000.0 - i, 140.0);
        }
        return sum;
    }
}
