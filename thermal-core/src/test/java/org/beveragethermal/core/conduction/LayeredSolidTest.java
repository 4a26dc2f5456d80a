/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.conduction;

import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A slab of two materials under a film against the inverted Laplace transform. */
final class LayeredSolidTest {

    private static final double ZERO = 273.15;
    private static final double[] TIMES = {20, 60, 300, 1200};
    /** Part of the excess at the start left at the insulated side, between the layers and at the surface, by time. */
    private static final double[][] LEFT = {
        {0.9999999386695974, 0.9029967708537526, 0.6418262229326566},
        {0.9985278629251257, 0.742182104357941, 0.49848096504445377},
        {0.7977665140055465, 0.4441446792866051, 0.28788099501797304},
        {0.2336438917494147, 0.12815798127797962, 0.08292782814054785}
    };

    @ParameterizedTest
    @CsvSource({"default, 1e-3, 200, 80, 2e-3", "tight, 1e-5, 800, 320, 1e-4"})
    void slabOfTwoMaterials(String how, double toleranceK, int cells, int outerCells, double limitK) {
        LayerStack slab = LayerStack.plane(1, 0)
                .layer("liquid", 0.010, 0.58, 4.15e6, cells)
                .layer("glass", 0.004, 1.05, 2.1e6, outerCells)
                .build("slab", ZERO + 22);
        JunctionPath film = JunctionPath.of(
                "film",
                slab.outerSurface(),
                Link.of(Boundary.constant("water", ZERO), "convection", HeatLaw.conductance(150)));
        List<Path> paths = new ArrayList<>(slab.paths());
        paths.add(film);
        Trajectory run =
                NetworkSolver.standard().withToleranceK(toleranceK).solve(Network.of(slab.nodes(), paths), 1200);
        double worst = 0;
        for (int i = 0; i < TIMES.length; i++) {
            double t = TIMES[i];
            double[] actual = {
                slab.middleK(run, t),
                slab.outerEdgeK("liquid", run, t),
                film.surfaceTemperatureK(run.evaluate("film", t))
            };
            for (int j = 0; j < 3; j++) {
                worst = Math.max(worst, Math.abs(actual[j] - ZERO - 22 * LEFT[i][j]));
            }
        }
        OutsideChecks.referenceLibrary(
                        "conduction-two-layers-" + how,
                        "Laplace inversion (Talbot, 30 digits); finite volumes with Richardson extrapolation agree to 8e-10")
                .what("largest error in a slab of two materials from 22 °C in 0 °C, 20 to 1200 s, "
                        + (cells + outerCells) + " cells, tolerance " + toleranceK + " K")
                .unit("K")
                .expected(0)
                .within(limitK)
                .check(worst);
    }
}
