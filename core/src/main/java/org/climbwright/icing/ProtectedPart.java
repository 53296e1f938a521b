package org.climbwright.icing;

/**
 * What is to be kept free of ice. The two have rules of their own, which are never told as one: an
 * engine may need protection where an airframe does not, and the reverse.
 */
public enum ProtectedPart {
    /** Engines: intake, fan, probes. */
    ENGINE,
    /** Wings, tail, windows. */
    AIRFRAME
}
