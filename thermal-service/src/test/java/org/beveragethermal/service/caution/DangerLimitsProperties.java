/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.millilitres;
import static org.beveragethermal.materials.units.Measures.percent;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.beveragethermal.core.prediction.Part;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Exposure;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.storage.TemperatureHistory;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.VesselShape;
import org.beveragethermal.materials.vessel.Vessels;

/** The fast form is no laxer than the report. */
class DangerLimitsProperties {

    private static final List<FilledVessel> VESSELS = List.of(
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12)), celsius(20)),
            Vessels.sparkling750().filledWith(Beverage.sparklingWine(percentByVolume(12)), celsius(20)),
            Vessels.of(VesselShape.MUG, millilitres(250)).filledWith(Beverage.tea(), millilitres(200), celsius(80)),
            Vessels.of(VesselShape.PLASTIC_BOTTLE, millilitres(500)).filledWith(Beverage.water(), celsius(20)),
            Vessels.of(VesselShape.CARAFE, millilitres(1000)).filledWith(Beverage.milk(percent(3.5)), celsius(5)));

    @Provide
    Arbitrary<List<Double>> courses() {
        return Arbitraries.doubles().between(-15, 70).list().ofMinSize(2).ofMaxSize(30);
    }

    @Property(tries = 300, seed = "20321")
    @Label("what a report of a log calls a danger breaks a danger limit no later")
    void noLaxerThanTheReportOfALog(
            @ForAll("courses") List<Double> celsius,
            @ForAll @IntRange(max = 4) int which,
            @ForAll @IntRange(max = 200) int drunkFromMin,
            @ForAll Jurisdiction where) {
        CautionSubject subject =
                CautionSubject.of(VESSELS.get(which)).in(where).drunkFrom(Duration.ofMinutes(drunkFromMin));
        double[] times =
                IntStream.range(0, celsius.size()).mapToDouble(i -> 900.0 * i).toArray();
        double[] kelvins = celsius.stream().mapToDouble(c -> c + 273.15).toArray();
        CautionReport report = Cautions.of(TemperatureHistory.of(times, kelvins), subject);
        requireNoLater(report, subject, times, kelvins, kelvins, kelvins);
    }

    @Property(tries = 20, seed = "20322")
    @Label("what a report of a prediction calls a danger breaks a danger limit no later")
    void noLaxerThanTheReportOfAPrediction(
            @ForAll @IntRange(min = -20, max = 55) int placeC, @ForAll @IntRange(max = 4) int which) {
        FilledVessel vessel = VESSELS.get(which);
        CautionSubject subject =
                CautionSubject.of(vessel).in(Jurisdiction.US_HOUSEHOLD).drunkFrom(Duration.ofMinutes(1));
        Prediction run = Lumped.of(vessel)
                .expose(Exposure.in(
                        placeC < 10 ? Refrigerator.at(celsius(placeC)) : Air.at(celsius(placeC)),
                        Duration.ofHours(10)));
        double[] times =
                IntStream.rangeClosed(0, 600).mapToDouble(i -> 60.0 * i).toArray();
        double[] coldest = IntStream.rangeClosed(0, 600)
                .mapToDouble(i -> run.temperatureK(Part.COLDEST, 60.0 * i))
                .toArray();
        double[] warmest = IntStream.rangeClosed(0, 600)
                .mapToDouble(i -> run.temperatureK(Part.WARMEST, 60.0 * i))
                .toArray();
        requireNoLater(Cautions.of(run, subject), subject, times, coldest, run.meanTemperaturesK(times), warmest);
    }

    private static void requireNoLater(
            CautionReport report,
            CautionSubject subject,
            double[] times,
            double[] coldest,
            double[] mean,
            double[] warmest) {
        DangerLimits limits = DangerLimits.of(subject);
        report.cautions().stream()
                .filter(Caution::isDanger)
                .filter(caution -> caution.rule() != CautionRule.THERMAL_SHOCK)
                .forEach(danger -> assertThat(limits.firstBreach(times, coldest, mean, warmest))
                        .as("%s", danger)
                        .isPresent()
                        .get()
                        .satisfies(breach -> assertThat(breach.afterS())
                                .isLessThanOrEqualTo(
                                        Times.seconds(danger.crossing().time().orElseThrow()) + 1)));
    }
}
