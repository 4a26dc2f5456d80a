/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.millilitres;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import org.beveragethermal.core.conduction.Layer;
import org.beveragethermal.core.layered.Slice;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Medium;
import org.beveragethermal.core.surroundings.Occupant;
import org.beveragethermal.core.surroundings.Placement;
import org.beveragethermal.core.surroundings.Posture;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.core.surroundings.WaterBath;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.solid.Solids;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.LyingProfile;
import org.beveragethermal.materials.vessel.Profile;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;

/** Vessels that lie, or are laid down in the course of a run. */
class LyingVesselTest {

    private static final double ZERO = 273.15;
    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));
    private static final Air ROOM = Air.at(celsius(22));

    private static AxialVessel axial(FilledVessel filled) {
        return new AxialVessel("v", filled, 24, List.of(), List.of(), false);
    }

    private static WaterBath bath(double volumeL) {
        return WaterBath.of(Bucket.of(millimetres(400), millimetres(350)), litres(volumeL), celsius(5), ROOM);
    }

    @Test
    void areasOfLayersAddUpToTheProfile() {
        Profile profile = BOTTLE.vessel().profile();
        LyingProfile lying = LyingProfile.of(profile);
        AxialVessel vessel = axial(BOTTLE);
        int bands = vessel.wall().size();
        double outer = 0;
        double half = 0;
        for (int i = 0; i < bands; i++) {
            outer += vessel.lyingOuterAreaM2(i, 2 * lying.axisM());
            half += vessel.lyingOuterAreaM2(i, lying.axisM());
        }
        double whole = profile.outerSideAreaM2(0, profile.heightM());
        assertThat(outer).isCloseTo(whole, within(1e-8 * whole));
        assertThat(half).isCloseTo(whole / 2, within(1e-8 * whole));
        Node nothing = Node.sensible("nothing", 1, 293.15);
        LyingLayers layers =
                LyingLayers.of(BOTTLE, lying, slicesOf(vessel), bands, new LyingLayers.Ends(nothing, 1, null, null, 0));
        double side = layers.slices().stream().mapToDouble(Slice::sideAreaM2).sum();
        double level = BOTTLE.lyingSurfaceHeightM();
        assertThat(side).isCloseTo(lying.innerSideAreaM2(0, profile.heightM(), level), within(1e-6));
        assertThat(layers.slices().get(23).highM()).isCloseTo(level, within(1e-6));
    }

    /** Slices of equal height of the profile's volumes, beside the vessel's own wall. */
    private static List<Slice> slicesOf(AxialVessel vessel) {
        Profile profile = BOTTLE.vessel().profile();
        double bottom = profile.baseThicknessM();
        double height = (BOTTLE.liquidHeightM() - bottom) / 24;
        List<Slice> slices = new java.util.ArrayList<>();
        for (int i = 0; i < 24; i++) {
            double low = bottom + i * height;
            double high = bottom + (i + 1) * height;
            slices.add(new Slice(
                    low,
                    high,
                    profile.innerVolumeM3(high) - profile.innerVolumeM3(low),
                    1e-2,
                    1e-3,
                    vessel.wall().get(i).band().wall(),
                    100));
        }
        return slices;
    }

    @Test
    void discIsCutAtTheWaterline() {
        LyingDisc disc = new LyingDisc(0.03, 0.04);
        assertThat(disc.part(disc.bottomM(), disc.topM())).isEqualTo(1);
        assertThat(disc.part(0, 0.04)).isCloseTo(0.5, within(1e-15));
        // A segment of half the radius' height: (60° − sin 60° cos 60°)/π of the circle, plane geometry.
        double segment = (Math.PI / 3 - Math.sqrt(3) / 4) / Math.PI;
        assertThat(disc.part(0, 0.025)).isCloseTo(segment, within(1e-15));
    }

    @Test
    void endsThatLieLoseHeatByTheirAreaInEachMedium() {
        AxialVessel vessel = axial(BOTTLE);
        double whole = BOTTLE.vessel().profile().baseAreaM2();
        double axis = LyingProfile.of(BOTTLE.vessel().profile()).axisM();
        List<VesselEnd> cut = vessel.ends(Posture.LYING, axis);
        assertThat(cut).hasSize(4);
        assertThat(cut.get(0).patch().outerAreaM2()).isCloseTo(whole / 2, within(1e-12));
        assertThat(cut.get(1).patch().outerAreaM2()).isCloseTo(whole / 2, within(1e-12));
        assertThat(vessel.ends(Posture.LYING, 0)).hasSize(2);
        assertThat(vessel.ends(Posture.LYING, 3 * axis)).hasSize(2);
        // Above the axis all of the lower half is wet: faces there meet water, the upper ones air.
        Medium medium = bath(40).open("medium", 0);
        Occupant occupant = new Occupant("v", BOTTLE.vessel(), Placement.of(Posture.LYING));
        List<Occupant> all = List.of(occupant);
        double line = medium.wettedHeightM(occupant, all);
        for (VesselEnd end : vessel.ends(Posture.LYING, line)) {
            String face = medium.faces(end.patch(), occupant, all).get(0).name();
            assertThat(face).isEqualTo(end.patch().middleM() < line ? "water" : "air");
        }
    }

    @Test
    void foamAroundALyingBottleSlowsItAsAroundAStandingOne() {
        Layer foam = Layer.of(Solids.expandedPolystyrene(), millimetres(10));
        VesselModel wrapped = VesselModel.axial().wrappedIn(foam);
        double[] after = new double[2];
        for (int way = 0; way < 2; way++) {
            Scene scene = Scene.builder()
                    .gear("cold", Refrigerator.at(celsius(5)))
                    .vessel("v", BOTTLE, "cold", wrapped, way == 0 ? Posture.UPRIGHT : Posture.LYING)
                    .build();
            ScenePrediction run = scene.predict(Duration.ofHours(2));
            assertThat(run.ledger().closure()).isLessThan(1e-9);
            after[way] = run.vessel("v").meanTemperatureK(7200);
        }
        double bare = Layered.axial(BOTTLE)
                .expose(in(Refrigerator.at(celsius(5)), Duration.ofHours(2)).lying())
                .meanTemperatureK(7200);
        // Lying, the bare base meets the air as well: at most what 10 W/(m² K) take from it at the first difference of
        // 17 K.
        double byBase = 10
                * BOTTLE.vessel().profile().baseAreaM2()
                * 17
                * 7200
                / (BOTTLE.liquidMassKg() * BOTTLE.liquid().specificHeatCapacity(288.15));
        assertThat(after[1]).isBetween(after[0] - byBase, after[0]);
        assertThat(after[1]).isGreaterThan(bare + 3);
    }

    @Test
    void openVesselsDoNotLie() {
        FilledVessel open =
                Vessels.tastingGlass().filledWith(Beverage.wine(percentByVolume(12)), millilitres(50), celsius(9));
        assertThatThrownBy(() -> Layered.axial(open)
                        .expose(in(ROOM, Duration.ofMinutes(5)).lying()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("lying: it is open");
    }

    @Test
    void everyDescriptionRunsEverywhereAndItsLedgerCloses() {
        IceWaterBath ice =
                IceWaterBath.of(Bucket.of(millimetres(400), millimetres(300)), kilograms(4), kilograms(8), ROOM);
        List<Surroundings> places = List.of(ROOM, Refrigerator.at(celsius(5)), bath(4), bath(20), ice);
        StringBuilder table = new StringBuilder("A bottle of 22 °C after 40 min, upright and lying:\n");
        for (int place = 1; place < places.size(); place++) {
            double[] lumped = new double[2];
            double[] axial = new double[2];
            for (int way = 0; way < 2; way++) {
                Exposure there = in(places.get(place), Duration.ofMinutes(40));
                Exposure exposure = way == 0 ? there : there.lying();
                Prediction one = Lumped.of(BOTTLE).expose(exposure);
                Prediction many = Layered.axial(BOTTLE).expose(exposure);
                Prediction still = Layered.radial(BOTTLE).expose(exposure);
                for (Prediction p : List.of(one, many, still)) {
                    assertThat(p.ledger().closure()).isLessThan(1e-9);
                    assertThat(p.explainAt(Duration.ofMinutes(10)).text()).isNotEmpty();
                }
                lumped[way] = one.meanTemperatureK(2400) - ZERO;
                axial[way] = many.meanTemperatureK(2400) - ZERO;
                table.append(String.format(
                        Locale.ROOT,
                        "place %d %-8s lumped %5.2f axial %5.2f radial %5.2f, axial top − bottom %5.2f%n",
                        place,
                        way == 0 ? "upright" : "lying",
                        lumped[way],
                        axial[way],
                        still.meanTemperatureK(2400) - ZERO,
                        many.profileK(2400)[23] - many.profileK(2400)[0]));
            }
            // Our bound on the spread of the two descriptions of a lying bottle: 3 K of 17 K.
            assertThat(axial[1]).isCloseTo(lumped[1], within(3.0));
        }
        System.out.println(table);
    }

    @Test
    void layingDownMidRunConservesEnergyAndMixes() {
        WaterBath cold = bath(20);
        Scene scene = Scene.builder()
                .gear("bath", cold)
                .vessel("wine", BOTTLE, "bath", VesselModel.axial(), Posture.UPRIGHT)
                .move("wine", Duration.ofMinutes(10), "bath", Posture.LYING)
                .move("wine", Duration.ofMinutes(20), "bath", Posture.INVERTED)
                .build();
        ScenePrediction run = scene.predict(Duration.ofMinutes(30));
        assertThat(run.ledger().closure()).isLessThan(1e-9);
        Prediction wine = run.vessel("wine");
        assertThat(wine.meanTemperatureK(601)).isCloseTo(wine.meanTemperatureK(599), within(0.1));
        double[] before = wine.profileK(599);
        // So soon after the move that the wall, which keeps its temperatures, has had no time to act.
        double[] after = wine.profileK(600.01);
        assertThat(before[before.length - 1] - before[0]).isGreaterThan(2);
        assertThat(Math.abs(after[after.length - 1] - after[0])).isLessThan(0.05);
    }

    @Test
    void aBucketNarrowerThanTheBottleIsLongIsRefused() {
        WaterBath narrow = WaterBath.of(Bucket.of(millimetres(200), millimetres(350)), litres(4), celsius(5), ROOM);
        assertThatThrownBy(() -> Lumped.of(BOTTLE)
                        .expose(in(narrow, Duration.ofMinutes(5)).lying()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("lies in a bucket");
        Exposure there = in(narrow, Duration.ofMinutes(5));
        assertThat(there.posture()).isEqualTo(Posture.UPRIGHT);
        assertThat(there.inverted().posture()).isEqualTo(Posture.INVERTED);
    }

    @Test
    void aBucketNarrowerThanTheBottleIsRefused() {
        double across = 2 * BOTTLE.vessel().profile().maxOuterRadiusM();
        WaterBath narrow = WaterBath.of(
                Bucket.of(millimetres(1000 * across - 1), millimetres(350)), millilitres(100), celsius(5), ROOM);
        assertThatThrownBy(() -> Lumped.of(BOTTLE).expose(in(narrow, Duration.ofMinutes(5))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("stands in a bucket of inner diameter")
                .hasMessageContaining("expected a bucket at least as wide");
        WaterBath wide = WaterBath.of(
                Bucket.of(millimetres(1000 * across + 10), millimetres(350)), millilitres(100), celsius(5), ROOM);
        assertThat(Lumped.of(BOTTLE).expose(in(wide, Duration.ofMinutes(5))).meanTemperatureK(300))
                .isFinite();
    }
}
