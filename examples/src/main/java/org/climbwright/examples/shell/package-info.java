/** JShell with the library at hand: imports, helpers to explore with, and a greeting. */
@NullMarked
package org.climbwright.examples.shell;

import org.jspecify.annotations.NullMarked;
