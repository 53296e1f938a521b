/**
 * Formulas of air that check nothing, for loops over arrays here and in the rooms above.
 *
 * <p>Not exported: users have {@link org.climbwright.atmosphere.DryAir}, which checks.
 */
@NullMarked
package org.climbwright.atmosphere.kernel;

import org.jspecify.annotations.NullMarked;
