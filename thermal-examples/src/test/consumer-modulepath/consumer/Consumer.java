/* SPDX-License-Identifier: Apache-2.0 */
package consumer;

import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.io.IOException;
import java.io.StringReader;
import java.time.Duration;
import org.beveragethermal.core.calibration.log.LogFormat;
import org.beveragethermal.core.calibration.log.LogReader;
import org.beveragethermal.core.calibration.log.TemperatureLog;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.TimeToTemperature;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.service.target.Targets;

/** Calls each library once, reads a log, and prints what came back, one line for each. */
public final class Consumer {
    private Consumer() {}

    /**
     * Prints four lines.
     *
     * @param arguments not used
     * @throws IOException never
     */
    public static void main(String[] arguments) throws IOException {
        System.out.println("density " + Water.liquid().density(293.15));
        FilledVessel bottle = Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));
        Prediction chilling = Lumped.of(bottle).expose(in(Refrigerator.at(celsius(5)), Duration.ofHours(6)));
        boolean reached = chilling.timeTo(celsius(10)) instanceof TimeToTemperature.Reached;
        System.out.println("chilled " + reached + " " + module(Prediction.class));
        System.out.println("styles " + !Targets.styles().isEmpty() + " " + module(Targets.class));
        String rows = "elapsed min;bottle °C\n0;21,5\n10;18,25\n20;15,75\n";
        TemperatureLog log =
                LogReader.read(new StringReader(rows), LogFormat.inferred()).log();
        System.out.println("read " + log.series("bottle").temperaturesK().length + " " + module(TemperatureLog.class));
    }

    private static String module(Class<?> type) {
        return type.getModule().getName();
    }
}
