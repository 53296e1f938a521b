package org.climbwright.testing;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;

/**
 * What a program did in a Java virtual machine of its own.
 *
 * @param exitCode 0 if the program ended well
 * @param output the lines it printed, errors included
 * @param log the lines that the machine itself wrote about what was asked for
 */
public record ForkedJvm(int exitCode, List<String> output, List<String> log) {

    /** Runs a program on this Java and this class path, and waits for its end. */
    public static ForkedJvm run(
            List<String> options, String logged, Class<?> program, String... arguments)
            throws IOException, InterruptedException {
        List<String> launch =
                List.of("-cp", System.getProperty("java.class.path"), program.getName());
        return run(options, logged, launch, program, arguments);
    }

    /**
     * Runs a program of the tests of core as part of its module, on a module path from which some
     * jar is missing.
     */
    public static ForkedJvm runInModuleWithout(String jar, Class<?> program)
            throws IOException, InterruptedException {
        List<String> path =
                Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator, -1))
                        .filter(entry -> !entry.contains(jar))
                        .toList();
        String tests =
                path.stream().filter(e -> e.endsWith("test-classes")).findFirst().orElseThrow();
        List<String> launch =
                List.of(
                        "--module-path",
                        path.stream()
                                .filter(entry -> !entry.equals(tests))
                                .collect(Collectors.joining(File.pathSeparator)),
                        "--patch-module",
                        "org.climbwright.core=" + tests,
                        "-m",
                        "org.climbwright.core/" + program.getName());
        return run(List.of(), "exceptions=off", launch, program);
    }

    private static ForkedJvm run(
            List<String> options,
            String logged,
            List<String> launch,
            Class<?> program,
            String... arguments)
            throws IOException, InterruptedException {
        Path log = Files.createTempFile("jvm", ".log");
        Path output = Files.createTempFile("output", ".txt");
        try {
            List<String> command = new ArrayList<>();
            command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
            command.addAll(options);
            command.add("-Xlog:" + logged + ":file=" + log + ":none"); // "none": bare lines
            command.addAll(launch);
            command.addAll(List.of(arguments));
            ProcessBuilder builder =
                    new ProcessBuilder(command)
                            .redirectErrorStream(true)
                            .redirectOutput(output.toFile());
            builder.environment().remove("CLASSPATH"); // the build's own would count beside
            Process process = builder.start();
            if (!process.waitFor(60, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                throw new AssertionError(program + " did not end: " + Files.readString(output));
            }
            return new ForkedJvm(process.exitValue(), lines(output), lines(log));
        } finally {
            Files.delete(log);
            Files.delete(output);
        }
    }

    private static List<String> lines(Path file) throws IOException {
        return Files.readAllLines(file, StandardCharsets.UTF_8);
    }
}
