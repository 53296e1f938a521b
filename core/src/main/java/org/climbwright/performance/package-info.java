/**
 * How an aeroplane climbs in some air: rate, angle, acceleration, ceilings and fuel at one point.
 *
 * <p>An {@link org.climbwright.performance.Aeroplane} is a plug: drag, thrust and fuel flow, and
 * what limits it. A {@link org.climbwright.performance.ClimbAir} is the air and the wind as a climb
 * along a track feels them. {@link org.climbwright.performance.ClimbBalance} is the balance of
 * forces of both. {@link org.climbwright.performance.ClimbConditions} put an aeroplane into an air
 * and tell a {@link org.climbwright.performance.ClimbPoint}. The climb as a whole, integrated, is
 * the next room.
 */
@NullMarked
package org.climbwright.performance;

import org.jspecify.annotations.NullMarked;
