/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.scenario;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.beveragethermal.service.target.DrinkStyle;
import org.beveragethermal.service.target.RangePolicy;
import org.beveragethermal.service.target.Targets;

/** Reads the parts of one scenario in the order in which they refer to each other. Lives for one reading. */
final class ScenarioParts {
    private static final int FORMAT_VERSION = 1;
    private static final int LONGEST_NAME = 120;
    private static final int LONGEST_NOTE = 1_000;
    private static final int MOST_BOTTLES = 1_000;
    private static final int LONGEST_SERVING_MINUTES = 720;
    /** Narrower than any bottle of 750 mL (common practice, no source): a bound on how many stand side by side. */
    private static final double NARROWEST_BOTTLE_M = 0.070;

    private final Element root;
    private final Set<String> ids = new HashSet<>();

    ScenarioParts(Element root) {
        this.root = root;
    }

    Scenario scenario() {
        Fields fields = Fields.of(
                root,
                "formatVersion",
                "title",
                "note",
                "startsAt",
                "zone",
                "rangePolicy",
                "places",
                "refrigerators",
                "buckets",
                "iceStock",
                "fillingWaterTemperatureCelsius",
                "drinks",
                "sittings");
        fields.whole("formatVersion", FORMAT_VERSION, FORMAT_VERSION);
        ScenarioHeader header = header(fields);
        List<Place> places = Fields.each(fields.items("places"), this::place);
        Set<String> placeIds = idSet(places.stream().map(Place::id).toList());
        ScenarioGear gear = gear(fields, placeIds);
        List<Drink> drinks = drinks(fields, header.rangePolicy(), placeIds, gear.refrigerators());
        List<Sitting> sittings = sittings(fields, new TimesOfDay(header.startsAt(), header.zone()), placeIds, drinks);
        return new Scenario(header, places, gear, drinks, sittings);
    }

    private ScenarioHeader header(Fields fields) {
        ZoneId zone = TimesOfDay.zone(fields.get("zone"));
        Instant startsAt = TimesOfDay.start(fields.get("startsAt"), zone);
        RangePolicy policy =
                fields.optional("rangePolicy").map(ScenarioParts::policy).orElseGet(RangePolicy::narrowestCommon);
        return new ScenarioHeader(
                fields.text("title", LONGEST_NAME), fields.text("note", LONGEST_NOTE), startsAt, zone, policy);
    }

    private static RangePolicy policy(Element element) {
        String word = Fields.string(element);
        List<String> sources = Targets.styles().stream()
                .flatMap(style -> Targets.rangesOf(style).stream())
                .map(range -> range.source().key())
                .distinct()
                .sorted()
                .toList();
        return switch (word) {
            case "narrowest-common" -> RangePolicy.narrowestCommon();
            case "envelope" -> RangePolicy.envelope();
            default -> {
                if (!sources.contains(word)) {
                    throw element.refusal(
                            element.described() + ": expected narrowest-common, envelope or a source, one of "
                                    + String.join(", ", sources));
                }
                yield RangePolicy.source(word);
            }
        };
    }

    private Place place(Element element) {
        Fields fields =
                Fields.of(element, "id", "name", "airTemperatureCelsius", "radiantTemperatureCelsius", "course");
        String id = newId(fields);
        String name = fields.text("name", LONGEST_NAME);
        if (!fields.has("course")) {
            return new Place(id, name, List.of(temperature(fields, Duration.ZERO)));
        }
        if (fields.has("airTemperatureCelsius") || fields.has("radiantTemperatureCelsius")) {
            throw element.refusal("expected either a course or one temperature, got both");
        }
        return new Place(id, name, course(fields.items("course")));
    }

    private static List<PlaceTemperature> course(List<Element> items) {
        List<PlaceTemperature> course = new ArrayList<>();
        int earliest = 0;
        for (Element item : items) {
            Fields fields = Fields.of(item, "minutesAfterStart", "airTemperatureCelsius", "radiantTemperatureCelsius");
            int minutes = fields.whole("minutesAfterStart", earliest, TimesOfDay.longestMinutes());
            course.add(temperature(fields, Duration.ofMinutes(minutes)));
            earliest = minutes + 1;
        }
        return course;
    }

    private static PlaceTemperature temperature(Fields fields, Duration afterStart) {
        double airK = fields.number("airTemperatureCelsius", Limit.AIR);
        double radiantK = fields.optionalNumber("radiantTemperatureCelsius", Limit.RADIANT)
                .orElse(airK);
        return new PlaceTemperature(afterStart, airK, radiantK);
    }

