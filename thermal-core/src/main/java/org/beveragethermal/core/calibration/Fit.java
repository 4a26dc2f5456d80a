/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * A fit: parameters, runs with their models and readings, and how errors are understood. Immutable.
 *
 * <p>Minimised is the sum of squares of residuals, each divided by its standard deviation, plus that of parameters off their priors;
 * with a robust {@link Loss}, the loss. Readings that are only known to lie below or above a value count with the probability of
 * that. Where the scatter of readings is estimated, deviations of readings are relative.
 */
public final class Fit {

    private static final int MOST_SLOTS = 200;
    /** With less the scatter is not told by the readings. */
    private static final double LEAST_FREEDOM = 0.1;

    private final Problem problem;

    private Fit(Problem problem) {
        this.problem = problem;
    }

    /**
     * Describes a fit.
     *
     * @return a new builder
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * Searches for the parameters.
     *
     * @return what was found
     * @throws FitException if a model has no finite answer at the start or answers for another number of readings, or the scatter is to be
     *     estimated and readings and priors leave no degree of freedom for that
     */
    public FitResult run() {
        Search search = Search.of(problem);
        double freedom = search.solution().used() - search.solution().effective();
        if (!problem.settings().scatterKnown() && freedom < LEAST_FREEDOM) {
            throw new FitException(
                    problem.readings() + " readings leave " + freedom
                            + " degrees of freedom to tell their scatter: expected more readings, surer priors or knownDeviations()");
        }
        return FitResult.of(problem, search);
    }

    /** Describes a fit; not thread-safe. */
    public static final class Builder {

        private record Described(String id, Model model, Observations observations) {}

        private final Map<String, Parameter> parameters = new LinkedHashMap<>();
        private final List<Described> runs = new ArrayList<>();
        private Loss loss = Loss.SQUARES;
        private boolean scatterKnown;
        private boolean following;
        private int starts = 1;
        private long seed;
        private int mostEvaluations = 5000;

        private Builder() {}

        /**
         * Adds a parameter.
         *
         * @param parameter the parameter
         * @return this builder
         * @throws IllegalArgumentException if there is one of that name
         */
        public Builder parameter(Parameter parameter) {
            if (parameters.putIfAbsent(parameter.name(), parameter) != null) {
                throw new IllegalArgumentException(
                        "two parameters named " + parameter.name() + ": expected unique names");
            }
            return this;
        }

        /**
         * Adds a run.
         *
         * @param id its name, not blank
         * @param model predicts its readings
         * @param observations the readings
         * @return this builder
         * @throws IllegalArgumentException if the name is blank or there is a run of that name
         */
        public Builder run(String id, Model model, Observations observations) {
            if (id.isBlank() || runs.stream().anyMatch(run -> run.id().equals(id))) {
                throw new IllegalArgumentException("run '" + id + "': expected a unique name that is not blank");
            }
            runs.add(new Described(
                    id, Objects.requireNonNull(model, "model"), Objects.requireNonNull(observations, "observations")));
            return this;
        }

        /**
         * Sets what a residual costs; least squares unless set.
         *
         * @param newLoss the loss
         * @return this builder
         */
        public Builder loss(Loss newLoss) {
            loss = Objects.requireNonNull(newLoss, "loss");
            return this;
        }

        /**
         * Takes deviations of readings as standard deviations, not as relative ones whose scatter is estimated.
         *
         * @return this builder
         */
        public Builder knownDeviations() {
            scatterKnown = true;
            return this;
        }

        /**
         * Lets the error of each reading follow the one before (first-order autoregression), with a correlation that is estimated.
         *
         * @return this builder
         */
        public Builder followingErrors() {
            following = true;
            return this;
        }

        /**
         * Searches from several starts: the given one, and others drawn within bounds, from priors or at the scale of parameters.
         *
         * @param number number of starts, 1 to 10,000
         * @param newSeed seed of the draws
         * @return this builder
         */
        public Builder starts(int number, long newSeed) {
            if (number < 1 || number > 10_000) {
                throw new IllegalArgumentException("starts " + number + ": expected 1 to 10000");
            }
            starts = number;
            seed = newSeed;
            return this;
        }

