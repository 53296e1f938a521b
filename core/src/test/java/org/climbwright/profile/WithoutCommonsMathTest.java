package org.climbwright.profile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.climbwright.testing.ForkedJvm;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("On a module path without Commons Math")
class WithoutCommonsMathTest {
    @Test
    @DisplayName("a climb is flown, and the engine that needs it says so in one sentence")
    void modulePath() throws IOException, InterruptedException {
        ForkedJvm jvm =
                ForkedJvm.runInModuleWithout("commons-math3", ProgramWithoutCommonsMath.class);
        assertThat(jvm.output())
                .containsExactly(
                        "org.climbwright.core: level reached",
                        "this integration needs org.apache.commons:commons-math3, on the class path"
                                + " or on the module path with --add-modules commons.math3");
        assertThat(jvm.exitCode()).isZero();
    }
}
