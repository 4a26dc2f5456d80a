/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.events.EventHandler;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.apache.commons.math3.ode.sampling.StepHandler;
import org.apache.commons.math3.ode.sampling.StepInterpolator;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Phase;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/**
 * A bucket of 2 kg of water at 2 °C with 60 cubes of ice at 0 °C in a room of 30 °C, into which a bottle of 24 °C is put after
 * 600 s: the network against the same equations written by hand for the temperatures, mass and side, and integrated by a
 * general-purpose library. All numbers are our own invention.
 */
final class MeltingBucketTest {

    private static final double ZERO = 273.15;
    private static final double LATENT = 333_550;
    private static final double DENSITY = 917;
    private static final double SIDE = 0.034;
    private static final double CUBES = 60;
    private static final double ICE_KG = CUBES * DENSITY * SIDE * SIDE * SIDE;
    private static final double WATER_KG = 2;
    private static final double WATER_C = 4200;
    private static final double FILM = 350;
    private static final double ROOM_C = 30;
    private static final double ROOM_UA = 2.2;
    private static final double NECK_UA = 0.015;
    private static final double GLASS_UA = 14;
    private static final double LIQUID_J_PER_K = 0.740 * 4150;
    private static final double GLASS_J_PER_K = 0.520 * 840;
    private static final double PUT_IN_S = 600;
    private static final double END_S = 14_400;
    private static final String LIBRARY = "Apache Commons Math 3.6.1, DormandPrince853Integrator, tolerance 1e-11";

    private static double inside(double difference) {
        return (2.5 + 3.5 * Math.pow(Math.abs(difference), 0.25)) * difference;
    }

    /** Bath, liquid, glass [°C], side of a cube [m] by time, from the equations written by hand. */
    private static final class ByHand {

        private final TreeMap<Double, double[]> states = new TreeMap<>();
        private final double goneS;

        ByHand(double everyS) {
            double[] state = {2, 24, 24, SIDE};
            double reached = integrate(state, 0, PUT_IN_S, false, true, everyS);
            assertThat(reached).isEqualTo(PUT_IN_S);
            goneS = integrate(state, PUT_IN_S, END_S, true, true, everyS);
            assertThat(goneS).isLessThan(END_S);
            state[3] = 0;
            integrate(state, goneS, END_S, true, false, everyS);
        }

        /** Integrates to the end or to the moment the ice is gone, and returns the time reached. */
        private double integrate(double[] state, double from, double to, boolean bottle, boolean ice, double everyS) {
            DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-9, 20, 1e-11, 1e-11);
            if (ice) {
                integrator.addEventHandler(new Gone(), 5, 1e-9, 200);
            }
            integrator.addStepHandler(new Keep(everyS));
            return integrator.integrate(new Equations(bottle, ice), from, state, to, state);
        }

        private final class Keep implements StepHandler {
            private final double everyS;

            Keep(double everyS) {
                this.everyS = everyS;
            }

            @Override
            public void init(double t0, double[] y0, double t) {}

            @Override
            public void handleStep(StepInterpolator step, boolean isLast) {
                double first = Math.ceil(step.getPreviousTime() / everyS) * everyS;
                for (double t = first; t <= step.getCurrentTime(); t += everyS) {
                    step.setInterpolatedTime(t);
                    states.put(t, step.getInterpolatedState().clone());
                }
            }
        }

        /** The side goes on falling evenly through 0, so the event is a simple zero. */
        private static final class Gone implements EventHandler {
            @Override
            public void init(double t0, double[] y0, double t) {}

            @Override
            public double g(double t, double[] y) {
                return y[3];
            }

            @Override
            public Action eventOccurred(double t, double[] y, boolean increasing) {
                return Action.STOP;
            }

