/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.embedding;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.beveragethermal.service.tracking.Tracker;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bad messages are refused whole: with what was given, where, and what is allowed, and nothing is changed. */
class EventDeskTest {

    private static final Tracker TRACKER = House.tracker();
    private static final String GOOD = TillEvening.message(TillEvening.events(2).subList(0, 12));
    private static final String POURED =
            TillEvening.told(90, "bottle 1", "poured", "\"partLeft\":0.5").json();

    private EventDesk desk = EventDesk.of(TRACKER, Locale.ENGLISH);
    private String before = "";

    @BeforeEach
    void something() {
        desk = EventDesk.of(TRACKER, Locale.ENGLISH, 3);
        assertThat(desk.post(bytes(GOOD)).status()).isEqualTo(200);
        before = desk.vessels().json();
    }

    /** A good event stands before the bad one: it is not used either. */
    private JsonNode refusal(int status, String message) {
        EventDesk.Reply reply = desk.post(bytes(message));
        assertThat(reply.status()).as(reply.json()).isEqualTo(status);
        Schemas.requireAnswer(reply.json());
        assertThat(desk.vessels().json()).isEqualTo(before);
        try {
            return new ObjectMapper().readTree(reply.json()).get("refused");
        } catch (JsonProcessingException e) {
            throw new AssertionError(e);
        }
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static String after(String bad) {
        return "{\"version\":1,\"events\":[" + POURED + "," + bad + "]}";
    }

    @ParameterizedTest(name = "{0} → {1}")
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '`',
            value = {
                "\"partLeft\":0.5 ; \"partLeft\":0 ; partLeft ; 0 ; 0.01 to 1",
                "\"partLeft\":0.5 ; \"partLeft\":1e400 ; partLeft ; Infinity ; 0.01 to 1",
                "\"partLeft\":0.5 ; \"partLeft\":\"half\" ; partLeft ; \"half\" ; a number",
                "\"partLeft\":0.5 ; \"partLeft\":null ; partLeft ; null ; a number",
                "\"partLeft\":0.5 ; \"partLeft\":true ; partLeft ; true ; a number",
                ",\"partLeft\":0.5 ; `` ; partLeft ; is missing ; a number",
                "\"partLeft\":0.5 ; \"partLeft\":0.5,\"left\":1 ; `` ; left ; no fields beside",
                "\"poured\" ; \"drunk\" ; type ; drunk ; poured",
                "\"poured\" ; 7 ; type ; 7 ; a text",
                "\"type\":\"poured\", ; `` ; type ; is missing ; a text",
                "\"vessel\":\"bottle 1\", ; `` ; vessel ; is missing ; a text",
                "\"bottle 1\" ; \"\" ; vessel ; `` ; 1 to 100 letters",
                "\"bottle 1\" ; \"bottle\\n1\" ; vessel ; bottle ; 1 to 100 letters",
                "\"bottle 1\" ; \"<b>1</b>\" ; vessel ; <b> ; 1 to 100 letters",
                "2027-06-18T17:30:00Z ; 2027-06-18 ; at ; 2027-06-18 ; UTC",
                "2027-06-18T17:30:00Z ; 2027-06-18T17:30:00+02:00 ; at ; +02:00 ; UTC",
                "2027-06-18T17:30:00Z ; 2027-02-30T17:30:00Z ; at ; 02-30 ; UTC",
                "2027-06-18T17:30:00Z ; 1027-06-18T17:30:00Z ; at ; 1027 ; 2000 to 2099",
            })
    void aBadFieldIsNamed(String good, String bad, String field, String given, String allowed) {
        String message = after(POURED.replace(good, bad));
        assertThat(Schemas.errors(Schemas.EVENTS, message))
                .as("the outside validator refuses it too")
                .isNotEmpty();
        JsonNode refused = refusal(400, message);
        assertThat(refused.get("field").textValue()).isEqualTo("events[1]" + (field.isEmpty() ? "" : "." + field));
        assertThat(refused.get("given").textValue()).contains(given);
        assertThat(refused.get("allowed").textValue()).contains(allowed);
        assertThat(refused.get("message").textValue()).startsWith("events[1]");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '`',
            value = {
                "[] ; message ; an object",
                "7 ; message ; an object",
                "{} ; message.version ; 1",
                "{\"version\":2,\"events\":[7]} ; message.version ; 1",
                "{\"version\":1} ; message.events ; a list",
                "{\"version\":1,\"events\":[]} ; message.events ; 1 to 1000",
                "{\"version\":1,\"events\":[7]} ; events[0] ; an object",
                "{\"version\":1,\"events\":[{}],\"more\":1} ; message ; no fields beside",
            })
    void aBadMessageIsNamed(String message, String field, String allowed) {
        assertThat(Schemas.errors(Schemas.EVENTS, message)).isNotEmpty();
        JsonNode refused = refusal(400, message);
        assertThat(refused.get("field").textValue()).isEqualTo(field);
        assertThat(refused.get("allowed").textValue()).contains(allowed);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '`',
            value = {
                "{\"version\":1, ; is not JSON at line 1",
                "{\"version\":NaN} ; is not JSON",
                "{\"version\":1,\"version\":1} ; is not JSON",
                "{\"version\":1} {} ; is not JSON",
                "{\"version\":1,\"events\":[{\"type\":[1]}]} ; too deep",
                "{\"version\":1111111111111111111111111111111111111111111111111111} ; too long a part",
            })
    void whatIsNoJsonOrTooDeepIsRefused(String message, String given) {
        assertThat(refusal(400, message).get("given").textValue()).contains(given);
    }

