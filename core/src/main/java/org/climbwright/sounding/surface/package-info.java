/**
 * The air at an aerodrome as its weather report tells it: METAR and SPECI, read group by group.
 *
 * <p>Start at {@link org.climbwright.sounding.surface.SurfaceReportReader}. A report gives the
 * lowest point of a climb: QNH, temperature, dew point, wind, cloud above the aerodrome. What it
 * does not tell is empty here and has a reason, see {@link
 * org.climbwright.sounding.surface.SurfaceReport#whyMissing}; nothing is filled in. Heights count
 * from the aerodrome, directions from true north. No method takes or returns null.
 */
@NullMarked
package org.climbwright.sounding.surface;

import org.jspecify.annotations.NullMarked;