            @Override
            public void resetState(double t, double[] y) {}
        }
    }

    private static final class Equations implements FirstOrderDifferentialEquations {
        private final boolean bottle;
        private final boolean ice;

        Equations(boolean bottle, boolean ice) {
            this.bottle = bottle;
            this.ice = ice;
        }

        @Override
        public int getDimension() {
            return 4;
        }

        @Override
        public void computeDerivatives(double t, double[] y, double[] rates) {
            double bath = y[0];
            double side = ice ? y[3] : 0;
            double recession = ice ? 2 * FILM * bath / (DENSITY * LATENT) : 0;
            double melting = 3 * CUBES * DENSITY * side * side * recession;
            double mass = WATER_KG + ICE_KG - CUBES * DENSITY * side * side * side;
            double inside = bottle ? inside(y[1] - y[2]) : 0;
            double outside = bottle ? GLASS_UA * (y[2] - bath) : 0;
            // Heat from room and bottle, less what melts the ice and what warms its water from 0 °C to the bath's
            // temperature.
            double gain = ROOM_UA * (ROOM_C - bath) + outside - melting * (LATENT + WATER_C * bath);
            rates[0] = gain / (mass * WATER_C);
            rates[1] = bottle ? (NECK_UA * (ROOM_C - y[1]) - inside) / LIQUID_J_PER_K : 0;
            rates[2] = (inside - outside) / GLASS_J_PER_K;
            rates[3] = -recession;
        }
    }

    /** The same posed to the network. */
    private static final class InNetwork {
        private final Node ice = Node.of(
                "ice", IceStore.ofConstants(LATENT, 2050, ICE_KG, SIDE, WATER_KG * WATER_C), ZERO, ICE_KG, SIDE);
        private final Node bath = Node.of("bath", LiquidStore.ofVaryingMass(WATER_C), ZERO + 2, WATER_KG);
        private final Node liquid = Node.sensible("liquid", LIQUID_J_PER_K, ZERO + 24);
        private final Node glass = Node.sensible("glass", GLASS_J_PER_K, ZERO + 24);
        private final Boundary room = Boundary.constant("room", ZERO + ROOM_C);
        private final Trajectory run;

        InNetwork(double toleranceK) {
            MeltingBlocks law = new MeltingBlocks(
                    CUBES, SIDE, 1, 2, DENSITY, 0, LATENT, HeatLaw.conductance(FILM), MeltingBlocks.ALL_WET);
            List<Path> before = List.of(
                    MeltingPath.of("melting", bath, ice, law, "film"),
                    DirectPath.of("room", room, bath, "convection", HeatLaw.conductance(ROOM_UA)));
            List<Path> after = new ArrayList<>(before);
            after.add(DirectPath.of("inside", liquid, glass, "convection", (from, to, out) -> {
                double difference = from - to;
                out.watts = inside(difference);
                out.perFromKelvin = 2.5 + 1.25 * 3.5 * Math.pow(Math.abs(difference), 0.25);
                out.perToKelvin = -out.perFromKelvin;
            }));
            after.add(DirectPath.of("outside", glass, bath, "convection", HeatLaw.conductance(GLASS_UA)));
            after.add(DirectPath.of("neck", room, liquid, "convection", HeatLaw.conductance(NECK_UA)));
            List<Node> nodes = List.of(ice, bath, liquid, glass);
            run = NetworkSolver.standard()
                    .withToleranceK(toleranceK)
                    .solve(
                            List.of(
                                    new Phase(0, Network.of(nodes, before)),
                                    new Phase(PUT_IN_S, Network.of(nodes, after))),
                            END_S);
        }

        double goneS() {
            double earlier = crossing(4e-4 * SIDE);
            double later = crossing(2e-4 * SIDE);
            return later + (later - earlier);
        }

        private double crossing(double sideM) {
            return run.firstCrossing(0, t -> run.amount(ice, IceStore.SIDE, t) - sideM)
                    .orElseThrow();
        }

        double celsius(Node node, double t) {
            return run.temperatureK(node, t) - ZERO;
        }
    }

    @Test
    void bucketAgreesWithTheEquationsWrittenByHand() {
        ByHand hand = new ByHand(60);
        InNetwork network = new InNetwork(1e-6);
        double bath = 0;
        double liquid = 0;
        double glass = 0;
        double ice = 0;
        for (var entry : hand.states.entrySet()) {
            double t = entry.getKey();
            double[] y = entry.getValue();
            bath = Math.max(bath, Math.abs(network.celsius(network.bath, t) - y[0]));
            liquid = Math.max(liquid, Math.abs(network.celsius(network.liquid, t) - y[1]));
            glass = Math.max(glass, Math.abs(network.celsius(network.glass, t) - y[2]));
            double mass = CUBES * DENSITY * Math.pow(Math.max(0, y[3]), 3);
            ice = Math.max(ice, Math.abs(network.run.amount(network.ice, IceStore.MASS, t) - mass));
        }
        assertThat(hand.states).hasSize((int) (END_S / 60) + 1);
        check("bath", "temperature of the bath", "K", bath, 1e-3);
        check("liquid", "temperature of the drink", "K", liquid, 1e-3);
        check("glass", "temperature of the glass", "K", glass, 1e-3);
        check("ice", "mass of ice", "kg", ice, 1e-4);
        OutsideChecks.referenceLibrary("melting-bucket-gone", LIBRARY)
                .what("when the ice is gone, from the side; tolerance 1e-6 K")
                .unit("s")
                .expected(hand.goneS)
                .within(1)
                .check(network.goneS());
        assertThat(network.run.ledger(END_S).closure()).isLessThan(1e-9);
        double mass = network.run.amount(network.bath, 0, END_S);
        assertThat(mass).isCloseTo(WATER_KG + ICE_KG, within(1e-8));
    }

    private static void check(String id, String what, String unit, double error, double limit) {
        OutsideChecks.referenceLibrary("melting-bucket-" + id, LIBRARY)
                .what("largest error of the " + what
                        + " over four hours, bucket with 60 cubes and a bottle; tolerance 1e-6 K")
                .unit(unit)
                .expected(0)
                .within(limit)
                .check(error);
    }

    @Test
    void errorFallsWithTheTolerance() {
        ByHand hand = new ByHand(600);
        double loose = largest(hand, new InNetwork(1e-3));
        double tight = largest(hand, new InNetwork(1e-6));
        assertThat(loose).isLessThan(2e-3);
        assertThat(tight).isLessThan(0.1 * loose);
    }

    private static double largest(ByHand hand, InNetwork network) {
        return hand.states.entrySet().stream()
                .mapToDouble(entry -> Math.max(
                        Math.abs(network.celsius(network.bath, entry.getKey()) - entry.getValue()[0]),
                        Math.abs(network.celsius(network.liquid, entry.getKey()) - entry.getValue()[1])))
                .max()
                .orElseThrow();
    }
}
