/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.beveragethermal.core.correlation.CrossflowCylinder;
import org.beveragethermal.core.correlation.EnclosedLiquid;
import org.beveragethermal.core.correlation.HorizontalPlate;
import org.beveragethermal.core.correlation.VerticalCylinder;
import org.beveragethermal.core.correlation.VerticalPlate;
import org.beveragethermal.core.internal.Buoyancy;
import org.beveragethermal.core.internal.ChebyshevFit;
import org.beveragethermal.core.internal.FilmFit;
import org.beveragethermal.core.internal.HeatFit;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.SmoothFunction;
import org.beveragethermal.materials.air.DryAir;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.EthanolWater;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.units.Measures;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Fits, buoyancy and films: they follow the formulas, their slopes are right, and they respect the density maximum. */
class FilmTest {

    private static final double ZERO = 273.15;
    private static final Water WATER = Water.liquid();
    private static final Liquid WINE = Beverage.wine(Measures.percentByVolume(12.5));

    @Test
    void fitsFollowTheLiquidsFormulas() {
        for (Liquid liquid : List.of(WATER, WINE, EthanolWater.ofMassFraction(0.3))) {
            FilmFit fit = FilmFit.of(liquid);
            HeatFit heat = HeatFit.of(liquid);
            for (double t = liquid.temperatureRange().low() + 0.3;
                    t < liquid.temperatureRange().high();
                    t += 1.7) {
                assertThat(fit.density().at(t) / liquid.density(t)).isCloseTo(1, within(1e-9));
                assertThat(fit.conductivity().at(t) / liquid.thermalConductivity(t))
                        .isCloseTo(1, within(1e-6));
                assertThat(fit.prandtl().at(t) / liquid.prandtlNumber(t)).isCloseTo(1, within(2e-6));
                assertThat(fit.kinematicViscosity().at(t) / liquid.kinematicViscosity(t))
                        .isCloseTo(1, within(2e-6));
                assertThat(heat.temperatureOfEnthalpy().at(liquid.specificEnthalpy(t)))
                        .isCloseTo(t, within(1e-6));
            }
        }
    }

    @Test
    void boxInStillAirLosesWhatTheTextbookSays() {
        String source = "Y. A. Cengel, Heat Transfer, solutions manual, chapter 9, page 9-87, by its own table of air";
        // Its table gives air of 28.5 °C a conductivity of 0.02577 W/(m K), 2.7 % less than the formula used here.
        double part = 0.025;
        HeatFlow flow = new HeatFlow();
        ConvectiveFilm.free(0.25, 0.125, Fluid.air(101_325), HorizontalPlate.UNSTABLE_MCADAMS_LAMINAR)
                .evaluate(ZERO + 25, ZERO + 32, flow);
        OutsideChecks.published("film-box-top", source)
                .what("heat from the top of a box of 0.5 m by 0.5 m at 32 °C by convection to still air of 25 °C")
                .unit("W")
                .expected(6.55)
                .withinRelative(part)
                .check(-flow.watts);
        ConvectiveFilm.free(0.3, 0.15, Fluid.air(101_325), VerticalPlate.CHURCHILL_CHU)
                .evaluate(ZERO + 25, ZERO + 32, flow);
        OutsideChecks.published("film-box-sides", source)
                .what("the same from its sides, 0.15 m high")
                .unit("W")
                .expected(7.41)
                .withinRelative(part)
                .check(-flow.watts);
    }

    @Test
    void fitsKeepTheirEndValuesOrGoOnStraight() {
        ChebyshevFit clamped = ChebyshevFit.clamped(Math::exp, 0, 1, 1e-12);
        ChebyshevFit straight = ChebyshevFit.straight(Math::exp, 0, 1, 1e-12);
        assertThat(clamped.at(2)).isCloseTo(Math.E, within(1e-10));
        assertThat(clamped.slope(2)).isZero();
        assertThat(straight.at(2)).isCloseTo(2 * Math.E, within(1e-8));
        assertThat(straight.slope(-5)).isCloseTo(1, within(1e-8));
        assertThat(clamped.slope(0.5)).isCloseTo(Math.exp(0.5), within(1e-9));
        assertThatThrownBy(() -> ChebyshevFit.clamped(x -> Math.signum(x - 0.3), 0, 1, 1e-6))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ChebyshevFit.clamped(x -> 1 / x, -1, 1, 1e-6))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void buoyancyOfAStraightDensityIsExpansionTimesDifference() {
        double expansion = 2e-4;
        Buoyancy buoyancy =
                Buoyancy.ofDensity(density(t -> 1000 * (1 - expansion * (t - 290)), t -> -1000 * expansion));
        HeatFlow out = new HeatFlow();
        buoyancy.evaluate(290, 280, out);
        assertThat(out.watts).isCloseTo(expansion * 10, within(1e-9));
    }

