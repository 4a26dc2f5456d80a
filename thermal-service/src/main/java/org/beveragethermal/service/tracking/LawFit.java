/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import static org.beveragethermal.core.scene.Exposure.in;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer.Optimum;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.util.Pair;
import org.beveragethermal.core.prediction.Explanation;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.materials.units.Measures;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.vessel.FilledVessel;

/**
 * Fits the law of one medium to courses of the full model: least squares on temperatures of a full vessel in two unknowns, k1 and
 * k2, with the temperature of the medium read off the model; and the fill exponent from a vessel that is half full.
 *
 * <p>Theory manual, equation (9.4).
 */
final class LawFit {

    /** Length of a run; a bath of ice should last as long. */
    static final Duration HORIZON = Duration.ofHours(6);

    // Where the courses begin and end, and at how many times they are compared, are choices of ours, no source.

    /** The far course begins where the vessel is if that is so far from the medium [K], else the next figure above it [K]. */
    private static final double FAR_K = 8;

    private static final double STARTS_APART_K = 15;
    /** The near course begins at this part of the far one's distance. */
    private static final double NEAR_PART = 0.3;
    /** Of differences of logarithms. */
    private static final double STEP = 1e-5;

    private static final int POINTS = 60;
    /** First time at which a course is compared [s]. */
    private static final double FIRST_S = 120;
    /** A course ends so far above the freezing point [K]. */
    private static final double FREEZING_MARGIN_K = 0.2;

    private static final double SMALLEST_RATE = 1e-8;
    private static final int EVALUATIONS = 400;
    private static final double HALF = 0.5;

    private final String mediumId;
    private final double mediumK;
    private final List<Course> courses;

    private LawFit(String mediumId, double mediumK, List<Course> courses) {
        this.mediumId = mediumId;
        this.mediumK = mediumK;
        this.courses = courses;
    }

    /** Temperatures of one run of the full model at some times. */
    private record Course(double startK, List<Double> timesS, List<Double> temperaturesK) {}

    static MediumLaw fit(String mediumId, FilledVessel vessel, Surroundings surroundings, double onsetK) {
        Checks.name(mediumId, "medium");
        Prediction probe = run(vessel, surroundings);
        double mediumK = mediumK(probe, lastS(probe, onsetK));
        FilledVessel start = Math.abs(vessel.temperatureK() - mediumK) >= FAR_K
                ? vessel
                : vessel.atTemperature(SiValues.celsiusOf(mediumK + STARTS_APART_K));
        MediumLaw full = fitted(mediumId, start, surroundings, mediumK, onsetK);
        FilledVessel half = start.vessel()
                .filledWith(
                        start.liquid(),
                        Measures.cubicMetres(start.liquidVolumeM3() * HALF),
                        SiValues.celsiusOf(start.temperatureK()));
        MediumLaw emptier = fitted(mediumId, half, surroundings, mediumK, onsetK);
        double excessK = Math.abs(start.temperatureK() - mediumK) * HALF;
        double exponent = Math.log(full.timeConstantS(excessK) / emptier.timeConstantS(excessK)) / Math.log(1 / HALF);
        return new MediumLaw(
                mediumId,
                full.linearPerS(),
                full.convectivePerS(),
                Math.max(0, Math.min(2, exponent)),
                mediumK,
                0,
                0,
                full.fitRmsK());
    }

    private static Prediction run(FilledVessel vessel, Surroundings surroundings) {
        return Lumped.of(vessel).expose(in(surroundings, HORIZON));
    }

    /** Temperature of what touches the vessel, by conductance. */
    private static double mediumK(Prediction run, double lastS) {
        double sum = 0;
        double conductance = 0;
        for (Explanation.Band band : run.explainAt(Duration.ofMillis(Math.round(1000 * HALF * lastS)))
                .bands()) {
            double here = 1 / band.kelvinPerWatt();
            sum += here * band.mediumK();
            conductance += here;
        }
        return sum / conductance;
    }

    /** How far a course goes before something freezes: the law of the liquid is wanted, freezing is put on top of it. */
    private static double lastS(Prediction run, double onsetK) {
        double lastS = HORIZON.toSeconds();
        while (lastS > 2 * FIRST_S && run.meanTemperatureK(lastS) < onsetK + FREEZING_MARGIN_K) {
            lastS /= 1.1;
        }
        return lastS;
    }

