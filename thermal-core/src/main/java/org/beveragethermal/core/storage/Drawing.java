/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.storage;

import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import org.beveragethermal.core.prediction.Part;
import org.beveragethermal.core.prediction.Prediction;

/** Draws a prediction in straight lines. */
final class Drawing {

    private static final int FEWEST_PARTS = 64;
    private static final int MOST_PARTS = 20_000;
    private static final int MOST_HALVINGS = 16;
    private static final double SHORTEST_S = 1e-3;

    private final DoubleUnaryOperator curve;
    private final double withinK;
    private final SortedMap<Double, Double> points = new TreeMap<>();

    private Drawing(DoubleUnaryOperator curve, double withinK) {
        this.curve = curve;
        this.withinK = withinK;
    }

    /** Lines within some kelvins of a prediction, where three points of each are compared with it. */
    static Lines of(Prediction prediction, Part part, double withinK) {
        double endS = prediction.trajectory().endS();
        if (!(endS > 0)) {
            throw new IllegalArgumentException("prediction of " + endS + " s: expected a run of some length");
        }
        int parts = Math.max(
                FEWEST_PARTS, Math.min(MOST_PARTS, prediction.trajectory().steps()));
        return new Drawing(t -> prediction.temperatureK(part, t), withinK).lines(endS, parts);
    }

    private Lines lines(double endS, int parts) {
        double before = curve.applyAsDouble(0);
        points.put(0.0, before);
        for (int i = 0; i < parts; i++) {
            double toS = endS * (i + 1) / parts;
            double after = curve.applyAsDouble(toS);
            draw(endS * i / parts, before, toS, after, MOST_HALVINGS);
            before = after;
        }
        return new Lines(
                points.keySet().stream().mapToDouble(Double::doubleValue).toArray(),
                points.values().stream().mapToDouble(Double::doubleValue).toArray());
    }

    /** Adds the points of a stretch, without its first. */
    private void draw(double fromS, double first, double toS, double last, int halvings) {
        double length = toS - fromS;
        boolean straight = true;
        for (int quarter = 1; quarter <= 3; quarter++) {
            double line = first + (last - first) * quarter / 4;
            straight &= Math.abs(curve.applyAsDouble(fromS + length * quarter / 4) - line) <= withinK;
        }
        if (!straight && halvings > 0 && length > 2 * SHORTEST_S) {
            double middleS = fromS + length / 2;
            double middle = curve.applyAsDouble(middleS);
            draw(fromS, first, middleS, middle, halvings - 1);
            draw(middleS, middle, toS, last, halvings - 1);
        } else {
            points.put(toS, last);
        }
    }
}
