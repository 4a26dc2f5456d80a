/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.metres;
import static org.beveragethermal.materials.units.Measures.millimetres;

import java.util.List;
import java.util.SplittableRandom;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PathEvaluation;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bricks, cylinders and spheres of ice: their geometry by hand, and their melting against closed forms. */
final class MeltingShapesTest {

    private static final double ZERO = 273.15;
    private static final double DENSITY = 917;
    private static final double LATENT = 333_550;
    private static final double SEA_KG = 1e8;

    private static List<IceBlock> shapes() {
        return List.of(
                IceBlock.cube(millimetres(30)),
                IceBlock.brick(millimetres(40), millimetres(100), millimetres(60)),
                IceBlock.brick(millimetres(10), millimetres(120), millimetres(120)),
                IceBlock.cylinder(millimetres(28), millimetres(90)),
                IceBlock.cylinder(millimetres(80), millimetres(20)),
                IceBlock.sphere(millimetres(50)));
    }

    private record Melting(Node ice, Trajectory run, IceBlock block) {

        static Melting in(double seaC, double count, IceBlock block, double exponent, double coefficient, double endS) {
            double mass = count * DENSITY * block.volumeM3();
            double side = block.shortestM();
            Node ice = Node.of("ice", IceStore.ofConstants(LATENT, 2050, mass, side, 4200), ZERO, mass, side);
            Node sea = Node.of("sea", LiquidStore.ofVaryingMass(4200), ZERO + seaC, SEA_KG);
            MeltingBlocks law = new MeltingBlocks(
                    count,
                    block,
                    1,
                    exponent,
                    DENSITY,
                    0,
                    LATENT,
                    HeatLaw.conductance(coefficient),
                    MeltingBlocks.ALL_WET);
            Trajectory run = NetworkSolver.standard()
                    .withToleranceK(1e-6)
                    .solve(
                            Network.of(List.of(ice, sea), List.of(MeltingPath.of("melting", sea, ice, law, "film"))),
                            endS);
            return new Melting(ice, run, block);
        }

        double massKg(double timeS) {
            return run.amount(ice, IceStore.MASS, timeS);
        }

        /** When the shortest extent would be 0, along the line through its last ten-thousandths: the law fades below the last one. */
        double goneS() {
            double earlier = crossing(4e-4);
            double later = crossing(2e-4);
            return later + (later - earlier);
        }

        private double crossing(double part) {
            return run.firstCrossing(0, t -> run.amount(ice, IceStore.SIDE, t) - part * block.shortestM())
                    .orElseThrow();
        }
    }

    @Test
    void shapesByHand() {
        IceBlock brick = IceBlock.brick(millimetres(100), millimetres(60), millimetres(40));
        assertThat(brick.shortestM()).isEqualTo(0.04);
        assertThat(brick.volumeM3()).isCloseTo(0.1 * 0.06 * 0.04, within(1e-15));
        assertThat(brick.surfaceM2(0.04)).isCloseTo(2 * (0.1 * 0.06 + 0.1 * 0.04 + 0.06 * 0.04), within(1e-15));
        assertThat(brick.volumeM3(0.03)).isCloseTo(0.09 * 0.05 * 0.03, within(1e-15));
        assertThat(brick.passesM()).isCloseTo(Math.hypot(0.06, 0.04), within(1e-15));
        assertThat(brick.filmLengthM(0.04)).isCloseTo(0.2 / 3, within(1e-15));
        IceBlock rod = IceBlock.cylinder(millimetres(28), millimetres(90));
        assertThat(rod.shortestM()).isEqualTo(0.028);
        assertThat(rod.volumeM3()).isCloseTo(Math.PI / 4 * 0.028 * 0.028 * 0.09, within(1e-15));
        assertThat(rod.surfaceM2(0.028)).isCloseTo(Math.PI * 0.028 * 0.09 + Math.PI / 2 * 0.028 * 0.028, within(1e-15));
        assertThat(rod.passesM()).isEqualTo(0.028);
        IceBlock disc = IceBlock.cylinder(millimetres(80), millimetres(20));
        assertThat(disc.shortestM()).isEqualTo(0.02);
        assertThat(disc.surfaceM2(0.02)).isCloseTo(Math.PI * 0.08 * 0.02 + Math.PI / 2 * 0.08 * 0.08, within(1e-15));
        IceBlock sphere = IceBlock.sphere(millimetres(50));
        assertThat(sphere.volumeM3()).isCloseTo(Math.PI / 6 * Math.pow(0.05, 3), within(1e-15));
        assertThat(sphere.surfaceM2(0.05)).isCloseTo(Math.PI * 0.05 * 0.05, within(1e-15));
        assertThat(sphere.filmLengthM(0.05)).isCloseTo(0.05, within(1e-15));
    }

