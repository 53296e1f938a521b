/**
 * The air in the cabin as it flows: valve, leak and hole, a cabin model that steps in time, what a
 * failure does, and how long a decompression takes.
 *
 * <p>Start at {@link org.climbwright.cabin.dynamics.CabinModel} for a loop and at {@link
 * org.climbwright.cabin.dynamics.CabinFailureStudy} for a whole flight. The cabin is one volume of
 * a perfect gas, flows are those of a steady orifice, discharge coefficients are part of the areas.
 * No method takes or returns null.
 *
 * <p>Limits of use: for study and simulation; not for events shorter than half a second, where
 * waves count, nor for holes that are large beside the cabin's cross-section. Checklists and memory
 * items are the operator's; the flight manual, the operator's procedures, local regulations and
 * licensed practice decide.
 */
@NullMarked
package org.climbwright.cabin.dynamics;

import org.jspecify.annotations.NullMarked;
