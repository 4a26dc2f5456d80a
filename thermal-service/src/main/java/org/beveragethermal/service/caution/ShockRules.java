/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import static org.beveragethermal.materials.units.Measures.kelvins;
import static org.beveragethermal.materials.units.Measures.wattsPerSquareMetreKelvin;
import static org.beveragethermal.service.caution.Argument.Shown.KELVINS;
import static org.beveragethermal.service.caution.Argument.Shown.NUMBER;

import java.util.Optional;
import java.util.stream.DoubleStream;
import org.beveragethermal.core.hazard.ThermalShock;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.prediction.WallBand;
import org.beveragethermal.materials.vessel.Profile;
import org.beveragethermal.materials.vessel.Station;
import org.beveragethermal.materials.vessel.Vessel;

/**
 * Sudden differences of temperature at a wall of glass.
 *
 * <p>Practice states them between the baths of a plunge. What a prediction has is the difference through the wall, so the limits are
 * reduced to what such a plunge, with the film of the test, puts through a wall as thick.
 */
final class ShockRules {

    private static final double ANY_K = 300;

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
        Vessel vessel = subject.vessel().get().vessel();
        ThermalShock.ThroughWall greatest = ThermalShock.throughWall(prediction);
        WallBand band = prediction.bands().get(greatest.band());
        double thicknessM = vessel.profile().wallThicknessM(0.5 * (band.lowM() + band.highM()));
        return judged(subject, greatest.differenceK(), share(vessel, thicknessM), greatest.outsideColder())
                .map(judged -> judged.with(Crossing.at(greatest.after(), Optional.empty())));
    }

    /** What part of a difference between baths stands through a wall of a thickness, with the film of the test. */
    private static double share(Vessel vessel, double thicknessM) {
        double film = ThermalShock.TEST_FILM.value() * thicknessM / thickestM(vessel.profile());
        return ThermalShock.throughWallOfPlunge(
                vessel, kelvins(ANY_K + 1), kelvins(ANY_K), wattsPerSquareMetreKelvin(film));
    }

    private static double thickestM(Profile profile) {
        return DoubleStream.concat(
                        DoubleStream.of(profile.baseThicknessM()),
                        profile.stations().stream()
                                .mapToDouble(Station::heightM)
                                .map(profile::wallThicknessM))
                .max()
                .orElseThrow();
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
