/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.metresPerSecond;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import org.assertj.core.data.Percentage;
import org.beveragethermal.core.prediction.Explanation;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.Resistance;
import org.beveragethermal.core.solver.LedgerEntry;
import org.beveragethermal.core.surroundings.Agitation;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Posture;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;

/** What must hold while bottles share an ice bath, are moved about, and gear lives on. */
class SharedGearTest {

    private static final double ZERO = 273.15;
    private static final Air ROOM = Air.at(celsius(21));
    private static final Refrigerator COLD = Refrigerator.at(celsius(5));
    private static final Agitation STIRRED = Agitation.stirred(metresPerSecond(0.1));
    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));

    private static IceWaterBath bath(double iceKg, double waterKg, Agitation agitation) {
        return IceWaterBath.in(Bucket.of(millimetres(200), millimetres(420)), ROOM)
                .ice(kilograms(iceKg), millimetres(25), celsius(-5))
                .water(kilograms(waterKg), celsius(15))
                .agitation(agitation)
                .build();
    }

    private static Scene evening(IceWaterBath bath) {
        return Scene.builder()
                .gear("room", ROOM)
                .gear("cold", COLD)
                .gear("bath", bath)
                .vessel("a", BOTTLE, "cold")
                .vessel("b", BOTTLE, "room", VesselModel.axial(8), Posture.UPRIGHT)
                .move("a", Duration.ofMinutes(30), "bath")
                .move("b", Duration.ofMinutes(35), "bath", Posture.INVERTED)
                .move("b", Duration.ofMinutes(50), "bath")
                .move("a", Duration.ofMinutes(55), "room")
                .build();
    }

    @Test
    void theLedgerOfAnEveningCloses() {
        for (Agitation agitation : new Agitation[] {Agitation.STILL, STIRRED}) {
            ScenePrediction run = evening(bath(2, 4, agitation)).predict(Duration.ofMinutes(90));
            assertThat(run.ledger().closure()).isLessThan(1e-9);
        }
    }

    @Test
    void anEveningRepeatedIsTheSameBitForBit() {
        ScenePrediction one = evening(bath(2, 4, Agitation.STILL)).predict(Duration.ofMinutes(90));
        ScenePrediction two = evening(bath(2, 4, Agitation.STILL)).predict(Duration.ofMinutes(90));
        for (int minutes = 0; minutes <= 90; minutes += 5) {
            Duration at = Duration.ofMinutes(minutes);
            assertThat(two.gearTemperaturesK("bath", at)).isEqualTo(one.gearTemperaturesK("bath", at));
            assertThat(two.iceKg("bath", at)).isEqualTo(one.iceKg("bath", at));
            for (String id : new String[] {"a", "b"}) {
                assertThat(two.vessel(id).profileK(minutes * 60))
                        .containsExactly(one.vessel(id).profileK(minutes * 60));
            }
        }
    }

    @Test
    void anotherHourOfTheClockChangesNothingWhereNothingVaries() {
        double[] ends = new double[2];
        for (int i = 0; i < 2; i++) {
            ends[i] = Scene.builder()
                    .startingAfter(Duration.ofHours(7L * i))
                    .gear("bath", bath(1, 4, STIRRED))
                    .vessel("wine", BOTTLE, "bath")
                    .build()
                    .predict(Duration.ofMinutes(40))
                    .vessel("wine")
                    .meanTemperatureK(2400);
        }
        assertThat(ends[1]).isEqualTo(ends[0]);
    }

    @Test
    void splittingATimeInABathChangesNothing() {
        for (Agitation agitation : new Agitation[] {Agitation.STILL, STIRRED}) {
            IceWaterBath bath = bath(1.5, 4, agitation);
            Prediction whole = Lumped.of(BOTTLE).expose(in(bath, Duration.ofMinutes(60)));
            Prediction split = Lumped.of(BOTTLE)
                    .expose(
                            in(bath, Duration.ofMinutes(7)),
                            in(bath, Duration.ofMinutes(20)),
                            in(bath, Duration.ofMinutes(33)));
            for (int minutes = 5; minutes <= 60; minutes += 5) {
                assertThat(split.meanTemperatureK(minutes * 60))
                        .isCloseTo(whole.meanTemperatureK(minutes * 60), within(5e-3));
            }
        }
    }

    @Test
    void iceAndWaterWeighTheSameAsLongAsThereIsIce() {
        for (Agitation agitation : new Agitation[] {Agitation.STILL, STIRRED}) {
            ScenePrediction run = Scene.builder()
                    .gear("bath", bath(2.5, 4, agitation))
                    .vessel("wine", BOTTLE, "bath")
                    .build()
                    .predict(Duration.ofHours(3));
            for (int minutes = 0; minutes <= 180; minutes += 10) {
                Duration at = Duration.ofMinutes(minutes);
                assertThat(run.iceKg("bath", at)).isGreaterThan(0.1);
                assertThat(run.gearMassKg("bath", at)).isCloseTo(6.5, within(1e-9));
            }
        }
    }

    @Test
    void iceMeltsByTheHeatOfBottleWaterAndRoom() {
        ScenePrediction run = Scene.builder()
                .gear("bath", bath(2, 4, STIRRED))
                .vessel("wine", BOTTLE, "bath")
                .build()
                .predict(Duration.ofHours(1));
        double hour = 3600;
        double melted = 2 - run.iceKg("bath", Duration.ofHours(1));
        Prediction wine = run.vessel("wine");
        // By hand, with round handbook figures from memory: wine from its own composition, glass 840, water 4200, ice
        // 2080 J/(kg K), 333.4 kJ/kg; heat from the room as the ledger counts it at the boundaries.
        double fromWine = BOTTLE.liquidMassKg()
                * BOTTLE.liquid().specificHeatCapacity(ZERO + 12)
                * (ZERO + 22 - wine.meanTemperatureK(hour));
        double fromGlass = BOTTLE.vessel().emptyMassKg() * 840 * (ZERO + 22 - wine.wallTemperatureK(0, hour));
        double fromWater = 4 * 4200 * 15.0;
        double fromRoom = run.ledger().entries().stream()
                .mapToDouble(SharedGearTest::fromAirOrWalls)
                .sum();
        double kept = 4200
                * (4 + melted)
                * (run.gearTemperaturesK("bath", Duration.ofHours(1)).getOrDefault("water among ice", Double.NaN)
                        - ZERO);
        double toWarmIce = 2 * 2080 * 5.0;
        assertThat(fromRoom).isPositive();
        assertThat(melted * 333_400)
                .isCloseTo(
                        fromWine + fromGlass + fromWater + fromRoom - kept - toWarmIce, Percentage.withPercentage(2));
    }

    private static double fromAirOrWalls(LedgerEntry entry) {
        return (fromRoom(entry.from()) ? entry.heatJ() : 0) - (fromRoom(entry.to()) ? entry.heatJ() : 0);
    }

    private static boolean fromRoom(String end) {
        return end.endsWith(" air") || end.endsWith(" walls");
    }

    @Test
    void iceThroughTheWholeDepthLeavesNoWarmWater() {
        ScenePrediction run = Scene.builder()
                .gear("bath", bath(6, 2, Agitation.STILL))
                .vessel("wine", BOTTLE, "bath")
                .build()
                .predict(Duration.ofHours(1));
        for (int minutes : new int[] {20, 40, 60}) {
            Explanation.Band wetted = run.vessel("wine")
                    .explainAt(Duration.ofMinutes(minutes))
                    .bands()
                    .get(0);
            // The water that touches the wall, weighted by how much heat it takes.
            assertThat(wetted.mediumK() - ZERO).isBetween(-0.1, 3.0);
            for (Resistance part : wetted.outside()) {
                if (part.name().contains("clear water")) {
                    // What is left of clear water below the pack touches nothing worth a thousandth.
                    assertThat(wetted.inSeries().get(2).kelvinPerWatt() / part.kelvinPerWatt())
                            .isLessThan(1e-3);
                }
            }
        }
    }

    @Test
    void twoBottlesInAStillBathAreAlikeAndSlowerThanOne() {
        Scene.Builder two = Scene.builder()
                .gear("bath", bath(1, 5, Agitation.STILL))
                .vessel("a", BOTTLE, "bath")
                .vessel("b", BOTTLE, "bath");
        Scene.Builder one =
                Scene.builder().gear("bath", bath(1, 5, Agitation.STILL)).vessel("a", BOTTLE, "bath");
        ScenePrediction both = two.build().predict(Duration.ofMinutes(40));
        double alone = one.build().predict(Duration.ofMinutes(40)).vessel("a").meanTemperatureK(2400);
        double a = both.vessel("a").meanTemperatureK(2400);
        assertThat(both.vessel("b").meanTemperatureK(2400)).isCloseTo(a, within(1e-9));
        assertThat(a).isGreaterThan(alone);
    }
}
