package org.climbwright.sounding.surface;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.climbwright.sounding.ReadingProblem;
import org.jspecify.annotations.Nullable;

/** Where the readers of groups note what a report does not tell, and what they could not use. */
final class Notes {
    private final List<ReadingProblem> problems = new ArrayList<>();
    private final Map<ReportElement, Absence> absences = new EnumMap<>(ReportElement.class);

    /** The report itself says that it does not know. */
    void reportedMissing(ReportElement element, Group group) {
        absences.putIfAbsent(
                element,
                new Absence(
                        element,
                        Absence.Cause.REPORTED_MISSING,
                        group.text(),
                        "reported as missing"));
    }

    /** A group meant for these elements cannot be used. */
    void notUsable(Group group, String reason, ReportElement... elements) {
        leftOut(elements[0].toString(), group, reason + "; taken as missing");
        for (ReportElement element : elements) {
            absences.putIfAbsent(
                    element, new Absence(element, Absence.Cause.NOT_USABLE, group.text(), reason));
        }
    }

    /** What a group tells of an element; null if it cannot be used. */
    <T> @Nullable T legible(ReportElement element, Group group, Function<String, T> parse) {
        return legible(element, group, group.text(), parse);
    }

    /** What a part of a group tells of an element; null if it cannot be used. */
    <T> @Nullable T legible(
            ReportElement element, Group group, String part, Function<String, T> parse) {
        try {
            return parse.apply(part);
        } catch (IllegalArgumentException refusal) {
            // a problem has the group beside its reason
            String reason = String.valueOf(refusal.getMessage()).replace(": \"" + part + "\"", "");
            notUsable(group, reason, element);
            return null;
        }
    }

    /** A group was left out, and what it is meant for is known or nobody knows what it is. */
    void leftOut(String field, Group group, String reason) {
        problems.add(new ReadingProblem(group.line(), field, group.text(), reason));
    }

    /**
     * Whether an earlier group settled an element: it told it, or told that nobody knows it. Then
     * this one is noted and not to be used.
     */
    boolean isSettled(ReportElement element, @Nullable Object told, Group group) {
        if (told != null) {
            second(element, group);
        } else if (isReportedMissing(element)) {
            reportedBefore(element, group);
        }
        return told != null || isReportedMissing(element);
    }

    boolean isReportedMissing(ReportElement element) {
        return absence(element).cause() == Absence.Cause.REPORTED_MISSING;
    }

    /** A group for an element that the report does not know, by its own words. */
    void reportedBefore(ReportElement element, Group group) {
        leftOut(element.toString(), group, "reported as missing before; left out");
    }

    /** A legible group, but an earlier one has told the element. */
    void second(ReportElement element, Group group) {
        leftOut(element.toString(), group, "a second " + element + "; the first stays");
    }

    Absence absence(ReportElement element) {
        return absences.getOrDefault(element, Absence.ofGroup(element));
    }

    List<ReadingProblem> problems() {
        return List.copyOf(problems);
    }
}
