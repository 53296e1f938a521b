package org.climbwright.sounding.surface;

/** What a report can tell, or leave untold with a reason. */
public enum ReportElement {
    /** Day of the month and time of the observation. */
    TIME("time"),
    /** Wind at the surface. */
    WIND("wind"),
    /** Prevailing visibility. */
    VISIBILITY("visibility"),
    /** Present weather; a report without such a group names none. */
    PRESENT_WEATHER("present weather"),
    /** Cloud, or a statement that there is none of some kind. */
    CLOUD("cloud"),
    /** How far one sees upwards where the sky is obscured. */
    VERTICAL_VISIBILITY("vertical visibility"),
    /** Air temperature. */
    TEMPERATURE("temperature"),
    /** Dew point. */
    DEW_POINT("dew point"),
    /** Altimeter setting QNH. */
    QNH("QNH");

    private final String words;

    ReportElement(String words) {
        this.words = words;
    }

    /**
     * Returns the element in words.
     *
     * @return a text such as {@code "dew point"}
     */
    @Override
    public String toString() {
        return words;
    }
}
