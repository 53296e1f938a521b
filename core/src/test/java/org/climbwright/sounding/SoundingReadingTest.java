package org.climbwright.sounding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.climbwright.testing.Streams;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("What a file gave")
class SoundingReadingTest {
    private final SoundingReading reading = Soundings.read(Soundings.IGRA_DATA);

    @ParameterizedTest(name = "\"{0}\"")
    @ValueSource(strings = {"2010-06-01T12", "2010-06-01T1"})
    @DisplayName("is asked for an ascent by its launch, or by the beginning of it")
    void byLaunch(String launch) {
        assertThat(reading.launchedAt(launch)).isSameAs(reading.soundings().get(1));
    }

    @Test
    @DisplayName("takes a launch told just so before one that only begins so")
    void exactBeforePrefix() {
        Sounding unknownHour = Sounding.of("X", "2010-06-01", List.of());
        Sounding midnight = Sounding.of("X", "2010-06-01T00", List.of());
        SoundingReading both = new SoundingReading(List.of(midnight, unknownHour), List.of());
        assertThat(both.launchedAt("2010-06-01")).isSameAs(unknownHour);
    }

    @Test
    @DisplayName("refuses a launch that fits two ascents, and lists them")
    void ambiguous() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> reading.launchedAt("2010-06-01"))
                .withMessage(
                        "launch must name one ascent of the file, but \"2010-06-01\" fits 2 of"
                                + " [2010-06-01T00, 2010-06-01T12, 2010-06-02T00]");
    }

    @Test
    @DisplayName("refuses a launch that fits none, and lists what there is")
    void none() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> reading.launchedAt("2010-06-03T00"))
                .withMessage(
                        "launch must name one ascent of the file, but \"2010-06-03T00\" fits 0 of"
                                + " [2010-06-01T00, 2010-06-01T12, 2010-06-02T00]");
    }

    @Test
    @DisplayName("cannot be changed, neither by its lists nor by those it was made of")
    void isImmutable() {
        List<Sounding> soundings = new ArrayList<>(reading.soundings());
        SoundingReading made = new SoundingReading(soundings, reading.problems());
        soundings.clear();
        assertThat(made.soundings()).hasSize(3);
        assertThat(made.soundings()).isUnmodifiable();
        assertThat(made.problems()).isUnmodifiable();
    }

    @Test
    @DisplayName("is an IOException if there is no such file")
    void noFile() {
        assertThatExceptionOfType(NoSuchFileException.class)
                .isThrownBy(() -> SoundingReader.read(Path.of("no-such-sounding.csv")));
    }

    @Test
    @DisplayName("tells a problem in one line, as its Javadoc shows")
    void problemAsText() {
        assertThat(new ReadingProblem(7, "TEMP", "-3x", "not a whole number; taken as missing"))
                .hasToString("line 7, TEMP \"-3x\": not a whole number; taken as missing");
    }

    @Test
    @DisplayName("goes through a stream and comes back with every number")
    void roundTrip() throws IOException {
        assertThat(reading.soundings().get(0).levels()).hasSize(158);
        assertThat(Streams.roundTrip(reading)).isEqualTo(reading);
    }
}
