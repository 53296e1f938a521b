package org.climbwright.examples.notebook;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.lang.ProcessBuilder.Redirect;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/**
 * Runs the notebooks from top to bottom, compares what they show with what they hold, and makes
 * pages of them: {@code mvn -q -Pnotebooks test-compile exec:exec} from the root.
 */
@Command(
        name = "notebooks",
        sortOptions = false,
        description = "Runs the notebooks and compares what they show with what they hold.")
public final class RunNotebooks implements Callable<Integer> {
    private static final Path FOLDER = Path.of("notebooks");
    private static final Path TARGET = Path.of("target", "notebooks");

    /** A page that needs no network, with pictures as they are: Jupyter's own loses them. */
    private static final String PAGE =
            """
            {% extends 'lab/index.html.j2' %}
            {% block html_head_js_requirejs %}{% endblock %}
            {% block html_head_js_mathjax %}{% endblock %}
            {% block data_svg scoped %}{{ output.data['image/svg+xml'] }}{% endblock %}
            """;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "show this help")
    @SuppressWarnings("unused") // picocli reads it
    private boolean help;

    @Option(names = "--write", description = "put what they show into the files, anew")
    private boolean isWriting;

    @Option(
            names = "--python",
            paramLabel = "FILE",
            defaultValue = "/usr/bin/python3",
            description = "the Python that has Jupyter (default: ${DEFAULT-VALUE})")
    private String python = "/usr/bin/python3";

    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it
    private CommandSpec spec;

    private RunNotebooks() {}

    /**
     * Runs the program.
     *
     * @param args see its help
     */
    public static void main(String[] args) {
        System.exit(new CommandLine(new RunNotebooks()).execute(args));
    }

    @Override
    public Integer call() throws IOException, InterruptedException {
        PrintWriter out = spec.commandLine().getOut();
        Files.createDirectories(TARGET);
        if (python("-c", "import nbclient, nbconvert") != 0) {
            out.println(
                    "The notebooks need Jupyter, which "
                            + python
                            + " does not have: on Debian, install jupyter-nbconvert and"
                            + " python3-nbclient.");
            return 1;
        }
        tellJupyter();
        List<Path> files;
        try (Stream<Path> all = Files.list(FOLDER)) {
            files = all.filter(file -> file.toString().endsWith(".ipynb")).sorted().toList();
        }
        boolean isGood = !files.isEmpty();
        for (Path file : files) {
            List<String> problems = run(file);
            out.println(file + ": " + (problems.isEmpty() ? "as it should be" : problems.get(0)));
            problems.stream().skip(1).forEach(out::println);
            isGood &= problems.isEmpty();
        }
        return isGood ? 0 : 1;
    }

    private List<String> run(Path file) throws IOException, InterruptedException {
        Path result = TARGET.resolve(file.getFileName());
        String kernel = "--ExecutePreprocessor.kernel_name=" + NotebookKernel.NAME;
        if (convert("notebook", file, "--execute", kernel) != 0) {
            return List.of("a cell failed:", Files.readString(log()));
        }
        Notebook run = Notebook.read(result);
        if (isWriting) {
            run.write(file);
        }
        if (convert("html", result, "--template=" + NotebookKernel.NAME) != 0) {
            return List.of("no page could be made of it:", Files.readString(log()));
        }
        List<String> differences = Notebook.read(file).differencesFrom(run);
        if (differences.isEmpty()) {
            return List.of();
        }
        List<String> problems = new ArrayList<>();
        problems.add("not what it holds; if the new is right, run with --write and look at it");
        problems.addAll(differences);
        return problems;
    }

    private int convert(String to, Path file, String... more)
            throws IOException, InterruptedException {
        List<String> arguments = new ArrayList<>(List.of("-m", "nbconvert", "--to", to));
        arguments.addAll(List.of(more));
        arguments.addAll(List.of("--output-dir", TARGET.toString(), file.toString()));
        return python(arguments.toArray(String[]::new));
    }

    private int python(String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(python));
        command.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(command);
        builder.environment().put("JUPYTER_PATH", jupyter().toAbsolutePath().toString());
        builder.redirectErrorStream(true).redirectOutput(Redirect.to(log().toFile()));
        try {
            return builder.start().waitFor();
        } catch (IOException noPython) {
            return -1;
        }
    }

    private static Path jupyter() {
        return TARGET.resolve("jupyter");
    }

    private static Path log() {
        return TARGET.resolve("jupyter.log");
    }

    /** Tells Jupyter how to start the kernel, by this Java and class path, and how a page looks. */
    private static void tellJupyter() throws IOException {
        Path template = jupyter().resolve(Path.of("nbconvert", "templates", NotebookKernel.NAME));
        Files.createDirectories(template);
        Files.writeString(template.resolve("index.html.j2"), PAGE);
        Files.writeString(template.resolve("conf.json"), "{\"base_template\": \"lab\"}");
        Path folder = jupyter().resolve(Path.of("kernels", NotebookKernel.NAME));
        Files.createDirectories(folder);
        Map<String, Object> kernel =
                Map.of(
                        "argv",
                        List.of(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-Dslf4j.internal.verbosity=ERROR",
                                "-Dfile.encoding=UTF-8",
                                "-classpath",
                                System.getProperty("java.class.path"),
                                NotebookKernel.class.getName(),
                                "{connection_file}"),
                        "display_name",
                        "Java with Climbwright",
                        "language",
                        "java");
        new ObjectMapper().writeValue(folder.resolve("kernel.json").toFile(), kernel);
    }
}
