package org.climbwright.sounding.surface;

/** Knows the groups of one element. */
interface GroupReader {
    /**
     * Takes a group if it is meant for this element, legible or not; tells whether it was. The
     * first legible group stays.
     */
    boolean take(Group group);
}
