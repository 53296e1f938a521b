package org.climbwright.sounding;

/** A level as it stands in a file, before it was held against its neighbours. */
record RawLevel(SourceLine line, SoundingLevel level) {}