    @Test
    void theSurfaceIsTwiceTheSlopeOfTheVolumeAndSlopesAreSlopes() {
        for (IceBlock block : shapes()) {
            for (double part = 0.05; part <= 1; part += 0.05) {
                double left = part * block.shortestM();
                double step = 1e-7;
                double byVolume = (block.volumeM3(left + step) - block.volumeM3(left - step)) / step;
                assertThat(block.surfaceM2(left)).isCloseTo(byVolume, within(1e-6 * byVolume));
                double bySurface = (block.surfaceM2(left + step) - block.surfaceM2(left - step)) / (2 * step);
                assertThat(block.surfaceSlope(left)).isCloseTo(bySurface, within(1e-6 * bySurface));
                double inside =
                        (block.innerConductanceM(left + step) - block.innerConductanceM(left - step)) / (2 * step);
                assertThat(block.innerConductanceSlope(left)).isCloseTo(inside, within(1e-5 * (1 + Math.abs(inside))));
                assertThat(block.leftOf(block.volumeM3(left) / block.surfaceM2(left)))
                        .isCloseTo(left, within(1e-11));
            }
        }
    }

    /** Slowest modes: slab π²/a², long rod (2·2.405/D)², sphere (2π/D)² (Carslaw and Jaeger 1959, from memory), cube as before. */
    @Test
    void insideConductsInTheSlowestMode() {
        double sphere = 4 * Math.PI * Math.PI / (0.05 * 0.05) * Math.PI / 6 * Math.pow(0.05, 3);
        assertThat(IceBlock.sphere(millimetres(50)).innerConductanceM(0.05)).isCloseTo(sphere, within(1e-12));
        IceBlock slab = IceBlock.brick(millimetres(6), millimetres(600), millimetres(600));
        double plate = Math.PI * Math.PI / (0.006 * 0.006) * slab.volumeM3();
        assertThat(slab.innerConductanceM(0.006)).isCloseTo(plate, within(1e-3 * plate));
        IceBlock rod = IceBlock.cylinder(millimetres(6), millimetres(600));
        double round = Math.pow(2 * 2.405 / 0.006, 2) * rod.volumeM3();
        assertThat(rod.innerConductanceM(0.006)).isCloseTo(round, within(1e-3 * round));
        assertThat(IceBlock.cube(millimetres(30)).innerConductanceM(0.017))
                .isCloseTo(MeltingBlocks.innerConductance(1, 0.017, 1), within(1e-12));
        assertThat(slab.innerConductanceM(0)).isFinite();
    }

