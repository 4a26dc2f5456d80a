/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.worked;

import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.examples.worked.Term.exp;
import static org.beveragethermal.examples.worked.Term.ln;
import static org.beveragethermal.examples.worked.Term.number;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.beveragethermal.core.calibration.Fit;
import org.beveragethermal.core.calibration.FitResult;
import org.beveragethermal.core.calibration.Model;
import org.beveragethermal.core.calibration.Observations;
import org.beveragethermal.core.calibration.Parameter;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.TimeToTemperature;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.core.uncertainty.Ensemble;
import org.beveragethermal.core.uncertainty.Interval;
import org.beveragethermal.core.uncertainty.UncertainInput;
import org.beveragethermal.examples.internal.Curve;
import org.beveragethermal.examples.internal.Figure;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;

/** From one prediction to a plan: holding, logs, intervals and two stages. */
final class PlanningExamples {

    private static final List<Double> LOGGED = List.of(22.0, 19.2, 16.9, 15.0, 13.3, 12.0, 10.8);
    private static final double EVERY_S = 1200;
    private static final int DRAWS = 20_000;
    private static final long SEED = 20_261_126L;
    /** Quantile of a normal distribution that leaves a twentieth above it. */
    private static final double COVERAGE_FACTOR = 1.645;

    private PlanningExamples() {}

    static List<WorkedExample> all() {
        return List.of(holding(), timeConstant(), interval(), twoStages(), fullModel());
    }

    private static WorkedExample holding() {
        return WorkedExample.called(
                        "how-long-it-keeps", "How long does a bottle keep its range? From an explanation to an answer")
                .question("A white wine of {T_0} stands on a table in a room of {T_a}. How long until it is at {T_h}?")
                .worked(PlanningExamples::workHolding, "t")
                .sketched(s -> Sketch.empty()
                        .line(40, 156, 220, 156)
                        .bottle(120, 156)
                        .arrow(210, 100, 144, 100)
                        .label(216, 70, "room " + s.fill("{T_a}"))
                        .label(216, 100, "wine " + s.fill("{T_0}"))
                        .label(216, 130, "until " + s.fill("{T_h}")))
                .whatIf("T_a", 30)
                .whatIf("T_0", 6)
                .whatIf("T_h", 14)
                .exercise("How long in a room of {T_a}?", "t", Map.of("T_a", 19.0))
                .exercise(
                        "A wine of {T_0} may warm to {T_h}. How long does it keep?",
                        "t",
                        Map.of("T_0", 10.0, "T_h", 14.0))
                .lesson(
                        "Each kelvin colder at the start buys less time than the one before, because a colder bottle warms faster.")
                .teaching(
                        "Here a model of many resistances is boiled down to one number by its own explanation, and used by hand. The"
                                + " two differ because the film weakens as the difference shrinks. No published answer is known to us.");
    }

    private static FilledVessel bottle(double celsius) {
        return Vessels.highShouldered750().filledWith(Beverage.dryWine(percentByVolume(12.5)), celsius(celsius));
    }

    private static void workHolding(Working w) {
        Term t0 = w.given("T_0", "temperature of the wine", 8, "°C");
        Term ta = w.given("T_a", "temperature of the room", 24, "°C");
        Term th = w.given("T_h", "temperature not to be passed", 12, "°C");
        Prediction run = Lumped.of(bottle(t0.value())).expose(in(Air.at(celsius(ta.value())), Duration.ofHours(12)));
        Term tau = w.look(
                "τ",
                "time constant of the bottle in the room",
                "s",
                run.explainAt(Duration.ofMinutes(10)).timeConstantS(),
                "Prediction.explainAt(…).timeConstantS() of the library, ten minutes after the start");
        Term t = w.find("t", "time", "s", tau.times(ln(ta.minus(t0).over(ta.minus(th)))));
        if (run.timeTo(celsius(th.value())) instanceof TimeToTemperature.Reached reached) {
            w.check(
                    "t",
                    "the whole model: Lumped.of(bottle).expose(in(Air.at(…), …)).timeTo(…)",
                    seconds(reached.after()),
                    0.15 * t.value(),
                    "films, and so the time constant, change on the way");
        }
    }

