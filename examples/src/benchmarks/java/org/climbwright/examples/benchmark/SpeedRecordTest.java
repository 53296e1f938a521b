package org.climbwright.examples.benchmark;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The record of speeds")
class SpeedRecordTest {
    @Test
    @DisplayName("begins with what is compared, also when it is new")
    void beginsWithWhatIsCompared() {
        assertThat(SpeedRecord.with("", 17, "fast\n"))
                .startsWith("# Speeds\n")
                .endsWith("\n\n## JDK 17\n\nfast\n");
    }

    @Test
    @DisplayName("replaces the section of one JDK and leaves the others, the newest first")
    void replacesOneSection() {
        String both = SpeedRecord.with(SpeedRecord.with("", 17, "slow"), 25, "fast");
        assertThat(both).endsWith("\n\n## JDK 25\n\nfast\n\n## JDK 17\n\nslow\n");
        assertThat(SpeedRecord.with(both, 17, "faster\n\n### a table\n"))
                .endsWith("\n\n## JDK 25\n\nfast\n\n## JDK 17\n\nfaster\n\n### a table\n")
                .doesNotContain("slow");
    }

    @Test
    @DisplayName("stays as it is when the same run is written twice")
    void staysAsItIs() {
        String once = SpeedRecord.with("", 17, "fast");
        assertThat(SpeedRecord.with(once, 17, "fast")).isEqualTo(once);
    }
}
