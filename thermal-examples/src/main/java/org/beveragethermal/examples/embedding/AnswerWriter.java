/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.embedding;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.beveragethermal.service.tracking.Alert;
import org.beveragethermal.service.tracking.Estimate;
import org.beveragethermal.service.tracking.Facts;
import org.beveragethermal.service.tracking.Fleet;
import org.beveragethermal.service.tracking.Instruction;
import org.beveragethermal.service.tracking.Note;
import org.beveragethermal.service.tracking.TrackedVessel;
import org.beveragethermal.service.tracking.TrackingWords;

/** Writes answers as {@code answers.schema.json} has them. */
final class AnswerWriter {

    private static final int VERSION = 1;
    private static final double HUNDREDTHS = 100;
    private static final JsonMapper JSON = new JsonMapper();

    private final TrackingWords words;

    AnswerWriter(Locale locale) {
        words = TrackingWords.in(locale);
    }

    String report(Fleet.Report report) {
        ObjectNode answer = answer();
        ArrayNode instructions = answer.putArray("instructions");
        for (Instruction instruction : report.instructions()) {
            ObjectNode said = instructions.addObject();
            said.put("vessel", instruction.vesselId());
            said.put("at", instruction.at().toString());
            said.put("code", instruction.code().name());
            said.put("text", words.text(instruction));
            facts(said, instruction.facts());
        }
        ArrayNode alerts = answer.putArray("alerts");
        for (Alert alert : report.alerts()) {
            ObjectNode said = alerts.addObject();
            said.put("vessel", alert.vesselId());
            said.put("at", alert.at().toString());
            said.put("code", alert.code().name());
            said.put("signal", alert.code().signal().name());
            said.put("text", words.text(alert));
            facts(said, alert.facts());
        }
        ArrayNode notes = answer.putArray("notes");
        for (Note note : report.notes()) {
            ObjectNode said = notes.addObject();
            said.put("event", note.eventId());
            said.put("vessel", note.vesselId());
            said.put("code", note.code().name());
            said.put("text", words.text(note));
        }
        return text(answer);
    }

    static String vessels(List<TrackedVessel> vessels) {
        ObjectNode answer = answer();
        ArrayNode list = answer.putArray("vessels");
        for (TrackedVessel vessel : vessels) {
            Estimate estimate = vessel.estimate();
            ObjectNode told = list.addObject();
            told.put("vessel", vessel.id());
            told.put("at", estimate.at().toString());
            told.put("medium", estimate.mediumId());
            told.put("temperatureCelsius", celsius(estimate.temperatureK()));
            told.put("lowCelsius", celsius(estimate.lowK()));
            told.put("highCelsius", celsius(estimate.highK()));
            told.put("finished", vessel.isFinished());
        }
        return text(answer);
    }

    static String refusal(BadMessage refusal) {
        ObjectNode answer = answer();
        answer.putObject("refused")
                .put("field", refusal.field())
                .put("given", refusal.given())
                .put("allowed", refusal.allowed())
                .put("message", refusal.sentence());
        return text(answer);
    }

    private static ObjectNode answer() {
        return JsonNodeFactory.instance.objectNode().put("version", VERSION);
    }

    private static void facts(ObjectNode said, Facts facts) {
        said.put("temperatureCelsius", celsius(facts.temperatureK()));
        said.put("uncertaintyKelvin", rounded(facts.sdK()));
        said.put("limitCelsius", celsius(facts.limitK()));
        facts.expectedAt().map(Instant::toString).ifPresent(at -> said.put("expectedAt", at));
        said.put("medium", facts.mediumId());
        facts.destinationId().ifPresent(destination -> said.put("destination", destination));
    }

    private static double celsius(double kelvin) {
        return rounded(kelvin - EventFields.ZERO_CELSIUS_K);
    }

    private static double rounded(double value) {
        return Math.round(value * HUNDREDTHS) / HUNDREDTHS;
    }

    private static String text(ObjectNode answer) {
        try {
            return JSON.writeValueAsString(answer);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree of texts and numbers cannot be written", e);
        }
    }
}
