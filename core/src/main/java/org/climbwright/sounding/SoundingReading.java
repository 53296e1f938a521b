package org.climbwright.sounding;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;

/**
 * What a file gave: every good ascent, and a list of what could not be used.
 *
 * @param soundings the ascents in the order of the file, each with its good levels
 * @param problems what was left out, in the order of the file; empty for a flawless one
 */
public record SoundingReading(List<Sounding> soundings, List<ReadingProblem> problems)
        implements Serializable {
    /**
     * Makes a result of lists that nobody can change.
     *
     * @param soundings the ascents
     * @param problems what was left out
     */
    public SoundingReading {
        soundings = List.copyOf(Objects.requireNonNull(soundings, "soundings"));
        problems = List.copyOf(Objects.requireNonNull(problems, "problems"));
    }

    /**
     * Returns the one ascent of a launch.
     *
     * @param launch the launch as {@link Sounding#launch} tells it, or the beginning of it
     * @return the ascent whose launch is told just so; else the one whose launch begins so
     * @throws IllegalArgumentException if no ascent or more than one fits; the message lists them
     */
    public Sounding launchedAt(String launch) {
        List<Sounding> exact = fitting(launch::equals);
        List<Sounding> fitting = exact.isEmpty() ? fitting(told -> told.startsWith(launch)) : exact;
        if (fitting.size() == 1) {
            return fitting.get(0);
        }
        throw new IllegalArgumentException(
                "launch must name one ascent of the file, but \""
                        + launch
                        + "\" fits "
                        + fitting.size()
                        + " of "
                        + soundings.stream().map(Sounding::launch).toList());
    }

    private List<Sounding> fitting(Predicate<String> launch) {
        return soundings.stream().filter(sounding -> launch.test(sounding.launch())).toList();
    }
}
