/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import static org.beveragethermal.service.caution.Argument.Shown.MINUTES;
import static org.beveragethermal.service.caution.Argument.Shown.PERCENT;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is the case whatever the temperature. */
final class HandlingRules {

    private HandlingRules() {}

    static List<Caution> of(CautionSubject subject) {
        List<Caution> found = new ArrayList<>();
        if (subject.has(Circumstance.SALTED_ICE)) {
            found.add(Draft.of(CautionRule.SALTED_ICE_ON_SKIN, SignalWord.WARNING)
                    .limit(CautionLimits.SALTED_ICE_CONTACT.value(), MINUTES)
                    .always());
        }
        if (subject.has(Circumstance.ICE_IN_DRINK)) {
            found.add(always(CautionRule.ICE_IN_DRINK, SignalWord.NOTICE));
        }
        if (subject.has(Circumstance.COOLING_ICE_IN_DRINK)) {
            found.add(always(CautionRule.COOLING_ICE_IN_DRINK, SignalWord.WARNING));
        }
        if (subject.has(Circumstance.MOUTH_UNDER_WATER)) {
            found.add(
                    always(CautionRule.MOUTH_UNDER_WATER, subject.isClosed() ? SignalWord.NOTICE : SignalWord.CAUTION));
        }
        if (subject.has(Circumstance.OPENED)) {
            found.add(turned(subject, SignalWord.CAUTION));
        }
        if (subject.has(Circumstance.SEDIMENT)) {
            found.add(turned(subject, SignalWord.NOTICE));
        }
        strong(subject).ifPresent(found::add);
        return found;
    }

    private static Caution turned(CautionSubject subject, SignalWord signal) {
        return Draft.of(CautionRule.NEVER_TURNED_OVER, signal)
                .crossed(
                        subject.has(Circumstance.TURNED_OVER)
                                ? new Crossing.Already(Optional.empty())
                                : new Crossing.Always());
    }

    private static Optional<Caution> strong(CautionSubject subject) {
        double limit = CautionLimits.ALCOHOLIC.value();
        return subject.drink()
                .filter(drink -> drink.strengthByVolume() > limit)
                .map(drink -> Draft.of(CautionRule.ALCOHOL, SignalWord.NOTICE)
                        .limit(limit, PERCENT)
                        .value(drink.strengthByVolume(), PERCENT)
                        .always());
    }

    /** Glass that may break, or has, where people reach. */
    static Optional<Caution> brokenGlass(CautionSubject subject, List<Caution> others) {
        boolean breaks = others.stream()
                .filter(Caution::isCrossed)
                .map(Caution::rule)
                .anyMatch(rule -> rule == CautionRule.BURSTS_BY_ICE
                        || rule == CautionRule.FULL_OF_LIQUID
                        || rule == CautionRule.PRESSURE_IN_WARMTH
                        || rule == CautionRule.THERMAL_SHOCK);
        return subject.glass().isGlass() && (breaks || subject.has(Circumstance.GLASS_IN_ICE))
                ? Optional.of(always(CautionRule.BROKEN_GLASS, SignalWord.CAUTION))
                : Optional.empty();
    }

    private static Caution always(CautionRule rule, SignalWord signal) {
        return Draft.of(rule, signal).always();
    }
}
