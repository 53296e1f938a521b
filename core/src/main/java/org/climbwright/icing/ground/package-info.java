/**
 * The operational rule for engine icing conditions on the ground.
 *
 * <p>Start at {@link org.climbwright.icing.ground.GroundIcingRule}. Limits of use: the flight
 * manual decides; a rule that is not met is not "no icing". No method takes or returns null.
 */
@NullMarked
package org.climbwright.icing.ground;

import org.jspecify.annotations.NullMarked;
