/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.millilitres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Posture;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessel;
import org.beveragethermal.materials.vessel.VesselShape;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Wall above the drink follows it only as a fin. */
class DryWallTest {

    private static final Vessel GLASS = Vessels.all(VesselShape.RED_WINE_GLASS).get(0);

    @Test
    void wallBelowTheLevelAndBandsThatAreDryAsAWholeCountWhole() {
        assertThat(DryWall.followingPart(GLASS, 0, 0.05, 0.05)).isEqualTo(1);
        assertThat(DryWall.followingPart(GLASS, 0, 0.05, 0.07)).isEqualTo(1);
        assertThat(DryWall.followingPart(GLASS, 0.05, 0.08, 0.05)).isEqualTo(1);
    }

    /** The same cylinder of glass cut into three hundred rings, each with its own air; within what the rings resolve. */
    @ParameterizedTest
    @CsvSource({"0.02", "0.05", "0.12"})
    void asMuchHeatAsThroughManyRings(double dryM) {
        double thickness = 0.004;
        double width = 2 * Math.PI * 0.03;
        int rings = 300;
        double length = dryM / rings;
        Boundary foot = Boundary.constant("foot", 283.15);
        Boundary air = Boundary.constant("air", 293.15);
        List<Node> nodes = new ArrayList<>();
        List<Path> paths = new ArrayList<>();
        for (int i = 0; i < rings; i++) {
            Node ring = Node.sensible("ring " + i, 0.01, 293.15);
            double along = 1.0 * thickness * width / length;
            paths.add(DirectPath.of(
                    "along " + i,
                    i == 0 ? foot : nodes.get(i - 1),
                    ring,
                    "conduction",
                    HeatLaw.conductance(i == 0 ? 2 * along : along)));
            paths.add(DirectPath.of("air " + i, air, ring, "convection", HeatLaw.conductance(10 * width * length)));
            nodes.add(ring);
        }
        var run = NetworkSolver.standard().solve(Network.of(nodes, paths), 20_000);
        double watts = 0;
        for (Node ring : nodes) {
            watts += 10 * width * length * (293.15 - run.temperatureK(ring, 20_000));
        }
        double allAtFoot = 10 * width * dryM * 10;
        assertThat(watts / allAtFoot).isCloseTo(DryWall.efficiency(1.0, thickness, dryM), within(1e-4));
    }

    /** The glass in slices knows where its wall is cold: the lumped one must warm as fast, within a sixth. */
    @ParameterizedTest
    @CsvSource({"RED_WINE_GLASS, 150, 16, 24", "WHITE_WINE_GLASS, 120, 8, 24", "DECANTER, 750, 14, 24"})
    void warmsLikeTheVesselInSlices(VesselShape shape, double filledMl, double startC, double roomC) {
        FilledVessel glass = Vessels.all(shape)
                .get(0)
                .filledWith(Beverage.wine(percentByVolume(13)), millilitres(filledMl), celsius(startC));
        double lumped = riseK(glass, VesselModel.lumped(), roomC);
        double slices = riseK(glass, VesselModel.axial(), roomC);
        assertThat(lumped / slices).isBetween(5.0 / 6, 6.0 / 5);
    }

    private static double riseK(FilledVessel glass, VesselModel model, double roomC) {
        var run = Scene.builder()
                .gear("room", Air.at(celsius(roomC)))
                .vessel("glass", glass, "room", model, Posture.UPRIGHT)
                .build()
                .predict(Duration.ofMinutes(20));
        return run.vessel("glass").meanTemperatureK(600) - run.vessel("glass").meanTemperatureK(0);
    }
}
