package org.climbwright.sounding.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Present weather, kept as text. */
final class WeatherReader implements GroupReader {
    private static final Pattern WEATHER =
            Pattern.compile(
                    "(\\+|-|VC)?(?=.)(MI|BC|PR|DR|BL|SH|TS|FZ)*"
                        + "(DZ|RA|SN|SG|IC|PL|GR|GS|UP|BR|FG|FU|VA|DU|SA|HZ|PY|PO|SQ|FC|SS|DS)*");

    private final Notes notes;
    private final List<String> weather = new ArrayList<>();

    WeatherReader(Notes notes) {
        this.notes = notes;
    }

    List<String> weather() {
        return weather;
    }

    @Override
    public boolean take(Group group) {
        if (group.is("//")) {
            notes.reportedMissing(ReportElement.PRESENT_WEATHER, group);
        } else if (group.matches(WEATHER)) {
            if (!notes.isSettled(ReportElement.PRESENT_WEATHER, null, group)) {
                weather.add(group.text());
            }
        } else {
            return false;
        }
        return true;
    }
}
