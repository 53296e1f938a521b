/**
 * Winds: a plug of their own beside the air, with levels and a range of their own.
 *
 * <p>Start at {@link org.climbwright.atmosphere.wind.Winds}; one {@link
 * org.climbwright.atmosphere.wind.Wind} is two components. Directions are degrees true, from where
 * the wind blows. No method takes or returns null; a component that is NaN is not known.
 */
@NullMarked
package org.climbwright.atmosphere.wind;

import org.jspecify.annotations.NullMarked;
