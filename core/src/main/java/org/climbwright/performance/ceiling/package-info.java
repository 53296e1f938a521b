/**
 * How high an aeroplane can climb: by its certificate, by thrust, by buffet, and with an engine
 * out.
 *
 * <p>Start at {@link org.climbwright.performance.ceiling.MaximumLevel}. Levels are pressure
 * altitudes; the mass is taken as constant on the way up. No method takes or returns null.
 */
@NullMarked
package org.climbwright.performance.ceiling;

import org.jspecify.annotations.NullMarked;
