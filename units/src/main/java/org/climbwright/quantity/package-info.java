/**
 * What the semantic values share, and the error of a model asked outside its range.
 *
 * <p>The values themselves lie one package deeper: {@code altitude}, {@code speed}, {@code
 * pressure}, {@code temperature}, {@code humidity}, {@code path}. No method takes or returns null.
 */
@NullMarked
package org.climbwright.quantity;

import org.jspecify.annotations.NullMarked;
