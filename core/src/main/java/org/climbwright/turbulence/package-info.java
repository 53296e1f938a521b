/**
 * Turbulence in the climb: design gusts and the loads they make, speeds for rough air, categories
 * of turbulence, and wind shear with the Richardson number.
 *
 * <p>Start at {@link org.climbwright.turbulence.GustLoad} for what a gust does to an aeroplane, at
 * {@link org.climbwright.turbulence.WindShear} for what the air of a day may do. What is not known
 * comes back as an {@link org.climbwright.turbulence.Answer} with its reason. Limits of use: for
 * study; the flight manual, the operator's procedures and what the crew meets decide. No method
 * takes or returns null.
 */
@NullMarked
package org.climbwright.turbulence;

import org.jspecify.annotations.NullMarked;
