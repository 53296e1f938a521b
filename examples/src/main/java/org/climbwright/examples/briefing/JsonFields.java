package org.climbwright.examples.briefing;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

/** The fields of a JSON text: null for what is not known, numbers as they came in. */
final class JsonFields {
    private final JsonGenerator json;

    private JsonFields(JsonGenerator json) {
        this.json = json;
    }

    /** An operation on the generator, which writes to memory and so never fails. */
    private interface Writing {
        void run() throws IOException;
    }

    /** Returns the text of one object. */
    static String document(Consumer<JsonFields> content) {
        StringWriter text = new StringWriter();
        JsonFactory factory =
                JsonFactory.builder().enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN).build();
        write(
                () -> {
                    try (JsonGenerator json = factory.createGenerator(text)) {
                        json.setPrettyPrinter(new DefaultPrettyPrinter());
                        new JsonFields(json).item(content);
                    }
                });
        return text.append('\n').toString();
    }

    private static void write(Writing writing) {
        try {
            writing.run();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    /** An object without a name: the document, or an element of a list. */
    private void item(Consumer<JsonFields> content) {
        write(json::writeStartObject);
        content.accept(this);
        write(json::writeEndObject);
    }

    void object(String field, Consumer<JsonFields> content) {
        write(() -> json.writeFieldName(field));
        item(content);
    }

    /** An object of something that may not be there: null then. */
    <T> void object(String field, Optional<T> known, Consumer<T> content) {
        if (known.isPresent()) {
            object(field, fields -> content.accept(known.get()));
        } else {
            write(() -> json.writeNullField(field));
        }
    }

    /** A list of objects, one for each element. */
    <T> void objects(String field, List<T> elements, Consumer<T> content) {
        write(() -> json.writeArrayFieldStart(field));
        elements.forEach(element -> item(fields -> content.accept(element)));
        write(json::writeEndArray);
    }

    void text(String field, String text) {
        write(() -> json.writeStringField(field, text));
    }

    void text(String field, Optional<String> text) {
        text.ifPresentOrElse(
                known -> text(field, known), () -> write(() -> json.writeNullField(field)));
    }

    void flag(String field, boolean flag) {
        write(() -> json.writeBooleanField(field, flag));
    }

    void texts(String field, List<String> texts) {
        write(() -> json.writeArrayFieldStart(field));
        texts.forEach(text -> write(() -> json.writeString(text)));
        write(json::writeEndArray);
    }

    void number(String field, double value) {
        write(() -> json.writeFieldName(field));
        number(value);
    }

    void number(String field, Optional<Double> value) {
        value.ifPresentOrElse(
                known -> number(field, known.doubleValue()),
                () -> write(() -> json.writeNullField(field)));
    }

    /** A column: one number for each element, null where it is not known. */
    <T> void column(String field, List<T> elements, Function<T, Optional<Double>> number) {
        write(() -> json.writeArrayFieldStart(field));
        for (T element : elements) {
            Optional<Double> value = number.apply(element);
            if (value.isPresent()) {
                number(value.get());
            } else {
                write(json::writeNull);
            }
        }
        write(json::writeEndArray);
    }

    /** A column of texts. */
    <T> void textColumn(String field, List<T> elements, Function<T, String> text) {
        texts(field, elements.stream().map(text).toList());
    }

    private void number(double value) {
        write(() -> json.writeNumber(new BigDecimal(FullNumber.of(value))));
    }
}
