/**
 * Observed air: balloon soundings read from open formats, as an atmosphere and as winds.
 *
 * <p>Start at {@link org.climbwright.sounding.SoundingReader}. What a file does not hold is not
 * known here: nothing outside the observed levels is made up. Heights are geopotential above mean
 * sea level. No method takes or returns null.
 */
@NullMarked
package org.climbwright.sounding;

import org.jspecify.annotations.NullMarked;