    private ScenarioGear gear(Fields fields, Set<String> placeIds) {
        List<Refrigerator> refrigerators =
                Fields.each(fields.itemsOrNone("refrigerators"), item -> refrigerator(item, placeIds));
        List<Bucket> buckets = Fields.each(fields.itemsOrNone("buckets"), item -> bucket(item, placeIds));
        boolean icy = buckets.stream().anyMatch(bucket -> bucket.kind() == BucketKind.ICE_AND_WATER);
        Optional<IceStock> ice =
                (icy ? Optional.of(fields.get("iceStock")) : fields.optional("iceStock")).map(ScenarioParts::iceStock);
        String water = "fillingWaterTemperatureCelsius";
        OptionalDouble waterK = buckets.isEmpty()
                ? fields.optionalNumber(water, Limit.FILLING_WATER)
                : OptionalDouble.of(fields.number(water, Limit.FILLING_WATER));
        return new ScenarioGear(refrigerators, buckets, ice, waterK);
    }

    private Refrigerator refrigerator(Element element, Set<String> placeIds) {
        Fields fields = Fields.of(element, "id", "name", "kind", "airTemperatureCelsius", "capacityBottles", "place");
        return new Refrigerator(
                newId(fields),
                fields.text("name", LONGEST_NAME),
                fields.choice("kind", List.of(RefrigeratorKind.values()), RefrigeratorKind::id),
                fields.number("airTemperatureCelsius", Limit.REFRIGERATOR_AIR),
                fields.whole("capacityBottles", 1, MOST_BOTTLES),
                fields.reference("place", "place", placeIds));
    }

    private Bucket bucket(Element element, Set<String> placeIds) {
        Fields fields = Fields.of(
                element,
                "id",
                "name",
                "kind",
                "capacityBottles",
                "innerDiameterMillimetres",
                "heightMillimetres",
                "wallConductanceWattsPerKelvin",
                "place");
        double innerDiameterM = fields.number("innerDiameterMillimetres", Limit.INNER_DIAMETER);
        double acrossM = innerDiameterM / NARROWEST_BOTTLE_M;
        return new Bucket(
                newId(fields),
                fields.text("name", LONGEST_NAME),
                fields.choice("kind", List.of(BucketKind.values()), BucketKind::id),
                fields.whole("capacityBottles", 1, Math.max(1, (int) (acrossM * acrossM))),
                innerDiameterM,
                fields.number("heightMillimetres", Limit.INNER_HEIGHT),
                fields.number("wallConductanceWattsPerKelvin", Limit.WALL_CONDUCTANCE),
                fields.reference("place", "place", placeIds));
    }

    private static IceStock iceStock(Element element) {
        Fields fields = Fields.of(element, "massKilograms", "blockSideMillimetres", "temperatureCelsius");
        return new IceStock(
                fields.number("massKilograms", Limit.ICE_MASS),
                fields.number("blockSideMillimetres", Limit.BLOCK_SIDE),
                fields.number("temperatureCelsius", Limit.ICE));
    }

    private List<Drink> drinks(
            Fields fields, RangePolicy policy, Set<String> placeIds, List<Refrigerator> refrigerators) {
        Set<String> whereIds = new HashSet<>(placeIds);
        refrigerators.forEach(refrigerator -> whereIds.add(refrigerator.id()));
        Map<String, Integer> free = new HashMap<>();
        refrigerators.forEach(refrigerator -> free.put(refrigerator.id(), refrigerator.capacityBottles()));
        return Fields.each(fields.items("drinks"), item -> {
            Drink drink = drink(item, policy, whereIds);
            takeRoom(item, drink, free);
            return drink;
        });
    }

    private static void takeRoom(Element element, Drink drink, Map<String, Integer> free) {
        Integer room = free.get(drink.placeId());
        int needed = drink.count() * drink.vessel().bottlePlaces();
        if (room != null && needed > room) {
            throw element.refusal("takes the room of " + needed + " bottles in " + drink.placeId()
                    + ": expected at most " + room + ", what is left there at the start");
        }
        if (room != null) {
            free.put(drink.placeId(), room - needed);
        }
    }

