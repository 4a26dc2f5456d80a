/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.gramsPerLitre;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import org.beveragethermal.core.conduction.Layer;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.solver.EventAnswer;
import org.beveragethermal.core.solver.LedgerEntry;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.RunEvent;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Posture;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.FreezingCurve;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Profile;
import org.beveragethermal.materials.vessel.Vessel;
import org.beveragethermal.materials.vessel.VesselShape;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Drinks that freeze in slices and shells: energy by closed form, the lumped drink as the limit, turning over, notes. */
final class FreezingSlicesTest {

    private static final double ZERO = 273.15;
    private static final Beverage WINE = Beverage.wine(percentByVolume(12.5));
    private static final Beverage LEMONADE = Beverage.softDrink(gramsPerLitre(100));

    private static FilledVessel bottleOf(Beverage drink) {
        return Vessels.highShouldered750().filledWith(drink, celsius(20));
    }

    /** As wide at the top as at the bottom, so that all parts meet the same outside. */
    private static final FilledVessel JAR = Vessel.builder("jar")
            .shape(VesselShape.CARAFE)
            .open(false)
            .profile(Profile.builder()
                    .station(millimetres(0), millimetres(77), millimetres(3.5))
                    .station(millimetres(200), millimetres(77), millimetres(3.5))
                    .baseThickness(millimetres(1))
                    .build())
            .nominalVolume(litres(0.75))
            .build()
            .filledWith(WINE, celsius(20));

    private static double enthalpyJ(Prediction prediction, double timeS) {
        return prediction.contents().nodes().stream()
                .mapToDouble(node -> prediction.trajectory().enthalpyJ(node, timeS))
                .sum();
    }

    @ParameterizedTest
    @ValueSource(strings = {"lumped", "slices", "shells"})
    void heatToFreezeToFiveBelowIsTheDifferenceOfEnthalpies(String how) {
        VesselModel model = how.equals("lumped")
                ? VesselModel.lumped()
                : how.equals("slices") ? VesselModel.axial(6) : VesselModel.radial(6);
        FilledVessel bottle = bottleOf(LEMONADE);
        Prediction frozen = Layered.of(bottle, model).expose(in(Refrigerator.at(celsius(-5)), Duration.ofDays(6)));
        double end = 6 * 86_400.0;
        for (double k : frozen.profileK(end)) {
            assertThat(k).isCloseTo(ZERO - 5, within(0.01));
        }
        FreezingCurve curve = FreezingCurve.of(LEMONADE);
        double liquid = how.equals("shells")
                // Shells have the heat capacity of the start as long as they are liquid.
                ? curve.specificEnthalpyWithIce(curve.onset().temperatureK())
                        + LEMONADE.specificHeatCapacity(ZERO + 20)
                                * (ZERO + 20 - curve.onset().temperatureK())
                : curve.specificEnthalpyWithIce(ZERO + 20);
        double expected = bottle.liquidMassKg() * (liquid - curve.specificEnthalpyWithIce(ZERO - 5));
        assertThat(enthalpyJ(frozen, 0) - enthalpyJ(frozen, end)).isCloseTo(expected, within(1e-3 * expected));
        // All of it, with what the glass gave off, has gone to the air: nothing else took part.
        double glass = bottle.vessel().emptyMassKg()
                * bottle.vessel().wall().specificHeatCapacity().value()
                * 25;
        double released = frozen.ledger().entries().stream()
                .filter(entry -> entry.path().contains(" outside, "))
                .mapToDouble(LedgerEntry::heatJ)
                .sum();
        assertThat(released).isCloseTo(expected + glass, within(1e-3 * expected));
        assertThat(frozen.ledger().closure()).isLessThan(1e-9);
        assertThat(frozen.iceFraction(end)).isCloseTo(curve.iceFraction(ZERO - 5), within(2e-3));
    }

    @Test
    void lumpedIsTheLimitOfShellsThroughFreezing() {
        // Foam makes the outside decide; the thicker, the less the contents differ in themselves. FreezingColumnTest
        // has the same
        // of slices, which in a vessel also meet its ends.
        Exposure freezer = in(Refrigerator.at(celsius(-18)), Duration.ofDays(2));
        double previous = Double.POSITIVE_INFINITY;
        for (double thickness : new double[] {0.005, 0.02, 0.08}) {
            Layer foam = Layer.of("foam", thickness, 0.035, 45_000, 0.9).inCells(2);
            Prediction lumped =
                    Layered.of(JAR, VesselModel.lumped().wrappedIn(foam)).expose(freezer);
            Prediction parts =
                    Layered.of(JAR, VesselModel.radial(8).wrappedIn(foam)).expose(freezer);
            double iced = lumped.trajectory()
                    .firstCrossing(0, t -> lumped.iceFraction(t) - 0.1)
                    .orElseThrow();
            double difference = 0;
            for (int i = 1; i <= 40; i++) {
                double t = iced * i / 40;
                difference = Math.max(difference, Math.abs(parts.meanTemperatureK(t) - lumped.meanTemperatureK(t)));
            }
            assertThat(parts.iceFraction(iced)).isCloseTo(0.1, within(0.02));
            assertThat(difference).as("foam of %s m", thickness).isLessThan(previous);
            previous = difference;
        }
        // Shells keep the heat capacity of the start, which differs from that of the lumped drink by a percent on the
        // way.
        assertThat(previous).isLessThan(0.15);
    }

