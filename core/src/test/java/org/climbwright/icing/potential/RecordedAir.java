package org.climbwright.icing.potential;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.sounding.SoundingReader;
import org.climbwright.sounding.SoundingReading;

/** The air of the recorded soundings; ORIGIN.csv beside them says whose they are. */
final class RecordedAir {
    /** A warm layer over cold air, at Aberdeen, South Dakota. */
    static final String WARM_NOSE = "v72659_aberdeen_warmnose";

    private RecordedAir() {}

    static Atmosphere of(String sounding) {
        try (InputStream in =
                RecordedAir.class.getResourceAsStream("/sounding/" + sounding + ".csv")) {
            List<String> lines =
                    new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
            SoundingReading reading = SoundingReader.read(lines);
            assertThat(reading.soundings()).hasSize(1);
            return reading.soundings().get(0).atmosphere();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
