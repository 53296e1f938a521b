package org.climbwright.examples.teaching;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.climbwright.icing.potential.FreezingLevels;
import org.climbwright.sounding.Sounding;
import org.climbwright.sounding.SoundingReader;
import org.climbwright.working.IcingWorking;
import org.climbwright.working.Working;

/** How many levels of 0 °C can one ascent of a balloon have? */
public final class Question05ThreeFreezingLevels {
    private static final String OBSERVED =
            "/org/climbwright/examples/briefing/norman-january-20.csv";

    private Question05ThreeFreezingLevels() {}

    /**
     * Prints the answer and its working.
     *
     * @param args not used
     * @throws IOException if the sounding cannot be read
     */
    public static void main(String[] args) throws IOException {
        Sounding sounding = read();
        System.out.println(FreezingLevels.in(sounding.atmosphere()).inWords());
        System.out.println();

        Working working = IcingWorking.freezingLevels(sounding);
        System.out.print(working.toMarkdown());
    }

    private static Sounding read() throws IOException {
        InputStream file = Question05ThreeFreezingLevels.class.getResourceAsStream(OBSERVED);
        try (BufferedReader lines =
                new BufferedReader(
                        new InputStreamReader(
                                Objects.requireNonNull(file), StandardCharsets.UTF_8))) {
            return SoundingReader.read(lines.lines().toList()).soundings().get(0);
        }
    }
}
