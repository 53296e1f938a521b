/**
 * Where a climb meets icing conditions, by the operational rules for engines and airframes, and
 * when protection is due.
 *
 * <p>Start at {@link org.climbwright.icing.ProtectionAdvice#along} or, for one point, {@link
 * org.climbwright.icing.IcingRule#at}. Limits of use: a rule tells when conditions are
 * <em>conducive</em> to icing, not whether ice forms; the flight manual, the operator's procedures
 * and what the crew sees decide. No method takes or returns null.
 */
@NullMarked
package org.climbwright.icing;

import org.jspecify.annotations.NullMarked;
