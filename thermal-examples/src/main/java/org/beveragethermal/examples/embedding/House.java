/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.embedding;

import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.util.List;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.service.tracking.Sensor;
import org.beveragethermal.service.tracking.TrackedModel;
import org.beveragethermal.service.tracking.Tracker;
import org.beveragethermal.service.tracking.TrackingRules;

/** An invented house: its kinds of vessels and where they may stand. */
public final class House {

    private static final double BUCKET_SD_K = 1;
    private static final double BUCKET_LOG_SD = 0.4;
    private static final double READING_SD_K = 0.3;
    private static final double READING_STEP_K = 0.1;

    private House() {}

    /**
     * A tracker of bottles of 750 mL of wine, {@code "bottle"}, and of sparkling wine, {@code "sparkling"}, in {@code "cellar"}, {@code
     * "refrigerator"}, {@code "ice bucket"} and on a {@code "table"}.
     *
     * @return the tracker
     */
    public static Tracker tracker() {
        return Tracker.of(
                List.of(
                        media(TrackedModel.from(
                                "bottle",
                                Vessels.highShouldered750()
                                        .filledWith(Beverage.wine(percentByVolume(12.5)), celsius(18)))),
                        media(TrackedModel.from(
                                "sparkling",
                                Vessels.sparkling750().filledWith(Beverage.wine(percentByVolume(12)), celsius(18))))),
                TrackingRules.usual());
    }

    private static TrackedModel media(TrackedModel.Builder model) {
        Air room = Air.at(celsius(22));
        IceWaterBath bucket =
                IceWaterBath.of(Bucket.of(millimetres(200), millimetres(220)), kilograms(1.5), kilograms(2), room);
        return model.medium("cellar", Air.at(celsius(12)))
                .medium("refrigerator", Refrigerator.at(celsius(5)))
                .medium("ice bucket", bucket, BUCKET_SD_K, BUCKET_LOG_SD)
                .medium("table", room)
                .sensor(Sensor.inDrink(READING_SD_K, READING_STEP_K))
                .build();
    }
}
