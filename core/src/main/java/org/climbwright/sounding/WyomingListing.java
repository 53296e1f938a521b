package org.climbwright.sounding;

import java.util.regex.Pattern;

/** One listing, from its row of names on. */
final class WyomingListing {
    private static final Pattern DASHES = Pattern.compile("\\s*-{3,}\\s*");

    private final WyomingTitle title;
    private final SourceLine names;
    private final WyomingColumns columns;
    private final SoundingAssembly assembly = new SoundingAssembly("PRES", "HGHT");
    private boolean hasUnits;
    private boolean hasLevels;

    WyomingListing(WyomingTitle title, SourceLine names) {
        this.title = title;
        this.names = names;
        this.columns = new WyomingColumns(names);
    }

    /** Takes the next line, if it is not the first one behind the listing. */
    boolean takes(SourceLine line) {
        String text = line.text();
        boolean isDashes = DASHES.matcher(text).matches();
        if ((isDashes && hasLevels) || isBehind(text)) {
            return false;
        }
        if (isDashes) {
            return true;
        }
        if (!hasUnits && !hasLevels && columns.haveUnitsIn(text)) {
            columns.takeUnits(line);
            hasUnits = true;
        } else {
            assembly.add(line, columns.level(line));
            hasLevels = true;
        }
        return true;
    }

    private static boolean isBehind(String text) {
        return text.stripLeading().startsWith("<")
                || text.contains("Station information")
                || WyomingTitle.isOne(text);
    }

    Sounding sounding() {
        if (!hasLevels) {
            names.unusable("line", "no level stands below these names; the ascent is empty");
        }
        return assembly.inOrderOfFlight(title.station(), title.launch());
    }
}
