/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.endurance;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.POJONode;
import com.fasterxml.jackson.databind.util.RawValue;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import org.beveragethermal.service.target.DrinkStyle;
import org.beveragethermal.service.target.Targets;

/**
 * Makes scenarios of a corpus by changing what they say: numbers within what the format allows and just beyond, names by others of their kind,
 * items and fields more and less. The same seed gives the same scenario.
 */
final class ScenarioTrees implements Inputs {
    private static final JsonMapper JSON = new JsonMapper();
    private static final int MOST_ITEMS = 6;
    /** One change in so many is of a kind that the format does not know. */
    private static final int STRANGE = 16;

    private static final List<String> ODD =
            List.of("1e309", "NaN", "-0.0", "\"\"", "null", "[]", "{}", "true", "1e-300");

    private static final List<String> OPTIONAL = List.of(
            "rangePolicy",
            "servingRange",
            "bottles",
            "radiantTemperatureCelsius",
            "iceStock",
            "fillingWaterTemperatureCelsius");

    private static final List<String> POLICIES = List.of("narrowest-common", "envelope", "common-practice");

    private static final List<String> ZONES = List.of(
            "UTC",
            "Europe/Vienna",
            "Asia/Kathmandu",
            "America/St_Johns",
            "Pacific/Apia",
            "Pacific/Kiritimati",
            "+18:00");

    private static final List<String> STYLES =
            Targets.styles().stream().map(DrinkStyle::id).toList();
    /** Strengths of water, beer, wine and spirits. */
    private static final double[] STRENGTHS = {0, 5, 12.5, 40};

    /** Ends of the ranges of {@code scenarios/FORMAT.md}; counts end where a plan is still small. */
    private static final Map<String, double[]> RANGES = Map.ofEntries(
            Map.entry("places.airTemperatureCelsius", new double[] {-30, 50}),
            Map.entry("places.radiantTemperatureCelsius", new double[] {-30, 80}),
            Map.entry("course.airTemperatureCelsius", new double[] {-30, 50}),
            Map.entry("course.radiantTemperatureCelsius", new double[] {-30, 80}),
            Map.entry("refrigerators.airTemperatureCelsius", new double[] {-30, 20}),
            Map.entry("buckets.innerDiameterMillimetres", new double[] {80, 800}),
            Map.entry("buckets.heightMillimetres", new double[] {80, 800}),
            Map.entry("buckets.wallConductanceWattsPerKelvin", new double[] {0, 20}),
            Map.entry("iceStock.massKilograms", new double[] {0.1, 500}),
            Map.entry("iceStock.blockSideMillimetres", new double[] {5, 200}),
            Map.entry("iceStock.temperatureCelsius", new double[] {-30, 0}),
            Map.entry(".fillingWaterTemperatureCelsius", new double[] {0, 60}),
            Map.entry("drinks.strengthPercentByVolume", new double[] {0, 60}),
            Map.entry("drinks.temperatureCelsius", new double[] {-10, 45}),
            Map.entry("servingRange.lowCelsius", new double[] {0, 40}),
            Map.entry("servingRange.highCelsius", new double[] {0, 40}));

    private static final Map<String, int[]> WHOLE = Map.of(
            ".formatVersion", new int[] {1, 1},
            "course.minutesAfterStart", new int[] {0, 2880},
            "refrigerators.capacityBottles", new int[] {1, 6},
            "buckets.capacityBottles", new int[] {1, 6},
            "drinks.count", new int[] {1, 4},
            "servings.bottles", new int[] {1, 3},
            "servings.servedMinutesAfterStart", new int[] {0, 2880},
            "servings.finishedAfterMinutes", new int[] {1, 720});

    private final List<JsonNode> corpus;

    ScenarioTrees(List<byte[]> corpus) {
        this.corpus = corpus.stream().map(ScenarioTrees::read).toList();
    }

