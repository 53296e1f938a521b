/**
 * Whether a climb comes over the top of a cloud ahead, and by how much.
 *
 * <p>Start at {@link org.climbwright.gradient.cloudtop.CloudTop}. Heights are true altitudes;
 * distances are over the ground from where the climb begins. No method takes or returns null.
 *
 * <p>Limits of use: for study and simulation. Whether a cloud may be overflown, and by what margin,
 * the operator's procedures, the flight manual, local regulations and licensed practice decide;
 * going round is not looked at here.
 */
@NullMarked
package org.climbwright.gradient.cloudtop;

import org.jspecify.annotations.NullMarked;
