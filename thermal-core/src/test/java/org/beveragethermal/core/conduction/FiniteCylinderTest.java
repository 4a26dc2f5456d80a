/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.conduction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.beveragethermal.core.conduction.SeriesSolution.Shape;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.testsupport.ObservedOrders;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Cylinders of finite height against the product of the series of wall and cylinder. */
final class FiniteCylinderTest {

    private static final double ZERO = 273.15;
    private static final String PRODUCT = "closed form: product of the series of plane wall and long cylinder";

    /** The outer half of a cylinder: its round side and one flat face are in the medium, the plane in the middle is not crossed. */
    private record Body(
            double radiusM,
            double halfHeightM,
            double conductivity,
            double diffusivity,
            double coefficient,
            double startC,
            double mediumC) {

        /** Centre, middle of the flat face, middle of the round side, mean [°C]. */
        double[] exact(double timeS) {
            SeriesSolution cylinder = SeriesSolution.of(Shape.CYLINDER, coefficient * radiusM / conductivity);
            SeriesSolution wall = SeriesSolution.of(Shape.WALL, coefficient * halfHeightM / conductivity);
            double r = diffusivity * timeS / (radiusM * radiusM);
            double z = diffusivity * timeS / (halfHeightM * halfHeightM);
            double[] parts = {
                cylinder.at(0, r) * wall.at(0, z),
                cylinder.at(0, r) * wall.at(1, z),
                cylinder.at(1, r) * wall.at(0, z),
                cylinder.mean(r) * wall.mean(z)
            };
            return IntStream.range(0, 4)
                    .mapToDouble(i -> mediumC + (startC - mediumC) * parts[i])
                    .toArray();
        }
    }

    private static final Body BRASS = new Body(0.02, 0.1, 110, 3.39e-5, 40, 150, 20);
    private static final Body BOTTLE_SIZE = new Body(0.035, 0.11, 0.58, 1.43e-7, 200, 22, 0);

    /** A run of a body cut into rings, and how the four figures are read from it. */
    private static final class Cut {

        private final Body body;
        private final int rings;
        private final int layers;
        private final boolean faceOnTop;
        private final AxisymmetricBlock block;
        private final Trajectory run;

        Cut(Body body, int rings, int layers, boolean faceOnTop, double endS, double toleranceK) {
            this.body = body;
            this.rings = rings;
            this.layers = layers;
            this.faceOnTop = faceOnTop;
            double[] radii = equal(body.radiusM(), rings);
            double[] depths = equal(body.halfHeightM(), layers);
            block = AxisymmetricBlock.of(
                    "body",
                    radii,
                    depths,
                    body.conductivity(),
                    body.conductivity() / body.diffusivity(),
                    ZERO + body.startC(),
                    0,
                    0,
                    0);
            Boundary medium = Boundary.constant("medium", ZERO + body.mediumC());
            List<Path> paths = new ArrayList<>(block.paths());
            paths.addAll(block.side(medium, body.coefficient()));
            paths.addAll(faceOnTop ? block.top(medium, body.coefficient()) : block.bottom(medium, body.coefficient()));
            run = NetworkSolver.standard().withToleranceK(toleranceK).solve(Network.of(block.nodes(), paths), endS);
        }

        private static double[] equal(double size, int cells) {
            return IntStream.rangeClosed(0, cells)
                    .mapToDouble(i -> size * i / cells)
                    .toArray();
        }

        /** Temperature of a ring counted from the axis, in a layer counted from the plane in the middle. */
        private double at(int ring, int layerFromMiddle, double timeS) {
            int layer = faceOnTop ? layers - 1 - layerFromMiddle : layerFromMiddle;
            return run.temperatureK(block.nodes().get(ring * layers + layer), timeS) - ZERO;
        }

        /** On a line of symmetry, by the parabola through the two cells beside it. */
        private static double level(double first, double second) {
            return first - (second - first) / 8;
        }

        private double onAxis(int layer, double timeS) {
            return level(at(0, layer, timeS), at(1, layer, timeS));
        }

