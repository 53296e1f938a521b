package org.climbwright.sounding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads text listings of the University of Wyoming, as text or as the page around them. */
final class WyomingReader {
    /** What only a level can be that lost its listing; the indices below one have words. */
    private static final Pattern ONLY_NUMBERS = Pattern.compile("[-.\\d\\s]*\\d[-.\\d\\s]*");

    private final List<ReadingProblem> problems = new ArrayList<>();
    private final List<Sounding> soundings = new ArrayList<>();

    private WyomingTitle title = WyomingTitle.NONE;
    private @Nullable WyomingListing listing;

    private WyomingReader() {}

    static boolean isListing(String line) {
        return WyomingColumns.areNamedIn(line);
    }

    static SoundingReading read(List<String> lines) {
        WyomingReader reader = new WyomingReader();
        for (int i = 0; i < lines.size(); i++) {
            if (!lines.get(i).isBlank()) {
                reader.take(new SourceLine(i + 1, lines.get(i), reader.problems));
            }
        }
        reader.endOfListing();
        reader.problems.sort(Comparator.comparingInt(ReadingProblem::line));
        return new SoundingReading(reader.soundings, reader.problems);
    }

    private void take(SourceLine line) {
        if (isListing(line.text())) {
            endOfListing();
            listing = new WyomingListing(title, line);
            title = WyomingTitle.NONE;
        } else if (listing == null || !listing.takes(line)) {
            endOfListing();
            takeOutside(line);
        }
    }

    private void takeOutside(SourceLine line) {
        if (WyomingTitle.isOne(line.text())) {
            title = WyomingTitle.of(line);
        } else if (ONLY_NUMBERS.matcher(line.text()).matches()) {
            line.unusable("line", "no listing to belong to; level dropped");
        }
    }

    private void endOfListing() {
        if (listing != null) {
            soundings.add(listing.sounding());
        }
        listing = null;
    }
}
