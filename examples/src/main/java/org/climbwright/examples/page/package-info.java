/**
 * A briefing as one page that needs nothing else: no network, no other file.
 *
 * <p>A template, the briefing's JSON within it, and scripts that draw the picture and write the
 * tables from that JSON. They scale and round for display; no formula stands here.
 */
@NullMarked
package org.climbwright.examples.page;

import org.jspecify.annotations.NullMarked;
