/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.embedding;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.beveragethermal.service.tracking.TrackingEvent;

/** Reads a message of events; what it accepts is what {@code events.schema.json} accepts, and that ranges are not empty. */
final class EventReader {

    static final int MOST_BYTES = 256 * 1024;
    static final int MOST_DEPTH = 3;
    static final int MOST_EVENTS = 1000;

    private static final int VERSION = 1;
    private static final int LONGEST_TEXT = 1000;
    private static final int LONGEST_NUMBER = 40;
    private static final double MOST_SD_K = 50;
    private static final double LEAST_PART = 0.01;

    /** Wider than any sensor reads; what is none is told in a note. */
    private static final double ANY_READING_C = 100_000;

    private static final JsonMapper JSON = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(MOST_DEPTH)
                            .maxStringLength(LONGEST_TEXT)
                            .maxNameLength(LONGEST_TEXT)
                            .maxNumberLength(LONGEST_NUMBER)
                            .build())
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .build())
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private EventReader() {}

    /** All events of a message in UTF-8, or a refusal of the whole. */
    static List<TrackingEvent> read(byte[] message) {
        if (message.length > MOST_BYTES) {
            throw tooLong();
        }
        EventFields fields = new EventFields("message", parse(decode(message)));
        fields.number("version", VERSION, VERSION);
        JsonNode events = fields.array("events", MOST_EVENTS);
        fields.refuseOthers();
        List<TrackingEvent> read = new ArrayList<>(events.size());
        for (int i = 0; i < events.size(); i++) {
            read.add(event(new EventFields("events[" + i + "]", events.get(i))));
        }
        return read;
    }

    static BadMessage tooLong() {
        return new BadMessage(413, "message", "is too long", "at most " + MOST_BYTES + " bytes");
    }

    private static String decode(byte[] message) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(message))
                    .toString();
        } catch (CharacterCodingException e) {
            throw BadMessage.at("message", "is not text in UTF-8", "JSON in UTF-8");
        }
    }

    private static JsonNode parse(String text) {
        try {
            return JSON.readTree(text);
        } catch (StreamConstraintsException e) {
            throw BadMessage.at(
                    "message",
                    "is too deep or has too long a part",
                    "at most " + MOST_DEPTH + " levels, texts of " + LONGEST_TEXT + " and numbers of " + LONGEST_NUMBER
                            + " characters");
        } catch (JsonProcessingException e) {
            var where = e.getLocation();
            throw BadMessage.at(
                    "message",
                    "is not JSON"
                            + (where == null
                                    ? ""
                                    : " at line " + where.getLineNr() + ", column " + where.getColumnNr()),
                    "one object whose fields appear once");
        }
    }

    private static TrackingEvent event(EventFields fields) {
        String id = fields.name("id");
        Instant at = fields.instant("at");
        String vessel = fields.name("vessel");
        String type = fields.text("type");
        TrackingEvent event = switch (type) {
            case "placed" ->
                new TrackingEvent.Placed(
                        id,
                        at,
                        vessel,
                        fields.name("model"),
                        fields.name("medium"),
                        fields.kelvins("temperatureCelsius"),
                        fields.number("uncertaintyKelvin", 0, MOST_SD_K));
            case "ordered" -> new TrackingEvent.Ordered(id, at, vessel, goal(fields));
            case "moved" -> new TrackingEvent.Moved(id, at, vessel, fields.name("medium"));
            case "opened" -> new TrackingEvent.Opened(id, at, vessel);
            case "poured" -> new TrackingEvent.Poured(id, at, vessel, fields.number("partLeft", LEAST_PART, 1));
            case "gearChanged" ->
                new TrackingEvent.GearChanged(
                        id,
                        at,
                        vessel,
                        fields.kelvins("temperatureCelsius"),
                        fields.number("uncertaintyKelvin", 0, MOST_SD_K));
            case "iceAdded" -> new TrackingEvent.IceAdded(id, at, vessel);
            case "reading" -> new TrackingEvent.Reading(id, at, vessel, reading(fields));
            case "timePassed" -> new TrackingEvent.TimePassed(id, at, vessel);
            case "finished" -> new TrackingEvent.Finished(id, at, vessel);
            default ->
                throw fields.refusal(
                        "type",
                        "placed, ordered, moved, opened, poured, gearChanged, iceAdded, reading, timePassed or"
                                + " finished");
        };
        fields.refuseOthers();
        return event;
    }

    /** A sensor that has no reading says null. */
    private static double reading(EventFields fields) {
        return fields.isNull("temperatureCelsius")
                ? Double.NaN
                : EventFields.ZERO_CELSIUS_K + fields.number("temperatureCelsius", -ANY_READING_C, ANY_READING_C);
    }

    private static TrackingEvent.Goal goal(EventFields fields) {
        double low = fields.kelvins("lowCelsius");
        double high = fields.kelvins("highCelsius");
        if (high < low) {
            throw fields.refusal("highCelsius", "lowCelsius or more");
        }
        Optional<Instant> serveAt = fields.has("serveAt") ? Optional.of(fields.instant("serveAt")) : Optional.empty();
        return new TrackingEvent.Goal(low, high, serveAt);
    }
}
