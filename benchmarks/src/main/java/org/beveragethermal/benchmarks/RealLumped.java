/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleBiFunction;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PreparedNetwork;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.solver.Method;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.Vessels;

/**
 * The library's own lumped bottle in a refrigerator, the same network by the project's solver and by Dormand-Prince 8(5,3) of Apache Commons
 * Math: when is the drink at 10 °C?
 *
 * <p>Allowed error 1 s on seven cases of start and refrigerator, at the tolerance and at the next four tighter ones.
 *
 * @param network the network as the scene builds it
 * @param drink the node that is asked for
 */
record RealLumped(Network network, Node drink) {

    private static final double WANTED_K = 283.15;
    private static final double END_S = 8 * 3600;
    private static final double REFERENCE_K = 1e-9;
    private static final Method METHOD = Method.EXPONENTIAL;
    private static final int TIGHTER = 4;

    /** The bottle from one temperature to another [°C]. */
    static RealLumped of(double startC, double coldC) {
        Prediction prediction = Lumped.of(
                        Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(startC)))
                .expose(in(Refrigerator.at(celsius(coldC)), Duration.ofHours(1)));
        List<Path> paths = prediction.trajectory().paths(0);
        List<Node> nodes = paths.stream()
                .flatMap(path -> path.ends().stream())
                .filter(Node.class::isInstance)
                .map(Node.class::cast)
                .distinct()
                .toList();
        return new RealLumped(
                Network.of(nodes, paths), prediction.contents().nodes().get(0));
    }

    /** The project's solver. */
    static Prepared own() {
        Tuned tuned = tuned((bottle, tolerance) -> bottle.ownS(OwnRun.of(bottle.network, METHOD, tolerance)));
        RealLumped nominal = of(22, 5);
        OwnRun run = OwnRun.of(nominal.network, METHOD, tuned.tolerance());
        return Prepared.of(tuned, () -> nominal.ownS(run)).by(METHOD);
    }

    /** Apache Commons Math. */
    static Prepared peer() {
        Tuned tuned = tuned((bottle, tolerance) -> bottle.explicit(tolerance).run());
        return Prepared.of(tuned, of(22, 5).explicit(tuned.tolerance()));
    }

    private static Tuned tuned(ToDoubleBiFunction<RealLumped, Double> timeS) {
        List<RealLumped> cases = new ArrayList<>(List.of(of(22, 5)));
        for (double start : new double[] {18, 21, 26}) {
            for (double cold : new double[] {2, 6}) {
                cases.add(of(start, cold));
            }
        }
        double[] references = cases.stream()
                .mapToDouble(bottle -> bottle.explicit(REFERENCE_K).run())
                .toArray();
        return Tuned.loosest(0.25, TIGHTER, TwoNodeCooling.ALLOWED_S, "s", tolerance -> {
            double worst = 0;
            for (int i = 0; i < references.length; i++) {
                worst = Math.max(worst, Math.abs(timeS.applyAsDouble(cases.get(i), tolerance) - references[i]));
            }
            return worst;
        });
    }

    private double ownS(OwnRun run) {
        return run.timeToReach(drink, WANTED_K, END_S);
    }

    private Task explicit(double toleranceK) {
        PreparedNetwork prepared = network.prepare();
        PreparedNetwork.Workspace workspace = prepared.newWorkspace(Map.of());
        double[] start = prepared.initialState();
        workspace.evaluate(0, start, false);
        double[] tolerances = new double[start.length];
        double[] unit = new double[start.length];
        for (int i = 0; i < start.length; i++) {
            unit[i] = 1;
            tolerances[i] = toleranceK / workspace.sizeK(unit);
            unit[i] = 0;
        }
        PlainEquations equations = (timeS, at, rates) -> {
            workspace.evaluate(timeS, at, false);
            workspace.rates(workspace.flows(), rates);
        };
        int component = prepared.offset(drink);
        double threshold = drink.store().enthalpyJ(WANTED_K, drink.amounts());
        return () -> CommonsMath.timeOfFall(
                equations, Arrays.copyOf(start, start.length), component, threshold, tolerances, END_S);
    }
}
