/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.testsupport.ObservedOrders;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/**
 * Bodies cut in shells, each a freezing store, against Plank's freezing time: t = ρ L/ΔT (P d/h + R d²/k), which knows neither
 * the heat of cooling before and after nor any resistance but that of film and frozen shell.
 */
class PlankFreezingTimeTest {

    private static final String PLANK =
            "R. Plank: freezing time, P and R of slab, cylinder and sphere, as given by R. P. Singh"
                    + " and D. R. Heldman, Introduction to Food Engineering";
    private static final double FREEZING_K = 270.35;
    private static final int SHELLS = 24;
    /** Almost nothing beside the heat of fusion: Plank leaves it out [J/(kg K)]. */
    private static final double HEAT_CAPACITY = 20;

    @Test
    void slabCylinderAndSphereFreezeInPlanksTime() {
        // d = 0.07 m, ρ = 1000 kg/m³, L = 280 kJ/kg, ΔT = 18 K, h = 10 W/(m² K), k = 1.6 W/(m K).
        double[] seconds = {60_399.3056, 30_199.6528, 20_133.1019};
        String[] names = {"slab", "cylinder", "sphere"};
        for (int shape = 0; shape < 3; shape++) {
            OutsideChecks.published("plank-" + names[shape], PLANK)
                    .what("time to freeze a " + names[shape] + " of 70 mm, 10 W/(m² K), 18 K below freezing")
                    .unit("s")
                    .expected(seconds[shape])
                    .within(0.005 * seconds[shape])
                    .check(freezingTimeS(shape, 0.07, 1000, 280_000, 18, 10, 1.6));
        }
    }

    @Test
    void slabOfMeatFreezesInTheTimeOfTheTextbook() {
        OutsideChecks.fromMemory(
                        "plank-meat-slab", "C. J. Geankoplis, Transport Processes and Unit Operations, slabs of meat")
                .what("time to freeze a slab of 63.5 mm from both sides, 17 W/(m² K), 26.1 K below freezing")
                .unit("s")
                .expected(23_950)
                .within(0.006 * 23_950)
                .check(freezingTimeS(0, 0.0635, 1057, 251_200, 26.1, 17, 1.038));
    }

    @Test
    void errorFallsAlmostWithTheSquareOfTheShell() {
        // As in shells that only conduct, it falls as h² ln(1/h): the resistance of the innermost half shell counts
        // from a
        // radius of half a shell. What the shells' heat capacity adds drops out of the differences.
        String[] names = {"cylinder", "sphere"};
        for (int shape = 1; shape <= 2; shape++) {
            double[] seconds = new double[4];
            for (int i = 0; i < 4; i++) {
                seconds[i] = freezingTimeS(shape, 0.07, 1000, 280_000, 18, 10, 1.6, 6 << i, 2);
            }
            for (int i = 2; i < 4; i++) {
                double coarse = seconds[i - 2] - seconds[i - 1];
                double fine = seconds[i - 1] - seconds[i];
                ObservedOrders.of(
                                "freezing store, shells of a " + names[shape - 1],
                                "time to freeze, by neighbouring refinements",
                                "shells, " + (6 << (i - 2)) + " to " + (6 << i))
                        .check(2, ObservedOrders.order(coarse, fine, 2), 1.65, 2.1);
            }
            double extrapolated = seconds[3] - (seconds[2] - seconds[3]) / 3;
            double plank = 280_000_000.0 / 18 * (0.07 / 10 + 0.07 * 0.07 / (4 * 1.6)) / (2 * (shape + 1));
            assertThat(extrapolated).isCloseTo(plank, within(2e-4 * plank));
        }
    }

    /** In the usual number of shells of little heat capacity. */
    private static double freezingTimeS(
            int shape,
            double diameterM,
            double density,
            double latent,
            double belowK,
            double film,
            double conductivity) {
        return freezingTimeS(shape, diameterM, density, latent, belowK, film, conductivity, SHELLS, HEAT_CAPACITY);
    }

    /** Shape 0 is a slab cooled from both sides, 1 a long cylinder, 2 a sphere: areas go as radius to that power. */
    private static double freezingTimeS(
            int shape,
            double diameterM,
            double density,
            double latent,
            double belowK,
            double film,
            double conductivity,
            int shells,
            double heatCapacity) {
        double width = 0.5 * diameterM / shells;
        Boundary air = Boundary.constant("air", FREEZING_K - belowK);
        List<Node> nodes = new ArrayList<>();
        List<Path> paths = new ArrayList<>();
        for (int i = 0; i < shells; i++) {
            double volume = (Math.pow((i + 1) * width, shape + 1) - Math.pow(i * width, shape + 1)) / (shape + 1);
            nodes.add(Node.of(
                    "shell " + i,
                    FreezingStore.ofConstants(FREEZING_K, latent, heatCapacity, heatCapacity, density * volume),
                    FREEZING_K));
            if (i > 0) {
                double resistance = resistance(shape, (i - 0.5) * width, (i + 0.5) * width) / conductivity;
                paths.add(DirectPath.of(
                        "shell " + i + " inwards",
                        nodes.get(i - 1),
                        nodes.get(i),
                        "conduction",
                        HeatLaw.conductance(1 / resistance)));
            }
        }
        double radius = shells * width;
        double outermost =
                resistance(shape, radius - 0.5 * width, radius) / conductivity + 1 / (film * Math.pow(radius, shape));
        paths.add(DirectPath.of("film", nodes.get(shells - 1), air, "convection", HeatLaw.conductance(1 / outermost)));
        Trajectory run = NetworkSolver.standard().withToleranceK(0.1).solve(Network.of(nodes, paths), 80_000);
        Node centre = nodes.get(0);
        // The last of it is frozen: from here on the centre cools as a solid.
        return run.firstCrossing(0, t -> run.temperatureK(centre, t) - (FREEZING_K - 2 * FreezingStore.PLATEAU_K))
                .orElseThrow();
    }

    /** Integral of dr/rⁿ. */
    private static double resistance(int shape, double from, double to) {
        return switch (shape) {
            case 0 -> to - from;
            case 1 -> Math.log(to / from);
            default -> 1 / from - 1 / to;
        };
    }
}
