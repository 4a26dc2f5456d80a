/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.benchmarks;

import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.millilitres;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Volume;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.TimeToTemperature;
import org.beveragethermal.core.scene.Layered;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.core.uncertainty.Draw;
import org.beveragethermal.core.uncertainty.Ensemble;
import org.beveragethermal.core.uncertainty.LawScatter;
import org.beveragethermal.core.uncertainty.PredictionEnsemble;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.service.choice.ChoiceAnswer;
import org.beveragethermal.service.plan.PlanLimits;
import org.beveragethermal.service.plan.PlanMonitor;
import org.beveragethermal.service.plan.PlanRequest;
import org.beveragethermal.service.plan.Planner;
import org.beveragethermal.service.plan.ServicePlan;
import tech.units.indriya.unit.Units;

/** What the library is asked for: predictions, questions, plans and units; the scenes are our own invention. */
final class LibraryJobs {

    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));
    private static final Refrigerator COLD = Refrigerator.at(celsius(5));
    private static final Duration LONG = Duration.ofHours(5);
    private static final long SEED = 20270618L;
    private static final int QUESTIONS = 400;
    private static final int AT_ONCE = 1000;
    private static final Duration PLAN_LIMIT = Duration.ofSeconds(20);
    private static final double PLAN_GAP = 0.01;

    private LibraryJobs() {}

    /** One prediction of a lumped bottle in a refrigerator, five hours. */
    static Prepared lumped() {
        return Prepared.of(() -> lumpedPrediction().meanTemperatureK((double) LONG.toSeconds()));
    }

    /** The same prediction, for whoever wants no more. */
    static Prediction lumpedPrediction() {
        return Lumped.of(BOTTLE).expose(in(COLD, LONG));
    }

    /** One prediction of a bottle in slices in ice and water, half an hour. */
    static Prepared axial() {
        return Prepared.of(() -> Layered.axial(BOTTLE)
                .expose(in(
                        IceWaterBath.of(
                                Bucket.of(millimetres(210), millimetres(330)),
                                kilograms(3),
                                kilograms(3),
                                Air.at(celsius(22))),
                        Duration.ofMinutes(30)))
                .meanTemperatureK(1800));
    }

    /** When a bottle in a refrigerator is at 10 °C, with an interval from four hundred draws of the scatter of the laws. */
    static Prepared timeWithInterval() {
        return Prepared.of(
                () -> PredictionEnsemble.of(Ensemble.of(QUESTIONS, SEED), LawScatter.all(), draw -> drawn(draw))
                        .timeTo(celsius(10), 0.90)
                        .neverPart());
    }

    /** Times to 10 °C of so many draws. */
    static Prepared monteCarlo(int samples) {
        return Prepared.of(() ->
                Ensemble.of(samples, SEED)
                        .run(LawScatter.all(), draw -> drawn(draw).timeTo(celsius(10)))
                        .stream()
                        .mapToDouble(time -> time instanceof TimeToTemperature.Reached reached
                                ? 1e-3 * reached.after().toMillis()
                                : 0)
                        .sum());
    }

    private static Prediction drawn(Draw draw) {
        return Lumped.of(BOTTLE)
                .with(NetworkSolver.standard().withMultipliers(draw.values()))
                .expose(in(COLD, LONG));
    }

    /** A plan of an evening with proof, or until five seconds are over. */
    static Prepared plan(int bottles, int gear) {
        PlanRequest request = PlanBenchmark.evening(bottles, gear);
        return Prepared.of(() -> Planner.planWithin(request, Duration.ofSeconds(5))
                        .bottles()
                        .size())
                .onAllThreads();
    }

    /** A plan of an evening to a gap of one per cent, or until the limit; the gap is stated. */
    static Prepared planToGap(int bottles, int gear) {
        PlanRequest request = PlanBenchmark.evening(bottles, gear);
        PlanLimits limits = PlanLimits.within(PLAN_LIMIT).withGap(PLAN_GAP);
        ServicePlan plan = Planner.plan(request, limits, PlanMonitor.NONE);
        double gap = gap(plan.chosen().answer());
        return new Prepared(
                "limit " + PLAN_LIMIT.toSeconds() + " s",
                Double.isNaN(gap) ? "no choice" : String.format(Locale.ROOT, "gap %.2f %%", 100 * gap),
                1,
                Prepared.Clock.PROCESS,
                () -> Planner.plan(request, limits, PlanMonitor.NONE).bottles().size());
    }

    private static double gap(ChoiceAnswer answer) {
        if (answer instanceof ChoiceAnswer.Best best) {
            return best.gap();
        }
        return answer instanceof ChoiceAnswer.Proven ? 0 : Double.NaN;
    }

    /** A fit of the project's own bottle. */
    static Prepared fit(String subject, boolean own) {
        FitBenchmark fit = new FitBenchmark();
        fit.subject = subject;
        fit.prepare();
        return new Prepared(
                own ? "defaults" : "differences of DP853 runs at tolerance 1e-10",
                "same minimum within 0.02 standard errors",
                1,
                Prepared.Clock.THREAD,
                own
                        ? () -> fit.own().estimates().get(0).value()
                        : () -> fit.finiteDifferences().getPoint().getEntry(0));
    }

    /** Readings of 10 000 vessels, per reading. */
    static Measured tracking(String job, Stopwatch.Effort effort) {
        TrackingBenchmark tracking = new TrackingBenchmark();
        tracking.place();
        return Stopwatch.measure(
                job,
                effort,
                TrackingBenchmark.BATCH,
                tracking::read,
                () -> tracking.batch().alerts().size());
    }

    /** A temperature in °C read at the boundary. */
    static Prepared celsiusIn() {
        List<Quantity<Temperature>> given = temperatures();
        return Prepared.of(() -> {
                    double sum = 0;
                    for (int i = 0; i < AT_ONCE; i++) {
                        sum += SiValues.temperatureK(given.get(i), "temperature");
                    }
                    return sum;
                })
                .holding(AT_ONCE);
    }

    /** The same by the units' own conversion. */
    static Prepared celsiusByUnits() {
        List<Quantity<Temperature>> given = temperatures();
        return Prepared.of(() -> {
                    double sum = 0;
                    for (int i = 0; i < AT_ONCE; i++) {
                        sum += given.get(i).to(Units.KELVIN).getValue().doubleValue();
                    }
                    return sum;
                })
                .holding(AT_ONCE);
    }

    /** A volume in mL read at the boundary. */
    static Prepared millilitresIn() {
        List<Quantity<Volume>> given = IntStream.range(0, AT_ONCE)
                .mapToObj(i -> millilitres(700 + 0.1 * i))
                .toList();
        return Prepared.of(() -> {
                    double sum = 0;
                    for (int i = 0; i < AT_ONCE; i++) {
                        sum += SiValues.volumeM3(given.get(i), "volume");
                    }
                    return sum;
                })
                .holding(AT_ONCE);
    }

    /** A temperature handed out as a quantity. */
    static Prepared celsiusOut() {
        Object[] kept = new Object[AT_ONCE];
        return Prepared.of(() -> {
                    for (int i = 0; i < AT_ONCE; i++) {
                        kept[i] = SiValues.celsiusOf(280 + 0.01 * i);
                    }
                    return kept.length;
                })
                .holding(AT_ONCE);
    }

    private static List<Quantity<Temperature>> temperatures() {
        Random random = new Random(1);
        List<Quantity<Temperature>> given = IntStream.range(0, AT_ONCE)
                .mapToObj(i -> celsius(5 + 20 * random.nextDouble()))
                .toList();
        for (Quantity<Temperature> q : given) {
            double own = SiValues.temperatureK(q, "temperature");
            double other = q.to(Units.KELVIN).getValue().doubleValue();
            Tuned.fixed(Math.abs(own - other), 1e-9, "K");
        }
        return given;
    }
}