    @Test
    void aBrickUnderAConstantCoefficient() {
        IceBlock brick = IceBlock.brick(millimetres(100), millimetres(60), millimetres(40));
        // All faces recede by h ΔT/(ρ L); gone with the thinnest extent.
        double recession = 300 * 4 / (DENSITY * LATENT);
        assertThat(0.04 / (2 * recession)).isCloseTo(5097.755833333334, within(1e-6));
        Melting melting = Melting.in(4, 1, brick, 2, 300, 5300);
        double[][] listed = {{600, 0.17051613670320132}, {1200, 0.1285081941635935}, {1800, 0.0934820331540238}};
        for (double[] row : listed) {
            OutsideChecks.published(
                            "melting-brick-mass-" + (int) row[0],
                            "closed form: m = ρ (a − 2δ)(b − 2δ)(c − 2δ), δ = h ΔT t/(ρ L)")
                    .what("mass left of a brick of 100 by 60 by 40 mm after " + row[0] + " s, 300 W/(m² K), 4 K")
                    .unit("kg")
                    .expected(row[1])
                    .withinRelative(1e-5)
                    .check(melting.massKg(row[0]));
        }
        OutsideChecks.published("melting-brick-gone", "closed form: t = ρ L c/(2 h ΔT), c the shortest side")
                .what("time until a brick of 100 by 60 by 40 mm is gone, 300 W/(m² K), 4 K")
                .unit("s")
                .expected(5097.755833333334)
                .within(1)
                .check(melting.goneS());
        assertThat(melting.massKg(5300)).isLessThan(2e-4 * DENSITY * brick.volumeM3());
    }

    /** The limit of a plate: however wide, it is gone when its thickness is, and half of it at half the time. */
    @ParameterizedTest
    @CsvSource({"12, 200, 400, 6", "20, 600, 250, 9"})
    void aWideSlabIsAPlate(double thicknessMm, double widthMm, double coefficient, double seaC) {
        IceBlock slab = IceBlock.brick(millimetres(thicknessMm), millimetres(widthMm), millimetres(widthMm));
        double formulaS = DENSITY * LATENT * 1e-3 * thicknessMm / (2 * coefficient * seaC);
        Melting melting = Melting.in(seaC, 3, slab, 2, coefficient, 1.05 * formulaS);
        assertThat(melting.goneS()).isCloseTo(formulaS, within(1e-4 * formulaS));
        double half = melting.massKg(0.5 * formulaS) / (3 * DENSITY * slab.volumeM3());
        // Within what its edges lose: two extents that fall by the thickness halved.
        assertThat(half).isCloseTo(0.5, within(1.01 * thicknessMm / widthMm * 0.5));
    }

    @ParameterizedTest
    @CsvSource({"air, 0.026, 25, 147050.649038", "water, 0.58, 10, 16479.814116"})
    void aSphereThatOnlyConducts(String medium, double conductivity, double seaC, double listedS) {
        // Nu = 2: h = k/R, so that the product of area and coefficient falls as the radius does.
        IceBlock sphere = IceBlock.sphere(millimetres(50));
        double radius = 0.025;
        assertThat(DENSITY * LATENT * radius * radius / (2 * conductivity * seaC))
                .isCloseTo(listedS, within(1e-6 * listedS));
        Melting melting = Melting.in(seaC, 1, sphere, 1, conductivity / radius, 1.1 * listedS);
        OutsideChecks.published("melting-ball-gone-" + medium, "closed form: t = ρ L R²/(2 k ΔT), conduction, Nu = 2")
                .what("time until a ball of 50 mm is gone in still " + medium + ", " + seaC + " K")
                .unit("s")
                .expected(listedS)
                .withinRelative(1e-4)
                .check(melting.goneS());
        // Half of the diameter's square, and so 2^(−3/2) of the mass, is left at half the time.
        assertThat(melting.massKg(0.5 * listedS) / melting.massKg(0)).isCloseTo(Math.pow(2, -1.5), within(1e-4));
    }

    @Test
    void ofOneMassWhatHasMoreSurfaceMeltsFaster() {
        double before = 0;
        for (IceBlock block : List.of(
                IceBlock.sphere(millimetres(62.035)),
                IceBlock.cube(millimetres(50)),
                IceBlock.brick(millimetres(12.5), millimetres(100), millimetres(100)))) {
            assertThat(block.volumeM3()).isCloseTo(125e-6, within(1e-9));
            double surface = block.surfaceM2(block.shortestM());
            assertThat(surface).isGreaterThan(before);
            before = surface;
            Melting melting = Melting.in(5, 1, block, 2, 400, 60);
            assertThat(melting.run().evaluate("melting", 0).flowOf(0)).isCloseTo(400 * 5 * surface, within(1e-9));
        }
    }

