/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.litres;
import static org.beveragethermal.materials.units.Measures.metresPerSecond;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.core.surroundings.Agitation;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Posture;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.core.surroundings.WaterBath;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;

/** Contents as shells and as slices: short forms, closed forms, limits, and a fact of the trade about short buckets. */
class LayeredVesselTest {

    private static final double ZERO = 273.15;
    private static final FilledVessel BOTTLE =
            Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(22));

    @Test
    void contentsAtRestFollowTheFirstTermOfTheSeries() {
        // Late in cooling the excess of a conducting cylinder at Bi = h R/k falls as exp(−ζ² α t/R²), ζ J1(ζ) = Bi
        // J0(ζ); at a
        // wall held at one temperature Bi → ∞ and ζ = 2.404826 (Carslaw and Jaeger, from memory). Here the wall's own
        // nodes are held.
        RadialVessel vessel =
                new RadialVessel("v", BOTTLE, DrinkFit.of(BOTTLE.liquid()), List.of(), VesselModel.radial(60));
        List<Path> paths = new java.util.ArrayList<>(vessel.innerPaths(Posture.UPRIGHT));
        Boundary outside = Boundary.constant("outside", ZERO + 2);
        vessel.wall()
                .forEach(band -> paths.add(DirectPath.of(
                        band.band().name() + " held",
                        band.band().wall(),
                        outside,
                        "conduction",
                        HeatLaw.conductance(1e5))));
        Trajectory run = NetworkSolver.standard().withToleranceK(1e-5).solve(Network.of(vessel.nodes(), paths), 9000);
        Node axis = vessel.contents().nodes().get(0);
        double rate =
                Math.log((run.temperatureK(axis, 6000) - ZERO - 2) / (run.temperatureK(axis, 9000) - ZERO - 2)) / 3000;
        double radius2 = BOTTLE.liquidVolumeM3() / (Math.PI * BOTTLE.liquidHeightM());
        double alpha = BOTTLE.liquid().thermalDiffusivity(BOTTLE.temperatureK());
        // Half the wall lies between and slows by k_wine t/(2 k_glass R), some percent of a Biot number's correction.
        double half = 0.5
                * BOTTLE.vessel()
                        .profile()
                        .wallVolumeM3(0, BOTTLE.vessel().profile().heightM())
                / BOTTLE.vessel()
                        .profile()
                        .outerSideAreaM2(0, BOTTLE.vessel().profile().heightM());
        double biot = BOTTLE.vessel().wall().thermalConductivity().value()
                / half
                * BOTTLE.vessel().profile().innerSideAreaM2(0, BOTTLE.liquidHeightM())
                / (2 * Math.PI * BOTTLE.liquidHeightM())
                / BOTTLE.liquid().thermalConductivity(BOTTLE.temperatureK());
        // For a large Biot number ζ = 2.404826 Bi/(1 + Bi) to second order in 1/Bi.
        double zeta = 2.404825557695773 * biot / (1 + biot);
        assertThat(biot).isGreaterThan(20);
        assertThat(rate).isCloseTo(zeta * zeta * alpha / radius2, within(0.01 * zeta * zeta * alpha / radius2));
    }

    @Test
    void lumpedIsTheLimitOfShellsAsTheBiotNumberVanishes() {
        // The same wall behind a weak outside; the contents conduct better and better.
        double[] distances = new double[3];
        for (int i = 0; i < 3; i++) {
            double factor = Math.pow(10, i + 1);
            RadialVessel vessel = new RadialVessel(
                    "v",
                    BOTTLE,
                    DrinkFit.of(BOTTLE.liquid()),
                    List.of(),
                    VesselModel.radial(20).withConductivityFactor(factor));
            Boundary outside = Boundary.constant("outside", ZERO + 2);
            List<Path> paths = new java.util.ArrayList<>(vessel.innerPaths(Posture.UPRIGHT));
            paths.add(
                    DirectPath.of("out", vessel.wall().get(0).band().wall(), outside, "any", HeatLaw.conductance(0.5)));
            Trajectory run =
                    NetworkSolver.standard().withToleranceK(1e-5).solve(Network.of(vessel.nodes(), paths), 8000);
            double capacity = BOTTLE.liquidMassKg() * BOTTLE.liquid().specificHeatCapacity(BOTTLE.temperatureK())
                    + BOTTLE.vessel().emptyMassKg()
                            * BOTTLE.vessel().wall().specificHeatCapacity().value();
            double lumped = 2 + 20 * Math.exp(-0.5 * 8000 / capacity);
            double mean = 0;
            for (int shell = 0; shell < 20; shell++) {
                mean += vessel.contents().shares().get(shell)
                        * (run.temperatureK(vessel.contents().nodes().get(shell), 8000) - ZERO);
            }
            distances[i] = Math.abs(mean - lumped);
        }
        // The half of the wall between contents and wall node stays, and with it a hundredth of a kelvin or so.
        assertThat(distances[1]).isLessThan(distances[0]);
        assertThat(distances[2]).isLessThan(0.1);
    }

    @Test
    void shortFormsAgreeInAirAndTellTheirOrder() {
        Exposure cold = in(Refrigerator.at(celsius(5)), Duration.ofHours(3));
        Prediction lumped = Lumped.of(BOTTLE).expose(cold);
        Prediction same = Layered.of(BOTTLE, VesselModel.lumped()).expose(cold);
        Prediction axial = Layered.axial(BOTTLE).expose(cold);
        Prediction radial = Layered.radial(BOTTLE).expose(cold);
        double end = 10_800;
        assertThat(same.meanTemperatureK(end)).isEqualTo(lumped.meanTemperatureK(end));
        // In air the outside decides: the mean hardly depends on the description of moving contents.
        assertThat(axial.meanTemperatureK(end)).isCloseTo(lumped.meanTemperatureK(end), within(0.5));
        // Contents at rest are slower, warmest at the axis, and say so.
        assertThat(radial.meanTemperatureK(end)).isGreaterThan(lumped.meanTemperatureK(end));
        double[] profile = radial.profileK(end);
        assertThat(profile).hasSize(20);
        for (int i = 0; i + 1 < profile.length; i++) {
            assertThat(profile[i]).isGreaterThan(profile[i + 1]);
        }
        assertThat(Arrays.stream(radial.profileShares()).sum()).isCloseTo(1, within(1e-12));
        assertThat(radial.notes()).anyMatch(note -> note.contains("at rest"));
        assertThat(radial.ledger().closure()).isLessThan(1e-9);
        assertThat(radial.explainAt(Duration.ofHours(1)).text()).contains("decides");
    }

    @Test
    void contentsAtRestInABathAreMuchSlower() {
        WaterBath bath =
                WaterBath.of(Bucket.of(millimetres(300), millimetres(350)), litres(20), celsius(5), Air.at(celsius(5)));
        Exposure dip = in(bath, Duration.ofMinutes(30));
        double moving = Layered.axial(BOTTLE).expose(dip).meanTemperatureK(1800) - ZERO;
        double atRest = Layered.radial(BOTTLE).expose(dip).meanTemperatureK(1800) - ZERO;
        assertThat(atRest).isGreaterThan(moving + 2);
    }

    @Test
    void explanationOfSlicesAddsUpToTheHeatTheContentsLose() {
        // What each band's film passes by its resistance, against the fall of the mean along the curve; the base only
        // stores a little.
        Prediction axial = Layered.axial(BOTTLE).expose(in(Refrigerator.at(celsius(5)), Duration.ofHours(2)));
        double timeS = 3600;
        double passed = 0;
        int band = 0;
        double[] profile = axial.profileK(timeS);
        for (var explained : axial.explainAt(Duration.ofHours(1)).bands()) {
            double wall = axial.wallTemperatureK(band, timeS);
            passed += (profile[axial.bands().get(band).slice()] - wall)
                    / (explained.films().get(0).kelvinPerWatt()
                            + explained.films().get(0).wallKelvinPerWatt());
            band++;
        }
        double fall = (axial.meanTemperatureK(timeS - 60) - axial.meanTemperatureK(timeS + 60)) / 120;
        double lost =
                BOTTLE.liquidMassKg() * BOTTLE.liquid().specificHeatCapacity(axial.meanTemperatureK(timeS)) * fall;
        assertThat(band).isEqualTo(profile.length);
        assertThat(passed).isCloseTo(lost, within(0.04 * lost));
    }

    @Test
    void badModelsAreRefused() {
        assertThatThrownBy(() -> VesselModel.radial(1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> VesselModel.radial(201)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Layered.axial(BOTTLE).expose(List.of())).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aBottleTooTallForItsBucketThirtyMinutes() {
        // Fact of the trade (common practice, no source): it is put in neck first and turned over part-way. Closed
        // bottle
        // without sediment, stirred ice water that reaches over half of it.
        String[] ways = {"base only", "neck only", "neck, then base"};
        double[] means = new double[3];
        double[] first = new double[3];
        double[] spread = new double[3];
        StringBuilder table = new StringBuilder("A bottle too tall for its bucket, 30 min in ice water:\n");
        for (int way = 0; way < 3; way++) {
            IceWaterBath bath = IceWaterBath.in(Bucket.of(millimetres(200), millimetres(220)), Air.at(celsius(21)))
                    .ice(kilograms(2.2), millimetres(25), celsius(-5))
                    .water(kilograms(2), celsius(10))
                    .agitation(Agitation.stirred(metresPerSecond(0.1)))
                    .build();
            Posture start = way == 0 ? Posture.UPRIGHT : Posture.INVERTED;
            Scene.Builder scene =
                    Scene.builder().gear("bath", bath).vessel("wine", BOTTLE, "bath", VesselModel.axial(), start);
            if (way == 2) {
                scene.move("wine", Duration.ofMinutes(15), "bath", Posture.UPRIGHT);
            }
            Prediction wine = scene.build().predict(Duration.ofMinutes(30)).vessel("wine");
            double[] profile = wine.profileK(1800);
            means[way] = wine.meanTemperatureK(1800) - ZERO;
            first[way] = profile[profile.length - 1] - ZERO;
            spread[way] = profile[profile.length - 1] - profile[0];
            table.append(String.format(
                    Locale.ROOT,
                    "%-16s mean %4.1f, neck %4.1f, neck − base %5.1f K%n",
                    ways[way],
                    means[way],
                    first[way],
                    spread[way]));
        }
        System.out.println(table);
        // Why it is done: base only, what is poured first is as warm as before; turned over, it is chilled.
        assertThat(first[0]).isGreaterThan(20);
        assertThat(first[2]).isLessThan(first[0] - 2);
        assertThat(spread[2]).isLessThan(spread[0]);
        // Why it is not left on its neck: the neck holds little and the mean hardly falls.
        assertThat(means[1]).isGreaterThan(means[2] + 3);
        // Against the rule: by the mean alone base only is no worse than turning, because the base holds most of the
        // wine.
        assertThat(means[0]).isLessThan(means[2] + 1);
    }
}
