/** What the programs have in common. */
@NullMarked
package org.climbwright.examples;

import org.jspecify.annotations.NullMarked;