    private static WorkedExample timeConstant() {
        return WorkedExample.called(
                        "time-constant-from-a-log", "A time constant from a log: the straight line in the logarithm")
                .question(
                        "A logger in a bottle in a refrigerator of {T_a} reads {T_1}, {T_2}, {T_3}, {T_4}, {T_5}, {T_6}, {T_7}, one"
                                + " reading every {Δt} (our invention). What is the time constant?")
                .worked(PlanningExamples::workLog, "τ")
                .sketched(s -> Sketch.empty()
                        .arrow(50, 150, 330, 150)
                        .arrow(50, 150, 50, 20)
                        .line(60, 40, 310, 128)
                        .circle(70, 42, 3)
                        .circle(110, 58, 3)
                        .circle(150, 70, 3)
                        .circle(190, 88, 3)
                        .circle(230, 98, 3)
                        .circle(270, 116, 3)
                        .label(60, 28, "ln(T − Ta)")
                        .label(300, 170, "time")
                        .label(200, 70, "slope −1/τ"))
                .whatIf("T_a", 4)
                .whatIf("T_6", 12.5)
                .exercise("The air was really at {T_a}. What is the time constant then?", "τ", Map.of("T_a", 5.5))
                .exercise("The last reading was {T_7}. What is the time constant?", "τ", Map.of("T_7", 11.4))
                .lesson(
                        "A kelvin wrong in the air's temperature shifts the time constant by more than all noise of the logger:"
                                + " measure the air too.")
                .teaching(
                        "The logarithm gives late, small differences more weight than they deserve; the check fits the readings"
                                + " themselves. No published answer: the log is ours.");
    }

    private static void workLog(Working w) {
        Term ta = w.given("T_a", "temperature of the refrigerator", 5, "°C");
        Term step = w.given("Δt", "time between readings", EVERY_S, "s");
        List<Term> readings = new ArrayList<>();
        for (int i = 0; i < LOGGED.size(); i++) {
            readings.add(w.given("T_" + (i + 1), "reading " + (i + 1), LOGGED.get(i), "°C"));
        }
        int n = readings.size();
        double[] times = new double[n];
        double[] values = new double[n];
        double sumT = 0;
        double sumY = 0;
        double sumTt = 0;
        double sumTy = 0;
        for (int i = 0; i < n; i++) {
            times[i] = i * step.value();
            values[i] = readings.get(i).value();
            double y = Math.log(values[i] - ta.value());
            sumT += times[i];
            sumY += y;
            sumTt += times[i] * times[i];
            sumTy += times[i] * y;
        }
        Term count = number(n);
        Term t = w.look("S_t", "sum of the times", "s", sumT, "added up");
        Term y = w.look("S_y", "sum of y = ln(T − T_a)", "1", sumY, "added up");
        Term tt = w.look("S_tt", "sum of the squares of the times", "s²", sumTt, "added up");
        Term ty = w.look("S_ty", "sum of times by y", "s", sumTy, "added up");
        Term slope = w.find(
                "b",
                "slope of the line",
                "1/s",
                count.times(ty).minus(t.times(y)).over(count.times(tt).minus(t.squared())));
        Term tau = w.find("τ", "time constant", "s", number(1).over(slope).negated());
        FitResult fit = Fit.builder()
                .parameter(Parameter.of("start", values[0]))
                .parameter(Parameter.of("tau", tau.value()).between(60, 1e6))
                .run("log", decay(times, ta.value()), Observations.of(times, values))
                .build()
                .run();
        w.check(
                "τ",
                "Fit of the library: least squares of the readings themselves, start and time constant free",
                fit.estimate("tau").value(),
                0.03 * tau.value(),
                "the logarithm weighs the readings otherwise");
        List<Double> minutes = Curve.spaced(0, times[n - 1] / 60, 61);
        w.draw(Figure.of(
                "log",
                "Readings and the fitted curve",
                "Time [min]",
                "Temperature [°C]",
                List.of(
                        new Curve(
                                "readings, joined",
                                Arrays.stream(times).mapToObj(s -> s / 60).toList(),
                                Arrays.stream(values).boxed().toList()),
                        Curve.of(
                                "fitted",
                                minutes,
                                x -> ta.value()
                                        + (fit.estimate("start").value() - ta.value())
                                                * Math.exp(-x
                                                        * 60
                                                        / fit.estimate("tau").value())))));
    }

