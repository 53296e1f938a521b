package org.climbwright.examples.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The file in which speeds stand: an introduction, then a section for each JDK, the newest first. A
 * new run replaces the section of its JDK and leaves the others.
 */
final class SpeedRecord {
    private static final String HEADING = "## JDK ";

    private static final String INTRODUCTION =
            """
            # Speeds

            Written by `mvn -q -Pbenchmarks test-compile exec:exec`; not for editing. Each section is one run on one
            JDK, everything in it side by side. Ratios hold from run to run and from machine to machine; nanoseconds
            do not.

            A batch is %d moments of climbs from -1000 to 13000 m and from 60 m/s to the lesser of 200 m/s and Mach
            0.9, drawn from a written seed; impact pressures beyond Mach 1 are those of Mach 1.05 to 2.5. "By hand" is
            the formula of a textbook with `Math.pow` and its like in a plain loop without a check, and "StrictMath"
            the same with that. "Scalar" is our function of SI doubles in a loop, checks and all; "bulk" is ours over
            arrays. A bar is for bulk where there is one, else for scalar. Before anything is timed, all ways to answer
            a question are found to agree within 1e-12. Bytes are the garbage of one call.
            """
                    .formatted(Batch.SIZE);

    private SpeedRecord() {}

    /** Writes the section of a JDK into a file; the file may be missing. */
    static void write(Path file, int jdk, String section) throws IOException {
        String old = Files.exists(file) ? Files.readString(file) : "";
        Files.writeString(file, with(old, jdk, section));
    }

    /** The text of the file with the section of one JDK replaced. */
    static String with(String old, int jdk, String section) {
        List<String> sections = new ArrayList<>();
        for (String part : old.split("(?m)^(?=" + HEADING + ")", -1)) {
            if (part.startsWith(HEADING) && jdkOf(part) != jdk) {
                sections.add(part.stripTrailing());
            }
        }
        sections.add((HEADING + jdk + "\n\n" + section).stripTrailing());
        sections.sort(Comparator.comparingInt(SpeedRecord::jdkOf).reversed());
        return INTRODUCTION + "\n" + String.join("\n\n", sections) + "\n";
    }

    private static int jdkOf(String section) {
        return Integer.parseInt(
                section.substring(HEADING.length()).lines().findFirst().orElseThrow().strip());
    }
}
