package org.climbwright.examples.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A figure of the documentation")
class FigureTest {
    @Test
    @DisplayName("of icing is the one that the library draws")
    void continuousMaximum() throws IOException {
        assertThat(Files.readString(Path.of("figures/continuous-maximum.svg")))
                .isEqualTo(ContinuousMaximumFigure.draw());
    }

    @Test
    @DisplayName("of a cabin that fails is the one that the library draws")
    void cabinFailure() throws IOException {
        assertThat(Files.readString(Path.of("figures/cabin-failure.svg")))
                .isEqualTo(CabinFailureFigure.draw());
    }

    @Test
    @DisplayName("of a climb is the one that the library draws")
    void climbProfile() throws IOException {
        assertThat(Files.readString(Path.of("figures/climb-profile.svg")))
                .isEqualTo(ClimbProfileFigure.draw());
    }
}
