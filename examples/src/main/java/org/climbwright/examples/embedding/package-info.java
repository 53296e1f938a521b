/** The library inside another program: a loop, JSON, a linked image. */
@NullMarked
package org.climbwright.examples.embedding;

import org.jspecify.annotations.NullMarked;
