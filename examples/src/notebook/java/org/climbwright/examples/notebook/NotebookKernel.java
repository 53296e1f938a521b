package org.climbwright.examples.notebook;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.util.List;
import org.dflib.jjava.jupyter.channels.JupyterConnection;
import org.dflib.jjava.jupyter.kernel.BaseKernel;
import org.dflib.jjava.jupyter.kernel.JupyterIO;
import org.dflib.jjava.jupyter.kernel.KernelConnectionProperties;
import org.dflib.jjava.jupyter.kernel.LanguageInfo;
import org.dflib.jjava.jupyter.kernel.ReplacementOptions;
import org.dflib.jjava.jupyter.kernel.comm.CommManager;
import org.dflib.jjava.jupyter.kernel.display.DisplayData;
import org.dflib.jjava.jupyter.kernel.display.Renderer;
import org.dflib.jjava.jupyter.kernel.magic.MagicsRegistry;
import org.dflib.jjava.jupyter.kernel.util.StringStyler;

/**
 * Runs the cells of a notebook, with the library on their class path. Jupyter starts it and hands
 * it the file that says where to talk.
 */
public final class NotebookKernel extends BaseKernel {
    /** The name by which notebooks ask for it. */
    static final String NAME = "climbwright";

    private final Cells cells = new Cells();

    private NotebookKernel() {
        super(
                NAME,
                Runtime.version().toString(),
                new LanguageInfo(
                        "java",
                        Integer.toString(Runtime.version().feature()),
                        "text/x-java-source",
                        ".jshell",
                        "java",
                        "text/x-java",
                        "script"),
                List.of(),
                null, // no history
                new JupyterIO(StandardCharsets.UTF_8),
                new CommManager(),
                new Renderer(),
                null, // a cell is Java and nothing else
                new MagicsRegistry(),
                false,
                new StringStyler("", "", "", line -> ""));
    }

    /**
     * Runs until Jupyter ends it.
     *
     * @param args the connection file
     * @throws IOException if it cannot be read
     * @throws GeneralSecurityException if this Java cannot sign messages
     */
    public static void main(String[] args) throws IOException, GeneralSecurityException {
        var connection =
                new JupyterConnection(
                        KernelConnectionProperties.parse(Files.readString(Path.of(args[0]))));
        new NotebookKernel().becomeHandlerForConnection(connection);
        connection.connect();
        connection.waitUntilClose();
    }

    /** Runs a cell and returns what its last line is worth, if anything. */
    @Override
    public Object evalRaw(String source) {
        Object value = cells.run(source);
        if (value instanceof Chart chart) {
            DisplayData picture = new DisplayData(chart.toString());
            picture.putSVG(chart.draw());
            return picture;
        }
        return value == null ? null : new DisplayData(value.toString());
    }

    @Override
    public List<String> formatError(Throwable problem) {
        return problem.toString().lines().toList(); // a stack through JShell says nothing of a cell
    }

    @Override
    public DisplayData inspect(String source, int at, boolean isDetailed) {
        return cells.inspect(source, at).map(DisplayData::new).orElse(null);
    }

    @Override
    public ReplacementOptions complete(String source, int at) {
        int[] anchor = {at};
        return new ReplacementOptions(cells.complete(source, at, anchor), anchor[0], at);
    }

    @Override
    public String isComplete(String source) {
        return cells.isComplete(source) ? IS_COMPLETE_YES : IS_COMPLETE_MAYBE;
    }
}
