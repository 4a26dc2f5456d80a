/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.scenario;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonStreamContext;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Turns the text of one JSON document into elements that know where they stand. What is read is bounded. */
final class JsonDocument {
    private static final int DEEPEST = 16;
    private static final int LONGEST_TEXT = 2_000;
    private static final int LONGEST_NAME = 100;
    private static final int LONGEST_NUMBER = 40;

    private final String name;
    private final JsonParser parser;

    private JsonDocument(String name, JsonParser parser) {
        this.name = name;
        this.parser = parser;
    }

    static Element parse(String name, String text) {
        try (JsonParser parser = factory().createParser(text)) {
            return new JsonDocument(name, parser).wholeOrRefused();
        } catch (IOException e) {
            throw ScenarioException.ofFile(name, "cannot be read: " + OneLine.of(String.valueOf(e.getMessage())));
        }
    }

    private Element wholeOrRefused() throws IOException {
        try {
            return whole();
        } catch (StreamConstraintsException e) {
            throw refusal(
                    parser.currentLocation(),
                    "too deep or too long: expected at most " + DEEPEST + " levels, texts of " + LONGEST_TEXT
                            + " characters, names of " + LONGEST_NAME + " and numbers of " + LONGEST_NUMBER);
        } catch (JacksonException e) {
            JsonLocation at = e.getLocation() == null ? parser.currentLocation() : e.getLocation();
            throw refusal(at, "not valid JSON: " + OneLine.of(e.getOriginalMessage()));
        }
    }

    private ScenarioException refusal(JsonLocation at, String problem) {
        return new ScenarioException(
                name, pathOf(parser.getParsingContext()), at.getLineNr(), at.getColumnNr(), problem);
    }

    private static String pathOf(JsonStreamContext context) {
        JsonStreamContext parent = context.getParent();
        if (parent == null) {
            return "$";
        }
        String step = context.inArray() ? "[" + context.getCurrentIndex() + "]" : "." + context.getCurrentName();
        return pathOf(parent) + (context.hasPathSegment() ? step : "");
    }

    private static JsonFactory factory() {
        return JsonFactory.builder()
                .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .streamReadConstraints(StreamReadConstraints.builder()
                        .maxNestingDepth(DEEPEST)
                        .maxStringLength(LONGEST_TEXT)
                        .maxNameLength(LONGEST_NAME)
                        .maxNumberLength(LONGEST_NUMBER)
                        .build())
                .build();
    }

    private Element whole() throws IOException {
        JsonToken first = parser.nextToken();
        if (first == null) {
            throw ScenarioException.ofFile(name, "is empty: expected a scenario as a JSON object");
        }
        Element root = element("$", first);
        if (parser.nextToken() != null) {
            throw refusal(parser.currentTokenLocation(), "expected the end of the file after the scenario");
        }
        return root;
    }

    private Element element(String path, JsonToken token) throws IOException {
        JsonLocation at = parser.currentTokenLocation();
        return new Element(name, path, at.getLineNr(), at.getColumnNr(), content(path, token));
    }

    private Element.Content content(String path, JsonToken token) throws IOException {
        return switch (token) {
            case START_OBJECT -> fields(path);
            case START_ARRAY -> items(path);
            case VALUE_STRING -> new Element.Content.Text(parser.getText());
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Element.Content.Written(parser.getText());
            default -> new Element.Content.Literal(parser.getText());
        };
    }

    private Element.Content fields(String path) throws IOException {
        Map<String, Element> fields = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String field = parser.currentName();
            fields.put(field, element(path + "." + field, parser.nextToken()));
        }
        return new Element.Content.Fielded(Collections.unmodifiableMap(fields));
    }

    private Element.Content items(String path) throws IOException {
        List<Element> items = new ArrayList<>();
        for (JsonToken token = parser.nextToken(); token != JsonToken.END_ARRAY; token = parser.nextToken()) {
            items.add(element(path + "[" + items.size() + "]", token));
        }
        return new Element.Content.Listed(List.copyOf(items));
    }
}
