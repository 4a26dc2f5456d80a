/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RegressionTest {

    private static String row(String what, String measured, String floor) {
        return "| P1 | " + what + " | a peer | " + measured + " | – | " + floor + " | – | yes |";
    }

    @ParameterizedTest
    @CsvSource({
        "12.2 ×, 6.2 ×, ≥ 5 ×, false",
        "12.2 ×, 6.0 ×, ≥ 5 ×, true",
        "9.0 ×, 6.6 ×, ≥ 8 ×, false",
        "9.0 ×, 6.2 ×, ≥ 8 ×, true",
        "1.1 ×, 2.1 ×, ≤ 2 ×, false",
        "1.1 ×, 2.3 ×, ≤ 2 ×, true",
        "0 B, 0 B, ≤ 1000 B, false",
        "0 B, 24 B, ≤ 1000 B, true",
        "30 B, 50 B, ≤ 1000 B, false",
        "–, 6.0 ×, ≥ 25 ×, false",
        "12.2 ×, –, ≥ 25 ×, false"
    })
    void aRowThatIsLessThanHalfAsGoodHasFallen(String recorded, String now, String floor, boolean fallen) {
        assertThat(Regression.fallen(List.of(row("work", recorded, floor)), List.of(row("work", now, floor))))
                .hasSize(fallen ? 1 : 0);
    }

    @Test
    void anOwnJobThatFailedHasFallenAndAPeerThatIsMissingHasNot() {
        List<String> recorded = List.of(row("work", "12 ×", "≥ 8 ×"));
        String failed = row("work", "–", "≥ 8 ×").replace("yes", "not measured: " + Row.OWN_FAILED);
        assertThat(Regression.fallen(recorded, List.of(failed))).hasSize(1);
        assertThat(Regression.fallen(recorded, List.of(row("work", "–", "≥ 8 ×"))))
                .isEmpty();
    }

    @Test
    void rowsAreFoundByWhatTheySayAndUnknownOnesPassedOver() {
        assertThat(Regression.fallen(
                        List.of(row("a", "10 ×", "≥ 1 ×"), row("b", "20 ×", "≥ 1 ×")),
                        List.of(row("b", "4.0 ×", "≥ 1 ×"), row("c", "1.0 ×", "≥ 1 ×"))))
                .containsExactly("P1, b, a peer: 4.0 ×, recorded 20 ×");
    }
}
