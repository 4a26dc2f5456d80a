/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.litresPerMinute;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.List;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import org.beveragethermal.core.conduction.Layer;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.scene.Exposure;
import org.beveragethermal.core.scene.Layered;
import org.beveragethermal.core.scene.Lumped;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.scene.ScenePrediction;
import org.beveragethermal.core.scene.VesselModel;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.solid.Solids;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Sleeves: limits, what they are as layers of the vessel itself, balance, and what is refused. */
class SleeveTest {

    private static final double ZERO = 273.15;
    private static final Air ROOM = Air.at(celsius(27));
    private static final Vessel GLASS = Vessels.highShouldered750();
    private static final FilledVessel BOTTLE = GLASS.filledWith(Beverage.wine(percentByVolume(12.5)), celsius(8));
    private static final Duration HOUR = Duration.ofHours(1);
    private static final NetworkSolver TIGHT = NetworkSolver.standard().withToleranceK(1e-5);

    private static Layer foam(double thicknessMm) {
        return Layer.of(Solids.neopreneFoam(), millimetres(thicknessMm));
    }

    private static Sleeve sleeve(double heightMm, double startC, Layer... layers) {
        return Sleeve.around(GLASS, millimetres(heightMm), celsius(startC), ROOM, layers);
    }

    private static double wineC(Surroundings gear) {
        return Lumped.of(BOTTLE).expose(Exposure.in(gear, HOUR)).meanTemperatureK(3600) - ZERO;
    }

    private static double wineC(FilledVessel vessel, Surroundings gear, Placement placement) {
        return Scene.builder()
                        .gear("gear", gear)
                        .vessel("wine", vessel, "gear", VesselModel.lumped(), placement)
                        .build()
                        .predict(HOUR, TIGHT)
                        .vessel("wine")
                        .meanTemperatureK(3600)
                - ZERO;
    }

    @Property(tries = 12, seed = "20260401")
    @Label("A sleeve without thickness, of the vessel's own emissivity, changes nothing")
    void aSleeveWithoutThicknessChangesNothing(@ForAll long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double startC = random.nextDouble(2, 40);
        FilledVessel vessel = GLASS.filledWith(Beverage.wine(percentByVolume(12.5)), celsius(startC));
        double height = random.nextDouble(20, 1000 * GLASS.profile().heightM());
        Air room = Air.at(celsius(random.nextDouble(5, 35)));
        Layer nothing =
                new Layer("nothing", 1e-7, 10, 1e3, GLASS.wall().emissivity().value(), 0, 1);
        Surroundings sleeve = Sleeve.around(GLASS, millimetres(height), celsius(startC), room, nothing);
        Placement placement = Placement.of(
                List.of(Posture.UPRIGHT, Posture.LYING, Posture.INVERTED).get(random.nextInt(3)));
        assertThat(wineC(vessel, sleeve, placement)).isCloseTo(wineC(vessel, room, placement), within(1e-3));
    }

    @Property(tries = 8, seed = "20260402")
    @Label("A thicker sleeve is never faster: on a bottle it is far beyond the critical radius")
    void aThickerSleeveIsNeverFaster(@ForAll long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double thin = random.nextDouble(0.5, 10);
        double thick = thin * random.nextDouble(1.1, 3);
        double height = random.nextDouble(60, 300);
        assertThat(wineC(sleeve(height, 8, foam(thick)))).isLessThan(wineC(sleeve(height, 8, foam(thin))));
    }

    /** A wrapped vessel has been compared with closed forms; a sleeve over all of its height is the same layers. */
    @Test
    void overTheWholeHeightItIsAWrappedVessel() {
        double height = 1000 * GLASS.profile().heightM();
        Layer layer = foam(5).withContactResistance(0.01);
        double sleeved = wineC(BOTTLE, sleeve(height, 8, layer), Placement.upright());
        double wrapped = Scene.builder()
                        .gear("gear", ROOM)
                        .vessel("wine", BOTTLE, "gear", VesselModel.lumped().wrappedIn(layer), Posture.UPRIGHT)
                        .build()
                        .predict(HOUR, TIGHT)
                        .vessel("wine")
                        .meanTemperatureK(3600)
                - ZERO;
        // The shoulder of one stack around the whole bottle has the mean radius, that of six sections its own.
        assertThat(sleeved).isCloseTo(wrapped, within(0.03));
        assertThat(wineC(ROOM) - sleeved).isGreaterThan(1);
    }

