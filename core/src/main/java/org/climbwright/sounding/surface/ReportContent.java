package org.climbwright.sounding.surface;

import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import org.climbwright.quantity.altitude.Height;
import org.climbwright.quantity.temperature.DewPoint;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.sounding.ReadingProblem;
import org.jspecify.annotations.Nullable;

/** What the text of a report says; null for what it does not tell. */
record ReportContent(
        ReportHead head,
        boolean automatic,
        boolean corrected,
        boolean nil,
        @Nullable SurfaceWind wind,
        @Nullable Visibility visibility,
        List<String> weather,
        Sky sky,
        List<CloudLayer> layers,
        @Nullable Height verticalVisibility,
        @Nullable StaticAirTemperature temperature,
        @Nullable DewPoint dewPoint,
        @Nullable ReportedQnh qnh,
        List<String> others,
        Map<ReportElement, Absence> absences,
        List<ReadingProblem> problems) {

    /** Who reports, and of when. */
    record ReportHead(String station, int dayOfMonth, @Nullable LocalTime time) {}
}
