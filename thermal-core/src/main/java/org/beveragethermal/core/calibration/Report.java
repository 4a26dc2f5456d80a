/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicInteger;
import org.beveragethermal.core.uncertainty.Ensemble;
import org.beveragethermal.core.uncertainty.Interval;

/** A fit in words and figures. */
final class Report {

    /** Repeated fits where they ask no model, and where they do. */
    private static final int REPEATS = 199;

    private static final int FEW_REPEATS = 49;
    /** Parts left out, and seed of them and of repeated fits. */
    private static final int PARTS = 10;

    private static final long SEED = 20260101L;
    private static final double P = FitResult.USUAL_PROBABILITY;
    /** Leverage or Cook's distance beyond this is worth a word. */
    private static final double STRONG = 1;

    private final StringBuilder text = new StringBuilder();
    private final FitResult result;
    private final Map<String, Profile> profiles;

    private final AtomicInteger asked = new AtomicInteger();
    private final Optional<Ensemble> repeats;

    private Report(FitResult plain, Optional<Ensemble> repeats) {
        this.result = plain.counting(asked);
        this.profiles = result.profiles();
        this.repeats = repeats;
    }

    static String of(FitResult result, Optional<Ensemble> repeats) {
        Report report = new Report(result, repeats);
        report.search();
        report.parameters();
        report.correlations();
        report.residuals();
        report.identifiability();
        report.choice();
        report.cost();
        return report.text.toString();
    }

    private void line(String format, Object... values) {
        text.append(String.format(Locale.ROOT, format, values)).append('\n');
    }

    private void search() {
        Problem problem = result.problem();
        line(
                "%d readings in %d run(s), %s; %.4g degrees of freedom, residual standard deviation %.5g%s",
                problem.readings(),
                problem.runs().size(),
                problem.settings().loss(),
                result.degreesOfFreedom(),
                result.residualStandardDeviation(),
                problem.settings().scatterKnown() ? " (deviations known)" : "");
        if (problem.settings().following()) {
            line("errors follow each other with a correlation of %.3f", result.errorCorrelation());
        }
        if (!result.converged()) {
            line(
                    "NOT CONVERGED after %d evaluations: the figures below are those of the last point",
                    result.evaluations());
        }
        if (result.starts() > 1) {
            line("%d of %d starts ended at this minimum", result.agreeingStarts(), result.starts());
        }
    }

    private void parameters() {
        Bootstrap bootstrap = bootstrap();
        line(
                "parameter: estimate, standard error; 95 %% intervals by linearisation, by profile, by %d repeated fits%s",
                bootstrap.size(), bootstrap.kind() == Bootstrap.Kind.TANGENT ? " on the tangent" : "");
        for (Estimate estimate : result.estimates()) {
            if (estimate.status() == Estimate.Status.KEPT) {
                line("  %s: %.6g, kept", estimate.name(), estimate.value());
                continue;
            }
            line(
                    "  %s: %.6g, %s%s; %s; %s; %s",
                    estimate.name(),
                    estimate.value(),
                    figure(estimate.standardError()),
                    estimate.status() == Estimate.Status.ESTIMATED ? "" : " (" + estimate.status() + ")",
                    estimate.status() == Estimate.Status.AT_LOWER_BOUND
                                    || estimate.status() == Estimate.Status.AT_UPPER_BOUND
                            ? "none"
                            : interval(result.interval(estimate.name(), P)),
                    interval(Objects.requireNonNull(profiles.get(estimate.name()))
                            .interval()),
                    repeated(bootstrap, estimate.name()));
        }
        if (bootstrap.failed() > 0) {
            line("  %d of the repeated fits failed: their intervals are too narrow", bootstrap.failed());
        }
    }

    private Bootstrap bootstrap() {
        boolean censored = result.problem().censored();
        if (repeats.isEmpty() && !censored) {
            return result.bootstrap(Bootstrap.Kind.TANGENT, Ensemble.of(REPEATS, SEED));
        }
        return result.bootstrap(
                censored ? Bootstrap.Kind.PARAMETRIC : Bootstrap.Kind.RESIDUAL,
                repeats.orElse(Ensemble.of(FEW_REPEATS, SEED)));
    }

