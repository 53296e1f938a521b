/**
 * The last thousand feet of a climb or a descent: the rates that rules allow there, how early to
 * reduce, and the rate to fly from one moment to the next.
 *
 * <p>Start at {@link org.climbwright.gradient.leveling.LevelOffPlan}. Heights to go are differences
 * of two readings on the same altimeter setting, {@code level.minus(now)}; the types do not let two
 * settings be mixed. Rates are the instrument's. No method takes or returns null.
 *
 * <p>Limits of use: for study and simulation. The flight manual, the operator's procedures, the
 * clearance, local regulations and licensed practice decide.
 */
@NullMarked
package org.climbwright.gradient.leveling;

import org.jspecify.annotations.NullMarked;
