package org.climbwright.examples.briefing;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** One run of the briefing: its exit code and what it wrote. */
public record Program(int code, String out, String err) {
    /**
     * Runs the program in this JVM.
     *
     * @param args its options
     * @return what came of it
     */
    public static Program run(String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code =
                Main.run(
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8),
                        args);
        return new Program(
                code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
