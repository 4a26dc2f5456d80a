/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.RandomScenes.between;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.metresPerSecond;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.HashSet;
import java.util.Set;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.solver.Ledger;
import org.beveragethermal.core.solver.LedgerEntry;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.core.store.IceBlock;
import org.beveragethermal.core.surroundings.Agitation;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;

/** Whatever is done to a bath of ice and water: no mass and no energy is lost, and equal runs agree. */
final class TendedBathProperties {

    private static final Bucket BUCKET = Bucket.of(millimetres(260), millimetres(400));
    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));
    private static final Duration END = Duration.ofMinutes(90);

    /** A scene with up to five things done to its bath, and what the bath holds in the end if nothing runs over. */
    private record Drawn(Scene scene, double endKg, double mostIceKg) {}

    private static IceBlock block(SplittableRandom random) {
        double first = between(8, 60, random);
        double second = between(8, 60, random);
        return switch (random.nextInt(4)) {
            case 0 -> IceBlock.cube(millimetres(first));
            case 1 -> IceBlock.brick(millimetres(first), millimetres(second), millimetres(between(8, 60, random)));
            case 2 -> IceBlock.cylinder(millimetres(first), millimetres(second));
            default -> IceBlock.sphere(millimetres(first));
        };
    }

    private static Drawn draw(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double ice = between(0.3, 2, random);
        double water = between(2.5, 5, random);
        IceWaterBath bath = IceWaterBath.in(BUCKET, Air.at(celsius(between(5, 35, random))))
                .ice(kilograms(ice), block(random), celsius(-between(0, 18, random)))
                .water(kilograms(water), celsius(between(3, 25, random)))
                .agitation(random.nextBoolean() ? Agitation.STILL : Agitation.stirred(metresPerSecond(0.1)))
                .build();
        Scene.Builder scene = Scene.builder()
                .gear("bath", bath)
                .gear("room", Air.at(celsius(22)))
                .vessel("wine", BOTTLE, random.nextBoolean() ? "bath" : "room")
                .move("wine", Duration.ofMinutes(45), random.nextBoolean() ? "bath" : "room");
        double total = ice + water;
        double added = ice;
        for (int i = 0; i <= random.nextInt(5); i++) {
            Duration after = Duration.ofSeconds(60 + random.nextInt(5000));
            double mass = between(0.1, 1, random);
            switch (random.nextInt(4)) {
                case 0 -> {
                    scene.topUpIce("bath", after, kilograms(mass), celsius(-between(0, 18, random)));
                    total += mass;
                    added += mass;
                }
                case 1 -> {
                    scene.topUpWater("bath", after, kilograms(mass), celsius(between(0, 40, random)));
                    total += mass;
                }
                case 2 -> {
                    scene.pourOff("bath", after, kilograms(0.3 * mass));
                    total -= 0.3 * mass;
                }
                default -> scene.stir("bath", after);
            }
        }
        return new Drawn(scene.build(), total, added);
    }

    @Property(tries = 120, seed = "20261210")
    void massAndEnergyAreAccountedFor(@ForAll long seed) {
        Drawn drawn = draw(seed);
        ScenePrediction run = drawn.scene().predict(END);
        assertThat(run.gearMassKg("bath", END)).isCloseTo(drawn.endKg(), within(1e-4 * drawn.endKg()));
        for (int minutes = 0; minutes <= 90; minutes += 5) {
            // Cold ice may freeze water onto itself: 38 kJ of 333 (from memory).
            assertThat(run.iceKg("bath", Duration.ofMinutes(minutes))).isBetween(0.0, 1.12 * drawn.mostIceKg());
        }
        Trajectory trajectory = run.trajectory();
        Ledger ledger = run.ledger();
        assertThat(ledger.closure()).isLessThanOrEqualTo(1e-9);
        // The same from outside: what came over boundaries and with what was added is what all nodes hold more than at
        // the start.
        Set<String> nodes = new HashSet<>();
        double kept = 0;
        for (Node node : RandomScenes.nodes(trajectory)) {
            nodes.add(node.name());
            kept += trajectory.enthalpyJ(node, trajectory.endS()) - trajectory.enthalpyJ(node, 0);
        }
        double came = 0;
        for (LedgerEntry entry : ledger.entries()) {
            came += nodes.contains(entry.from()) ? 0 : entry.heatJ();
            came -= nodes.contains(entry.to()) ? 0 : entry.heatJ();
        }
        assertThat(kept).isCloseTo(came, within(1e-9 * ledger.totalHeatJ()));
    }

    @Property(tries = 10, seed = "20261211")
    void equalRunsAgreeBitForBit(@ForAll long seed) {
        ScenePrediction one = draw(seed).scene().predict(END);
        ScenePrediction other = draw(seed).scene().predict(END);
        for (int minutes = 0; minutes <= 90; minutes += 15) {
            Duration time = Duration.ofMinutes(minutes);
            assertThat(other.vessel("wine").meanTemperatureK(60.0 * minutes))
                    .isEqualTo(one.vessel("wine").meanTemperatureK(60.0 * minutes));
            assertThat(other.gearTemperaturesK("bath", time)).isEqualTo(one.gearTemperaturesK("bath", time));
            assertThat(other.iceKg("bath", time)).isEqualTo(one.iceKg("bath", time));
        }
    }
}
