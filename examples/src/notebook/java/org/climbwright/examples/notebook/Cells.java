package org.climbwright.examples.notebook;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import jdk.jshell.EvalException;
import jdk.jshell.JShell;
import jdk.jshell.JShellException;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;
import jdk.jshell.execution.LocalExecutionControl;
import jdk.jshell.spi.ExecutionControl;
import jdk.jshell.spi.ExecutionControlProvider;
import jdk.jshell.spi.ExecutionEnv;

/** JShell in this process, so that what a cell is worth can be shown as the object it is. */
final class Cells {
    private final Local local = new Local();
    private final JShell shell =
            JShell.builder().executionEngine(new InProcess(local), null).build();

    Cells() {
        shell.addToClasspath(System.getProperty("java.class.path"));
        run("import java.util.*; import java.util.function.*; import java.util.stream.*;");
    }

    /**
     * Runs a cell, snippet by snippet.
     *
     * @return what its last snippet is worth, if that is an expression; else null
     */
    Object run(String source) {
        Object value = null;
        String rest = source;
        while (!rest.isBlank()) {
            CompletionInfo next = shell.sourceCodeAnalysis().analyzeCompletion(rest);
            if (!next.completeness().isComplete()) {
                throw new IllegalArgumentException("not a whole statement: " + rest.strip());
            }
            value = null;
            for (SnippetEvent event : shell.eval(next.source())) {
                value = valueOf(event);
            }
            rest = next.remaining();
        }
        return value;
    }

    private Object valueOf(SnippetEvent event) {
        Snippet snippet = event.snippet();
        if (event.exception() != null) {
            throw new IllegalStateException(told(event.exception()), event.exception());
        }
        if (event.causeSnippet() == null && event.status() == Snippet.Status.REJECTED) {
            List<String> faults =
                    shell.diagnostics(snippet).map(fault -> fault.getMessage(Locale.ROOT)).toList();
            throw new IllegalArgumentException(
                    String.join("\n", faults) + "\n" + snippet.source().strip());
        }
        boolean isShown =
                snippet.kind() == Snippet.Kind.EXPRESSION
                        || snippet.subKind() == Snippet.SubKind.TEMP_VAR_EXPRESSION_SUBKIND;
        return isShown && event.value() != null && !event.value().isEmpty() ? local.last : null;
    }

    private static String told(JShellException problem) {
        return problem instanceof EvalException thrown
                ? thrown.getExceptionClassName() + ": " + thrown.getMessage()
                : problem.toString();
    }

    boolean isComplete(String source) {
        return shell.sourceCodeAnalysis().analyzeCompletion(source).completeness().isComplete();
    }

    List<String> complete(String source, int at, int[] anchor) {
        return shell.sourceCodeAnalysis().completionSuggestions(source, at, anchor).stream()
                .map(SourceCodeAnalysis.Suggestion::continuation)
                .distinct()
                .toList();
    }

    Optional<String> inspect(String source, int at) {
        return shell.sourceCodeAnalysis().documentation(source, at, false).stream()
                .map(SourceCodeAnalysis.Documentation::signature)
                .reduce((above, below) -> above + "\n" + below);
    }

    /** Keeps the value itself, of which JShell hands on a text only. */
    private static final class Local extends LocalExecutionControl {
        private Object last;

        @Override
        protected String invoke(Method cell) throws Exception {
            try {
                last = cell.invoke(null);
            } catch (InvocationTargetException thrown) {
                throw thrown.getCause() instanceof Exception problem ? problem : thrown;
            }
            return valueString(last);
        }
    }

    private record InProcess(Local local) implements ExecutionControlProvider {
        @Override
        public String name() {
            return "in this process";
        }

        @Override
        public ExecutionControl generate(ExecutionEnv env, Map<String, String> parameters) {
            return local;
        }
    }
}
