/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.List;

/** A formula at given places. */
final class CurveModel implements Model {

    private final List<String> parameters;
    private final double[] at;
    private final Curve curve;

    CurveModel(List<String> parameters, double[] at, Curve curve) {
        this.parameters = parameters;
        this.at = at;
        this.curve = curve;
    }

    @Override
    public List<String> parameters() {
        return parameters;
    }

    @Override
    public Predicted at(double[] values) {
        double[] predicted = new double[at.length];
        double[][] slopes = new double[at.length][parameters.size()];
        for (int i = 0; i < at.length; i++) {
            predicted[i] = curve.value(at[i], values, slopes[i]);
        }
        return Predicted.of(predicted, slopes);
    }
}
