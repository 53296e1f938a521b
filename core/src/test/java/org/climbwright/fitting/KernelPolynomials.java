package org.climbwright.fitting;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Writes the polynomials of the kernels into their source files, computed in 60 digits.
 *
 * <p>Run with the folder {@code core/src/main/java} as argument after a change of a domain or of a
 * constant; a test compares the files with what this program would write.
 */
public final class KernelPolynomials {
    private KernelPolynomials() {}

    /** Writes the files into the folder of sources that is the first argument. */
    public static void main(String[] arguments) throws IOException {
        for (SourceFile file : files()) {
            Files.writeString(Path.of(arguments[0]).resolve(file.path()), file.text());
        }
    }

    static List<SourceFile> files() {
        return List.of(
                file(
                        "atmosphere",
                        "StandardAirPolynomials",
                        "The polynomials of {@link StandardAirKernel}",
                        "ICAO Doc 7488/3, the formulas of {@link StandardAir}",
                        AirPolynomials.all()),
                file(
                        "airspeed",
                        "PitotPolynomials",
                        "The polynomials of {@link PitotTube}",
                        "the formulas of {@link PitotTube}",
                        PitotPolynomials.all()));
    }

    private static SourceFile file(
            String room, String name, String meaning, String source, List<Printed> parts) {
        List<String> head = new ArrayList<>();
        head.add("package org.climbwright." + room + ";\n\n");
        head.add(
                "/**\n * "
                        + meaning
                        + ", written by the program {@code KernelPolynomials} of the\n");
        head.add(" * tests in 60-digit arithmetic: change that, not this.\n *\n");
        head.add(
                " * <p>An error is the largest that the rounded coefficients leave, relative to"
                        + " what the\n");
        head.add(" * kernel computes. What rounding adds is for the kernel to tell.\n *\n");
        head.add(" * @source " + source + "\n */\n");
        head.add("final class " + name + " {\n");
        String constructor = "\n    private " + name + "() {}\n";
        String body = parts.parallelStream().map(Printed::source).collect(Collectors.joining("\n"));
        return new SourceFile(
                "org/climbwright/" + room + "/" + name + ".java",
                String.join("", head) + constructor.substring(1) + "\n" + body + "}\n");
    }

    record SourceFile(String path, String text) {}
}
