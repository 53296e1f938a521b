/**
 * The main job: a climb briefed through an observed sounding, as text, CSV or JSON.
 *
 * <p>Reading a scenario, asking the library, writing what it answers; no formula stands here.
 */
@NullMarked
package org.climbwright.examples.briefing;

import org.jspecify.annotations.NullMarked;
