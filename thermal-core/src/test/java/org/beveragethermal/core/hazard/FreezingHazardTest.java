/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.scene.Layered;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.FreezingCurve;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.VesselShape;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Bottles forgotten in a freezer: onset, ice, room and time left. */
final class FreezingHazardTest {

    private static final double ZERO = 273.15;
    private static final Refrigerator FREEZER = Refrigerator.at(celsius(-18));
    private static final FilledVessel WINE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(20));
    private static final Prediction FORGOTTEN = Lumped.of(WINE).expose(in(FREEZER, Duration.ofHours(20)));
    private static final FreezingHazard HAZARD = FreezingHazard.of(FORGOTTEN, ClosedVessel.of(WINE));

    @Test
    void waterTakesANinthMoreRoomAsIce() {
        FilledVessel water = Vessels.highShouldered750().filledWith(Beverage.water(), celsius(4));
        Prediction run = Lumped.of(water).expose(in(FREEZER, Duration.ofDays(2)));
        FreezingHazard hazard = FreezingHazard.of(run, ClosedVessel.of(water));
        double endS = run.trajectory().endS();
        assertThat(run.iceFraction(endS)).isCloseTo(1, within(1e-3));
        FreezingOnset.Freezes onset = (FreezingOnset.Freezes) hazard.onset();
        // From liquid at the onset to all ice: at the end the ice is at −18 °C, 0.3 % denser than at 0 °C, and the
        // glass has shrunk.
        Duration allIce = Duration.ofMillis(Math.round(1000
                * run.trajectory()
                        .firstCrossing(0, t -> run.iceFraction(t) - 0.999)
                        .orElseThrow()));
        double grown = hazard.headspaceM3(onset.after()) - hazard.headspaceM3(allIce);
        OutsideChecks.published(
                        "freezing-water-expands",
                        "IAPWS R10-06(2009), density of ice Ih at the melting point 916.72 kg/m³, and IAPWS-95, water at 0 °C 999.84 kg/m³")
                .what("room that 750 mL of water take more when all of it is ice, over their volume")
                .unit("1")
                .expected(999.84 / 916.72 - 1)
                .within(0.001)
                .check(grown / (water.liquidMassKg() / 999.84) / 0.999);
        Fullness.Fills full = (Fullness.Fills) hazard.fullness();
        assertThat(full.iceFraction()).isBetween(0.05, 0.6);
        // Half-way through the plateau the room is in between: ice is counted, not the temperature alone.
        assertThat(full.meanK()).isCloseTo(ZERO, within(2e-3));
    }

    @Test
    void forgottenWineFreezesAndFillsItsBottle() {
        FreezingOnset.Freezes onset = (FreezingOnset.Freezes) HAZARD.onset();
        assertThat(onset.meanK()).isCloseTo(onset.freezingPointK(), within(1e-3));
        assertThat(onset.explain()).contains("Ice begins");
        assertThat(HAZARD.iceFraction(onset.after().minusMinutes(5))).isZero();
        assertThat(HAZARD.iceFraction(onset.after().plusHours(2))).isPositive();
        Fullness.Fills full = (Fullness.Fills) HAZARD.fullness();
        assertThat(full.after()).isGreaterThan(onset.after());
        assertThat(HAZARD.headspaceM3(full.after())).isCloseTo(0, within(1e-9));
        // By hand: at the temperature then, mass times specific volume of the drink with its ice is the room there is.
        double volume = FreezingCurve.of(Beverage.wine(percentByVolume(12.5))).specificVolume(full.meanK());
        assertThat(WINE.liquidMassKg() * volume).isCloseTo(ClosedVessel.of(WINE).roomM3(full.meanK()), within(1e-9));
        assertThat(HAZARD.explain()).contains("of it ice").contains("burst it");
        assertThat(full.snapshot().valuesSi().get("iceFraction")).containsExactly(full.iceFraction());
        assertThat(onset.snapshot().answer()).isEqualTo("freezes");
    }

    @Test
    void timeLeftCountsDown() {
        Duration full = ((Fullness.Fills) HAZARD.fullness()).after();
        assertThat(HAZARD.timeLeft(Duration.ofHours(1))).isEqualTo(new TimeLeft.Left(full.minus(Duration.ofHours(1))));
        assertThat(HAZARD.timeLeft(full.plusMinutes(7))).isEqualTo(new TimeLeft.TooLate(Duration.ofMinutes(7)));
        assertThatThrownBy(() -> HAZARD.timeLeft(Duration.ofHours(21)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("now");
        assertThatThrownBy(() -> HAZARD.timeLeft(Duration.ofHours(-1))).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void neverIsAnAnswer() {
        Prediction cool = Lumped.of(WINE).expose(in(Refrigerator.at(celsius(4)), Duration.ofHours(6)));
        FreezingHazard hazard = FreezingHazard.of(cool, ClosedVessel.of(WINE));
        assertThat(hazard.onset())
                .isInstanceOfSatisfying(
                        FreezingOnset.NeverFreezes.class,
                        never -> assertThat(never.marginK())
                                .isCloseTo(never.coldestK() - never.freezingPointK(), within(1e-12)));
        assertThat(hazard.fullness())
                .isInstanceOfSatisfying(
                        Fullness.NeverFills.class,
                        never -> assertThat(never.after()).isLessThan(Duration.ofSeconds(1)));
        assertThat(hazard.timeLeft(Duration.ofHours(2))).isEqualTo(new TimeLeft.NotInThisRun(Duration.ofHours(4)));
        assertThat(hazard.explain()).contains("No ice forms").contains("There is room");
        FreezingHazard.Snapshot snapshot = hazard.snapshot();
        assertThat(snapshot.formatVersion()).isEqualTo(1);
        assertThat(snapshot.onsetS()).isEmpty();
        assertThat(snapshot.fullS()).isEmpty();
        assertThat(HAZARD.snapshot().fullS()).isPresent();
    }

    @Test
    void slicesFreezeOneAfterTheOther() {
        Prediction run = Layered.axial(WINE).expose(in(FREEZER, Duration.ofHours(10)));
        FreezingHazard hazard = FreezingHazard.of(run, ClosedVessel.of(WINE));
        FreezingOnset.Freezes first = (FreezingOnset.Freezes) hazard.onset();
        assertThat(first.meanK()).isGreaterThanOrEqualTo(first.freezingPointK() - 1e-3);
        assertThat(first.after())
                .isLessThanOrEqualTo(
                        ((FreezingOnset.Freezes) HAZARD.onset()).after().plusMinutes(20));
        assertThat(hazard.fullness()).isInstanceOf(Fullness.class);
    }

    @Test
    void whatIsNotThisVesselIsRefused() {
        FilledVessel plain = Vessels.highShouldered750().filledWith(Water.liquid(), celsius(20));
        Prediction ofPlain = Lumped.of(plain).expose(in(FREEZER, Duration.ofMinutes(10)));
        assertThatThrownBy(() -> FreezingHazard.of(ofPlain, ClosedVessel.of(plain)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no freezing curve");
        assertThatThrownBy(() -> FreezingHazard.of(ofPlain, ClosedVessel.of(WINE)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("expected the prediction of");
        FilledVessel beer =
                Vessels.all(VesselShape.LONG_NECK).get(0).filledWith(Beverage.beer(percentByVolume(5)), celsius(20));
        assertThatThrownBy(() -> FreezingHazard.of(FORGOTTEN, ClosedVessel.of(beer)))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
