/* SPDX-License-Identifier: Apache-2.0 */
package consumer;

import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.TimeToTemperature;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.service.target.Targets;

/** Calls each library once and prints what came back, one line per library. */
public final class Consumer {
    private Consumer() {}

    /**
     * Prints three lines.
     *
     * @param arguments not used
     */
    public static void main(String[] arguments) {
        System.out.println("density " + Water.liquid().density(293.15));
        FilledVessel bottle = Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));
        Prediction chilling = Lumped.of(bottle).expose(in(Refrigerator.at(celsius(5)), Duration.ofHours(6)));
        boolean reached = chilling.timeTo(celsius(10)) instanceof TimeToTemperature.Reached;
        System.out.println("chilled " + reached + " " + module(Prediction.class));
        System.out.println("styles " + !Targets.styles().isEmpty() + " " + module(Targets.class));
    }

    private static String module(Class<?> type) {
        return type.getModule().getName();
    }
}