    /** Fitted to a course from far and to one from near, so that it holds for both. */
    private static MediumLaw fitted(
            String mediumId, FilledVessel vessel, Surroundings surroundings, double mediumK, double onsetK) {
        List<Course> courses = new ArrayList<>();
        courses.add(course(vessel, surroundings, onsetK));
        double nearK = mediumK + NEAR_PART * (vessel.temperatureK() - mediumK);
        if (nearK > onsetK + 1) {
            courses.add(course(vessel.atTemperature(SiValues.celsiusOf(nearK)), surroundings, onsetK));
        }
        return new LawFit(mediumId, mediumK, courses).fitted();
    }

    private static Course course(FilledVessel vessel, Surroundings surroundings, double onsetK) {
        Prediction run = run(vessel, surroundings);
        double lastS = lastS(run, onsetK);
        double[] times = new double[POINTS];
        for (int i = 0; i < POINTS; i++) {
            times[i] = Math.rint(FIRST_S * Math.pow(lastS / FIRST_S, i / (POINTS - 1.0)));
        }
        return new Course(vessel.temperatureK(), boxed(times), boxed(run.meanTemperaturesK(times)));
    }

    private static List<Double> boxed(double[] values) {
        return Arrays.stream(values).boxed().toList();
    }

    private MediumLaw law(double[] unknowns, double rmsK) {
        return new MediumLaw(
                mediumId,
                Math.min(1, SMALLEST_RATE + Math.exp(Math.min(0, unknowns[0]))),
                Math.min(1, Math.exp(Math.min(0, unknowns[1]))),
                0,
                mediumK,
                0,
                0,
                Math.min(50, rmsK));
    }

    private double[] temperaturesK(double[] unknowns) {
        MediumLaw law = law(unknowns, 0);
        return courses.stream()
                .flatMapToDouble(course -> course.timesS().stream()
                        .mapToDouble(timeS -> mediumK + law.excessAfter(course.startK() - mediumK, timeS)))
                .toArray();
    }

    private MediumLaw fitted() {
        double[] seen = courses.stream()
                .flatMapToDouble(course -> course.temperaturesK().stream().mapToDouble(Double::doubleValue))
                .toArray();
        double rate = 1 / timeConstantS(courses.get(0));
        double[] guess = {Math.log(HALF * rate), Math.log(HALF * rate / 2)};
        MultivariateJacobianFunction model = point -> {
            double[] at = point.toArray();
            double[] course = temperaturesK(at);
            double[][] slopes = new double[course.length][at.length];
            for (int j = 0; j < at.length; j++) {
                double[] up = at.clone();
                double[] down = at.clone();
                up[j] += STEP;
                down[j] -= STEP;
                double[] above = temperaturesK(up);
                double[] below = temperaturesK(down);
                for (int i = 0; i < course.length; i++) {
                    slopes[i][j] = (above[i] - below[i]) / (2 * STEP);
                }
            }
            return new Pair<>(new ArrayRealVector(course, false), new Array2DRowRealMatrix(slopes, false));
        };
        try {
            Optimum best = new LevenbergMarquardtOptimizer()
                    .optimize(new LeastSquaresBuilder()
                            .start(guess)
                            .model(model)
                            .target(seen)
                            .maxEvaluations(EVALUATIONS)
                            .maxIterations(EVALUATIONS)
                            .build());
            return law(best.getPoint().toArray(), best.getRMS());
        } catch (MathIllegalStateException e) {
            throw new IllegalArgumentException(
                    "medium " + mediumId + ": no law fits the course towards " + mediumK
                            + " K; expected surroundings that act in one way for " + HORIZON,
                    e);
        }
    }

    /** A time constant to begin with: when the excess has fallen to a half, over ln 2. */
    private double timeConstantS(Course course) {
        double half = HALF * Math.abs(course.startK() - mediumK);
        List<Double> times = course.timesS();
        int i = 0;
        while (i < times.size() - 1 && Math.abs(course.temperaturesK().get(i) - mediumK) > half) {
            i++;
        }
        return times.get(i) / Math.log(1 / HALF);
    }
}
