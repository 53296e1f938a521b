package org.climbwright.gradient.leveling;

import java.time.Duration;

/** Seconds as they leave. */
final class Seconds {
    private Seconds() {}

    static Duration duration(double seconds) {
        return Duration.ofNanos(Math.round(seconds * 1e9));
    }
}
