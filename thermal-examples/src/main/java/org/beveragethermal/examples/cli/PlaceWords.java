/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.cli;

import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.millimetres;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.scene.Exposure;
import org.beveragethermal.core.surroundings.Agitation;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.Freezer;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Multipliers;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.core.surroundings.RunningTap;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.core.surroundings.WaterBath;
import org.beveragethermal.core.uncertainty.Draw;
import org.beveragethermal.core.uncertainty.UnstatedConditions;

/** From words to a place where a vessel stands, and to a stay in it. */
final class PlaceWords {
    /** How a place is written. */
    static final String ALLOWED =
            "\"air T [moving SPEED] [humidity PERCENT]\", \"refrigerator T [fan SPEED]\", \"freezer T\","
                    + " \"water T [volume L] [stirred SPEED] [room T]\","
                    + " \"ice-water [ice KG] [water KG] [block MM] [stirred SPEED] [room T]\" or \"tap T flow L/min [room T]\","
                    + " each with [lying] if it lies";
    /** What is taken where a bath is not described. */
    static final String USUAL_BATH =
            "Baths stand in a bucket of 240 mm by 260 mm in a room of 20 °C; water is 6 L; ice and water are 3 kg of"
                    + " each, cubes of 25 mm of -10 °C and water of 15 °C; what is said otherwise counts instead.";

    private static final List<String> KEYS =
            List.of("moving", "humidity", "fan", "volume", "stirred", "room", "ice", "water", "block", "flow", "lying");
    private static final Map<String, Set<String>> KEYS_OF = Map.of(
            "air", Set.of("moving", "humidity", "lying"),
            "refrigerator", Set.of("fan", "lying"),
            "freezer", Set.of("lying"),
            "water", Set.of("volume", "stirred", "room", "lying"),
            "ice-water", Set.of("ice", "water", "block", "stirred", "room", "lying"),
            "tap", Set.of("flow", "room", "lying"));

    private final Phrase phrase;

    /** A place with the time for which something is in it. */
    record Stay(PlaceWords place, Duration duration) {
        /** As it is stated; of what is not, air is still and dry, and appliances keep their temperature. */
        Exposure asStated() {
            return exposure(place.surroundings(Optional.empty(), Duration.ZERO));
        }

        /** With what is not stated as it is drawn; it begins at a time since the start of the run. */
        Exposure drawn(Draw draw, Duration from) {
            return exposure(place.surroundings(Optional.of(draw), from));
        }

        private Exposure exposure(Surroundings surroundings) {
            Exposure exposure = Exposure.in(surroundings, duration);
            return place.phrase.flag("lying") ? exposure.lying() : exposure;
        }
    }

    private PlaceWords(Phrase phrase) {
        this.phrase = phrase;
    }

    /** Whether a place is a bath, about which something is assumed. */
    static boolean isBath(String given) {
        String text = given.strip().toLowerCase(Locale.ROOT);
        return text.startsWith("water") || text.startsWith("ice-water") || text.startsWith("tap");
    }

    boolean isAppliance() {
        return phrase.head().equals("refrigerator") || phrase.head().equals("freezer");
    }

    /** A place without a duration. */
    static Surroundings place(String where, String given) {
        return read(where, given).surroundings(Optional.empty(), Duration.ZERO);
    }

    /** The law that a log in such a place tells about. */
    static String deciding(String where, String given) {
        return switch (read(where, given).phrase.head()) {
            case "water" -> Multipliers.WATER_FILM;
            case "ice-water" -> Multipliers.ICE_FILM;
            case "tap" -> Multipliers.RUNNING_FILM;
            default -> Multipliers.AIR_FILM;
        };
    }

    static Exposure exposure(String where, String given, Duration duration) {
        return new Stay(read(where, given), duration).asStated();
    }

    /** The words of a stay that tell its place. */
    static String placeOf(String given) {
        return given.substring(0, Math.max(0, placeEnds(given)));
    }

    private static int placeEnds(String given) {
        return given.toLowerCase(Locale.ROOT).lastIndexOf(" for ");
    }

    /** A place with a duration behind "for". */
    static Stay stay(String where, String given) {
        int at = placeEnds(given);
        if (at < 0) {
            throw Refusal.usage(
                    where, given, "a place and \"for\" with a duration, such as \"refrigerator 5C for 2h\"");
        }
        return new Stay(
                read(where, given.substring(0, at)),
                Quantities.duration(where, given.substring(at + " for ".length())));
    }

