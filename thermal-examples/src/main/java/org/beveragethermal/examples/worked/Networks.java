/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.worked;

import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.core.conduction.LayerStack;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.solver.EventAnswer;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Phase;
import org.beveragethermal.core.solver.RunEvent;
import org.beveragethermal.core.solver.Trajectory;

/** The second methods that integrate a thermal network step by step instead of using a formula. Temperatures in °C. */
final class Networks {

    private static final NetworkSolver SOLVER = NetworkSolver.standard().withToleranceK(1e-4);
    static final int SHELLS = 60;
    static final int SLICES = 80;
    /** Density and specific heat capacity do not matter for a steady state or once the diffusivity is given. */
    private static final double ANY_HEAT_CAPACITY = 2e6;

    private static final double LONG_ENOUGH_S = 1e6;
    /** A film that leaves no difference. */
    private static final double PERFECT_FILM = 1e7;

    private Networks() {}

    /** One node, one film. */
    static Trajectory oneNode(Node body, double conductance, double mediumC, double endS) {
        return SOLVER.solve(Network.of(List.of(body), List.of(film(body, conductance, mediumC))), endS);
    }

    static Node body(double capacity, double celsius) {
        return Node.sensible("body", capacity, Kelvin.of(celsius));
    }

    private static DirectPath film(Node body, double conductance, double mediumC) {
        return DirectPath.of(
                "film",
                body,
                Boundary.constant("medium", Kelvin.of(mediumC)),
                "convection",
                HeatLaw.conductance(conductance));
    }

    static double celsius(Trajectory run, Node node, double timeS) {
        return Kelvin.celsius(run.temperatureK(node, timeS));
    }

    /** When a node passes a temperature [s]. */
    static double timeTo(Trajectory run, Node node, double celsius) {
        EventAnswer answer = run.first(RunEvent.temperatureReaches(node, Kelvin.of(celsius)), 0);
        if (answer instanceof EventAnswer.Reached reached) {
            return reached.timeS();
        }
        throw new IllegalStateException("the body does not reach " + celsius + " °C in the run");
    }

    /** Two bodies joined until nothing changes [°C]. */
    static double joined(double firstCapacity, double firstC, double secondCapacity, double secondC) {
        Node first = Node.sensible("first", firstCapacity, Kelvin.of(firstC));
        Node second = Node.sensible("second", secondCapacity, Kelvin.of(secondC));
        double conductance = 1;
        double endS = 30 * Math.max(firstCapacity, secondCapacity) / conductance;
        Trajectory run = SOLVER.solve(
                Network.of(
                        List.of(first, second),
                        List.of(DirectPath.of("contact", first, second, "contact", HeatLaw.conductance(conductance)))),
                endS);
        return celsius(run, first, endS);
    }

    /** One body in one medium and then in another: how warm it is at the end [°C]. */
    static double twoStages(
            double startC, double firstTauS, double firstC, double firstS, double tauS, double secondC, double endS) {
        Node body = body(1, startC);
        Network first = Network.of(List.of(body), List.of(film(body, 1 / firstTauS, firstC)));
        Network second = first.withPaths(List.of(film(body, 1 / tauS, secondC)));
        Trajectory run = SOLVER.solve(List.of(new Phase(0, first), new Phase(firstS, second)), endS);
        return celsius(run, body, endS);
    }

    /** When the middle of a sphere that is cooled by a film passes a temperature, by shells [s]. */
    static double sphereMiddle(
            double radiusM,
            double conductivity,
            double diffusivity,
            double h,
            double startC,
            double mediumC,
            double c) {
        LayerStack sphere = LayerStack.sphere(0)
                .layer("sphere", radiusM, conductivity, conductivity / diffusivity, SHELLS)
                .build("sphere", Kelvin.of(startC));
        double endS = 3 * radiusM * radiusM / diffusivity * (1 + conductivity / (h * radiusM));
        Trajectory run = SOLVER.solve(
                wetted(sphere.nodes(), sphere.paths(), sphere.outerSurface(), h * sphere.outerAreaM2(), mediumC), endS);
        double sign = Math.signum(startC - mediumC);
        return run.firstCrossing(0, time -> sign * (sphere.middleK(run, time) - Kelvin.of(c)))
                .orElseThrow();
    }

