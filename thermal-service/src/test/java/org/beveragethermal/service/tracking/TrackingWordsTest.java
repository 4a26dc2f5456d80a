/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.ListResourceBundle;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;
import java.util.ResourceBundle;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Words are complete in both languages, take their form from the locale handed in, and can be replaced. */
class TrackingWordsTest {

    private static final Facts FACTS =
            new Facts(284.35, 0.2, 281.15, Optional.of(Truth.after(720)), "bucket", Optional.of("table"));
    private static final Facts HERE = new Facts(284.35, 0.2, 281.15, Optional.empty(), "bucket", Optional.empty());

    private static Alert alert(Alert.Code code, Facts facts) {
        return new Alert("bottle 7", Truth.START, code, facts);
    }

    private static Instruction instruction(Instruction.Code code, Facts facts) {
        return new Instruction("bottle 7", Truth.START, code, facts);
    }

    @Test
    void numbersAndWordsFollowTheLocale() {
        Alert soon = alert(Alert.Code.SOON_AT_TARGET, FACTS);
        assertThat(TrackingWords.in(Locale.ENGLISH).text(soon))
                .isEqualTo("bottle 7 is at 11.2 °C and will be at 8.0 °C in about 12 min.");
        assertThat(TrackingWords.in(Locale.GERMAN).text(soon))
                .isEqualTo("bottle 7 hat 11,2 °C und erreicht 8,0 °C in etwa 12 min.");
        assertThat(TrackingWords.in(Locale.GERMANY).signal(soon)).isEqualTo("Hinweis");
        // A language that is not there is English, numbers too, whatever the machine speaks.
        assertThat(TrackingWords.in(Locale.forLanguageTag("tr")).text(soon))
                .isEqualTo("bottle 7 is at 11.2 °C and will be at 8.0 °C in about 12 min.");
    }

    @Test
    void instructionsNameTheDestinationIfThereIsOne() {
        TrackingWords words = TrackingWords.in(Locale.ENGLISH);
        assertThat(words.text(instruction(Instruction.Code.TAKE_OUT, FACTS)))
                .isEqualTo("Take bottle 7 out of bucket and put it into table: it is at 11.2 °C, the limit is 8.0 °C.");
        assertThat(words.text(instruction(Instruction.Code.TAKE_OUT, HERE)))
                .isEqualTo("Take bottle 7 out of bucket: it is at 11.2 °C, the limit is 8.0 °C.");
    }

    @Test
    void everythingCanBeSaid() {
        for (Locale locale : new Locale[] {Locale.ENGLISH, Locale.GERMAN}) {
            TrackingWords words = TrackingWords.in(locale);
            for (Alert.Code code : Alert.Code.values()) {
                for (Facts facts : new Facts[] {FACTS, HERE}) {
                    assertThat(words.text(alert(code, facts)))
                            .contains("bottle 7")
                            .doesNotContain("{");
                    assertThat(words.signal(alert(code, facts))).isNotBlank();
                }
            }
            for (Instruction.Code code : Instruction.Code.values()) {
                for (Facts facts : new Facts[] {FACTS, HERE}) {
                    assertThat(words.text(instruction(code, facts)))
                            .contains("bottle 7")
                            .doesNotContain("{");
                }
            }
            for (Note.Code code : Note.Code.values()) {
                assertThat(words.text(new Note("e9", "bottle 7", code, "detail")))
                        .contains("e9")
                        .contains("bottle 7")
                        .doesNotContain("{");
            }
        }
    }

    @Test
    void bothLanguagesHaveTheSameKeys() throws IOException {
        assertThat(keys("Words_de.properties")).isEqualTo(keys("Words.properties"));
    }

    private static Set<String> keys(String resource) throws IOException {
        try (Reader reader = new InputStreamReader(
                Objects.requireNonNull(TrackingWords.class.getResourceAsStream(resource)), StandardCharsets.UTF_8)) {
            Properties words = new Properties();
            words.load(reader);
            return words.stringPropertyNames();
        }
    }

    @Test
    void ownWordsCanBeHandedIn() {
        ResourceBundle own = new ListResourceBundle() {
            @Override
            protected Object[][] getContents() {
                return new Object[][] {{"instruction.POUR_NOW", "verse {0} ({1,number,0})"}};
            }
        };
        assertThat(TrackingWords.of(own, Locale.FRENCH).text(instruction(Instruction.Code.POUR_NOW, HERE)))
                .isEqualTo("verse bottle 7 (11)");
    }
}
