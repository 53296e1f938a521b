/**
 * Convection of a day: a parcel of air lifted through the air around it, the cloud and the updraft
 * that come of it at most, and evidence for keeping belts fastened.
 *
 * <p>Start at {@link org.climbwright.turbulence.convection.ParcelAscent}. Any atmosphere whose
 * humidity is known will do. Limits of use: the theory of a parcel that does not mix; forecasts,
 * radar, reports and the crew's eyes decide about thunderstorms. No method takes or returns null.
 */
@NullMarked
package org.climbwright.turbulence.convection;

import org.jspecify.annotations.NullMarked;
