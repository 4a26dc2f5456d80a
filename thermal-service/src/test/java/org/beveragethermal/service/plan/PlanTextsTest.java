/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TimeZone;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The words of plans: every sentence has some, no words are left over, and nothing of the machine shows in them. */
@Isolated
class PlanTextsTest {

    private static final ZoneId ZONE = ZoneId.of("Europe/Vienna");
    private static final Instant AT = Instant.parse("2027-06-18T16:05:59Z");
    private static final Path SOURCES = Path.of("src", "main", "java", "org", "beveragethermal", "service", "plan");
    private static final ResourceBundle ENGLISH = ResourceBundle.getBundle(PlanTexts.BUNDLE, Locale.ROOT);
    private static final Phrase MOVE =
            Phrase.of(Sentence.MOVE, new Argument.Bottles(List.of("a", "b", "c")), new Argument.Where("cold"));
    private static final Reason BROUGHT = Reason.of(
            Reason.Code.BROUGHT_BY,
            new Argument.Where("cold"),
            new Argument.Temperature(295.15),
            new Argument.Temperature(282.19));

    private static PlanTexts english() {
        return PlanTexts.in(Locale.ROOT, ZONE);
    }

    @Test
    void theBundleHoldsTheSentencesAndNothingElse() {
        Set<String> keys = new TreeSet<>();
        Stream.of(Sentence.values()).map(Sentence::key).forEach(keys::add);
        Stream.of(Reason.Code.values()).map(PlanTexts::key).forEach(keys::add);
        assertThat(new TreeSet<>(ENGLISH.keySet())).isEqualTo(keys);
    }

    @Test
    void everySentenceIsSaidSomewhere() throws IOException {
        StringBuilder code = new StringBuilder();
        try (Stream<Path> files = Files.list(SOURCES)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
                code.append(Files.readString(file, StandardCharsets.UTF_8));
            }
        }
        assertThat(Sentence.values())
                .allMatch(sentence -> Pattern.compile("Sentence\\." + sentence.name() + "\\b")
                        .matcher(code)
                        .find());
    }

    @ParameterizedTest
    @EnumSource(Sentence.class)
    void aSentenceUsesEachOfItsPlaces(Sentence sentence) {
        assertUses(ENGLISH.getString(sentence.key()), sentence.places());
    }

    /** How many arguments a reason has stands in words at its code; the sentences fill places from 0 without a gap. */
    @ParameterizedTest
    @EnumSource(Reason.Code.class)
    void aReasonUsesPlacesWithoutAGap(Reason.Code code) {
        String pattern = ENGLISH.getString(PlanTexts.key(code));
        assertUses(pattern, new MessageFormat(pattern, Locale.ROOT).getFormatsByArgumentIndex().length);
    }

    private static void assertUses(String pattern, int places) {
        assertThat(new MessageFormat(pattern, Locale.ROOT).getFormatsByArgumentIndex())
                .hasSize(places);
        for (int place = 0; place < places; place++) {
            assertThat(pattern).contains("{" + place + "}");
        }
    }

    @Test
    void wordsOfAPhraseAndOfAReason() {
        assertThat(english().words(MOVE)).isEqualTo("put a, b and c into the cold");
        assertThat(english().words(BROUGHT))
                .isEqualTo("left where it is it would be at 22.0 °C when poured; the cold brings it to 9.0 °C");
    }

    @Test
    void figuresAreShownToTenthsAndWholeMinutes() {
        PlanTexts texts = english();
        assertThat(texts.words(Phrase.of(Sentence.MARGIN_SPARE, new Argument.Difference(2.06))))
                .isEqualTo("2.1 K to spare");
        assertThat(texts.words(Phrase.of(Sentence.MARGIN_SPARE, new Argument.Difference(-0.04))))
                .isEqualTo("0.0 K to spare");
        assertThat(texts.words(Phrase.of(Sentence.LATEST, new Argument.Moment(AT))))
                .isEqualTo("at the latest at 18:05");
        assertThat(texts.words(Phrase.of(Sentence.ADVICE_EARLIER_START, new Argument.Span(Duration.ofSeconds(1530)))))
                .isEqualTo("start 26 min earlier");
        assertThat(texts.words(Phrase.of(Sentence.ADVICE_MORE_ICE, new Argument.Mass(2.5))))
                .isEqualTo("have 2.5 kg more ice");
    }

    @Test
    void anotherLanguageHasItsOwnWordsAndNumbersAndLacksNothing() {
        PlanTexts german = PlanTexts.in(Locale.GERMANY, ZONE);
        assertThat(german.words(MOVE)).isEqualTo("a, b und c in cold stellen");
        assertThat(german.words(BROUGHT)).isEqualTo("bliebe es stehen, wäre es bei 22,0 °C; cold bringt es auf 9,0 °C");
        // What a translation lacks is told in English.
        assertThat(german.words(Phrase.of(Sentence.VERDICT_VERIFIED)))
                .isEqualTo(english().words(Phrase.of(Sentence.VERDICT_VERIFIED)));
    }

    @Test
    void aBundleCanBeHandedIn() {
        ResourceBundle own = new java.util.ListResourceBundle() {
            @Override
            protected Object[][] getContents() {
                return new Object[][] {{"move", "{1} <- {0}"}};
            }
        };
        assertThat(PlanTexts.of(own, Locale.ROOT, ZONE).words(MOVE)).isEqualTo("the cold <- a, b and c");
    }

    /** A machine set to the language of the test bundle speaks English when asked for English, or for what is not there. */
    @ParameterizedTest
    @ValueSource(strings = {"", "en-US", "fr-FR"})
    void theMachinesOwnLanguageAndZoneDoNotMatter(String tag) {
        String words =
                elsewhere(() -> PlanTexts.in(Locale.forLanguageTag(tag), ZONE).words(BROUGHT)
                        + english().clock(AT));
        assertThat(words).isEqualTo(english().words(BROUGHT) + "18:05");
    }

    private static String elsewhere(Supplier<String> words) {
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Apia"));
            ResourceBundle.clearCache();
            return words.get();
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
            ResourceBundle.clearCache();
        }
    }
}
