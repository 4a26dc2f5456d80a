/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.internal;

import java.util.function.DoubleUnaryOperator;
import org.beveragethermal.core.network.SmoothFunction;

/** Chebyshev fits joined where a property changes its formula; continuous as far as the property is. */
final class PiecewiseFit implements SmoothFunction {

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
                : new PiecewiseFit(java.util.Arrays.copyOfRange(points, 1, points.length - 1), pieces);
    }

    private ChebyshevFit piece(double x) {
        int i = 0;
        while (i < joints.length && x > joints[i]) {
            i++;
        }
        return pieces[i];
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
