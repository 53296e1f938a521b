package org.climbwright.examples.benchmark;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;

/** What a run has measured, by question and way. */
final class Speeds {
    private static final String BYTES = "gc.alloc.rate.norm";

    private final Map<String, Speed> measured = new HashMap<>();

    /** Time and memory of one answer. */
    record Speed(double nanoseconds, double bytes) {}

    void add(RunResult result) {
        Result<?> bytes = result.getSecondaryResults().get(BYTES);
        if (bytes == null) {
            throw new IllegalStateException("the profiler of memory told no " + BYTES);
        }
        measured.put(
                result.getParams().getBenchmark(),
                new Speed(result.getPrimaryResult().getScore(), bytes.getScore()));
    }

    /**
     * The speed of one way to answer a question; empty if there is no such way or it was not run.
     */
    Optional<Speed> of(Class<?> question, String way) {
        return Optional.ofNullable(measured.get(question.getCanonicalName() + "." + way));
    }
}
