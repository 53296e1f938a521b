package org.climbwright.examples.shell;

import java.io.ByteArrayInputStream;
import java.io.Console;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import jdk.jshell.tool.JavaShellToolBuilder;
import org.climbwright.examples.ClassPath;

/**
 * JShell on the class path of the library, with its packages imported: {@code mvn -q -Pjshell
 * compile exec:java} from the root.
 *
 * <p>What is typed runs in a JVM of its own, so that a loop that never ends can be stopped.
 * Standard input may be a pipe: then there is no prompt, and what comes out are the answers.
 */
public final class Shell {
    /** Long values are for reading here, not for a line of 80 characters. */
    private static final int LONGEST = 20_000;

    private Shell() {}

    /**
     * Runs the shell; leaves the JVM with the exit code if that is not 0.
     *
     * @param args options of JShell, and files for it to read
     */
    public static void main(String[] args) {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
        int code = run(isPerson() ? Optional.empty() : Optional.of(System.in), out, err, args);
        if (code != 0) {
            System.exit(code);
        }
    }

    /** Reads a pipe, or without one what a person types. */
    static int run(Optional<InputStream> pipe, PrintStream out, PrintStream err, String... args) {
        out.print(resource("greeting.txt"));
        out.flush();
        String classPath =
                ClassPath.entries().stream()
                        .map(Path::toString)
                        .collect(Collectors.joining(File.pathSeparator));
        Path imports = null;
        try {
            imports = Files.createTempFile("climbwright", ".jsh");
            Files.writeString(imports, resource("imports.jsh"));
            Stream<String> own =
                    Stream.of(
                            "--class-path",
                            classPath,
                            "--startup",
                            imports.toString(),
                            "-R-XX:+UseSerialGC", // starts sooner
                            "-R-XX:TieredStopAtLevel=1",
                            "-R-Dfile.encoding=UTF-8",
                            "-R-Dstdout.encoding=UTF-8");
            JavaShellToolBuilder shell =
                    JavaShellToolBuilder.builder()
                            .persistence(settings(pipe.isEmpty()))
                            .out(out)
                            .err(err);
            pipe.ifPresent(in -> shell.in(in, null));
            return shell.start(Stream.concat(own, Stream.of(args)).toArray(String[]::new));
        } catch (Exception broken) {
            err.println("JShell cannot be started: " + broken.getMessage());
            return 1;
        } finally {
            if (imports != null) {
                imports.toFile().delete();
            }
        }
    }

    /**
     * How JShell talks: as usual, but without a welcome of its own, with long values in full, and
     * without a prompt where nobody would see it. A start-up script comes too early to say so; what
     * a session before this one has kept does not.
     */
    private static Map<String, String> settings(boolean isPerson) throws Exception {
        String commands =
                """
                /set mode reading normal -quiet
                /set truncation reading %d
                /set prompt reading "%s" "%s"
                /set mode reading -retain
                /set feedback -retain reading
                /exit
                """
                        .formatted(LONGEST, isPerson ? "jshell> " : "", isPerson ? "   ...> " : "");
        Map<String, String> kept = new HashMap<>();
        JavaShellToolBuilder.builder()
                .persistence(kept)
                .in(new ByteArrayInputStream(commands.getBytes(StandardCharsets.UTF_8)), null)
                .out(
                        new PrintStream(
                                OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8))
                .start("--no-startup", "--execution", "local");
        kept.keySet().removeIf(key -> key.startsWith("HISTORY"));
        return kept;
    }

    private static String resource(String name) {
        try (InputStream in = Shell.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the shell comes with " + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** Newer JVMs have a console without a terminal, and a method that tells. */
    @SuppressWarnings("SystemConsoleNull") // until 21 it does
    private static boolean isPerson() {
        Console console = System.console();
        if (console == null) {
            return false;
        }
        try {
            return (Boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (ReflectiveOperationException older) {
            return true;
        }
    }
}
