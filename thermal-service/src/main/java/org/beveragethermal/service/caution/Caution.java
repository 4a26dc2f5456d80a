/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.beveragethermal.core.inversion.Answer;
import org.beveragethermal.core.inversion.Snapshot;
import org.beveragethermal.materials.provenance.Source;

/**
 * A caution as data. All figures are in SI units; {@link #text(Locale)} words them.
 *
 * <p>It defers to local codes and licensed practice, and its text says so.
 *
 * @param rule by which rule it is given
 * @param signal how grave it is
 * @param limit the limit in the unit of the rule's quantity; empty where there is none
 * @param value what was found: furthest in the time that was looked at; empty where nothing is measured
 * @param crossing when the limit is crossed
 * @param arguments figures that the text names, in the order in which it counts them
 * @param source where the limit comes from
 */
public record Caution(
        CautionRule rule,
        SignalWord signal,
        OptionalDouble limit,
        OptionalDouble value,
        Crossing crossing,
        List<Argument> arguments,
        Source source)
        implements Answer {

    /**
     * Checks that the rule can have the signal word, and that the figures are finite; copies the list.
     *
     * @param rule by which rule it is given
     * @param signal how grave it is, one of the rule's
     * @param limit the limit, finite
     * @param value what was found, finite
     * @param crossing when the limit is crossed
     * @param arguments figures that the text names, not modified
     * @param source where the limit comes from
     * @throws IllegalArgumentException if the rule cannot have the signal word or a figure is not finite
     */
    public Caution {
        if (!rule.signals().contains(signal)) {
            throw new IllegalArgumentException(rule.code() + " as " + signal + ": expected one of " + rule.signals());
        }
        if (!Double.isFinite(limit.orElse(0)) || !Double.isFinite(value.orElse(0))) {
            throw new IllegalArgumentException(
                    rule.code() + ", limit " + limit + ", value " + value + ": expected finite figures");
        }
        arguments = List.copyOf(arguments);
    }

    /**
     * The code of the rule.
     *
     * @return lower-case letters and hyphens
     */
    public String code() {
        return rule.code();
    }

    /**
     * Whether it is a constraint: the limit must not be crossed, and is.
     *
     * @return true for {@link SignalWord#DANGER} that is crossed
     */
    public boolean isDanger() {
        return signal == SignalWord.DANGER && isCrossed();
    }

    /**
     * Whether there is something to be cautious of, rather than a limit that is kept.
     *
     * @return false for {@link Crossing.Not}
     */
    public boolean isCrossed() {
        return !(crossing instanceof Crossing.Not);
    }

    /**
     * How far what was found lies from the limit.
     *
     * @return distance in the unit of the quantity, negative if it is crossed; empty where there is no limit or nothing is measured
     */
    public OptionalDouble margin() {
        if (limit.isEmpty() || value.isEmpty()) {
            return OptionalDouble.empty();
        }
        double distance = Math.abs(limit.getAsDouble() - value.getAsDouble());
        return OptionalDouble.of(isCrossed() ? -distance : distance);
    }

    /**
     * The caution in words: signal word, what it is about, when, and to whom it defers.
     *
     * @param locale language and notation of numbers; English where no translation is at hand
     * @return some sentences
     */
    public String text(Locale locale) {
        return CautionTexts.in(locale).of(this);
    }

    @Override
    public String explain() {
        return text(Locale.ROOT);
    }

    @Override
    public Snapshot snapshot() {
        Map<String, List<Double>> values = new LinkedHashMap<>();
        String unit = rule.quantity().unit().equals("1") ? "" : rule.quantity().unit();
        limit.ifPresent(figure -> values.put("limit" + unit, List.of(figure)));
        value.ifPresent(figure -> values.put("value" + unit, List.of(figure)));
        crossing.time().ifPresent(time -> values.put("afterS", List.of(Times.seconds(time))));
        return new Snapshot(Snapshot.FORMAT_VERSION, code(), values);
    }
}
