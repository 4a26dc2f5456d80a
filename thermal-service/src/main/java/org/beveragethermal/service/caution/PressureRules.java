/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import static org.beveragethermal.service.caution.Argument.Shown.BAR;
import static org.beveragethermal.service.caution.Argument.Shown.CELSIUS;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.beveragethermal.core.hazard.ClosedVessel;
import org.beveragethermal.core.hazard.HeadspacePressure;
import org.beveragethermal.core.prediction.Part;
import org.beveragethermal.materials.liquid.Beverage;

/** Pressure under a closure: liquid that expands, carbon dioxide, and opening. */
final class PressureRules {

    /** Carbonated, these come under corks too, with or without alcohol; common practice, no source. */
    private static final Set<Beverage.Kind> UNDER_CORK = EnumSet.of(
            Beverage.Kind.SPARKLING_WINE,
            Beverage.Kind.WINE,
            Beverage.Kind.SWEET_WINE,
            Beverage.Kind.FORTIFIED_WINE,
            Beverage.Kind.VERMOUTH,
            Beverage.Kind.LOW_ALCOHOL_WINE,
            Beverage.Kind.CIDER,
            Beverage.Kind.SAKE);

    private PressureRules() {}

    static List<Caution> of(CautionSubject subject, Course course) {
        List<Caution> found = new ArrayList<>();
        subject.closedVessel().ifPresent(closed -> {
            full(closed, course).ifPresent(found::add);
            if (subject.isUnderPressure()) {
                pressed(subject, closed, course).ifPresent(found::add);
            }
        });
        return found;
    }

    private static Optional<Caution> full(ClosedVessel closed, Course course) {
        OptionalDouble fullK = closed.fullAtK();
        if (fullK.isEmpty()) {
            return Optional.empty();
        }
        Draft draft = Draft.of(CautionRule.FULL_OF_LIQUID, SignalWord.DANGER)
                .limit(fullK.getAsDouble(), CELSIUS)
                .value(course.extremeK(Part.MEAN, 1), CELSIUS);
        return Optional.of(course.beyond(Part.MEAN, fullK.getAsDouble(), 1)
                .map(span -> draft.crossed(span.crossing()))
                .orElseGet(draft::kept));
    }

    private static Optional<Caution> pressed(CautionSubject subject, ClosedVessel closed, Course course) {
        double limitPa = (subject.glass().isGlass()
                        ? CautionLimits.PRESSURE_IN_GLASS
                        : CautionLimits.PRESSURE_IN_OTHERS)
                .value();
        OptionalDouble limitK = ClosedLimits.pressedK(closed, limitPa);
        if (limitK.isEmpty()) {
            return Optional.empty();
        }
        double highestK = course.extremeK(Part.WARMEST, 1);
        Draft draft = Draft.of(CautionRule.PRESSURE_IN_WARMTH, SignalWord.WARNING)
                .limit(limitPa, BAR)
                .argument("limitTemperature", limitK.getAsDouble(), CELSIUS)
                .argument("highest", highestK, CELSIUS);
        if (within(closed, highestK) && closed.pressureAtK(highestK) instanceof HeadspacePressure.Gas gas) {
            draft.value(gas.gaugePa(), BAR);
        }
        return Optional.of(course.beyond(Part.WARMEST, limitK.getAsDouble(), 1)
                .map(span -> draft.crossed(span.crossing()))
                .orElseGet(draft::kept));
    }

    private static boolean within(ClosedVessel closed, double temperatureK) {
        return closed.filled().liquid().temperatureRange().contains(temperatureK);
    }

    /** Opening what is under pressure; without a course what holds at any temperature. */
    static Optional<Caution> opening(CautionSubject subject, Optional<Course> course) {
        if (!subject.isUnderPressure()) {
            return Optional.empty();
        }
        boolean cork =
                subject.drink().map(drink -> UNDER_CORK.contains(drink.kind())).orElse(false);
        double limitK = CautionLimits.OPENING.value();
        Draft grave = Draft.of(CautionRule.OPENING_UNDER_PRESSURE, cork ? SignalWord.WARNING : SignalWord.CAUTION)
                .limit(limitK, CELSIUS);
        course.ifPresent(known -> grave.value(known.extremeK(Part.WARMEST, 1), CELSIUS));
        if (subject.has(Circumstance.SHAKEN)) {
            return Optional.of(grave.crossed(new Crossing.Already(Optional.empty())));
        }
        Optional<Course.Span> warm = course.flatMap(known -> known.beyond(Part.WARMEST, limitK, 1));
        if (warm.isPresent()) {
            return Optional.of(grave.crossed(warm.get().crossing()));
        }
        return Optional.of(Draft.of(CautionRule.OPENING_UNDER_PRESSURE, SignalWord.CAUTION)
                .limit(limitK, CELSIUS)
                .always());
    }
}