        private double inMiddle(int ring, double timeS) {
            return level(at(ring, 0, timeS), at(ring, 1, timeS));
        }

        /** From the middle of an outer cell to the surface: conduction and film in series. */
        private double surface(double cellC, double halfCell) {
            double film = 1 / body.coefficient();
            return body.mediumC() + (cellC - body.mediumC()) * film / (film + halfCell / body.conductivity());
        }

        double[] figures(double timeS) {
            double outermost = body.radiusM() / rings * (rings - 0.5);
            double sum = 0;
            double volume = 0;
            for (int i = 0; i < rings; i++) {
                for (int j = 0; j < layers; j++) {
                    sum += (2 * i + 1) * at(i, j, timeS);
                    volume += 2 * i + 1;
                }
            }
            return new double[] {
                level(onAxis(0, timeS), onAxis(1, timeS)),
                surface(onAxis(layers - 1, timeS), 0.5 * body.halfHeightM() / layers),
                surface(inMiddle(rings - 1, timeS), body.radiusM() * Math.log(body.radiusM() / outermost)),
                sum / volume
            };
        }
    }

    @Test
    void productIsAsListed() {
        // Cengel and Ghajar, Heat and Mass Transfer, 5th ed., Problem 4-118 (its statement), and a bottle-size
        // cylinder;
        // an independent evaluation of the same products.
        assertThat(BRASS.exact(900))
                .containsExactly(new double[] {58.793842187, 58.099050772, 58.653157574, 58.492024319}, within(1e-6));
        assertThat(BOTTLE_SIZE.exact(1800))
                .containsExactly(new double[] {12.276759924, 1.232472307, 1.270093497, 5.320671695}, within(1e-6));
    }

    @Test
    void brassCylinderInAir() {
        Cut cut = new Cut(BRASS, 16, 48, false, 900, 1e-3);
        double[] exact = BRASS.exact(900);
        double[] actual = cut.figures(900);
        String[] names = {"centre", "middle of the flat face", "middle of the side", "mean"};
        for (int i = 0; i < 4; i++) {
            OutsideChecks.published("conduction-finite-cylinder-brass", PRODUCT)
                    .what(names[i]
                            + " of a brass cylinder 40 mm by 200 mm after 900 s from 150 °C in 20 °C, 16 by 48 cells,"
                            + " default tolerance")
                    .unit("°C")
                    .expected(exact[i])
                    .within(2e-3)
                    .check(actual[i]);
        }
        double lost = 8530 * 389 * Math.PI * 0.02 * 0.02 * 0.2 * (150 - actual[3]);
        OutsideChecks.published("conduction-finite-cylinder-brass-heat", PRODUCT)
                .what("heat lost by that cylinder, 8530 kg/m³ and 389 J/(kg K)")
                .unit("J")
                .expected(76_312.80908)
                .within(1)
                .check(lost);
        assertThat(cut.run.ledger(900).closure()).isLessThan(1e-9);
    }

