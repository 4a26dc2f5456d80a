/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.batch;

import java.util.SplittableRandom;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.HeatLaw;

/** A synthetic bottle of liquid and glass in air, with films of Churchill and Chu (formula from memory) on either side. */
final class TwoNodes {

    static final double ZERO = 273.15;

    /** The film of the liquid. */
    static final HeatLaw INSIDE = HeatLaw.of((from, to) -> {
        double film = 0.5 * (from + to) - ZERO;
        double k = 0.50 + 1.1e-3 * film;
        double viscosity = 2.9e-6 - 9.5e-8 * film + 1.3e-9 * film * film;
        double diffusivity = k / 4.0e6;
        double ra = 9.81 * (1.2e-4 + 8e-6 * film) * Math.abs(from - to) * Math.pow(0.20, 3) / (viscosity * diffusivity);
        return k / 0.20 * 0.046 * nusselt(ra, viscosity / diffusivity) * (from - to);
    });

    /** The film of the air, with radiation. */
    static final HeatLaw OUTSIDE = HeatLaw.of((from, to) -> {
        double film = 0.5 * (from + to) - ZERO;
        double k = 0.02436 + 7.2e-5 * film;
        double viscosity = 1.335e-5 + 9e-8 * film;
        double ra = 9.81 / (ZERO + film) * Math.abs(from - to) * Math.pow(0.24, 3) / (viscosity * viscosity / 0.711);
        return k / 0.24 * 0.062 * nusselt(ra, 0.711) * (from - to)
                + 0.9 * 5.670374419e-8 * 0.062 * (Math.pow(from, 4) - Math.pow(to, 4));
    });

    private TwoNodes() {}

    private static double nusselt(double ra, double pr) {
        double root = 0.825 + 0.387 * Math.pow(ra, 1.0 / 6) / Math.pow(1 + Math.pow(0.492 / pr, 9.0 / 16), 8.0 / 27);
        return root * root;
    }

    /** c (from − to)³ + 1 W/K (from − to). */
    static HeatLaw cubic(double c) {
        return (from, to, out) -> {
            double d = from - to;
            out.watts = c * d * d * d + d;
            out.perFromKelvin = 3 * c * d * d + 1;
            out.perToKelvin = -out.perFromKelvin;
        };
    }

    /** c (from⁴ − to⁴). */
    static HeatLaw radiation(double c) {
        return (double from, double to, HeatFlow out) -> {
            out.watts = c * (Math.pow(from, 4) - Math.pow(to, 4));
            out.perFromKelvin = 4 * c * from * from * from;
            out.perToKelvin = -4 * c * to * to * to;
        };
    }

    static BatchNetwork network() {
        return BatchNetwork.builder()
                .node("liquid")
                .node("glass")
                .boundary("air")
                .heatLink("inside", "liquid", "glass", INSIDE)
                .heatLink("outside", "glass", "air", OUTSIDE)
                .build();
    }

    /** The numbers of sample i are those of the first of a larger ensemble of the same seed. */
    static BatchSamples samples(int first, int count) {
        SplittableRandom random = new SplittableRandom(42);
        double[][] numbers = new double[5][first + count];
        for (int i = 0; i < first + count; i++) {
            numbers[0][i] = ZERO + random.nextDouble(20, 24);
            numbers[1][i] = ZERO + random.nextDouble(2, 6);
            numbers[2][i] = random.nextDouble(0.7, 1.3);
            numbers[3][i] = random.nextDouble(0.7, 1.3);
            numbers[4][i] = 3100 * random.nextDouble(0.95, 1.05);
        }
        for (int k = 0; k < numbers.length; k++) {
            numbers[k] = java.util.Arrays.copyOfRange(numbers[k], first, first + count);
        }
        return network()
                .samples(count)
                .startK("liquid", numbers[0])
                .startK("glass", numbers[0])
                .boundaryK("air", numbers[1])
                .multiplier("inside", numbers[2])
                .multiplier("outside", numbers[3])
                .capacityJPerK("liquid", numbers[4])
                .capacityJPerK("glass", 420)
                .build();
    }
}
