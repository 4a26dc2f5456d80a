/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import java.text.MessageFormat;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.Objects;
import java.util.ResourceBundle;
import org.beveragethermal.service.internal.Wording;

/**
 * Puts alerts, instructions and notes into words. The words stand in a resource bundle, English and German here; whoever wants another
 * language hands in a bundle with the same keys. No locale is assumed: it is handed in.
 *
 * <p>The arguments of a pattern are: {0} vessel, {1} temperature [°C], {2} the temperature that it is about [°C], {3} minutes until then,
 * {4} where the vessel is, {5} where it should go; of a note: {0} event, {1} vessel, {2} detail. A key that ends in {@code .now} or
 * {@code .somewhere} replaces the other where nothing lies ahead or no destination is known.
 */
public final class TrackingWords {

    private static final String BUNDLE = "org.beveragethermal.service.tracking.Words";

    private final ResourceBundle words;
    private final Locale locale;

    private TrackingWords(ResourceBundle words, Locale locale) {
        this.words = Objects.requireNonNull(words, "words");
        this.locale = Objects.requireNonNull(locale, "locale");
    }

    /**
     * The words of this library.
     *
     * @param locale language and form of numbers; English in both if the language is not there
     * @return words
     */
    public static TrackingWords in(Locale locale) {
        Wording wording = Wording.of(BUNDLE, locale);
        return new TrackingWords(wording.bundle(), wording.locale());
    }

    /**
     * Words of one's own.
     *
     * @param words a bundle with the keys of this library's
     * @param locale form of numbers
     * @return words
     */
    public static TrackingWords of(ResourceBundle words, Locale locale) {
        return new TrackingWords(words, locale);
    }

    /**
     * An alert in words.
     *
     * @param alert the alert
     * @return one or two sentences
     */
    public String text(Alert alert) {
        return format("alert." + alert.code().name(), alert.vesselId(), alert.at(), alert.facts());
    }

    /**
     * The signal word of an alert.
     *
     * @param alert the alert
     * @return a word
     */
    public String signal(Alert alert) {
        return words.getString("signal." + alert.code().signal().name());
    }

    /**
     * An instruction in words.
     *
     * @param instruction the instruction
     * @return one or two sentences
     */
    public String text(Instruction instruction) {
        return format(
                "instruction." + instruction.code().name(),
                instruction.vesselId(),
                instruction.at(),
                instruction.facts());
    }

    /**
     * A note in words.
     *
     * @param note the note
     * @return a sentence; the detail is in English
     */
    public String text(Note note) {
        return new MessageFormat(words.getString("note." + note.code().name()), locale)
                .format(new Object[] {note.eventId(), note.vesselId(), note.detail()});
    }

    private String format(String key, String vesselId, Instant at, Facts facts) {
        long minutes = facts.expectedAt()
                .map(then -> Math.round(Duration.between(at, then).toSeconds() / 60.0))
                .orElse(0L);
        String used = key;
        if (minutes == 0 && words.containsKey(key + ".now")) {
            used = key + ".now";
        }
        if (facts.destinationId().isEmpty() && words.containsKey(key + ".somewhere")) {
            used = key + ".somewhere";
        }
        return new MessageFormat(words.getString(used), locale).format(new Object[] {
            vesselId,
            facts.temperatureK() - Checks.ZERO_C_IN_K,
            facts.limitK() - Checks.ZERO_C_IN_K,
            minutes,
            facts.mediumId(),
            facts.destinationId().orElse("")
        });
    }
}
