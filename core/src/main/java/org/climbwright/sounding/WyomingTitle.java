package org.climbwright.sounding;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The line above a listing: the station, and the launch as {@link Sounding#launch} tells it. */
record WyomingTitle(String station, String launch) {
    static final WyomingTitle NONE = new WyomingTitle("", "");

    private static final List<String> MONTHS =
            List.of(
                    "Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov",
                    "Dec");

    private static final Pattern ANY = Pattern.compile("Observations (at|for Station) ");

    /** As pages had it for decades, and as they have it now; either may stand between tags. */
    private static final Pattern FORM =
            Pattern.compile(
                    "(?:<[^>]*>|\\s)*"
                            + "(?:(\\S.*) Observations at|Observations for Station (\\S+) at)"
                            + " ([01]\\d|2[0-3])(?:Z| UTC) (0[1-9]|[12]\\d|3[01]) ("
                            + String.join("|", MONTHS)
                            + ") (\\d{4})\\s*(?:<.*)?");

    static boolean isOne(String line) {
        return ANY.matcher(line).find();
    }

    /** What a title tells; nothing, and a note of that, when it is broken. */
    static WyomingTitle of(SourceLine line) {
        Matcher parts = FORM.matcher(line.text());
        if (!parts.matches()) {
            line.unusable("title", "no station, hour and date; station and launch left empty");
            return NONE;
        }
        int month = 1 + MONTHS.indexOf(parts.group(5));
        return new WyomingTitle(
                parts.group(1) == null ? parts.group(2) : parts.group(1).trim(),
                parts.group(6)
                        + (month < 10 ? "-0" : "-")
                        + month
                        + '-'
                        + parts.group(4)
                        + 'T'
                        + parts.group(3));
    }
}
