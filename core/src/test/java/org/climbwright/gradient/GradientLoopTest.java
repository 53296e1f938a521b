package org.climbwright.gradient;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.management.ManagementFactory;
import org.climbwright.gradient.leveling.CaptureLaw;
import org.climbwright.gradient.leveling.LevelOff;
import org.climbwright.gradient.procedure.NetFlightPath;
import org.climbwright.gradient.procedure.ObstacleClearance;
import org.climbwright.gradient.restriction.AltitudeRestriction;
import org.climbwright.gradient.restriction.ClimbRequirement;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Functions of plain numbers about gradients, in a loop")
class GradientLoopTest {
    private static final double RADIUS = 6371008.8;

    /** How many functions {@link #all} asks. */
    private static final int ASKED = 35;

    @Test
    @DisplayName("make no objects, each of them")
    void noGarbage() {
        com.sun.management.ThreadMXBean thread =
                (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        double sum = loop(20_000);
        long id = Thread.currentThread().getId();
        long before = thread.getThreadAllocatedBytes(id);
        sum += loop(200_000);
        long made = thread.getThreadAllocatedBytes(id) - before;
        assertThat(sum).isNotNaN();
        assertThat(made).isLessThan(10_000); // an object in each round would be 3 MB
    }

    @Test
    @DisplayName("are all asked here: all that take and give doubles alone")
    void allOfThem() {
        long functions =
                new ClassFileImporter()
                                .withImportOption(new ImportOption.DoNotIncludeTests())
                                .importPackages("org.climbwright.gradient")
                                .stream()
                                .filter(type -> type.getModifiers().contains(JavaModifier.PUBLIC))
                                .flatMap(type -> type.getMethods().stream())
                                .filter(
                                        method ->
                                                method.getModifiers().contains(JavaModifier.PUBLIC))
                                .filter(
                                        method ->
                                                method.getModifiers().contains(JavaModifier.STATIC))
                                .filter(
                                        method ->
                                                method.getRawReturnType()
                                                        .isEquivalentTo(double.class))
                                .filter(
                                        method ->
                                                method.getRawParameterTypes().stream()
                                                        .allMatch(
                                                                type ->
                                                                        type.isEquivalentTo(
                                                                                double.class)))
                                .count();
        assertThat(functions).isEqualTo(ASKED);
    }

    private static double loop(int rounds) {
        double sum = 0.0;
        for (int i = 0; i < rounds; i++) {
            sum += all(0.03 + 1e-8 * i);
        }
        return sum;
    }

    private static double all(double g) {
        double angles =
                ClimbAngles.angle(g)
                        + ClimbAngles.gradient(g)
                        + ClimbAngles.gradientFromSine(g)
                        + ClimbAngles.sine(g)
                        + ClimbAngles.alongPath(1e4, g)
                        + ClimbAngles.rateAlongPath(80.0, g);
        double rates =
                ClimbGradient.required(1000.0 * g, 1e4)
                        + ClimbGradient.rate(g, 80.0)
                        + ClimbGradient.gradient(100.0 * g, 80.0)
                        + ClimbGradient.heightGained(g, 1e4)
                        + ClimbGradient.distanceFor(1000.0, g)
                        + ClimbGradient.requiredRate(1000.0 * g, 1e4, 80.0)
                        + ClimbGradient.instrumentRate(100.0 * g, 3000.0, 250.0)
                        + RoundedUp.steps(g, 0.01)
                        + RoundedUp.of(g, 0.01);
        double ground =
                EarthCurvature.straightLineHeight(g, 1e4, RADIUS)
                        + EarthCurvature.tangentHeight(1e5 * g, RADIUS)
                        + EarthCurvature.approximateTangentHeight(1e5 * g, RADIUS)
                        + WindGradients.overGround(g, 100.0, -10.0, 5.0)
                        + WindGradients.groundSpeed(g, 100.0, -10.0, 5.0)
                        + WindGradients.throughAir(g, 100.0, -10.0, 5.0);
        double procedure =
                NetFlightPath.after(100.0, 1000.0 * g, 1000.0, 0.008)
                        + ObstacleClearance.usGradient(1000.0 * g, 1e4)
                        + ObstacleClearance.pansOpsGradient(1000.0 * g, 1e4)
                        + ObstacleClearance.usSurface(g)
                        + ObstacleClearance.pansOpsSurface(g);
        double level =
                LevelOff.heightToReduce(200.0 * g, 2.0, 0.5)
                        + LevelOff.timeToReduce(200.0 * g, 2.0, 0.5)
                        + LevelOff.leadByPercent(200.0 * g, 10.0)
                        + LevelOff.decelerationByPercent(200.0 * g, 10.0)
                        + CaptureLaw.captureRate(1e4 * g, 10.0, 10.0, 7.6, 304.8, 0.5, 0.02)
                        + CaptureLaw.largestRate(1e4 * g, 7.6, 304.8, 0.5, 0.02);
        double restriction =
                AltitudeRestriction.margin(1e5 * g, 2000.0, 4000.0)
                        + ClimbRequirement.gradient(1e4 * g, 4000.0, 1.02, 1e5)
                        + ClimbRequirement.instrumentRate(1e4 * g, 4000.0, 1e5, 120.0);
        return angles + rates + ground + procedure + level + restriction;
    }
}
