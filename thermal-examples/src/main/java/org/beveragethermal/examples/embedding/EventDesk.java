/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.embedding;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.beveragethermal.service.tracking.Fleet;
import org.beveragethermal.service.tracking.Tracker;
import org.beveragethermal.service.tracking.TrackingEvent;

/**
 * Messages of events in, answers out, both JSON; a fleet in between. Whatever carries messages can stand before it: HTTP, a queue, a file.
 *
 * <p>A message is used whole or refused whole. May be used by several threads, one message at a time.
 */
public final class EventDesk {

    /** Most vessels that are tracked at a time. */
    public static final int MOST_VESSELS = 10_000;

    private static final int DONE = 200;
    private static final int FULL = 503;

    private final Fleet fleet;
    private final AnswerWriter writer;
    private final int mostVessels;

    private EventDesk(Fleet fleet, AnswerWriter writer, int mostVessels) {
        this.fleet = fleet;
        this.writer = writer;
        this.mostVessels = mostVessels;
    }

    /**
     * An answer.
     *
     * @param status as in HTTP: 200 if the message was used, 4xx if it is refused, 503 if there is no room
     * @param json the answer, as {@code answers.schema.json} has it
     */
    public record Reply(int status, String json) {}

    /**
     * A desk that tracks nothing yet.
     *
     * @param tracker kinds of vessels and rules
     * @param locale language of texts, and form of the numbers in them
     * @return a desk
     */
    public static EventDesk of(Tracker tracker, Locale locale) {
        return of(tracker, locale, MOST_VESSELS);
    }

    static EventDesk of(Tracker tracker, Locale locale, int mostVessels) {
        return new EventDesk(Fleet.of(tracker), new AnswerWriter(locale), mostVessels);
    }

    /**
     * Uses a message of events.
     *
     * @param message JSON in UTF-8, at most 256 KiB, as {@code events.schema.json} has it; not modified
     * @return instructions, alerts and notes; or why it is refused
     */
    public Reply post(byte[] message) {
        try {
            List<TrackingEvent> events = EventReader.read(message);
            synchronized (fleet) {
                requireRoom(events);
                return new Reply(DONE, writer.report(fleet.apply(events)));
            }
        } catch (BadMessage refusal) {
            return refusal(refusal);
        }
    }

    private void requireRoom(List<TrackingEvent> events) {
        Set<String> news = new HashSet<>();
        for (TrackingEvent event : events) {
            if (event instanceof TrackingEvent.Placed
                    && fleet.vessel(event.vesselId()).isEmpty()) {
                news.add(event.vesselId());
            }
        }
        if (news.isEmpty() || fleet.vessels().size() + news.size() <= mostVessels) {
            return;
        }
        fleet.forgetFinished();
        int room = mostVessels - fleet.vessels().size();
        if (news.size() > room) {
            throw new BadMessage(
                    FULL,
                    "message",
                    "places " + news.size() + " vessels",
                    "at most " + room + " more, as " + mostVessels + " are tracked at most; finish some");
        }
    }

    /**
     * What is believed of each vessel.
     *
     * @return all vessels in the order of their ids
     */
    public Reply vessels() {
        synchronized (fleet) {
            return new Reply(DONE, AnswerWriter.vessels(fleet.vessels()));
        }
    }

    static Reply refusal(BadMessage refusal) {
        return new Reply(refusal.status(), AnswerWriter.refusal(refusal));
    }

    /**
     * The schema of messages of events.
     *
     * @return JSON Schema, draft 2020-12
     */
    public static String eventsSchema() {
        return resource("events.schema.json");
    }

    /**
     * The schema of answers.
     *
     * @return JSON Schema, draft 2020-12
     */
    public static String answersSchema() {
        return resource("answers.schema.json");
    }

    private static String resource(String name) {
        try (InputStream in = EventDesk.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("resource " + name + " is missing");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
