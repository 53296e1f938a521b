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
            JDK, everything in it side by side. Ratios hold from run to run on one kind of processor; nanoseconds do not.

            A batch is %d moments of climbs from -1000 to 13000 m and from 60 m/s to the lesser of 200 m/s and Mach
            0.9, drawn from a written seed; impact pressures beyond Mach 1 are those of Mach 1.05 to 2.5. "By hand" is
            the formula of a textbook with `Math.pow` and its like in a plain loop without a check, and "StrictMath"
            the same with that. "Scalar" is our function of SI doubles in a loop, checks and all; "bulk" is ours over
            arrays. A bar is for bulk where there is one, else for scalar. Before anything is timed, all ways to answer
            a question are found to agree within 1e-12. Bytes are the garbage of one call.

            A cabin is stepped through an invented climb of 25 minutes, in which something fails after 20. The time of a step is
            the mean over the climb, four fifths of it before the failure, where a step is the cheapest. A test finds the cabin
            at the top within 1 ft of one in steps of 1 s.

            A climb is that of an invented jet of 60 t from an invented aerodrome to FL350, through a sounding of 58 stretches
            with its winds, in some 110 steps of level: 20 minutes of flight. Both integrations are the library's, with
            the same forces, the same breaks and the same events; the adaptive one, of Apache Commons Math, is there for a
            second opinion. A test finds both within 0.01 s, 0.1 m and 0.01 kg. The garbage of a climb is the path that is
            handed over; its steps make none, as a test of theirs holds.

            ## Where a bar is missed, and why

            **Over arrays** a loop is as fast as the processor multiplies, and the formula by hand hardly depends on that.
            On family 25, model 17, a dozen fused multiply-adds take 0.43 ns an element. The processor of the record of
            2026-11-25 (commit 45e7575, before the kernels of the pitot tube were shortened) had the formula by hand 1.2
            times as fast, and these loops 1.7 to 2 times; by hand over bulk was, on JDK 17 and 25: p 12.2 and 14.6, p T ρ a
            6.2 and 6.6, altitude from p 8.5 and 8.2, CAS → Mach and TAS 19.8 and 20.4, Mach → CAS 24.4 and 23.9, supersonic
            388 and 387. CAS → Mach and TAS takes 53 products an element, 1.9 ns at that rate, besides two roots and a
            division; a bar of 30 would be 1.3. Tried and dropped: blocks of 128, 256 and 1024 elements, a pass of its own
            for ranges (0.3 to 0.7 ns), one loop for all (too long to become vectors).

            **One by one** a frame waits: pressure, density, and the altitude of that density follow from each other through
            three divisions and three polynomials, and while one frame is on that way the processor has no room for the
            next. Shorter chains brought a Mach number from 15.5 to 10.5 ns and the frame from 44 to 35 in a loop of its own. What
            is left is the careful end of each inverse, which keeps neighbouring numbers in order; a frame of 2.5 times
            would have to give that up.

            **Values** cost two comparisons for each check, one check for each number that enters or leaves: 2 to 4 ns for
            a call with four of them. That is little beside a Mach number, and much beside a total temperature, which is
            four multiplications. Records, whose bounds the compiler knows, and getters that ask no unit brought the frame
            from 1.5 to 1.3. Left out is no check.

            **A climb** asks for the forces some 500 times: four times in each step, and once more on the upper side of
            each bend of the sounding. Two fifths of that is the angle at which they balance, found by rounds that wait for
            each other (a root and two quotients each, two rounds a point), a fifth the law of thrust with its power of
            the density. Beginning each search at the angle expected, and foretelling what a round leaves, brought the rounds from six to two.
            Steps of 300 m instead of 200 would save a fifth, and missed 0.1 m in 3 of 1200 random climbs: not taken.
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