    /** Thin layers against their series resistance: heat into a stack of large radius is that of a plane wall. */
    @Test
    void aSleeveIsAResistanceInSeries() {
        FilledVessel warm = GLASS.filledWith(Beverage.wine(percentByVolume(12.5)), celsius(20));
        Layer layer = new Layer("foam", 0.005, 0.04, 1e3, 0.9, 0.02, 4);
        ShellMedium medium = (ShellMedium)
                Sleeve.around(GLASS, millimetres(150), celsius(20), ROOM, layer).open("s", 0);
        Occupant occupant = new Occupant("v", warm.vessel());
        double area = GLASS.profile().outerSideAreaM2(0, 0.15);
        WallPatch patch = new WallPatch(0, 0.15, area, 0.075, 0.9);
        double conductance = medium.faces(patch, occupant, List.of(occupant)).stream()
                .mapToDouble(face -> perKelvin(face.links().get(0).law()))
                .sum();
        // Half the innermost of four cells and the contact.
        double radius = area / (2 * Math.PI * 0.15);
        double expected = 2 * Math.PI * 0.15 / (Math.log1p(0.000625 / radius) / 0.04 + 0.02 / radius);
        OutsideChecks.published(
                        "sleeve-series",
                        "conduction through a cylindrical wall and a contact in series, any textbook, such as Cengel and Ghajar,"
                                + " Heat and Mass Transfer, 5th ed., eq. 3-43")
                .what(
                        "conductance from a bottle through a contact of 0.02 m² K/W into the first eighth of 5 mm of foam")
                .unit("W/K")
                .expected(expected)
                .withinRelative(2e-3)
                .check(conductance);
    }

    private static double perKelvin(HeatLaw law) {
        HeatFlow flow = new HeatFlow();
        law.evaluate(300, 299, flow);
        return flow.watts;
    }

    @Test
    void theLedgerClosesAndTheSleeveTookWhatItSays() {
        ScenePrediction run = Scene.builder()
                .gear("sleeve", sleeve(200, -18, foam(6)))
                .gear("room", ROOM)
                .vessel("wine", BOTTLE, "room")
                .move("wine", Duration.ofMinutes(5), "sleeve")
                .move("wine", Duration.ofMinutes(40), "room")
                .build()
                .predict(HOUR);
        assertThat(run.ledger().closure()).isLessThan(1e-9);
        assertThat(run.vessel("wine").notes()).anyMatch(note -> note.contains("bare skin"));
    }

    @Test
    void aSleeveFromTheFreezerIsColderFirst() {
        Sleeve cold = Sleeve.around(
                GLASS, millimetres(200), celsius(-18), ROOM, Layer.of("gelled sleeve", 0.010, 0.5, 3e6, 0.9));
        assertThat(wineC(cold)).isLessThan(wineC(sleeve(200, 27, foam(10))));
        assertThat(Lumped.of(BOTTLE)
                        .expose(Exposure.in(cold, Duration.ofMinutes(20)))
                        .meanTemperatureK(1200))
                .isLessThan(ZERO + 8);
    }

    /** What is in a sleeve in a refrigerator, under a hand, or in another sleeve, is in all of them. */
    @Test
    void surroundingsAroundSurroundings() {
        Sleeve inner = sleeve(200, 8, foam(3));
        Sleeve both = Sleeve.around(GLASS, millimetres(100), celsius(8), inner, foam(3));
        assertThat(wineC(both)).isBetween(8.0, wineC(inner));
        var slices = Layered.axial(BOTTLE).expose(Exposure.in(inner, HOUR));
        assertThat(slices.topTemperaturesK(3600)[0]).isGreaterThan(slices.bottomTemperaturesK(3600)[0]);
    }

    @Test
    void badSleevesAreRefused() {
        assertThatThrownBy(() -> sleeve(400, 8, foam(3)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("height of a sleeve");
        assertThatThrownBy(() -> sleeve(200, -60, foam(3))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> sleeve(200, 8)).hasMessageContaining("no layers");
        WaterBath bath = WaterBath.of(Bucket.of(millimetres(300), millimetres(350)), litres(20), celsius(10), ROOM);
        assertThatThrownBy(() -> Sleeve.around(GLASS, millimetres(200), celsius(8), bath, foam(3)))
                .hasMessageContaining("a sleeve in a bath");
        RunningTap tap = RunningTap.at(celsius(12), litresPerMinute(6), ROOM);
        assertThatThrownBy(() -> Sleeve.around(GLASS, millimetres(200), celsius(8), tap, foam(3)))
                .hasMessageContaining("a sleeve under a running tap");
        assertThatThrownBy(() -> Scene.builder()
                        .gear("sleeve", sleeve(200, 8, foam(3)))
                        .vessel("one", BOTTLE, "sleeve")
                        .vessel("other", BOTTLE, "sleeve")
                        .build()
                        .predict(HOUR))
                .hasMessageContaining("[one, other]")
                .hasMessageContaining("one vessel at a time");
        FilledVessel magnum = Vessels.magnum().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(8));
        assertThatThrownBy(() -> Lumped.of(magnum).expose(Exposure.in(sleeve(200, 8, foam(3)), HOUR)))
                .hasMessageContaining("wide");
    }
}
