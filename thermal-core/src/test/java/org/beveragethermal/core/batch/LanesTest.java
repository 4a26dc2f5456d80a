/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.batch;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The order of the steps as seen in use; the coefficients themselves are held to their conditions by TableauTest. */
class LanesTest {

    /** Halving fixed steps of a non-linear problem of two nodes divides the error by about sixteen. */
    @Test
    void halvedStepsShowTheOrder() {
        BatchNetwork network = BatchNetwork.builder()
                .node("a")
                .node("b")
                .boundary("air")
                .link("ab", "a", "b", BatchLaw.of(TwoNodes.cubic(0.02)))
                .link("out", "b", "air", BatchLaw.of(TwoNodes.radiation(1e-9)))
                .build();
        BatchSamples samples = network.samples(1)
                .capacityJPerK("a", 300)
                .capacityJPerK("b", 100)
                .startK("a", 330)
                .startK("b", 310)
                .boundaryK("air", 280)
                .build();
        double exact = after(samples, 4096);
        double coarse = Math.abs(after(samples, 128) - exact);
        double fine = Math.abs(after(samples, 256) - exact);
        assertThat(Math.log(coarse / fine) / Math.log(2)).isBetween(3.7, 4.6);
    }

    private static double after(BatchSamples samples, int steps) {
        Lanes lanes = new Lanes(samples, 0, 1);
        lanes.load(0, 0);
        for (int i = 0; i < steps; i++) {
            lanes.begin(1);
            lanes.length[0] = 400.0 / steps;
            lanes.attempt(1);
            lanes.accept(0);
        }
        return lanes.state[0][0];
    }
}
