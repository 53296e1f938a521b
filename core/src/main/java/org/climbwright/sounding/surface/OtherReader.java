package org.climbwright.sounding.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Groups that are known, and kept as text: no element of ours may be made of them. */
final class OtherReader implements GroupReader {
    /** Colour states of military aerodromes (from memory). */
    private static final String COLOUR = "BLACK|(BLACK)?(BLU|WHT|GRN|YLO[12]?|AMB|RED)\\+?";

    private static final Pattern KNOWN =
            Pattern.compile(
                    String.join(
                            "|",
                            "\\d{4}(N|NE|E|SE|S|SW|W|NW)", // minimum visibility, with its direction
                            "R(\\d{2}[LCR]{0,2})?/[0-9A-Z/]+", // runway visual range, runway state
                            "\\d{2}[0-9/]{6}|SNOCLO", // runway state, older forms
                            "RE[A-Z/]{2,}", // recent weather
                            "WS .*", // wind shear
                            "NSW", // no significant weather, which observations need not tell
                            "A[O0][12]A?", // kind of automatic station, without its RMK
                            COLOUR,
                            "W(M?\\d{2}|//)/[SH][0-9/]+")); // state of the sea

    private final List<String> groups = new ArrayList<>();

    List<String> groups() {
        return groups;
    }

    /** Keeps a group that says nothing beyond what others have told. */
    void keep(Group group) {
        groups.add(group.text());
    }

    @Override
    public boolean take(Group group) {
        if (!group.matches(KNOWN)) {
            return false;
        }
        keep(group);
        return true;
    }
}
