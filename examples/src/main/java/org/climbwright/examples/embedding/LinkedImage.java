package org.climbwright.examples.embedding;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.module.ModuleFinder;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.spi.ToolProvider;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.climbwright.examples.ClassPath;

/**
 * Compiles a small module that requires {@code org.climbwright.core}, links it with what it needs
 * and nothing else into an image that brings its own JVM, and runs the image.
 *
 * <p>Commons Math, which has no module descriptor and would make linking impossible, stays out:
 * only who asks for its integrators needs it.
 */
public final class LinkedImage {
    private static final String MODULE = "org.example.climb";

    private LinkedImage() {}

    /**
     * Links the image into a folder and prints what it answers.
     *
     * @param args the folder, which must not be there yet; without one, a temporary folder
     * @throws IOException if nothing can be written
     * @throws InterruptedException if the program is stopped
     */
    public static void main(String[] args) throws IOException, InterruptedException {
        Path folder =
                args.length > 0
                        ? Path.of(args[0])
                        : Files.createTempDirectory("climb").resolve("image");
        System.out.print(answer(link(folder)));
        System.out.println("linked into " + folder);
    }

    /** Compiles and links; returns the launcher. */
    static Path link(Path folder) throws IOException {
        Path classes = Files.createTempDirectory("climb-classes");
        try (Stream<Path> files = Files.walk(sources())) {
            List<String> java =
                    files.map(Path::toString).filter(file -> file.endsWith(".java")).toList();
            run(
                    "javac",
                    Stream.concat(
                            Stream.of(
                                    "--release",
                                    "17",
                                    "--module-path",
                                    modules(),
                                    "-d",
                                    classes.toString()),
                            java.stream()));
        }
        run(
                "jlink",
                Stream.of(
                        "--module-path",
                        classes + File.pathSeparator + modules(),
                        "--add-modules",
                        MODULE,
                        "--launcher",
                        "climb=" + MODULE + "/org.example.climb.Main",
                        "--strip-java-debug-attributes",
                        "--no-header-files",
                        "--no-man-pages",
                        "--output",
                        folder.toString()));
        return folder.resolve("bin").resolve("climb");
    }

    /** Runs the launcher; returns what it prints. */
    static String answer(Path launcher) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(launcher.toString()).redirectErrorStream(true).start();
        String printed =
                new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (process.waitFor() != 0) {
            throw new IllegalStateException("the image failed: " + printed);
        }
        return printed;
    }

    private static Path sources() {
        URL folder = LinkedImage.class.getResource("module");
        if (folder == null) {
            throw new IllegalStateException("the examples come with the sources of a module");
        }
        try {
            return Path.of(folder.toURI());
        } catch (URISyntaxException strange) {
            throw new IllegalStateException(strange);
        }
    }

    /** The entries of the class path that have a module descriptor: jlink takes no others. */
    private static String modules() {
        return ClassPath.entries().stream()
                .filter(Files::exists)
                .filter(LinkedImage::isDescribed)
                .map(Path::toString)
                .collect(Collectors.joining(File.pathSeparator));
    }

    private static boolean isDescribed(Path entry) {
        return ModuleFinder.of(entry).findAll().stream()
                .anyMatch(module -> !module.descriptor().isAutomatic());
    }

    private static void run(String tool, Stream<String> arguments) {
        int code =
                ToolProvider.findFirst(tool)
                        .orElseThrow(
                                () ->
                                        new IllegalStateException(
                                                tool + " comes with a JDK, and this is none"))
                        .run(System.out, System.err, arguments.toArray(String[]::new));
        if (code != 0) {
            throw new UncheckedIOException(new IOException(tool + " failed with code " + code));
        }
    }
}
