/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.metresPerSecond;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Exposure;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.Freezer;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Freezer and bucket: every way that is offered is run forward again; none freezes; where one place will do, one is taken. */
class StagesTest {

    private static final double ZERO = 273.15;
    private static final Air ROOM = Air.at(celsius(22));
    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));
    private static final Freezer FREEZER = Freezer.at(celsius(-18));
    private static final IceWaterBath BUCKET_OF_ICE = IceWaterBath.in(
                    Bucket.of(millimetres(200), millimetres(400)), ROOM)
            .ice(kilograms(2), millimetres(25), celsius(-5))
            .water(kilograms(4), celsius(15))
            .build();

    private static Prediction forward(FilledVessel vessel, List<Duration> times, Surroundings... places) {
        List<Exposure> exposures = new ArrayList<>();
        for (int i = 0; i < places.length; i++) {
            if (!times.get(i).isZero()) {
                exposures.add(in(places[i], times.get(i)));
            }
        }
        return Runs.of(vessel).run(Duration.ZERO, exposures);
    }

    @Test
    void everyWayThatIsOfferedEndsAsWanted() {
        Wanted wanted = Wanted.between(celsius(7), celsius(9));
        StagesAnswer.Region region = (StagesAnswer.Region)
                Stages.of(BOTTLE, in(FREEZER, Duration.ofMinutes(60)), in(BUCKET_OF_ICE, Duration.ofMinutes(60)))
                        .endingAt(wanted);
        assertThat(region.columns().size()).isGreaterThanOrEqualTo(8);
        for (StagesAnswer.Column column : region.columns()) {
            for (Window window : column.last()) {
                for (Duration last : List.of(window.from(), window.to())) {
                    List<Duration> times = List.of(column.first().get(0), last);
                    Prediction run = forward(BOTTLE, times, FREEZER, BUCKET_OF_ICE);
                    double end = run.meanTemperatureK(run.trajectory().endS());
                    assertThat(end).isBetween(wanted.lowK() - 0.02, wanted.highK() + 0.02);
                    assertThat(run.iceFraction(run.trajectory().endS())).isZero();
                }
            }
        }
        // One place will do, and the bucket alone is faster than with the freezer before it.
        assertThat(region.leastHandling().handlings()).isEqualTo(1);
        assertThat(region.earliest().total())
                .isLessThanOrEqualTo(region.leastHandling().total());
        assertThat(region.earliest().stages().get(0)).isZero();
        assertThat(region.explain()).contains("Least handling");
        assertThat(region.snapshot().valuesSi()).containsKey("column0LastS");
    }

    @Test
    void theWayWithLeastIceMeltsLeast() {
        Wanted wanted = Wanted.between(celsius(7), celsius(9));
        // A freezer that does not do it alone, so that ice is needed whatever is done.
        StagesAnswer.Region region = (StagesAnswer.Region)
                Stages.of(BOTTLE, in(FREEZER, Duration.ofMinutes(25)), in(BUCKET_OF_ICE, Duration.ofMinutes(60)))
                        .endingAt(wanted);
        StagesAnswer.Schedule least = region.leastIce().orElseThrow();
        assertThat(least.stages().get(0)).isGreaterThan(Duration.ofMinutes(20));
        assertThat(least.iceMeltedKg()).isLessThan(region.earliest().iceMeltedKg());
        for (StagesAnswer.Schedule way : List.of(least, region.earliest(), region.leastHandling())) {
            List<Exposure> exposures = new ArrayList<>();
            if (!way.stages().get(0).isZero()) {
                exposures.add(in(FREEZER, way.stages().get(0)));
            }
            exposures.add(in(BUCKET_OF_ICE, way.stages().get(1)));
            Runs.SceneRun run = Runs.of(BOTTLE).runScene(Duration.ZERO, exposures);
            double endS = run.vessel().trajectory().endS();
            assertThat(run.iceMeltedKg(endS)).isCloseTo(way.iceMeltedKg(), within(2e-3));
            // Each way given is no better than the least.
            assertThat(way.iceMeltedKg()).isGreaterThanOrEqualTo(least.iceMeltedKg());
        }
        // Bottle and bath give the ice the heat that melts it: no more ice is gone than they, the room and the cold of
        // the ice account for.
        double bottleJPerK = BOTTLE.liquidMassKg() * BOTTLE.liquid().specificHeatCapacity(ZERO + 15)
                + BOTTLE.vessel().emptyMassKg()
                        * BOTTLE.vessel().wall().specificHeatCapacity().value();
        double mostJ = 15 * bottleJPerK + 15 * 4 * 4190;
        OutsideChecks.fromMemory(
                        "stages-least-ice", "energy bound: latent heat of fusion 333 kJ/kg, water 4.19 kJ/(kg K)")
                .what(
                        "ice melted by the earliest way over the most that a bottle from 22 °C to 7 °C and 4 kg of water of 15 °C melt")
                .unit("1")
                .between(0.2, 1)
                .check(region.earliest().iceMeltedKg() * 333e3 / mostJ);
        assertThat(region.explain()).contains("Least ice: ").contains(" kg have melted");
        assertThat(region.snapshot().valuesSi()).containsKeys("leastIceS", "leastIceMeltedKg", "iceMeltedKg");
        StagesAnswer.Region dry = (StagesAnswer.Region) Stages.of(
                        BOTTLE,
                        in(FREEZER, Duration.ofMinutes(60)),
                        in(Refrigerator.at(celsius(5)), Duration.ofHours(3)))
                .endingAt(wanted);
        assertThat(dry.leastIce()).isEmpty();
        assertThat(dry.explain()).doesNotContain("ice");
        // Where a place without ice will do, no ice is least.
        StagesAnswer.Region either = (StagesAnswer.Region)
                Stages.of(BOTTLE, in(FREEZER, Duration.ofMinutes(90)), in(BUCKET_OF_ICE, Duration.ofMinutes(30)))
                        .endingAt(wanted);
        assertThat(either.leastIce().orElseThrow().iceMeltedKg()).isZero();
        assertThat(either.leastIce().orElseThrow().stages().get(1)).isZero();
    }

    @Test
    void freezingIsNeverOffered() {
        // Long in a cold, windy freezer: some of the times freeze, and would thaw again in the warm room.
        Refrigerator blast = Refrigerator.at(celsius(-30)).withFan(metresPerSecond(5));
        Wanted wanted = Wanted.between(celsius(2), celsius(6));
        StagesAnswer.Region region =
                (StagesAnswer.Region) Stages.of(BOTTLE, in(blast, Duration.ofHours(3)), in(ROOM, Duration.ofHours(4)))
                        .withSteps(12)
                        .endingAt(wanted);
        assertThat(region.leftOutForIce()).isPositive();
        assertThat(region.explain()).contains("begin to freeze");
        Duration longest = Duration.ZERO;
        for (StagesAnswer.Column column : region.columns()) {
            Duration first = column.first().get(0);
            assertThat(frozen(first, blast)).isFalse();
            longest = first.compareTo(longest) > 0 ? first : longest;
        }
        // The edge of the region lies where it begins to freeze, be it only after the move, off the cold glass.
        // It is found to a thirty-second of a step of 15 min.
        assertThat(frozen(longest.plusSeconds(29), blast)).isTrue();
        StagesAnswer.None none =
                (StagesAnswer.None) Stages.of(BOTTLE, in(blast, Duration.ofHours(2)), in(blast, Duration.ofHours(2)))
                        .endingAt(Wanted.between(celsius(-15), celsius(-8)));
        assertThat(none.leftOutForIce()).isPositive();
        assertThat(none.explain()).contains("begin to freeze");
    }

    private static boolean frozen(Duration first, Surroundings blast) {
        Prediction run = forward(BOTTLE, List.of(first, Duration.ofHours(4)), blast, ROOM);
        return Course.iceS(run, run.trajectory().endS()).isPresent();
    }

    @Test
    void threePlacesAndNone() {
        StagesAnswer three = Stages.of(
                        BOTTLE,
                        in(FREEZER, Duration.ofMinutes(30)),
                        in(Refrigerator.at(celsius(5)), Duration.ofMinutes(60)),
                        in(BUCKET_OF_ICE, Duration.ofMinutes(5)))
                .withSteps(3)
                .endingAt(Wanted.between(celsius(10), celsius(12)));
        StagesAnswer.Region region = (StagesAnswer.Region) three;
        assertThat(region.columns().get(0).first()).hasSize(2);
        assertThat(region.earliest().stages()).hasSize(3);
        StagesAnswer.None none = (StagesAnswer.None)
                Stages.of(BOTTLE, in(ROOM, Duration.ofMinutes(30)), in(BUCKET_OF_ICE, Duration.ofMinutes(10)))
                        .endingAt(Wanted.between(celsius(1), celsius(3)));
        assertThat(none.closestK()).isBetween(ZERO + 3, ZERO + 22);
        assertThat(none.explain())
                .contains("other places")
                .contains("Left in the last place for good it levels off at 22.0 °C");
        // Two kilograms of ice do not last for four days in a room of 22 °C.
        assertThat(none.asymptote().nearestK(ZERO)).isCloseTo(ZERO + 22, within(0.1));
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> Stages.of(BOTTLE, in(ROOM, Duration.ofHours(1))))
                .hasMessageContaining("2 to 4");
        Stages two = Stages.of(BOTTLE, in(ROOM, Duration.ofHours(1)), in(FREEZER, Duration.ofHours(1)));
        assertThatThrownBy(() -> two.withSteps(1)).hasMessageContaining("2 to 60");
        assertThatThrownBy(() -> two.startingAfter(Duration.ofHours(-1))).hasMessageContaining("at least 0");
        assertThatThrownBy(() -> Stages.of(
                                BOTTLE,
                                in(ROOM, Duration.ofHours(1)),
                                in(ROOM, Duration.ofHours(1)),
                                in(ROOM, Duration.ofHours(1)),
                                in(ROOM, Duration.ofHours(1)))
                        .withSteps(60))
                .hasMessageContaining("at most 20000 runs");
    }
}
