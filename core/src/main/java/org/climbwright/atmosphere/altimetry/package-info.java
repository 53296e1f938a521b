/**
 * What an altimeter makes of the air: settings, readings, transition, and cold days.
 *
 * <p>Start at {@link org.climbwright.atmosphere.altimetry.Altimetry}. Altitudes are geopotential
 * unless a name says otherwise; "published" is a height on a chart, "indicated" what the instrument
 * shows. No method takes or returns null.
 *
 * <p>Limits of use: settings, transition levels and corrections are those of the aeronautical
 * information, the operator's procedures and the controller.
 */
@NullMarked
package org.climbwright.atmosphere.altimetry;

import org.jspecify.annotations.NullMarked;
