package org.climbwright.examples.briefing;

import java.io.PrintStream;
import java.util.function.Supplier;
import org.climbwright.briefing.plan.Aerodrome;
import org.climbwright.sounding.ReadingProblem;
import org.climbwright.sounding.Sounding;
import org.climbwright.sounding.surface.ReportedQnh;
import org.climbwright.sounding.surface.SurfaceReport;
import org.climbwright.sounding.surface.SurfaceReportReader;

/** The weather report of the aerodrome, as the option gives it. */
record ReportedAir(SurfaceReport report) {
    static ReportedAir of(String text, PrintStream err) {
        SurfaceReport report = told(() -> SurfaceReportReader.parse(text));
        for (ReadingProblem problem : report.problems()) {
            err.println("report: " + problem);
        }
        return new ReportedAir(report);
    }

    /** Station and time, for the heading. */
    String name() {
        return report.station() + report.timeUtc().map(time -> " " + time + " UTC").orElse("");
    }

    /** An ascent that begins with the report. */
    Sounding under(Sounding sounding, Aerodrome aerodrome) {
        return told(() -> report.joinedWith(sounding, aerodrome.elevation()));
    }

    /** The aerodrome on the QNH of the report, which {@link #under} has found to be there. */
    Aerodrome on(Aerodrome aerodrome) {
        return new Aerodrome(
                aerodrome.name(),
                aerodrome.elevation(),
                aerodrome.transitionAltitude(),
                report.qnh().map(ReportedQnh::setting));
    }

    private static <T> T told(Supplier<T> answer) {
        try {
            return answer.get();
        } catch (IllegalArgumentException | IllegalStateException refused) {
            throw new IllegalArgumentException("--report: " + refused.getMessage(), refused);
        }
    }
}
