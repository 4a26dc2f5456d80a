/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import static org.beveragethermal.core.scene.Exposure.in;

import java.time.Duration;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer.Optimum;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.util.Pair;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.units.Measures;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.vessel.FilledVessel;

/**
 * Fits the law of one medium to courses of the full model: least squares on temperatures of a full vessel in three unknowns (k1, k2 and
 * the temperature it tends to), and the fill exponent from a vessel that is half full.
 */
final class LawFit {

    /** Length of a run; a bath of ice should last as long. */
    static final Duration HORIZON = Duration.ofHours(6);

    private static final double STARTS_APART_K = 15;
    private static final double CLOSE_K = 8;
    private static final int POINTS = 60;
    private static final double FIRST_S = 120;
    private static final double FREEZING_MARGIN_K = 0.2;
    private static final double SMALLEST_RATE = 1e-8;
    private static final int EVALUATIONS = 400;
    private static final double HALF = 0.5;

    private final String mediumId;
    private final double[] timesS;
    private final double[] coursesK;
    private final double startK;

    private LawFit(String mediumId, double startK, double[] timesS, double[] coursesK) {
        this.mediumId = mediumId;
        this.startK = startK;
        this.timesS = timesS;
        this.coursesK = coursesK;
    }

    static MediumLaw fit(String mediumId, FilledVessel vessel, Surroundings surroundings) {
        Checks.name(mediumId, "medium");
        Prediction probe = Lumped.of(vessel).expose(in(surroundings, HORIZON));
        double endK = probe.meanTemperatureK(HORIZON.toSeconds());
        FilledVessel start = Math.abs(vessel.temperatureK() - endK) >= CLOSE_K
                ? vessel
                : vessel.atTemperature(SiValues.celsiusOf(endK + STARTS_APART_K));
        MediumLaw full = of(mediumId, start, surroundings).fitted();
        FilledVessel half = start.vessel()
                .filledWith(
                        start.liquid(),
                        Measures.cubicMetres(start.liquidVolumeM3() * HALF),
                        SiValues.celsiusOf(start.temperatureK()));
        MediumLaw emptier = of(mediumId, half, surroundings).fitted();
        double excessK = Math.max(1, Math.abs(start.temperatureK() - full.mediumK()) * HALF);
        double exponent = Math.log(full.timeConstantS(excessK) / emptier.timeConstantS(excessK)) / Math.log(1 / HALF);
        return new MediumLaw(
                mediumId,
                full.linearPerS(),
                full.convectivePerS(),
                Math.max(0, Math.min(2, exponent)),
                full.mediumK(),
                0,
                0,
                full.fitRmsK());
    }

    private static LawFit of(String mediumId, FilledVessel vessel, Surroundings surroundings) {
        Prediction run = Lumped.of(vessel).expose(in(surroundings, HORIZON));
        double onsetK = vessel.liquid() instanceof Beverage drink ? drink.freezingOnsetK() : 0;
        // The course as far as nothing freezes: the law of the liquid is wanted, freezing is put on top of it.
        double lastS = HORIZON.toSeconds();
        while (lastS > 2 * FIRST_S && run.meanTemperatureK(lastS) < onsetK + FREEZING_MARGIN_K) {
            lastS /= 1.1;
        }
        double[] times = new double[POINTS];
        for (int i = 0; i < POINTS; i++) {
            times[i] = Math.rint(FIRST_S * Math.pow(lastS / FIRST_S, i / (POINTS - 1.0)));
        }
        return new LawFit(mediumId, vessel.temperatureK(), times, run.meanTemperaturesK(times));
    }

    private MediumLaw law(double[] unknowns, double rmsK) {
        return new MediumLaw(
                mediumId,
                Math.min(1, SMALLEST_RATE + Math.exp(Math.min(0, unknowns[0]))),
                Math.min(1, Math.exp(Math.min(0, unknowns[1]))),
                0,
                Math.max(Checks.COLDEST_K, Math.min(Checks.WARMEST_K, unknowns[2])),
                0,
                0,
                Math.min(50, rmsK));
    }

    private double[] courseOf(double[] unknowns) {
        MediumLaw law = law(unknowns, 0);
        double[] course = new double[timesS.length];
        for (int i = 0; i < course.length; i++) {
            course[i] = law.mediumK() + law.excessAfter(startK - law.mediumK(), timesS[i]);
        }
        return course;
    }

    private MediumLaw fitted() {
        double endK = coursesK[coursesK.length - 1];
        double beyondK = endK + 0.02 * (endK - startK);
        double middle = halving(here -> Math.abs(here - beyondK));
        double[] guess = {Math.log(HALF / middle), Math.log(HALF / middle / 2), beyondK};
        MultivariateJacobianFunction model = point -> {
            double[] at = point.toArray();
            double[] course = courseOf(at);
            double[][] slopes = new double[course.length][at.length];
            for (int j = 0; j < at.length; j++) {
                double step = j == 2 ? 1e-4 : 1e-5;
                double[] up = at.clone();
                double[] down = at.clone();
                up[j] += step;
                down[j] -= step;
                double[] above = courseOf(up);
                double[] below = courseOf(down);
                for (int i = 0; i < course.length; i++) {
                    slopes[i][j] = (above[i] - below[i]) / (2 * step);
                }
            }
            return new Pair<>(new ArrayRealVector(course, false), new Array2DRowRealMatrix(slopes, false));
        };
        try {
            Optimum best = new LevenbergMarquardtOptimizer()
                    .optimize(new LeastSquaresBuilder()
                            .start(guess)
                            .model(model)
                            .target(coursesK)
                            .maxEvaluations(EVALUATIONS)
                            .maxIterations(EVALUATIONS)
                            .build());
            return law(best.getPoint().toArray(), best.getRMS());
        } catch (MathIllegalStateException e) {
            throw new IllegalArgumentException(
                    "medium " + mediumId + ": no law fits the course from " + startK + " K to " + endK
                            + " K; expected surroundings that act in one way for " + HORIZON,
                    e);
        }
    }

    /** A time constant to begin with: when the excess has fallen to a half, over ln 2. */
    private double halving(DoubleUnaryOperator excessK) {
        for (int i = 0; i < timesS.length; i++) {
            if (excessK.applyAsDouble(coursesK[i]) <= HALF * excessK.applyAsDouble(startK)) {
                return timesS[i] / Math.log(1 / HALF);
            }
        }
        return timesS[timesS.length - 1] / Math.log(1 / HALF);
    }
}
