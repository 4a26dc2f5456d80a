/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.List;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Medium;
import org.beveragethermal.core.surroundings.Occupant;
import org.beveragethermal.core.surroundings.Placement;
import org.beveragethermal.core.surroundings.Posture;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.core.surroundings.WaterBath;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;

/** Vessels held in a bath so that water reaches a stated height. */
class ImmersionTest {

    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));
    private static final Air ROOM = Air.at(celsius(22));
    private static final Bucket BUCKET = Bucket.of(millimetres(250), millimetres(300));
    private static final WaterBath BATH = WaterBath.of(BUCKET, litres(9), celsius(5), ROOM);
    private static final IceWaterBath ICE = IceWaterBath.of(BUCKET, kilograms(3), kilograms(6), ROOM);
    private static final Duration WHILE = Duration.ofMinutes(20);

    @Test
    void theHeldVesselDisplacesAndIsWettedToItsWaterlineOnly() {
        for (Surroundings bath : List.of(BATH, ICE)) {
            Medium medium = bath.open("bath", 0);
            Placement shallow = Placement.upright().immersedTo(millimetres(100));
            Occupant held = new Occupant("v", BOTTLE.vessel(), shallow);
            Occupant standing = new Occupant("v", BOTTLE.vessel());
            assertThat(medium.wettedHeightM(held, List.of(held))).isEqualTo(0.1);
            assertThat(medium.wettedHeightM(standing, List.of(standing))).isGreaterThan(0.18);
            assertThat(held.displacedM3(0.2))
                    .isEqualTo(BOTTLE.vessel().profile().outerVolumeM3(0, 0.1));
            assertThat(held.heldAtM(0.2)).isCloseTo(0.1, within(1e-15));
            assertThat(held.heldAtM(0.08)).isZero();
        }
    }

    @Test
    void deeperCoolsMore() {
        for (Surroundings bath : List.of(BATH, ICE)) {
            double before = Double.POSITIVE_INFINITY;
            for (int millimetres : new int[] {40, 80, 120, 160}) {
                Prediction run = Layered.axial(BOTTLE).expose(in(bath, WHILE).immersedTo(millimetres(millimetres)));
                assertThat(run.ledger().closure()).isLessThan(1e-9);
                double mean = run.meanTemperatureK(1200);
                assertThat(mean).isLessThan(before - 0.5);
                before = mean;
            }
        }
    }

    /** Our bound on the light of a base that then meets the water instead of the floor. */
    @Test
    void heldJustAboveTheFloorIsStandingOnItButForTheBase() {
        Prediction standing = Layered.axial(BOTTLE).expose(in(BATH, WHILE));
        Medium medium = BATH.open("bath", 0);
        Occupant occupant = new Occupant("v", BOTTLE.vessel());
        double natural = medium.wettedHeightM(occupant, List.of(occupant));
        Prediction held =
                Layered.axial(BOTTLE).expose(in(BATH, WHILE).immersedTo(millimetres(1000 * (natural - 1e-4))));
        assertThat(held.meanTemperatureK(1200)).isCloseTo(standing.meanTemperatureK(1200), within(0.35));
        assertThat(held.meanTemperatureK(1200)).isLessThan(standing.meanTemperatureK(1200));
    }

    @Test
    void loweringInTheCourseOfARunDoesNotMix() {
        Scene scene = Scene.builder()
                .gear("bath", ICE)
                .vessel(
                        "v",
                        BOTTLE,
                        "bath",
                        VesselModel.axial(),
                        Placement.upright().immersedTo(millimetres(60)))
                .move("v", Duration.ofMinutes(10), "bath", Placement.upright().immersedTo(millimetres(150)))
                .build();
        Prediction run = scene.predict(WHILE).vessel("v");
        double[] before = run.profileK(599.9);
        double[] after = run.profileK(600.1);
        assertThat(before[before.length - 1] - before[0]).isGreaterThan(5);
        for (int i = 0; i < before.length; i++) {
            assertThat(after[i]).isCloseTo(before[i], within(0.1));
        }
        assertThat(run.meanTemperatureK(600) - run.meanTemperatureK(1200))
                .isGreaterThan(1.5 * (BOTTLE.temperatureK() - run.meanTemperatureK(600)));
    }

    @Test
    void deeperThanTheWaterIsRefusedWhereItIsAsked() {
        WaterBath shallow = WaterBath.of(BUCKET, litres(3), celsius(5), ROOM);
        Occupant standing = new Occupant("v", BOTTLE.vessel());
        double depth = shallow.open("bath", 0).wettedHeightM(standing, List.of(standing));
        Scene.Builder scene = Scene.builder()
                .gear("room", ROOM)
                .gear("bath", shallow)
                .vessel("v", BOTTLE, "room")
                .move("v", Duration.ofMinutes(5), "bath", Placement.upright().immersedTo(millimetres(200)));
        OutOfRangeException refusal = catchThrowableOfType(OutOfRangeException.class, scene::build);
        assertThat(refusal.given()).isEqualTo(0.2);
        assertThat(refusal.low()).isZero();
        assertThat(refusal.high()).isCloseTo(depth, within(1e-9));
        assertThat(refusal)
                .hasMessageContaining("vessel v")
                .hasMessageContaining("gear bath")
                .hasMessageContaining("after PT5M");
        // As deep as it is, it is the vessel that stands.
        assertThat(Lumped.of(BOTTLE)
                        .expose(in(shallow, WHILE).immersedTo(millimetres(1000 * depth)))
                        .meanTemperatureK(1200))
                .isEqualTo(Lumped.of(BOTTLE).expose(in(shallow, WHILE)).meanTemperatureK(1200));
    }

    @Test
    void waterThatFallsWhenAnotherVesselIsTakenOutIsTold() {
        WaterBath bath = WaterBath.of(BUCKET, litres(4), celsius(5), ROOM);
        Occupant one = new Occupant("v", BOTTLE.vessel());
        Occupant other = new Occupant("w", BOTTLE.vessel());
        double both = bath.open("bath", 0).wettedHeightM(one, List.of(one, other));
        ScenePrediction run = Scene.builder()
                .gear("room", ROOM)
                .gear("bath", bath)
                .vessel("w", BOTTLE, "bath")
                .vessel(
                        "v",
                        BOTTLE,
                        "bath",
                        VesselModel.lumped(),
                        Placement.upright().immersedTo(millimetres(1000 * both)))
                .move("w", Duration.ofMinutes(10), "room")
                .build()
                .predict(WHILE);
        assertThat(run.vessel("v").notes()).anyMatch(note -> note.contains("it stands on the floor"));
    }

    @Test
    void immersionAboveTheVesselOrWithoutWaterIsRefused() {
        assertThatThrownBy(() -> Lumped.of(BOTTLE).expose(in(BATH, WHILE).immersedTo(millimetres(400))))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("immersion of vessel");
        assertThatThrownBy(
                        () -> Lumped.of(BOTTLE).expose(in(BATH, WHILE).lying().immersedTo(millimetres(100))))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Lumped.of(BOTTLE).expose(in(ROOM, WHILE).immersedTo(millimetres(100))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("holds no water");
        assertThatThrownBy(() -> Placement.of(Posture.LYING).immersedTo(millimetres(-1)))
                .isInstanceOf(OutOfRangeException.class);
    }
}
