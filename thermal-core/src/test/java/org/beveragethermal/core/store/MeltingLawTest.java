/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PathEvaluation;
import org.beveragethermal.core.network.SmoothFunction;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.testsupport.ObservedOrders;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Cubes that melt in a medium of constant temperature against closed forms, and what a balance demands; other shapes have {@link
 * MeltingShapesTest} of their own.
 */
final class MeltingLawTest {

    private static final double ZERO = 273.15;
    private static final double DENSITY = 917;
    private static final double LATENT = 333_550;
    /** So much medium that neither its heat nor the melt water changes its temperature. */
    private static final double SEA_KG = 1e8;

    /** Ice in a sea of one temperature. */
    private record Melting(Node ice, Trajectory run, MeltingBlocks law, Node sea) {

        static Melting in(double seaC, double massKg, MeltingBlocks law, double endS) {
            Node ice = iceOf(massKg, law.firstSideM());
            Node sea = Node.of("sea", LiquidStore.ofVaryingMass(4200), ZERO + seaC, SEA_KG);
            Trajectory run = NetworkSolver.standard()
                    .withToleranceK(1e-6)
                    .solve(
                            Network.of(List.of(ice, sea), List.of(MeltingPath.of("melting", sea, ice, law, "film"))),
                            endS);
            return new Melting(ice, run, law, sea);
        }

        double goneS() {
            return MeltingLawTest.goneS(run, ice, law.firstSideM());
        }
    }

    /**
     * When the side would be 0: along the straight line through its last ten-thousandths, because the law fades below the last
     * one.
     */
    private static double goneS(Trajectory run, Node ice, double firstSideM) {
        double earlier = crossing(run, ice, 4e-4 * firstSideM);
        double later = crossing(run, ice, 2e-4 * firstSideM);
        return later + (later - earlier);
    }

    private static double crossing(Trajectory run, Node ice, double sideM) {
        return run.firstCrossing(0, t -> run.amount(ice, IceStore.SIDE, t) - sideM)
                .orElseThrow();
    }

    private static Node iceOf(double massKg, double sideM) {
        return Node.of("ice", IceStore.ofConstants(LATENT, 2050, massKg, sideM, 4200), ZERO, massKg, sideM);
    }

    /** Blocks of ice at 0 °C throughout, wet all over, under a constant coefficient at the start. */
    private static MeltingBlocks blocks(double count, double sideM, double exponent, double coefficient) {
        return new MeltingBlocks(
                count, sideM, 1, exponent, DENSITY, 0, LATENT, HeatLaw.conductance(coefficient), MeltingBlocks.ALL_WET);
    }

    @ParameterizedTest
    @CsvSource({"water, 400, 8, 1433.743828125", "air, 12, 22, 17378.71306818182"})
    void cubesUnderAConstantCoefficient(String medium, double coefficient, double seaC, double listedS) {
        double side = 0.03;
        double formulaS = DENSITY * LATENT * side / (2 * coefficient * seaC);
        assertThat(formulaS).isCloseTo(listedS, within(1e-6 * listedS));
        double mass = 5 * DENSITY * side * side * side;
        Melting melting = Melting.in(seaC, mass, blocks(5, side, 2, coefficient), 1.1 * listedS);
        OutsideChecks.published(
                        "melting-cube-gone-" + medium, "closed form: t = ρ L a/(2 h ΔT), all faces recede evenly")
                .what("time until cubes of 30 mm are gone in " + medium + ", " + coefficient + " W/(m² K), " + seaC
                        + " K")
                .unit("s")
                .expected(listedS)
                .within(1)
                .check(melting.goneS());
        for (double part : new double[] {0.25, 0.5, 0.75}) {
            double left = melting.run().amount(melting.ice(), IceStore.MASS, part * listedS) / mass;
            assertThat(left).isCloseTo(Math.pow(1 - part, 3), within(1e-5));
            assertThat(melting.run().amount(melting.ice(), IceStore.SIDE, part * listedS))
                    .isCloseTo(side * (1 - part), within(1e-6));
        }
    }

