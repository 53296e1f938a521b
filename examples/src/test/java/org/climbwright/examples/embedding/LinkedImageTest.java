package org.climbwright.examples.embedding;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("An image linked of the library's modules")
class LinkedImageTest {
    @TempDir private Path folder;

    @Test
    @DisplayName("answers by its launcher, and holds neither Commons Math nor a compiler")
    void links() throws ReflectiveOperationException, IOException {
        Path image = folder.resolve("image");
        assertThat(Printed.by(LinkedImage.class, image.toString()))
                .isEqualTo(
                        "M0.7819, CAS 290.0 kn, TAS 458.8 kn\n458.8 kn\nlinked into "
                                + image
                                + "\n");
        assertThat(Files.readString(image.resolve("release")))
                .contains("org.climbwright.core", "org.climbwright.units", "tech.units.indriya")
                .doesNotContain("commons.math3", "jdk.compiler", "java.desktop");
    }
}
