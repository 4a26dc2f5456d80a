/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Words and numbers are those of the language asked for, or English both; what the machine speaks does not matter. */
class WordingTest {

    /** This bundle has English in its root, and German. */
    private static final String BASE = "org.beveragethermal.service.tracking.Words";

    @ParameterizedTest
    @CsvSource({"de,de,de", "de-CH,de,de-CH", "en-GB,und,und", "fr,und,und", "und,und,und"})
    void wordsAndNumbersBelongTogether(String asked, String words, String numbers) {
        for (Locale machine : new Locale[] {Locale.GERMANY, Locale.US, Locale.FRANCE}) {
            Wording wording = on(machine, Locale.forLanguageTag(asked));
            assertThat(wording.bundle().getLocale()).isEqualTo(Locale.forLanguageTag(words));
            assertThat(wording.locale()).isEqualTo(Locale.forLanguageTag(numbers));
        }
    }

    @Test
    void aBundleThatIsNowhereIsRefused() {
        assertThatThrownBy(() -> Wording.of(BASE + "Missing", Locale.ROOT))
                .isInstanceOf(MissingResourceException.class);
    }

    private static Wording on(Locale machine, Locale asked) {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(machine);
            ResourceBundle.clearCache();
            return Wording.of(BASE, asked);
        } finally {
            Locale.setDefault(before);
            ResourceBundle.clearCache();
        }
    }
}
