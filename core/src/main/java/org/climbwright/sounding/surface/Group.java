package org.climbwright.sounding.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One group of a report, as it stands there.
 *
 * @param text the group; words that belong together have one space between them
 * @param line line of the report, from 1
 */
record Group(String text, int line) {
    // as String.strip has it: with the separators that telegraph lines used
    private static final String BLANK = "\\p{javaWhitespace}+";
    private static final String WORD = "\\P{javaWhitespace}+";

    private static final String RUNWAY = "R(?:WY)?\\d{2}[LCR]?";

    private static final String MILES = "\\d{1,2} \\d{1,2}/\\d{1,2}SM";
    private static final String WIND_SHEAR =
            "WS (?:TKOF |LDG )?(?:ALL RWYS?|" + RUNWAY + "(?: AND " + RUNWAY + ")*)";

    /** Not as the code has it, and only together a QNH. */
    private static final String TORN_QNH = "(?:QNH|[QA]) [0-9/]{4}";

    private static final Pattern GROUP =
            Pattern.compile(
                    ("(?:" + MILES + "|" + WIND_SHEAR + "|" + TORN_QNH + ")").replace(" ", BLANK)
                            + "(?!\\P{javaWhitespace})|"
                            + WORD);

    private static final Pattern SPACE = Pattern.compile(BLANK);

    /** The groups of a text from left to right. */
    static List<Group> in(String text) {
        List<Group> groups = new ArrayList<>();
        Matcher matcher = GROUP.matcher(text);
        int line = 1;
        int counted = 0;
        while (matcher.find()) {
            for (; counted < matcher.start(); counted++) {
                line += text.charAt(counted) == '\n' ? 1 : 0;
            }
            groups.add(new Group(SPACE.matcher(matcher.group()).replaceAll(" "), line));
        }
        return groups;
    }

    boolean is(String word) {
        return text.equals(word);
    }

    boolean matches(Pattern pattern) {
        return pattern.matcher(text).matches();
    }
}