    @ParameterizedTest
    @CsvSource({"air, 0.026, 25, 147050.649038", "water, 0.58, 10, 16479.814116"})
    void spheresThatOnlyConduct(String medium, double conductivity, double seaC, double listedS) {
        // Nu = 2: h = k/R grows as the sphere shrinks, h · area ~ R. With the diameter as side, a sphere is π/6 blocks:
        // its
        // volume is π/6 D³ and its area 6 · π/6 · D².
        double diameter = 0.05;
        double radius = diameter / 2;
        double formulaS = DENSITY * LATENT * radius * radius / (2 * conductivity * seaC);
        assertThat(formulaS).isCloseTo(listedS, within(1e-6 * listedS));
        double mass = DENSITY * Math.PI / 6 * Math.pow(diameter, 3);
        Melting melting =
                Melting.in(seaC, mass, blocks(Math.PI / 6, diameter, 1, conductivity / radius), 1.1 * listedS);
        OutsideChecks.published("melting-sphere-gone-" + medium, "closed form: t = ρ L R²/(2 k ΔT), conduction, Nu = 2")
                .what("time until a sphere of 50 mm is gone in still " + medium + ", " + seaC + " K")
                .unit("s")
                .expected(listedS)
                .withinRelative(1e-4)
                .check(melting.goneS());
        double half = melting.run().amount(melting.ice(), IceStore.SIDE, 0.5 * listedS);
        assertThat(half).isCloseTo(diameter * Math.sqrt(0.5), within(1e-5 * diameter));
    }

    @Test
    void errorOfAMeltingSphereFallsWithTolerance() {
        // D = D₀ √(1 − t/t₀): see spheresThatOnlyConduct.
        double diameter = 0.05;
        double conductivity = 0.58;
        double radius = diameter / 2;
        double goneS = DENSITY * LATENT * radius * radius / (2 * conductivity * 10);
        Node ice = iceOf(DENSITY * Math.PI / 6 * Math.pow(diameter, 3), diameter);
        Node sea = Node.of("sea", LiquidStore.ofVaryingMass(4200), ZERO + 10, SEA_KG);
        MeltingBlocks law = blocks(Math.PI / 6, diameter, 1, conductivity / radius);
        Network network = Network.of(List.of(ice, sea), List.of(MeltingPath.of("melting", sea, ice, law, "film")));
        SimpleRegression onSteps = new SimpleRegression();
        SimpleRegression onTolerance = new SimpleRegression();
        for (double toleranceK : new double[] {1e-1, 1e-2, 1e-3, 1e-4, 1e-5, 1e-6, 1e-7}) {
            Trajectory run = NetworkSolver.standard().withToleranceK(toleranceK).solve(network, 0.95 * goneS);
            double worst = 0;
            for (double part : new double[] {0.25, 0.5, 0.75, 0.9}) {
                double exact = diameter * Math.sqrt(1 - part);
                worst = Math.max(worst, Math.abs(run.amount(ice, IceStore.SIDE, part * goneS) - exact));
            }
            onSteps.addData(Math.log(run.steps()), Math.log(worst));
            onTolerance.addData(Math.log(toleranceK), Math.log(worst));
        }
        String family = "melting store";
        String quantity = "diameter of a melting sphere, against its closed form";
        ObservedOrders.of(family, quantity, "steps taken, tolerance 1e-1 to 1e-7 K")
                .check(4, -onSteps.getSlope(), 3, 5);
        ObservedOrders.of(family, quantity, "tolerance, 1e-1 to 1e-7 K").check(1, onTolerance.getSlope(), 0.8, 1.2);
    }