    @Test
    void emptyAndForeignBytesAreRefused() {
        refusal(400, "");
        EventDesk.Reply reply = desk.post(new byte[] {'{', (byte) 0xff, '}'});
        assertThat(reply.status()).isEqualTo(400);
        assertThat(reply.json()).contains("UTF-8");
        refusal(400, "[".repeat(100_000));
        refusal(413, " ".repeat(EventReader.MOST_BYTES + 1));
        refusal(400, "{\"version\":1,\"events\":[" + "7,".repeat(EventReader.MOST_EVENTS) + "7]}");
        assertThat(refusal(400, after("{\"type\":\"" + "x".repeat(500) + "\"}"))
                        .get("message")
                        .textValue()
                        .length())
                .isLessThan(400);
    }

    @Test
    void anEmptyRangeIsRefusedThoughTheSchemaCannotSayIt() {
        String message = after(TillEvening.told(91, "bottle 1", "ordered", "\"lowCelsius\":9,\"highCelsius\":7")
                .json());
        Schemas.requireEvents(message);
        assertThat(refusal(400, message).get("allowed").textValue()).isEqualTo("lowCelsius or more");
    }

    @Test
    void moreVesselsThanThereIsRoomForAreRefused() {
        String two = TillEvening.message(List.of(placed("bottle 8"), placed("bottle 9")));
        JsonNode refused = refusal(503, two);
        assertThat(refused.get("given").textValue()).isEqualTo("places 2 vessels");
        assertThat(refused.get("allowed").textValue()).contains("at most 1 more");
        assertThat(desk.post(bytes(TillEvening.message(List.of(placed("bottle 8")))))
                        .status())
                .isEqualTo(200);
    }

    private static TillEvening.Told placed(String vessel) {
        return TillEvening.told(
                95,
                vessel,
                "placed",
                "\"model\":\"bottle\",\"medium\":\"table\",\"temperatureCelsius\":20,\"uncertaintyKelvin\":1");
    }

    @Test
    void whatIsNotKnownIsNotedAndChangesNothing() {
        EventDesk.Reply reply = desk.post(bytes(TillEvening.message(List.of(
                TillEvening.told(96, "bottle 7", "opened", ""),
                TillEvening.told(96, "bottle 1", "moved", "\"medium\":\"cold spot\"")))));
        Schemas.requireAnswer(reply.json());
        assertThat(reply.status()).isEqualTo(200);
        assertThat(reply.json()).contains("UNKNOWN_VESSEL", "UNKNOWN_MEDIUM");
        assertThat(desk.vessels().json()).isEqualTo(before);
    }

    @Test
    void aMessageThatComesTwiceCountsOnce() {
        EventDesk.Reply again = desk.post(bytes(GOOD));
        Schemas.requireAnswer(again.json());
        assertThat(again.json()).contains("DUPLICATE").contains("\"instructions\":[],\"alerts\":[]");
        assertThat(desk.vessels().json()).isEqualTo(before);
    }
}
