package org.climbwright.examples.notebook;

import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A notebook file: its cells, and what they showed when they were run. */
final class Notebook {
    private static final ObjectMapper JSON = new ObjectMapper();

    private final JsonNode root;

    private Notebook(JsonNode root) {
        this.root = root;
    }

    static Notebook read(Path file) throws IOException {
        return new Notebook(JSON.readTree(file.toFile()));
    }

    /** Writes the notebook, without what changes from run to run. */
    void write(Path file) throws IOException {
        for (JsonNode cell : root.get("cells")) {
            ((ObjectNode) cell).set("metadata", JSON.createObjectNode());
        }
        ObjectNode kernel = JSON.createObjectNode();
        kernel.put("display_name", "Java with Climbwright");
        kernel.put("language", "java");
        kernel.put("name", NotebookKernel.NAME);
        ObjectNode metadata = JSON.createObjectNode();
        metadata.set("kernelspec", kernel);
        ((ObjectNode) root).set("metadata", metadata);
        DefaultIndenter indent = new DefaultIndenter(" ", "\n");
        DefaultPrettyPrinter printer =
                new DefaultPrettyPrinter(
                        Separators.createDefaultInstance()
                                .withObjectFieldValueSpacing(Separators.Spacing.AFTER));
        printer.indentArraysWith(indent);
        printer.indentObjectsWith(indent);
        Files.writeString(file, JSON.writer(printer).writeValueAsString(root) + "\n");
    }

    /** Tells where another run of the same cells shows something else; nothing if it does not. */
    List<String> differencesFrom(Notebook run) {
        List<String> differences = new ArrayList<>();
        JsonNode mine = root.get("cells");
        JsonNode its = run.root.get("cells");
        for (int i = 0; i < mine.size(); i++) {
            List<String> held = shown(mine.get(i));
            List<String> now = shown(its.get(i));
            if (!held.equals(now)) {
                differences.add("cell " + (i + 1) + " held\n" + held + "\nand now shows\n" + now);
            }
        }
        return differences;
    }

    /** What a cell shows, as text: each stream whole, each picture as it is written. */
    private static List<String> shown(JsonNode cell) {
        List<String> shown = new ArrayList<>();
        JsonNode outputs = cell.path("outputs");
        for (JsonNode output : outputs) {
            if (output.has("data")) {
                output.get("data")
                        .fields()
                        .forEachRemaining(
                                kind -> shown.add(kind.getKey() + ": " + text(kind.getValue())));
            } else {
                shown.add(output.path("name").asText() + ": " + text(output.path("text")));
            }
        }
        return shown;
    }

    /** A text of the format is one string, or an array of lines. */
    private static String text(JsonNode node) {
        if (!(node instanceof ArrayNode lines)) {
            return node.asText();
        }
        StringBuilder text = new StringBuilder();
        lines.forEach(line -> text.append(line.asText()));
        return text.toString();
    }
}