    @Test
    void errorOfABlockFallsWithTheSquareOfTheCell() {
        double[] times = {600, 1800, 3600};
        Cut[] cuts = {
            new Cut(BOTTLE_SIZE, 14, 20, true, 3600, 1e-6),
            new Cut(BOTTLE_SIZE, 28, 40, true, 3600, 1e-6),
            new Cut(BOTTLE_SIZE, 56, 80, true, 3600, 1e-6)
        };
        double worstExtrapolated = 0;
        double worstFine = 0;
        double[] squares = new double[3];
        for (double t : times) {
            double[] exact = BOTTLE_SIZE.exact(t);
            double[] fine = cuts[1].figures(t);
            double[] finer = cuts[2].figures(t);
            for (int k = 0; k < 3; k++) {
                double[] figures = cuts[k].figures(t);
                for (int i = 0; i < 4; i++) {
                    squares[k] += Math.pow(figures[i] - exact[i], 2);
                }
            }
            for (int i = 0; i < 4; i++) {
                worstFine = Math.max(worstFine, Math.abs(finer[i] - exact[i]));
                worstExtrapolated =
                        Math.max(worstExtrapolated, Math.abs(finer[i] + (finer[i] - fine[i]) / 3 - exact[i]));
            }
        }
        // The order of the root mean square error; that of a single figure is spoilt where its error changes sign.
        String family = "conducting block of rings and layers";
        String quantity = "centre, surfaces and mean, root mean square, against the product of the series";
        ObservedOrders.of(family, quantity, "rings and layers, 14 by 20 to 28 by 40")
                .check(2, ObservedOrders.order(Math.sqrt(squares[0]), Math.sqrt(squares[1]), 2), 1.8, 2.2);
        ObservedOrders.of(family, quantity, "rings and layers, 28 by 40 to 56 by 80")
                .check(2, ObservedOrders.order(Math.sqrt(squares[1]), Math.sqrt(squares[2]), 2), 1.9, 2.1);
        OutsideChecks.published("conduction-finite-cylinder-bottle-size", PRODUCT)
                .what(
                        "largest error of centre, surfaces and mean at 600, 1800 and 3600 s, 56 by 80 cells (0.6 by 1.4 mm)")
                .unit("K")
                .expected(0)
                .within(1e-2)
                .check(worstFine);
        OutsideChecks.published("conduction-finite-cylinder-extrapolated", PRODUCT)
                .what("the same, extrapolated from 28 by 40 and 56 by 80 cells by the order 2")
                .unit("K")
                .expected(0)
                .within(2e-3)
                .check(worstExtrapolated);
    }

    @Test
    void topAndBottomAreMirrorImages() {
        double[] top = new Cut(BOTTLE_SIZE, 6, 9, true, 600, 1e-6).figures(600);
        double[] bottom = new Cut(BOTTLE_SIZE, 6, 9, false, 600, 1e-6).figures(600);
        assertThat(top).containsExactly(bottom, within(1e-5));
    }

    @Test
    void nonsenseIsRefused() {
        double[] edges = {0, 0.1, 0.2};
        AxisymmetricBlock block = AxisymmetricBlock.of("b", edges, edges, 1, 1e6, 300, 0, 0, 0);
        Boundary air = Boundary.constant("air", 300);
        for (double coefficient : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> block.top(air, coefficient)).hasMessageContaining("heat transfer coefficient");
            assertThatThrownBy(() -> block.bottom(air, coefficient)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> block.side(air, coefficient)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> block.hole(air, coefficient)).isInstanceOf(IllegalArgumentException.class);
        }
        assertThatThrownBy(() -> AxisymmetricBlock.of("b", edges, edges, 1, 1, 300, -0.1, 0, 0.1))
                .hasMessageContaining("radius of the hole");
        assertThatThrownBy(() -> AxisymmetricBlock.of("b", edges, edges, 1, 1, 300, 0.1, 0.1, 0))
                .hasMessageContaining("bottom below the top");
        assertThatThrownBy(() -> AxisymmetricBlock.of("b", edges, edges, 1, 1, 0, 0, 0, 0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> AxisymmetricBlock.of("b", new double[] {0, 0.1, 0.1}, edges, 1, 1, 300, 0, 0, 0))
                .hasMessageContaining("ascending");
        List<Node> nodes = block.nodes();
        Trajectory run = NetworkSolver.standard().solve(Network.of(nodes, block.paths()), 10);
        assertThatThrownBy(() -> block.atK(0.21, 0.1, run, 5)).hasMessageContaining("radius 0.21 m");
        assertThatThrownBy(() -> block.atK(0.1, -0.01, run, 5)).hasMessageContaining("depth -0.01 m");
        assertThatThrownBy(() -> block.atK(Double.NaN, 0.1, run, 5)).isInstanceOf(IllegalArgumentException.class);
        AxisymmetricBlock hollow = AxisymmetricBlock.of("h", edges, edges, 1, 1e6, 300, 0.1, 0, 0.1);
        Trajectory other = NetworkSolver.standard().solve(Network.of(hollow.nodes(), hollow.paths()), 10);
        assertThatThrownBy(() -> hollow.atK(0.05, 0.05, other, 5)).hasMessageContaining("hole");
    }
}