    private static PlaceWords read(String where, String given) {
        String text = given.strip().toLowerCase(Locale.ROOT);
        String head = text.split("[\\s0-9+]", 2)[0];
        Set<String> own = KEYS_OF.get(head);
        if (own == null) {
            throw Refusal.usage(where, given, ALLOWED);
        }
        // The first word names the place even where it is also a key of another place.
        Phrase phrase = Phrase.of(where, "place " + text.substring(head.length()), KEYS, ALLOWED);
        for (String key : phrase.keyed().keySet()) {
            if (!own.contains(key)) {
                throw Refusal.usage(where, given, "no \"" + key + "\" for " + head + ": " + ALLOWED);
            }
            if (key.equals("lying") == !phrase.key(key).orElse("").isEmpty()) {
                throw Refusal.usage(where, given, "a quantity behind each word but \"lying\": " + ALLOWED);
            }
        }
        if (phrase.bare().size() != (head.equals("ice-water") ? 0 : 1)
                || !phrase.head().equals("place")) {
            throw Refusal.usage(where, given, ALLOWED);
        }
        return new PlaceWords(new Phrase(where, given, head, phrase.bare(), phrase.keyed()));
    }

    /** Its surroundings, with a draw of what is not stated, if there is one. */
    private Surroundings surroundings(Optional<Draw> draw, Duration from) {
        try {
            return switch (phrase.head()) {
                case "air" -> air(draw);
                case "refrigerator" -> appliance(draw, from);
                case "freezer" -> Freezer.of(appliance(draw, from));
                case "water" ->
                    WaterBath.of(
                                    bucket(),
                                    phrase.key("volume")
                                            .map(volume -> Quantities.volume(phrase.where(), volume))
                                            .orElse(litres(6)),
                                    temperature(),
                                    room())
                            .with(agitation(draw));
                case "ice-water" -> iceWater(draw);
                default ->
                    RunningTap.at(
                            temperature(),
                            Quantities.flow(
                                    phrase.where(),
                                    phrase.key("flow")
                                            .orElseThrow(() -> Refusal.usage(
                                                    phrase.where(),
                                                    phrase.given(),
                                                    "a flow, such as \"tap 12C flow 6L/min\""))),
                            room());
            };
        } catch (IllegalArgumentException e) {
            throw Refusal.usage(phrase.where(), phrase.given(), "what can be; " + e.getMessage());
        }
    }

    private Air air(Optional<Draw> draw) {
        Air air = Air.at(temperature());
        Optional<Quantity<Speed>> moving = phrase.key("moving")
                .map(speed -> Quantities.speed(phrase.where(), speed))
                .or(() -> draw.map(UnstatedConditions::draught));
        Optional<Quantity<Dimensionless>> humidity = phrase.key("humidity")
                .map(percent -> Quantities.percent(phrase.where(), percent))
                .or(() -> draw.map(UnstatedConditions::roomHumidity));
        if (moving.isPresent()) {
            air = air.withSpeed(moving.get());
        }
        if (humidity.isPresent()) {
            air = air.withRelativeHumidity(humidity.get());
        }
        return air;
    }

    private Refrigerator appliance(Optional<Draw> draw, Duration from) {
        Optional<Quantity<Speed>> fan = phrase.key("fan")
                .map(speed -> Quantities.speed(phrase.where(), speed))
                .or(() -> draw.map(UnstatedConditions::fan));
        if (draw.isPresent()) {
            return UnstatedConditions.appliance(temperature(), fan.orElseThrow(), from, draw.get());
        }
        Refrigerator still = Refrigerator.at(temperature());
        return fan.map(still::withFan).orElse(still);
    }

    private IceWaterBath iceWater(Optional<Draw> draw) {
        return IceWaterBath.in(bucket(), room())
                .ice(
                        phrase.key("ice")
                                .map(mass -> Quantities.mass(phrase.where(), mass))
                                .orElse(kilograms(3)),
                        phrase.key("block")
                                .map(side -> Quantities.length(phrase.where(), side))
                                .orElse(millimetres(25)),
                        celsius(-10))
                .water(
                        phrase.key("water")
                                .map(mass -> Quantities.mass(phrase.where(), mass))
                                .orElse(kilograms(3)),
                        celsius(15))
                .agitation(agitation(draw))
                .build();
    }

    private Agitation agitation(Optional<Draw> draw) {
        return phrase.key("stirred")
                .map(speed -> Agitation.stirred(Quantities.speed(phrase.where(), speed)))
                .or(() -> draw.map(UnstatedConditions::stirring))
                .orElse(Agitation.STILL);
    }

    private Air room() {
        return Air.at(phrase.key("room")
                .map(room -> Quantities.temperature(phrase.where(), room))
                .orElse(celsius(20)));
    }

    private Quantity<Temperature> temperature() {
        return Quantities.temperature(phrase.where(), phrase.bare().get(0));
    }

    private static Bucket bucket() {
        return Bucket.of(millimetres(240), millimetres(260));
    }
}
