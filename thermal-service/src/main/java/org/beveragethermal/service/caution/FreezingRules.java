/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import static org.beveragethermal.service.caution.Argument.Shown.CELSIUS;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.beveragethermal.core.hazard.ClosedVessel;
import org.beveragethermal.core.prediction.Part;
import org.beveragethermal.materials.liquid.Beverage;

/** Freezing, and what it does to a closed vessel. */
final class FreezingRules {

    private FreezingRules() {}

    static List<Caution> of(CautionSubject subject, Course course) {
        List<Caution> found = new ArrayList<>();
        subject.drink().ifPresent(drink -> found.add(begins(subject, drink, course)));
        subject.closedVessel()
                .filter(closed -> closed.filled().liquid() instanceof Beverage)
                .ifPresent(closed -> bursts(closed, course).ifPresent(found::add));
        return found;
    }

    private static Caution begins(CautionSubject subject, Beverage drink, Course course) {
        double freezingK = drink.freezingOnsetK();
        Draft draft = Draft.of(CautionRule.FREEZING_BEGINS, subject.isClosed() ? SignalWord.WARNING : SignalWord.NOTICE)
                .limit(freezingK, CELSIUS)
                .value(course.extremeK(Part.COLDEST, -1), CELSIUS);
        return course.beyond(Part.COLDEST, freezingK, -1)
                .map(span -> draft.crossed(span.crossing()))
                .orElseGet(draft::kept);
    }

    private static Optional<Caution> bursts(ClosedVessel closed, Course course) {
        Optional<Course.Filling> filling = course.fullOfIce(closed);
        if (filling.isPresent()) {
            return Optional.of(Draft.of(CautionRule.BURSTS_BY_ICE, SignalWord.DANGER)
                    .limit(filling.get().meanK(), CELSIUS)
                    .value(course.extremeK(Part.MEAN, -1), CELSIUS)
                    .crossed(Crossing.at(filling.get().after(), Optional.empty())));
        }
        OptionalDouble full = ClosedLimits.fullOfIceK(closed);
        return full.isEmpty()
                ? Optional.empty()
                : Optional.of(Draft.of(CautionRule.BURSTS_BY_ICE, SignalWord.DANGER)
                        .limit(full.getAsDouble(), CELSIUS)
                        .value(course.extremeK(Part.MEAN, -1), CELSIUS)
                        .kept());
    }
}
