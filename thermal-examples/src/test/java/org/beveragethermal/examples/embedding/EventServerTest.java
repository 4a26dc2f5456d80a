/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.embedding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.beveragethermal.service.tracking.Tracker;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** The till's evening over HTTP on a free port; every message and every answer is held to its schema by an outside validator. */
@Timeout(120)
class EventServerTest {

    private static final Tracker TRACKER = House.tracker();
    private static final int BOTTLES = 8;

    private static EventServer started() throws IOException {
        return EventServer.start(0, EventDesk.of(TRACKER, Locale.ENGLISH));
    }

    @Test
    void aWholeEveningIsAnsweredAsTheSchemaSays() throws IOException {
        List<TillEvening.Told> events = TillEvening.events(BOTTLES);
        Set<String> said = new HashSet<>();
        try (EventServer server = started()) {
            HttpClientOfTests till = new HttpClientOfTests(server);
            for (int i = 0; i < events.size(); i += 5) {
                String message = TillEvening.message(events.subList(i, Math.min(events.size(), i + 5)));
                Schemas.requireEvents(message);
                HttpResponse<String> answer = till.post(message);
                assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
                assertThat(answer.headers().firstValue("Content-Type")).contains("application/json");
                Schemas.requireAnswer(answer.body());
                for (String kind : List.of("instructions", "alerts", "notes")) {
                    json(answer.body())
                            .get(kind)
                            .forEach(one -> said.add(one.get("code").textValue()));
                }
            }
            HttpResponse<String> vessels = till.get("/vessels");
            Schemas.requireAnswer(vessels.body());
            JsonNode believed = json(vessels.body()).get("vessels");
            assertThat(believed)
                    .hasSize(BOTTLES)
                    .allMatch(vessel -> vessel.get("finished").booleanValue());
        }
        assertThat(said)
                .contains("TAKE_OUT", "POUR_NOW", "PUT_BACK", "AT_TARGET", "OUT_OF_RANGE", "NOT_A_READING")
                .doesNotContain("UNKNOWN_MODEL", "UNKNOWN_MEDIUM", "UNKNOWN_VESSEL", "DUPLICATE", "TOO_LATE");
    }

    @Test
    void whatIsBelievedFollowsTheThermometer() throws IOException {
        List<TillEvening.Told> untilRead = TillEvening.events(1).subList(0, 10);
        try (EventServer server = started()) {
            HttpClientOfTests till = new HttpClientOfTests(server);
            till.post(TillEvening.message(untilRead));
            JsonNode bottle = json(till.get("/vessels").body()).get("vessels").get(0);
            // By hand: 40 min with a time constant of 24 min in ice at 0 °C leave 12 exp(−40/24) = 2.27 °C; a reading
            // is off by 0.3 K.
            assertThat(bottle.get("temperatureCelsius").doubleValue()).isCloseTo(2.27, within(0.6));
        }
    }

    @Test
    void postsSideBySideSayOfEachBottleWhatPostsInARowSay() throws Exception {
        Map<String, List<TillEvening.Told>> byBottle = new TreeMap<>();
        TillEvening.events(BOTTLES)
                .forEach(event -> byBottle.computeIfAbsent(event.vessel(), v -> new ArrayList<>())
                        .add(event));
        Map<String, List<String>> inARow = new TreeMap<>();
        Map<String, List<String>> sideBySide = new ConcurrentSkipListMap<>();
        String vesselsInARow;
        String vesselsSideBySide;
        try (EventServer server = started()) {
            byBottle.forEach((bottle, events) -> inARow.put(bottle, answers(new HttpClientOfTests(server), events)));
            vesselsInARow = new HttpClientOfTests(server).get("/vessels").body();
        }
        ExecutorService tills = Executors.newFixedThreadPool(BOTTLES);
        try (EventServer server = started()) {
            byBottle.forEach((bottle, events) ->
                    tills.execute(() -> sideBySide.put(bottle, answers(new HttpClientOfTests(server), events))));
            tills.shutdown();
            assertThat(tills.awaitTermination(100, TimeUnit.SECONDS)).isTrue();
            vesselsSideBySide = new HttpClientOfTests(server).get("/vessels").body();
        }
        assertThat(sideBySide).isEqualTo(inARow).hasSize(BOTTLES);
        assertThat(vesselsSideBySide).isEqualTo(vesselsInARow);
    }

    private static List<String> answers(HttpClientOfTests till, List<TillEvening.Told> events) {
        List<String> answers = new ArrayList<>();
        for (int i = 0; i < events.size(); i += 4) {
            answers.add(till.post(TillEvening.message(events.subList(i, Math.min(events.size(), i + 4))))
                    .body());
        }
        return answers;
    }

    @Test
    void theSchemasAreSchemas() {
        assertThat(Schemas.errors(Schemas.SCHEMA, EventDesk.eventsSchema())).isEmpty();
        assertThat(Schemas.errors(Schemas.SCHEMA, EventDesk.answersSchema())).isEmpty();
        assertThat(Schemas.errors(Schemas.SCHEMA, "{\"type\":\"objekt\"}")).isNotEmpty();
    }

