/**
 * Where a number with a unit becomes a value: names, ranges and text, and the way to javax.measure.
 *
 * <p>Not exported: the value types are the doors, and this is the hinge they share.
 */
@NullMarked
package org.climbwright.quantity.edge;

import org.jspecify.annotations.NullMarked;
