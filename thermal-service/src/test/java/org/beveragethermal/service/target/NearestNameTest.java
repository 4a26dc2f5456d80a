/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.target;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestNameTest {
    /** Textbook examples of the distance, from memory; "ca" and "abc" tell it from the distance that may edit twice. */
    @ParameterizedTest
    @CsvSource({"kitten, sitting, 3", "ca, abc, 3", "ab, ba, 1", "red, red, 0", "'', red, 3", "saturday, sunday, 3"})
    void editDistanceOfTextbookExamples(String a, String b, int distance) {
        assertThat(NearestName.editDistance(a, b)).isEqualTo(distance);
    }

    @Property(tries = 200, seed = "4714")
    void editDistanceIsSymmetricAndBounded(
            @ForAll @AlphaChars @StringLength(max = 12) String a,
            @ForAll @AlphaChars @StringLength(max = 12) String b) {
        int distance = NearestName.editDistance(a, b);
        assertThat(distance).isEqualTo(NearestName.editDistance(b, a));
        assertThat(distance).isBetween(Math.abs(a.length() - b.length()), Math.max(a.length(), b.length()));
        assertThat(distance == 0).isEqualTo(a.equals(b));
    }

    @Test
    void exactOrderWinsOverOtherOrder() {
        assertThat(NearestName.nearest("white red", List.of("red-white", "white-red")))
                .contains("white-red");
    }

    @Test
    void nothingIsSuggestedWhenNothingIsNear() {
        assertThat(NearestName.nearest("lemonade", List.of("red-full", "white")))
                .isEmpty();
        assertThat(NearestName.nearest("", List.of("red-full", "white"))).isEmpty();
    }

    @Test
    void oneWordThatIsKnownBringsAllThatHoldIt() {
        List<String> known = List.of("red-full", "red-light", "white-full", "mulled-wine");
        assertThat(NearestName.advice("red wine", known))
                .isEqualTo("did you mean one of red-full, red-light, mulled-wine?");
        assertThat(NearestName.advice("my full", known)).isEqualTo("did you mean one of red-full, white-full?");
        assertThat(NearestName.advice("lemonade", known)).startsWith("expected one of ");
    }
}
