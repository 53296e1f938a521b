/** The code of the README, as a program that runs. */
@NullMarked
package org.climbwright.examples.readme;

import org.jspecify.annotations.NullMarked;
