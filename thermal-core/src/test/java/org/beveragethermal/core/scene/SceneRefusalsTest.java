/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Placement;
import org.beveragethermal.core.surroundings.Posture;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;

/** What scenes and exposures refuse, one by one, and that they name what was given. */
class SceneRefusalsTest {

    private static final Air ROOM = Air.at(celsius(22));
    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));

    private static Scene.Builder scene() {
        return Scene.builder()
                .gear("room", ROOM)
                .gear("later", ROOM, Duration.ofHours(1))
                .vessel("wine", BOTTLE, "room");
    }

    private static void refused(String named, ThrowingCallable call) {
        assertThatThrownBy(call).isInstanceOf(IllegalArgumentException.class).hasMessageContaining(named);
    }

    @Test
    void idsAlreadyInUse() {
        refused("'room'", () -> scene().gear("room", ROOM));
        refused("'wine'", () -> scene().vessel("wine", BOTTLE, "room"));
        refused("'wine'", () -> scene().gear("wine", ROOM));
        refused("'room'", () -> scene().vessel("room", BOTTLE, "room"));
        refused("'  '", () -> scene().vessel("  ", BOTTLE, "room"));
        refused("''", () -> scene().gear("", ROOM));
    }

    @Test
    void gearThatIsNotThere() {
        refused("gear cellar", () -> scene().vessel("other", BOTTLE, "cellar"));
        refused("gear cellar", () -> scene().move("wine", Duration.ofMinutes(1), "cellar"));
        refused("prepared after PT1H", () -> scene().vessel("other", BOTTLE, "later"));
        refused("prepared after PT1H", () -> scene().move("wine", Duration.ofMinutes(59), "later"));
        refused("PT-1S", () -> scene().gear("early", ROOM, Duration.ofSeconds(-1)));
        ScenePrediction run = scene().build().predict(Duration.ofMinutes(5));
        refused("gear cellar", () -> run.gearTemperaturesK("cellar", Duration.ZERO));
        refused("gear cellar", () -> run.iceKg("cellar", Duration.ZERO));
        refused("gear cellar", () -> run.gearMassKg("cellar", Duration.ZERO));
        refused("gear cellar", () -> run.iceGone("cellar"));
        refused("vessel beer", () -> run.vessel("beer"));
    }

    @Test
    @SuppressWarnings("NullAway") // what a caller without a checker may do
    void noPlacement() {
        Placement none = null;
        assertThatThrownBy(() -> scene().move("wine", Duration.ofMinutes(1), "room", none))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("placement of vessel wine");
    }

    @Test
    void moves() {
        refused("vessel beer", () -> scene().move("beer", Duration.ofMinutes(1), "room"));
        refused("PT0S", () -> scene().move("wine", Duration.ZERO, "room"));
        refused("PT-1M", () -> scene().move("wine", Duration.ofMinutes(-1), "room"));
        refused(
                "PT2M",
                () -> scene().move("wine", Duration.ofMinutes(2), "room")
                        .move("wine", Duration.ofMinutes(2), "room", Posture.INVERTED));
    }

    @Test
    void times() {
        refused("PT-9600H", () -> Scene.builder().startingAfter(Duration.ofDays(-400)));
        refused("PT0S", () -> scene().build().predict(Duration.ZERO));
        refused("PT-1S", () -> scene().build().predict(Duration.ofSeconds(-1)));
        refused("PT720H1S", () -> scene().build().predict(Duration.ofDays(30).plusSeconds(1)));
        refused("PT0S", () -> in(ROOM, Duration.ZERO));
        refused("PT-1M", () -> new Exposure(ROOM, Duration.ofMinutes(-1)));
        refused("no exposures", () -> Lumped.of(BOTTLE).expose());
        refused("no exposures", () -> Lumped.of(BOTTLE).expose(List.of()));
    }

    @Test
    void models() {
        refused("slices 0", () -> VesselModel.axial(0));
        refused("slices 201", () -> VesselModel.axial(201));
        refused("slices 1", () -> VesselModel.axial(1));
        assertThatThrownBy(() -> Scene.builder().gear("room", ROOM).build())
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("vessel(");
    }
}
