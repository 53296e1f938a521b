/**
 * The cabin of a pressurised aeroplane on its climb: what its altitude, its rate and its
 * differential pressure should be, and what it means when they are not.
 *
 * <p>Start at {@link org.climbwright.cabin.CabinPlan}, the schedule and the limits of a flight, and
 * go on to {@link org.climbwright.cabin.ExpectedCabin}, the cabin along a climb, and {@link
 * org.climbwright.cabin.CabinCheck}, which holds readings against it. Cabin altitude is the
 * pressure altitude of the cabin's pressure; elevations of aerodromes become pressure altitudes by
 * the QNH. No method takes or returns null.
 *
 * <p>Limits of use: for study and simulation. Checklists and memory items are the operator's; the
 * flight manual, the operator's procedures, local regulations and licensed practice decide.
 */
@NullMarked
package org.climbwright.cabin;

import org.jspecify.annotations.NullMarked;