    @ParameterizedTest
    @CsvSource({
        "0.020, 654.3075245, 1529.32675",
        "0.030, 436.2050164, 2293.990125",
        "0.050, 261.7230098, 3823.316875",
    })
    void aKilogramOfSmallCubesMeltsFaster(double side, double listedW, double listedS) {
        double coefficient = 400;
        double seaC = 5;
        assertThat(6 / (DENSITY * side) * coefficient * seaC).isCloseTo(listedW, within(1e-6 * listedW));
        MeltingBlocks law = blocks(1 / (DENSITY * side * side * side), side, 2, coefficient);
        Melting melting = Melting.in(seaC, 1, law, 1.05 * listedS);
        OutsideChecks.published("melting-kilogram-power", "closed form: Q = h ΔT · 6 m/(ρ a)")
                .what("heat into a kilogram of cubes of " + side + " m at the start, 400 W/(m² K), 5 K")
                .unit("W")
                .expected(listedW)
                .withinRelative(1e-6)
                .check(melting.run().evaluate("melting", 0).flowOf(0));
        OutsideChecks.published("melting-kilogram-gone", "closed form: t = ρ L a/(2 h ΔT)")
                .what("time until a kilogram of cubes of " + side + " m is gone")
                .unit("s")
                .expected(listedS)
                .within(1)
                .check(melting.goneS());
    }

    @Test
    void iceBucketLastsAsLongAsItsEnthalpy() {
        // A film so good that the bath stays at 0 °C: 2 kg of ice take up the bottle's heat and what comes from the
        // room.
        double side = 0.03;
        double mass = 2;
        double[] capacities = {0.74 * 4150, 0.52 * 840};
        double bottleJ = 24 * (capacities[0] + capacities[1]);
        double formulaS = (mass * LATENT - bottleJ) / (2.2 * 30);
        assertThat(formulaS).isCloseTo(8832.012121, within(1e-3));
        Node ice = iceOf(mass, side);
        Node bath = Node.of("bath", LiquidStore.ofVaryingMass(4200), ZERO, 0.5);
        Node liquid = Node.sensible("liquid", capacities[0], ZERO + 24);
        Node glass = Node.sensible("glass", capacities[1], ZERO + 24);
        List<Path> paths = new ArrayList<>();
        MeltingBlocks law = blocks(mass / (DENSITY * side * side * side), side, 2, 1e9);
        paths.add(MeltingPath.of("melting", bath, ice, law, "film"));
        paths.add(DirectPath.of(
                "room", Boundary.constant("room", ZERO + 30), bath, "convection", HeatLaw.conductance(2.2)));
        paths.add(DirectPath.of("inside", liquid, glass, "convection", HeatLaw.conductance(8)));
        paths.add(DirectPath.of("outside", glass, bath, "convection", HeatLaw.conductance(14)));
        Trajectory run = NetworkSolver.standard()
                .withToleranceK(1e-6)
                .solve(Network.of(List.of(ice, bath, liquid, glass), paths), 9000);
        OutsideChecks.published("melting-bucket-enthalpy", "closed form: t = (m L − E)/(U A ΔT), bath at 0 °C")
                .what("time until 2 kg of ice are gone, a bottle of 24 °C in it, 2.2 W/K to a room of 30 °C")
                .unit("s")
                .expected(8832.01212121)
                .within(1)
                .check(goneS(run, ice, side));
        assertThat(run.ledger(9000).closure()).isLessThan(1e-9);
    }

    @Test
    void massAndEnthalpyAreConserved() {
        // Ice of −12 °C and water of 9 °C without losses: sums of mass and enthalpy stay to rounding.
        double side = 0.025;
        double mass = 0.8;
        Node ice = Node.of("ice", IceStore.ofConstants(LATENT, 2050, mass, side, 8000), ZERO - 12, mass, side);
        Node bath = Node.of("bath", LiquidStore.ofVaryingMass(4200), ZERO + 9, 2.0);
        MeltingBlocks law = new MeltingBlocks(
                mass / (DENSITY * side * side * side),
                side,
                0.75,
                1.75,
                DENSITY,
                2.2,
                LATENT,
                HeatLaw.conductance(300),
                MeltingBlocks.ALL_WET);
        Trajectory run = NetworkSolver.standard()
                .solve(
                        Network.of(List.of(ice, bath), List.of(MeltingPath.of("melting", bath, ice, law, "film"))),
                        3600);
        double massAtStart = mass + 2.0;
        double enthalpyAtStart = run.enthalpyJ(ice, 0) + run.enthalpyJ(bath, 0);
        double scale = Math.abs(run.enthalpyJ(ice, 0)) + Math.abs(run.enthalpyJ(bath, 0));
        for (double t = 0; t <= 3600; t += 60) {
            double massNow = run.amount(ice, IceStore.MASS, t) + run.amount(bath, 0, t);
            double enthalpyNow = run.enthalpyJ(ice, t) + run.enthalpyJ(bath, t);
            assertThat(massNow).isCloseTo(massAtStart, within(1e-12 * massAtStart));
            assertThat(enthalpyNow).isCloseTo(enthalpyAtStart, within(1e-12 * scale));
        }
        assertThat(run.amount(ice, IceStore.MASS, 3600)).isBetween(0.5, 0.85);
        assertThat(run.temperatureK(bath, 3600)).isCloseTo(ZERO, within(0.05));
        assertThat(run.temperatureK(ice, 3600)).isCloseTo(ZERO, within(0.05));
        assertThat(run.ledger(3600).closure()).isLessThan(1e-9);
    }