    @Test
    void noPartLeavesTheRangeOfStartAndSurroundings() {
        for (VesselModel model : List.of(VesselModel.axial(8), VesselModel.radial(8))) {
            for (Beverage drink : List.of(WINE, Beverage.water())) {
                Prediction run = Layered.of(bottleOf(drink), model)
                        .expose(
                                in(Refrigerator.at(celsius(-18)), Duration.ofHours(14)),
                                in(Air.at(celsius(22)), Duration.ofHours(14)));
                for (double t = 0; t <= 28 * 3600; t += 1800) {
                    for (double k : run.profileK(t)) {
                        assertThat(k)
                                .as("%s, %s after %s s", drink.name(), model, t)
                                .isBetween(ZERO - 18, ZERO + 22);
                    }
                    double[] ice = run.iceProfile(t);
                    assertThat(ice).hasSize(8);
                    assertThat(Arrays.stream(ice).allMatch(part -> part >= 0 && part <= 1))
                            .isTrue();
                }
                assertThat(run.iceFraction(10 * 3600)).isGreaterThan(0.2);
                assertThat(run.iceFraction(28 * 3600)).isLessThan(0.05);
                assertThat(run.ledger().closure()).isLessThan(1e-9);
            }
        }
    }

    @Test
    void turningOverMixesIceAndDrinkAndKeepsTheEnergy() {
        Scene scene = Scene.builder()
                .gear("freezer", Refrigerator.at(celsius(-18)))
                .vessel("bottle", bottleOf(WINE), "freezer", VesselModel.axial(8), Posture.UPRIGHT)
                .move("bottle", Duration.ofHours(5), "freezer", Posture.INVERTED)
                .build();
        Prediction bottle = scene.predict(Duration.ofHours(7)).vessel("bottle");
        double turn = 5 * 3600;
        double before = Math.nextDown(turn);
        double heldBefore = enthalpyJ(bottle, before);
        assertThat(enthalpyJ(bottle, turn)).isCloseTo(heldBefore, within(1e-9 * Math.abs(heldBefore)));
        double[] ice = bottle.iceProfile(before);
        assertThat(ice[7]).isGreaterThan(ice[0] + 0.2);
        double[] mixed = bottle.profileK(turn);
        double[] mixedIce = bottle.iceProfile(turn);
        for (int i = 1; i < 8; i++) {
            assertThat(mixed[i]).isCloseTo(mixed[0], within(1e-6));
            assertThat(mixedIce[i]).isCloseTo(mixedIce[0], within(1e-6)).isPositive();
        }
        // The same heat is left as at one temperature throughout.
        double specific = heldBefore / bottleOf(WINE).liquidMassKg();
        assertThat(FreezingCurve.of(WINE).specificEnthalpyWithIce(mixed[0])).isCloseTo(specific, within(20.0));
        assertThat(bottle.ledger().closure()).isLessThan(1e-9);
        assertThat(bottle.iceFraction(7 * 3600)).isGreaterThan(bottle.iceFraction(turn));
    }

    @Test
    void predictionSaysWhenAndWhereFreezingBegins() {
        Exposure freezer = in(Refrigerator.at(celsius(-18)), Duration.ofHours(4));
        Prediction axial = Layered.of(bottleOf(WINE), VesselModel.axial(8)).expose(freezer);
        double first = Double.POSITIVE_INFINITY;
        int slice = -1;
        List<Node> nodes = axial.contents().nodes();
        for (int i = 0; i < nodes.size(); i++) {
            if (axial.trajectory().first(RunEvent.freezingStarts(nodes.get(i)), 0)
                            instanceof EventAnswer.Reached reached
                    && reached.timeS() < first) {
                first = reached.timeS();
                slice = i + 1;
            }
        }
        // The neck holds least and is cold first.
        assertThat(slice).isEqualTo(8);
        String when = "after " + Math.round(first / 60) + " min, first in slice 8 of 8 from the base";
        assertThat(axial.notes()).anyMatch(note -> note.contains(when) && note.contains("ice rises"));
        assertThat(axial.iceFraction(Math.max(0, first - 1))).isZero();
        assertThat(axial.iceFraction(first + 60)).isPositive();
        Prediction radial = Layered.of(bottleOf(WINE), VesselModel.radial(8)).expose(freezer);
        assertThat(radial.notes())
                .anyMatch(note -> note.contains("first in shell 8 of 8 from the axis") && note.contains("four times"));
        Prediction cool = Layered.of(bottleOf(WINE), VesselModel.axial(8))
                .expose(in(Refrigerator.at(celsius(-3)), Duration.ofHours(4)));
        assertThat(cool.notes()).noneMatch(note -> note.contains("freeze"));
        assertThat(cool.iceFraction(4 * 3600)).isZero();
    }

    @Test
    void moreSlicesChangeTheMeanLittleThroughFreezing() {
        Exposure freezer = in(Refrigerator.at(celsius(-18)), Duration.ofHours(6));
        double[] means = new double[3];
        double[] ice = new double[3];
        int[] counts = {6, 12, 24};
        for (int i = 0; i < 3; i++) {
            Prediction run = Layered.of(bottleOf(WINE), VesselModel.axial(counts[i]))
                    .with(NetworkSolver.standard().withToleranceK(1e-2))
                    .expose(freezer);
            means[i] = run.meanTemperatureK(6 * 3600);
            ice[i] = run.iceFraction(6 * 3600);
        }
        assertThat(Math.abs(means[2] - means[1])).isLessThan(0.1);
        assertThat(Math.abs(ice[2] - ice[1])).isLessThan(0.01).isLessThan(Math.abs(ice[1] - ice[0]) + 1e-3);
    }
}
