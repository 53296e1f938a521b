package org.climbwright.sounding.surface;

import java.time.LocalTime;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.climbwright.sounding.surface.ReportContent.ReportHead;
import org.jspecify.annotations.Nullable;

/**
 * Walks through a report: its head, then the body, whose groups go to who knows them, then the
 * remarks. What follows a trend forecast is no observation and is not read.
 */
final class ReportParser {
    private static final Pattern NAME = Pattern.compile("METAR|SPECI|TTF");

    /** Four letters or digits, but no word of the code. */
    private static final Pattern STATION = Pattern.compile("(?!AUTO|RMKS)[A-Z][A-Z0-9]{3}");

    private static final Pattern TIME = Pattern.compile("(\\d\\d)(\\d\\d)(\\d\\d)Z?");
    private static final Pattern VALIDITY = Pattern.compile("\\d{4}/\\d{4}");
    private static final Pattern CORRECTED = Pattern.compile("COR|CC[A-Z]");

    /** Remarks, or a forecast: its kind, or the time from, at or until which it holds. */
    private static final Pattern END_OF_BODY =
            Pattern.compile(
                    "RMKS?|(NOSIG|TEMPO|BECMG|INTER|PROB|GRADU|RAPID|FCST|TREND|TTF).*"
                            + "|(FM|AT|TL)(\\d.*)?");

    private static final Pattern REMARKS = Pattern.compile("RMKS?");

    private final List<Group> groups;
    private final Notes notes = new Notes();
    private final OtherReader others = new OtherReader();
    private final BodyOrder order = new BodyOrder();
    private final WindReader wind = new WindReader(notes, order);
    private final WeatherReader weather = new WeatherReader(notes);
    private final CloudReader cloud = new CloudReader(notes, others);
    private final VisibilityReader visibility = new VisibilityReader(notes, order, cloud);
    private final TemperatureReader temperatures = new TemperatureReader(notes);
    private final QnhReader qnh = new QnhReader(notes);
    private final List<GroupReader> upToWeather = List.of(wind, visibility, others, weather);
    private final List<GroupReader> fromCloudOn = List.of(cloud, temperatures, qnh);

    private int next;
    private boolean automatic;
    private boolean corrected;

    private ReportParser(String text) {
        this.groups = Group.in(upToEndSign(text));
    }

    /** What a text says; refuses a text that is no report. */
    static ReportContent parse(String text) {
        ReportParser parser = new ReportParser(text);
        ReportHead head = parser.readHead();
        boolean nil = parser.readNil(head);
        parser.leaveOutBehindEndSign(text);
        if (!nil) {
            parser.readBody();
            parser.readRemarks();
        }
        return parser.content(head, nil);
    }

    private static String upToEndSign(String text) {
        int end = text.indexOf('=');
        return end < 0 ? text : text.substring(0, end);
    }

    private void leaveOutBehindEndSign(String text) {
        String report = upToEndSign(text);
        String rest = text.substring(report.length()).replaceFirst("=+", "").strip();
        if (!rest.isEmpty()) {
            int line = 1 + (int) report.chars().filter(c -> c == '\n').count();
            notes.leftOut(
                    "line", new Group(rest, line), "stands behind the end of the report; not read");
        }
    }

    private ReportHead readHead() {
        while (isNext(NAME) || isNext(CORRECTED)) {
            corrected |= isNext(CORRECTED);
            next++;
        }
        if (!isNext(STATION)) {
            throw noReport("a station of four letters");
        }
        String station = groups.get(next++).text();
        readModifiers();
        if (isNextNil()) {
            return new ReportHead(station, 0, null);
        }
        Matcher told = TIME.matcher(next < groups.size() ? groups.get(next).text() : "");
        if (!told.matches()) {
            throw noReport("a time of observation");
        }
        int day = Integer.parseInt(told.group(1));
        int hour = Integer.parseInt(told.group(2));
        int minute = Integer.parseInt(told.group(3));
        if (day < 1 || day > 31 || hour > 23 || minute > 59) {
            throw noReport("a possible time of observation");
        }
        next++;
        readModifiers();
        if (isNext(VALIDITY)) {
            throw noReport("an observation, which has no period of validity,");
        }
        return new ReportHead(station, day, LocalTime.of(hour, minute));
    }

