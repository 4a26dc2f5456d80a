/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.WallBand;
import org.beveragethermal.core.solver.Trajectory;

/**
 * A run with the places where a thermometer may be.
 *
 * @param run the run
 * @param placesK temperature [K] as a function of time [s] by the name of the place, in order
 */
public record Sensed(Trajectory run, Map<String, DoubleUnaryOperator> placesK) {

    /** Mean of the drink. */
    public static final String DRINK = "drink";

    /** The drink at its top. */
    public static final String TOP = "top of the drink";

    /** The drink at its bottom. */
    public static final String BOTTOM = "bottom of the drink";

    /** What names of places on the wall begin with; the name of the band follows. */
    public static final String WALL = "wall ";

    /**
     * Checks the parts.
     *
     * @param run the run
     * @param placesK temperature [K] as a function of time [s] by the name of the place, at least one, not modified
     * @throws IllegalArgumentException if there is no place
     */
    public Sensed {
        placesK = Collections.unmodifiableMap(new LinkedHashMap<>(placesK));
        if (placesK.isEmpty()) {
            throw new IllegalArgumentException("no places: expected at least one");
        }
    }

    /**
     * The places of a vessel: {@link #DRINK}, {@link #TOP} and {@link #BOTTOM} where they differ, and each band of the wall.
     *
     * @param prediction the prediction
     * @return the run with these places
     */
    public static Sensed in(Prediction prediction) {
        Map<String, DoubleUnaryOperator> places = new LinkedHashMap<>();
        List<Node> nodes = prediction.contents().nodes();
        places.put(
                DRINK,
                new NodeMean(
                        nodes, prediction.contents().shares(), prediction::meanTemperatureK, prediction::isFilled));
        if (nodes.size() > 1) {
            places.put(
                    TOP,
                    end(
                            nodes.get(nodes.size() - 1),
                            prediction,
                            timeS -> prediction.topTemperaturesK(timeS)[0]));
            places.put(BOTTOM, end(nodes.get(0), prediction, timeS -> prediction.bottomTemperaturesK(timeS)[0]));
        }
        for (WallBand band : prediction.bands()) {
            places.put(WALL + band.name(), NodeMean.of(prediction.trajectory(), band.wall()));
        }
        return new Sensed(prediction.trajectory(), places);
    }

    private static NodeMean end(Node node, Prediction prediction, DoubleUnaryOperator one) {
        return new NodeMean(List.of(node), List.of(1.0), one, prediction::isFilled);
    }

    /**
     * Nodes of a network of one's own.
     *
     * @param run the run
     * @param nodes the places, named as the nodes are
     * @return the run with these places
     */
    public static Sensed in(Trajectory run, Node... nodes) {
        Map<String, DoubleUnaryOperator> places = new LinkedHashMap<>();
        for (Node node : nodes) {
            places.put(node.name(), NodeMean.of(run, node));
        }
        return new Sensed(run, places);
    }
}