    @Test
    void schemasAreHandedOut() throws IOException {
        try (EventServer server = started()) {
            HttpClientOfTests till = new HttpClientOfTests(server);
            assertThat(till.get("/schema/events").body()).isEqualTo(EventDesk.eventsSchema());
            assertThat(till.get("/schema/answers").body()).isEqualTo(EventDesk.answersSchema());
            assertThat(till.get("/schema/answers").headers().firstValue("Content-Type"))
                    .contains("application/schema+json");
        }
    }

    @Test
    void otherRequestsAreRefused() throws IOException {
        try (EventServer server = started()) {
            HttpClientOfTests till = new HttpClientOfTests(server);
            refused(till.get("/bottles"), 404, "path", "/bottles", "/vessels");
            refused(till.get("/events"), 405, "method", "GET", "POST");
            refused(till.send(till.request("/vessels").DELETE()), 405, "method", "DELETE", "GET");
            HttpRequest.BodyPublisher good =
                    HttpRequest.BodyPublishers.ofString(TillEvening.message(TillEvening.events(1)));
            refused(till.send(till.request("/events").POST(good)), 415, "Content-Type", "is missing", "json");
            refused(
                    till.send(till.request("/events")
                            .header("Content-Type", "text/plain")
                            .POST(good)),
                    415,
                    "Content-Type",
                    "text/plain",
                    "application/json");
            refused(till.post(new byte[EventReader.MOST_BYTES + 1]), 413, "message", "too long", "262144 bytes");
            refused(till.post(new byte[10 * EventReader.MOST_BYTES]), 413, "message", "too long", "262144 bytes");
            assertThat(json(till.get("/vessels").body()).get("vessels")).isEmpty();
        }
    }

    private static void refused(HttpResponse<String> answer, int status, String field, String given, String allowed) {
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(status);
        Schemas.requireAnswer(answer.body());
        JsonNode refused = json(answer.body()).get("refused");
        assertThat(refused.get("field").textValue()).isEqualTo(field);
        assertThat(refused.get("given").textValue()).contains(given);
        assertThat(refused.get("allowed").textValue()).contains(allowed);
    }

    @Test
    void aClosedServerAnswersNobodyAndItsPortIsFree() throws IOException {
        EventServer server = started();
        HttpClientOfTests till = new HttpClientOfTests(server);
        assertThat(till.get("/vessels").statusCode()).isEqualTo(200);
        int port = server.port();
        server.close();
        server.close();
        assertThatThrownBy(() -> till.get("/vessels")).isInstanceOf(AssertionError.class);
        try (EventServer next = EventServer.start(port, EventDesk.of(TRACKER, Locale.ENGLISH))) {
            assertThat(next.port()).isEqualTo(port);
        }
    }

    @Test
    void anAnswerUnderWayIsGivenBeforeTheServerCloses() throws Exception {
        EventServer server = started();
        byte[] body = TillEvening.message(TillEvening.events(1)).getBytes(StandardCharsets.UTF_8);
        String head =
                "POST /events HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nContent-Type: application/json\r\n"
                        + "Content-Length: " + body.length + "\r\n\r\n";
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.port())) {
            OutputStream out = socket.getOutputStream();
            out.write(head.getBytes(StandardCharsets.US_ASCII));
            out.write(body, 0, 10);
            out.flush();
            until(() -> server.underWay() == 1);
            Thread closer = new Thread(server::close, "closer");
            closer.start();
            until(() -> closer.getState() == Thread.State.TIMED_WAITING);
            out.write(body, 10, body.length - 10);
            out.flush();
            String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertThat(answer).startsWith("HTTP/1.1 200 ").contains("TAKE_OUT");
            closer.join();
        }
        assertThatThrownBy(() -> new HttpClientOfTests(server).get("/vessels")).isInstanceOf(AssertionError.class);
    }

    private static void until(BooleanSupplier condition) {
        long latest = System.nanoTime() + TimeUnit.SECONDS.toNanos(30);
        while (!condition.getAsBoolean()) {
            assertThat(System.nanoTime()).as("it never came to that").isLessThan(latest);
            Thread.onSpinWait();
        }
    }

    @Test
    void aBadPortIsRefused() throws IOException {
        try (EventServer server = started()) {
            assertThat(status("http")).isEqualTo("2: port 'http': expected a number from 0 to 65535");
            assertThat(status("70000")).isEqualTo("2: cannot serve: port 70000: expected 0 to 65535");
            assertThat(status("" + server.port())).startsWith("2: cannot serve: ");
        }
    }

    private static String status(String port) {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        PrintStream stream = new PrintStream(err, true, StandardCharsets.UTF_8);
        int status = EventServer.run(new String[] {port}, stream, stream);
        return status + ": " + err.toString(StandardCharsets.UTF_8).strip();
    }

    private static JsonNode json(String text) {
        try {
            return new ObjectMapper().readTree(text);
        } catch (JsonProcessingException e) {
            throw new AssertionError(text, e);
        }
    }
}
