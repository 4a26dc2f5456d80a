/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.SplittableRandom;

/** A vessel whose factor, medium, bias and course are drawn from what the filter is told of them: what is true in a simulated run. */
final class Truth {

    static final Instant START = Instant.parse("2027-06-18T15:00:00Z");
    static final double ZERO = 273.15;
    static final MediumLaw COLD = new MediumLaw("cold", 1.2e-4, 5e-5, 0.1, ZERO + 4, 0.6, 0.25, 0);
    static final MediumLaw ROOM = new MediumLaw("room", 6e-5, 3e-5, 0.1, ZERO + 22, 1, 0.25, 0);
    static final Sensor SENSOR = Sensor.inDrink(0.3, 0.1).withBias(0.2);
    static final TrackedModel MODEL = TrackedModel.of("bottle", List.of(COLD, ROOM), SENSOR)
            .withNoise(new ProcessNoise(0.2, Duration.ofHours(24)));

    private final SplittableRandom random;
    private final TrackedModel model;
    double temperatureK;
    double logFactor;
    double offsetK;
    final double biasK;

    Truth(SplittableRandom random, TrackedModel model, double startK, double startSdK) {
        this.random = random;
        this.model = model;
        MediumLaw law = model.law(0);
        temperatureK = startK + startSdK * normal();
        logFactor = law.conductanceLogSd() * normal();
        offsetK = law.mediumSdK() * normal();
        biasK = model.sensor().biasSdK() * normal();
    }

    /** Polar method; written out so that the draws do not depend on a library's version. */
    double normal() {
        while (true) {
            double u = 2 * random.nextDouble() - 1;
            double v = 2 * random.nextDouble() - 1;
            double s = u * u + v * v;
            if (s > 0 && s < 1) {
                return u * Math.sqrt(-2 * Math.log(s) / s);
            }
        }
    }

    double uniform(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    void advance(double seconds) {
        MediumLaw law = model.law(0);
        double outside = law.mediumK() + offsetK;
        temperatureK = outside
                + law.excessAfter(temperatureK - outside, seconds * Math.exp(logFactor))
                + Math.sqrt(model.noise().varianceK2PerS() * seconds) * normal();
        double phi = Math.exp(-seconds / model.noise().forgettingS());
        double left = Math.sqrt(1 - phi * phi);
        logFactor = phi * logFactor + left * law.conductanceLogSd() * normal();
        offsetK = phi * offsetK + left * law.mediumSdK() * normal();
    }

    double reading() {
        double exact = temperatureK + biasK + model.sensor().sdK() * normal();
        double step = model.sensor().stepK();
        return step > 0 ? Math.rint(exact / step) * step : exact;
    }

    static Instant after(double seconds) {
        return START.plusMillis(Math.round(seconds * 1000));
    }
}
