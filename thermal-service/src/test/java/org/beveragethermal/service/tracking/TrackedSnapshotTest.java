/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.beveragethermal.service.tracking.TrackedSnapshot.KeptEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A snapshot that no tracker can have made is refused, with the figure and its range, so that nothing restored gives a NaN. */
class TrackedSnapshotTest {

    private static final Tracker TRACKER = Tracker.of(List.of(Truth.MODEL), TrackingRules.usual());
    private static final TrackedSnapshot GOOD = good();

    private static TrackedSnapshot good() {
        Fleet fleet = Fleet.of(TRACKER);
        fleet.apply(List.of(
                new TrackingEvent.Placed("p", Truth.START, "b", "bottle", "cold", Truth.ZERO + 20, 0.5),
                new TrackingEvent.Reading("r", Truth.after(600), "b", Truth.ZERO + 19)));
        return fleet.snapshots().get(0);
    }

    private static TrackedSnapshot with(Map<String, Double> before, List<KeptEvent> kept, Map<String, Long> said) {
        return new TrackedSnapshot(
                GOOD.formatVersion(),
                GOOD.vesselId(),
                GOOD.modelName(),
                GOOD.media(),
                GOOD.folded(),
                GOOD.placedIdHash(),
                before,
                kept,
                said,
                GOOD.aside());
    }

    @Test
    void whatATrackerMadeIsRestored() {
        assertThat(GOOD.restore(TRACKER).snapshot()).isEqualTo(GOOD);
    }

    @ParameterizedTest
    @CsvSource({
        "temperatureK, 1e9",
        "mediumK, 149",
        "mediumSdK, 51",
        "logFactor, -4.1",
        "mediumOffsetK, 300",
        "biasK, 1e300",
        "pTT, -1e-3",
        "pcc, -1e-3",
        "paa, -1e-3",
        "pbb, -1e-3",
        "pTT, 1e300",
        "pTb, -1e9",
        "innovationVarianceK2, -1",
        "medium, 2",
        "previousMedium, -2",
        "part, 0",
        "finished, 2",
        "strays, 21",
        "changes, -1",
        "sumUp, -1",
        "sumDown, -1",
        "atMicros, 1e18",
        "placedMicros, 1e18",
        "changedMicros, -1e18",
        "readMicros, 1e300"
    })
    void figureOutOfItsRangeIsRefused(String name, double value) {
        Map<String, Double> before = new HashMap<>(GOOD.before());
        before.put(name, value);
        TrackedSnapshot bad = with(before, GOOD.kept(), GOOD.said());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> bad.restore(TRACKER))
                .withMessageContaining(name)
                .withMessageContaining("snapshot of vessel b")
                .withMessageContaining("expected");
    }

    @ParameterizedTest
    @CsvSource({
        "0, 2, 0, medium",
        "1, 1e9, 0, temperature",
        "1, 280, 51, standard uncertainty",
        "1, 280, -1, standard uncertainty",
        "3, 0, 0, part left",
        "4, -1e300, 0, temperature"
    })
    void keptEventOutOfItsRangeIsRefused(int kind, double value, double sdK, String what) {
        long at = Checks.micros(Truth.after(700));
        TrackedSnapshot bad = with(GOOD.before(), List.of(new KeptEvent(at, 1, kind, value, sdK)), GOOD.said());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> bad.restore(TRACKER))
                .withMessageContaining(what + " of a kept event in snapshot of vessel b");
    }

    @Test
    void timeOutOfItsRangeIsRefused() {
        TrackedSnapshot kept = with(GOOD.before(), List.of(new KeptEvent(Long.MAX_VALUE, 1, 4, 280, 0)), GOOD.said());
        assertThatThrownBy(() -> kept.restore(TRACKER)).hasMessageContaining("time of a kept event");
        Map<String, Long> said = new HashMap<>(GOOD.said());
        said.put("nowMicros", Long.MAX_VALUE);
        TrackedSnapshot now = with(GOOD.before(), GOOD.kept(), said);
        assertThatThrownBy(() -> now.restore(TRACKER)).hasMessageContaining("latest time in snapshot of vessel b");
        long early = Checks.micros(Truth.START) - 1;
        TrackedSnapshot before = with(GOOD.before(), List.of(new KeptEvent(early, 1, 4, 280, 0)), GOOD.said());
        assertThatThrownBy(() -> before.restore(TRACKER)).hasMessageContaining("expected at or after");
    }

    @ParameterizedTest
    @CsvSource({"openedMicros, 1", "refusedMicros, -1", "toldChangeMicros, -1", "refusedInRow, 1", "told, 1"})
    void whatWasSaidOutOfItsRangeIsRefused(String name, int sign) {
        Map<String, Long> said = new HashMap<>(GOOD.said());
        said.put(name, name.endsWith("Micros") ? sign * (Long.MAX_VALUE - 1) : -1L);
        TrackedSnapshot bad = with(GOOD.before(), GOOD.kept(), said);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> bad.restore(TRACKER))
                .withMessageContaining(name + " in snapshot of vessel b");
    }

    @Test
    void readingAsideThatIsNoneIsRefused() {
        for (TrackingEvent.Reading reading : List.of(
                new TrackingEvent.Reading("r", Truth.after(1e6), "another", 280),
                new TrackingEvent.Reading("r", Truth.after(1e6), "b", Double.NaN))) {
            TrackedSnapshot bad = new TrackedSnapshot(
                    GOOD.formatVersion(),
                    GOOD.vesselId(),
                    GOOD.modelName(),
                    GOOD.media(),
                    GOOD.folded(),
                    GOOD.placedIdHash(),
                    GOOD.before(),
                    GOOD.kept(),
                    GOOD.said(),
                    Optional.of(reading));
            assertThatThrownBy(() -> bad.restore(TRACKER)).hasMessageContaining("reading held aside");
        }
    }

    /** Every stored figure in turn at extremes: refused, or nothing that is not finite comes of it. */
    @Test
    void noStoredFigureMakesANaN() {
        double[] extremes = {
            0,
            1,
            -1,
            4,
            -4,
            1e-300,
            -1e-300,
            149.9,
            150,
            500,
            1000,
            -1000,
            1e6,
            -1e6,
            1e12,
            1e300,
            -1e300,
            Double.MAX_VALUE
        };
        int restored = 0;
        for (String name : BeliefFigures.NAMES) {
            for (double extreme : extremes) {
                Map<String, Double> before = new HashMap<>(GOOD.before());
                before.put(name, extreme);
                TrackedVessel vessel;
                try {
                    vessel = with(before, GOOD.kept(), GOOD.said()).restore(TRACKER);
                } catch (IllegalArgumentException refused) {
                    continue;
                }
                restored++;
                for (double laterS : new double[] {0, 3600, 1e8}) {
                    Estimate estimate = vessel.estimateAt(vessel.now().plusSeconds((long) laterS));
                    assertThat(new double[] {
                                estimate.temperatureK(), estimate.sdK(), estimate.logFactor(), estimate.logFactorSd(),
                                estimate.mediumK(), estimate.mediumSdK(), estimate.biasK(), estimate.biasSdK(),
                                vessel.timeTo(Truth.ZERO + 10, vessel.now(), 0.9)
                                                .neverChance()
                            })
                            .as(name + " at " + extreme)
                            .doesNotContain(Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY);
                }
            }
        }
        assertThat(restored).isGreaterThan(100);
    }
}
