package org.climbwright.sounding;

/**
 * One field of a line, as it stands there.
 *
 * @param name its name in the words of the format
 * @param text what stands there
 * @param number its number in the unit of the format; NaN when missing or illegible
 */
record Field(String name, String text, double number) {}
