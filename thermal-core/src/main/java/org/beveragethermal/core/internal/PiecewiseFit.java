/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.internal;

import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import org.beveragethermal.core.network.SmoothFunction;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.provenance.PropertyRecord;
import org.beveragethermal.materials.provenance.ValidityRange;

/** Chebyshev fits joined where a property changes its formula; continuous as far as the property is. */
public final class PiecewiseFit implements SmoothFunction {

    private final double[] joints;
    private final ChebyshevFit[] pieces;

    private PiecewiseFit(double[] joints, ChebyshevFit[] pieces) {
        this.joints = joints;
        this.pieces = pieces;
    }

    /**
     * Fits a function between given points.
     *
     * @param function the function, smooth between the points
     * @param points ascending, the ends of the range and the joints in between, at least two
     * @param relativeAccuracy wanted accuracy as a fraction of the largest absolute value of each piece
     * @param straight whether to go on straight outside the range instead of keeping the end value
     */
    static SmoothFunction of(DoubleUnaryOperator function, double[] points, double relativeAccuracy, boolean straight) {
        ChebyshevFit[] pieces = new ChebyshevFit[points.length - 1];
        for (int i = 0; i < pieces.length; i++) {
            pieces[i] = straight
                    ? ChebyshevFit.straight(function, points[i], points[i + 1], relativeAccuracy)
                    : ChebyshevFit.clamped(function, points[i], points[i + 1], relativeAccuracy);
        }
        return pieces.length == 1
                ? pieces[0]
                : new PiecewiseFit(Arrays.copyOfRange(points, 1, points.length - 1), pieces);
    }

    /**
     * Ends of the liquid's range and, in between, the temperatures at which one of its formulas ends.
     *
     * @param liquid the liquid
     * @return ascending temperatures [K], at least two
     */
    public static double[] joints(Liquid liquid) {
        ValidityRange range = liquid.temperatureRange();
        TreeSet<Double> joints = new TreeSet<>(List.of(range.low(), range.high()));
        for (PropertyRecord property : liquid.properties()) {
            for (double end :
                    new double[] {property.validity().low(), property.validity().high()}) {
                if (end > range.low() && end < range.high()) {
                    joints.add(end);
                }
            }
        }
        return joints.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private ChebyshevFit piece(double x) {
        int i = 0;
        while (i < joints.length && x > joints[i]) {
            i++;
        }
        return pieces[i];
    }

    /** What is the same from one argument to the other and found faster: their piece, if both lie in one. */
    SmoothFunction between(double one, double other) {
        ChebyshevFit piece = piece(one);
        return piece == piece(other) ? piece : this;
    }

    @Override
    public double at(double x) {
        return piece(x).at(x);
    }

    @Override
    public double slope(double x) {
        return piece(x).slope(x);
    }
}
