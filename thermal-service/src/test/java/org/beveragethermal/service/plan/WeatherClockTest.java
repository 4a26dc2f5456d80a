/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.service.plan.ReplanEvenings.START;
import static org.beveragethermal.service.plan.ReplanEvenings.after;

import java.time.Duration;
import java.util.Map;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.surroundings.Air;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The weather keeps its time of day when a plan starts earlier or later than the clock that it is given by. */
class WeatherClockTest {

    private static final Air EVENING =
            Air.varying(Map.of(Duration.ZERO, celsius(32), Duration.ofHours(3), celsius(17)));

    @ParameterizedTest
    @ValueSource(ints = {-60, 0, 45})
    void aPlanThatStartsAtAnotherTimeHasTheWeatherOfThatTime(int startMinute) {
        int served = 150;
        ServicePlan plan = Planner.plan(PlanRequest.startingAt(after(startMinute))
                .weatherSince(START)
                .place(new Place("terrace", "terrace", EVENING))
                .bottle(new BottleOrder(
                        "red",
                        "red",
                        ReplanEvenings.bottle(16),
                        "terrace",
                        1,
                        ReplanEvenings.white("red", 16, "terrace", served).target(),
                        after(served),
                        "terrace",
                        Duration.ofMinutes(20)))
                .build());
        Duration lasts = Duration.ofMinutes((long) served - startMinute);
        double byHand = Scene.builder()
                .startingAfter(Duration.ofMinutes(startMinute))
                .gear("terrace", EVENING)
                .vessel("red", ReplanEvenings.bottle(16), "terrace")
                .build()
                .predict(lasts)
                .vessel("red")
                .meanTemperatureK((double) lasts.toSeconds());
        assertThat(plan.bottles().get(0).pouredAtK()).isCloseTo(byHand, within(0.05));
    }
}
