/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.scenario;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The fields of one JSON object, each taken as what it has to be or refused. */
final class Fields {
    private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
    private static final int LONGEST_ID = 40;

    private final Element object;
    private final Map<String, Element> fields;

    private Fields(Element object, Map<String, Element> fields) {
        this.object = object;
        this.fields = fields;
    }

    /** The fields of an object that may have the given ones and no others. */
    static Fields of(Element object, String... allowed) {
        if (!(object.content() instanceof Element.Content.Fielded fielded)) {
            throw object.wrongKind("an object");
        }
        List<String> names = Arrays.asList(allowed);
        fielded.fields().forEach((name, value) -> {
            if (!names.contains(name)) {
                throw value.refusal("unknown field " + OneLine.quoted(name) + ": allowed are " + joined(names));
            }
        });
        return new Fields(object, fielded.fields());
    }

    Element object() {
        return object;
    }

    boolean has(String name) {
        return fields.containsKey(name);
    }

    Element get(String name) {
        Element value = fields.get(name);
        if (value == null) {
            throw object.refusal("field \"" + name + "\" is missing");
        }
        return value;
    }

    /** A text on one line, not blank. */
    String text(String name, int longest) {
        Element element = get(name);
        String text = string(element);
        if (text.isBlank() || text.length() > longest || !OneLine.isPlain(text)) {
            throw element.refusal(element.described() + ": expected 1 to " + longest
                    + " characters on one line, not blank and without control characters");
        }
        return text;
    }

    String id(String name) {
        Element element = get(name);
        String id = string(element);
        if (id.length() > LONGEST_ID || !ID.matcher(id).matches()) {
            throw element.refusal(element.described() + ": expected an identifier of lower-case letters a to z, digits"
                    + " and single hyphens, at most " + LONGEST_ID + " characters");
        }
        return id;
    }

    /** An identifier that has to be among the known ones. */
    String reference(String name, String what, Collection<String> known) {
        Element element = get(name);
        String id = string(element);
        if (!known.contains(id)) {
            throw element.refusal("unknown " + what + " " + element.described() + ": expected one of " + joined(known));
        }
        return id;
    }

    <E> E choice(String name, List<E> values, Function<E, String> idOf) {
        Element element = get(name);
        String id = string(element);
        return values.stream()
                .filter(value -> idOf.apply(value).equals(id))
                .findFirst()
                .orElseThrow(() -> element.refusal(element.described() + ": expected one of "
                        + joined(values.stream().map(idOf).toList())));
    }

    /** A number in the unit of the limit, turned into SI. */
    double number(String name, Limit limit) {
        Element element = get(name);
        if (!(element.content() instanceof Element.Content.Written written)) {
            throw element.wrongKind("a number");
        }
        double value = Double.parseDouble(written.digits());
        if (!limit.contains(value)) {
            throw element.refusal(element.described() + " " + limit.unit().symbol() + ": expected " + limit.allowed());
        }
        return limit.unit().toSi(value);
    }

    OptionalDouble optionalNumber(String name, Limit limit) {
        return has(name) ? OptionalDouble.of(number(name, limit)) : OptionalDouble.empty();
    }

    int whole(String name, int low, int high) {
        Element element = get(name);
        if (!(element.content() instanceof Element.Content.Written written)) {
            throw element.wrongKind("a whole number");
        }
        int value = wholeOrRefused(element, written.digits(), low, high);
        if (value < low || value > high) {
            throw notWhole(element, low, high);
        }
        return value;
    }

    private static int wholeOrRefused(Element element, String digits, int low, int high) {
        try {
            return Integer.parseInt(digits);
        } catch (NumberFormatException e) {
            throw notWhole(element, low, high);
        }
    }

    private static ScenarioException notWhole(Element element, int low, int high) {
        return element.refusal(element.described() + ": expected a whole number from " + low + " to " + high);
    }

    int wholeOr(String name, int low, int high, int otherwise) {
        return has(name) ? whole(name, low, high) : otherwise;
    }

    Optional<Element> optional(String name) {
        return Optional.ofNullable(fields.get(name));
    }

    /** The items of a list that has at least one. */
    List<Element> items(String name) {
        List<Element> items = itemsOrNone(name);
        if (items.isEmpty()) {
            throw get(name).refusal("the list is empty: expected at least one item");
        }
        return items;
    }

    /** The items of a list; none if it is empty. */
    List<Element> itemsOrNone(String name) {
        Element element = get(name);
        if (!(element.content() instanceof Element.Content.Listed listed)) {
            throw element.wrongKind("a list");
        }
        return listed.items();
    }

    /** Every item of a list, read in order. */
    static <T> List<T> each(List<Element> items, Function<Element, T> read) {
        List<T> values = new ArrayList<>();
        items.forEach(item -> values.add(read.apply(item)));
        return List.copyOf(values);
    }

    static String string(Element element) {
        if (!(element.content() instanceof Element.Content.Text text)) {
            throw element.wrongKind("a text");
        }
        return text.value();
    }

    private static String joined(Collection<String> names) {
        return names.stream().sorted().collect(Collectors.joining(", "));
    }
}
