/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.embedding;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.beveragethermal.service.tracking.Tracker;

/** Whatever comes, the answer is one that the schema knows; and what is used is what the schema allows. */
class EventDeskProperties {

    private static final Tracker TRACKER = House.tracker();
    private static final int EVENTS = 25;
    private static final String GOOD = TillEvening.message(TillEvening.events(1));
    private static final String LETTERS = "0123456789-+.eE\"{}[],:TZ nulltrue\\u00e4\u0000x";

    private static final List<String> TYPES = List.of(
            "placed",
            "ordered",
            "moved",
            "opened",
            "poured",
            "gearChanged",
            "iceAdded",
            "reading",
            "timePassed",
            "finished");
    private static final List<String> MEDIA = List.of("cellar", "refrigerator", "ice bucket", "table", "elsewhere");

    private static EventDesk desk() {
        return EventDesk.of(TRACKER, Locale.ENGLISH);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    @Property(tries = 150, seed = "20270618")
    void anyEventsOfTheSchemaAreAnsweredAsTheSchemaSays(@ForAll long seed) {
        Random random = new Random(seed);
        EventDesk desk = desk();
        for (int posts = 0; posts < 2; posts++) {
            StringBuilder events = new StringBuilder();
            for (int i = 0; i < EVENTS; i++) {
                events.append(i == 0 ? "" : ",")
                        .append(event(random, i == 0 && posts == 0 ? "placed" : pick(TYPES, random)));
            }
            String message = "{\"version\":1,\"events\":[" + events + "]}";
            Schemas.requireEvents(message);
            EventDesk.Reply reply = desk.post(bytes(message));
            assertThat(reply.status()).as(reply.json()).isEqualTo(200);
            Schemas.requireAnswer(reply.json());
            Schemas.requireAnswer(desk.vessels().json());
        }
    }

    private static String event(Random random, String type) {
        double low = celsius(random);
        String rest = switch (type) {
            case "placed" ->
                ",\"model\":\"" + (random.nextBoolean() ? "bottle" : "sparkling") + "\"" + medium(random)
                        + temperature(random);
            case "ordered" ->
                ",\"lowCelsius\":" + low + ",\"highCelsius\":" + Math.min(220, low + random.nextInt(9))
                        + (random.nextBoolean() ? "" : ",\"serveAt\":\"" + time(random) + "\"");
            case "moved" -> medium(random);
            case "poured" -> ",\"partLeft\":" + (random.nextInt(100) + 1) / 100.0;
            case "gearChanged" -> temperature(random);
            case "reading" ->
                ",\"temperatureCelsius\":"
                        + (random.nextInt(5) == 0 ? "null" : random.nextInt(9) == 0 ? "-100000" : "" + celsius(random));
            default -> "";
        };
        return "{\"type\":\"" + type + "\",\"id\":\"" + random.nextInt(200) + "\",\"at\":\"" + time(random)
                + "\",\"vessel\":\"v" + random.nextInt(2) + "\"" + rest + "}";
    }

    private static String medium(Random random) {
        return ",\"medium\":\"" + pick(MEDIA, random) + "\"";
    }

    private static String temperature(Random random) {
        return ",\"temperatureCelsius\":" + celsius(random) + ",\"uncertaintyKelvin\":" + random.nextInt(51);
    }

    /** Mostly a drink's, sometimes as far off as the schema allows. */
    private static double celsius(Random random) {
        return random.nextInt(6) == 0 ? -120 + random.nextInt(341) : random.nextInt(400) / 10.0 - 5;
    }

    /** Mostly of one evening, sometimes of any year that the schema allows. */
    private static String time(Random random) {
        return random.nextInt(20) == 0
                ? String.format(Locale.ROOT, "20%02d-01-01T00:00:00.000001Z", random.nextInt(100))
                : String.format(Locale.ROOT, "2027-06-18T%02d:%02d:00Z", 16 + random.nextInt(6), random.nextInt(60));
    }

    private static <T> T pick(List<T> list, Random random) {
        return list.get(random.nextInt(list.size()));
    }

    @Property(tries = 600, seed = "20270619")
    void aMessageThatWasDamagedIsRefusedOrStillAsTheSchemaSays(@ForAll long seed) {
        Random random = new Random(seed);
        StringBuilder damaged = new StringBuilder(GOOD);
        for (int i = random.nextInt(3); i >= 0; i--) {
            int at = random.nextInt(damaged.length());
            switch (random.nextInt(3)) {
                case 0 -> damaged.setCharAt(at, LETTERS.charAt(random.nextInt(LETTERS.length())));
                case 1 -> damaged.insert(at, LETTERS.charAt(random.nextInt(LETTERS.length())));
                default -> damaged.delete(at, Math.min(damaged.length(), at + 1 + random.nextInt(5)));
            }
        }
        EventDesk desk = desk();
        EventDesk.Reply reply = desk.post(bytes(damaged.toString()));
        Schemas.requireAnswer(reply.json());
        if (reply.status() == 200) {
            Schemas.requireEvents(damaged.toString());
        } else {
            assertThat(reply.status()).isEqualTo(400);
            assertThat(desk.vessels().json()).isEqualTo("{\"version\":1,\"vessels\":[]}");
        }
    }
}
