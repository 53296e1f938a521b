package org.climbwright.examples.benchmark;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a first use of the library adds to the start of a JVM: each program of {@link FirstUse} many
 * times in a JVM of its own, by turns, so that a busy machine slows all alike.
 */
final class StartUp {
    /** The most that a first use of SI doubles may add to an empty main [ms]. */
    static final double BAR_MS = 10.0;

    static final String SI_DOUBLES = "a first call with SI doubles";

    private static final Map<String, Class<?>> PROGRAMS = new LinkedHashMap<>();

    static {
        PROGRAMS.put("an empty main", FirstUse.Nothing.class);
        PROGRAMS.put(SI_DOUBLES, FirstUse.SiDoubles.class);
        PROGRAMS.put("a first call with values", FirstUse.Values.class);
        PROGRAMS.put("a first Quantity", FirstUse.OneQuantity.class);
    }

    /** Medians of one program: from the outside, and by its own clock. */
    record Timing(String program, double wallMs, double firstUseMs) {}

    private StartUp() {}

    /** Times all programs; the empty one comes first. */
    static List<Timing> measure(int forks) throws IOException, InterruptedException {
        Map<String, double[]> walls = new LinkedHashMap<>();
        Map<String, double[]> uses = new LinkedHashMap<>();
        for (String program : PROGRAMS.keySet()) {
            walls.put(program, new double[forks]);
            uses.put(program, new double[forks]);
        }
        for (int fork = 0; fork < forks; fork++) {
            for (Map.Entry<String, Class<?>> program : PROGRAMS.entrySet()) {
                long began = System.nanoTime();
                run(program.getValue());
                walls.get(program.getKey())[fork] = (System.nanoTime() - began) / 1e6;
                // printing costs a start-up of its own: another JVM for that
                String told = run(program.getValue(), "tell");
                uses.get(program.getKey())[fork] = Long.parseLong(told) / 1e6;
            }
        }
        List<Timing> timings = new ArrayList<>();
        for (String program : PROGRAMS.keySet()) {
            timings.add(new Timing(program, median(walls.get(program)), median(uses.get(program))));
        }
        return timings;
    }

    private static String run(Class<?> program, String... args)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.add("-classpath");
        command.add(System.getProperty("java.class.path"));
        command.add(program.getName());
        command.addAll(List.of(args));
        Process process =
                new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
        String told =
                new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
        if (process.waitFor() != 0) {
            throw new IOException(program.getName() + " ended with " + process.exitValue());
        }
        return told;
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2.0;
    }
}
