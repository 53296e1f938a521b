/**
 * Where a climb meets icing conditions, by the operational rule for engine anti-ice.
 *
 * <p>Start at {@link org.climbwright.icing.IcingSpan#along}. Limits of use: the rule tells when
 * conditions are <em>conducive</em> to icing, not whether ice forms; the flight manual, the
 * operator's procedures and what the crew sees decide. No method takes or returns null.
 */
@NullMarked
package org.climbwright.icing;

import org.jspecify.annotations.NullMarked;