    private static JsonNode read(byte[] bytes) {
        try {
            return JSON.readTree(bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * A field of an object.
     *
     * @param of the object
     * @param in name of the field that holds the object or the list it is in
     * @param name name of the field
     */
    private record Field(ObjectNode of, String in, String name) {
        JsonNode value() {
            return of.get(name);
        }

        String kind() {
            return in + "." + name;
        }
    }

    @Override
    public byte[] input(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        ObjectNode scenario = corpus.get(random.nextInt(corpus.size())).deepCopy();
        do {
            change(scenario, random);
        } while (random.nextInt(4) != 0);
        return scenario.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static void change(ObjectNode scenario, SplittableRandom random) {
        List<Field> fields = new ArrayList<>();
        collect(scenario, "", fields);
        Field field = fields.get(random.nextInt(fields.size()));
        if (random.nextInt(STRANGE) == 0) {
            strange(field, random);
        } else if (random.nextInt(12) == 0) {
            when(scenario, random);
        } else if (field.value() instanceof ArrayNode items) {
            items(items, field.name(), random);
        } else if (field.value() instanceof ObjectNode || (OPTIONAL.contains(field.name()) && random.nextInt(4) == 0)) {
            optional(field, random);
        } else if (WHOLE.containsKey(field.kind())) {
            whole(field, random);
        } else if (RANGES.containsKey(field.kind())) {
            number(field, random);
        } else {
            word(scenario, field, random);
        }
    }

    private static void collect(JsonNode node, String in, List<Field> out) {
        if (node instanceof ObjectNode object) {
            object.fieldNames().forEachRemaining(name -> {
                out.add(new Field(object, in, name));
                collect(object.get(name), name, out);
            });
        } else {
            node.forEach(item -> collect(item, in, out));
        }
    }

    private static void strange(Field field, SplittableRandom random) {
        switch (random.nextInt(4)) {
            case 0 -> field.of().remove(field.name());
            case 1 -> field.of().set("another", field.value());
            case 2 -> field.of().put(field.name(), "\u0000 of " + field.name());
            default -> field.of().set(field.name(), new POJONode(new RawValue(ODD.get(random.nextInt(ODD.size())))));
        }
    }

    /** A start in a zone, with the offset that the zone has then. */
    private static void when(ObjectNode scenario, SplittableRandom random) {
        ZoneId zone = ZoneId.of(ZONES.get(random.nextInt(ZONES.size())));
        Instant start = Instant.ofEpochSecond(random.nextLong(7_258_000_000L));
        scenario.put("zone", zone.getId());
        scenario.put("startsAt", start.atZone(zone).toOffsetDateTime().toString());
    }

    private static void items(ArrayNode items, String name, SplittableRandom random) {
        if (items.isEmpty()) {
            return;
        }
        int at = random.nextInt(items.size());
        switch (random.nextInt(4)) {
            case 0 -> {
                // Of what others refer to, the only one is seldom taken.
                if (items.size() > 1 || random.nextInt(STRANGE) == 0) {
                    items.remove(at);
                }
            }
            case 1 -> items.insert(random.nextInt(items.size()), items.remove(at));
            default -> {
                if (items.size() < MOST_ITEMS) {
                    JsonNode more = items.get(at).deepCopy();
                    renamed(more, random);
                    items.insert(name.equals("course") ? at + 1 : random.nextInt(items.size() + 1), more);
                }
            }
        }
    }

    private static void renamed(JsonNode node, SplittableRandom random) {
        List<Field> fields = new ArrayList<>();
        collect(node, "", fields);
        for (Field field : fields) {
            if (field.name().equals("id")) {
                field.of().put("id", field.value().asText() + "-" + random.nextInt(1000));
            } else if (field.name().equals("minutesAfterStart")) {
                field.of().put("minutesAfterStart", field.value().asInt() + 1 + random.nextInt(60));
            }
        }
    }

    private static void optional(Field field, SplittableRandom random) {
        if (OPTIONAL.contains(field.name()) && random.nextInt(4) == 0) {
            field.of().remove(field.name());
        } else if (field.in().equals("drinks")) {
            double low = random.nextInt(38);
            field.of()
                    .putObject("servingRange")
                    .put("lowCelsius", low)
                    .put("highCelsius", low + 0.5 * random.nextInt(5));
        }
    }

    private static void whole(Field field, SplittableRandom random) {
        int[] range = Objects.requireNonNull(WHOLE.get(field.kind()));
        int value = switch (random.nextInt(20)) {
            case 0 -> range[0] - 1;
            case 1 -> range[0];
            case 2 -> range[1];
            default -> range[0] + random.nextInt(1 + Math.min(range[1] - range[0], 400));
        };
        field.of().put(field.name(), value);
    }

    private static void number(Field field, SplittableRandom random) {
        double[] range = Objects.requireNonNull(RANGES.get(field.kind()));
        double span = range[1] - range[0];
        double value = switch (random.nextInt(20)) {
            case 0 -> range[0];
            case 1 -> range[1];
            case 2 -> random.nextBoolean() ? Math.nextDown(range[0]) : Math.nextUp(range[1]);
            case 3, 4, 5, 6 -> range[0] + span * random.nextDouble();
            default ->
                Math.max(
                        range[0],
                        Math.min(range[1], field.value().asDouble() + 0.1 * span * (random.nextDouble() - 0.5)));
        };
        field.of().put(field.name(), random.nextBoolean() ? value : Math.rint(10 * value) / 10);
    }

    private static void word(ObjectNode scenario, Field field, SplittableRandom random) {
        List<String> words = switch (field.kind()) {
            case "drinks.style" -> STYLES;
            case "drinks.vessel" -> List.of("high-shouldered-750", "sparkling-750", "magnum");
            case "refrigerators.kind" -> List.of("static", "fan-assisted");
            case "buckets.kind" -> List.of("ice-and-water", "water");
            case "drinks.placedIn" -> ids(scenario, "places", "refrigerators");
            case "servings.place", "refrigerators.place", "buckets.place" -> ids(scenario, "places");
            case "servings.drink" -> ids(scenario, "drinks");
            case "servings.servedAt" ->
                List.of(String.format(Locale.ROOT, "%02d:%02d", 17 + random.nextInt(7), random.nextInt(60)));
            case ".rangePolicy" -> POLICIES;
            case ".zone", ".startsAt" -> List.of();
            case "places.id", "refrigerators.id", "drinks.id" -> List.of();
            default -> List.of("Überall", "\u202e name", "a \ud83c\udf77", "x".repeat(1 + random.nextInt(119)));
        };
        if (!words.isEmpty()) {
            field.of().put(field.name(), words.get(random.nextInt(words.size())));
            if (field.name().equals("style") && random.nextBoolean()) {
                field.of().put("strengthPercentByVolume", STRENGTHS[random.nextInt(STRENGTHS.length)]);
            }
        } else if (field.name().equals("id")) {
            everywhere(scenario, field.value().asText(), "id-" + random.nextInt(1_000_000));
        }
    }

    private static List<String> ids(ObjectNode scenario, String... lists) {
        List<String> ids = new ArrayList<>();
        Arrays.stream(lists)
                .forEach(list -> scenario.path(list)
                        .forEach(item -> ids.add(item.path("id").asText())));
        return ids;
    }

    private static void everywhere(ObjectNode scenario, String old, String by) {
        List<Field> fields = new ArrayList<>();
        collect(scenario, "", fields);
        fields.stream()
                .filter(field ->
                        field.value().isTextual() && field.value().asText().equals(old))
                .forEach(field -> field.of().put(field.name(), by));
    }
}
