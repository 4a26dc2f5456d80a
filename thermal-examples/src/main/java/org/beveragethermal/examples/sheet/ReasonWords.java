/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.sheet;

import java.time.Instant;
import java.util.Locale;
import java.util.function.Function;
import org.beveragethermal.service.plan.Argument;
import org.beveragethermal.service.plan.Reason;

/** Reasons of a plan in words. */
final class ReasonWords {

    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double PERCENT = 100;

    private final Function<String, String> names;
    private final Function<Instant, String> clock;

    ReasonWords(Function<String, String> names, Function<Instant, String> clock) {
        this.names = names;
        this.clock = clock;
    }

    String of(Reason reason) {
        Object[] words = reason.arguments().stream().map(this::word).toArray();
        return String.format(Locale.ROOT, sentence(reason.code()), words);
    }

    private static String sentence(Reason.Code code) {
        return switch (code) {
            case STAYS -> "it is at %s when poured without being moved";
            case BROUGHT_BY -> "%s brings it there: left where it is it would be at %s when poured, so it is at %s";
            case BROUGHT_BY_TWO -> "one after the other %s and %s bring it to %s when poured";
            case KEPT_IN -> "kept in %s and poured at %s it stays between %s and %s while it is drunk";
            case KEPT_OUT_OF_RANGE -> "kept in %s it is out of range at %s of the pours";
            case KEPT_BY_TURNS -> "while it is drunk it goes into %s for %s and out for %s by turns";
            case WILL_NOT_DO -> "%s will not do: put there at once it would be at %s when poured";
            case TAKEN -> "%s would do but is full or not there then";
            case HAZARD -> "%s would do harm to it";
            case CLOSEST -> "%s comes closest, with %s when poured";
            case NOTHING_BETTER -> "left where it is it would be at %s, and nothing at hand does better";
            case TOGETHER -> "alone it would be at %s when poured; with the other bottles in the same gear it is at %s";
            case REPAIRED -> "as first chosen it would have been at %s when poured, together with the others";
            case READY_IN_TIME -> "so that its water is cold when the first bottle goes in %s later";
            case ICE_RUNS_OUT -> "its ice would be gone at %s";
            case GEAR_LEAVES -> "%s is there until %s only";
            case AIRED -> "to be aired for %s";
            case SERVED -> "it is time to serve";
        };
    }

    private String word(Argument argument) {
        if (argument instanceof Argument.Where where) {
            return names.apply(where.id());
        } else if (argument instanceof Argument.Temperature t) {
            return String.format(Locale.ROOT, "%.1f °C", t.kelvins() - ZERO_CELSIUS_K);
        } else if (argument instanceof Argument.Difference d) {
            return String.format(Locale.ROOT, "%.1f K", d.kelvins());
        } else if (argument instanceof Argument.Mass mass) {
            return String.format(Locale.ROOT, "%.1f kg", mass.kg());
        } else if (argument instanceof Argument.Moment moment) {
            return clock.apply(moment.at());
        } else if (argument instanceof Argument.Span span) {
            return span.time().toMinutes() + " min";
        } else if (argument instanceof Argument.Share share) {
            return String.format(Locale.ROOT, "%.0f %%", PERCENT * share.part());
        }
        return argument.toString();
    }
}