    private static Model decay(double[] times, double mediumC) {
        return Model.of(List.of("start", "tau"), times, (at, values, slopes) -> {
            double left = Math.exp(-at / values[1]);
            slopes[0] = left;
            slopes[1] = (values[0] - mediumC) * left * at / (values[1] * values[1]);
            return mediumC + (values[0] - mediumC) * left;
        });
    }

    private static WorkedExample interval() {
        return WorkedExample.called(
                        "interval-of-a-prediction", "How sure is a prediction? Carrying uncertainties through")
                .question(
                        "A bottle cools from {T_0} in air of {T_a} with a time constant of {τ}. The air is known to {u_a} and the"
                                + " time constant to {u_τ} (standard uncertainties). How sure is the temperature after {t}?")
                .worked(PlanningExamples::workInterval, "U")
                .sketched(s -> Sketch.empty()
                        .arrow(50, 150, 330, 150)
                        .arrow(50, 150, 50, 20)
                        .line(50, 36, 130, 92)
                        .line(130, 92, 300, 132)
                        .dashed(50, 36, 130, 82)
                        .dashed(130, 82, 300, 122)
                        .dashed(50, 36, 130, 102)
                        .dashed(130, 102, 300, 142)
                        .label(60, 24, "temperature")
                        .label(300, 170, "time")
                        .label(196, 92, "T ± U"))
                .whatIf("u_τ", 300)
                .whatIf("u_a", 1)
                .whatIf("t", 14_400)
                .exercise("How sure is it after {t}?", "U", Map.of("t", 1800.0))
                .exercise("The air is measured to {u_a}. What is gained?", "U", Map.of("u_a", 0.1))
                .lesson(
                        "Uncertainties add by their squares: the larger of two decides, and halving the smaller is lost labour. In the"
                                + " end only the air's is left, for every start is forgotten.")
                .teaching(
                        "The sensitivities are derivatives; have them found by small changes as well. Drawing 20 000 bottles is the"
                                + " honest check (JCGM 101). No published answer of this very kind is known to us.");
    }

    private static void workInterval(Working w) {
        Term t0 = w.given("T_0", "temperature at the start", 22, "°C");
        Term ta = w.given("T_a", "temperature of the air", 5, "°C");
        Term tau = w.given("τ", "time constant", 7200, "s");
        Term ua = w.given("u_a", "standard uncertainty of the air's temperature", 0.5, "K");
        Term ut = w.given("u_τ", "standard uncertainty of the time constant", 700, "s");
        Term t = w.given("t", "time", 5400, "s");
        Term left = w.find(
                "f", "part of the difference that is left", "1", exp(t.over(tau).negated()));
        w.find("T", "temperature", "°C", ta.plus(t0.minus(ta).times(left)));
        Term byAir = w.find("s_a", "sensitivity to the air", "1", number(1).minus(left));
        Term byTau = w.find(
                "s_τ",
                "sensitivity to the time constant",
                "K/s",
                t0.minus(ta).times(left).times(t).over(tau.squared()));
        Term u = w.find(
                "u",
                "standard uncertainty of the temperature",
                "K",
                Term.sqrt(byAir.times(ua).squared().plus(byTau.times(ut).squared())));
        Term expanded = w.find(
                "U",
                "half of the interval that holds nine of ten",
                "K",
                number(COVERAGE_FACTOR).times(u));
        List<UncertainInput> inputs = List.of(
                new UncertainInput("air", ta.value(), Uncertainty.normal(ua.value())),
                new UncertainInput("tau", tau.value(), Uncertainty.normal(ut.value())));
        double[] drawn = Ensemble.of(DRAWS, SEED)
                .run(
                        inputs,
                        draw -> draw.value("air")
                                + (t0.value() - draw.value("air")) * Math.exp(-t.value() / draw.value("tau")))
                .stream()
                .mapToDouble(Double::doubleValue)
                .toArray();
        Interval band = Interval.of(drawn, 0.9);
        w.check(
                "U",
                "Ensemble of the library: " + DRAWS
                        + " bottles with drawn air and time constant, half the width of the middle" + " nine tenths",
                (band.high() - band.low()) / 2,
                0.04 * expanded.value(),
                "draws scatter, and the formula is not a straight line");
    }

