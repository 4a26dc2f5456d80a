/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.measured;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.beveragethermal.core.uncertainty.Ensemble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Compares all measured runs that can be described, and leaves the tables and the drawing of {@code docs/measured.md}.
 *
 * <p>What the document asks for is reported there, reached or not. Here only that holds which a sound model cannot miss: every row is
 * accounted for, equal runs agree to the last bit, and no figure of the summary is far from what it may be.
 */
@Tag("ensemble")
final class MeasuredRunsTest {

    /**
     * Three times as many take three minutes. With this number another seed moves one row in ice water across the end of its
     * interval, and the median of upper over lower there by less than a tenth.
     */
    private static final int SAMPLES = 100;

    private static final long SEED = 20260101L;

    @Test
    void everyRowIsRunOrSaidNotToBe() {
        List<String> named = new ArrayList<>(Mappings.notYet().keySet());
        Mappings.all().forEach(series -> named.addAll(series.ids()));

        assertThat(named)
                .containsExactlyInAnyOrderElementsOf(
                        MeasuredRow.all().stream().map(MeasuredRow::id).toList())
                .hasSize(101);
    }

    @Test
    void equalRunsAgreeToTheLastBitOnAnyThreads() {
        ExecutorService threads = Executors.newFixedThreadPool(3);
        try {
            for (String id : List.of("M043", "M058", "M072")) {
                Mappings.Series series = Mappings.all().stream()
                        .filter(s -> s.ids().contains(id))
                        .findFirst()
                        .orElseThrow();
                List<MeasuredRow> rows = MeasuredRow.all().stream()
                        .filter(row -> series.ids().contains(row.id()))
                        .toList();
                String first = ends(Comparison.of(series, rows, Ensemble.of(3, SEED)));

                assertThat(ends(Comparison.of(series, rows, Ensemble.of(3, SEED))))
                        .isEqualTo(first);
                assertThat(ends(Comparison.of(series, rows, Ensemble.of(3, SEED).on(threads))))
                        .isEqualTo(first);
                assertThat(ends(Comparison.of(series, rows, Ensemble.of(3, SEED + 1))))
                        .isNotEqualTo(first);
            }
        } finally {
            threads.shutdown();
        }
    }

    private static String ends(List<Comparison> comparisons) {
        return comparisons.stream().map(Comparison::predicted).toList().toString();
    }

    /** The guards are those of a model that is wrong somewhere, not those that the document asks for. */
    @Test
    void noFigureOfTheSummaryIsFarFromWhatItMayBe() {
        List<MeasuredRow> rows = MeasuredRow.all();
        Map<String, String> notYet = Mappings.notYet();
        ExecutorService threads =
                Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
        Summary summary;
        List<Comparison> inUse;
        try {
            Ensemble ensemble = Ensemble.of(SAMPLES, SEED).on(threads);
            summary = new Summary(Comparison.all(Mappings.all(), ensemble));
            inUse = Comparison.all(Mappings.inUse(), ensemble);
        } finally {
            threads.shutdown();
        }
        new Report(rows, notYet, summary, inUse).leave();

        assertThat(summary.comparisons()).hasSize(rows.size() - notYet.size());
        for (Summary guarded : List.of(summary, summary.with(inUse))) {
            assertThat(guarded.coverage(Summary::isInAir)).isBetween(0.4, 1.0);
            assertThat(guarded.medianRatio(Summary::isInAir)).isBetween(1.05, 4.0);
            assertThat(guarded.medianLogarithmicError(c -> Summary.isSoundTime(c) && c.isAlwaysReached()))
                    .isBetween(0.0, 0.8);
            assertThat(guarded.medianLogarithmicError(c -> Summary.saysWhen(c) && c.isAlwaysReached()))
                    .isBetween(0.0, 0.7);
        }
        assertThat(summary.coverage(Summary::isInIceWater)).isBetween(0.4, 1.0);
        assertThat(summary.medianRatio(Summary::isInIceWater)).isBetween(1.2, 10.0);
        assertThat(summary.coverage(Summary::isInOtherIce)).isBetween(0.4, 1.0);
    }
}
