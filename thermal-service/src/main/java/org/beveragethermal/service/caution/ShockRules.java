/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import static org.beveragethermal.service.caution.Argument.Shown.KELVINS;
import static org.beveragethermal.service.caution.Argument.Shown.NUMBER;

import java.util.Optional;
import org.beveragethermal.core.hazard.ThermalShock;
import org.beveragethermal.core.prediction.Prediction;

/**
 * Sudden differences of temperature at a wall of glass.
 *
 * <p>Practice states them between the baths of a plunge. What a prediction has is the difference through the wall, so the limits are
 * reduced to what such a plunge, with the film of the test, puts through a wall as thick.
 */
final class ShockRules {

    private ShockRules() {}

    static Optional<Caution> ofPlunge(CautionSubject subject, double wallK, double mediumK) {
        return judged(subject, Math.abs(wallK - mediumK), 1, mediumK < wallK)
                .map(judged -> judged.with(new Crossing.Already(Optional.empty())));
    }

    static Optional<Caution> of(CautionSubject subject, Prediction prediction) {
        if (subject.vessel().isEmpty()
                || !subject.glass().isGlass()
                || prediction.bands().isEmpty()) {
            return Optional.empty();
        }
        ThermalShock.ThroughWall greatest = ThermalShock.throughWall(prediction);
        double share = ThermalShock.shareInTest(
                subject.vessel().get().vessel(), prediction.bands().get(greatest.band()));
        return judged(subject, greatest.differenceK(), share, greatest.outsideColder())
                .map(judged -> judged.with(Crossing.at(greatest.after(), Optional.empty())));
    }

    /** A judgement that lacks the time. */
    private record Judged(Draft draft, boolean crossed) {

        Caution with(Crossing crossing) {
            return crossed ? draft.crossed(crossing) : draft.kept();
        }
    }

    private static Optional<Judged> judged(CautionSubject subject, double differenceK, double part, boolean cooled) {
        GlassKind glass = subject.glass();
        if (!glass.isGlass()) {
            return Optional.empty();
        }
        boolean stop = differenceK >= part * glass.stopK();
        double limitK = part * (stop ? glass.stopK() : glass.warningK());
        Draft draft = Draft.of(CautionRule.THERMAL_SHOCK, stop ? SignalWord.DANGER : SignalWord.WARNING)
                .limit(limitK, KELVINS)
                .value(differenceK, KELVINS)
                .argument("outsideColder", cooled ? 1 : 0, NUMBER)
                .source(glass == GlassKind.BOROSILICATE ? CautionSources.BOROSILICATE : CautionSources.SHOCK);
        return Optional.of(new Judged(draft, differenceK >= limitK));
    }
}
