package org.climbwright.ledger;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes the digests of {@link DigestProgram} down, to be met by every other JVM. */
final class DigestTable {
    static final String CSV = "/ledger/digests.csv";

    private static final String HEAD =
            """
            # Digests of the bits that each function of doubles gives, after so many points of DigestProgram.
            # Written anew, after a change of a figure, by: mvn -q -pl core -am -P digests test-compile exec:java
            function,points,digest
            """;

    private DigestTable() {}

    /** Takes the digests anew; the argument is the folder of the module. */
    public static void main(String[] arguments) throws IOException {
        int[] checkpoints = DigestProgram.CHECKPOINTS;
        String lines =
                String.join("\n", DigestProgram.lines(checkpoints[checkpoints.length - 1])) + "\n";
        Path file = Path.of(arguments[0]).resolve("src/test/resources" + CSV);
        Files.writeString(file, HEAD + lines, UTF_8);
    }
}
