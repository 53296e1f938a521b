package org.climbwright;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringWriter;
import java.net.URI;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.tools.Diagnostic;
import javax.tools.DiagnosticCollector;
import javax.tools.ForwardingJavaFileManager;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileManager;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** A few lines of Java, compiled in memory against the class path of the tests. */
public final class JavaSnippet {
    private static final JavaCompiler COMPILER = ToolProvider.getSystemJavaCompiler();

    private final Map<String, ByteArrayOutputStream> classes = new HashMap<>();
    private final List<String> errors;

    private JavaSnippet(String className, String source) throws IOException {
        DiagnosticCollector<JavaFileObject> diagnostics = new DiagnosticCollector<>();
        try (StandardJavaFileManager files =
                        COMPILER.getStandardFileManager(diagnostics, null, null);
                JavaFileManager inMemory = new InMemory(files)) {
            String classPath = System.getProperty("java.class.path");
            COMPILER.getTask(
                            new StringWriter(),
                            inMemory,
                            diagnostics,
                            List.of("-classpath", classPath, "-proc:none", "-Xlint:none"),
                            null,
                            List.of(new Source(className, source)))
                    .call();
        }
        errors =
                diagnostics.getDiagnostics().stream()
                        .filter(found -> found.getKind() == Diagnostic.Kind.ERROR)
                        .map(found -> found.getCode() + ": " + found.getMessage(Locale.ROOT))
                        .toList();
    }

    /** Compiles a source file with one class in the unnamed package. */
    public static JavaSnippet compile(String className, String source) throws IOException {
        return new JavaSnippet(className, source);
    }

    /** The compiler's errors, each with its code and its words; empty if the lines compile. */
    public List<String> errors() {
        return errors;
    }

    /** Loads the class that was compiled. */
    public Class<?> load(String className) throws ClassNotFoundException {
        ClassLoader loader =
                new ClassLoader(JavaSnippet.class.getClassLoader()) {
                    @Override
                    protected Class<?> findClass(String name) {
                        byte[] bytes = classes.get(name).toByteArray();
                        return defineClass(name, bytes, 0, bytes.length);
                    }
                };
        return loader.loadClass(className);
    }

    private static final class Source extends SimpleJavaFileObject {
        private final String source;

        Source(String className, String source) {
            super(URI.create("memory:///" + className + ".java"), Kind.SOURCE);
            this.source = source;
        }

        @Override
        public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return source;
        }
    }

    private final class InMemory extends ForwardingJavaFileManager<JavaFileManager> {
        InMemory(JavaFileManager files) {
            super(files);
        }

        @Override
        public JavaFileObject getJavaFileForOutput(
                Location location,
                String className,
                JavaFileObject.Kind kind,
                javax.tools.FileObject sibling) {
            return new SimpleJavaFileObject(URI.create("memory:///" + className), kind) {
                @Override
                public OutputStream openOutputStream() {
                    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
                    classes.put(className, bytes);
                    return bytes;
                }
            };
        }
    }
}
