package org.climbwright.testing;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

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
        Path log = Files.createTempFile("jvm", ".log");
        Path output = Files.createTempFile("output", ".txt");
        try {
            List<String> command = new ArrayList<>();
            command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
            command.addAll(options);
            command.add("-Xlog:" + logged + ":file=" + log + ":none"); // "none": bare lines
            command.add("-cp");
            command.add(System.getProperty("java.class.path"));
            command.add(program.getName());
            command.addAll(List.of(arguments));
            Process process =
                    new ProcessBuilder(command)
                            .redirectErrorStream(true)
                            .redirectOutput(output.toFile())
                            .start();
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
