package org.climbwright;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * What a program did in a Java virtual machine of its own.
 *
 * @param exitCode 0 if the program ended well
 * @param output what it printed, errors included
 * @param loadedClasses the names of all classes that were loaded
 */
public record ForkedJvm(int exitCode, String output, List<String> loadedClasses) {

    /** Runs a program on this Java and this class path, and waits for its end. */
    public static ForkedJvm run(Class<?> program, List<String> arguments)
            throws IOException, InterruptedException {
        Path log = Files.createTempFile("classes", ".log");
        Path output = Files.createTempFile("output", ".txt");
        try {
            List<String> command = new ArrayList<>();
            command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
            command.add("-Xlog:class+load:file=" + log + ":none"); // "none": bare lines
            command.add("-Dfile.encoding=UTF-8");
            command.add("-cp");
            command.add(System.getProperty("java.class.path"));
            command.add(program.getName());
            command.addAll(arguments);
            Process process =
                    new ProcessBuilder(command)
                            .redirectErrorStream(true)
                            .redirectOutput(output.toFile())
                            .start();
            if (!process.waitFor(60, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                throw new AssertionError(program + " did not end: " + Files.readString(output));
            }
            List<String> classes =
                    Files.readAllLines(log, UTF_8).stream()
                            .filter(line -> line.contains(" source: "))
                            .map(line -> line.substring(0, line.indexOf(' ')))
                            .toList();
            return new ForkedJvm(process.exitValue(), Files.readString(output), classes);
        } finally {
            Files.delete(log);
            Files.delete(output);
        }
    }

    /** The classes of javax.measure and of its implementation among those loaded. */
    public List<String> classesOfTheUnitsStack() {
        return loadedClasses.stream()
                .filter(name -> name.startsWith("javax.measure.") || name.startsWith("tech.units."))
                .toList();
    }
}
