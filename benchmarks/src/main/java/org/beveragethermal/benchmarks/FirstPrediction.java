/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.Vessels;

/** One prediction and the end: what the first one costs in a fresh virtual machine. */
final class FirstPrediction {

    private FirstPrediction() {}

    /**
     * Predicts if asked to.
     *
     * @param arguments anything to do nothing, so that the same program measures an empty start
     */
    public static void main(String[] arguments) {
        if (arguments.length == 0) {
            predict();
        }
    }

    private static void predict() {
        System.out.println(
                Lumped.of(Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22)))
                        .expose(in(Refrigerator.at(celsius(5)), Duration.ofHours(5)))
                        .timeTo(celsius(10)));
    }
}