    /** Mean temperature of a sphere after a time, by shells [°C]. */
    static double sphereMean(
            double radiusM,
            double conductivity,
            double diffusivity,
            double h,
            double startC,
            double mediumC,
            double s) {
        LayerStack sphere = LayerStack.sphere(0)
                .layer("sphere", radiusM, conductivity, conductivity / diffusivity, SHELLS)
                .build("sphere", Kelvin.of(startC));
        Trajectory run = SOLVER.solve(
                wetted(sphere.nodes(), sphere.paths(), sphere.outerSurface(), h * sphere.outerAreaM2(), mediumC), s);
        return Kelvin.celsius(sphere.meanK("sphere", run, s));
    }

    private static Network wetted(
            List<Node> nodes, List<Path> inner, Link surface, double conductance, double mediumC) {
        List<Path> paths = new ArrayList<>(inner);
        paths.add(JunctionPath.of(
                "film",
                surface,
                Link.of(
                        Boundary.constant("medium", Kelvin.of(mediumC)),
                        "convection",
                        HeatLaw.conductance(conductance))));
        return Network.of(nodes, paths);
    }

    /** How warm deep ground is at a depth after its surface was given another temperature, by slices [°C]. */
    static double groundAt(double depthM, double diffusivity, double startC, double surfaceC, double timeS) {
        double conductivity = diffusivity * ANY_HEAT_CAPACITY;
        LayerStack ground = LayerStack.plane(1, 0)
                .layer("above", depthM, conductivity, ANY_HEAT_CAPACITY, SLICES)
                .farMedium("below", conductivity, ANY_HEAT_CAPACITY, timeS)
                .build("ground", Kelvin.of(startC));
        Trajectory run = SOLVER.solve(
                wetted(ground.nodes(), ground.paths(), ground.innerSurface(), PERFECT_FILM, surfaceC), timeS);
        return Kelvin.celsius(ground.outerEdgeK("above", run, timeS));
    }

    /** Heat through a wall between two films once it is steady, by slices [W]. */
    static double throughWall(
            double areaM2,
            double thicknessM,
            double conductivity,
            double hi,
            double insideC,
            double ho,
            double outsideC) {
        LayerStack wall = LayerStack.plane(areaM2, 0)
                .layer("wall", thicknessM, conductivity, ANY_HEAT_CAPACITY, SLICES)
                .build("wall", Kelvin.of(insideC));
        Boundary outside = Boundary.constant("outside", Kelvin.of(outsideC));
        JunctionPath outer = JunctionPath.of(
                "outer", wall.outerSurface(), Link.of(outside, "convection", HeatLaw.conductance(ho * areaM2)));
        List<Path> paths = new ArrayList<>(wall.paths());
        paths.add(outer);
        paths.add(JunctionPath.of(
                "inner",
                wall.innerSurface(),
                Link.of(
                        Boundary.constant("inside", Kelvin.of(insideC)),
                        "convection",
                        HeatLaw.conductance(hi * areaM2))));
        Trajectory run = SOLVER.solve(Network.of(wall.nodes(), paths), LONG_ENOUGH_S);
        double surfaceC = Kelvin.celsius(outer.surfaceTemperatureK(run.evaluate("outer", LONG_ENOUGH_S)));
        return ho * areaM2 * (outsideC - surfaceC);
    }

    /** Heat that a rod takes from its hot root once it is steady, by slices [W]. */
    static double fin(double lengthM, double diameterM, double conductivity, double h, double rootC, double mediumC) {
        double slice = lengthM / SLICES;
        double section = Math.PI / 4 * diameterM * diameterM;
        double along = conductivity * section / slice;
        double side = h * Math.PI * diameterM * slice;
        List<Node> nodes = new ArrayList<>();
        List<Path> paths = new ArrayList<>();
        Boundary root = Boundary.constant("root", Kelvin.of(rootC));
        Boundary medium = Boundary.constant("medium", Kelvin.of(mediumC));
        for (int i = 0; i < SLICES; i++) {
            Node node = Node.sensible("slice " + i, section * slice * ANY_HEAT_CAPACITY, Kelvin.of(mediumC));
            nodes.add(node);
            paths.add(DirectPath.of("side " + i, node, medium, "convection", HeatLaw.conductance(side)));
            paths.add(
                    i == 0
                            ? DirectPath.of("root", root, node, "conduction", HeatLaw.conductance(2 * along))
                            : DirectPath.of(
                                    "along " + i, nodes.get(i - 1), node, "conduction", HeatLaw.conductance(along)));
        }
        Trajectory run = SOLVER.solve(Network.of(nodes, paths), LONG_ENOUGH_S);
        return 2 * along * (rootC - celsius(run, nodes.get(0), LONG_ENOUGH_S));
    }
}