    /** Half of the ice in water while there is much, all of it at the end. */
    private static final SmoothFunction SINKING = new SmoothFunction() {
        @Override
        public double at(double mass) {
            return 1 / (1 + mass);
        }

        @Override
        public double slope(double mass) {
            return -1 / ((1 + mass) * (1 + mass));
        }
    };

    @Test
    void pathStatesTheDerivativesOfItsFlows() {
        Random random = new Random(20260103);
        for (int trial = 0; trial < 200; trial++) {
            double side = 0.01 + 0.04 * random.nextDouble();
            MeltingBlocks law = new MeltingBlocks(
                    20 * random.nextDouble() + 1,
                    side,
                    0.2 + 0.8 * random.nextDouble(),
                    1 + random.nextDouble(),
                    DENSITY,
                    2.2 * random.nextInt(2),
                    LATENT,
                    HeatLaw.conductance(100 + 500 * random.nextDouble()),
                    SINKING);
            Node ice = iceOf(1, side);
            Node bath = Node.of("bath", LiquidStore.ofVaryingMass(4200), ZERO + 5, 2.0);
            Path path = MeltingPath.of("melting", bath, ice, law, "film");
            double[] inputs = {
                ZERO - 1 + 15 * random.nextDouble(),
                ZERO - 20 * random.nextDouble(),
                2,
                random.nextDouble(),
                // Now and then where the law fades out.
                trial % 4 == 0 ? side * 1e-4 * random.nextDouble() : side * random.nextDouble()
            };
            assertDerivatives(path, inputs, 0.5 + random.nextDouble());
        }
    }

    private static void assertDerivatives(Path path, double[] inputs, double factor) {
        PathEvaluation at = evaluated(path, inputs, factor);
        double[] steps = {1e-4, 1e-4, 1e-4, 1e-5, 1e-4 * inputs[4]};
        for (int j = 0; j < inputs.length; j++) {
            double[] up = inputs.clone();
            up[j] += steps[j];
            double[] down = inputs.clone();
            down[j] -= steps[j];
            PathEvaluation above = evaluated(path, up, factor);
            PathEvaluation below = evaluated(path, down, factor);
            for (int account = 0; account < 3; account++) {
                double numeric = (above.flowOf(account) - below.flowOf(account)) / (2 * steps[j]);
                double scale = Math.abs(at.flowOf(account)) / steps[j] * 1e-8 + Math.abs(numeric);
                assertThat(at.derivativeOf(account, j))
                        .as("account " + account + ", input " + j)
                        .isCloseTo(numeric, within(1e-4 * scale + 1e-12));
            }
        }
        PathEvaluation more = evaluated(path, inputs, factor + 1e-4);
        PathEvaluation less = evaluated(path, inputs, factor - 1e-4);
        for (int account = 0; account < 3; account++) {
            double numeric = (more.flowOf(account) - less.flowOf(account)) / 2e-4;
            assertThat(at.multiplierDerivativeOf(account, 0))
                    .isCloseTo(numeric, within(1e-6 * Math.abs(numeric) + 1e-12));
        }
    }

