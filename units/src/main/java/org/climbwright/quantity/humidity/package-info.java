/**
 * How much water vapour the air holds, and how near to saturation that is.
 *
 * <p>Start at {@link org.climbwright.quantity.humidity.RelativeHumidity}. The dew point and the
 * frost point are temperatures, and the vapour pressure is a pressure: they lie in those packages.
 * No method takes or returns null.
 */
@NullMarked
package org.climbwright.quantity.humidity;

import org.jspecify.annotations.NullMarked;