    private static WorkedExample twoStages() {
        return WorkedExample.called("two-stages", "Two stages: refrigerator, then ice bucket")
                .question(
                        "A bottle at {T_0} is to be poured at {T_w}. The bucket is free for the last {t_2} only; before that there is"
                                + " the refrigerator. How long must the bottle be in the refrigerator at the least?")
                .worked(PlanningExamples::workTwoStages, "t_1")
                .sketched(PlanningExamples::stagesSketch)
                .whatIf("t_2", 300)
                .whatIf("T_w", 7)
                .whatIf("T_r", 3)
                .exercise("The bucket is free for {t_2}. How long in the refrigerator?", "t_1", Map.of("t_2", 900.0))
                .exercise(
                        "How warm must the bottle be when it goes into the bucket, if it is to be {T_w} when poured?",
                        "T_m",
                        Map.of("T_w", 6.0))
                .caution("Dry the bottle when it leaves the bucket; wet glass slips.")
                .lesson(
                        "Plan backwards: from the glass to the bucket, from the bucket to the refrigerator. Each stage is the first"
                                + " example again.")
                .teaching(
                        "The order matters for the bucket's ice, not for the bottle: have them exchange the stages and find the same"
                                + " temperature only if the times are changed. No published answer is known to us.");
    }

    private static Sketch stagesSketch(Solution s) {
        return Sketch.empty()
                .box(20, 20, 90, 140)
                .bottle(65, 150)
                .arrow(114, 90, 150, 90)
                .tub(206, 160, 100, 96)
                .dashed(160, 84, 252, 84)
                .bottle(206, 154)
                .ice(164, 74, 1, 12)
                .ice(234, 74, 1, 12)
                .arrow(262, 90, 296, 90)
                .label(24, 14, "refrigerator " + s.fill("{T_r}"))
                .label(160, 24, "bucket " + s.fill("{T_b}"))
                .label(300, 94, s.fill("{T_w}"));
    }

    private static void workTwoStages(Working w) {
        Term t0 = w.given("T_0", "temperature of the bottle", 22, "°C");
        Term tr = w.given("T_r", "temperature of the refrigerator", 5, "°C");
        Term tau1 = w.given("τ_1", "time constant in the refrigerator", 8000, "s");
        Term tb = w.given("T_b", "temperature of the bucket", 1, "°C");
        Term tau2 = w.given("τ_2", "time constant in the bucket", 1000, "s");
        Term t2 = w.given("t_2", "time in the bucket", 600, "s");
        Term tw = w.given("T_w", "temperature wanted", 8, "°C");
        Term tm = w.find(
                "T_m",
                "temperature at which it must come into the bucket",
                "°C",
                tb.plus(tw.minus(tb).times(exp(t2.over(tau2)))));
        Term t1 = w.find(
                "t_1",
                "time in the refrigerator",
                "s",
                tau1.times(ln(t0.minus(tr).over(tm.minus(tr)))));
        Term whole = w.find("t_all", "when to begin before pouring", "s", t1.plus(t2));
        w.check(
                "T_w",
                "a network whose path is changed at that moment, in the library's solver: temperature at the end",
                Networks.twoStages(
                        t0.value(), tau1.value(), tr.value(), t1.value(), tau2.value(), tb.value(), whole.value()),
                1e-3,
                "only the error of the steps");
        double between = t1.value();
        List<Double> minutes = Curve.spaced(0, whole.value() / 60, 121);
        w.draw(Figure.of(
                "stages",
                "Two stages",
                "Time [min]",
                "Temperature [°C]",
                List.of(
                        Curve.of(
                                "wine",
                                minutes,
                                x -> 60 * x <= between
                                        ? tr.value() + (t0.value() - tr.value()) * Math.exp(-60 * x / tau1.value())
                                        : tb.value()
                                                + (tm.value() - tb.value())
                                                        * Math.exp(-(60 * x - between) / tau2.value())),
                        Curve.of("wanted", minutes, x -> tw.value()))));
    }

