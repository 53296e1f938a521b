package org.climbwright.examples.benchmark;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Where and of what a run was: without it no figure means anything. */
final class Machine {
    private static final Path PROCESSORS = Path.of("/proc/cpuinfo");

    private Machine() {}

    /** Date, JDK, processor and commit, as a list in Markdown. */
    static String description() throws IOException, InterruptedException {
        return String.join(
                "\n",
                "- date: " + LocalDate.now(ZoneOffset.UTC),
                "- JDK: "
                        + System.getProperty("java.vm.name")
                        + " "
                        + System.getProperty("java.runtime.version"),
                "- processor: "
                        + processor()
                        + ", "
                        + Runtime.getRuntime().availableProcessors()
                        + " of them",
                "- commit: " + commit(),
                "");
    }

    private static String processor() throws IOException {
        String architecture = System.getProperty("os.arch");
        if (!Files.isReadable(PROCESSORS)) {
            return architecture;
        }
        List<String> lines = Files.readAllLines(PROCESSORS);
        String name = field(lines, "model name").orElse(architecture);
        // the name may be that of a dozen processors, of which one has twice the units of another
        return field(lines, "cpu family")
                .flatMap(
                        family ->
                                field(lines, "model")
                                        .map(model -> name + " " + family + "/" + model))
                .orElse(name);
    }

    private static Optional<String> field(List<String> lines, String name) {
        return lines.stream()
                .filter(
                        line ->
                                line.substring(0, Math.max(0, line.indexOf(':')))
                                        .strip()
                                        .equals(name))
                .map(line -> line.substring(line.indexOf(':') + 1).strip())
                .findFirst();
    }

    private static String commit() throws InterruptedException {
        try {
            String commit = git("rev-parse", "--short=12", "HEAD");
            return git("status", "--porcelain").isEmpty() ? commit : commit + " and changes to it";
        } catch (IOException noGit) {
            return "not known";
        }
    }

    private static String git(String... args) throws IOException, InterruptedException {
        List<String> command = Stream.concat(Stream.of("git"), Stream.of(args)).toList();
        Process process =
                new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
        String told = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (process.waitFor() != 0) {
            throw new IOException("git " + args[0] + " ended with " + process.exitValue());
        }
        return told.strip();
    }
}