        /**
         * Limits a search, all its rounds together; 5,000 unless set.
         *
         * @param evaluations most evaluations of all models from one start, ≥ 1
         * @return this builder
         */
        public Builder mostEvaluations(int evaluations) {
            if (evaluations < 1) {
                throw new IllegalArgumentException("evaluations " + evaluations + ": expected at least 1");
            }
            mostEvaluations = evaluations;
            return this;
        }

        /**
         * The fit.
         *
         * @return the fit
         * @throws IllegalArgumentException if a model needs a parameter that is not there, one is of no use, there are fewer readings
         *     than parameters, or settings do not go together
         */
        public Fit build() {
            if (runs.isEmpty()) {
                throw new IllegalArgumentException("no runs: expected at least one model with its readings");
            }
            Map<String, Integer> places = new LinkedHashMap<>();
            List<Problem.Slot> slots = new ArrayList<>();
            List<Problem.Run> built = new ArrayList<>();
            for (Described run : runs) {
                int[] placesOfRun = run.model().parameters().stream()
                        .mapToInt(name -> place(name, run.id(), places, slots))
                        .toArray();
                built.add(new Problem.Run(run.id(), run.model(), run.observations(), placesOfRun));
            }
            Set<String> unused = new LinkedHashSet<>(parameters.keySet());
            runs.forEach(run -> unused.removeAll(run.model().parameters()));
            if (!unused.isEmpty()) {
                throw new IllegalArgumentException("parameters " + unused + ": no model knows them");
            }
            Problem problem = new Problem(
                    List.copyOf(slots),
                    List.copyOf(built),
                    new Problem.Settings(loss, scatterKnown, following, starts, seed, mostEvaluations),
                    following ? Following.usualSpacing(built) : 1,
                    List.of());
            check(problem);
            return new Fit(problem);
        }

        private int place(String name, String run, Map<String, Integer> places, List<Problem.Slot> slots) {
            Parameter parameter = parameters.get(name);
            if (parameter == null) {
                throw new IllegalArgumentException("run " + run + ": its model needs parameter " + name
                        + ": expected one of " + parameters.keySet());
            }
            String slot = parameter.perRun() ? name + "@" + run : name;
            return places.computeIfAbsent(slot, s -> {
                slots.add(new Problem.Slot(s, parameter));
                return slots.size() - 1;
            });
        }

        private static void check(Problem problem) {
            Problem.Settings settings = problem.settings();
            if (problem.slots().size() > MOST_SLOTS) {
                throw new IllegalArgumentException(
                        problem.slots().size() + " parameters over all runs: expected at most " + MOST_SLOTS);
            }
            if (problem.readings() > Observations.MOST) {
                throw new IllegalArgumentException(problem.readings() + " readings in all runs: expected at most "
                        + Observations.MOST + "; thin the logs");
            }
            long free =
                    problem.slots().stream().filter(s -> !s.parameter().fixed()).count();
            boolean known = settings.scatterKnown();
            // Only exact readings tell how readings scatter, and one more is needed for that.
            int counted = problem.readings() - (known ? 0 : problem.censoredReadings());
            long needed = free + (known ? 0 : 1);
            if (counted + problem.priors() < needed) {
                throw new IllegalArgumentException(counted + (counted < problem.readings() ? " exact" : "")
                        + " readings and " + problem.priors()
                        + " priors for " + free + " free parameters" + (known ? "" : " and the scatter")
                        + ": expected at least " + needed + " in all" + (known ? "" : ", or knownDeviations()"));
            }
            if (settings.following()) {
                if (problem.censored()) {
                    throw new IllegalArgumentException(
                            "errors that follow each other with readings below or above a value: expected exact readings");
                }
                for (Problem.Run run : problem.runs()) {
                    if (!run.observations().ascending()) {
                        throw new IllegalArgumentException("run " + run.id()
                                + ": errors that follow each other need readings in ascending order of place or time");
                    }
                }
            }
            if (problem.censored() && !settings.loss().isSquares()) {
                throw new IllegalArgumentException(
                        settings.loss() + " with readings below or above a value: expected least squares");
            }
        }
    }
}