    private static WorkedExample fullModel() {
        return WorkedExample.called("two-stages-in-full", "The same two stages with the whole model")
                .question(
                        "A described bottle of dry wine at {T_0} goes into a refrigerator of {T_r} and for the last {t_2} into a bucket"
                                + " with {m_i} of ice and {m_w} of water, stirred by nobody. When must it go into the refrigerator, to be at {T_w}?")
                .worked(PlanningExamples::workFullModel, "t_1")
                .sketched(PlanningExamples::stagesSketch)
                .whatIf("T_r", 3)
                .whatIf("t_2", 300)
                .exercise("How long in the refrigerator for a bottle of {T_0}?", "t_1", Map.of("T_0", 18.0))
                .exercise(
                        "How long for a red that is wanted at {T_w}, with {t_2} of bucket?",
                        "t_1",
                        Map.of("T_w", 12.0, "t_2", 300.0))
                .caution("A bottle forgotten in ice and water is merely too cold; one forgotten in a freezer bursts.")
                .lesson(
                        "Two time constants, taken from two explanations of the model, bring one within a kelvin of it. For the rest, and"
                                + " for shared gear, there is Planner.")
                .teaching(
                        "Let them guess beforehand which time constant errs more. In the bucket the ice melts, water layers and films"
                                + " change; a single number cannot know that. No published answer is known to us.");
    }

    private static void workFullModel(Working w) {
        Term t0 = w.given("T_0", "temperature of the bottle", 22, "°C");
        Term tr = w.given("T_r", "temperature of the refrigerator", 5, "°C");
        Term tb = w.given("T_b", "temperature of the bucket, as an estimate", 1, "°C");
        Term t2 = w.given("t_2", "time in the bucket", 480, "s");
        Term tw = w.given("T_w", "temperature wanted", 9, "°C");
        Term ice = w.given("m_i", "ice in the bucket", 2.5, "kg");
        Term water = w.given("m_w", "water in the bucket", 2.5, "kg");
        Refrigerator refrigerator = Refrigerator.at(celsius(tr.value()));
        IceWaterBath bath = IceWaterBath.of(
                Bucket.of(millimetres(220), millimetres(230)),
                kilograms(ice.value()),
                kilograms(water.value()),
                Air.at(celsius(22)));
        Prediction cooled = Lumped.of(bottle(t0.value())).expose(in(refrigerator, Duration.ofHours(2)));
        Term tau1 = w.look(
                "τ_1",
                "time constant in the refrigerator",
                "s",
                cooled.explainAt(Duration.ofMinutes(45)).timeConstantS(),
                "Prediction.explainAt(45 min) in the refrigerator");
        Prediction chilled = Lumped.of(bottle((t0.value() + tw.value()) / 2)).expose(in(bath, Duration.ofMinutes(30)));
        Term tau2 = w.look(
                "τ_2",
                "time constant in the bucket",
                "s",
                chilled.explainAt(Duration.ofMinutes(4)).timeConstantS(),
                "Prediction.explainAt(4 min) in the bucket");
        Term tm = w.find(
                "T_m",
                "temperature at which it must come into the bucket",
                "°C",
                tb.plus(tw.minus(tb).times(exp(t2.over(tau2)))));
        Term t1 = w.find(
                "t_1",
                "time in the refrigerator",
                "s",
                tau1.times(ln(t0.minus(tr).over(tm.minus(tr)))));
        Prediction both = Lumped.of(bottle(t0.value()))
                .expose(in(refrigerator, duration(t1.value())), in(bath, duration(t2.value())));
        w.check(
                "T_w",
                "the whole model through both stages: Lumped.of(bottle).expose(in(refrigerator, …), in(bath, …))",
                Kelvin.celsius(both.meanTemperatureK(both.end().toMillis() / 1000.0)),
                1.5,
                "films and the bucket change on the way, and two numbers stand for them");
    }

    private static Duration duration(double seconds) {
        return Duration.ofMillis(Math.round(seconds * 1000));
    }

    private static double seconds(Duration duration) {
        return duration.toMillis() / 1000.0;
    }
}
