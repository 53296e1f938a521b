/** Figures of the documentation, drawn by the library and compared with the files by a test. */
@NullMarked
package org.climbwright.examples.figure;

import org.jspecify.annotations.NullMarked;
