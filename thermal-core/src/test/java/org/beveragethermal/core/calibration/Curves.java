/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.List;

/** Formulas that tests fit. */
final class Curves {

    private Curves() {}

    /** room + difference · e^(−rate · t). */
    static Model decay(double... at) {
        return Model.of(List.of("room", "difference", "rate"), at, (t, b, slopes) -> {
            double e = Math.exp(-b[2] * t);
            slopes[0] = 1;
            slopes[1] = e;
            slopes[2] = -b[1] * t * e;
            return b[0] + b[1] * e;
        });
    }

    /** room + difference · (part · e^(−rate · t) + (1 − part) · e^(−fast · t)). */
    static Model twoDecays(double... at) {
        return Model.of(List.of("room", "difference", "rate", "part", "fast"), at, (t, b, slopes) -> {
            double e = Math.exp(-b[2] * t);
            double f = Math.exp(-b[4] * t);
            double sum = b[3] * e + (1 - b[3]) * f;
            slopes[0] = 1;
            slopes[1] = sum;
            slopes[2] = -b[1] * b[3] * t * e;
            slopes[3] = b[1] * (e - f);
            slopes[4] = -b[1] * (1 - b[3]) * t * f;
            return b[0] + b[1] * sum;
        });
    }

    /** intercept + slope · x. */
    static Model line(double... at) {
        return Model.of(List.of("intercept", "slope"), at, (x, b, slopes) -> {
            slopes[0] = 1;
            slopes[1] = x;
            return b[0] + b[1] * x;
        });
    }

    static Fit.Builder lineFit() {
        return Fit.builder().parameter(Parameter.of("intercept", 0)).parameter(Parameter.of("slope", 0));
    }

    static Fit.Builder decayFit(double room, double difference, double rate) {
        return Fit.builder()
                .parameter(Parameter.of("room", room))
                .parameter(Parameter.of("difference", difference))
                .parameter(Parameter.of("rate", rate));
    }
}
