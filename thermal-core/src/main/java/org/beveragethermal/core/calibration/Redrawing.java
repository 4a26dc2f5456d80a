/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.beveragethermal.core.calibration.Observations.Kind;
import org.beveragethermal.core.uncertainty.Ensemble;

/** Repeats a fit on redrawn readings. */
final class Redrawing {

    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

    private final Problem problem;
    private final Search search;
    private final boolean fromResiduals;
    /** For each run, innovations of the fit freed of their leverage and centred, in standard deviations. */
    private final List<double[]> pools = new ArrayList<>();

    private Redrawing(Problem problem, Search search, boolean fromResiduals) {
        this.problem = problem;
        this.search = search;
        this.fromResiduals = fromResiduals;
        int first = 0;
        for (Problem.Run run : problem.runs()) {
            pools.add(pool(first, run.observations().size()));
            first += run.observations().size();
        }
    }

    static Bootstrap of(Problem problem, Search search, Bootstrap.Kind kind, Ensemble ensemble) {
        Redrawing redrawing = new Redrawing(problem, search, kind != Bootstrap.Kind.PARAMETRIC);
        boolean tangent = kind == Bootstrap.Kind.TANGENT;
        if (tangent && problem.censored()) {
            throw new IllegalArgumentException(
                    "fits repeated on the tangent with readings below or above a value: expected exact readings");
        }
        List<Optional<double[]>> answers = ensemble.runSeeded(
                random -> tangent ? Optional.of(redrawing.onTangent(random)) : redrawing.once(random));
        List<double[]> estimates = answers.stream().flatMap(Optional::stream).toList();
        return new Bootstrap(
                kind,
                problem.slots().stream().map(Problem.Slot::name).toList(),
                estimates,
                answers.size() - estimates.size());
    }

    private double[] pool(int first, int size) {
        Solution solution = search.solution();
        double[] pool = new double[size];
        int n = 0;
        double sum = 0;
        for (int row = first; row < first + size; row++) {
            if (!Double.isNaN(solution.rows().deviations[row])) {
                double rest = Math.max(1 - solution.leverages()[row], 1e-6);
                pool[n] = -solution.rows().innovations[row] / Math.sqrt(rest);
                sum += pool[n++];
            }
        }
        double[] centred = new double[n];
        for (int i = 0; i < n; i++) {
            centred[i] = pool[i] - sum / n;
        }
        return centred;
    }

    private Optional<double[]> once(SplittableRandom random) {
        List<Problem.Run> runs = new ArrayList<>();
        for (int r = 0; r < problem.runs().size(); r++) {
            Problem.Run run = problem.runs().get(r);
            runs.add(new Problem.Run(run.id(), run.model(), redrawn(r, random), run.places()));
        }
        try {
            Search again = Search.from(
                    problem.withRuns(runs), search.minimum(), Search.fixed(problem), Minimiser.Precision.QUICK);
            return again.minimum().converged() ? Optional.of(again.minimum().theta()) : Optional.empty();
        } catch (Problem.Infeasible noAnswer) {
            return Optional.empty();
        }
    }

    /** One step of Gauss and Newton with the slopes at the estimates, after errors drawn anew. */
    private double[] onTangent(SplittableRandom random) {
        Rows rows = search.solution().rows();
        Information information = search.solution().information();
        Loss loss = problem.settings().loss();
        double[] pull = rows.residuals.clone();
        int row = 0;
        for (int r = 0; r < problem.runs().size(); r++) {
            for (int i = 0; i < problem.runs().get(r).observations().size(); i++, row++) {
                pull[row] = Double.isNaN(rows.deviations[row]) ? 0 : loss.influence(-draw(pools.get(r), random));
            }
        }
        double[] theta = search.minimum().theta().clone();
        for (int b : information.free) {
            double gradient = 0;
            for (int i = 0; i < pull.length; i++) {
                gradient += rows.slopes()[b][i] * pull[i];
            }
            for (int a : information.free) {
                theta[a] -= information.covariance[a][b]
                        * gradient
                        / search.solution().influenceSlope();
            }
        }
        for (int k : information.free) {
            Parameter parameter = problem.slots().get(k).parameter();
            theta[k] = Math.max(parameter.low(), Math.min(parameter.high(), theta[k]));
        }
        return theta;
    }

    private Observations redrawn(int r, SplittableRandom random) {
        Observations seen = problem.runs().get(r).observations();
        double[] values = new double[seen.size()];
        Kind[] kinds = new Kind[seen.size()];
        double usual = problem.spacing();
        double error = 0;
        for (int i = 0; i < values.length; i++) {
            double innovation = draw(pools.get(r), random);
            double rho = i == 0 || !problem.settings().following()
                    ? 0
                    : Following.correlation(search.noise().following(), (seen.at(i) - seen.at(i - 1)) / usual);
            error = rho * error + Math.sqrt(1 - rho * rho) * innovation;
            double deviation = problem.deviation(seen, i, search.noise().scatter());
            double value = search.minimum().predicted().get(r).value(i) + deviation * error;
            kinds[i] = kind(seen, i, value);
            values[i] = kinds[i] == Kind.EXACT ? value : seen.value(i);
        }
        return seen.replaced(values, kinds);
    }

    /** A reading that told a limit tells it again if the redrawn value lies beyond it, else the value. */
    private static Kind kind(Observations seen, int i, double value) {
        boolean beyond = seen.kind(i) == Kind.BELOW ? value < seen.value(i) : value > seen.value(i);
        return seen.kind(i) != Kind.EXACT && beyond ? seen.kind(i) : Kind.EXACT;
    }

    private double draw(double[] pool, SplittableRandom random) {
        return fromResiduals && pool.length > 1
                ? pool[random.nextInt(pool.length)]
                : NORMAL.inverseCumulativeProbability(random.nextDouble(1e-12, 1));
    }
}
