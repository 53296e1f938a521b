package org.climbwright.examples.briefing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.tomlj.Toml;
import org.tomlj.TomlArray;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlPosition;

/** The fields of a scenario by their dotted names; every complaint says file, line and field. */
final class ScenarioToml {
    private final String name;
    private final TomlParseResult toml;
    private final Set<String> asked = new TreeSet<>();

    private ScenarioToml(String name, TomlParseResult toml) {
        this.name = name;
        this.toml = toml;
    }

    static ScenarioToml parse(String name, String text) {
        TomlParseResult toml = Toml.parse(text);
        if (toml.hasErrors()) {
            throw new IllegalArgumentException(
                    "scenario " + name + " is no TOML: " + toml.errors().get(0));
        }
        return new ScenarioToml(name, toml);
    }

    boolean has(String field) {
        return toml.contains(field);
    }

    String text(String field) {
        return value(field, Function.identity());
    }

    <T> T value(String field, Function<String, T> parse) {
        return optional(field, parse)
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        "scenario " + name + ": " + field + " is missing"));
    }

    <T> Optional<T> optional(String field, Function<String, T> parse) {
        asked.add(field);
        Object found = toml.get(field);
        if (found == null) {
            return Optional.empty();
        }
        return Optional.of(checked(field, () -> parse.apply(string(found))));
    }

    <T> List<T> values(String field, Function<String, T> parse) {
        asked.add(field);
        List<T> values = new ArrayList<>();
        for (Object element : array(field).toList()) {
            values.add(checked(field, () -> parse.apply(string(element))));
        }
        return values;
    }

    <T> List<T> rows(String field, Function<List<String>, T> parse) {
        asked.add(field);
        TomlArray array = array(field);
        List<T> rows = new ArrayList<>();
        for (int i = 0; i < array.size(); i++) {
            Object row = array.get(i);
            TomlPosition at = array.inputPositionOf(i);
            rows.add(
                    checked(
                            at,
                            field,
                            () -> {
                                if (!(row instanceof TomlArray cells) || cells.isEmpty()) {
                                    throw new IllegalArgumentException(
                                            "a row must be an array of texts");
                                }
                                return parse.apply(
                                        cells.toList().stream().map(ScenarioToml::string).toList());
                            }));
        }
        return rows;
    }

    <T> T checked(String field, Supplier<T> read) {
        return checked(toml.inputPositionOf(field), field, read);
    }

    private <T> T checked(@Nullable TomlPosition at, String field, Supplier<T> read) {
        try {
            return read.get();
        } catch (IllegalArgumentException refused) {
            String line = at == null ? "" : " line " + at.line();
            throw new IllegalArgumentException(
                    "scenario " + name + line + ", " + field + ": " + refused.getMessage(),
                    refused);
        }
    }

    private TomlArray array(String field) {
        return checked(
                field,
                () -> {
                    if (toml.get(field) instanceof TomlArray array) {
                        return array;
                    }
                    throw new IllegalArgumentException("must be an array of texts");
                });
    }

    private static String string(Object found) {
        if (found instanceof String text) {
            return text;
        }
        throw new IllegalArgumentException(
                "must be a text with its unit, in quotes, but was " + found);
    }

    void refuseWhatWasNotAskedFor() {
        for (String field : toml.dottedKeySet()) {
            if (!asked.contains(field)) {
                checked(
                        field,
                        () -> {
                            throw new IllegalArgumentException("is no field of a scenario");
                        });
            }
        }
    }
}
