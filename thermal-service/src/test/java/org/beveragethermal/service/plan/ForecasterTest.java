/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kelvins;
import static org.beveragethermal.materials.units.Measures.percent;
import static org.beveragethermal.service.plan.ReplanEvenings.ROOM;
import static org.beveragethermal.service.plan.ReplanEvenings.after;
import static org.beveragethermal.service.plan.ReplanEvenings.bucket;
import static org.beveragethermal.service.plan.ReplanEvenings.refrigerator;
import static org.beveragethermal.service.plan.ReplanEvenings.room;
import static org.beveragethermal.service.plan.ReplanEvenings.white;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.scene.ScenePrediction;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.service.airing.Airing;
import org.beveragethermal.service.caution.DangerLimits;
import org.beveragethermal.service.caution.Jurisdiction;
import org.beveragethermal.service.target.RangePolicy;
import org.beveragethermal.service.target.Targets;
import org.junit.jupiter.api.Test;

/** Forecasts by tables say what scenes say with the same moves, and doubt them by the rule they state. */
class ForecasterTest {

    /** Tables from bottles 8 K apart, moves from table to table; our bound. */
    private static final double FORECAST_K = 0.4;

    private static final double FASTER = 1.15;

    private final BottleOrder plain = white("plain", 20, "room", 120);
    private final BottleOrder aired =
            white("aired", 6, "room", 120).aired(Airing.carafe(Duration.ofMinutes(60), "room"));
    private final Site site = new Site(room().gear(refrigerator())
            .gear(bucket())
            .bottle(plain)
            .bottle(aired)
            .build());
    private final FlowTables tables = new FlowTables(site, List.of(plain, aired));
    private final Forecaster forecaster = new Forecaster(site, tables);

    private static Route route(Leg... legs) {
        return Route.of(Route.Kind.ONE_MEANS, legs);
    }

    @Test
    void oneLegAfterAnotherComesToWhatASceneComesTo() {
        Task task = new Task(site, tables, plain);
        Forecast forecast = forecaster.of(
                task,
                route(
                        new Leg("room", 0, 1800),
                        new Leg("cold", 1800, 5400),
                        new Leg("bucket", 5400, 7200),
                        new Leg("room", 7200, 8400)),
                0);
        ScenePrediction scene = Scene.builder()
                .gear("room", ROOM)
                .gear("cold", refrigerator().surroundings())
                .gear("bucket", bucket().surroundings(), Duration.ofMinutes(75))
                .vessel("plain", plain.bottle(), "room")
                .move("plain", Duration.ofMinutes(30), "cold")
                .move("plain", Duration.ofMinutes(90), "bucket")
                .move("plain", Duration.ofMinutes(120), "room")
                .build()
                .predict(Duration.ofMinutes(140));
        Prediction bottle = scene.vessel("plain");
        double[] ends = {1800, 5400, 7200, 8400};
        for (int i = 0; i < ends.length; i++) {
            assertThat(forecast.endK(i)).isCloseTo(bottle.meanTemperatureK(ends[i]), within(FORECAST_K));
        }
        for (int i = 0; i < task.pours(); i++) {
            assertThat(forecast.pourK(i)).isCloseTo(bottle.meanTemperatureK(task.pourS(i)), within(FORECAST_K));
        }
        // Taught that the gear does 0.7 K less, it says so at every pour.
        Forecast taught = forecaster.of(
                task,
                route(
                        new Leg("room", 0, 1800),
                        new Leg("cold", 1800, 5400),
                        new Leg("bucket", 5400, 7200),
                        new Leg("room", 7200, 8400)),
                0.7);
        for (int i = 0; i < task.pours(); i++) {
            assertThat(taught.pourK(i) - forecast.pourK(i)).isCloseTo(0.7, within(1e-9));
            assertThat(taught.sigmaK(i)).isEqualTo(forecast.sigmaK(i));
        }
    }

    /** It stands in one place all the time, and is decanted there: bottle until then, carafe afterwards. */
    @Test
    void whatIsDecantedWhereItStandsChangesItsVessel() {
        Task task = new Task(site, tables, aired);
        Forecast forecast = forecaster.of(task, route(new Leg("room", 0, 8400)), 0);
        Prediction carafe = Scene.builder()
                .gear("room", ROOM)
                .vessel("bottle", aired.bottle(), "room")
                .emptyVessel("carafe", aired.carafe().orElseThrow().vessel(), kelvins(295.15), "room")
                .pourAll("bottle", Duration.ofMinutes(60), "carafe")
                .build()
                .predict(Duration.ofMinutes(140))
                .vessel("carafe");
        for (int i = 0; i < task.pours(); i++) {
            assertThat(forecast.pourK(i)).isCloseTo(carafe.meanTemperatureK(task.pourS(i)), within(FORECAST_K));
        }
        assertThat(forecast.endK(0)).isCloseTo(carafe.meanTemperatureK(8400), within(FORECAST_K));
    }