    private Drink drink(Element element, RangePolicy policy, Set<String> whereIds) {
        Fields fields = Fields.of(
                element,
                "id",
                "name",
                "style",
                "vessel",
                "strengthPercentByVolume",
                "temperatureCelsius",
                "placedIn",
                "count",
                "servingRange");
        String id = newId(fields);
        String name = fields.text("name", LONGEST_NAME);
        Optional<RangePolicy.OwnRange> ownRange =
                fields.optional("servingRange").map(ScenarioParts::ownRange);
        DrinkStyle style = style(fields.get("style"), policy, ownRange.isPresent());
        VesselKind vessel = fields.choice("vessel", List.of(VesselKind.values()), VesselKind::id);
        double strength = strength(fields, style);
        double temperatureK = fields.number("temperatureCelsius", Limit.DRINK);
        String placeId = fields.reference("placedIn", "place or refrigerator", whereIds);
        int count = fields.whole("count", 1, MOST_BOTTLES);
        try {
            return new Drink(id, name, style, vessel, strength, temperatureK, placeId, count, ownRange);
        } catch (IllegalArgumentException e) {
            throw fields.get("temperatureCelsius").refusal(OneLine.of(String.valueOf(e.getMessage())));
        }
    }

    private static double strength(Fields fields, DrinkStyle style) {
        double strength = fields.number("strengthPercentByVolume", Limit.STRENGTH);
        try {
            Drink.beverage(style, strength);
            return strength;
        } catch (IllegalArgumentException e) {
            throw fields.get("strengthPercentByVolume")
                    .refusal("style " + style.id() + " is a " + style.family().label() + ": "
                            + OneLine.of(String.valueOf(e.getMessage())));
        }
    }

    private static DrinkStyle style(Element element, RangePolicy policy, boolean ownRange) {
        String id = Fields.string(element);
        try {
            DrinkStyle style = Targets.style(id);
            if (!ownRange) {
                Targets.of(style, policy);
            }
            return style;
        } catch (IllegalArgumentException e) {
            throw element.refusal(String.valueOf(e.getMessage()));
        }
    }

    private static RangePolicy.OwnRange ownRange(Element element) {
        Fields fields = Fields.of(element, "lowCelsius", "highCelsius");
        double lowK = fields.number("lowCelsius", Limit.SERVING);
        double highK = fields.number("highCelsius", Limit.SERVING);
        if (lowK > highK) {
            throw element.refusal(
                    "lowCelsius " + fields.get("lowCelsius").described() + ": expected at most highCelsius, "
                            + fields.get("highCelsius").described());
        }
        return new RangePolicy.OwnRange(lowK, highK);
    }

    private List<Sitting> sittings(Fields fields, TimesOfDay times, Set<String> placeIds, List<Drink> drinks) {
        Map<String, Integer> left = new LinkedHashMap<>();
        drinks.forEach(drink -> left.put(drink.id(), drink.count()));
        return Fields.each(fields.items("sittings"), item -> {
            Fields sitting = Fields.of(item, "id", "name", "servings");
            String id = newId(sitting);
            String name = sitting.text("name", LONGEST_NAME);
            return new Sitting(
                    id, name, Fields.each(sitting.items("servings"), one -> serving(one, times, placeIds, left)));
        });
    }

    private static Serving serving(Element element, TimesOfDay times, Set<String> placeIds, Map<String, Integer> left) {
        Fields fields = Fields.of(
                element, "drink", "bottles", "servedAt", "servedMinutesAfterStart", "place", "finishedAfterMinutes");
        String drinkId = fields.reference("drink", "drink", left.keySet());
        int bottles = fields.wholeOr("bottles", 1, MOST_BOTTLES, 1);
        int available = left.getOrDefault(drinkId, 0);
        if (bottles > available) {
            throw element.refusal("serves " + bottles + " of " + drinkId + ": expected at most " + available
                    + ", what earlier servings leave");
        }
        left.put(drinkId, available - bottles);
        return new Serving(
                drinkId,
                bottles,
                servedAt(fields, times),
                fields.reference("place", "place", placeIds),
                Duration.ofMinutes(fields.whole("finishedAfterMinutes", 1, LONGEST_SERVING_MINUTES)));
    }

    private static Instant servedAt(Fields fields, TimesOfDay times) {
        if (fields.has("servedAt") == fields.has("servedMinutesAfterStart")) {
            throw fields.object()
                    .refusal("expected either servedAt or servedMinutesAfterStart, got "
                            + (fields.has("servedAt") ? "both" : "neither"));
        }
        return fields.has("servedAt")
                ? times.local(fields.get("servedAt"))
                : times.afterStart(fields.whole("servedMinutesAfterStart", 0, TimesOfDay.longestMinutes()));
    }

    private String newId(Fields fields) {
        String id = fields.id("id");
        if (!ids.add(id)) {
            throw fields.get("id").refusal("id \"" + id + "\" is already taken: expected each id once in the file");
        }
        return id;
    }

    private static Set<String> idSet(List<String> ids) {
        return Set.copyOf(ids);
    }
}
