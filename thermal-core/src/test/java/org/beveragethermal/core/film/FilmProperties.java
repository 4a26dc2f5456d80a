/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.beveragethermal.core.correlation.CrossflowCylinder;
import org.beveragethermal.core.correlation.EnclosedLiquid;
import org.beveragethermal.core.correlation.VerticalCylinder;
import org.beveragethermal.core.correlation.VerticalPlate;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.materials.air.DryAir;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.units.Measures;

/** Slopes that films state, against central differences of their flow, over the temperatures at which drinks are served. */
final class FilmProperties {

    private static final Fluid WATER = Fluid.of(Water.liquid());
    private static final Fluid WINE = Fluid.of(Beverage.wine(Measures.percentByVolume(12.5)));
    private static final Fluid AIR = Fluid.air(DryAir.STANDARD_PRESSURE_PA);

    /** Step of the differences [K]: their rounding is 1e-9 of the flow, so the step may be small. */
    private static final double STEP = 2e-5;

    @Property(seed = "20261")
    @Label("Path derivatives = differences: films in air")
    void inAir(
            @ForAll @DoubleRange(min = 255, max = 310) double air,
            @ForAll @DoubleRange(min = 255, max = 310) double wall) {
        slopes(ConvectiveFilm.free(0.06, 0.3, AIR, VerticalCylinder.popiel(4)), air, wall);
    }

    @Property(seed = "20262")
    @Label("Path derivatives = differences: films inside wine")
    void insideWine(
            @ForAll @DoubleRange(min = 275, max = 305) double wine,
            @ForAll @DoubleRange(min = 273.2, max = 305) double wall) {
        slopes(
                ConvectiveFilm.free(0.05, 0.25, WINE, EnclosedLiquid.COOLING)
                        .whenColder(EnclosedLiquid.WARMING)
                        .atLeast(EnclosedLiquid.conduction(7)),
                wine,
                wall);
    }

    @Property(seed = "20263")
    @Label("Path derivatives = differences: films in water")
    void inWater(
            @ForAll @DoubleRange(min = 274, max = 320) double water,
            @ForAll @DoubleRange(min = 274, max = 320) double wall) {
        slopes(ConvectiveFilm.free(0.05, 0.25, WATER, VerticalPlate.CHURCHILL_CHU), water, wall);
    }

    @Property(seed = "20264")
    @Label("Path derivatives = differences: films in water about its density maximum")
    void inWaterAboutItsDensityMaximum(
            @ForAll @DoubleRange(min = 273.3, max = 283) double water,
            @ForAll @DoubleRange(min = 273.3, max = 283) double wall) {
        slopes(ConvectiveFilm.free(0.05, 0.25, WATER, VerticalPlate.CHURCHILL_CHU), water, wall);
    }

    @Property(seed = "20265")
    @Label("Path derivatives = differences: films in a stream")
    void inAStream(
            @ForAll @DoubleRange(min = 274, max = 320) double water,
            @ForAll @DoubleRange(min = 274, max = 320) double wall) {
        slopes(
                ConvectiveFilm.free(0.05, 0.25, WATER, VerticalPlate.CHURCHILL_CHU)
                        .withStream(0.05, 0.075, CrossflowCylinder.CHURCHILL_BERNSTEIN),
                water,
                wall);
    }

    @Property(seed = "20266")
    @Label("Path derivatives = differences: radiation")
    void byRadiation(
            @ForAll @DoubleRange(min = 230, max = 350) double walls,
            @ForAll @DoubleRange(min = 230, max = 350) double surface) {
        slopes(new RadiativeFilm(0.06, 0.9), walls, surface);
    }

    @Property(seed = "20267")
    @Label("Second law: every film passes heat from warm to cold")
    void heatGoesFromWarmToCold(
            @ForAll @DoubleRange(min = 273.3, max = 310) double water,
            @ForAll @DoubleRange(min = 273.3, max = 310) double wall) {
        HeatFlow out = new HeatFlow();
        for (Fluid fluid : new Fluid[] {WATER, WINE, AIR}) {
            ConvectiveFilm.free(0.05, 0.25, fluid, VerticalPlate.CHURCHILL_CHU).evaluate(water, wall, out);
            assertThat(out.watts * (water - wall)).isGreaterThanOrEqualTo(0);
        }
    }

    private static void slopes(HeatLaw law, double from, double to) {
        // At equal temperatures the drive of free convection has a corner that no difference can follow.
        Assume.that(Math.abs(from - to) > 0.01);
        HeatFlow stated = new HeatFlow();
        law.evaluate(from, to, stated);
        double byFrom = (watts(law, from + STEP, to) - watts(law, from - STEP, to)) / (2 * STEP);
        double byTo = (watts(law, from, to + STEP) - watts(law, from, to - STEP)) / (2 * STEP);
        double scale = Math.abs(byFrom) + Math.abs(byTo);
        assertThat(stated.perFromKelvin).isCloseTo(byFrom, within(1e-3 * scale));
        assertThat(stated.perToKelvin).isCloseTo(byTo, within(1e-3 * scale));
    }

    private static double watts(HeatLaw law, double from, double to) {
        HeatFlow out = new HeatFlow();
        law.evaluate(from, to, out);
        return out.watts;
    }
}
