/**
 * Gradients and surfaces of departure procedures by both published systems, obstacles against them,
 * and the gradients of certification, gross and net.
 *
 * <p>Start at {@link org.climbwright.gradient.procedure.DepartureCriteria}. Heights count from the
 * elevation of the departure end of the runway. No method takes or returns null.
 *
 * <p>Limits of use: for study and simulation. These are figures that criteria and rules name, not
 * the criteria: the published procedure, the flight manual, the operator's procedures, local
 * regulations and licensed practice decide.
 */
@NullMarked
package org.climbwright.gradient.procedure;

import org.jspecify.annotations.NullMarked;
