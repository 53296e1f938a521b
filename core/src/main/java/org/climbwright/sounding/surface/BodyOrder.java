package org.climbwright.sounding.surface;

/**
 * How far the body of a report has come. Wind and visibility stand in front of cloud, temperature
 * and QNH: what looks like one of them farther back is something else.
 *
 * @source WMO-No. 306, Manual on Codes, Volume I.1, FM 15 METAR, order of the groups
 */
final class BodyOrder {
    private boolean cloudReached;

    /** Cloud, temperature or QNH has come. */
    void reachCloud() {
        cloudReached = true;
    }

    boolean hasReachedCloud() {
        return cloudReached;
    }
}
