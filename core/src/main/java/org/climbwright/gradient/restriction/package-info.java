/**
 * Restrictions of a departure and a climb, as values, and whether a climb meets them.
 *
 * <p>Start at {@link org.climbwright.gradient.restriction.Restrictions}. A level is an altitude on
 * QNH or a flight level and stays what it is: only the QNH of the day makes the two comparable. A
 * restriction that cannot be met is an answer that says by how much; what is not known is never
 * met. No method takes or returns null.
 *
 * <p>Limits of use: for study and simulation, not for use in flight. The clearance and the
 * published procedure say what is restricted; the flight manual, the operator's procedures, local
 * regulations and licensed practice decide.
 */
@NullMarked
package org.climbwright.gradient.restriction;

import org.jspecify.annotations.NullMarked;
