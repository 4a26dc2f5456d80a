/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.beveragethermal.core.calibration.Profile.Point;

/**
 * Profiles the likelihood of one parameter (Bates and Watts 1988, chapter 6): the errors stay as they were estimated, the other
 * parameters are searched anew at each value.
 *
 * <p>Theory manual, equation (8.4).
 */
final class Profiling {

    private static final double FARTHEST = 10;
    /** How near the root has to come to the quantile, as a part of it. */
    static final double SURE = 1e-4;
    /** The same where a glance is enough: a five-hundredth of the half of the interval. */
    static final double GLANCE = 2e-3;

    private static final int MOST_STEPS = 40;

    private final Problem problem;
    private final Search search;
    private final int slot;
    private final double quantile;
    private final double probability;
    private final double stepUnit;
    private final double least;
    private final double tolerance;
    /** How the others follow the parameter, to first order. */
    private final double[] direction;

    private final List<Point> points = new ArrayList<>();
    private double[] lastTheta;

    private Profiling(
            Problem problem,
            Search search,
            int slot,
            double quantile,
            double probability,
            double stepUnit,
            double tolerance) {
        this.tolerance = tolerance;
        this.direction = direction(search.solution().information(), slot);
        this.problem = problem;
        this.search = search;
        this.slot = slot;
        this.quantile = quantile;
        this.probability = probability;
        this.stepUnit = stepUnit;
        this.lastTheta = search.minimum().theta();
        this.least = problem.rows(lastTheta, search.minimum().predicted(), search.noise(), false)
                .cost();
    }

    /** The profile; {@code stepUnit} is the standard error by linearisation, or some length if there is none. */
    static Profile of(
            Problem problem,
            Search search,
            int slot,
            double quantile,
            double probability,
            double stepUnit,
            double tolerance) {
        return new Profiling(problem, search, slot, quantile, probability, stepUnit, tolerance).walk();
    }

    private static double[] direction(Information information, int slot) {
        double[] direction = new double[information.covariance.length];
        double variance = information.covariance[slot][slot];
        if (variance > 0 && !information.undetermined[slot]) {
            for (int k : information.free) {
                direction[k] = information.covariance[k][slot] / variance;
            }
        }
        return direction;
    }

    private Profile walk() {
        double estimate = search.minimum().theta()[slot];
        points.add(new Point(estimate, 0));
        OptionalDouble low = end(-1);
        OptionalDouble high = end(1);
        points.sort(Comparator.comparingDouble(Point::value));
        return new Profile(
                problem.slots().get(slot).name(), new ConfidenceInterval(low, estimate, high, probability), points);
    }

    /** Where the signed root reaches the quantile on one side. */
    private OptionalDouble end(int side) {
        Parameter parameter = problem.slots().get(slot).parameter();
        double estimate = search.minimum().theta()[slot];
        double bound = side < 0 ? parameter.low() : parameter.high();
        lastTheta = search.minimum().theta();
        double inside = estimate;
        double rootInside = 0;
        double step = stepUnit * quantile;
        double farthest = estimate + side * FARTHEST * step;
        double value = estimate;
        for (int i = 0; i < MOST_STEPS; i++) {
            double next = limited(
                    inside + side * step, side, side < 0 ? Math.max(bound, farthest) : Math.min(bound, farthest));
            if (next == inside) {
                return OptionalDouble.empty();
            }
            value = next;
            double root = rootAt(value);
            if (root >= quantile) {
                return OptionalDouble.of(between(inside, rootInside, value, root));
            }
            step = Math.min(2 * step, stepTo(Math.abs(value - inside), rootInside, root, step));
            inside = value;
            rootInside = root;
        }
        return OptionalDouble.empty();
    }

    /** How far on the line through the last two looks reaches the quantile, a little beyond. */
    private double stepTo(double width, double before, double now, double step) {
        double slope = (now - before) / width;
        return slope > 0 ? Math.max(0.1 * step, 1.05 * (quantile - now) / slope) : 2 * step;
    }

    private static double limited(double value, int side, double limit) {
        return side < 0 ? Math.max(value, limit) : Math.min(value, limit);
    }

    /** Regula falsi, of the Illinois kind, for the value at which the root is the quantile. */
    private double between(double from, double rootFrom, double to, double rootTo) {
        double a = from;
        double fa = rootFrom - quantile;
        double b = to;
        double fb = rootTo - quantile;
        for (int i = 0; i < MOST_STEPS && Math.abs(fb) > tolerance * quantile; i++) {
            double c = b - fb * (b - a) / (fb - fa);
            if (!Double.isFinite(c)) {
                c = 0.5 * (a + b);
            }
            double fc = rootAt(c) - quantile;
            if (fc * fb < 0) {
                a = b;
                fa = fb;
            } else {
                fa *= 0.5;
            }
            b = c;
            fb = fc;
        }
        return b;
    }

    /** Size of the root of the increase of the cost with the parameter held at a value. */
    private double rootAt(double value) {
        double[] followed = lastTheta.clone();
        for (int k = 0; k < followed.length; k++) {
            Parameter other = problem.slots().get(k).parameter();
            double there = followed[k] + direction[k] * (value - lastTheta[slot]);
            followed[k] = other.fixed() ? followed[k] : Math.max(other.low(), Math.min(other.high(), there));
        }
        double root;
        try {
            Minimum minimum = least(followed, value);
            root = Math.sqrt(
                    Math.max(0, minimum.cost() - least) / search.solution().costSpread());
            lastTheta = minimum.theta();
        } catch (Problem.Infeasible noAnswer) {
            // Where the model has no answer the value is refused.
            root = 2 * quantile;
        }
        points.add(new Point(value, Math.copySign(root, value - search.minimum().theta()[slot])));
        return root;
    }

    /** The least cost with the parameter held, from others that have followed it, or if the model has no answer there, have not. */
    private Minimum least(double[] followed, double value) {
        boolean[] held = Search.fixed(problem);
        held[slot] = true;
        double[] start = followed.clone();
        start[slot] = value;
        try {
            return Minimiser.from(problem, search.noise(), start, held, Minimiser.Precision.QUICK);
        } catch (Problem.Infeasible noAnswer) {
            double[] stayed = lastTheta.clone();
            stayed[slot] = value;
            return Minimiser.from(problem, search.noise(), stayed, held, Minimiser.Precision.QUICK);
        }
    }
}
