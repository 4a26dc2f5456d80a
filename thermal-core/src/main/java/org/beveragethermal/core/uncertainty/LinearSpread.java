/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.uncertainty;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.beveragethermal.core.prediction.Contents;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.solver.Sensitivity;

/**
 * The spread of a prediction to first order: slopes times standard uncertainties, added in squares (JCGM 100, the law of
 * propagation of uncertainty for independent inputs).
 *
 * <p>Immutable and thread-safe.
 *
 * <p>Theory manual, equation (8.6).
 */
public final class LinearSpread {

    private final List<UncertainInput> inputs;
    private final Contents contents;
    private final Sensitivity sensitivity;

    private LinearSpread(List<UncertainInput> inputs, Contents contents, Sensitivity sensitivity) {
        this.inputs = List.copyOf(inputs);
        this.contents = contents;
        this.sensitivity = sensitivity;
    }

    /**
     * Propagates the scatter of laws through a prediction.
     *
     * @param prediction the prediction, made with all factors at their best values
     * @param factors uncertain factors on laws, by the names of their multipliers
     * @return the spread
     */
    public static LinearSpread of(Prediction prediction, List<UncertainInput> factors) {
        Sensitivity sensitivity = Sensitivity.of(
                prediction.trajectory(),
                factors.stream().map(UncertainInput::name).toList(),
                List.of());
        return new LinearSpread(factors, prediction.contents(), sensitivity);
    }

    /**
     * What each input contributes to the standard uncertainty of the mean temperature.
     *
     * @param time time since the start
     * @return signed contribution [K] by name: slope times standard uncertainty
     */
    public Map<String, Double> contributionsK(Duration time) {
        double timeS = time.toMillis() / 1000.0;
        Map<String, Double> contributions = new LinkedHashMap<>();
        for (UncertainInput input : inputs) {
            double slope = 0;
            for (int i = 0; i < contents.nodes().size(); i++) {
                slope += contents.shares().get(i)
                        * sensitivity.temperatureSlope(
                                input.name(), contents.nodes().get(i), timeS);
            }
            contributions.put(input.name(), slope * input.standardUncertainty());
        }
        return contributions;
    }

    /**
     * Standard uncertainty of the mean temperature.
     *
     * @param time time since the start
     * @return standard uncertainty [K]
     */
    public double standardUncertaintyK(Duration time) {
        return Math.sqrt(
                contributionsK(time).values().stream().mapToDouble(c -> c * c).sum());
    }
}
