/**
 * What the notebooks in {@code notebooks/} need: a kernel that runs their cells in JShell, a chart
 * to show, and the program that runs them from top to bottom and compares.
 *
 * <p>Start at {@link RunNotebooks}.
 */
@NullMarked
package org.climbwright.examples.notebook;

import org.jspecify.annotations.NullMarked;
