package org.climbwright.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.climbwright.testing.ForkedJvm;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Each JVM that the build runs on meets the digests that were once written down, so that they are
 * compared with each other as well. After a change of a figure on purpose, digests.csv says how to
 * take them anew.
 */
@DisplayName("Every function of doubles gives the same bits")
class SameBitsTest {
    private static final List<String> RECORDED = Table.rows(DigestTable.CSV);
    private static final int FEW = DigestProgram.CHECKPOINTS[0];
    private static final int SOME = DigestProgram.CHECKPOINTS[1];
    private static final int MANY = DigestProgram.CHECKPOINTS[2];

    /** A line is number, marks, level, method; the fourth level is the second compiler, C2. */
    private static final String COMPILED = "jit+compilation=debug";

    /** Waits for each compilation, so that what is compiled is also used. */
    private static final String AT_ONCE = "-Xbatch";

    @Test
    @DisplayName("and none is left out")
    void isComplete() {
        assertThat(RECORDED.stream().map(line -> line.split(",", -1)[0]).distinct())
                .containsExactlyInAnyOrderElementsOf(
                        AccuracyLedger.functions().stream()
                                .map(
                                        method ->
                                                method.getDeclaringClass().getSimpleName()
                                                        + "."
                                                        + method.getName())
                                .toList());
        assertThat(RECORDED)
                .hasSize(AccuracyLedger.functions().size() * DigestProgram.CHECKPOINTS.length);
    }

    @Test
    @DisplayName("as the JVM runs by itself, first interpreted, then compiled twice")
    void asItIs() throws Exception {
        ForkedJvm jvm = digests(MANY);
        assertThat(jvm.log()).anyMatch(SameBitsTest::isCompiledByC2);
    }

    @Test
    @DisplayName("interpreted")
    void interpreted() throws Exception {
        ForkedJvm jvm = digests(SOME, "-Xint");
        assertThat(jvm.log()).noneMatch(SameBitsTest::isCompiled);
    }

    @Test
    @DisplayName("compiled by the first compiler, C1")
    void byTheFirstCompiler() throws Exception {
        ForkedJvm jvm = digests(MANY, AT_ONCE, "-XX:TieredStopAtLevel=1");
        assertThat(jvm.log())
                .anyMatch(SameBitsTest::isCompiled)
                .noneMatch(SameBitsTest::isCompiledByC2);
    }

    @Test
    @DisplayName("compiled by the second compiler alone, C2")
    void byTheSecondCompiler() throws Exception {
        ForkedJvm jvm = digests(MANY, AT_ONCE, "-XX:-TieredCompilation");
        assertThat(jvm.log()).anyMatch(SameBitsTest::isCompiled);
    }

    @Test
    @DisplayName("on a processor that has no fused multiply-add")
    void withoutFma() throws Exception {
        digests(FEW, "-XX:+UnlockDiagnosticVMOptions", "-XX:-UseFMA");
    }

    private static boolean isCompiled(String line) {
        return line.contains("org.climbwright.");
    }

    private static boolean isCompiledByC2(String line) {
        return line.matches(" *[0-9]+[ %s!bn]+4 +org\\.climbwright\\..*");
    }

    private static ForkedJvm digests(int points, String... options)
            throws IOException, InterruptedException {
        ForkedJvm jvm =
                ForkedJvm.run(
                        List.of(options), COMPILED, DigestProgram.class, Integer.toString(points));
        assertThat(jvm.output())
                .containsExactlyElementsOf(
                        RECORDED.stream()
                                .filter(line -> Integer.parseInt(line.split(",", -1)[1]) <= points)
                                .toList());
        assertThat(jvm.exitCode()).isZero();
        return jvm;
    }
}
