/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.beveragethermal.core.uncertainty.Ensemble;
import org.junit.jupiter.api.Test;

/** How often fits and reports ask a model, and for what. Expected numbers follow from what is known when. */
class QuestionsToModelsTest {

    private static final double[] TIMES =
            IntStream.range(0, 40).mapToDouble(i -> 8 * i).toArray();
    private static final double[] READINGS = IntStream.range(0, 40)
            .mapToDouble(i -> 4 + 18 * Math.exp(-0.008 * TIMES[i]) + 0.1 * Math.sin(7 * i))
            .toArray();

    /** A decay that counts, and is no more exact than it says. */
    private static final class Counting implements Model {

        private final Model decay = Curves.decay(TIMES);
        private final boolean exact;
        private final AtomicInteger values = new AtomicInteger();
        private final AtomicInteger slopes = new AtomicInteger();

        private Counting(boolean exact) {
            this.exact = exact;
        }

        @Override
        public List<String> parameters() {
            return decay.parameters();
        }

        @Override
        public Predicted at(double[] parameters) {
            values.incrementAndGet();
            Predicted predicted = decay.at(parameters);
            return Predicted.of(predicted.values(), () -> {
                slopes.incrementAndGet();
                return predicted.columns();
            });
        }

        @Override
        public boolean isExact() {
            return exact;
        }
    }

    private static FitResult fit(Model model, double rate) {
        return Curves.decayFit(5, 17, rate)
                .run("log", model, Observations.of(TIMES, READINGS))
                .build()
                .run();
    }

    @Test
    void nothingIsAskedTwiceAndSlopesOnlyWhereTheCostFell() {
        Counting near = new Counting(false);
        assertThat(fit(near, 0.01).evaluations()).isEqualTo(near.values.get());
        assertThat(near.values.get()).isLessThan(10);
        // From far off the first steps are too long.
        Counting far = new Counting(false);
        assertThat(fit(far, 0.2).evaluations()).isEqualTo(far.values.get());
        assertThat(far.slopes.get()).isLessThan(far.values.get());
        Counting exact = new Counting(true);
        assertThat(fit(exact, 0.01).evaluations()).isEqualTo(exact.values.get());
        assertThat(exact.values.get()).isGreaterThan(near.values.get());
    }

    @Test
    void modelsThatAreNotExactEndWellWithinStandardErrors() {
        FitResult quick = fit(new Counting(false), 0.01);
        FitResult full = fit(new Counting(true), 0.01);
        for (Estimate estimate : full.estimates()) {
            assertThat(quick.estimate(estimate.name()).value())
                    .isCloseTo(
                            estimate.value(),
                            within(1e-3 * estimate.standardError().orElseThrow()));
        }
    }

    @Test
    void reportSaysHowOftenItAsked() {
        Counting model = new Counting(false);
        FitResult result = fit(model, 0.01);
        int before = model.values.get();
        String report = result.explain();
        int asked = model.values.get() - before;
        assertThat(report).contains("the models were asked " + asked + " times").contains("on the tangent");
        assertThat(asked).isLessThan(200);
        int between = model.values.get();
        assertThat(result.explain(Ensemble.of(60, 1))).contains("by 60 repeated fits\n");
        assertThat(model.values.get() - between).isGreaterThan(asked + 60).isLessThan(asked + 60 * 5);
    }

    @Test
    void onTheTangentOfALineFitsAreRepeatedExactly() {
        FitResult line = Curves.lineFit()
                .run("log", Curves.line(TIMES), Observations.of(TIMES, READINGS))
                .build()
                .run();
        double[] whole =
                line.bootstrap(Bootstrap.Kind.RESIDUAL, Ensemble.of(50, 9)).estimates("slope");
        double[] tangent =
                line.bootstrap(Bootstrap.Kind.TANGENT, Ensemble.of(50, 9)).estimates("slope");
        double error = line.estimate("slope").standardError().orElseThrow();
        for (int i = 0; i < whole.length; i++) {
            assertThat(tangent[i]).isCloseTo(whole[i], within(1e-6 * error));
        }
    }

    @Test
    void tangentOfReadingsThatAreLimitsIsRefused() {
        Observations.Builder seen = Observations.builder();
        IntStream.range(0, 39).forEach(i -> seen.value(TIMES[i], READINGS[i], 0.1));
        seen.below(TIMES[39], 6, 0.1);
        FitResult result = Curves.decayFit(5, 17, 0.01)
                .run("log", Curves.decay(TIMES), seen.build())
                .build()
                .run();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> result.bootstrap(Bootstrap.Kind.TANGENT, Ensemble.of(9, 1)))
                .withMessageContaining("expected exact readings");
        assertThat(result.explain()).contains("by 49 repeated fits\n");
    }
}
