package org.climbwright.examples.briefing;

import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.climbwright.sounding.SoundingReader;
import org.climbwright.sounding.SoundingReading;

/** A sounding on disk. */
final class SoundingFile {
    private SoundingFile() {}

    static SoundingReading read(Path file) throws IOException {
        SoundingReading reading;
        try {
            reading = SoundingReader.read(file);
        } catch (NoSuchFileException missing) {
            throw new IOException("there is no sounding " + file, missing);
        } catch (IOException broken) {
            throw new IOException("the sounding " + file + " cannot be read", broken);
        }
        if (reading.soundings().isEmpty()) {
            throw new IOException(
                    "no sounding could be read from " + file + ": " + reading.problems());
        }
        return reading;
    }
}
