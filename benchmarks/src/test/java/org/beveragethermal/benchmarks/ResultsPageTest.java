/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.beveragethermal.benchmarks.Row.Figure;
import org.junit.jupiter.api.Test;

/** The page of results: what a row says, and that a run of some rows leaves the others alone. */
class ResultsPageTest {

    private static final Measured OWN = new Measured("p1/own", 2e-6, 1e-6, 4e-6, 16, "tolerance 1.0e-03", "0.5 s");
    private static final Measured OTHER = new Measured("p1/other", 100e-6, 80e-6, 120e-6, -1, "-", "-");
    private static final Map<String, Measured> BOTH = Map.of("p1/own", OWN, "p1/other", OTHER);

    @Test
    void aRatioIsThatOfMediansAndItsSpreadThatOfExtremes() {
        assertThat(row(Figure.TIMES_FASTER, 25, 80).text(BOTH))
                .isEqualTo("| P1 | what | other | 50.0 × | 20.0 – 120 | ≥ 25 × | ≥ 80 × | yes |");
    }

    @Test
    void aRowThatMissesIsMarkedAndSaysWhy() {
        assertThat(row(Figure.TIMES_FASTER, 60, 0).text(BOTH)).endsWith("| ≥ 60 × | – | **no**: because |");
        assertThat(row(Figure.TIMES_AS_LONG, 2, 1.2).text(Map.of("p1/own", OTHER, "p1/other", OWN)))
                .isEqualTo("| P1 | what | other | 50.0 × | 20.0 – 120 | ≤ 2 × | ≤ 1.2 × | **no**: because |");
        assertThat(row(Figure.BYTES, 8, 0).text(BOTH)).contains("| 16 B |").contains("**no**");
        assertThat(row(Figure.TIMES_FASTER, 25, 40).text(BOTH)).endsWith("| yes, stretch too |");
    }

    @Test
    void whatCouldNotBeMeasuredIsNotReached() {
        assertThat(row(Figure.TIMES_FASTER, 25, 0).text(Map.of("p1/own", OWN)))
                .endsWith("| not measured: the other tool failed or is not on this machine |");
        assertThat(row(Figure.TIMES_FASTER, 25, 0).text(Map.of("p1/other", OTHER)))
                .endsWith("| not measured: the project's job failed |");
    }

    @Test
    void aLineOfAProcessIsReadBack() {
        assertThat(Measured.parse(OWN.line())).contains(OWN);
        assertThat(Measured.parse("REFERENCE\tp1\t9377.261608")).isEmpty();
    }

    @Test
    void aRunOfSomeRowsLeavesTheOthersAndThePartWrittenByHand() {
        List<String> order = List.of("P1", "P2");
        String first = ResultsPage.empty()
                .with("P2", List.of("| P2 | old |"), List.of("| tool | P2 | old |"))
                .with("P1", List.of("| P1 | old |"), List.of("| tool | P1 | old |"))
                .text("One.", order)
                .replace("Not written yet.", "By hand.");
        String second = ResultsPage.parse(first)
                .with("P1", List.of("| P1 | new |", "| P1 | newer |"), List.of("| tool | P1 | new |"))
                .text("Two.", order);
        assertThat(first).contains("| P1 | old |\n| P2 | old |\n", "| tool | P1 | old |\n| tool | P2 | old |\n");
        assertThat(second)
                .contains("Two.", "| P1 | new |\n| P1 | newer |\n| P2 | old |\n", "By hand.")
                .contains("| tool | P1 | new |\n| tool | P2 | old |\n")
                .doesNotContain("One.", "| P1 | old |", "| tool | P1 | old |");
        assertThat(ResultsPage.parse(second).text("Two.", order)).isEqualTo(second);
    }

    @Test
    void everyRowHasItsJobs() {
        Set<String> names = new HashSet<>();
        for (Group group : Group.all()) {
            assertThat(names.add(group.name())).as(group.name()).isTrue();
            for (Row row : group.rows()) {
                assertThat(row.group()).isEqualTo(group.name());
                assertThat(group.labels()).containsKey(row.own());
                assertThat(row.other().isEmpty() || group.labels().containsKey(row.other()))
                        .as(row.other())
                        .isTrue();
            }
        }
    }

    @Test
    void theLoosestToleranceThatIsNoLuckIsTaken() {
        // 0.1 passes, but the next tighter one does not.
        Tuned tuned =
                Tuned.loosest(1, 2, 0.05, "K", tolerance -> tolerance > 0.09 && tolerance < 0.11 ? 0 : 2 * tolerance);
        assertThat(tuned.setting()).isEqualTo("tolerance 1.6e-02");
        assertThat(tuned.errorText()).isEqualTo("0.032 K");
    }

    @Test
    void aToolThatFailsTheCheckIsRefused() {
        assertThatThrownBy(() -> Tuned.loosest(1, 2, 0.05, "K", tolerance -> Double.NaN))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("no tolerance keeps the error of 0.05 K");
        assertThatThrownBy(() -> Tuned.fixed(0.06, 0.05, "K")).isInstanceOf(IllegalStateException.class);
    }

    private static Row row(Figure figure, double floor, double stretch) {
        return new Row("P1", "what", "other", "p1/own", "p1/other", figure, floor, stretch, "because");
    }
}
