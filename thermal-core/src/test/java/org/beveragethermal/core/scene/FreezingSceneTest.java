/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.solver.EventAnswer;
import org.beveragethermal.core.solver.RunEvent;
import org.beveragethermal.core.store.FreezingStore;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.units.Measures;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;

/** Bottles forgotten in a freezer. */
final class FreezingSceneTest {

    private static final double ZERO = 273.15;
    private static final Beverage WINE = Beverage.wine(Measures.percentByVolume(12.5));
    private final FilledVessel wine = Vessels.highShouldered750().filledWith(WINE, Measures.celsius(20));
    private final Refrigerator freezer = Refrigerator.at(Measures.celsius(-18));

    @Test
    void wineForgottenInAFreezerTurnsToSlushAndThawsOnTheTable() {
        Scene scene = Scene.builder()
                .gear("freezer", freezer)
                .gear("table", Air.at(Measures.celsius(22)))
                .vessel("bottle", wine, "freezer")
                .move("bottle", Duration.ofHours(8), "table")
                .build();
        ScenePrediction run = scene.predict(Duration.ofHours(40));
        Prediction bottle = run.vessel("bottle");
        Node contents = bottle.contents().nodes().get(0);
        FreezingStore store = (FreezingStore) contents.store();
        double onset = WINE.freezingOnsetK();
        assertThat(bottle.notes()).anyMatch(note -> note.contains("supercooling"));
        EventAnswer begins = bottle.trajectory().first(RunEvent.freezingStarts(contents), 0);
        assertThat(begins)
                .isInstanceOfSatisfying(
                        EventAnswer.Reached.class, at -> assertThat(at.timeS()).isBetween(3600.0, 4 * 3600.0));
        double coldest = bottle.meanTemperatureK(8 * 3600);
        assertThat(coldest).isBetween(ZERO - 17, onset - 1);
        assertThat(store.iceFraction(coldest)).isBetween(0.15, 0.65);
        assertThat(run.trajectory().first(RunEvent.iceGone(contents), 8 * 3600))
                .isInstanceOf(EventAnswer.Reached.class);
        assertThat(bottle.meanTemperatureK(40 * 3600)).isCloseTo(ZERO + 22, within(2.0));
        assertThat(run.ledger().closure()).isLessThan(1e-9);
    }

    @Test
    void waterStaysAtItsFreezingPointUntilAllOfItIsIce() {
        FilledVessel water = Vessels.highShouldered750().filledWith(Beverage.water(), Measures.celsius(5));
        Prediction bottle = Lumped.of(water).expose(Exposure.in(freezer, Duration.ofHours(20)));
        FreezingStore store = (FreezingStore) bottle.contents().nodes().get(0).store();
        double half = bottle.meanTemperatureK(7 * 3600);
        assertThat(half).isCloseTo(ZERO, within(2 * FreezingStore.PLATEAU_K)).isLessThan(ZERO);
        assertThat(store.iceFraction(half)).isBetween(0.05, 0.95);
    }

    @Test
    void bottleThatStaysWarmEnoughHasNoSuchNote() {
        Prediction cool =
                Lumped.of(wine).expose(Exposure.in(Refrigerator.at(Measures.celsius(-3)), Duration.ofHours(24)));
        assertThat(cool.notes()).noneMatch(note -> note.contains("freeze"));
    }
}
