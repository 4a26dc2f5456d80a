/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import static org.beveragethermal.service.caution.Argument.Shown.CELSIUS;
import static org.beveragethermal.service.caution.Argument.Shown.HOURS;
import static org.beveragethermal.service.caution.Argument.Shown.MINUTES;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.beveragethermal.core.prediction.Part;

/** Drinks that spoil: held cold or hot, and for how long not. */
final class HoldingRules {

    private HoldingRules() {}

    /** What holds without a course. */
    static Optional<Caution> fact(CautionSubject subject) {
        if (!subject.spoils()) {
            return Optional.empty();
        }
        Jurisdiction where = subject.jurisdiction();
        return Optional.of(where.rule()
                .map(rule -> Draft.of(CautionRule.HELD_COLD_OR_HOT, SignalWord.NOTICE)
                        .limit(rule.coldK(), CELSIUS)
                        .argument("hot", rule.hotK(), CELSIUS)
                        .argument("least", Math.min(rule.warmS(), rule.fromHotS()), HOURS)
                        .argument("most", rule.coolS(), HOURS)
                        .source(where.source())
                        .always())
                .orElseGet(() -> Draft.of(CautionRule.HOLDING_WITHOUT_FIGURE, SignalWord.NOTICE)
                        .source(where.source())
                        .always()));
    }

    static List<Caution> of(CautionSubject subject, Course course) {
        List<Caution> found = new ArrayList<>();
        if (subject.spoils()) {
            subject.jurisdiction().rule().ifPresent(rule -> {
                found.add(outside(subject, rule, course));
                found.add(time(subject, course.holding(subject.clock())));
            });
        }
        return found;
    }

    private static Caution outside(CautionSubject subject, HoldingRule rule, Course course) {
        // What is nearer to the cold limit at the beginning is meant to be cold.
        boolean wasCold = course.beyond(Part.WARMEST, rule.middleK(), 1)
                .map(span -> !span.from().isZero())
                .orElse(true);
        Optional<Course.Span> warm = course.beyond(Part.WARMEST, rule.coldK(), 1);
        // What is not cold is to be hot: it leaves that when its coldest part falls below.
        Optional<Course.Span> out = wasCold ? warm : course.beyond(Part.COLDEST, Math.nextDown(rule.hotK()), -1);
        Draft draft = Draft.of(CautionRule.OUT_OF_HOLDING, SignalWord.CAUTION)
                .limit(wasCold ? rule.coldK() : rule.hotK(), CELSIUS)
                .value(wasCold ? course.extremeK(Part.WARMEST, 1) : course.extremeK(Part.COLDEST, -1), CELSIUS)
                .source(subject.jurisdiction().source());
        return out.map(span -> draft.crossed(span.crossing())).orElseGet(draft::kept);
    }

    private static Caution time(CautionSubject subject, HoldingTime answer) {
        if (answer instanceof HoldingTime.Over over) {
            return draft(subject, SignalWord.DANGER, over.allowed(), over.allowed())
                    .crossed(Crossing.at(over.after(), Optional.empty()));
        }
        if (answer instanceof HoldingTime.MayBeOver perhaps) {
            return draft(subject, SignalWord.WARNING, perhaps.allowed(), perhaps.surely())
                    .crossed(Crossing.at(perhaps.after(), Optional.empty()));
        }
        HoldingTime.Within within = (HoldingTime.Within) answer;
        return draft(subject, SignalWord.DANGER, within.counted().plus(within.left()), within.counted())
                .argument("left", Times.seconds(within.left()), MINUTES)
                .kept();
    }

    private static Draft draft(CautionSubject subject, SignalWord signal, Duration allowed, Duration counted) {
        return Draft.of(CautionRule.HOLDING_TIME_OVER, signal)
                .limit(Times.seconds(allowed), HOURS)
                .value(Times.seconds(counted), MINUTES)
                .source(subject.jurisdiction().source());
    }
}
