/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.beveragethermal.core.calibration.Identifiability.Further;
import org.beveragethermal.core.calibration.Identifiability.Together;

/** Finds out whether the readings tell the parameters apart, and what would. */
final class Identifying {

    private final FitResult result;
    private final Problem problem;
    private final Search search;
    private final Information information;
    private final Map<String, Profile> profiles;

    private Identifying(FitResult result, Problem problem, Search search, Map<String, Profile> profiles) {
        this.profiles = profiles;
        this.result = result;
        this.problem = problem;
        this.search = search;
        this.information = search.solution().information();
    }

    static Identifiability of(FitResult result, Problem problem, Search search, Map<String, Profile> profiles) {
        return new Identifying(result, problem, search, profiles).report();
    }

    private Identifiability report() {
        List<String> undetermined = new ArrayList<>();
        List<String> flat = new ArrayList<>();
        for (int k : information.free) {
            if (information.undetermined[k]) {
                undetermined.add(name(k));
            } else if (Objects.requireNonNull(profiles.get(name(k))).isFlat()) {
                flat.add(name(k));
            }
        }
        List<Together> together = together();
        Set<String> weak = new LinkedHashSet<>(undetermined);
        weak.addAll(flat);
        together.forEach(pair -> weak.addAll(List.of(pair.first(), pair.second())));
        List<Further> further = further(weak);
        return new Identifiability(
                information.free.length,
                information.rank,
                information.condition,
                undetermined,
                flat,
                together,
                advice(undetermined, flat, together, weak, further),
                further);
    }

    private String name(int slot) {
        return problem.slots().get(slot).name();
    }

    private List<Together> together() {
        List<Together> pairs = new ArrayList<>();
        for (int a : information.free) {
            for (int b : information.free) {
                // 0 where the readings do not determine one of them: it is named as such.
                double correlation = result.correlation(name(a), name(b));
                if (a < b && Math.abs(correlation) > Identifiability.MOST_CORRELATION) {
                    pairs.add(new Together(name(a), name(b), correlation));
                }
            }
        }
        return pairs;
    }

    private List<String> advice(
            List<String> undetermined,
            List<String> flat,
            List<Together> together,
            Set<String> weak,
            List<Further> further) {
        List<String> advice = new ArrayList<>();
        for (String same : sameReadings()) {
            advice.add(same);
        }
        if (!undetermined.isEmpty()) {
            advice.add(
                    "The readings fit as well with other values of " + String.join(", ", undetermined)
                            + ": keep all but one of them at values from elsewhere, give them priors, or read what answers to them.");
        }
        for (String name : flat) {
            advice.add("The readings set no limit to " + name
                    + " on at least one side, within its bounds if it has any: give it a closer bound or a prior, or read where it"
                    + " matters more.");
        }
        for (Together pair : together) {
            advice.add(String.format(
                    Locale.ROOT,
                    "%s and %s go together (correlation %.4f): the readings tell their joint effect, not each. Keep one, give it a"
                            + " prior, or read what answers to one of them alone.",
                    pair.first(),
                    pair.second(),
                    pair.correlation()));
        }
        if (!weak.isEmpty() && !further.isEmpty() && further.get(0).gain() > 1.5) {
            Further best = further.get(0);
            String also = "Reading " + best.reading() + " as well, as often and as surely, would ";
            advice.add(
                    Double.isInfinite(best.gain())
                            ? also + "determine " + String.join(", ", weak) + "."
                            : also
                                    + String.format(
                                            Locale.ROOT, "make the worst of them %.3g times surer.", best.gain()));
        }
        return advice;
    }

    private List<String> sameReadings() {
        List<String> same = new ArrayList<>();
        for (Problem.Run run : problem.runs()) {
            Observations seen = run.observations();
            boolean constant = seen.size() > 1;
            for (int i = 1; i < seen.size(); i++) {
                constant &= seen.value(i) == seen.value(0);
            }
            if (constant) {
                same.add("All " + seen.size() + " readings of run " + run.id() + " are " + seen.value(0)
                        + ": a log in which nothing changes tells of no rate; read from the beginning of a change.");
            }
        }
        return same;
    }

    /** What the other readings that the models know would do, the most useful first. */
    private List<Further> further(Set<String> weak) {
        List<Further> answers = new ArrayList<>();
        Solution solution = search.solution();
        for (Problem.Run run : problem.runs()) {
            run.model().otherReadings(run.pick(search.minimum().theta())).forEach((reading, model) -> {
                Predicted predicted = model.at(run.pick(search.minimum().theta()));
                double[] deviations = new double[run.observations().size()];
                Arrays.setAll(deviations, run.observations()::deviation);
                Arrays.sort(deviations);
                double deviation =
                        deviations[deviations.length / 2] * search.noise().scatter();
                int known = solution.rows().residuals.length;
                double[][] slopes = Arrays.stream(solution.rows().slopes())
                        .map(column -> Arrays.copyOf(column, known + predicted.size()))
                        .toArray(double[][]::new);
                for (int k = 0; k < run.places().length; k++) {
                    double[] column = slopes[run.places()[k]];
                    for (int i = 0; i < predicted.size(); i++) {
                        column[known + i] += predicted.slope(i, k) / deviation;
                    }
                }
                Information more =
                        Information.of(slopes, information.free, problem.slots().size());
                answers.add(further(reading + " (run " + run.id() + ")", more, weak));
            });
        }
        answers.sort(Comparator.comparingDouble(Further::gain).reversed());
        return answers;
    }

    private Further further(String reading, Information more, Set<String> weak) {
        Map<String, Double> errors = new LinkedHashMap<>();
        for (int k : information.free) {
            if (!more.undetermined[k]) {
                errors.put(
                        name(k),
                        Math.sqrt(more.covariance[k][k] * search.solution().spread()));
            }
        }
        double gain = Arrays.stream(information.free)
                .filter(k -> weak.isEmpty() || weak.contains(name(k)))
                .mapToDouble(k -> gain(k, more))
                .min()
                .orElse(1);
        return new Further(reading, errors, gain);
    }

    /** Standard error before over that after. */
    private double gain(int k, Information more) {
        if (more.undetermined[k]) {
            return 1;
        }
        if (information.undetermined[k]) {
            return Double.POSITIVE_INFINITY;
        }
        double after = more.covariance[k][k];
        return after > 0 ? Math.sqrt(information.covariance[k][k] / after) : 1;
    }
}