    private static PathEvaluation evaluated(Path path, double[] inputs, double factor) {
        PathEvaluation e = new PathEvaluation(path);
        e.setMultiplier(0, factor);
        e.evaluate(path, 0, new double[] {inputs[0], inputs[1]}, inputs[2], inputs[3], inputs[4]);
        return e;
    }

    @Test
    void partOfTheIceInWaterScalesTheHeat() {
        Node ice = iceOf(1, 0.03);
        Node bath = Node.of("bath", LiquidStore.ofVaryingMass(4200), ZERO + 5, 2.0);
        MeltingBlocks all = blocks(30, 0.03, 2, 400);
        MeltingBlocks half = new MeltingBlocks(30, 0.03, 0.5, 2, DENSITY, 0, LATENT, HeatLaw.conductance(400), SINKING);
        double[] inputs = {ZERO + 5, ZERO, 2, 1, 0.03};
        double whole =
                evaluated(MeltingPath.of("m", bath, ice, all, "f"), inputs, 1).flowOf(0);
        assertThat(evaluated(MeltingPath.of("m", bath, ice, half, "f"), inputs, 1)
                        .flowOf(0))
                .isCloseTo(whole * 0.5 * 0.5, within(1e-9 * whole));
        assertThat(evaluated(MeltingPath.of("m", bath, ice, all, "f"), inputs, 2)
                        .flowOf(1))
                .isCloseTo(2 * whole / LATENT, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void numbersThatAreNoneAreRefused(double bad) {
        refused(() -> blocks(bad, 0.03, 2, 400));
        refused(() -> blocks(1, bad, 2, 400));
        refused(() -> blocks(1, 0.03, bad, 400));
        refused(() -> law(bad, DENSITY, 0, LATENT));
        refused(() -> law(1, bad, 0, LATENT));
        refused(() -> law(1, DENSITY, 0, bad));
        refused(() -> IceStore.ofConstants(bad, 2050, 1, 0.03, 1));
        refused(() -> IceStore.ofConstants(LATENT, bad, 1, 0.03, 1));
        refused(() -> IceStore.ofConstants(LATENT, 2050, bad, 0.03, 1));
        refused(() -> IceStore.ofConstants(LATENT, 2050, 1, bad, 1));
        refused(() -> IceStore.ofConstants(LATENT, 2050, 1, 0.03, bad));
        refused(() -> IceStore.of(bad, 0.03, 1));
        refused(() -> IceStore.of(1, bad, 1));
        refused(() -> IceStore.of(1, 0.03, bad));
        refused(() -> LiquidStore.ofVaryingMass(bad));
    }

    @Test
    void restOfTheRefusals() {
        refused(() -> law(1, DENSITY, -1, LATENT));
        refused(() -> law(1, DENSITY, Double.NaN, LATENT));
        refused(() -> law(1, DENSITY, Double.POSITIVE_INFINITY, LATENT));
        refused(() -> law(1.01, DENSITY, 0, LATENT));
        refused(() -> blocks(1, 0.03, 0.99, 400));
        refused(() -> blocks(1, 0.03, 2.01, 400));
        MeltingBlocks law = blocks(1, 0.03, 2, 400);
        Node plain = Node.sensible("plain", 1, 280);
        Node bath = Node.of("bath", LiquidStore.ofVaryingMass(4200), 280, 1.0);
        Node ice = iceOf(1, 0.03);
        refused(() -> MeltingPath.of("m", plain, ice, law, "f"));
        refused(() -> MeltingPath.of("m", bath, bath, law, "f"));
        IceStore store = IceStore.ofConstants(LATENT, 2050, 1, 0.03, 1);
        refused(() -> store.enthalpyJ(ZERO + 0.1, 1, 0.03));
        refused(() -> store.enthalpyJ(Double.NaN, 1, 0.03));
    }

    private static MeltingBlocks law(double wetted, double density, double conductivity, double latent) {
        return new MeltingBlocks(
                1, 0.03, wetted, 2, density, conductivity, latent, HeatLaw.conductance(1), MeltingBlocks.ALL_WET);
    }

    private static void refused(org.assertj.core.api.ThrowableAssert.ThrowingCallable call) {
        assertThatThrownBy(call).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("expected");
    }
}
