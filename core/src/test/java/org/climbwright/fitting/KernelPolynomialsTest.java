package org.climbwright.fitting;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The polynomials of the kernels")
class KernelPolynomialsTest {
    @Test
    @DisplayName("are those that the program computes in 60 digits, but for line breaks")
    void asComputed() throws IOException {
        for (KernelPolynomials.SourceFile file : KernelPolynomials.files()) {
            String source = Files.readString(Path.of("src/main/java").resolve(file.path()));
            assertThat(plain(source)).as(file.path()).isEqualTo(plain(file.text()));
        }
    }

    private static String plain(String source) {
        return source.replaceAll("[\\s*]+", " ");
    }
}
