/**
 * Everything along one climb, in the order in which it happens.
 *
 * <p>Start at {@link org.climbwright.briefing.ClimbBriefing}. Nothing is computed here that a lower
 * room computes; this room puts their answers in order. Limits of use stand in every briefing. No
 * method takes or returns null.
 */
@NullMarked
package org.climbwright.briefing;

import org.jspecify.annotations.NullMarked;
