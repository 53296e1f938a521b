package org.climbwright.examples;

import java.io.File;
import java.net.URI;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Where the classes of the running program are, whoever has started it. */
public final class ClassPath {
    private ClassPath() {}

    /**
     * Returns the class path.
     *
     * @return folders and jars in their order
     */
    public static List<Path> entries() {
        if (!(ClassPath.class.getClassLoader() instanceof URLClassLoader loader)) {
            return Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
                    .map(Path::of)
                    .toList();
        }
        List<Path> entries = new ArrayList<>(); // started by Maven, whose own path the property is
        for (URL url : loader.getURLs()) {
            entries.add(Path.of(URI.create(url.toString())));
        }
        return List.copyOf(entries);
    }
}