    @Test
    void pathStatesTheDerivativesOfItsFlows() {
        SplittableRandom random = new SplittableRandom(20261202);
        for (int trial = 0; trial < 120; trial++) {
            IceBlock block = shapes().get(trial % shapes().size());
            double side = block.shortestM();
            MeltingBlocks law = new MeltingBlocks(
                    7,
                    block,
                    0.75,
                    1 + random.nextDouble(),
                    DENSITY,
                    2.2,
                    LATENT,
                    HeatLaw.conductance(100 + 400 * random.nextDouble()),
                    MeltingBlocks.ALL_WET);
            Node ice = Node.of("ice", IceStore.ofConstants(LATENT, 2050, 1, side, 4200), ZERO, 1, side);
            Node bath = Node.of("bath", LiquidStore.ofVaryingMass(4200), ZERO + 5, 2.0);
            Path path = MeltingPath.of("melting", bath, ice, law, "film");
            double[] temperatures = {ZERO + 12 * random.nextDouble(), ZERO - 15 * random.nextDouble()};
            // Now and then where the law fades out.
            double left = side * random.nextDouble() * (trial % 5 == 0 ? 1e-4 : 1);
            double step = 1e-6 * left;
            PathEvaluation at = evaluated(path, temperatures, left);
            PathEvaluation above = evaluated(path, temperatures, left + step);
            PathEvaluation below = evaluated(path, temperatures, left - step);
            for (int account = 0; account < 3; account++) {
                double numeric = (above.flowOf(account) - below.flowOf(account)) / (2 * step);
                // Inputs: two temperatures, the bath's mass, the ice's mass, its side.
                assertThat(at.derivativeOf(account, 4))
                        .as(block + ", account " + account)
                        .isCloseTo(
                                numeric, within(1e-4 * Math.abs(numeric) + 1e-6 * Math.abs(at.flowOf(account)) / left));
            }
        }
    }

    private static PathEvaluation evaluated(Path path, double[] temperatures, double left) {
        PathEvaluation e = new PathEvaluation(path);
        e.evaluate(path, 0, temperatures, 2, 0.5, left);
        return e;
    }

    @Test
    void extentsOutOfRangeAreRefused() {
        for (double bad : new double[] {0.0029, 0.61, -0.01}) {
            assertThatThrownBy(() -> IceBlock.cube(metres(bad))).isInstanceOf(OutOfRangeException.class);
            assertThatThrownBy(() -> IceBlock.brick(metres(0.1), metres(bad), metres(0.1)))
                    .isInstanceOf(OutOfRangeException.class);
            assertThatThrownBy(() -> IceBlock.cylinder(metres(bad), metres(0.1)))
                    .isInstanceOf(OutOfRangeException.class);
            assertThatThrownBy(() -> IceBlock.cylinder(metres(0.1), metres(bad)))
                    .isInstanceOf(OutOfRangeException.class);
            assertThatThrownBy(() -> IceBlock.sphere(metres(bad))).isInstanceOf(OutOfRangeException.class);
        }
        IceBlock cube = IceBlock.cube(millimetres(30));
        assertThatThrownBy(() -> cube.leftOf(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> cube.leftOf(0.03)).isInstanceOf(IllegalArgumentException.class);
        assertThat(cube).isEqualTo(IceBlock.brick(millimetres(30), millimetres(30), millimetres(30)));
        assertThat(cube).isNotEqualTo(IceBlock.sphere(millimetres(30))).hasToString("cube of 30 mm");
        assertThat(cube.hashCode()).isEqualTo(IceBlock.cube(millimetres(30)).hashCode());
    }
}