    private boolean isNext(Pattern pattern) {
        return next < groups.size() && groups.get(next).matches(pattern);
    }

    private boolean isNextNil() {
        return next < groups.size() && groups.get(next).is("NIL");
    }

    private void readModifiers() {
        while (next < groups.size() && isModifier(groups.get(next))) {
            next++;
        }
    }

    private boolean isModifier(Group group) {
        automatic |= group.is("AUTO");
        corrected |= group.matches(CORRECTED);
        return group.is("AUTO") || group.matches(CORRECTED);
    }

    private IllegalArgumentException noReport(String missing) {
        String found =
                next < groups.size() ? "\"" + groups.get(next).text() + "\"" : "the end of it";
        return new IllegalArgumentException(
                "a report needs " + missing + " where this text has " + found);
    }

    private boolean readNil(ReportHead head) {
        if (!isNextNil()) {
            return false;
        }
        Group nil = groups.get(next++);
        for (ReportElement element : ReportElement.values()) {
            if (element != ReportElement.TIME || head.time() == null) {
                notes.reportedMissing(element, nil);
            }
        }
        if (next < groups.size()) {
            notes.leftOut("line", groups.get(next), "NIL has nothing behind it; not read");
        }
        return true;
    }

    private void readBody() {
        for (; next < groups.size() && !isNext(END_OF_BODY); next++) {
            Group group = groups.get(next);
            if (!isModifier(group) && !isTaken(group)) {
                notes.leftOut("line", group, "not a group that is known here; left out");
            }
        }
    }

    private boolean isTaken(Group group) {
        if (upToWeather.stream().anyMatch(reader -> reader.take(group))) {
            return true;
        }
        boolean taken = fromCloudOn.stream().anyMatch(reader -> reader.take(group));
        if (taken) {
            order.reachCloud();
        }
        return taken;
    }

    private void readRemarks() {
        while (next < groups.size() && !isNext(REMARKS)) {
            next++;
        }
        for (; next < groups.size(); next++) {
            temperatures.takeRemark(groups.get(next));
        }
    }

    private ReportContent content(ReportHead head, boolean nil) {
        Map<ReportElement, Absence> absences = new EnumMap<>(ReportElement.class);
        note(absences, ReportElement.TIME, head.time());
        note(absences, ReportElement.WIND, wind.wind());
        note(absences, ReportElement.VISIBILITY, visibility.visibility());
        note(absences, ReportElement.PRESENT_WEATHER, weather.weather().isEmpty() ? null : weather);
        note(absences, ReportElement.CLOUD, cloud.sky() == Sky.NOT_REPORTED ? null : cloud);
        note(absences, ReportElement.VERTICAL_VISIBILITY, cloud.verticalVisibility());
        note(absences, ReportElement.TEMPERATURE, temperatures.temperature());
        note(absences, ReportElement.DEW_POINT, temperatures.dewPoint());
        note(absences, ReportElement.QNH, qnh.qnh());
        return new ReportContent(
                head,
                automatic,
                corrected,
                nil,
                wind.wind(),
                visibility.visibility(),
                List.copyOf(weather.weather()),
                cloud.sky(),
                List.copyOf(cloud.layers()),
                cloud.verticalVisibility(),
                temperatures.temperature(),
                temperatures.dewPoint(),
                qnh.qnh(),
                List.copyOf(others.groups()),
                absences,
                notes.problems());
    }

    private void note(
            Map<ReportElement, Absence> absences, ReportElement element, @Nullable Object told) {
        if (told == null) {
            absences.put(element, notes.absence(element));
        }
    }
}