    private void cost() {
        line(
                "for this report the models were asked %d times, %.0f times as often as for the fit",
                asked.get(),
                (double) asked.get()
                        / Math.max(
                                1,
                                result.evaluations() * result.problem().runs().size()));
    }

    private static String figure(OptionalDouble value) {
        return value.isPresent() ? String.format(Locale.ROOT, "%.3g", value.getAsDouble()) : "none";
    }

    private static String interval(ConfidenceInterval interval) {
        return end(interval.low()) + " to " + end(interval.high());
    }

    private static String end(OptionalDouble value) {
        return value.isPresent() ? String.format(Locale.ROOT, "%.5g", value.getAsDouble()) : "open";
    }

    private static String repeated(Bootstrap bootstrap, String name) {
        if (bootstrap.size() < 2) {
            return "none";
        }
        Interval interval = bootstrap.interval(name, P);
        return String.format(Locale.ROOT, "%.5g to %.5g", interval.low(), interval.high());
    }

    private void correlations() {
        List<Estimate> free = result.estimates().stream()
                .filter(e -> e.status() == Estimate.Status.ESTIMATED)
                .toList();
        if (free.size() < 2) {
            return;
        }
        line("correlations:");
        for (int a = 1; a < free.size(); a++) {
            for (int b = 0; b < a; b++) {
                line(
                        "  %s, %s: %.4f",
                        free.get(b).name(),
                        free.get(a).name(),
                        result.correlation(free.get(b).name(), free.get(a).name()));
            }
        }
    }

    private void residuals() {
        ResidualDiagnostics residuals = result.residuals();
        line(
                "residuals: neighbours correlate with %.3f (p %.2g), Durbin-Watson %.3f; %d stretches of one sign (p %.2g);"
                        + " normality %.3f (p %.2g)",
                residuals.lagOne(),
                residuals.lagOneP(),
                residuals.durbinWatson(),
                residuals.changesOfSign(),
                residuals.changesOfSignP(),
                residuals.normality(),
                residuals.normalityP());
        residuals.fitP().ifPresent(p -> line("sum of squares against the known deviations: p %.2g", p));
        if (residuals.rejectsModel()) {
            line(
                    "THE MODEL IS REJECTED: its residuals are not chance; standard errors and intervals above are too small");
        }
        for (int i = 0; i < residuals.cooksDistances().size(); i++) {
            if (residuals.cooksDistances().get(i) > STRONG) {
                line(
                        "  reading %d decides much by itself: leverage %.3f, Cook's distance %.3g",
                        i,
                        residuals.leverages().get(i),
                        residuals.cooksDistances().get(i));
            }
        }
    }

    private void identifiability() {
        Identifiability report = result.identifiability(profiles);
        line(
                "identifiability: %d of %d directions determined, condition number %.3g%s",
                report.rank(),
                report.parameters(),
                report.condition(),
                report.isIdentifiable() ? "" : "; NOT IDENTIFIABLE as it stands");
        report.advice().forEach(advice -> line("  %s", advice));
        report.further()
                .forEach(further -> line(
                        Double.isInfinite(further.gain())
                                ? "  reading %s as well: would determine it"
                                : "  reading %s as well: %.3g times surer",
                        further.reading(),
                        further.gain()));
    }

    private void choice() {
        Criteria criteria = result.criteria();
        line(
                "AIC %.3f, AICc %s, BIC %.3f with %.3g parameters",
                criteria.akaike(),
                criteria.akaikeCorrected().isPresent()
                        ? String.format(
                                Locale.ROOT, "%.3f", criteria.akaikeCorrected().getAsDouble())
                        : "none",
                criteria.bayesian(),
                criteria.parameters());
        int parts = Math.min(PARTS, result.problem().readings());
        if (parts > 1) {
            CrossValidation validation = result.crossValidation(parts, SEED);
            line(
                    "cross-validation in %d parts: %.5g off on readings left out, %.5g on readings fitted%s",
                    parts,
                    validation.rootMeanSquare(),
                    validation.ofTheFit(),
                    validation.failed() > 0 ? "; " + validation.failed() + " parts failed" : "");
        }
    }
}