    @Test
    void upAndDownCancelWhereTheIntegralSays() {
        // For ρ = ρₘ (1 − a (T − Tₘ)²) the integral of the drive vanishes at 0.6 T_wall + 1.4 T_bulk = 2 Tₘ: for an ice
        // wall
        // and Tₘ = 4.03 °C at a bulk of 5.757 °C. The blend then leaves the smallest drive nearby, not zero.
        double maximum = ZERO + 4.03;
        Buoyancy buoyancy = Buoyancy.ofDensity(
                density(t -> 1000 * (1 - 8e-6 * (t - maximum) * (t - maximum)), t -> -1000 * 16e-6 * (t - maximum)));
        double balance = ZERO + 2 * 4.03 / 1.4;
        HeatFlow here = new HeatFlow();
        HeatFlow colder = new HeatFlow();
        HeatFlow warmer = new HeatFlow();
        buoyancy.evaluate(balance, ZERO, here);
        buoyancy.evaluate(balance - 1.5, ZERO, colder);
        buoyancy.evaluate(balance + 1.5, ZERO, warmer);
        assertThat(here.watts).isPositive().isLessThan(warmer.watts);
        assertThat(here.watts).isLessThan(1.5 * colder.watts);
    }

    @Test
    void filmOnIceIsWeakestNearSixDegrees() {
        // Published (from memory, Bendell and Gebhart 1976; Wilson and Vyas 1979): smallest Nusselt number at an ice
        // wall in
        // water near 5.6 °C. A grid is enough to see where our film has its minimum.
        ConvectiveFilm film = ConvectiveFilm.free(1, 0.03, Fluid.of(WATER), VerticalPlate.CHURCHILL_CHU);
        double weakest = 0;
        double coefficient = Double.MAX_VALUE;
        for (double bulk = 2.5; bulk <= 12; bulk += 0.1) {
            double h = film.describe(ZERO + bulk, ZERO).coefficient();
            if (h < coefficient) {
                coefficient = h;
                weakest = bulk;
            }
        }
        org.beveragethermal.testsupport.OutsideChecks.fromMemory(
                        "film-ice-minimum", "Bendell and Gebhart 1976; Wilson and Vyas 1979")
                .what("bulk temperature at which an ice wall of 30 mm has its smallest coefficient")
                .unit("°C")
                .expected(5.6)
                .within(0.9)
                .check(weakest);
    }

    @Test
    void filmsHaveTheSlopesOfTheirFlow() {
        Fluid water = Fluid.of(WATER);
        Fluid wine = Fluid.of(WINE);
        Fluid air = Fluid.air(DryAir.STANDARD_PRESSURE_PA);
        List<HeatLaw> laws = List.of(
                ConvectiveFilm.free(0.05, 0.25, water, VerticalPlate.CHURCHILL_CHU),
                ConvectiveFilm.free(0.05, 0.25, water, VerticalPlate.CHURCHILL_CHU)
                        .withStream(0.1, 0.075, CrossflowCylinder.CHURCHILL_BERNSTEIN),
                ConvectiveFilm.free(0.05, 0.25, wine, EnclosedLiquid.COOLING)
                        .whenColder(EnclosedLiquid.WARMING)
                        .atLeast(EnclosedLiquid.conduction(7)),
                ConvectiveFilm.free(0.06, 0.3, air, VerticalCylinder.popiel(4)),
                new RadiativeFilm(0.06, 0.9));
        double[][] pairs = {{295, 280}, {280, 295}, {278.5, 273.2}, {275, 281}, {274, 277.5}, {300, 299.6}};
        for (HeatLaw law : laws) {
            for (double[] pair : pairs) {
                assertSlopes(law, pair[0], pair[1]);
            }
        }
    }

    @Test
    void noDriveNoFlow() {
        ConvectiveFilm film =
                ConvectiveFilm.free(0.06, 0.3, Fluid.air(DryAir.STANDARD_PRESSURE_PA), VerticalCylinder.popiel(4));
        HeatFlow out = new HeatFlow();
        film.evaluate(290, 290, out);
        assertThat(out.watts).isZero();
        assertThat(out.perFromKelvin).isPositive();
        assertThat(out.perToKelvin).isNegative();
    }

    private static void assertSlopes(HeatLaw law, double from, double to) {
        double step = 1e-4;
        HeatFlow out = new HeatFlow();
        HeatFlow up = new HeatFlow();
        HeatFlow down = new HeatFlow();
        law.evaluate(from, to, out);
        double perFrom = out.perFromKelvin;
        double perTo = out.perToKelvin;
        law.evaluate(from + step, to, up);
        law.evaluate(from - step, to, down);
        double scale = Math.abs(perFrom) + Math.abs(perTo);
        assertThat(perFrom).isCloseTo((up.watts - down.watts) / (2 * step), within(2e-3 * scale));
        law.evaluate(from, to + step, up);
        law.evaluate(from, to - step, down);
        assertThat(perTo).isCloseTo((up.watts - down.watts) / (2 * step), within(2e-3 * scale));
    }

    private static SmoothFunction density(
            java.util.function.DoubleUnaryOperator value, java.util.function.DoubleUnaryOperator slope) {
        return new SmoothFunction() {
            @Override
            public double at(double x) {
                return value.applyAsDouble(x);
            }

            @Override
            public double slope(double x) {
                return slope.applyAsDouble(x);
            }
        };
    }

    @Test
    void surfacesThatFaceEachOtherRefuseNonsense() {
        for (double bad : new double[] {-0.1, 1.1, Double.NaN}) {
            assertThatThrownBy(() -> RadiativeFilm.facing(bad, 0.9))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("emissivity");
            assertThatThrownBy(() -> RadiativeFilm.facing(0.9, bad)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> RadiativeFilm.facing(bad, 0.9, 0.5)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> RadiativeFilm.facing(0.9, bad, 0.5)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> RadiativeFilm.facing(0.9, 0.9, bad))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("area");
        }
        assertThat(RadiativeFilm.facing(0, 1)).isZero();
    }
}
