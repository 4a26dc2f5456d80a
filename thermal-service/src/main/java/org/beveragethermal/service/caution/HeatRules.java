/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import static org.beveragethermal.service.caution.Argument.Shown.CELSIUS;
import static org.beveragethermal.service.caution.Argument.Shown.MINUTES;
import static org.beveragethermal.service.caution.Argument.Shown.SECONDS;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.beveragethermal.core.prediction.Part;

/** Hot drinks: scalds, drinking too hot, stoppered decanters. */
final class HeatRules {

    /** What stands for "not known" where the text has a choice [s]. */
    private static final double NOT_KNOWN_S = -60;

    /** What is at a limit scalds, though courses count only what is above by more than rounding [K]. */
    private static final double INCLUDED_K = 1e-4;

    private HeatRules() {}

    static List<Caution> of(CautionSubject subject, Course course) {
        List<Caution> found = new ArrayList<>();
        double highestK = course.extremeK(Part.WARMEST, 1);
        scald(course, highestK).ifPresent(found::add);
        veryHot(subject, course, highestK).ifPresent(found::add);
        if (subject.has(Circumstance.STOPPERED)) {
            found.add(stoppered(course, highestK));
        }
        return found;
    }

    /** It scalds from the lower limit on and until it is below that again; how hot it comes to says how gravely. */
    private static Optional<Caution> scald(Course course, double highestK) {
        boolean inSeconds = highestK >= CautionLimits.SCALDS_IN_SECONDS.value() - INCLUDED_K;
        double limitK = CautionLimits.SCALDS_IN_MINUTES.value();
        return course.beyond(Part.WARMEST, limitK - INCLUDED_K, 1)
                .map(span -> Draft.of(CautionRule.SCALD, inSeconds ? SignalWord.WARNING : SignalWord.CAUTION)
                        .limit(limitK, CELSIUS)
                        .value(highestK, CELSIUS)
                        .argument("contact", ScaldTime.deepBurnS(highestK).orElseThrow(), SECONDS)
                        .crossed(span.crossing()));
    }

    private static Optional<Caution> veryHot(CautionSubject subject, Course course, double highestK) {
        double limitK = CautionLimits.VERY_HOT.value();
        Optional<Course.Span> hot = course.beyond(Part.WARMEST, limitK, 1);
        Optional<Course.Span> drunk = subject.drunkFrom()
                .filter(from -> from.compareTo(course.end()) <= 0)
                .flatMap(from -> course.beyond(Part.WARMEST, limitK, 1, from));
        if (drunk.isPresent()) {
            return Optional.of(veryHot(SignalWord.DANGER, course, highestK)
                    .crossed(drunk.get().crossing()));
        }
        if (hot.isPresent()) {
            return Optional.of(veryHot(SignalWord.WARNING, course, highestK)
                    .crossed(hot.get().crossing()));
        }
        return highestK >= CautionLimits.SCALDS_IN_MINUTES.value()
                ? Optional.of(veryHot(SignalWord.WARNING, course, highestK).kept())
                : Optional.empty();
    }

    private static Draft veryHot(SignalWord signal, Course course, double highestK) {
        double drinkableK = CautionLimits.DRINKABLE.value();
        Optional<Duration> cooled = course.beyond(Part.WARMEST, drinkableK, 1).flatMap(Course.Span::until);
        return Draft.of(CautionRule.VERY_HOT_DRINK, signal)
                .limit(CautionLimits.VERY_HOT.value(), CELSIUS)
                .value(highestK, CELSIUS)
                .argument("drinkable", drinkableK, CELSIUS)
                .argument("drinkableAfter", cooled.map(Times::seconds).orElse(NOT_KNOWN_S), MINUTES);
    }

    private static Caution stoppered(Course course, double highestK) {
        double limitK = CautionLimits.STOPPERED.value();
        Draft draft = Draft.of(CautionRule.STOPPERED_HOT, SignalWord.WARNING)
                .limit(limitK, CELSIUS)
                .value(highestK, CELSIUS);
        return course.beyond(Part.WARMEST, limitK, 1)
                .map(span -> draft.crossed(span.crossing()))
                .orElseGet(draft::kept);
    }
}
