package org.climbwright.sounding;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The line above each ascent of an IGRA file: station, launch, number of levels. */
record IgraHeader(String station, String launch, int levels) {
    private static final Pattern FORM =
            Pattern.compile(
                    "#([A-Z0-9]{11}) (\\d{4}) ([ \\d]\\d) ([ \\d]\\d) ([ \\d]\\d) .{4} "
                            + "( {4}| {3}\\d| {2}\\d{2}| \\d{3}|\\d{4})(\\D.*)?");

    private static final String UNKNOWN_HOUR = "99";

    static boolean isOne(String line) {
        return FORM.matcher(line).matches();
    }

    static IgraHeader parse(String line) {
        Matcher parts = FORM.matcher(line);
        if (!parts.matches()) {
            throw new IllegalArgumentException("not the header of an ascent: " + line);
        }
        String date = parts.group(2) + '-' + two(parts.group(3)) + '-' + two(parts.group(4));
        String hour = two(parts.group(5));
        String announced = parts.group(6).trim();
        return new IgraHeader(
                parts.group(1),
                hour.equals(UNKNOWN_HOUR) ? date : date + 'T' + hour,
                announced.isEmpty() ? 0 : Integer.parseInt(announced));
    }

    private static String two(String digits) {
        return digits.replace(' ', '0');
    }
}
