/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.internal;

import java.util.List;
import java.util.Map;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.End;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PathEvaluation;
import org.beveragethermal.core.network.StoreState;

/** Whether time itself plays no part in what joins the nodes of a network. What varies is seen by its knots, or at moments spread over a month. */
public final class Steadiness {

    private static final int MOMENTS = 64;
    private static final double FIRST_S = 1;
    private static final double LAST_S = 30 * 86_400.0;

    private final List<? extends Path> paths;
    private final String advice;

    /**
     * Of paths.
     *
     * @param paths the paths, not modified
     * @param advice what a refusal says after naming what varies
     */
    public Steadiness(List<? extends Path> paths, String advice) {
        this.paths = paths;
        this.advice = advice;
    }

    /**
     * Refuses a boundary or a path that varies in time.
     *
     * @param multipliers factors by name
     * @throws IllegalArgumentException if one does
     */
    public void require(Map<String, Double> multipliers) {
        for (Path path : paths) {
            if (path.knots().length > 0) {
                throw refusal("path " + path.name());
            }
            for (End end : path.ends()) {
                if (end instanceof Boundary boundary) {
                    require(boundary);
                }
            }
            require(path, multipliers);
        }
    }

    private static double moment(int i) {
        return FIRST_S * Math.pow(LAST_S / FIRST_S, i / (MOMENTS - 1.0));
    }

    private void require(Boundary boundary) {
        double first = boundary.temperatureK().at(0);
        boolean varies = boundary.temperatureK().knots().length > 0;
        for (int i = 0; i < MOMENTS && !varies; i++) {
            varies = boundary.temperatureK().at(moment(i)) != first
                    || boundary.temperatureK().rate(moment(i)) != 0;
        }
        if (varies) {
            throw refusal(boundary.toString());
        }
    }

    /** A path may make something of time itself: a strength, a given heat. */
    private void require(Path path, Map<String, Double> multipliers) {
        List<End> ends = path.ends();
        double[] temperatures = new double[ends.size()];
        int amounts = 0;
        for (int e = 0; e < temperatures.length; e++) {
            temperatures[e] = ends.get(e) instanceof Boundary boundary
                    ? boundary.temperatureK().at(0)
                    : atStartK((Node) ends.get(e));
            amounts += ends.get(e) instanceof Node node ? node.store().amountCount() : 0;
        }
        double[] ofEnds = new double[amounts];
        int next = 0;
        for (End end : ends) {
            if (end instanceof Node node) {
                double[] own = node.amounts();
                System.arraycopy(own, 0, ofEnds, next, own.length);
                next += own.length;
            }
        }
        double[] first = new double[path.accounts().size()];
        for (int i = -1; i < MOMENTS; i++) {
            // A new one each time: an evaluation may start from what the one before it found, and differ in its last
            // digits.
            PathEvaluation evaluation = new PathEvaluation(path, multipliers);
            evaluation.evaluate(path, i < 0 ? 0 : moment(i), temperatures, ofEnds);
            for (int a = 0; a < first.length; a++) {
                if (evaluation.timeDerivativeOf(a) != 0 || (i >= 0 && evaluation.flowOf(a) != first[a])) {
                    throw refusal("path " + path.name());
                }
                first[a] = evaluation.flowOf(a);
            }
        }
    }

    private static double atStartK(Node node) {
        StoreState state = new StoreState(node.store().amountCount());
        node.store().evaluate(node.enthalpyJ(), node.amounts(), 0, state);
        return state.temperatureK;
    }

    private IllegalArgumentException refusal(String what) {
        return new IllegalArgumentException(what + " varies in time: " + advice);
    }
}
