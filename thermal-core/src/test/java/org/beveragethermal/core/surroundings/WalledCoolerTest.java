/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;
import static org.beveragethermal.materials.units.Measures.wattsPerSquareMetreKelvin;

import java.time.Duration;
import java.util.List;
import org.beveragethermal.core.conduction.Layer;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.scene.Exposure;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.scene.ScenePrediction;
import org.beveragethermal.core.scene.VesselModel;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.solid.Solids;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Coolers with a gap of air: the gap against a standard, limits, balance, and what is refused. */
class WalledCoolerTest {

    private static final double ZERO = 273.15;
    private static final Air ROOM = Air.at(celsius(24));
    private static final Duration HOUR = Duration.ofHours(1);

    private static FilledVessel bottle(double startC) {
        return Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(startC));
    }

    private static WalledCooler plastic(double innerMm) {
        return WalledCooler.doubleWalled(
                millimetres(innerMm),
                millimetres(210),
                Solids.polypropylene(),
                millimetres(2),
                wattsPerSquareMetreKelvin(6),
                celsius(24),
                ROOM);
    }

    private static double wineC(double startC, Surroundings gear) {
        return Lumped.of(bottle(startC)).expose(Exposure.in(gear, HOUR)).meanTemperatureK(3600) - ZERO;
    }

    /** A gap beside so wide a vessel that it is nearly plane, at the standard's 10 °C and about its temperature differences. */
    @ParameterizedTest
    @CsvSource({"5, 0.11", "7, 0.13", "10, 0.15", "15, 0.17", "25, 0.18"})
    void theGapIsTheUnventilatedAirLayerOfTheStandard(double gapMm, double resistance) {
        Occupant wide = Body.standing("wide", 1, 0.4);
        WalledCooler gear = WalledCooler.of(
                millimetres(400 + 2 * gapMm),
                millimetres(1000),
                celsius(10),
                ROOM,
                new Layer("wall", 0.001, 100, 3e6, 0.9, 0, 1));
        Medium medium = gear.open("c", 0);
        double area = wide.vessel().profile().outerSideAreaM2(0, 1);
        WallPatch patch = new WallPatch(0, 1, area, 0.4, 0.9);
        double watts = 0;
        for (Face face : medium.faces(patch, wide, List.of(wide))) {
            for (Link link : face.links()) {
                if (!link.mechanism().equals("open top")) {
                    HeatFlow flow = new HeatFlow();
                    link.law().evaluate(ZERO + 12.5, ZERO + 7.5, flow);
                    watts += flow.watts;
                }
            }
        }
        OutsideChecks.fromMemory(
                        "cooler-gap-" + (int) gapMm,
                        "ISO 6946, unventilated air layers with surfaces of high emissivity, heat flow horizontal, 10 °C")
                .what("thermal resistance of the air in an upright gap of " + (int) gapMm + " mm")
                .unit("m² K/W")
                .expected(resistance)
                .withinRelative(0.06)
                .check(area * 5 / watts);
    }

    @Test
    void theLedgerClosesForColdAndForWarm() {
        for (double startC : new double[] {6, 60}) {
            ScenePrediction run = Scene.builder()
                    .gear("cooler", plastic(100))
                    .gear("room", ROOM)
                    .vessel("wine", bottle(startC), "room")
                    .move("wine", Duration.ofMinutes(10), "cooler")
                    .build()
                    .predict(HOUR);
            assertThat(run.ledger().closure()).isLessThan(1e-9);
        }
    }

    @Test
    void itKeepsColdWhateverTheGap() {
        double bare = wineC(6, ROOM);
        double cooler = wineC(6, plastic(100));
        assertThat(cooler).isBetween(6.0, bare - 1);
        // A narrow gap conducts more, a wide one opens more and has a larger wall outside.
        for (double innerMm : new double[] {84, 120}) {
            assertThat(wineC(6, plastic(innerMm))).isBetween(6.0, bare - 1);
        }
    }

    /** Limit: a wall that conducts well, blank and heavy, starting cold, holds the gap at its temperature. */
    @Test
    void aHeavyColdWallCools() {
        WalledCooler cold = WalledCooler.of(
                millimetres(100), millimetres(210), celsius(-18), ROOM, Layer.of(Solids.aluminium(), millimetres(10)));
        assertThat(cold.heatCapacityJPerK()).isBetween(1600.0, 1900.0);
        double half = Lumped.of(bottle(12))
                        .expose(Exposure.in(cold, Duration.ofMinutes(30)))
                        .meanTemperatureK(1800)
                - ZERO;
        assertThat(half).isLessThan(12);
        WalledCooler warm = WalledCooler.of(
                millimetres(100), millimetres(210), celsius(24), ROOM, Layer.of(Solids.aluminium(), millimetres(10)));
        assertThat(wineC(12, warm)).isGreaterThan(wineC(12, cold));
    }

    /** The opening takes and gives: none at one temperature, more for warm contents than for cold ones. */
    @Test
    void theOpenTop() {
        OpenTop top = new OpenTop(0.003, 0.02, 5, 1200);
        HeatFlow flow = new HeatFlow();
        top.evaluate(297, 297, flow);
        assertThat(flow.watts).isZero();
        top.evaluate(297, 287, flow);
        double gained = flow.watts;
        assertThat(gained).isCloseTo(0.003 * 5 * 10, within(1e-12));
        top.evaluate(297, 307, flow);
        assertThat(-flow.watts).isGreaterThan(2 * gained);
        double step = 1e-4;
        HeatFlow near = new HeatFlow();
        top.evaluate(297, 307 + step, near);
        assertThat((near.watts - flow.watts) / step).isCloseTo(flow.perToKelvin, within(1e-6));
        top.evaluate(297 + step, 307, near);
        assertThat((near.watts - flow.watts) / step).isCloseTo(flow.perFromKelvin, within(1e-6));
    }

    @Test
    void anInvertedVesselStandsInItWithItsNeck() {
        double inverted = Scene.builder()
                        .gear("cooler", plastic(100))
                        .vessel("wine", bottle(6), "cooler", VesselModel.lumped(), Posture.INVERTED)
                        .build()
                        .predict(HOUR)
                        .vessel("wine")
                        .meanTemperatureK(3600)
                - ZERO;
        assertThat(inverted).isBetween(wineC(6, plastic(100)), wineC(6, ROOM));
    }

    @Test
    void badCoolersAreRefused() {
        assertThatThrownBy(() -> wineC(6, plastic(60))).hasMessageContaining("wide; expected at most 59.8 mm");
        assertThatThrownBy(() -> plastic(20)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> WalledCooler.of(millimetres(100), millimetres(200), celsius(5), ROOM))
                .hasMessageContaining("no layers");
        Layer loose = Layer.of(Solids.aluminium(), millimetres(2)).withContactResistance(0.1);
        assertThatThrownBy(() -> WalledCooler.of(millimetres(100), millimetres(200), celsius(5), ROOM, loose))
                .hasMessageContaining("expected 0");
        assertThatThrownBy(() -> Scene.builder()
                        .gear("cooler", plastic(100))
                        .vessel("one", bottle(6), "cooler")
                        .vessel("other", bottle(6), "cooler")
                        .build()
                        .predict(HOUR))
                .hasMessageContaining("[one, other]");
        assertThatThrownBy(() -> Scene.builder()
                        .gear("cooler", plastic(100))
                        .vessel("one", bottle(6), "cooler", VesselModel.lumped(), Posture.LYING)
                        .build()
                        .predict(HOUR))
                .hasMessageContaining("lying in cooler");
    }
}
