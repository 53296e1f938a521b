/**
 * What is to be briefed: the climb that somebody means to fly, part by part.
 *
 * <p>Start at {@link org.climbwright.briefing.plan.ClimbPlan}. Settings, thresholds and speeds are
 * the caller's; nothing is computed here but what a part means on the QNH of the day. No method
 * takes or returns null.
 */
@NullMarked
package org.climbwright.briefing.plan;

import org.jspecify.annotations.NullMarked;
