/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.embedding;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** An evening of an invented house as its till and its thermometers might tell it; all of it is our own invention. */
final class TillEvening {

    static final Instant OPENS = Instant.parse("2027-06-18T16:00:00Z");
    private static final double ROOM_C = 22;
    private static final double ICE_MINUTES = 24;
    private static final double TABLE_MINUTES = 190;

    private TillEvening() {}

    /** An event of a vessel, so many minutes after opening. */
    record Told(int minute, String vessel, String json) {}

    static String bottle(int number) {
        return "bottle " + number;
    }

    static String message(List<Told> events) {
        return "{\"version\":1,\"events\":["
                + String.join(",", events.stream().map(Told::json).toList()) + "]}";
    }

    /** All events of so many bottles, in the order of time. */
    static List<Told> events(int bottles) {
        List<Told> all = new ArrayList<>();
        for (int number = 1; number <= bottles; number++) {
            all.addAll(course(number));
        }
        all.sort(Comparator.comparingInt(Told::minute));
        return all;
    }

    /**
     * One bottle: from the cellar or the room into ice, ordered for a time, read by a thermometer each five minutes, opened, poured
     * by halves, left on the table, put back into new ice, emptied.
     */
    private static List<Told> course(int number) {
        String vessel = bottle(number);
        String model = number % 3 == 0 ? "sparkling" : "bottle";
        int first = 7 * number;
        double startC = number % 2 == 0 ? ROOM_C : 12;
        List<Told> course = new ArrayList<>();
        course.add(told(
                first,
                vessel,
                "placed",
                "\"model\":\"" + model + "\",\"medium\":\"ice bucket\",\"temperatureCelsius\":" + startC
                        + ",\"uncertaintyKelvin\":1"));
        course.add(told(
                first + 1,
                vessel,
                "ordered",
                "\"lowCelsius\":7,\"highCelsius\":9,\"serveAt\":\"" + OPENS.plus(Duration.ofMinutes(first + 45))
                        + "\""));
        double celsius = startC;
        for (int minute = first + 5; minute <= first + 40; minute += 5) {
            celsius *= Math.exp(-5 / ICE_MINUTES);
            course.add(reading(minute, vessel, celsius));
        }
        course.add(told(first + 41, vessel, "moved", "\"medium\":\"table\""));
        course.add(told(first + 42, vessel, "opened", ""));
        course.add(told(first + 43, vessel, "poured", "\"partLeft\":0.6"));
        for (int minute = first + 50; minute <= first + 80; minute += 10) {
            celsius = ROOM_C + (celsius - ROOM_C) * Math.exp(-10 / TABLE_MINUTES);
            course.add(reading(minute, vessel, celsius));
        }
        course.add(told(first + 82, vessel, "moved", "\"medium\":\"ice bucket\""));
        course.add(told(first + 83, vessel, "iceAdded", ""));
        course.add(told(first + 84, vessel, "gearChanged", "\"temperatureCelsius\":0.5,\"uncertaintyKelvin\":0.5"));
        course.add(told(first + 95, vessel, "timePassed", ""));
        course.add(told(first + 100, vessel, "reading", "\"temperatureCelsius\":null"));
        course.add(told(first + 110, vessel, "finished", ""));
        return course;
    }

    private static Told reading(int minute, String vessel, double celsius) {
        return told(minute, vessel, "reading", String.format(Locale.ROOT, "\"temperatureCelsius\":%.1f", celsius));
    }

    static Told told(int minute, String vessel, String type, String rest) {
        String json = "{\"type\":\"" + type + "\",\"id\":\"" + vessel + "/" + type + "/" + minute + "\",\"at\":\""
                + OPENS.plus(Duration.ofMinutes(minute)) + "\",\"vessel\":\"" + vessel + "\""
                + (rest.isEmpty() ? "" : "," + rest) + "}";
        return new Told(minute, vessel, json);
    }
}
