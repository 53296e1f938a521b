package org.climbwright.sounding;

/** One ascent of an IGRA file, from its header on. */
final class IgraAscent {
    private final SourceLine headerLine;
    private final IgraHeader header;
    private final SoundingAssembly assembly;
    private int found;

    IgraAscent(SourceLine headerLine, String heightField) {
        this.headerLine = headerLine;
        this.header = IgraHeader.parse(headerLine.text());
        this.assembly = new SoundingAssembly("PRESS", heightField);
    }

    void add(SourceLine line, LevelFields fields) {
        found++;
        assembly.add(line, fields);
    }

    /** The ascent when its last level was added; a file may have lost some. */
    Sounding sounding() {
        if (found != header.levels()) {
            headerLine.note(
                    "line",
                    header.station() + " " + header.launch(),
                    header.levels() + " levels announced, but " + found + " found");
        }
        return assembly.inOrderOfFlight(header.station(), header.launch());
    }
}
