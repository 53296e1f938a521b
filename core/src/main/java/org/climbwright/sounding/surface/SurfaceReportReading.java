package org.climbwright.sounding.surface;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import org.climbwright.sounding.ReadingProblem;

/**
 * What a file of reports gave: every report, and a list of what could not be used.
 *
 * @param reports the reports in the order of the file
 * @param problems what was left out, in the order of the file, by its lines; empty for a flawless
 *     one
 */
public record SurfaceReportReading(List<SurfaceReport> reports, List<ReadingProblem> problems)
        implements Serializable {
    /**
     * Makes a result of lists that nobody can change.
     *
     * @param reports the reports
     * @param problems what was left out
     */
    public SurfaceReportReading {
        reports = List.copyOf(Objects.requireNonNull(reports, "reports"));
        problems = List.copyOf(Objects.requireNonNull(problems, "problems"));
    }
}
