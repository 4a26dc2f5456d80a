/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.embedding;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.HashSet;
import java.util.Iterator;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** The fields of one object: each is asked for by name, and what nobody asked for is refused. */
final class EventFields {

    static final double ZERO_CELSIUS_K = 273.15;

    private static final double COLDEST_C = -120;
    private static final double WARMEST_C = 220;

    /** As in the schema. */
    private static final Pattern NAME = Pattern.compile("^[A-Za-z0-9][A-Za-z0-9 ._:#/-]{0,99}$");

    private static final Pattern UTC =
            Pattern.compile("^20[0-9]{2}-[01][0-9]-[0-3][0-9]T[0-2][0-9]:[0-5][0-9]:[0-5][0-9](\\.[0-9]{1,6})?Z$");

    private final String where;
    private final JsonNode object;
    private final Set<String> asked = new HashSet<>();

    EventFields(String where, JsonNode object) {
        this.where = where;
        this.object = object;
        if (!object.isObject()) {
            throw BadMessage.at(where, given(object), "an object");
        }
    }

    private static String given(JsonNode node) {
        return node.isMissingNode() ? "is missing" : node.isContainerNode() ? "is a list or object" : node.toString();
    }

    BadMessage refusal(String field, String allowed) {
        return BadMessage.at(where + "." + field, given(object.path(field)), allowed);
    }

    boolean has(String field) {
        return object.has(field);
    }

    boolean isNull(String field) {
        asked.add(field);
        return object.path(field).isNull();
    }

    String text(String field) {
        asked.add(field);
        JsonNode node = object.path(field);
        if (!node.isTextual()) {
            throw refusal(field, "a text");
        }
        return node.textValue();
    }

    static boolean isName(String text) {
        return NAME.matcher(text).matches();
    }

    String name(String field) {
        String text = text(field);
        if (!isName(text)) {
            throw refusal(
                    field,
                    "1 to 100 letters (A to Z, a to z), digits, spaces and . _ : # / -, a letter or digit first");
        }
        return text;
    }

    Instant instant(String field) {
        String text = text(field);
        try {
            if (UTC.matcher(text).matches()) {
                return Instant.parse(text);
            }
        } catch (DateTimeException e) {
            // No such day or hour: refused below with the rest.
        }
        throw refusal(field, "a time of 2000 to 2099 in UTC such as 2027-06-18T17:00:00Z");
    }

    double number(String field, double low, double high) {
        asked.add(field);
        JsonNode node = object.path(field);
        if (!node.isNumber() || !(node.doubleValue() >= low && node.doubleValue() <= high)) {
            throw refusal(field, low == high ? plain(low) : "a number from " + plain(low) + " to " + plain(high));
        }
        return node.doubleValue();
    }

    /** A temperature in °C as kelvins. */
    double kelvins(String field) {
        return ZERO_CELSIUS_K + number(field, COLDEST_C, WARMEST_C);
    }

    JsonNode array(String field, int most) {
        asked.add(field);
        JsonNode node = object.path(field);
        if (!node.isArray()) {
            throw refusal(field, "a list");
        }
        if (node.isEmpty() || node.size() > most) {
            throw BadMessage.at(where + "." + field, "has " + node.size() + " entries", "1 to " + most);
        }
        return node;
    }

    void refuseOthers() {
        for (Iterator<String> names = object.fieldNames(); names.hasNext(); ) {
            String name = names.next();
            if (!asked.contains(name)) {
                throw BadMessage.at(where, "has the field " + name, "no fields beside " + new TreeSet<>(asked));
            }
        }
    }

    private static String plain(double value) {
        return value == Math.rint(value) ? String.format(Locale.ROOT, "%.0f", value) : Double.toString(value);
    }
}