    /** It has come from elsewhere half an hour before it is decanted. */
    @Test
    void whatIsDecantedHasBeenElsewhere() {
        Task task = new Task(site, tables, aired);
        Forecast forecast = forecaster.of(
                task, route(new Leg("room", 0, 600), new Leg("terrace", 600, 1800), new Leg("room", 1800, 8400)), 0);
        ScenePrediction scene = Scene.builder()
                .gear("room", ROOM)
                .gear("terrace", site.surroundings("terrace"))
                .vessel("bottle", aired.bottle(), "room")
                .emptyVessel("carafe", aired.carafe().orElseThrow().vessel(), kelvins(295.15), "room")
                .move("bottle", Duration.ofMinutes(10), "terrace")
                .move("bottle", Duration.ofMinutes(30), "room")
                .pourAll("bottle", Duration.ofMinutes(60), "carafe")
                .build()
                .predict(Duration.ofMinutes(140));
        assertThat(forecast.endK(1)).isCloseTo(scene.vessel("bottle").meanTemperatureK(1800), within(FORECAST_K));
        for (int i = 0; i < task.pours(); i++) {
            assertThat(forecast.pourK(i))
                    .isCloseTo(scene.vessel("carafe").meanTemperatureK(task.pourS(i)), within(FORECAST_K));
        }
    }

    /** 15 % faster before it is ready and 15 % faster afterwards, each by itself, the two as legs of a right triangle. */
    @Test
    void doubtsBeforeAndAfterItIsReadyAreIndependent() {
        Task task = new Task(site, tables, aired);
        double[] times = {600, 1800, 3599, 3601, 5400, 7200, 8400};
        double[] sigmas = forecaster.sigmasK(task, route(new Leg("room", 0, 8400)), times);
        for (int i = 0; i < times.length; i++) {
            double here = course(task, times[i], 1, 1);
            double before = course(task, times[i], FASTER, 1) - here;
            double after = course(task, times[i], 1, FASTER) - here;
            assertThat(sigmas[i]).as("%s s", times[i]).isPositive().isCloseTo(Math.hypot(before, after), within(1e-9));
        }
    }

    /** In its bottle for an hour, then in a carafe as warm as the room. */
    private double course(Task task, double timeS, double before, double after) {
        double readyS = 3600;
        if (timeS < readyS) {
            return task.stayingK(before * timeS);
        }
        double poured = task.decantedK(task.stayingK(before * readyS), 295.15);
        return tables.of(task.kindAfter(readyS), "room").after(readyS, poured, after * (timeS - readyS));
    }

    /** Milk's time runs out by its whole course, which is looked at every ten minutes of a stay and at its end. */
    @Test
    void theWholeCourseOfMilkIsLookedAt() {
        BottleOrder milk = new BottleOrder(
                "milk",
                "milk",
                Vessels.highShouldered750().filledWith(Beverage.milk(percent(3.5)), celsius(4)),
                "room",
                1,
                Targets.of(Targets.style("milk-cold"), RangePolicy.own(celsius(2), celsius(25))),
                after(60),
                "room",
                Duration.ofHours(7));
        Site here = new Site(
                room().jurisdiction(Jurisdiction.US_FOOD_CODE).bottle(milk).build());
        FlowTables flows = new FlowTables(here, List.of(milk));
        Task task = new Task(here, flows, milk);
        double movedS = 300;
        double endS = 8 * 3600;
        Forecast forecast = new Forecaster(here, flows)
                .of(task, route(new Leg("room", 0, movedS), new Leg("terrace", movedS, endS)), 0);
        List<Double> times = new ArrayList<>(List.of(0.0));
        for (double time = movedS; time < endS; time += 600) {
            times.add(time);
        }
        times.add(endS);
        double movedK = task.stayingK(movedS);
        double[] kelvins = times.stream()
                .mapToDouble(time -> time < movedS
                        ? task.stayingK(time)
                        : flows.of(task.kindAfter(movedS), "terrace").after(movedS, movedK, time - movedS))
                .toArray();
        double[] seconds = times.stream().mapToDouble(time -> time).toArray();
        DangerLimits limits = task.watched().orElseThrow();
        assertThat(forecast.firstBreach(limits)).isPresent().isEqualTo(limits.firstBreach(seconds, kelvins));
        // A limit that is crossed in the last ten minutes only.
        Forecast shorter = new Forecaster(here, flows)
                .of(
                        task,
                        route(new Leg("room", 0, movedS), new Leg("terrace", movedS, endOf(limits, seconds, kelvins))),
                        0);
        assertThat(shorter.firstBreach(limits)).isPresent();
    }

    private static double endOf(DangerLimits limits, double[] seconds, double[] kelvins) {
        return limits.firstBreach(seconds, kelvins).orElseThrow().afterS() + 60;
    }
}
